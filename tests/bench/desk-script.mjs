/** All script of the page at the scorer's table, compressed: what a phone has to fetch before the page can be opened. */
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build, checkout } from '../../server/commands/build.mjs'
import { figure } from './figure.mjs'

export async function deskScript() {
  await build(['night'])
  const folder = join(checkout, '.build/night')
  const scripts = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.m?js$/.test(name)).toSorted()
  if (scripts.length === 0) throw new Error('the page of the table has no script')
  let whole = 0
  for (const name of scripts) {
    const text = readFileSync(join(folder, name))
    const packed = gzipSync(text).length
    whole += packed
    console.log(`    ${name}: ${(text.length / 1000).toFixed(1)} kB as it is written, ${(packed / 1000).toFixed(1)} kB compressed`)
  }
  return figure('desk-script', whole / 1000, { atMost: 110 }, 'kB')
}
