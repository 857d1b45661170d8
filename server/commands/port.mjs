import { createServer } from 'node:net'

/** A port that is free now. @param {number} [wanted] @param {string} [host] @returns {Promise<number>} */
export function freePort(wanted = 0, host = '127.0.0.1') {
  return new Promise((done, fail) => {
    const probe = createServer()
    probe.unref()
    probe.on('error', fail)
    probe.listen({ port: wanted, host, exclusive: true }, () => {
      const address = probe.address()
      probe.close(() => done(typeof address === 'object' && address ? address.port : wanted))
    })
  })
}
