import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { OpenShortfall } from './shortfall.dto.ts';
import { Shortfalls } from './shortfalls.service.ts';

interface SignedRow {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
}

const SIGNED = `select contract.id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle", sponsor.name as "sponsorName"
  from contract join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  where contract.department_id = $1 and exists (select from term where term.department_id = $1 and term.contract_id = contract.id and term.state = 'signed')
  order by sponsor.name collate "und-x-icu", contract.number, contract.id`;

/** Where nobody has proposed anything yet for reads that can no longer be given. */
@Injectable()
export class OpenShortfalls {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Shortfalls) private readonly shortfalls: Shortfalls,
  ) {}

  /** By sponsor, each with the remedy that costs the school least. */
  async list(): Promise<Listed<OpenShortfall>> {
    const signed = await this.work.sql<SignedRow>(SIGNED);
    const lines = await this.shortfalls.ofContracts(signed.map((one) => one.contractId));
    const data = signed.flatMap((contract) =>
      (lines.get(contract.contractId) ?? [])
        .filter((line) => line.open > 0)
        .map(({ commitmentId, readKindName, open, options }): OpenShortfall => ({ ...contract, commitmentId, readKindName, open, cheapest: options[0] ?? null })),
    );
    return { data, total: data.length };
  }
}
