import { Inject, Injectable } from '@nestjs/common';
import { whyNotEntry } from '../../domain/night/log-entry.ts';
import { whyNotTakeBack } from '../../domain/night/take-back.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { contentOf, digestOfContent } from './entry-content.ts';
import type { EntryContent } from './entry-content.ts';
import type { EntryResult, LogBatchDto } from './log.dto.ts';
import { NightContexts } from './night-context.service.ts';
import type { NightContext, PlacedEntry } from './night-context.service.ts';
import type { LockedNight } from './night-log.service.ts';
import { RequestAnswers } from '../requests/request-answers.service.ts';

interface KnownRow {
  id: string;
  nightId: string;
  number: number;
  deviceId: string;
  sequence: number;
  kind: string;
  contentDigest: string;
  takesBackEntryId: string | null;
}

interface ToStore extends PlacedEntry {
  number: number;
  digest: string;
}

const ROW = `select id, night_id as "nightId", number, device_id as "deviceId", sequence, kind, content_digest as "contentDigest", takes_back_entry_id as "takesBackEntryId"
  from log_entry where department_id = $1`;

/** Most batches are new from end to end: one look says so, and how far the night and the device have counted. */
const HOW_FAR = `select exists (select from log_entry where department_id = $1 and id = any($2::uuid[])) as "isKnown",
    coalesce((select max(sequence) from log_entry where department_id = $1 and night_id = $3 and device_id = $4), 0) as "lastSequence",
    coalesce((select max(number) from log_entry where department_id = $1 and night_id = $3), 0) as "lastNumber"`;

interface HowFar {
  isKnown: boolean;
  lastSequence: number;
  lastNumber: number;
}

/** Three look-ups, each by an index of its own; a row that two of them find does no harm. */
const KNOWN = `${ROW} and id = any($2::uuid[]) union all ${ROW} and takes_back_entry_id = any($2::uuid[])
  union all ${ROW} and night_id = $3 and device_id = $4 and sequence = any($5::integer[])`;

/**
 * Takes what a device sent, all in one go: each entry is stored, known already, kept aside or refused, and
 * nothing that is sent twice is there twice. The night is locked, so numbers go 1 to n without a gap.
 */
@Injectable()
export class LogBatch {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightContexts) private readonly contexts: NightContexts,
    @Inject(RequestAnswers) private readonly requests: RequestAnswers,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  /** @param isAmendment entries are taken although the night is signed off */
  async take(night: LockedNight, form: LogBatchDto, isAmendment: boolean): Promise<EntryResult[]> {
    const contents = form.entries.map((entry) => contentOf(entry, form.deviceId));
    const { known, lastNumber } = await this.known(night, contents);
    const sorting = new Sorting(night, known, await this.contexts.of(night.id, contents), lastNumber, !night.isSignedOff || isAmendment);
    const results = new Map<EntryContent, EntryResult>();
    for (const content of contents.toSorted((a, b) => a.sequence - b.sequence)) results.set(content, sorting.sort(content));
    await this.store(night, sorting.toStore);
    await this.keepAside(night, sorting.aside);
    return contents.map((content) => results.get(content)!);
  }

  private async known(night: LockedNight, contents: readonly EntryContent[]): Promise<{ known: KnownRow[]; lastNumber: number }> {
    const named = contents.flatMap((one) => [one.id, one.takesBackEntryId, one.happeningEntryId]).filter((id) => id !== null);
    const sequences = contents.map((one) => one.sequence);
    const { deviceId } = contents[0]!;
    const [far] = await this.work.sql<HowFar>(HOW_FAR, [named, night.id, deviceId]);
    const { isKnown, lastSequence, lastNumber } = far!;
    if (!isKnown && Math.min(...sequences) > lastSequence) return { known: [], lastNumber };
    return { known: await this.work.sql<KnownRow>(KNOWN, [named, night.id, deviceId, sequences]), lastNumber };
  }

  private async store(night: LockedNight, entries: readonly ToStore[]): Promise<void> {
    if (entries.length === 0) return;
    const stored = await this.work.add('log_entry', entries.map((entry) => rowOf(entry, night.id, this.work)));
    // The same id arrived for another night at this very moment; sent again it will be known.
    if (stored.length < entries.length) refuse('busy');
    await this.requests.take(night.id, entries);
    await this.notices.tell('entries', night.id, entries.at(-1)!.number);
  }

  private async keepAside(night: LockedNight, contents: readonly EntryContent[]): Promise<void> {
    if (contents.length === 0) return;
    const kept = await this.work.sql<{ entryId: string; content: string }>(
      `select entry_id as "entryId", content::text as content from log_entry_aside where department_id = $1 and entry_id = any($2::uuid[])`,
      [contents.map((content) => content.id)],
    );
    const known = new Set(kept.map((row) => `${row.entryId} ${digestOfContent(JSON.parse(row.content) as EntryContent)}`));
    const fresh = contents.filter((content) => !known.has(`${content.id} ${digestOfContent(content)}`));
    await this.work.add('log_entry_aside', fresh.map((content) => ({ id: newId(), nightId: night.id, entryId: content.id, content })));
  }
}

