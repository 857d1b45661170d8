/** Bare `node:http` around `pg`: sends the statements it is given and answers the games as JSON. No guard, no checks, no rules. */
import { createServer } from 'node:http'
import pg from 'pg'

const { setTypeParsers } = await import(process.env.BENCH_TYPES ?? '')
setTypeParsers()

/** @type {{ webUrl: string, departmentId: string, personId: string, tokenHash: string, statements: string[] }} */
const told = JSON.parse(process.env.BENCH_TOLD ?? '')
const opening = `begin; set local app.department_id = '${told.departmentId}'; set local app.person_id = '${told.personId}'`
const session = told.statements.find((statement) => statement.includes('session_of'))
const lists = told.statements.filter((statement) => !/session_of|^begin|^commit/i.test(statement))

const options = '-c timezone=UTC -c lock_timeout=5000 -c statement_timeout=15000 -c idle_in_transaction_session_timeout=60000'
const guarded = new pg.Pool({ connectionString: told.webUrl, max: 10, options })
const raw = new pg.Pool({ connectionString: told.webUrl, max: 10, options: `${options} -c app.department_id=${told.departmentId}` })

/** @param {pg.PoolClient} client */
async function games(client) {
  /** @type {Map<string, any>} */
  const byId = new Map()
  let total = 0
  for (const statement of lists) {
    const { rows } = await client.query(statement, statement.includes('$2') ? [told.departmentId, [...byId.keys()]] : [told.departmentId])
    if (rows.length === 1 && 'total' in rows[0]) total = rows[0].total
    else for (const row of rows) {
      if (row.gameId) (byId.get(row.gameId).joined ??= []).push(row)
      else if (row.seasonId) byId.set(row.id, row)
    }
  }
  return { data: [...byId.values()], total }
}

async function guardedGames() {
  if (session) await guarded.query(session, [told.tokenHash])
  const client = await guarded.connect()
  try {
    await client.query(opening)
    const answer = await games(client)
    await client.query('commit')
    return answer
  } finally {
    client.release()
  }
}

async function rawGames() {
  const client = await raw.connect()
  return games(client).finally(() => client.release())
}

const server = createServer((request, response) => {
  const answer = request.url === '/raw' ? rawGames() : guardedGames()
  answer.then(
    (body) => response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(body)),
    (failure) => response.writeHead(500).end(String(failure)),
  )
})
server.listen(0, '127.0.0.1', () => process.send?.(server.address()))
process.on('disconnect', () => process.exit())
