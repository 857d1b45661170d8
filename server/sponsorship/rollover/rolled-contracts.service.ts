import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { linesFollowed } from '../../domain/sponsorship/rollover/lines-followed.ts';
import type { FollowsAs, LineFollowed, LineInItsPlace } from '../../domain/sponsorship/rollover/lines-followed.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { TermState } from '../contract-view.ts';

/** The contract that carries another on or renews it, and which of its lines stand for those of the one before. */
export interface NextContract {
  contractId: string;
  /** null while it is a draft */
  number: string | null;
  followsAs: FollowsAs;
  yearNumber: number;
  sellerId: string;
  termId: string;
  seasonId: string;
  startsOn: Day;
  endsOn: Day;
  state: TermState;
  /** one for each commitment of the contract before, in their places */
  lines: LineFollowed[];
}

type NextRow = Omit<NextContract, 'lines'> & { followsContractId: string };
type LineRow = LineInItsPlace & { contractId: string };

const NEXT = `select contract.id as "contractId", contract.follows_contract_id as "followsContractId", contract.number, contract.follows_as as "followsAs",
    contract.year_number as "yearNumber", contract.seller_id as "sellerId", term.id as "termId", term.season_id as "seasonId",
    term.starts_on as "startsOn", term.ends_on as "endsOn", term.state
  from contract join term on term.department_id = $1 and term.contract_id = contract.id
    and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
  where contract.department_id = $1 and contract.follows_contract_id = any($2::uuid[])`;

const LINES = `select id, contract_id as "contractId", read_kind_id as "readKindId", place from commitment
  where department_id = $1 and contract_id = any($2::uuid[]) order by contract_id, place`;

/** Which contract follows which. */
@Injectable()
export class RolledContracts {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** The contract that follows, signed or not; null where none does. */
  async nextOf(contractId: string): Promise<NextContract | null> {
    return (await this.nextOfAll([contractId])).get(contractId) ?? null;
  }

  /** The same for many, by the id of the contract before. */
  async nextOfAll(contractIds: readonly string[]): Promise<Map<string, NextContract>> {
    if (contractIds.length === 0) return new Map();
    const next = await this.work.sql<NextRow>(NEXT, [[...new Set(contractIds)]]);
    if (next.length === 0) return new Map();
    const lines = await this.work.sql<LineRow>(LINES, [next.flatMap((one) => [one.contractId, one.followsContractId])]);
    const linesOf = (id: string): LineRow[] => lines.filter((line) => line.contractId === id);
    return new Map(
      next.map(({ followsContractId, ...one }) => [followsContractId, { ...one, lines: linesFollowed(linesOf(followsContractId), linesOf(one.contractId)) }]),
    );
  }
}