function rowOf({ digest, detail, ...entry }: ToStore, nightId: string, work: UnitOfWork) {
  return { ...entry, nightId, detail: detail ?? null, contentDigest: digest, loggedByPersonId: work.scope.personId, loggedByLinkId: work.tableLinkId };
}

/** Goes through a batch in the device's order and says what becomes of each entry. */
class Sorting {
  readonly toStore: ToStore[] = [];
  readonly aside: EntryContent[] = [];
  private readonly byId: Map<string, KnownRow>;
  private readonly bySequence: Map<string, string>;
  private readonly takenBack: Set<string>;

  constructor(
    private readonly night: LockedNight,
    known: readonly KnownRow[],
    private readonly context: NightContext,
    private last: number,
    private readonly takesNew: boolean,
  ) {
    this.byId = new Map(known.map((row) => [row.id, row]));
    this.bySequence = new Map(known.filter((row) => row.nightId === night.id).map((row) => [`${row.deviceId} ${row.sequence}`, row.id]));
    this.takenBack = new Set(known.flatMap((row) => row.takesBackEntryId ?? []));
  }

  sort(content: EntryContent): EntryResult {
    const digest = digestOfContent(content);
    const known = this.byId.get(content.id);
    if (known && known.nightId === this.night.id && known.contentDigest === digest) return { id: content.id, status: 'already', number: known.number };
    const isOther = known !== undefined || this.bySequence.has(`${content.deviceId} ${content.sequence}`);
    if (isOther) {
      this.aside.push(content);
      return { id: content.id, status: 'aside', sentence: 'Another entry with this id or this place on the device is in the log. This one is kept aside for a person to settle.' };
    }
    const placed = this.context.place(content);
    const code = this.whyNot(placed);
    if (code) return { id: content.id, status: 'refused', code, sentence: sentenceOfRefusal(code) };
    return this.keep(placed, digest);
  }

  private whyNot(entry: PlacedEntry): RefusalCode | null {
    if (!this.takesNew) return 'night-already-signed-off';
    return whyNotEntry(entry) ?? this.context.whyNot(entry) ?? this.whyNotTakeBack(entry) ?? this.whyNotAnswer(entry);
  }

  private whyNotTakeBack({ kind, takesBackEntryId }: PlacedEntry): RefusalCode | null {
    if (kind !== 'takenBack' || takesBackEntryId === null) return takesBackEntryId === null ? null : 'taking-back-nothing';
    return whyNotTakeBack(this.byId.get(takesBackEntryId), this.night.id, this.takenBack.has(takesBackEntryId));
  }

  private whyNotAnswer({ happeningEntryId }: PlacedEntry): RefusalCode | null {
    if (happeningEntryId === null) return null;
    const happening = this.byId.get(happeningEntryId);
    return happening?.nightId === this.night.id && happening.kind === 'happening' ? null : 'unknown-happening';
  }

  private keep(entry: PlacedEntry, digest: string): EntryResult {
    this.last += 1;
    const { id, deviceId, sequence, kind, takesBackEntryId } = entry;
    this.toStore.push({ ...entry, number: this.last, digest });
    this.byId.set(id, { id, nightId: this.night.id, number: this.last, deviceId, sequence, kind, contentDigest: digest, takesBackEntryId });
    this.bySequence.set(`${deviceId} ${sequence}`, id);
    if (takesBackEntryId !== null) this.takenBack.add(takesBackEntryId);
    return { id, status: 'stored', number: this.last };
  }
}
