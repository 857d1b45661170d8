/** Seasons for the figures of planning: the same for the same numbers, crowded where real ones are. */

/** @typedef {import('../../server/domain/planning/season.ts').PlanSeason} PlanSeason */

/** Numbers from 0 on, below 1, the same for the same seed (a linear congruence of 2^32; Numerical Recipes, from memory). @param {number} seed */
function chance(seed) {
  let state = (seed * 2654435761 + 12345) >>> 0
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32
}

/** `of`: how many of a hundred commitments are of this kind. */
const kinds = [
  { id: 'opening', of: 7, windows: ['pregame'], sponsorsPerGame: 2 },
  { id: 'time-out', of: 50, windows: ['timeOut'], sponsorsPerGame: 99 },
  { id: 'halftime', of: 7, windows: ['halftime'], sponsorsPerGame: 99 },
  { id: 'any-break', of: 24, windows: ['betweenPeriods', 'timeOut', 'halftime'], sponsorsPerGame: 99 },
  { id: 'story', of: 4, windows: ['halftime', 'pregame'], sponsorsPerGame: 99 },
  { id: 'closing', of: 8, windows: ['postgame', 'timeOut8'], sponsorsPerGame: 3 },
]

/** The kind at so much of the hundred. @param {number} part */
function kindAt(part) {
  let left = part * 100
  for (const kind of kinds) if ((left -= kind.of) < 0) return kind
  return kinds[1]
}

/** A day of a season from 1 November on. @param {number} day */
const day = (day) => new Date(Date.UTC(2026, 10, 1 + day)).toISOString().slice(0, 10)

/**
 * So many sponsors with so many commitments each over so many games. Most ask for what a season of theirs can carry; together they
 * crowd halftime and the weeks that many of them chose.
 * @param {{ sponsors: number, commitments: number, games: number, fill: number, seed?: number }} size fill: reads asked for by place @returns {PlanSeason}
 */
export function planSeason({ sponsors, commitments, games: count, fill, seed = 1 }) {
  const draw = chance(seed)
  const window = (/** @type {string} */ key, /** @type {any} */ kind, /** @type {number} */ places) => ({ key, kind, places, groupPlaces: {}, seconds: null })
  const games = Array.from({ length: count }, (_, at) => ({
    gameId: `game-${String(at).padStart(3, '0')}`, nightId: `night-${at}`, label: `Game ${at + 1}`, playedOn: /** @type {any} */ (day(at)), teamIds: [`team-${at % 4}`], isLocked: false,
    windows: [
      window('pregame', 'pregame', 2),
      ...[1, 2, 3, 4].map((at) => window(`timeOut${at}`, 'timeOut', at % 2 === 0 ? 2 : 1)),
      window('betweenPeriods1', 'betweenPeriods', 1),
      window('halftime', 'halftime', 3),
      window('betweenPeriods3', 'betweenPeriods', 1),
      ...[5, 6, 7, 8].map((at) => window(`timeOut${at}`, 'timeOut', at % 2 === 0 ? 2 : 1)),
      window('postgame', 'postgame', draw() < 0.5 ? 1 : 2),
    ],
  }))
  const promised = sponsors * commitments
  const readsEach = (fill * games.reduce((sum, game) => sum + game.windows.reduce((all, one) => all + one.places, 0), 0)) / promised
  const promises = Array.from({ length: promised }, (_, at) => {
    const sponsor = Math.floor(at / commitments)
    const kind = /** @type {typeof kinds[0]} */ (kindAt(((at * 61) % promised) / promised))
    const teams = draw() < 0.5 ? [0, 1, 2, 3] : [Math.floor(draw() * 4), Math.floor(draw() * 4)]
    const from = draw() < 0.6 ? 0 : Math.floor(draw() * count * 0.4)
    const until = draw() < 0.6 ? count : Math.ceil(count * (0.6 + 0.4 * draw()))
    const gameIds = games.slice(from, until).filter((game) => teams.some((team) => game.teamIds[0] === `team-${team}`)).map((game) => game.gameId)
    const reads = Math.max(1, Math.round(readsEach * (0.4 + 1.2 * draw())))
    return {
      promiseId: `promise-${String(at).padStart(3, '0')}`, source: /** @type {const} */ ('commitment'), dealId: `deal-${sponsor}`, sponsorId: `sponsor-${sponsor}`, sponsorName: `Sponsor ${sponsor + 1}`,
      categoryId: `category-${sponsor % 12}`, readKindId: kind.id, readKindName: kind.id, placeGroup: null, sponsorsPerGame: kind.sponsorsPerGame, seconds: 15,
      slots: [{ reads, gameIds }], windows: kind.windows, leastPerGame: 0, mostPerGame: kind.sponsorsPerGame < 99 ? 1 : draw() < 0.5 ? 2 : null, pinnedGameIds: [],
      priority: /** @type {1 | 2 | 3} */ (1 + Math.floor(draw() * 3)), separation: /** @type {const} */ ('none'),
    }
  })
  return { games, promises, placed: [] }
}

export const smallSeason = () => planSeason({ sponsors: 8, commitments: 2, games: 14, fill: 0.75 })
export const largeSeason = () => planSeason({ sponsors: 60, commitments: 3, games: 120, fill: 1.01 })
