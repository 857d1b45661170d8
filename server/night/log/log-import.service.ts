import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import type { HeldEntryDto, HeldFileDto, ImportView } from './aside.dto.ts';
import { LateEntries } from './late-entries.service.ts';
import type { EntryResult } from './log.dto.ts';
import { NightLog } from './night-log.service.ts';

/** A batch holds no more; a file may. */
const MOST_AT_ONCE = 500;

/** Takes in the file of a device that could not reach the server: each entry once, whichever way it comes. */
@Injectable()
export class LogImport {
  constructor(
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(LateEntries) private readonly late: LateEntries,
  ) {}

  /** @throws Refused `not-found`, `file-of-another-night`, and `amendment-without-reason` after sign-off */
  async take(nightId: string, { nightId: named, entries, reason }: HeldFileDto): Promise<ImportView> {
    const night = await this.log.lock(nightId);
    if (named.toLowerCase() !== night.id) refuse('file-of-another-night', {}, { nightId: 'is another night' });
    const results = new Map<string, EntryResult>();
    for (const batch of batchesOf(entries)) {
      for (const result of await this.late.take(night, batch, reason ?? null)) results.set(result.id, result);
    }
    const list = entries.map((entry) => results.get(entry.id.toLowerCase())!);
    return { results: list, sentence: sentenceOf(list) };
  }
}

function batchesOf(entries: readonly HeldEntryDto[]): { deviceId: string; entries: HeldEntryDto[] }[] {
  const deviceIds = [...new Set(entries.map((entry) => entry.deviceId.toLowerCase()))];
  return deviceIds.flatMap((deviceId) => {
    const own = entries.filter((entry) => entry.deviceId.toLowerCase() === deviceId).toSorted((a, b) => a.sequence - b.sequence);
    return Array.from({ length: Math.ceil(own.length / MOST_AT_ONCE) }, (_, place) => ({ deviceId, entries: own.slice(place * MOST_AT_ONCE, (place + 1) * MOST_AT_ONCE) }));
  });
}

const WORDS = [
  ['stored', 'taken in'],
  ['already', 'there already'],
  ['aside', 'kept aside'],
  ['refused', 'refused'],
] as const;

function sentenceOf(results: readonly EntryResult[]): string {
  const parts = WORDS.map(([status, words]) => [results.filter((one) => one.status === status).length, words] as const).filter(([count]) => count > 0);
  const total = `${results.length} ${results.length === 1 ? 'entry' : 'entries'} in the file`;
  return `${total}: ${parts.map(([count, words]) => `${count} ${words}`).join(', ')}.`;
}
