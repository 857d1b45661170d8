/** Planning with seconds and company: the optimum or its bound in the time of a person who waits, and a server that goes on meanwhile. */
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { checkout } from '../../server/commands/build.mjs'
import { figure, load } from './figure.mjs'
import { rules } from './rules.mjs'

const seconds = 30
/** what the solver may need beyond its time to end by itself */
const graceSeconds = 3

/** @param {import('./stage.mjs').Stage} stage */
export async function planCompany(stage) {
  const { aCrowdedSeason, faultsOfPlan } = await rules(stage, ['tests/support/crowded-season.ts', 'server/domain/planning/company/checked-plan.ts'])
  const { PlanSolver } = await import(pathToFileURL(join(checkout, '.build/server/planning/solver/plan-solver.service.js')).href)
  const season = aCrowdedSeason(8, 14)
  const asked = season.promises.flatMap((/** @type {any} */ promise) => promise.slots).reduce((/** @type {number} */ sum, /** @type {any} */ slot) => sum + slot.reads, 0)
  const solver = new PlanSolver()
  stage.onClose(() => solver.close())
  await solver.solve(aCrowdedSeason(1, 1), { keeps: 'nothing' }, { seconds: 5, company: true })
  const places = await solver.solve(season, { keeps: 'nothing' }, { seconds, company: false })
  const delay = monitorEventLoopDelay({ resolution: 5 })
  delay.enable()
  const from = performance.now()
  const plan = await solver.solve(season, { keeps: 'nothing' }, { seconds, company: true })
  const took = (performance.now() - from) / 1000
  delay.disable()
  console.log(`    8 sponsors with 3 commitments each over 14 games, ${asked} reads asked for, of 15 to 30 seconds, three categories; ${load()}`)
  console.log(`    in places alone: weighted shortfall ${places.weightedShortfall}, and the plan breaks seconds or company in ${faultsOfPlan(season, places.reads).length} places`)
  console.log(`    with seconds and company: ${plan.reads.length} reads placed, ${plan.shortfallReads} without a place; weighted shortfall ${plan.weightedShortfall}, bound ${plan.bound}: ${plan.isProven ? 'optimal, proven' : 'not proven'}; ${faultsOfPlan(season, plan.reads).length} faults`)
  const isAnswered = figure('plan-company', took, { atMost: seconds + graceSeconds }, 's')
  // Turns of 5 ms are measured, so that much is no delay.
  return figure('plan-company, the longest the server waited', delay.max / 1e6 - 5, { atMost: 200 }, 'ms') && isAnswered
}
