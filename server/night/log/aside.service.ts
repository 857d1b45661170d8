import { Inject, Injectable } from '@nestjs/common';
import type { Instant } from '../../domain/instant.ts';
import { differencesInWords } from '../../domain/night/aside-differences.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId, newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { AsideView, SettleAsideDto } from './aside.dto.ts';
import type { EntryContent } from './entry-content.ts';
import { LateEntries } from './late-entries.service.ts';
import { sentenceOfEntry } from './log-sentence.ts';
import type { LogEntryDto } from './log.dto.ts';
import { NightLog } from './night-log.service.ts';
import type { LoggedEntry } from './night-log.service.ts';

interface AsideRow {
  id: string;
  content: EntryContent;
  recordedAt: Instant;
}

interface Names {
  id: string;
  sponsorName: string | null;
  readKindName: string | null;
  teamName: string | null;
}

const ASIDES = `select id, content, recorded_at as "recordedAt" from log_entry_aside where department_id = $1 and night_id = $2`;

const NAMES = `select commitment.id, sponsor.name as "sponsorName", read_kind.name as "readKindName", null as "teamName" from commitment
    join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id
    join contract on contract.department_id = $1 and contract.id = commitment.contract_id
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  where commitment.department_id = $1 and commitment.id = any($2::uuid[])
  union all select team.id, null, null, school.nickname from team join school on school.department_id = $1 and school.id = team.school_id
  where team.department_id = $1 and team.id = any($2::uuid[])`;

/** Entries that were kept aside, readable, and the two ways to settle one. Settling adds to the log; nothing is deleted. */
@Injectable()
export class Asides {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(LateEntries) private readonly late: LateEntries,
  ) {}

  /** @throws Refused `not-found` */
  async of(address: string): Promise<AsideView[]> {
    const { id: nightId } = await this.log.night(address);
    const asides = await this.work.sql<AsideRow>(`${ASIDES} order by id`, [nightId]);
    if (asides.length === 0) return [];
    const entries = await this.log.entries(nightId);
    const ids = asides.flatMap(({ content }) => [content.commitmentId, content.teamId]).filter((id) => id !== null);
    const names = new Map((await this.work.sql<Names>(NAMES, [ids])).map((row) => [row.id, row]));
    return asides.map((aside) => viewOf(aside, nightId, entries, names));
  }

  /** @throws Refused `not-found`, `aside-settled-already`, and what the entry is refused for when it is taken in */
  async settle(nightId: string, asideId: string, { answer, reason }: SettleAsideDto): Promise<AsideView> {
    const night = await this.log.lock(nightId);
    const [aside] = isId(asideId) ? await this.work.sql<AsideRow>(`${ASIDES} and id = $3`, [nightId, asideId]) : [];
    if (!aside) return refuse('not-found');
    const entries = await this.log.entries(nightId);
    if (settlingEntry(aside.id, night.id, entries)) refuse('aside-settled-already');
    const sequence = Math.max(0, ...entries.filter((entry) => entry.deviceId === night.id).map((entry) => entry.sequence)) + 1;
    const entry = answer === 'takeIn' ? takenIn(aside, sequence) : setAside(aside, sequence, reason ?? null);
    // The office writes under the night's own id as its device.
    const [result] = await this.late.take(night, { deviceId: night.id, entries: [entry] }, reason ?? null);
    if (result!.status !== 'stored') refuse(result!.code ?? 'busy');
    return (await this.of(night.id)).find((one) => one.id === aside.id)!;
  }
}

function takenIn({ id, content }: AsideRow, sequence: number): LogEntryDto {
  const { deviceId: _, ...said } = content;
  return { ...said, id: newId(), sequence, detail: { ...said.detail, fromAside: id } } as LogEntryDto;
}

function setAside({ id }: AsideRow, sequence: number, reason: string | null): LogEntryDto {
  return { id: newId(), sequence, kind: 'note', reason: reason ?? 'An entry that was kept aside is not taken in', detail: { fromAside: id, settled: 'setAside' }, occurredAt: new Date().toISOString() };
}

function settlingEntry(asideId: string, nightId: string, entries: readonly LoggedEntry[]): LoggedEntry | undefined {
  return entries.find((entry) => entry.deviceId === nightId && entry.detail?.['fromAside'] === asideId);
}

function viewOf({ id, content, recordedAt }: AsideRow, nightId: string, entries: readonly LoggedEntry[], names: ReadonlyMap<string, Names>): AsideView {
  const inLog = entries.find((entry) => entry.id === content.id) ?? entries.find((entry) => entry.deviceId === content.deviceId && entry.sequence === content.sequence);
  const settling = settlingEntry(id, nightId, entries);
  const { sponsorName = null, readKindName = null } = names.get(content.commitmentId ?? '') ?? {};
  const said = { ...content, sponsorName, readKindName, teamName: names.get(content.teamId ?? '')?.teamName ?? null } as unknown as LoggedEntry;
  const numberOf = (entryId: string | null): number | null => entries.find((entry) => entry.id === entryId)?.number ?? null;
  return {
    id,
    recordedAt,
    sentence: sentenceOfEntry(said, numberOf(content.takesBackEntryId)),
    inLog: inLog ? { number: inLog.number, sentence: sentenceOfEntry(inLog, inLog.takesBackNumber) } : null,
    differences: inLog ? differencesInWords(inLog, said) : ['Its id belongs to an entry of another night.'],
    state: settling === undefined ? 'waiting' : settling.detail?.['settled'] === 'setAside' ? 'setAside' : 'takenIn',
    settledNumber: settling?.number ?? null,
  };
}
