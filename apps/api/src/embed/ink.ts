/** Ink, paper and the red of a margin line, by day and by night. On either paper the ink has a contrast above 12 to 1, the red above 4.5 to 1. */
export const day = { paper: '#fbf9f3', ink: '#20252d', red: '#a8322f' } as const
export const night = { paper: '#17191d', ink: '#ece7da', red: '#d9807a' } as const

type Ink = { readonly paper: string; readonly ink: string; readonly red: string }

const declare = ({ paper, ink, red }: Ink): string => `--pottle-paper:${paper};--pottle-ink:${ink};--pottle-accent:${red}`

/** The colours as the custom properties that the embeds are themed by; they follow the reader's wish for light or dark. */
export const inks = (selector: string): string =>
  `${selector}{${declare(day)}}@media (prefers-color-scheme:dark){${selector}{${declare(night)}}}`

/** Faces that look printed and are on most machines; none is fetched. */
export const face = "'Iowan Old Style','Palatino Linotype',Palatino,'Book Antiqua',Georgia,serif"
