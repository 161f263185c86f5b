/** Which script a post needs: none, the server's, or the one that the blog serves itself. */
export const posts: Readonly<Record<string, 'api' | 'own' | null>>

/** The whole blog: pages by their addresses, its style, and what the build had to say. */
export function buildBlog(api: string): Promise<{
  readonly pages: Readonly<Record<string, string>>
  readonly css: string
  readonly messages: readonly string[]
}>
