import type { PlanPromise, PlanSeason } from '../../server/domain/planning/season.ts';
import { aGame, aPlanSeason, aPromise, aWindow } from './small-plan-season.ts';

const SPONSORS = ['Juniper & Pike Hardware', 'Snowmelt Creamery', 'Blue Lantern Tire', 'Copperline Credit Union', 'Halvorsen Orthodontics', 'Pinyon Print Works', 'Tamarack Family Dental', 'Sagebrush Grill'];

/** Sponsors of three categories want more seconds in so many games than their windows have. */
export function aCrowdedSeason(sponsors: number, games: number): PlanSeason {
  const night = Array.from({ length: games }, (_, at) =>
    aGame(at + 1, [
      aWindow('pregame', { kind: 'pregame', places: 3, seconds: 60 }), aWindow('timeOut1', { seconds: 50 }), aWindow('timeOut2', { seconds: 50 }), aWindow('quarterBreak1', { kind: 'betweenPeriods', seconds: 50 }),
      aWindow('halftime', { kind: 'halftime', places: 4, seconds: 90 }), aWindow('timeOut3', { seconds: 50 }), aWindow('timeOut4', { seconds: 50 }), aWindow('quarterBreak2', { kind: 'betweenPeriods', seconds: 50 }),
    ]),
  );
  const ids = night.map((game) => game.gameId);
  return aPlanSeason(night, Array.from({ length: sponsors }, (_, at) => promisesOf(at, ids)).flat());
}

function promisesOf(at: number, games: readonly string[]): PlanPromise[] {
  const name = `${SPONSORS[at % SPONSORS.length]}${at < SPONSORS.length ? '' : ` ${at}`}`;
  const of = { sponsorId: name, sponsorName: name, categoryId: ['tools', 'food', 'health'][at % 3]!, separation: (['window', 'next', 'window', 'game'] as const)[at % 4]! };
  const reads = games.length;
  return [
    aPromise(`${name} time-outs`, reads + (at % 3) * 3, games, { ...of, seconds: [15, 25, 20][at % 3]!, priority: 2, mostPerGame: 3, windows: ['timeOut', 'betweenPeriods'] }),
    aPromise(`${name} halftime`, Math.ceil(reads / 2), games, { ...of, readKindId: 'halftimeRead', sponsorsPerGame: 3, seconds: 30, priority: at % 4 === 0 ? 1 : 2, mostPerGame: 2, windows: ['halftime'] }),
    aPromise(`${name} pregame`, Math.ceil(reads / 3), games, { ...of, readKindId: 'pregameRead', seconds: [20, 30][at % 2]!, priority: 3, windows: ['pregame', 'halftime'] }),
  ];
}
