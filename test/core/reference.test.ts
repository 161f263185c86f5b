/** Holds the generated reference to what its maker checks: every public function, type and constant has a docstring, and no link leads nowhere. */
import { fileURLToPath } from 'node:url'
import { Application, Logger, LogLevel, TSConfigReader, TypeDocReader } from 'typedoc'
import { expect, test } from 'vitest'

const options = fileURLToPath(new URL('../../typedoc.json', import.meta.url))
const packages = ['@pottle/core', '@pottle/embed', '@pottle/remark']

/** Keeps what is said against the docstrings. */
class Complaints extends Logger {
  readonly said: string[] = []
  override log(message: string, level: LogLevel): void {
    if (level >= LogLevel.Warn) this.said.push(message)
  }
}

test('nothing public is undocumented, left out or linked amiss', { timeout: 120_000 }, async () => {
  const complaints = new Complaints()
  // The compiler has its say in `npm run check`.
  const app = await Application.bootstrap({ options, skipErrorChecking: true }, [new TypeDocReader(), new TSConfigReader()])
  app.logger = complaints
  const project = (await app.convert())!
  for (const name of packages) {
    // Types that a signature names and the reference leaves out are sought in the package of the project's name alone.
    project.packageName = name
    app.validate(project)
  }
  expect(complaints.said).toEqual([])
  expect(project.children?.map(({ name }) => name)).toContain('@pottle/core')
})
