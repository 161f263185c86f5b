import { createApp } from './app.js'

/** The app for hosts that call a fetch handler: workerd, and the edge platforms built on it. Nothing in it needs Node. */
const app = createApp()

export default { fetch: app.fetch }
