import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { markedWords } from '../domain/sponsorship/copy-check.ts';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { CopyVersion } from './copy-version.entity.ts';
import { checkOf, checkViewOf, copyViewOf, FROM, STATE, VIEW } from './copy-view.ts';
import type { CopyRow } from './copy-view.ts';
import type { ApproveCopyDto, ChangeCopyDto, CheckCopyDto, CopyCheckView, CopyDto, CopyListQuery, CopyVersionDto, CopyView, StopCopyDto } from './copy.dto.ts';
import { Copy } from './copy.entity.ts';
import { Slogan } from './slogan.entity.ts';
import { Sponsor } from './sponsor.entity.ts';

const SORTS = {
  sponsorName: 'sponsor.name collate "und-x-icu"',
  title: 'copy.title collate "und-x-icu"',
  readKindName: 'read_kind.name collate "und-x-icu"',
  state: STATE,
};

interface Approval {
  byName: string;
  on: string;
  how: 'link' | 'recordedByDirector';
  note: string | null;
  overrideReason: string | null;
}

@Injectable()
export class CopyService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async list(query: CopyListQuery): Promise<Listed<CopyView>> {
    const on = new Conditions('copy.department_id')
      .add('copy.id = any(?::uuid[])', query.id)
      .add('copy.sponsor_id = ?', query.sponsorId)
      .add('copy.read_kind_id = ?', query.readKindId)
      .add(`${STATE} = ?`, query.state)
      .add('(copy.title ilike ? or sponsor.name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const rows = await this.work.sql<CopyRow>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'copy.id')}`, on.parameters);
    return { data: rows.map(copyViewOf), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<CopyView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<CopyRow>(`select ${VIEW} from ${FROM} where copy.department_id = $1 and copy.id = $2`, [id]);
    return row ? copyViewOf(row) : refuse('not-found');
  }

  /** Every copy of one sponsor, with all its versions. */
  async ofSponsor(sponsorId: string): Promise<CopyView[]> {
    const rows = await this.work.sql<CopyRow>(`select ${VIEW} from ${FROM} where copy.department_id = $1 and copy.sponsor_id = $2 order by ${SORTS.title}, copy.id`, [sponsorId]);
    return rows.map(copyViewOf);
  }

  /** What the check says of words that nobody has saved yet. */
  async check(form: CheckCopyDto): Promise<CopyCheckView> {
    const sponsor = (await this.work.first(Sponsor, { id: form.sponsorId })) ?? refuse('unknown-sponsor');
    const slogans = await this.work.find(Slogan, { sponsorId: sponsor.id });
    return checkViewOf(checkOf(form, { sponsorName: sponsor.name, slogans: slogans.map((slogan) => slogan.text) }));
  }

  async add(form: CopyDto): Promise<CopyView> {
    const { sponsorId, readKindId, title, fallbackText, rotates, ...version } = form;
    const [row] = await this.work.insert(Copy, { sponsorId, readKindId, title, fallbackText, rotates: rotates ?? false });
    await this.work.insert(CopyVersion, { ...withSecond(version), copyId: row!.id, number: 1 });
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeCopyDto): Promise<CopyView> {
    await this.work.update(Copy, id, version, form);
    return this.one(id);
  }

  async addVersion(id: string, form: CopyVersionDto): Promise<CopyView> {
    await this.lock(id);
    const before = await this.work.count(CopyVersion, { copyId: id });
    await this.work.insert(CopyVersion, { ...withSecond(form), copyId: id, number: before + 1 });
    await this.work.update(Copy, id, null, {});
    return this.one(id);
  }

  /** The sponsor's yes, as the director heard it. */
  async approve(id: string, versionId: string, form: ApproveCopyDto): Promise<CopyView> {
    await this.lock(id);
    const { approvedByName: byName, approvedOn: on, note, overrideReason } = form;
    return this.write(id, versionId, { byName, on, how: 'recordedByDirector', note: note ?? null, overrideReason: overrideReason ?? null });
  }

  /** The sponsor's yes, given on its own page. A version of another sponsor answers as one that never was. */
  async approveByLink(sponsorId: string, versionId: string, byName: string): Promise<void> {
    const copyId = await this.copyOf(sponsorId, versionId);
    await this.write(copyId, versionId, { byName, on: await this.departments.today(), how: 'link', note: null, overrideReason: null });
  }

  /** The sponsor wants other words; the version stays unapproved, and the note stands beside it. */
  async askForChange(sponsorId: string, versionId: string, byName: string, note: string): Promise<void> {
    const copyId = await this.copyOf(sponsorId, versionId);
    await this.openVersion(copyId, versionId);
    await this.work.update(CopyVersion, versionId, null, { changeAskedAt: new Date().toISOString(), changeAskedByName: byName, changeNote: note });
    await this.work.update(Copy, copyId, null, {});
  }

  /** From now on nobody reads it: packets are composed from it, so those that were issued are out of date by themselves. */
  async stop(id: string, form: StopCopyDto): Promise<CopyView> {
    const copy = await this.lock(id);
    if (copy.stoppedAt !== null) refuse('copy-stopped');
    await this.work.update(Copy, id, null, { stoppedAt: new Date().toISOString(), stoppedByName: form.stoppedByName, stoppedBecause: form.reason });
    return this.one(id);
  }

  private async write(id: string, versionId: string, approval: Approval): Promise<CopyView> {
    const version = await this.openVersion(id, versionId);
    const { settings } = await this.departments.here();
    const check = (await this.one(id)).versions.find((one) => one.id === version.id)!.check;
    const isBlocked = settings.copyCheckBlocks && check.verdict !== 'acknowledgment';
    if (isBlocked && !approval.overrideReason) refuse('copy-marked', { words: markedWords(check) });
    const reason = isBlocked ? `Marked by the copy check (${markedWords(check)}); approved all the same: ${approval.overrideReason}` : null;
    const approvalNote = [approval.note, reason].filter(Boolean).join('\n') || null;
    await this.work.update(CopyVersion, versionId, null, { approvedByName: approval.byName, approvedOn: approval.on, approvalNote, approvedHow: approval.how });
    await this.work.update(Copy, id, null, {});
    return this.one(id);
  }

  /** A version that can still be answered. */
  private async openVersion(copyId: string, versionId: string): Promise<CopyVersion> {
    const copy = await this.work.one(Copy, copyId);
    if (copy.stoppedAt !== null) refuse('copy-stopped');
    const version = await this.work.one(CopyVersion, versionId);
    if (version.copyId !== copyId) refuse('not-found');
    if (version.approvedOn !== null) refuse('copy-already-approved');
    return version;
  }

  private async copyOf(sponsorId: string, versionId: string): Promise<string> {
    const version = await this.work.one(CopyVersion, versionId);
    const copy = await this.lock(version.copyId);
    return copy.sponsorId === sponsorId ? copy.id : refuse('not-found');
  }

  private async lock(id: string): Promise<Copy> {
    const copy = await this.work.one(Copy, id);
    await this.work.lock(Copy, [copy.id]);
    return this.work.one(Copy, id);
  }
}

/** A second text without its language is in the other one. */
function withSecond(form: CopyVersionDto): CopyVersionDto {
  const { secondText, secondLanguage } = form;
  if (!secondText) return { ...form, secondText: null, secondLanguage: null };
  return { ...form, secondLanguage: secondLanguage ?? ((form.language ?? 'en') === 'en' ? 'es' : 'en') };
}
