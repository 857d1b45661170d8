/** One client at work: batches of log entries, payments, invoice runs; each is sent until it is answered. */

/**
 * @typedef {import('./season.mjs').Season} Season
 * @typedef {import('./random.mjs').Chance} Chance
 * @typedef {import('./witness.mjs').Witness} Witness
 * @typedef {import('./sender.mjs').Answer} Answer
 */

/** The nights that are open now, and how far billing has come; one for all clients. */
export class Desk {
  /** @param {Season} season @param {Chance} chance */
  constructor(season, chance) {
    this.season = season
    this.chance = chance
    this.nights = season.nights.slice()
    this.runs = 0
  }

  /** One of the three nights that are being played. @param {Chance} chance */
  night(chance) {
    return chance.one(this.nights.slice(0, 3))
  }

  /** The same few contracts for everybody, so that runs meet; each has its turn and comes again with the next installment due. @param {Chance} chance */
  contract(chance) {
    const { season } = this
    if (chance.happens(0.2)) return { contractId: chance.one(season.arrearsIds), throughDay: season.installmentDays.at(-1) ?? '' }
    this.runs += 1
    const turn = Math.floor(this.runs / 4)
    const round = Math.floor(turn / season.installmentIds.length)
    const contractId = season.installmentIds[turn % season.installmentIds.length] ?? ''
    return { contractId, throughDay: season.installmentDays[Math.min(round, season.installmentDays.length - 1)] ?? '' }
  }
}

export class Client {
  #deviceId
  #sequence = 0
  #made = 0
  /** @type {Record<string, any>[]} what this device has read and not taken back */
  #reads = []
  /** @type {{ path: string, body: unknown, entries: import('./witness.mjs').SentEntry[] } | null} */
  #lastBatch = null

  /** @param {{ name: string, desk: Desk, chance: Chance, sender: import('./sender.mjs').Sender, witness: Witness }} told */
  constructor({ name, desk, chance, sender, witness }) {
    this.name = name
    this.desk = desk
    this.chance = chance
    this.sender = sender
    this.witness = witness
    this.#deviceId = chance.id()
  }

