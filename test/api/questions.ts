/** A question that every test of the server may ask. */
export const conversion = '/v1/convert?phrase=a+pottle+of+cream&year=1690'

/** Questions of every kind, for hosts that must all give the same answers. */
export interface Asked {
  readonly path: string
  readonly init?: RequestInit
}

const posted = (path: string, body: unknown, accept?: string, type = 'application/json'): Asked => ({
  path,
  init: {
    method: 'POST',
    headers: { 'content-type': type, ...(accept ? { accept } : {}) },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  },
})

const receipt = {
  text: 'Take a quart of cream, the yolks of viij eggs, a penny white loaf grated and as much mace as will lie on a sixpence. Bake it in a slack oven.',
  year: 1690,
  plan: { scale: '1/3', units: 'us' },
}

export const questions: readonly Asked[] = [
  { path: '/v1/convert?phrase=a+pottle+of+cream&year=1690&place=london' },
  { path: '/v1/convert?phrase=two+or+three+pounds+of+flour&year=165X&coverage=0.99' },
  { path: '/v1/convert?phrase=x+eggs%2C+leaving+out+iv+of+the+whites' },
  { path: '/v1/convert?phrase=a+penny+white+loaf&year=1650/1700' },
  { path: '/v1/convert?phrase=the+bigness+of+a+walnut+of+butter&to=g' },
  { path: '/v1/convert?phrase=&year=3000' },
  { path: '/v1/convert?phrase=once+upon+a+time' },
  { path: '/v1/oven-heats?phrase=a+slack+oven&year=1690' },
  { path: '/v1/oven-heats' },
  { path: '/v1/oven-heats.svg?year=1796' },
  { path: '/v1/sugar-heights?phrase=a+candy+height&year=1690' },
  { path: '/v1/liquid-heats' },
  { path: '/v1/loaves?year=1266/1900' },
  { path: '/v1/loaves.svg?coin=penny&kind=white&year=1660/1710' },
  { path: '/v1/brick-oven.svg' },
  { path: '/v1/measures' },
  { path: '/v1/sources', init: { headers: { accept: 'application/x-bibtex' } } },
  { path: '/v1/sources/nonesuch' },
  { path: '/v1/nonesuch' },
  { path: '/openapi.json' },
  { path: '/problems', init: { headers: { accept: 'text/html' } } },
  { path: '/healthz' },
  { path: '/' },
  posted('/v1/convert', [{ phrase: 'a pint of cream' }, { phrase: 7 }]),
  posted(
    '/v1/convert',
    '{"phrase":"a pint of ale","year":1690}\nnonsense\n{"phrase":"iij pyntes of ale"}',
    undefined,
    'application/x-ndjson',
  ),
  posted('/v1/readings', { text: receipt.text }),
  posted('/v1/sheets', receipt),
  posted('/v1/sheets', receipt, 'text/html'),
  posted('/v1/sheets', receipt, 'application/ld+json'),
  posted('/v1/sheets', receipt, 'image/png'),
  posted('/v1/brick-oven', { start: 'as hot as for bread', bakes: [{ name: 'tarts', heat: 'a moderate oven', minutes: 20 }] }),
  posted('/v1/bake-plans', { food: 'custard' }),
]

/** What of an answer does not depend on the host. */
export async function essence(response: Response): Promise<object> {
  const names = ['content-type', 'etag', 'cache-control', 'content-security-policy', 'access-control-allow-origin', 'allow']
  return {
    status: response.status,
    headers: Object.fromEntries(names.map((name) => [name, response.headers.get(name)])),
    // The script of the pages is named by its text, which each compiler writes in its own way.
    body: (await response.text()).replaceAll(/\/assets\/[\da-f]{8}\//g, '/assets/'),
  }
}
