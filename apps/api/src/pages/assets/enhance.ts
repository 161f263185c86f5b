/**
 * What the pages do besides when scripts run: answer without loading the whole page, keep what was typed when the server is away, copy at a press.
 * The source of this function is what browsers are sent, so it may use nothing from outside itself.
 */
export function enhance(): void {
  let running: AbortController | undefined

  const here = (): string => location.pathname + location.search
  /** The address whose page is on the screen, whatever part of it the reader has jumped to. */
  let shown = here()

  const say = (form: HTMLFormElement, words: string): void => {
    const status = form.querySelector('[role="status"]')
    if (status) status.textContent = words
  }

  /** The address that a form asks: only the fields that were filled in, so that it can be passed on. */
  const addressOf = (form: HTMLFormElement, fields: URLSearchParams): string => {
    for (const [name, value] of [...fields]) if (value.trim() === '') fields.delete(name)
    return `${form.action}?${fields}`
  }

  const fieldsOf = (form: HTMLFormElement): URLSearchParams => {
    const texts = [...new FormData(form)].filter((entry): entry is [string, string] => typeof entry[1] === 'string')
    return new URLSearchParams(texts)
  }

  const request = (form: HTMLFormElement, signal: AbortSignal): Promise<Response> => {
    const fields = fieldsOf(form)
    const headers = { accept: 'text/html' }
    if (form.method === 'get') return fetch(addressOf(form, fields), { headers, signal })
    return fetch(form.action, { method: 'POST', body: fields, headers, signal })
  }

  /** Puts the page that came in place of the one that is there. */
  const show = (page: Document, address: string): void => {
    for (const place of ['.masthead nav', '#main']) {
      const fresh = page.querySelector(place)
      if (fresh) document.querySelector(place)?.replaceWith(fresh)
    }
    document.title = page.title
    history.pushState(null, '', address)
    shown = here()
    addCopyButtons()
    document.querySelector<HTMLElement>('[data-answer]')?.focus()
  }

  const ask = async (form: HTMLFormElement): Promise<void> => {
    running?.abort()
    const mine = new AbortController()
    running = mine
    form.setAttribute('aria-busy', 'true')
    say(form, 'Asking…')
    try {
      const response = await request(form, mine.signal)
      const page = new DOMParser().parseFromString(await response.text(), 'text/html')
      const fresh = page.querySelector('#main')
      if (!fresh) throw new Error('not one of our pages')
      // A page of a fault with no form in it would take away what was typed.
      if (response.ok || fresh.querySelector('form')) show(page, response.url)
      else say(form, `${fresh.querySelector('h1')?.textContent ?? 'This was not answered'}. What you typed is still here.`)
    } catch {
      if (running === mine) say(form, 'The server could not be reached. What you typed is still here: try again in a moment.')
    } finally {
      form.removeAttribute('aria-busy')
    }
  }

  /** A receipt too long for an address is left to the browser, which can send it again when the page is loaded anew. */
  const tooLong = (form: HTMLFormElement): boolean => form.method !== 'get' && fieldsOf(form).toString().length > 5000

  const copy = async (text: HTMLElement, button: HTMLButtonElement): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text.textContent ?? '')
      button.textContent = 'Copied'
    } catch {
      getSelection()?.selectAllChildren(text)
      button.textContent = 'Selected: now press Ctrl+C'
    }
  }

  const addCopyButtons = (): void => {
    for (const figure of document.querySelectorAll('figure.copyable')) {
      const text = figure.querySelector('pre')
      if (!text || figure.querySelector('button')) continue
      const button = document.createElement('button')
      button.type = 'button'
      button.className = 'copy'
      button.textContent = 'Copy'
      button.addEventListener('click', () => copy(text, button))
      figure.querySelector('figcaption')?.append(button)
    }
  }

  document.addEventListener('submit', (event) => {
    const form = event.target
    if (!(form instanceof HTMLFormElement) || !form.hasAttribute('data-ask') || tooLong(form)) return
    event.preventDefault()
    ask(form)
  })
  // Going back to another answer loads it; a jump within the page, as from the skip link, is told here too and loads nothing.
  addEventListener('popstate', () => {
    if (here() !== shown) location.reload()
  })
  addCopyButtons()
}
