import { type Child, type Entry, h, note, type Tree } from '../view/index.js'

/** The words of the page's author, wherever the answer stands. */
export const words = (fallback: string): Tree => h('slot', {}, fallback)

/** What the author left for the answer's place, while there is none. */
export const standIn: Tree = h('slot', { name: 'answer' })

/** An inline answer: the words, the answer as a button in brackets, and the note that it opens. */
export function inline(entry: Entry, address: string | undefined): Child[] {
  const button = h(
    'button',
    { type: 'button', class: 'open', part: 'answer', 'aria-expanded': 'false', 'aria-controls': 'note' },
    entry.short,
    h('span', { class: 'aside' }, ', how sure and who says so'),
  )
  return [
    words(entry.words),
    ' ',
    h('span', { class: 'brackets' }, '(', button, ')'),
    h('div', { id: 'note', class: 'note', part: 'note', hidden: '' }, note(entry, address)),
  ]
}

/** Lets the button open and close the note. */
export function disclose(root: ShadowRoot): void {
  const button = root.querySelector('.open')
  const panel = root.getElementById('note')
  button?.addEventListener('click', () => {
    panel!.hidden = !panel!.hidden
    button.setAttribute('aria-expanded', String(!panel!.hidden))
  })
}
