import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { Because } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';

const CLOSED = `select term.id as "termId", contract.id as "contractId", coalesce(contract.number, contract.title) as name
  from term join contract on contract.department_id = $1 and contract.id = term.contract_id
  where term.department_id = $1 and term.contract_id = any($2::uuid[]) and term.closed_on is not null order by term.id`;

/** What the bank does cannot be refused: where money of a closed contract is open again, the contract is open again. */
@Injectable()
export class Reopening {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  /** Contracts, then their terms: before any document, the order in which everybody locks. */
  async lock(contractIds: readonly (string | null)[]): Promise<void> {
    const ids = named(contractIds);
    await this.work.lock(Contract, ids);
    const terms = await this.work.sql<{ id: string }>('select id from term where department_id = $1 and contract_id = any($2::uuid[])', [ids]);
    await this.work.lock(Term, terms.map((term) => term.id));
  }

  /** Opens those of these contracts that are closed. Answers the number of each by its id. */
  async open(contractIds: readonly (string | null)[], because: Because): Promise<Map<string, string>> {
    const closed = await this.work.sql<{ termId: string; contractId: string; name: string }>(CLOSED, [named(contractIds)]);
    for (const { termId } of closed) {
      await this.terms.happen(termId, [{ happening: { kind: 'reopened' }, because }]);
      await this.work.update(Term, termId, null, { closedOn: null });
    }
    return new Map(closed.map(({ contractId, name }) => [contractId, name]));
  }
}

const named = (ids: readonly (string | null)[]): string[] => [...new Set(ids)].filter((id) => id !== null);
