/** One contract's delivery statement, alone in the database and among 500 departments with a season each. */
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments, namesIn, season } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits } from './visits.mjs'

const departments = 500
const warmUp = 100
const measured = 400

/** @param {import('./stage.mjs').Stage} stage */
export async function deliveryStatement(stage) {
  const alone = await side(stage, 'one_department', 1)
  const among = await side(stage, 'many_departments', departments)
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  for (let round = -warmUp; round < measured; round++) {
    // Whoever comes second finds the machine warmer, so they take turns at it.
    const turn = /** @type {const} */ ([[0, alone], [1, among]])
    for (const [place, ask] of round % 2 === 0 ? turn : turn.toReversed()) {
      const from = performance.now()
      await ask()
      if (round >= 0) milliseconds[place].push(performance.now() - from)
    }
  }
  const lines = season.commitmentsPerContract * season.readsPerCommitment
  console.log(`    a statement of ${lines} lines, asked in turns; two databases on one PostgreSQL server, each with a server of its own`)
  raw('1 department', milliseconds[0], 'ms')
  raw(`${departments} departments`, milliseconds[1], 'ms')
  return figure('delivery-statement', ratioOf(milliseconds[1], milliseconds[0]), { atMost: 1.2 })
}

/** @param {import('./stage.mjs').Stage} stage @param {string} name @param {number} count of departments */
async function side(stage, name, count) {
  const database = await stage.database(name)
  const from = performance.now()
  await fillDepartments(database.adminUrl, 1, count)
  console.log(`    ${count} department${count === 1 ? '' : 's'} filled in ${((performance.now() - from) / 1000).toFixed(0)} s`)
  // The one in the middle, so that what is asked lies neither first nor last.
  const { departmentId, contractId } = await namesIn(database.adminUrl, Math.ceil(count / 2))
  const { token } = await signIn(database, departmentId)
  const visits = new Visits((await stage.server(database)).port, token, 1)
  const ask = () => visits.send(`/api/contracts/${contractId}/delivery-statement`)
  const { lines } = JSON.parse(String(await ask()))
  if (lines.length !== season.commitmentsPerContract * season.readsPerCommitment) throw new Error(`the statement has ${lines.length} lines`)
  stage.onClose(() => visits.close())
  return ask
}
