/** The list of games over HTTP, against the same statements through `pg` behind a bare `node:http` server. */
import { bareProgram, statementsOf } from './bare.mjs'
import { figure, ratioOf, raw } from './figure.mjs'
import { fillDepartments, namesIn, season } from './fill.mjs'
import { signIn } from './stage.mjs'
import { Visits, perSecond } from './visits.mjs'

const path = '/api/games?perPage=25&sort=playedOn'
const connections = 8
const rounds = 11
const seconds = 1

/** @param {import('./stage.mjs').Stage} stage */
export async function gamesList(stage) {
  const database = await stage.database('games_list')
  await fillDepartments(database.adminUrl, 1, 1)
  const { departmentId } = await namesIn(database.adminUrl)
  const person = await signIn(database, departmentId)
  const statements = await statementsOf(stage, database, person.token, path)
  const server = await stage.server(database)
  const bare = await bareProgram(stage, './bare-server.mjs', { webUrl: database.webUrl, departmentId, personId: person.personId, tokenHash: person.tokenHash, statements })
  const ours = new Visits(server.port, person.token, connections)
  const theirs = new Visits(bare, undefined, connections)
  const sides = {
    ours: () => ours.send(path),
    guarded: () => theirs.send('/guarded'),
    raw: () => theirs.send('/raw'),
  }
  const [mine, other] = [JSON.parse(String(await sides.ours())), JSON.parse(String(await sides.guarded()))]
  if (mine.data.length !== 25 || mine.total !== season.games || other.total !== mine.total || other.data[0].id !== mine.data[0].id) throw new Error('the two sides do not list the same games')
  /** @type {Record<keyof typeof sides, number[]>} */
  const measured = { ours: [], guarded: [], raw: [] }
  for (const side of Object.values(sides)) await perSecond(connections, 2 * seconds, side)
  for (let round = 0; round < rounds; round++) {
    for (const [name, side] of /** @type {[keyof typeof sides, () => Promise<unknown>][]} */ (Object.entries(sides))) measured[name].push(await perSecond(connections, seconds, side))
  }
  ours.close()
  theirs.close()
  console.log(`    25 of ${season.games} games, ${connections} connections; the bare side sends the same ${statements.length} statements: session, begin with the scope, the lists, commit`)
  raw('Rafterline', measured.ours, 'lists/s')
  raw('bare, same statements', measured.guarded, 'lists/s')
  raw('bare, no session look-up and no transaction (not the target)', measured.raw, 'lists/s')
  console.log(`    against the last: ${ratioOf(measured.ours, measured.raw).toFixed(2)} x`)
  return figure('games-list', ratioOf(measured.ours, measured.guarded), { atLeast: 0.5 })
}
