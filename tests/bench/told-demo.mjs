/** A database with the demo season in it, its server and a director who is signed in. */
import { mkdirSync } from 'node:fs'
import pg from 'pg'
import { tellDemo } from '../../server/commands/demo.mjs'
import { signIn } from './stage.mjs'

/** @typedef {{ id: string, heldOn: string, title: string, packetIssued: number | null, games: { id: string }[] }} Night */
/** @typedef {{ ask: (method: string, path: string, body?: unknown, version?: number) => Promise<any>, paper: (path: string) => Promise<Buffer>, nights: () => Promise<Night[]>,
 *   database: import('./stage.mjs').Database, departmentId: string, port: number, token: string }} Demo */

/** @param {import('./stage.mjs').Stage} stage @param {string} name @param {Record<string, string>} [environment] of the server @returns {Promise<Demo>} */
export async function toldDemo(stage, name, environment = {}) {
  const database = await stage.database(name)
  const folder = stage.file(name)
  mkdirSync(folder)
  await tellDemo({ ...database, embedded: null, folder, close: async () => {} }, () => {})
  const client = new pg.Client({ connectionString: database.adminUrl })
  await client.connect()
  const departmentId = (await client.query('select id from department')).rows[0].id
  await client.end()
  const { token } = await signIn(database, departmentId)
  const { port } = await stage.server(database, environment)
  /** @param {string} method @param {string} path @param {unknown} [body] @param {number} [version] */
  const send = async (method, path, body, version) => {
    const headers = { 'x-rafterline': '1', cookie: `rafterline-${port}=${token}`, ...(body ? { 'content-type': 'application/json' } : {}), ...(version ? { 'if-match': `"${version}"` } : {}) }
    const answer = await fetch(`http://127.0.0.1:${port}/api${path}`, { method, headers, ...(body ? { body: JSON.stringify(body) } : {}) })
    if (!answer.ok) throw new Error(`${method} ${path} answered ${answer.status}: ${(await answer.text()).slice(0, 400)}`)
    return answer
  }
  return {
    ask: async (...asked) => (await send(...asked)).json(),
    paper: async (path) => Buffer.from(await (await send('GET', path)).arrayBuffer()),
    nights: async () => (await (await send('GET', '/nights?perPage=100&sort=heldOn')).json()).data,
    database,
    departmentId,
    port,
    token,
  }
}
