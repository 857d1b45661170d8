/** All that a table needs of a night, as it goes over the wire: the demo's fullest home night, and no more than a phone can fetch at the door. */
import { gzipSync } from 'node:zlib'
import { figure } from './figure.mjs'
import { toldDemo } from './told-demo.mjs'

const cuesOfAFullNight = 24

/** @param {import('./stage.mjs').Stage} stage */
export async function deskBundle(stage) {
  const demo = await toldDemo(stage, 'desk_bundle')
  /** @type {{ title: string, cues: number, plain: number, packed: number }[]} */
  const bundles = []
  for (const { id, title, games } of await demo.nights()) {
    if (games.length === 0) continue
    // As it is sent to whoever asks without compression; compressed as every browser asks for it.
    const text = await demo.paper(`/nights/${id}/bundle`)
    bundles.push({ title, cues: JSON.parse(text.toString()).cues.length, plain: text.length, packed: gzipSync(text).length })
  }
  const fullest = bundles.toSorted((a, b) => b.packed - a.packed)[0]
  if (!fullest || fullest.cues < cuesOfAFullNight) throw new Error(`the demo has no night of ${cuesOfAFullNight} cues`)
  const kilobytes = (/** @type {number} */ bytes) => (bytes / 1000).toFixed(1)
  console.log(`    the fullest of ${bundles.length} nights: ${fullest.title}, ${fullest.cues} cues, ${kilobytes(fullest.plain)} kB as it is written, ${kilobytes(fullest.packed)} kB compressed`)
  return figure('desk-bundle', fullest.packed / 1000, { atMost: 150 }, 'kB')
}
