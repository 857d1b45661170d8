import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { settledByReplacement } from '../../domain/makegoods/proposal.ts';
import { windowHeading } from '../../domain/planning/words/window.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { MakegoodTrace, ReadThatSettles } from './makegood-proposal.dto.ts';
import { REPLACEMENTS } from './proposal.sql.ts';

interface MakegoodRow {
  makegoodId: string;
  missed: number;
  replacements: number;
  proposalId: string | null;
  missedGameOn: Day | null;
  /** of the proposal it came from, in their order; none where it was agreed without one */
  missedOn: Day[];
}

const MAKEGOODS = `select makegood.id as "makegoodId", makegood.missed_reads as missed, makegood.replacement_reads as replacements, proposal.id as "proposalId", game.played_on as "missedGameOn",
    array(select missed_read.missed_on from missed_read where missed_read.department_id = $1 and missed_read.proposal_id = proposal.id order by missed_read.place)::text[] as "missedOn"
  from makegood
    join commitment on commitment.department_id = $1 and commitment.id = makegood.commitment_id
    left join game on game.department_id = $1 and game.id = makegood.missed_game_id
    left join makegood_proposal as proposal on proposal.department_id = $1 and proposal.makegood_id = makegood.id
  where makegood.department_id = $1 and commitment.contract_id = $2 order by makegood.agreed_on, makegood.id`;

/** The agreed makegoods of a contract, each missed read with the read that settled it. */
@Injectable()
export class MakegoodTraces {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async ofContract(contractId: string): Promise<Listed<MakegoodTrace>> {
    const rows = await this.work.sql<MakegoodRow>(MAKEGOODS, [contractId]);
    const given = await this.work.sql<Omit<ReadThatSettles, 'windowName'> & { makegoodId: string }>(REPLACEMENTS, [rows.map((row) => row.makegoodId)]);
    const data = rows.map(({ makegoodId, missed, replacements, proposalId, missedGameOn, missedOn }): MakegoodTrace => {
      const reads = given.filter((one) => one.makegoodId === makegoodId).slice(0, replacements).map(({ makegoodId: _id, ...read }) => ({ ...read, windowName: read.windowKey === null ? null : windowHeading(read.windowKey) }));
      const traced = Array.from({ length: missed }, (_, at) => ({ place: at + 1, missedOn: missedOn[at] ?? missedGameOn, settledBy: reads[settledByReplacement(at + 1, missed, replacements) - 1] ?? null }));
      return { makegoodId, proposalId, missed: traced, replacements: reads };
    });
    return { data, total: data.length };
  }
}