  /** @param {() => boolean} isOver */
  async work(isOver) {
    while (!isOver()) {
      const what = this.chance.weighted({ log: 70, pay: 15, bill: 15 })
      if (what === 'log') await (this.#lastBatch && this.chance.happens(0.06) ? this.#resendLastBatch() : this.#log())
      else if (what === 'pay') await this.#pay()
      else await this.#bill()
    }
  }

  async #log() {
    const night = this.desk.night(this.chance)
    const entries = this.#entriesOf(night)
    const path = `/api/nights/${night.nightId}/log`
    const sending = () => {
      for (const { id, sequence } of entries) this.witness.sentEntries.set(id, { id, nightId: night.nightId, deviceId: this.#deviceId, sequence })
      return { path, body: { deviceId: this.#deviceId, entries } }
    }
    // A device that waits goes on being tapped: what it sends again is longer.
    const again = () => {
      if (entries.length < 20 && this.chance.happens(0.3)) entries.push(...this.#entriesOf(night))
      return sending()
    }
    await this.sender.untilAnswered(sending(), (answer) => this.#hearBatch(answer), again)
    const open = entries.filter(({ id }) => !this.witness.entries.has(id) && !this.witness.refusedEntries.has(id))
    if (open.length > 0 && this.witness.violations.length === 0) await this.sender.untilAnswered(sending(), (answer) => this.#hearBatch(answer))
    const sent = entries.flatMap(({ id }) => this.witness.sentEntries.get(id) ?? [])
    this.#lastBatch = { path, body: { deviceId: this.#deviceId, entries: entries.slice() }, entries: sent }
    this.#reads.push(...entries.filter((entry) => entry.kind === 'read' && this.witness.entries.has(entry.id)).map((entry) => ({ ...entry, nightId: night.nightId })))
  }

  /** @param {Answer} answer */
  #hearBatch({ status, body }) {
    if (status !== 200) return this.witness.violation(`a batch of log entries was answered ${status} ${JSON.stringify(body).slice(0, 200)}`)
    for (const result of body.results) {
      if (result.status === 'stored' || result.status === 'already') this.witness.entryAcknowledged(result.id, result.number)
      else if (result.status === 'refused' && result.code === 'night-already-signed-off') this.#refused(result.id)
      else this.witness.violation(`log entry ${result.id} was answered ${JSON.stringify(result)}`)
    }
  }

  /** @param {string} id */
  #refused(id) {
    if (this.witness.entries.has(id)) this.witness.violation(`log entry ${id} was acknowledged and refused afterwards`)
    this.witness.refusedEntries.add(id)
  }

  /** An old answer may have been lost on its way: what the server knows, it says again. */
  async #resendLastBatch() {
    const batch = this.#lastBatch
    if (batch) await this.sender.untilAnswered({ path: batch.path, body: batch.body }, (answer) => this.#hearBatch(answer))
  }

  /** @param {import('./season.mjs').Night} night @returns {Record<string, any>[]} */
  #entriesOf(night) {
    return Array.from({ length: this.chance.whole(1, 6) }, () => this.#entryOf(night))
  }

  /** @param {import('./season.mjs').Night} night @returns {Record<string, any>} */
  #entryOf({ nightId, gameId }) {
    this.#sequence += 1
    const entry = { id: this.chance.id(), sequence: this.#sequence, gameId, occurredAt: '2026-12-05T02:30:00.000Z' }
    const { season } = this.desk
    const kind = this.chance.weighted({ read: 25, foul: 25, note: 45, takenBack: 5 })
    if (kind === 'read') {
      const cueKey = `game:${gameId}/halftime/${this.name}-${this.#sequence}`
      return { ...entry, kind, outcome: 'given', commitmentId: this.chance.one(season.commitmentIds), cueKey, windowKey: 'halftime' }
    }
    const place = this.#reads.findIndex((read) => read.nightId === nightId)
    if (kind === 'takenBack' && place >= 0) return { ...entry, kind, takesBackEntryId: this.#reads.splice(place, 1)[0]?.id }
    if (kind === 'foul') return { ...entry, kind, teamId: season.teamId, playerNumber: String(this.chance.whole(0, 55)), period: '2', clock: '3:12' }
    return { ...entry, kind: 'note', detail: { words: `${this.name} wrote ${this.#sequence}` } }
  }

  async #pay() {
    const { season } = this.desk
    this.#made += 1
    const reference = `${this.name}-${this.#made}`
    const amountCents = this.chance.whole(100, 50_000)
    const key = this.chance.id()
    const id = this.chance.happens(0.3) ? this.chance.id() : undefined
    const invoice = this.witness.payable.length > 0 && this.chance.happens(0.6) ? this.chance.one(this.witness.payable) : null
    const applied = invoice ? Math.min(amountCents, this.chance.whole(1, invoice.grossCents)) : 0
    const body = {
      ...(id ? { id } : {}), sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-11-20', method: 'check', reference, amountCents,
      ...(invoice ? { applications: [{ invoiceId: invoice.id, amountCents: applied }] } : {}),
    }
    this.witness.sentPayments.set(reference, { key, reference, amountCents, id })
    const sending = { path: '/api/payments', key, body }
    /** @param {Answer} answer */
    const hear = (answer) => {
      if (answer.status === 201) this.witness.paymentAcknowledged(reference, answer.body.id)
      else if (answer.body?.code === 'more-than-balance') this.witness.refusedPayments.add(reference)
      else this.witness.violation(`payment ${reference} was answered ${answer.status} ${JSON.stringify(answer.body).slice(0, 200)}`)
    }
    await this.sender.untilAnswered(sending, hear)
    if (this.chance.happens(0.15)) await this.sender.untilAnswered(sending, hear)
    // A refusal stores nothing, so another attempt with the key may have got through.
    if (this.witness.payments.has(reference)) this.witness.refusedPayments.delete(reference)
  }

  async #bill() {
    const due = this.desk.contract(this.chance)
    // Two bookkeepers at once, each with a key of their own.
    const runs = this.chance.happens(0.4) ? 2 : 1
    await Promise.all(Array.from({ length: runs }, () => this.#run(due, this.chance.id())))
  }

  /** @param {{ contractId: string, throughDay: string }} due @param {string} key */
  async #run(due, key) {
    this.witness.sentInvoiceRuns.add(key)
    const sending = { path: '/api/invoices', key, body: { ...due, issuedOn: '2026-11-20' } }
    /** @param {Answer} answer */
    const hear = ({ status, body }) => {
      if (status === 201) this.witness.invoiceAcknowledged(key, body)
      else if (body?.code !== 'nothing-to-bill') this.witness.violation(`an invoice run was answered ${status} ${JSON.stringify(body).slice(0, 200)}`)
    }
    const answered = await this.sender.untilAnswered(sending, hear)
    if (answered && this.witness.invoices.has(key) && this.chance.happens(0.15)) await this.sender.untilAnswered(sending, hear)
  }
}
