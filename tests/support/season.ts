import { v7 } from 'uuid';
import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { friday } from './calendar.ts';
import type { Department } from './department.ts';

/** A small season of the Kestrels, made through the API as a director would. */
export interface Season {
  schoolId: string;
  opponentId: string;
  venueId: string;
  floorId: string;
  seasonId: string;
  startsOn: Day;
  endsOn: Day;
  teamId: string;
  opponentTeamId: string;
  playerIds: string[];
  /** home games on Fridays, first to last, each with its night */
  games: { gameId: string; nightId: string; playedOn: Day }[];
  categoryId: string;
  sponsorId: string;
  sellerId: string;
  payerId: string;
  /** game ball (scheduled, pregame), concession read (scheduled, halftime), bank-shot mention (on occurrence) */
  readKinds: { gameBall: string; concession: string; bankShot: string };
}

const DAYS = { name: 'Basketball 2026-27', startsOn: '2026-11-20', endsOn: '2027-03-13' } as const;
const FIRST_FRIDAY = friday('2026-12-04');

/** So far ahead that its nights are always still to come: for what plans, on whatever day the tests run. */
const LATER = { name: 'Basketball 2150-51', startsOn: '2150-11-20', endsOn: '2151-03-13' } as const;
const FIRST_LATER_FRIDAY = friday('2150-12-04');

export const aSeason = (department: Department, gameCount = 3): Promise<Season> => seasonOf(department, gameCount, DAYS, FIRST_FRIDAY);

export const aLaterSeason = (department: Department, gameCount = 3): Promise<Season> => seasonOf(department, gameCount, LATER, FIRST_LATER_FRIDAY);

