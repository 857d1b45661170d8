import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const tests = resolve(fileURLToPath(new URL('.', import.meta.url)))
const database = join(tests, 'support/global-setup.ts')

export default defineConfig({
  root: resolve(tests, '..'),
  test: {
    projects: [
      {
        test: {
          name: 'domain',
          include: ['tests/domain/**/*.test.{ts,tsx}', 'tests/house.test.ts'],
          pool: 'threads',
          isolate: false,
          maxWorkers: 2,
          testTimeout: 20_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'api',
          include: ['tests/api/**/*.test.ts'],
          globalSetup: database,
          pool: 'forks',
          // One server and one database a fork; a test is alone because it makes a department of its own.
          isolate: false,
          maxWorkers: 2,
          testTimeout: 30_000,
          hookTimeout: 90_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: database,
          pool: 'forks',
          // A browser and a server a fork: much of a test is waiting for what a person would wait for.
          isolate: false,
          maxWorkers: 2,
          testTimeout: 90_000,
          hookTimeout: 90_000,
          sequence: { groupOrder: 2 },
        },
      },
      {
        test: {
          name: 'safety',
          include: ['tests/safety/**/*.test.ts'],
          globalSetup: database,
          pool: 'forks',
          isolate: false,
          maxWorkers: 1,
          testTimeout: 180_000,
          hookTimeout: 90_000,
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
})
