/** Planning a season in places: at once for a small one, and for a large one against the linear program of HiGHS on the same network. */
import highsLoader from 'highs'
import { figure, load, raw, ratioOf } from './figure.mjs'
import { largeSeason, smallSeason } from './plan-seasons.mjs'
import { rules } from './rules.mjs'

const rounds = 5
/** a missing read counts this for HiGHS, beside sixtieths of a read out of pace */
const shortfallBeforePace = 100_000
const files = ['server/domain/planning/places/plan-places.ts', 'server/domain/planning/places/open-season.ts', 'server/domain/planning/places/places-network.ts', 'server/domain/planning/flow/min-cost-flow.ts']

/** @template T @param {() => T} work @returns {{ cpu: number, result: T }} milliseconds of this process */
function measured(work) {
  const from = process.cpuUsage()
  const result = work()
  const { user, system } = process.cpuUsage(from)
  return { cpu: (user + system) / 1000, result }
}

/** @param {any} plan */
function tell(plan) {
  console.log(`    ${plan.reads.length} reads placed, ${plan.shortfallReads} without a place; weighted shortfall ${plan.weightedShortfall}, bound ${plan.bound}: ${plan.isProven ? 'optimal, proven' : 'not proven'}`)
}

/** @param {import('./stage.mjs').Stage} stage */
export async function planSmall(stage) {
  const { planPlaces } = await rules(stage, files)
  const season = smallSeason()
  for (let round = 0; round < 20; round += 1) planPlaces(season, { keeps: 'nothing' })
  const seconds = Array.from({ length: rounds }, () => {
    const from = performance.now()
    planPlaces(season, { keeps: 'nothing' })
    return (performance.now() - from) / 1000
  })
  const plan = planPlaces(season, { keeps: 'nothing' })
  console.log(`    8 sponsors with 2 commitments each over 14 games, warm; ${load()}`)
  tell(plan)
  raw('a plan', seconds.map((one) => one * 1000), 'ms')
  return figure('plan-small', plan.isProven ? Math.max(...seconds) : Infinity, { atMost: 0.3 }, 's')
}

/** @param {import('./stage.mjs').Stage} stage */
export async function planLarge(stage) {
  const { planPlaces, openSeason, placesNetwork, minCostFlow } = await rules(stage, files)
  const highs = await highsLoader()
  const season = largeSeason()
  const { network } = placesNetwork(openSeason(season), { keeps: 'nothing' }, new Map())
  const model = programOf(network)
  /** @type {[number[], number[]]} */
  const milliseconds = [[], []]
  let goal = NaN
  for (let round = 0; round <= rounds; round += 1) {
    const ours = measured(() => planPlaces(season, { keeps: 'nothing' }))
    const theirs = measured(() => highs.withModel(model, (solver) => {
      solver.options.set({ output_flag: false })
      solver.run()
      return Number(solver.info.get('objective_function_value'))
    }))
    goal = theirs.result
    if (round === 0) continue
    milliseconds[0].push(ours.cpu)
    milliseconds[1].push(theirs.cpu)
  }
  const plan = planPlaces(season, { keeps: 'nothing' })
  const { costs: [shortfall, , , pace] } = minCostFlow(network)
  console.log(`    60 sponsors with 3 commitments each over 120 games; ${network.nodes} nodes, ${network.arcs} arcs; CPU of one process, in turns`)
  tell(plan)
  console.log(`    shortfall and pace of the flow ${shortfall} and ${pace}, together ${shortfall * shortfallBeforePace + pace}; of the program ${goal}`)
  raw('our whole plan, with its proof, even shares and windows', milliseconds[0], 'ms')
  raw('HiGHS, the linear program of shortfall and pace', milliseconds[1], 'ms')
  if (Math.abs(shortfall * shortfallBeforePace + pace - goal) > 0.5) throw new Error('the flow and HiGHS do not come to the same')
  return figure('plan-large', plan.isProven ? ratioOf(milliseconds[0], milliseconds[1]) : Infinity, { atMost: 1.5 })
}

/** The network as a linear program in typed arrays: a row for each node, a column for each arc. @param {any} network */
function programOf({ nodes, arcs, source, target, capacity, costs, supply }) {
  const starts = Int32Array.from({ length: arcs + 1 }, (_, arc) => 2 * arc)
  const indices = Int32Array.from({ length: 2 * arcs }, (_, at) => (at % 2 === 0 ? source : target)[at >> 1])
  const values = Float64Array.from({ length: 2 * arcs }, (_, at) => (at % 2 === 0 ? 1 : -1))
  const sent = Float64Array.from(supply)
  return {
    numCols: arcs, numRows: nodes, rowLower: sent, rowUpper: sent, colLower: new Float64Array(arcs),
    colCost: Float64Array.from({ length: arcs }, (_, arc) => costs[0][arc] * shortfallBeforePace + costs[3][arc]),
    colUpper: Float64Array.from({ length: arcs }, (_, arc) => (capacity[arc] === Number.MAX_SAFE_INTEGER ? Infinity : capacity[arc])),
    matrix: { format: /** @type {const} */ ('csc'), numCols: arcs, numRows: nodes, starts, indices, values },
  }
}