async function seasonOf(department: Department, gameCount: number, days: typeof DAYS | typeof LATER, firstFriday: Day): Promise<Season> {
  const { director } = department;
  const colours = { firstColour: '#1F5C3A', secondColour: '#B8632A' };
  const school = await director.make('/api/schools', { name: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', isOurs: true, ...colours });
  const opponent = await director.make('/api/schools', { name: 'Port Ansel High School', shortName: 'Port Ansel', nickname: 'Herons', firstColour: '#14213D', secondColour: '#C9A227' });
  const venue = await director.make('/api/venues', { name: 'Alder Fieldhouse', isOurs: true, floors: [{ name: 'the Perch' }], exitsText: 'North doors and south doors.', evacuationText: 'Please walk to the nearest exit.' });
  const season = await director.make('/api/seasons', { ...days, sport: 'basketball' });
  const team = await director.make('/api/teams', { seasonId: season.id, schoolId: school.id, name: 'Varsity boys', level: 'varsity', headCoach: 'Bram Okonkwo' });
  const opponentTeam = await director.make('/api/teams', { seasonId: season.id, schoolId: opponent.id, name: 'Varsity boys', level: 'varsity' });
  const roster = await director.put(`/api/teams/${team.id}/roster`, { players: [
    { number: '3', name: 'Łukasz Wren', sayAs: 'WOO-kash ren', isStarter: true },
    { number: '00', name: 'Nguyễn Tam', sayAs: 'nwin tahm', isStarter: true },
    { number: '12', name: 'Xochitl Marlowe', sayAs: 'SO-cheel MAR-low', announce: 'aMember' },
  ] }, { version: team.version });
  if (roster.status >= 300) throw new Error(`the roster was refused: ${JSON.stringify(roster.body)}`);
  const games: Season['games'] = [];
  for (let week = 0; week < gameCount; week += 1) {
    const playedOn = addDays(firstFriday, 7 * week);
    const game = await director.make('/api/games', { seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [opponentTeam.id], playedOn, startsAtClock: '19:00', venueId: venue.id, floorId: venue.floors[0].id });
    games.push({ gameId: game.id, nightId: game.nightIds[0], playedOn });
  }
  const category = await director.make('/api/sponsor-categories', { name: 'Hardware' });
  const sponsor = await director.make('/api/sponsors', { name: 'Juniper & Pike Hardware', categoryId: category.id });
  const seller = await director.make('/api/sellers', { name: 'Tamarack Ridge Athletics', numberPrefix: 'TR', taxBasisPoints: 500 });
  const payer = await director.make('/api/payers', { name: 'Juniper & Pike Hardware', sponsorId: sponsor.id });
  const kind = async (name: string, timing: string, windows: string[], more = {}) => (await director.make('/api/read-kinds', { name, timing, windows, ...more })).id as string;
  return {
    schoolId: school.id,
    opponentId: opponent.id,
    venueId: venue.id,
    floorId: venue.floors[0].id,
    seasonId: season.id,
    startsOn: days.startsOn as Day,
    endsOn: days.endsOn as Day,
    teamId: team.id,
    opponentTeamId: opponentTeam.id,
    playerIds: roster.body.roster.map((player: { playerId: string }) => player.playerId),
    games,
    categoryId: category.id,
    sponsorId: sponsor.id,
    sellerId: seller.id,
    payerId: payer.id,
    readKinds: {
      gameBall: await kind('Sponsored game ball', 'scheduled', ['pregame'], { presents: 'game ball' }),
      concession: await kind('Concession read', 'scheduled', ['halftime', 'timeOut'], { sponsorsPerGame: 3 }),
      bankShot: await kind('Bank-shot mention', 'onOccurrence', ['timeOut'], { occurrence: 'bank shot', sponsorsPerGame: 1 }),
    },
  };
}

/** The same department in a season that is over, whose months can be closed; its games are made as they are needed. */
export async function aSeasonThatIsOver(department: Department): Promise<Season> {
  const { director } = department;
  const here = await aSeason(department, 0);
  const season = await director.make('/api/seasons', { name: 'Basketball 2024-25', sport: 'basketball', startsOn: '2024-11-20', endsOn: '2025-03-13' });
  const [team, opponentTeam] = [
    await director.make('/api/teams', { seasonId: season.id, schoolId: here.schoolId, name: 'Varsity boys', level: 'varsity' }),
    await director.make('/api/teams', { seasonId: season.id, schoolId: here.opponentId, name: 'Varsity boys', level: 'varsity' }),
  ];
  return { ...here, seasonId: season.id, startsOn: season.startsOn, endsOn: season.endsOn, teamId: team.id, opponentTeamId: opponentTeam.id };
}

/** A night of the Kestrels so many days from today, for what goes by the clock: the links of its table. */
export async function aNightInDays(department: Department, days: number): Promise<{ nightId: string; gameId: string; heldOn: Day }> {
  const { director } = department;
  const [{ zone }] = (await department.ask('select zone from department where id = $1', [department.id])) as [{ zone: string }];
  const today = dayAt(instantOf(new Date().toISOString()), zone);
  const heldOn = addDays(today, days);
  const school = await director.make('/api/schools', { name: `Tamarack Ridge Middle School ${days}`, shortName: 'Tamarack Middle', nickname: 'Fledglings', isOurs: true, firstColour: '#1F5C3A', secondColour: '#B8632A' });
  const venue = await director.make('/api/venues', { name: `Alder Gymnasium ${days}`, isOurs: true, floors: [{ name: 'the floor' }], exitsText: 'North doors.', evacuationText: 'Please walk to the nearest exit.' });
  const season = await director.make('/api/seasons', { name: `Basketball ${days} days from ${today}`, sport: 'basketball', startsOn: addDays(today, -60), endsOn: addDays(today, 60) });
  const teams = [];
  for (const name of ['Gold', 'Green']) teams.push(await director.make('/api/teams', { seasonId: season.id, schoolId: school.id, name, level: 'varsity' }));
  const game = await director.make('/api/games', { seasonId: season.id, level: 'varsity', homeTeamId: teams[0].id, visitorTeamIds: [teams[1].id], playedOn: heldOn, startsAtClock: '19:00', venueId: venue.id, floorId: venue.floors[0].id });
  return { nightId: game.nightIds[0], gameId: game.id, heldOn };
}

/** What a contract is drawn up from; the rest is as the golden contract has it. */
export interface Drawn {
  title?: string;
  priceCents?: number;
  pricing?: 'fixed' | 'perRead';
  billingPlan?: unknown;
  commitments?: Record<string, unknown>[];
  benefits?: Record<string, unknown>[];
  term?: Record<string, unknown>;
}

export async function aContract({ director }: Department, season: Season, drawn: Drawn = {}): Promise<any> {
  return director.make('/api/contracts', {
    sponsorId: season.sponsorId,
    sellerId: season.sellerId,
    payerId: season.payerId,
    title: drawn.title ?? 'Game balls and concession reads',
    term: {
      seasonId: season.seasonId,
      startsOn: season.startsOn,
      endsOn: season.endsOn,
      pricing: drawn.pricing ?? 'fixed',
      priceCents: drawn.priceCents ?? 70_000,
      billingPlan: drawn.billingPlan ?? { kind: 'installments', installments: [{ on: '2026-11-23', share: 1 }, { on: '2027-01-15', share: 1 }] },
      ...drawn.term,
    },
    commitments: drawn.commitments ?? [
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 },
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4000 },
    ],
    benefits: drawn.benefits ?? [],
  });
}

/** The contract, signed: its reads are owed from now on. */
export async function aSignedContract(department: Department, season: Season, drawn: Drawn = {}): Promise<any> {
  const draft = await aContract(department, season, drawn);
  await department.director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  return department.director.look(`/api/contracts/${draft.id}`);
}

/** Log entries of one device, numbered as it would. */
export class TableDevice {
  readonly deviceId = v7();
  private sequence = 0;

  entry(fields: Record<string, unknown>): Record<string, unknown> & { id: string } {
    this.sequence += 1;
    return { id: v7(), sequence: this.sequence, occurredAt: '2026-12-05T02:30:00.000Z', ...fields };
  }

  /** A read of a commitment in one game; `cue` tells two reads of one game apart. */
  read(commitmentId: string, gameId: string, cue: number, outcome = 'given', reason?: string) {
    return this.entry({ kind: 'read', outcome, gameId, commitmentId, cueKey: `game:${gameId}/halftime/${cue}`, windowKey: 'halftime', ...(reason ? { reason } : {}) });
  }
}
