import { execFile } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { checkout } from '../../server/commands/build.mjs'

/** The command as a person gives it: what it printed, and whether it found something. */
function crash(...words: string[]): Promise<{ code: number; lines: string[] }> {
  return new Promise((done) => {
    const child = execFile(process.execPath, [join(checkout, 'tests/safety/crash/run.mjs'), ...words], { cwd: checkout, timeout: 170_000 }, (_failure, said) =>
      done({ code: child.exitCode ?? -1, lines: said.trim().split('\n') }),
    )
  })
}

const copies = () => readdirSync(join(checkout, '.build')).filter((name) => name.startsWith('crash-'))

test('servers, connections and the database are killed under sixteen clients, and nothing is lost, doubled or made up', async () => {
  const { code, lines } = await crash('--seed', '7', '--faults', '6')
  expect(lines[0]).toBe('Seed 7')
  expect(lines.at(-1)).toMatch(/^crash: seed 7, 6 faults, 16 clients, [\d,]+ acknowledged entries, \d+ payments?, \d+ invoices?, 0 violations$/)
  expect(code).toBe(0)
})

test('the same harness finds a server that forgets which payments it has taken', async () => {
  const { code, lines } = await crash('--seed', '7', '--bugs', 'no-idempotency-record')
  expect(lines.filter((line) => line.includes('VIOLATION'))).not.toEqual([])
  expect(lines.at(-1)).toBe('1 of 1 caught')
  expect(code).toBe(0)
  expect(copies()).toEqual([])
})
