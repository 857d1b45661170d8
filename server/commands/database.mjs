/** Which database a command works on: the one named by DATABASE_URL, else the embedded one in the data folder. */
import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { checkout } from './build.mjs'
import { startEmbedded } from './embedded.mjs'
import { WayOut } from './terminal.mjs'

/** @typedef {{ ownerUrl: string, webUrl: string, embedded: import('./embedded.mjs').Embedded | null, folder: string,
 *   close: () => Promise<void> }} Database */

/** Where backups, files and the embedded server's data lie. */
export function dataFolder() {
  return resolve(process.env['RAFTERLINE_DATA'] || join(checkout, '.data'))
}

/** @returns {{ ownerUrl: string, webUrl: string } | null} null when none is named */
export function namedDatabase() {
  const { DATABASE_URL: webUrl, DATABASE_OWNER_URL: ownerUrl } = process.env
  if (!webUrl && !ownerUrl) return null
  for (const [name, url] of /** @type {const} */ ([['DATABASE_URL', webUrl], ['DATABASE_OWNER_URL', ownerUrl]])) {
    if (!url) throw new WayOut(`${name} is missing. DATABASE_URL is the login the server runs as, DATABASE_OWNER_URL the one that owns the schema; give both or neither.`)
    if (!URL.canParse(url) || !/^postgres(ql)?:$/.test(new URL(url).protocol)) throw new WayOut(`${name} is not a postgres:// address.`)
  }
  return { ownerUrl: ownerUrl ?? '', webUrl: webUrl ?? '' }
}

/** @param {(text: string) => void} [note] @returns {Promise<Database>} */
export async function openDatabase(note) {
  const folder = dataFolder()
  const named = namedDatabase()
  mkdirSync(folder, { recursive: true, mode: 0o755 })
  if (named) return { ...named, embedded: null, folder, close: async () => {} }
  const embedded = await startEmbedded({ folder, note })
  // A server that ran before this command keeps running after it.
  const close = async () => (embedded.reused ? undefined : embedded.stop())
  return { ownerUrl: embedded.ownerUrl, webUrl: embedded.webUrl, embedded, folder, close }
}
