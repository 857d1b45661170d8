/** What the clients sent and what they were told. It remembers; it never asks. */

/** @typedef {{ id: string, nightId: string, deviceId: string, sequence: number }} SentEntry */
/** @typedef {{ key: string, reference: string, amountCents: number, id?: string | undefined }} SentPayment */

const SHOWN = 5

export class Witness {
  /** every entry that was ever sent @type {Map<string, SentEntry>} */
  sentEntries = new Map()
  /** id → its number in the night's log @type {Map<string, number>} */
  entries = new Map()
  /** entry ids that were refused for good @type {Set<string>} */
  refusedEntries = new Set()
  /** every payment that was ever sent, by its reference @type {Map<string, SentPayment>} */
  sentPayments = new Map()
  /** reference → id @type {Map<string, string>} */
  payments = new Map()
  /** @type {Set<string>} */
  refusedPayments = new Set()
  /** key of an invoice run → the invoice's id @type {Map<string, string>} */
  invoices = new Map()
  /** the key of every invoice run that was ever sent @type {Set<string>} */
  sentInvoiceRuns = new Set()
  /** what can still be paid @type {{ id: string, grossCents: number }[]} */
  payable = []
  /** @type {Set<string>} */
  signedOffNights = new Set()
  /** @type {string[]} */
  violations = []
  /** how often which answer came @type {Map<string, number>} */
  answers = new Map()
  /** @type {(() => void)[]} */
  #waiting = []

  /** @param {string} sentence */
  violation(sentence) {
    if (this.violations.includes(sentence)) return
    this.violations.push(sentence)
    if (this.violations.length <= SHOWN) console.log(`  VIOLATION: ${sentence}`)
  }

  /** @param {string} what */
  heard(what) {
    this.answers.set(what, (this.answers.get(what) ?? 0) + 1)
  }

  /** What is told twice must be told alike. @param {Map<string, string | number>} told @param {string} what @param {string} key @param {string | number} value */
  #acknowledge(told, what, key, value) {
    const before = told.get(key)
    if (before !== undefined && before !== value) this.violation(`${what} ${key} was acknowledged as ${before} and then as ${value}`)
    if (before === undefined) told.set(key, value)
    this.stopWaiting()
  }

  /** @param {string} id @param {number} number */
  entryAcknowledged(id, number) {
    this.#acknowledge(this.entries, 'log entry', id, number)
  }

  /** @param {string} reference @param {string} id */
  paymentAcknowledged(reference, id) {
    this.#acknowledge(this.payments, 'payment', reference, id)
  }

  /** @param {string} key @param {{ id: string, grossCents: number }} invoice */
  invoiceAcknowledged(key, { id, grossCents }) {
    if (!this.invoices.has(key)) this.payable.push({ id, grossCents })
    this.#acknowledge(this.invoices, 'invoice run', key, id)
  }

  /** Whoever waits for an acknowledgement goes on. */
  stopWaiting() {
    for (const go of this.#waiting.splice(0)) go()
  }

  /** In the very turn in which the next acknowledgement is heard. */
  nextAcknowledgement() {
    return new Promise((done) => this.#waiting.push(() => done(undefined)))
  }

  /** Copies of what was acknowledged so far, to be looked for in a later state of the database. */
  acknowledged() {
    return {
      entries: new Map(this.entries), payments: new Map(this.payments), invoices: new Map(this.invoices), signedOffNights: new Set(this.signedOffNights),
      refusedEntries: new Set(this.refusedEntries), refusedPayments: new Set(this.refusedPayments),
    }
  }
}
