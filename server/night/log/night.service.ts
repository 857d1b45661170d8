import { Inject, Injectable } from '@nestjs/common';
import { takenBackIds } from '../../domain/night/take-back.ts';
import { refuse } from '../../domain/refusals.ts';
import { LogBatch } from './log-batch.service.ts';
import { sentenceOfEntry } from './log-sentence.ts';
import type { BatchView, LogBatchDto, LogEntryView, NightLogView } from './log.dto.ts';
import { NightCounting } from '../closing/night-counting.service.ts';
import type { CountedNight } from '../closing/night-counting.service.ts';
import { NightLog } from './night-log.service.ts';
import type { LoggedEntry } from './night-log.service.ts';

@Injectable()
export class NightTableService {
  constructor(
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(LogBatch) private readonly batch: LogBatch,
    @Inject(NightCounting) private readonly counting: NightCounting,
  ) {}

  async show(nightId: string): Promise<NightLogView> {
    const night = await this.log.night(nightId);
    const entries = await this.log.entries(nightId);
    const counted = await this.counting.count(nightId, entries, night.isSignedOff);
    return {
      entries: viewsOf(entries, counted),
      state: night.isSignedOff ? 'signedOff' : 'open',
      toCount: night.isSignedOff ? counted.claims.length : counted.count.reads.filter((read) => read.outcome === 'counts').length,
      open: counted.count.open,
    };
  }

  async take(nightId: string, form: LogBatchDto): Promise<BatchView> {
    // The office settles entries under the night's own id; no device may write in its name.
    if (form.deviceId.toLowerCase() === nightId.toLowerCase()) refuse('device-of-the-office', {}, { deviceId: 'is the id of the night' });
    const night = await this.log.lock(nightId);
    return { results: await this.batch.take(night, form, false) };
  }
}

function viewsOf(entries: readonly LoggedEntry[], { games, count }: CountedNight): LogEntryView[] {
  const gone = takenBackIds(entries);
  const numberOf = new Map(entries.map((entry) => [entry.id, entry.number]));
  const labelOf = new Map(games.map((game) => [game.id, game.label]));
  const outcomeOf = new Map(count.reads.map((read) => [read.entryId, read]));
  const happeningOf = new Map([...count.occurrences.values()].flat().flatMap((one) => one.entryIds.map((id) => [id, one.number] as const)));
  return entries.map((entry) => {
    const { nightId: _, playerId: ____, contentDigest: _____, readKindName, teamName: ______, takesBackNumber: _______, ...shown } = entry;
    const read = outcomeOf.get(entry.id);
    return {
      ...shown,
      gameLabel: entry.gameId === null ? null : (labelOf.get(entry.gameId) ?? null),
      occurrence: entry.occurrence ?? happeningOf.get(entry.id) ?? (read && read.occurrence > 0 ? read.occurrence : null),
      label: readKindName ?? null,
      takenBack: gone.has(entry.id),
      counting: read?.outcome ?? null,
      sentence: sentenceOfEntry(entry, entry.takesBackEntryId === null ? null : (numberOf.get(entry.takesBackEntryId) ?? null)),
    };
  });
}
