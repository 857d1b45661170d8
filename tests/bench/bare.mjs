/** What a route sends to the database, and a bare program that sends the same: the other side of a ratio. */
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { checkout } from '../../server/commands/build.mjs'
import { Visits } from './visits.mjs'

/** What the route sends to the database, in its order, as the server itself writes it down.
 * @param {import('./stage.mjs').Stage} stage @param {import('./stage.mjs').Database} database @param {string} token @param {string} path */
export async function statementsOf(stage, database, token, path) {
  const file = stage.file('statements.log')
  const server = await stage.server(database, { RAFTERLINE_STATEMENT_LOG: file })
  const before = readFileSync(file, 'utf8').length
  const visits = new Visits(server.port, token)
  await visits.send(path)
  visits.close()
  await server.stop()
  return readFileSync(file, 'utf8').slice(before).trim().split('\n')
}

/** @param {import('./stage.mjs').Stage} stage @param {string} program beside this file @param {object} told @returns {Promise<number>} its port */
export async function bareProgram(stage, program, told) {
  const types = pathToFileURL(join(checkout, '.build/server/platform/database/types.js')).href
  const child = fork(fileURLToPath(new URL(program, import.meta.url)), { env: { ...process.env, BENCH_TYPES: types, BENCH_TOLD: JSON.stringify(told) } })
  stage.onClose(async () => {
    if (child.exitCode !== null) return
    child.kill()
    await once(child, 'exit')
  })
  const [address] = await once(child, 'message')
  return address.port
}
