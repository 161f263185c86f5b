import type { ProblemKind } from './problem.js'
import type { Route } from './route.js'

const anywhere: readonly ProblemKind[] = ['bad-parameter', 'not-acceptable']
const withBody: readonly ProblemKind[] = ['bad-body', 'too-slow', 'too-large', 'unsupported-media-type']

/** Every kind of problem that a route may answer with: its own, and those that come of what it takes. */
export function problemsOf({ problems, body, passing }: Route): readonly ProblemKind[] {
  // How the server is may be asked as often as one likes.
  const limited: readonly ProblemKind[] = passing ? [] : ['too-many-requests']
  return [...anywhere, ...(body ? withBody : []), ...problems, ...limited, 'internal']
}
