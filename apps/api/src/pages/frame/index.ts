export { Entry } from './Entry.js'
export { Page, type PageProps } from './Page.js'
export { contentPolicy } from './policy.js'
export { respondWithPage } from './respond.js'
