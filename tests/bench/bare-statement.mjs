/** Bare `node:http` around `pg`: sends the statements of one contract's delivery statement and answers their rows as JSON. No guard, no checks, no rules, no words. */
import { createServer } from 'node:http'
import pg from 'pg'

const { setTypeParsers } = await import(process.env.BENCH_TYPES ?? '')
setTypeParsers()

/** @type {{ webUrl: string, departmentId: string, personId: string, tokenHash: string, contractId: string, statements: string[] }} */
const told = JSON.parse(process.env.BENCH_TOLD ?? '')
const opening = `begin; set local app.department_id = '${told.departmentId}'; set local app.person_id = '${told.personId}'`
const session = told.statements.find((statement) => statement.includes('session_of'))
const statements = told.statements.filter((statement) => !/session_of|^begin|^commit/i.test(statement))
const pool = new pg.Pool({ connectionString: told.webUrl, max: 10, options: '-c timezone=UTC -c lock_timeout=5000 -c statement_timeout=15000 -c idle_in_transaction_session_timeout=60000' })

/** What a statement asks with: the contract, or what the lines before it name. @param {string} statement @param {any[]} lines */
function asksWith(statement, lines) {
  if (!statement.includes('$2')) return [told.departmentId]
  if (!statement.includes('any($2')) return statement.includes('"id" = $1') ? [told.contractId, told.departmentId] : [told.departmentId, told.contractId]
  const games = lines.flatMap(({ happening }) => happening.gameId ?? [])
  const causes = (/** @type {string} */ kind) => lines.filter(({ cause }) => cause === kind).map(({ causeId }) => causeId)
  const ids = / from night /.test(statement) ? [...causes('night'), ...games] : / from game /.test(statement) ? games : causes('contract')
  return [told.departmentId, [...new Set(ids)]]
}

async function statement() {
  if (session) await pool.query(session, [told.tokenHash])
  const client = await pool.connect()
  try {
    await client.query(opening)
    /** @type {any[]} */
    let lines = []
    const others = []
    for (const text of statements) {
      const { rows } = await client.query(text, asksWith(text, lines))
      if (text.includes('window standing')) lines = rows
      else others.push(rows)
    }
    await client.query('commit')
    return { lines, others }
  } finally {
    client.release()
  }
}

const server = createServer((_, response) => {
  statement().then(
    (body) => response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(body)),
    (failure) => response.writeHead(500).end(String(failure)),
  )
})
server.listen(0, '127.0.0.1', () => process.send?.(server.address()))
process.on('disconnect', () => process.exit())
