/** What a careful person does with the same seasons: an even pace for one commitment after another, or the earliest places first. */
import { figure } from './figure.mjs'
import { largeSeason, smallSeason } from './plan-seasons.mjs'
import { rules } from './rules.mjs'

/** @typedef {import('../../server/domain/planning/season.ts').PlanSeason} PlanSeason */
/** @typedef {PlanSeason['promises'][number]} PlanPromise */
/** @typedef {PlanSeason['games'][number]} PlanGame */

/** @param {import('./stage.mjs').Stage} stage */
export async function planByHand(stage) {
  const { planPlaces, firstSpread } = await rules(stage, ['server/domain/planning/places/plan-places.ts', 'tests/support/hand-plan.ts'])
  let isAbove = 0
  for (const [name, season] of /** @type {const} */ ([['8 sponsors, 14 games', smallSeason()], ['60 sponsors, 120 games', largeSeason()]])) {
    const asked = season.promises.reduce((sum, promise) => sum + promise.slots.reduce((all, slot) => all + slot.reads, 0), 0)
    const plan = planPlaces(season, { keeps: 'nothing' })
    const unavoidable = plan.bottlenecks.reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + one.needed - one.places, 0)
    const paced = pacedByHand(season, firstSpread)
    const earliest = earliestFirst(season)
    isAbove += plan.shortfallReads - unavoidable
    console.log(`    ${name}: ${asked} reads asked for, ${unavoidable} of them unavoidably without a place (bound of the weighted shortfall ${plan.bound}${plan.isProven ? ', proven' : ''})`)
    console.log(`      above that: ours ${plan.shortfallReads - unavoidable}, a paced hand plan ${paced - unavoidable}, earliest first ${earliest - unavoidable}`)
  }
  tellMoves(largeSeason(), planPlaces)
  return figure('plan-by-hand', isAbove, { atMost: 0 }, 'reads above the unavoidable')
}

/** A game of the middle of the season falls out. @param {PlanSeason} season @param {any} planPlaces */
function tellMoves(season, planPlaces) {
  const gone = season.games[season.games.length >> 1]?.gameId
  const placed = planPlaces(season, { keeps: 'nothing' }).reads.map((/** @type {any} */ read) => ({ ...read, placementId: null, isFixed: false }))
  const without = { ...season, games: season.games.filter((game) => game.gameId !== gone), placed }
  const [kept, free] = ['whatIsPlaced', 'nothing'].map((keeps) => planPlaces(without, { keeps }))
  console.log(`    when one of ${season.games.length} games falls out, ${kept.movedReads} of ${placed.length} reads move to another game (planned anew: ${free.movedReads}), at a weighted shortfall of ${kept.weightedShortfall} (${free.weightedShortfall})`)
}

/** The windows a promise may be read in, the preferred first. @param {PlanPromise} promise @param {PlanGame} game */
const windowsOf = (promise, game) => promise.windows.flatMap((name) => game.windows.filter((window) => window.key === name || window.kind === name).map((window) => window.key))

/** Reads without a place when each commitment is paced evenly and what finds no place moves on. @param {PlanSeason} season @param {any} firstSpread */
function pacedByHand(season, firstSpread) {
  const spread = firstSpread({
    games: season.games.map(({ gameId, nightId, playedOn, windows }) => ({
      gameId, nightId, playedOn, teamIds: [gameId], level: '', isAnnounced: true, isHome: true, places: Object.fromEntries(windows.map((window) => [window.key, window.places])),
    })),
    commitments: season.promises.map((promise) => ({
      commitmentId: promise.promiseId, sponsorId: promise.sponsorId, readKindId: promise.readKindId, counting: 'perTerm', readsOwed: promise.slots[0]?.reads ?? 0,
      startsOn: '2000-01-01', endsOn: '2100-01-01', teamIds: promise.slots[0]?.gameIds ?? [], levels: [], leastPerGame: null, mostPerGame: promise.mostPerGame,
      windows: [...new Set(season.games.flatMap((game) => windowsOf(promise, game)))], sponsorsPerGame: promise.sponsorsPerGame, priority: promise.priority,
    })),
    alreadyPlaced: [],
  })
  return spread.unplaced.reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + one.reads, 0)
}

/** Reads without a place when each commitment, the first served first, takes the earliest places there are. @param {PlanSeason} season */
function earliestFirst(season) {
  const games = new Map(season.games.map((game) => [game.gameId, { game, free: new Map(game.windows.map((window) => [window.key, window.places])), sponsors: new Map() }]))
  let missing = 0
  for (const promise of season.promises.toSorted((a, b) => a.priority - b.priority || (a.promiseId < b.promiseId ? -1 : 1))) {
    let left = promise.slots[0]?.reads ?? 0
    for (const gameId of promise.slots[0]?.gameIds ?? []) {
      const at = /** @type {NonNullable<ReturnType<typeof games.get>>} */ (games.get(gameId))
      const sponsors = at.sponsors.get(promise.readKindId) ?? new Set()
      if (!sponsors.has(promise.sponsorId) && sponsors.size >= promise.sponsorsPerGame) continue
      for (let here = 0; left > 0 && here < (promise.mostPerGame ?? Infinity); here += 1) {
        const key = windowsOf(promise, at.game).find((window) => (at.free.get(window) ?? 0) > 0)
        if (key === undefined) break
        at.free.set(key, (at.free.get(key) ?? 0) - 1)
        at.sponsors.set(promise.readKindId, sponsors.add(promise.sponsorId))
        left -= 1
      }
    }
    missing += left
  }
  return missing
}
