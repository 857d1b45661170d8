/**
 * @typedef {import('vitest/node').TestModule} TestModule
 * @implements {import('vitest/node').Reporter}
 */
/** Counts tests and the seconds each project takes. */
export class Tally {
  passed = 0
  failed = 0
  skipped = 0
  /** @type {Map<string, { from: number, to: number }>} */
  #spans = new Map()

  /** @param {TestModule} module */
  onTestModuleStart(module) {
    if (!this.#spans.has(module.project.name)) this.#spans.set(module.project.name, { from: Date.now(), to: Date.now() })
  }

  /** @param {TestModule} module */
  onTestModuleEnd(module) {
    const span = this.#spans.get(module.project.name)
    if (span) span.to = Date.now()
  }

  /** @param {readonly TestModule[]} modules @param {readonly unknown[]} unhandled */
  onTestRunEnd(modules, unhandled) {
    for (const module of modules) this.#count(module)
    this.failed += unhandled.length
  }

  /** @param {TestModule} module */
  #count(module) {
    const states = [...module.children.allTests()].map((test) => test.result().state)
    this.passed += states.filter((state) => state === 'passed').length
    this.failed += states.filter((state) => state === 'failed').length
    this.skipped += states.filter((state) => state !== 'passed' && state !== 'failed').length
    // A file that cannot be read, or a hook that fails, is a failure even where no test failed.
    if (module.state() === 'failed' && !states.includes('failed')) this.failed++
  }

  lines() {
    return [...this.#spans].map(([project, { from, to }]) => `  ${project.padEnd(8)} ${((to - from) / 1000).toFixed(1)} s`)
  }
}
