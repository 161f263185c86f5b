export { Entry } from './Entry.js'
export { Page, type PageProps } from './Page.js'
export { respondWithPage } from './respond.js'
