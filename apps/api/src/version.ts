/** The version of this application, which is the version of its package; a test holds the two together. */
export const version = '0.1.0'
