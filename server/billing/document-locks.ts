import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Contract } from '../sponsorship/contract.entity.ts';
import { Term } from '../sponsorship/term.entity.ts';

/** Documents are never edited, so their rows cannot be locked; whoever pays or voids one takes the lock of its id. */
@Injectable()
export class DocumentLocks {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Held until the unit ends; taken in the order of the ids, so that two units cannot wait for each other. */
  async take(ids: readonly string[]): Promise<void> {
    for (const id of [...new Set(ids)].sort()) {
      await this.work.sql('select pg_advisory_xact_lock(hashtextextended($1::uuid::text || $2::text, 13))', [id]);
    }
  }

  /** The contract and the term behind a document first, then the document: the order in which everybody locks. */
  async takeWithContract({ id, contractId, termId }: { id: string; contractId: string | null; termId: string | null }): Promise<void> {
    if (contractId) await this.work.lock(Contract, [contractId]);
    if (termId) await this.work.lock(Term, [termId]);
    await this.take([id]);
  }
}
