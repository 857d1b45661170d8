/** An invoice asked for over HTTP, read from the database and typeset, against the typesetter alone on the same texts. */
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Worker } from 'node:worker_threads'
import { checkout } from '../../server/commands/build.mjs'
import { fillBilling, lines } from './billing-fill.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { built, openRooms } from './office.mjs'
import { signIn } from './stage.mjs'
import { Visits } from './visits.mjs'

const warmUp = 10
const measured = 60

/** @param {import('./stage.mjs').Stage} stage */
export async function invoicePdf(stage) {
  const database = await stage.database('invoice_pdf')
  const [departmentId] = /** @type {[string]} */ (await fillBilling(database.adminUrl, 1, 20))
  const invoices = await issued(stage, database, departmentId)
  const { token } = await signIn(database, departmentId)
  const visits = new Visits((await stage.server(database)).port, token, 1)
  stage.onClose(() => visits.close())
  const alone = aloneTypesetter(stage)
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  for (let round = -warmUp; round < measured; round++) {
    const { id, texts, digest } = /** @type {(typeof invoices)[number]} */ (invoices[(round + warmUp) % invoices.length])
    const sides = [async () => visits.send(`/api/invoices/${id}/invoice.pdf`), () => alone(texts)]
    for (const side of round % 2 === 0 ? [0, 1] : [1, 0]) {
      const from = performance.now()
      const pdf = await /** @type {() => Promise<any>} */ (sides[side])()
      if (round >= 0) milliseconds[/** @type {0 | 1} */ (side)].push(performance.now() - from)
      if (digestOf(pdf) !== digest) throw new Error('the two sides do not set the same document')
    }
  }
  console.log(`    ${invoices.length} invoices of ${lines} lines, asked in turns; the typesetter alone is handed the finished texts`)
  raw('read and typeset, over HTTP', milliseconds[0], 'ms')
  raw('typesetter alone', milliseconds[1], 'ms')
  return figure('invoice-pdf', ratioOf(milliseconds[0], milliseconds[1]), { atMost: 1.5 })
}

const digestOf = (/** @type {Uint8Array} */ bytes) => createHash('sha256').update(bytes).digest('hex')

/** Invoices, and their texts as our typesetter gets them. @param {import('./stage.mjs').Stage} stage @param {import('./stage.mjs').Database} database @param {string} departmentId */
async function issued(stage, database, departmentId) {
  const rooms = await openRooms(stage, database, 'invoice-pdf')
  const [{ BillingRuns }, { BillingRunViews }, { UnitOfWork }, { InvoicePrinting }, { Typesetter }, { invoiceTexts }] = await Promise.all(
    ['billing/runs/billing-runs.service', 'billing/runs/billing-run-views.service', 'platform/database/unit-of-work', 'billing/invoices/invoice-printing.service',
      'platform/typesetting/typesetter', 'platform/typesetting/invoice-sheet'].map(built),
  )
  const typesetter = rooms.get(Typesetter)
  const pdf = typesetter.pdf.bind(typesetter)
  /** @type {unknown} */
  let texts
  typesetter.pdf = (/** @type {string} */ template, /** @type {unknown} */ sheet) => {
    texts = invoiceTexts(sheet)
    return pdf(template, sheet)
  }
  return rooms.inDepartment(departmentId, async () => {
    const work = rooms.get(UnitOfWork)
    const run = await work.run(() => rooms.get(BillingRuns).start({ throughDay: '2026-12-31', issuedOn: '2026-12-31' }))
    await rooms.get(BillingRuns).drive(run)
    const { lines: billed } = await work.run(() => rooms.get(BillingRunViews).one(run))
    const invoices = []
    for (const { invoiceId } of billed) {
      const { bytes } = await rooms.get(InvoicePrinting).pdf(invoiceId)
      invoices.push({ id: invoiceId, texts, digest: digestOf(bytes) })
    }
    return invoices
  })
}

/** @param {import('./stage.mjs').Stage} stage */
function aloneTypesetter(stage) {
  const worker = new Worker(pathToFileURL(join(checkout, '.build/server/platform/typesetting/typeset.worker.js')))
  stage.onClose(async () => void (await worker.terminate()))
  /** @param {unknown} data @returns {Promise<Uint8Array>} */
  return (data) => new Promise((done, fail) => {
    worker.once('message', ({ pdf, error }) => (pdf === null ? fail(new Error(error)) : done(pdf)))
    worker.postMessage({ id: 1, template: 'invoice', data, createdAtSeconds: 1_767_225_600 })
  })
}
