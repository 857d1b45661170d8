import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { StatementNames } from './statement-names.service.ts';
import type { EventRow } from './statement-names.service.ts';
import { ACCOUNT, AMOUNT_NAMES, DELIVERY, READ_ACCOUNT_NAMES } from './statement.sql.ts';
import type { AccountLineView, AmountName, DeliveryLineView, ReadAccount, Statement } from './statement.dto.ts';

type Figures = Record<string, number>;

/** The sponsor's reads and the sponsor's dollars, happening by happening, newest first. */
@Injectable()
export class StatementService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementNames) private readonly names: StatementNames,
  ) {}

  async delivery(contractId: string): Promise<Statement<DeliveryLineView>> {
    const contract = await this.work.one(Contract, contractId);
    const rows = await this.work.sql<EventRow & { commitmentId: string } & Figures>(DELIVERY, [contractId]);
    const kinds = await this.names.lineNames(contractId);
    const told = await this.names.tell(contractId, rows, kinds);
    const lines = rows.map((row): DeliveryLineView => {
      const { sentence, cause } = told.get(row.eventId)!;
      const { eventId, occurredOn, bookedOn, commitmentId } = row;
      return {
        id: `${eventId}-${commitmentId}`,
        eventId,
        occurredOn,
        bookedOn,
        sentence,
        commitmentId,
        readKindName: kinds.get(commitmentId) ?? null,
        reads: changed<ReadAccount>(row, READ_ACCOUNT_NAMES),
        after: after<ReadAccount>(row, READ_ACCOUNT_NAMES),
        cause,
      };
    });
    return { contractId, number: contract.number, title: contract.title, lines };
  }

  async account(contractId: string): Promise<Statement<AccountLineView>> {
    const contract = await this.work.one(Contract, contractId);
    const rows = await this.work.sql<EventRow & Figures>(ACCOUNT, [contractId]);
    const told = await this.names.tell(contractId, rows);
    const lines = rows.map((row): AccountLineView => {
      const { eventId: id, occurredOn, bookedOn } = row;
      const { sentence, cause } = told.get(id)!;
      return { id, occurredOn, bookedOn, sentence, amounts: changed<AmountName>(row, AMOUNT_NAMES), after: after<AmountName>(row, AMOUNT_NAMES), cause };
    });
    return { contractId, number: contract.number, title: contract.title, lines };
  }
}

function changed<Name extends string>(row: Figures, names: readonly string[]): Partial<Record<Name, number>> {
  return Object.fromEntries(names.flatMap((name) => (row[name] ? [[name, row[name]]] : []))) as Partial<Record<Name, number>>;
}

function after<Name extends string>(row: Figures, names: readonly string[]): Record<Name, number> {
  return Object.fromEntries(names.map((name) => [name, row[`${name}After`] ?? 0])) as Record<Name, number>;
}
