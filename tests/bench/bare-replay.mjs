/** Bare `node:http` around `pg`: sends the statements it is told, by the name of an address, one after the other in one transaction, and answers their rows. No guard, no rules. */
import { createServer } from 'node:http'
import pg from 'pg'

const { setTypeParsers } = await import(process.env.BENCH_TYPES ?? '')
setTypeParsers()

/** @type {{ webUrl: string, statements: Record<string, { text: string, values: unknown[] }[]> }} */
const told = await new Promise((done) => process.once('message', done))
const pool = new pg.Pool({ connectionString: told.webUrl, max: 2, options: '-c timezone=UTC' })

/** @param {string} address */
async function rowsOf(address) {
  const client = await pool.connect()
  try {
    const answer = []
    for (const { text, values } of told.statements[address] ?? []) {
      const found = await client.query(text, values)
      answer.push(Array.isArray(found) ? [] : found.rows)
    }
    return answer
  } finally {
    client.release()
  }
}

const server = createServer((request, response) => {
  rowsOf(request.url ?? '').then(
    (body) => response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(body)),
    (failure) => response.writeHead(500).end(String(failure)),
  )
})
server.listen(0, '127.0.0.1', () => process.send?.(server.address()))
process.on('disconnect', () => process.exit())
