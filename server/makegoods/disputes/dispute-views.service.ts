import { Inject, Injectable } from '@nestjs/common';
import { windowHeading } from '../../domain/planning/words/window.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { gameLabelOf } from '../proposals/proposal.sql.ts';
import type { DisputeForSponsor, ReadDisputeListQuery, ReadDisputeView } from './read-dispute.dto.ts';

const LINE = `select dispute.id, dispute.sponsor_id as "sponsorId", sponsor.name as "sponsorName", dispute.contract_id as "contractId", contract.number as "contractNumber",
    dispute.commitment_id as "commitmentId", read_kind.name as "readKindName", dispute.night_id as "nightId", night.held_on as "heldOn", dispute.game_id as "gameId",
    ${gameLabelOf('dispute.game_id')} as "gameLabel", entry.window_key as "windowKey", dispute.entry_id as "entryId", dispute.occurrence,
    dispute.asked_by_name as "askedByName", dispute.what, dispute.asked_at as "askedAt", case when dispute.outcome is null then 'open' else 'answered' end as state,
    dispute.outcome, dispute.answer, person.name as "answeredByName", dispute.answered_at as "answeredAt", dispute.version`;

const FROM = `from read_dispute as dispute
  join sponsor on sponsor.department_id = dispute.department_id and sponsor.id = dispute.sponsor_id
  join contract on contract.department_id = dispute.department_id and contract.id = dispute.contract_id
  join commitment on commitment.department_id = dispute.department_id and commitment.id = dispute.commitment_id
  join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
  join night on night.department_id = dispute.department_id and night.id = dispute.night_id
  left join log_entry as entry on entry.department_id = dispute.department_id and entry.id = dispute.entry_id
  left join person on person.id = dispute.answered_by_person_id`;

const SORTS = { askedAt: 'dispute.asked_at', heldOn: 'night.held_on', sponsorName: 'sponsor.name collate "und-x-icu"', contractNumber: 'contract.number', state: 'dispute.outcome is not null', outcome: 'dispute.outcome' };

type DisputeRow = Omit<ReadDisputeView, 'windowName'>;

/** Questions about reads, as pages show them. */
@Injectable()
export class ReadDisputeViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: ReadDisputeListQuery): Promise<Listed<ReadDisputeView>> {
    const { where, parameters } = new Conditions('dispute.department_id')
      .add('dispute.contract_id = ?', query.contractId)
      .add('dispute.id = any(?::uuid[])', query.id)
      .when(query.state === 'open', 'dispute.outcome is null')
      .when(query.state === 'answered', 'dispute.outcome is not null')
      .add('(sponsor.name ilike ? or contract.number ilike ? or dispute.what ilike ?)', contains(query.q));
    const rows = await this.work.sql<DisputeRow>(`${LINE} ${FROM} where ${where} ${pageOf({ ...query, sort: query.sort ?? '-askedAt' }, SORTS, 'dispute.id')}`, parameters);
    const [count] = await this.work.sql<{ total: number }>(`select count(*)::int as total ${FROM} where ${where}`, parameters);
    return { data: rows.map(viewOf), total: count!.total };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<ReadDisputeView> {
    const [row] = isId(id) ? await this.work.sql<DisputeRow>(`${LINE} ${FROM} where dispute.department_id = $1 and dispute.id = $2`, [id]) : [];
    return row ? viewOf(row) : refuse('not-found');
  }

  /** What this sponsor asked, and what it was told. */
  async ofSponsor(sponsorId: string): Promise<DisputeForSponsor[]> {
    const rows = await this.work.sql<DisputeRow>(`${LINE} ${FROM} where dispute.department_id = $1 and dispute.sponsor_id = $2 order by dispute.asked_at desc, dispute.id`, [sponsorId]);
    return rows.map(viewOf).map(
      ({ id, contractId, commitmentId, readKindName, nightId, heldOn, gameLabel, windowName, entryId, occurrence, askedByName, what, askedAt, outcome, answer, answeredAt }) => (
        { id, contractId, commitmentId, readKindName, nightId, heldOn, gameLabel, windowName, entryId, occurrence, askedByName, what, askedAt, outcome, answer, answeredAt }
      ),
    );
  }
}

function viewOf(row: DisputeRow): ReadDisputeView {
  return { ...row, windowName: row.windowKey === null ? null : windowHeading(row.windowKey) };
}
