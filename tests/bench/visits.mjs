/** Requests over connections that are kept open, as few steps around them as can be: the driver takes its share of the machine too. */
import { Agent, request } from 'node:http'

export class Visits {
  #agent
  #port
  #headers

  /** @param {number} port @param {string} [token] of a session @param {number} [connections] */
  constructor(port, token, connections = 8) {
    this.#agent = new Agent({ keepAlive: true, maxSockets: connections })
    this.#port = port
    this.#headers = { 'x-rafterline': '1', ...(token ? { cookie: `rafterline-${port}=${token}` } : {}) }
  }

  /** @param {string} path @param {unknown} [body] posted where there is one @returns {Promise<Buffer>} */
  send(path, body) {
    const text = body === undefined ? '' : JSON.stringify(body)
    const headers = text ? { ...this.#headers, 'content-type': 'application/json', 'content-length': Buffer.byteLength(text) } : this.#headers
    return new Promise((done, fail) => {
      const sent = request({ agent: this.#agent, host: '127.0.0.1', port: this.#port, path, method: text ? 'POST' : 'GET', headers }, (response) => {
        /** @type {Buffer[]} */
        const parts = []
        response.on('data', (part) => parts.push(part))
        response.on('error', fail)
        response.on('end', () => {
          const answer = Buffer.concat(parts)
          if (response.statusCode === 200) done(answer)
          else fail(new Error(`${path} answered ${response.statusCode}: ${answer.toString().slice(0, 400)}`))
        })
      })
      sent.on('error', fail)
      sent.end(text)
    })
  }

  close() {
    this.#agent.destroy()
  }
}

/** How often `once` is done in a second when `lanes` of them go at the same time. @param {number} lanes @param {number} seconds @param {(lane: number) => Promise<unknown>} once */
export async function perSecond(lanes, seconds, once) {
  const from = performance.now()
  const until = from + seconds * 1000
  let times = 0
  await Promise.all(Array.from({ length: lanes }, async (_, lane) => {
    for (; performance.now() < until; times++) await once(lane)
  }))
  return times / ((performance.now() - from) / 1000)
}
