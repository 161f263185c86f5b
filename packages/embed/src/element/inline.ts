import { type Child, type Entry, h, note } from '../view/index.js'

/** An inline answer: the words, the answer as a button in brackets, and the note that it opens. */
export function inline(entry: Entry, words: Child, address: string | undefined): Child[] {
  const button = h(
    'button',
    { type: 'button', class: 'open', part: 'answer', 'aria-expanded': 'false', 'aria-controls': 'note' },
    entry.short,
    h('span', { class: 'aside' }, ', how sure and who says so'),
  )
  return [
    words,
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
