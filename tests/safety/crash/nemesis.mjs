/** Breaks what runs: one fault after the other, drawn from the seed, often in the very moment of an acknowledgement. */
import { wait } from '../../../server/commands/terminal.mjs'
import { signal } from './database.mjs'

const MENDED_WITHIN_MILLISECONDS = 120_000

/** How often each comes in twenty faults. */
const BAG = {
  'a server is killed': 5,
  'both servers are killed': 1,
  'a server is stopped for a while': 3,
  'the database is killed': 4,
  'only the postmaster is killed': 1,
  'a connection is ended': 3,
  'all connections are ended': 1,
  'a process of the database is stopped for a while': 2,
}
/** @typedef {keyof typeof BAG} Fault */

export class Nemesis {
  /** @type {Fault[]} */
  #bag = []
  /** @type {Set<Promise<unknown>>} */
  #mending = new Set()
  /** @type {Error | null} */
  #failure = null

  /** @param {{ chance: import('./random.mjs').Chance, database: import('./database.mjs').Database, servers: import('./servers.mjs').ServerOfTwo[], witness: import('./witness.mjs').Witness }} told */
  constructor({ chance, database, servers, witness }) {
    this.chance = chance
    this.database = database
    this.servers = servers
    this.witness = witness
  }

  /** Waits for its moment and strikes: in the very turn of an acknowledgement, because what was just acknowledged is what a careless program loses. @returns {Promise<Fault>} */
  async strike() {
    const fault = this.#next()
    await this.#untilWhole()
    const pids = this.database.processes()
    await this.#untilAcknowledged(this.chance.whole(1, 40))
    await this.#do(fault, pids)
    if (this.#failure) throw this.#failure
    return fault
  }

  /** @returns {Fault} */
  #next() {
    if (this.#bag.length === 0) {
      this.#bag = /** @type {Fault[]} */ (Object.keys(BAG)).flatMap((fault) => Array.from({ length: BAG[fault] }, () => fault))
      for (let place = this.#bag.length - 1; place > 0; place--) {
        const other = this.chance.whole(0, place)
        const [a, b] = [this.#bag[place], this.#bag[other]]
        if (a && b) [this.#bag[place], this.#bag[other]] = [b, a]
      }
    }
    return /** @type {Fault} */ (this.#bag.pop())
  }

  /** Where nothing can be acknowledged there is nothing to lose. */
  async #untilWhole() {
    for (const until = Date.now() + MENDED_WITHIN_MILLISECONDS; Date.now() < until; await wait(20)) {
      if (this.#failure) throw this.#failure
      if (!this.database.isDown && this.servers.some((server) => server.isUp)) return
    }
    throw new Error(`what was broken did not come back within ${MENDED_WITHIN_MILLISECONDS / 1000} seconds`)
  }

  /** Or ten seconds, where what is broken acknowledges nothing. @param {number} times */
  async #untilAcknowledged(times) {
    let isLate = false
    const clock = setTimeout(() => (isLate = true, this.witness.stopWaiting()), 10_000)
    for (let heard = 0; heard < times && !isLate; heard++) await this.witness.nextAcknowledgement()
    clearTimeout(clock)
  }

  /** @param {Fault} fault @param {number[]} pids */
  async #do(fault, pids) {
    const up = this.servers.filter((server) => server.isUp)
    if (up.length === 0) return
    switch (fault) {
      case 'a server is killed':
        return this.#killServers([this.chance.one(up)])
      case 'both servers are killed':
        return this.#killServers(up)
      case 'a server is stopped for a while':
        return this.#stop([this.chance.one(up).pid])
      case 'the database is killed':
        return this.#killDatabase(pids)
      case 'only the postmaster is killed':
        return this.#killDatabase(pids.slice(0, 1))
      case 'a connection is ended':
        return this.#end((open) => [this.chance.one(open)])
      case 'all connections are ended':
        return this.#end((open) => open)
      case 'a process of the database is stopped for a while':
        return this.#stop([this.chance.one(pids.slice(1))])
    }
  }

  /** @param {import('./servers.mjs').ServerOfTwo[]} servers */
  #killServers(servers) {
    for (const server of servers) server.kill()
    for (const server of servers) this.#mend(server.restart())
  }

  /** @param {number[]} pids */
  #killDatabase(pids) {
    this.database.kill(pids)
    const pause = this.chance.whole(0, 800)
    this.#mend(wait(pause).then(() => this.database.recover()))
  }

  /** @param {(pids: number[]) => number[]} choose */
  async #end(choose) {
    await this.database.terminate((open) => (open.length > 0 ? choose(open) : []))
  }

  /** @param {number[]} pids */
  #stop(pids) {
    for (const pid of pids) signal(pid, 'SIGSTOP')
    this.#mend(wait(this.chance.whole(200, 2500)).then(() => pids.forEach((pid) => signal(pid, 'SIGCONT'))))
  }

  /** @param {Promise<unknown>} work */
  #mend(work) {
    const mending = work.catch((failure) => (this.#failure = failure)).finally(() => this.#mending.delete(mending))
    this.#mending.add(mending)
  }

  async untilMended() {
    while (this.#mending.size > 0) await Promise.all(this.#mending)
    if (this.#failure) throw this.#failure
  }
}
