import { addSeconds, instantAt } from '../server/domain/instant.ts';
import type { Instant } from '../server/domain/instant.ts';
import type { NotReadReason, ReadOutcome } from '../server/domain/night/log-entry.ts';
import type { LogEntryDto } from '../server/night/log/log.dto.ts';
import { NightClosing } from '../server/night/closing/night-closing.service.ts';
import { NightTableService } from '../server/night/log/night.service.ts';
import { newId } from '../server/platform/database/ids.ts';
import { PlacementService } from '../server/planning/placement.service.ts';
import type { PlacementView } from '../server/planning/placement.dto.ts';
import { GameService } from '../server/season/game.service.ts';
import type { Agreement } from './contracts.ts';
import type { Games } from './schedule.ts';
import type { SeasonPlaces } from './schools.ts';
import type { Story } from './story.ts';

export type NightKey = 'night1' | 'night2' | 'night3' | 'night4' | 'night5' | 'last';
type Fault = { sponsor: string; outcome: Exclude<ReadOutcome, 'given'>; reason: NotReadReason };
type BankShot = { game: string; number: string; period: string; clock: string; takenBack?: true };

/** What did not go by the packet. */
const FAULTS: Partial<Record<NightKey, readonly Fault[]>> = {
  night1: [{ sponsor: 'Halvorsen', outcome: 'notRead', reason: 'playResumed' }],
  night2: [{ sponsor: 'Okafor', outcome: 'cutShort', reason: 'playResumed' }],
  night3: [{ sponsor: 'Halvorsen', outcome: 'notRead', reason: 'noTime' }],
  night4: [{ sponsor: 'Halvorsen', outcome: 'notRead', reason: 'equipment' }],
  night5: [{ sponsor: 'Lantern', outcome: 'cutShort', reason: 'gameEnded' }],
  last: [{ sponsor: 'Pinyon', outcome: 'notRead', reason: 'injury' }],
};

const BANK_SHOTS: Record<NightKey, readonly BankShot[]> = {
  night1: [{ game: 'night1', number: '23', period: 'Q2', clock: '3:41' }, { game: 'night1', number: '3', period: 'Q4', clock: '1:12' }],
  night2: [{ game: 'night2', number: '10', period: 'Q3', clock: '6:20' }],
  night3: [{ game: 'night3-jv', number: '22', period: 'Q1', clock: '4:05' }, { game: 'night3', number: '11', period: 'Q2', clock: '5:33' }, { game: 'night3', number: '50', period: 'Q3', clock: '2:08', takenBack: true }],
  night4: [{ game: 'night4', number: '33', period: 'Q2', clock: '0:47' }],
  night5: [{ game: 'night5', number: '32', period: 'Q1', clock: '7:02' }, { game: 'night5', number: '14', period: 'Q4', clock: '3:15' }],
  last: [{ game: 'last', number: '3', period: 'Q2', clock: '2:50' }],
};

/** The entries of one night, in the order and with the clock of the table. */
class Table {
  readonly entries: LogEntryDto[] = [];

  constructor(private at: Instant) {}

  add(entry: Omit<LogEntryDto, 'id' | 'sequence' | 'occurredAt'>): string {
    this.at = addSeconds(this.at, 190);
    const id = newId();
    this.entries.push({ ...entry, id, sequence: this.entries.length + 1, occurredAt: this.at });
    return id;
  }
}

export interface NightToTell {
  key: NightKey;
  mentions: Agreement;
  /** a read given beyond what was promised */
  extra?: Agreement;
}

