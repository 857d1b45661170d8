/** Sends a request as a bad line would: to either server, cut off, doubled, again and again until somebody answers. */
import { Agent, request } from 'node:http'
import { wait } from '../../../server/commands/terminal.mjs'

/**
 * @typedef {{ status: number, body: any }} Answer
 * @typedef {{ path: string, body: unknown, key?: string }} Sending
 */

const PATIENCE_MILLISECONDS = 4000
/** Longer than any fault lasts, on a machine with other work too. */
const GIVES_UP_AFTER_MILLISECONDS = 180_000

export class Sender {
  #agent = new Agent({ keepAlive: true, maxSockets: 6 })

  /** @param {{ ports: readonly number[], token: string, chance: import('./random.mjs').Chance, witness: import('./witness.mjs').Witness }} told */
  constructor({ ports, token, chance, witness }) {
    this.ports = ports
    this.token = token
    this.chance = chance
    this.witness = witness
  }

  close() {
    this.#agent.destroy()
  }

  /** Sends until there is an answer that stands. `more` may add to the sending before each further attempt.
   * @param {Sending} sending @param {(answer: Answer) => void} hear is told of every answer that stands; two when it was sent twice at once
   * @param {() => Sending} [again] @returns {Promise<boolean>} false when nobody answered */
  async untilAnswered(sending, hear, again = () => sending) {
    const until = Date.now() + GIVES_UP_AFTER_MILLISECONDS
    for (let attempt = 0; Date.now() < until; attempt++) {
      const answers = await this.#attempt(attempt === 0 ? sending : again())
      for (const answer of answers) hear(answer)
      if (answers.length > 0) return true
      await wait(this.chance.whole(20, 200))
    }
    this.witness.violation(`${sending.path} was not answered in ${GIVES_UP_AFTER_MILLISECONDS / 1000} seconds`)
    return false
  }

  /** @param {Sending} sending @returns {Promise<Answer[]>} */
  async #attempt(sending) {
    const first = this.chance.whole(0, this.ports.length - 1)
    const way = this.chance.weighted({ plain: 80, doubled: 10, cut: 10 })
    const cutAfter = way === 'cut' ? this.chance.whole(0, 25) : null
    const to = way === 'doubled' ? [first, this.chance.happens(0.7) ? 1 - first : first] : [first]
    const answers = await Promise.all(to.map((place) => this.#once(this.ports[place] ?? 0, sending, cutAfter).catch(() => null)))
    return answers.filter((answer) => answer !== null && stands(answer)).map((answer) => /** @type {Answer} */ (answer))
  }

  /** @param {number} port @param {Sending} sending @param {number | null} cutAfterMilliseconds @returns {Promise<Answer>} */
  #once(port, { path, body, key }, cutAfterMilliseconds) {
    const text = JSON.stringify(body)
    const headers = {
      'x-rafterline': '1', cookie: `rafterline-${port}=${this.token}`, 'content-type': 'application/json', 'content-length': Buffer.byteLength(text),
      ...(key ? { 'idempotency-key': key } : {}),
    }
    return new Promise((done, fail) => {
      const sent = request({ agent: this.#agent, host: '127.0.0.1', port, path, method: 'POST', headers, timeout: PATIENCE_MILLISECONDS }, (response) => {
        /** @type {Buffer[]} */
        const parts = []
        response.on('data', (part) => parts.push(part))
        response.on('error', fail)
        response.on('close', () => response.complete || fail(new Error('cut off')))
        response.on('end', () => {
          const said = Buffer.concat(parts).toString()
          const answer = { status: response.statusCode ?? 0, body: said.startsWith('{') ? JSON.parse(said) : said }
          this.witness.heard(`${answer.status}${answer.body?.code ? ` ${answer.body.code}` : ''}`)
          done(answer)
        })
      })
      sent.on('timeout', () => sent.destroy(new Error('no answer')))
      sent.on('error', (failure) => {
        this.witness.heard('no answer')
        fail(failure)
      })
      if (cutAfterMilliseconds !== null) sent.on('finish', () => setTimeout(() => sent.destroy(new Error('cut')), cutAfterMilliseconds))
      sent.end(text)
    })
  }
}

/** Does the answer settle the matter? Else the same is sent again. @param {Answer} answer */
function stands({ status, body }) {
  return status < 500 && status !== 429 && body?.code !== 'still-running'
}
