export * from './schema.js'