/** One night at the table: every planned read, bank shots with their mentions, and the final scores; not yet signed off. */
export async function tellNight(story: Story, places: SeasonPlaces, games: Games, { key, mentions, extra }: NightToTell): Promise<void> {
  const night = games[key]!;
  await story.on(
    night.day,
    async () => {
      const played = Object.values(games).filter((game) => game.nightId === night.nightId);
      for (const game of played) await story.of(GameService).start(game.gameId);
      const table = new Table(instantAt(night.day, played.length > 1 ? '17:20' : '18:50', story.zone));
      const { data } = await story.of(PlacementService).ofNight(night.nightId);
      for (const game of played) {
        const teamId = places.ours[game.line.team];
        const planned = data.filter((placement) => placement.gameId === game.gameId);
        const shots = BANK_SHOTS[key].filter((one) => games[one.game] === game).map((shot) => ({ ...shot, gameId: game.gameId, teamId }));
        tellGame(table, { gameId: game.gameId, teamId, planned, shots, faults: FAULTS[key] ?? [] }, mentions);
        if (extra && game === night) table.add({ kind: 'read', outcome: 'given', gameId: game.gameId, commitmentId: extra.commitmentId, cueKey: `game:${game.gameId}/thanks/1` });
      }
      const { results } = await story.of(NightTableService).take(night.nightId, { deviceId: newId(), entries: table.entries });
      const refused = results.find((result) => result.status !== 'stored');
      if (refused) throw new Error(`the log of ${key} was not taken: ${refused.sentence ?? refused.status}`);
      for (const game of played) await tellScore(story, places, game);
    },
    'announcer',
  );
}

export async function signOffNight(story: Story, games: Games, key: NightKey, said: { note?: string; attendance?: number } = {}): Promise<void> {
  const { day, nightId } = games[key]!;
  await story.on(day, () => story.of(NightClosing).signOff(nightId, said, story.visitor('announcer').roles), 'announcer');
}

interface GameToTell {
  gameId: string;
  teamId: string;
  planned: readonly PlacementView[];
  shots: readonly (BankShot & { gameId: string; teamId: string })[];
  faults: readonly Fault[];
}

/** Before the game, then quarter by quarter: what falls in it, its end, and the reads of the break behind it. */
function tellGame(table: Table, { gameId, teamId, planned, shots, faults }: GameToTell, mentions: Agreement): void {
  const readIn = (windowKey: string): void => {
    for (const placement of planned.filter((one) => one.windowKey === windowKey)) addRead(table, placement, faults.find((fault) => placement.sponsorName.includes(fault.sponsor)));
  };
  readIn('pregame');
  for (const [place, breakAfter] of ['betweenPeriods1', 'halftime', 'betweenPeriods2', 'postgame'].entries()) {
    const period = `Q${place + 1}`;
    const timeOut = `timeOut${place + 1}`;
    if (planned.some((one) => one.windowKey === timeOut)) table.add({ kind: 'timeOut', gameId, teamId, period, clock: '4:00' });
    readIn(timeOut);
    for (const shot of shots.filter((one) => one.period === period)) addBankShot(table, shot, mentions);
    table.add({ kind: 'periodEnd', gameId, period });
    readIn(breakAfter);
  }
}

function addRead(table: Table, placement: PlacementView, fault: Fault | undefined): void {
  const { id: placementId, gameId, commitmentId, windowKey, cueKey } = placement;
  const told = fault ? { outcome: fault.outcome, reason: fault.reason } : { outcome: 'given' as const };
  table.add({ kind: 'read', placementId, gameId, commitmentId, windowKey, cueKey, ...told });
  if (fault?.reason === 'injury') table.add({ kind: 'note', gameId, reason: 'A visitor was helped off at the break; nothing was read until play went on.' });
}

function addBankShot(table: Table, shot: BankShot & { gameId: string; teamId: string }, { commitmentId }: Agreement): void {
  const { gameId, teamId, number: playerNumber, period, clock } = shot;
  const happeningEntryId = table.add({ kind: 'happening', gameId, teamId, playerNumber, period, clock, detail: { happening: 'bankShot' } });
  if (shot.takenBack) return void table.add({ kind: 'takenBack', gameId, takesBackEntryId: happeningEntryId });
  table.add({ kind: 'mention', outcome: 'given', gameId, commitmentId, happeningEntryId });
}

async function tellScore(story: Story, places: SeasonPlaces, { gameId, line }: Games[string]): Promise<void> {
  const [ours, theirs] = line.score!;
  const scores = [
    { teamId: places.ours[line.team], score: ours },
    { teamId: places.theirs[line.opponent][line.team], score: theirs },
  ];
  await story.of(GameService).play(gameId, scores);
}

/** The games away from home have no night of ours, only a result. */
export async function tellAway(story: Story, places: SeasonPlaces, games: Games): Promise<void> {
  const played = Object.values(games).filter(({ line }) => line.at === 'away' && line.score);
  for (const game of played) {
    await story.on(game.day, async () => {
      await story.of(GameService).start(game.gameId);
      await tellScore(story, places, game);
    });
  }
}
