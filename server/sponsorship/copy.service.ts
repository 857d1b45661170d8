import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { CopyVersion } from './copy-version.entity.ts';
import type { ApproveCopyDto, ChangeCopyDto, CopyDto, CopyListQuery, CopyVersionDto, CopyView } from './copy.dto.ts';
import { Copy } from './copy.entity.ts';

/** Stopped beats all; words count as approved once one version is. */
const STATE = `case when copy.stopped_at is not null then 'stopped'
  when exists (select 1 from copy_version as version where version.department_id = $1 and version.copy_id = copy.id and version.approved_on is not null)
    then 'approved' else 'waiting' end`;

const VIEW = `copy.id, copy.sponsor_id as "sponsorId", sponsor.name as "sponsorName", copy.read_kind_id as "readKindId", read_kind.name as "readKindName",
  copy.title, copy.fallback_text as "fallbackText", copy.stopped_at as "stoppedAt", copy.version, ${STATE} as state,
  (select coalesce(jsonb_agg(jsonb_build_object('id', version.id, 'number', version.number, 'language', version.language, 'text', version.text,
      'startsOn', version.starts_on, 'endsOn', version.ends_on, 'approvedOn', version.approved_on, 'approvedByName', version.approved_by_name,
      'approvedHow', version.approved_how, 'approvalNote', version.approval_note) order by version.number desc), '[]')
     from copy_version as version where version.department_id = $1 and version.copy_id = copy.id) as versions`;

const FROM = `copy join sponsor on sponsor.department_id = copy.department_id and sponsor.id = copy.sponsor_id
  join read_kind on read_kind.department_id = copy.department_id and read_kind.id = copy.read_kind_id`;

const SORTS = {
  sponsorName: 'sponsor.name collate "und-x-icu"',
  title: 'copy.title collate "und-x-icu"',
  readKindName: 'read_kind.name collate "und-x-icu"',
  state: STATE,
};

@Injectable()
export class CopyService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: CopyListQuery): Promise<Listed<CopyView>> {
    const on = new Conditions('copy.department_id')
      .add('copy.id = any(?::uuid[])', query.id)
      .add('copy.sponsor_id = ?', query.sponsorId)
      .add('copy.read_kind_id = ?', query.readKindId)
      .add(`${STATE} = ?`, query.state)
      .add('(copy.title ilike ? or sponsor.name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<CopyView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'copy.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<CopyView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<CopyView>(`select ${VIEW} from ${FROM} where copy.department_id = $1 and copy.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: CopyDto): Promise<CopyView> {
    const { sponsorId, readKindId, title, fallbackText, ...version } = form;
    const [row] = await this.work.insert(Copy, { sponsorId, readKindId, title, fallbackText });
    await this.work.insert(CopyVersion, { ...version, copyId: row!.id, number: 1 });
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeCopyDto): Promise<CopyView> {
    await this.work.update(Copy, id, version, form);
    return this.one(id);
  }

  async addVersion(id: string, form: CopyVersionDto): Promise<CopyView> {
    await this.lock(id);
    const before = await this.work.count(CopyVersion, { copyId: id });
    await this.work.insert(CopyVersion, { ...form, copyId: id, number: before + 1 });
    await this.work.update(Copy, id, null, {});
    return this.one(id);
  }

  /** The sponsor's yes, as the director heard it. */
  async approve(id: string, versionId: string, form: ApproveCopyDto): Promise<CopyView> {
    const copy = await this.lock(id);
    if (copy.stoppedAt !== null) refuse('copy-stopped');
    const version = await this.work.one(CopyVersion, versionId);
    if (version.copyId !== id) refuse('not-found');
    if (version.approvedOn !== null) refuse('copy-already-approved');
    const { approvedByName, approvedOn, note } = form;
    await this.work.update(CopyVersion, versionId, null, { approvedByName, approvedOn, approvalNote: note ?? null, approvedHow: 'recordedByDirector' });
    await this.work.update(Copy, id, null, {});
    return this.one(id);
  }

  /** From now on nobody reads it. */
  async stop(id: string): Promise<CopyView> {
    const copy = await this.lock(id);
    if (copy.stoppedAt !== null) refuse('copy-stopped');
    await this.work.update(Copy, id, null, { stoppedAt: new Date().toISOString() });
    return this.one(id);
  }

  private async lock(id: string): Promise<Copy> {
    const copy = await this.work.one(Copy, id);
    await this.work.lock(Copy, [copy.id]);
    return this.work.one(Copy, id);
  }
}
