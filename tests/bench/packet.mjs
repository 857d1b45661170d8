/** A night's packet asked for over HTTP, composed from the database and typeset, against the typesetter alone on the same documents. */
import 'reflect-metadata'
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Worker } from 'node:worker_threads'
import { NestFactory } from '@nestjs/core'
import { checkout } from '../../server/commands/build.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { toldDemo } from './told-demo.mjs'

const fewestPages = 30
const rounds = 5
const built = (/** @type {string} */ file) => import(pathToFileURL(join(checkout, '.build/server', `${file}.js`)).href)

/** @param {import('./stage.mjs').Stage} stage */
export async function packet(stage) {
  const demo = await toldDemo(stage, 'packet')
  const documents = await documentsOf(stage, demo)
  const alone = aloneTypesetter(stage)
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  for (let round = -1; round < rounds; round++) {
    // One document after the other, so that neither side finds the last one still in its memory.
    for (const [place, { nightId, data, digest }] of documents.entries()) {
      const sides = [
        () => demo.paper(`/nights/${nightId}/packet.pdf`),
        () => alone(data),
      ]
      for (const side of (round + place) % 2 === 0 ? [0, 1] : [1, 0]) {
        const from = performance.now()
        const pdf = await /** @type {() => Promise<Uint8Array>} */ (sides[side])()
        if (round >= 0) milliseconds[/** @type {0 | 1} */ (side)].push(performance.now() - from)
        if (digestOf(pdf) !== digest) throw new Error('the two sides do not set the same document')
      }
    }
  }
  console.log(`    ${documents.length} packets of the demo season of ${documents.map((one) => one.pageCount).join(', ')} pages, in turns; the typesetter alone is handed the finished texts`)
  raw('composed and typeset, over HTTP', milliseconds[0], 'ms')
  raw('typesetter alone', milliseconds[1], 'ms')
  return figure('packet', ratioOf(milliseconds[0], milliseconds[1]), { atMost: 1.5 })
}

const digestOf = (/** @type {Uint8Array} */ bytes) => createHash('sha256').update(bytes).digest('hex')

/** The texts of the packets as our typesetter gets them, taken where they pass.
 * @param {import('./stage.mjs').Stage} stage @param {import('./told-demo.mjs').Demo} demo */
async function documentsOf(stage, demo) {
  const [{ AppModule }, { readConfig }, { makeLog, NestLog }, { errands }, { PacketPrinter }, { Typesetter }, { packetTexts }] = await Promise.all(
    ['app.module', 'platform/config/config', 'platform/log/log', 'platform/database/scope', 'packet/packet-printer.service', 'platform/typesetting/typesetter', 'platform/typesetting/packet-sheet'].map(built),
  )
  const log = makeLog('error')
  const app = await NestFactory.createApplicationContext(AppModule.with(readConfig({ DATABASE_URL: demo.database.webUrl, RAFTERLINE_DATA: stage.file('packet') }), log), { logger: new NestLog(log) })
  const typesetter = app.get(Typesetter)
  const set = typesetter.set.bind(typesetter)
  let data
  typesetter.set = (/** @type {string} */ template, /** @type {unknown} */ sheet) => {
    data = packetTexts(sheet)
    return set(template, sheet)
  }
  const documents = []
  for (const night of await demo.nights()) {
    const { pdf, pageCount } = await errands.run({ scope: { departmentId: demo.departmentId, personId: null }, manager: null }, () => app.get(PacketPrinter).print(night.id, undefined, []))
    if (pageCount >= fewestPages) documents.push({ nightId: night.id, data, digest: digestOf(pdf), pageCount })
  }
  await app.close()
  if (documents.length < 4) throw new Error(`only ${documents.length} packets of the demo have ${fewestPages} pages`)
  return documents
}

/** @param {import('./stage.mjs').Stage} stage */
function aloneTypesetter(stage) {
  const worker = new Worker(pathToFileURL(join(checkout, '.build/server/platform/typesetting/typeset.worker.js')))
  stage.onClose(async () => void (await worker.terminate()))
  /** @param {unknown} data @returns {Promise<Uint8Array>} */
  return (data) => new Promise((done, fail) => {
    worker.once('message', ({ pdf, error }) => (pdf === null ? fail(new Error(error)) : done(pdf)))
    worker.postMessage({ id: 1, template: 'packet', data, createdAtSeconds: 1_767_225_600 })
  })
}
