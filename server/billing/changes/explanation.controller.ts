import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { explanationOf } from '../../domain/sponsorship/explanation.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { ExplanationView } from './explanation.dto.ts';
import { OpenMoney } from './open-money.service.ts';

const CONSULT = 'Consult the business office: ASC 606 for clubs and private schools, GASB for public districts.';

/** Each figure of a contract, line by line. */
@ApiTags('billing')
@Controller('api/contracts/:id')
export class ExplanationController {
  constructor(
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(OpenMoney) private readonly money: OpenMoney,
  ) {}

  @Get('explanation')
  @Needs('see money')
  async explain(@Param('id') id: string): Promise<ExplanationView> {
    const { contract, term } = await this.records.load(id);
    const [books] = await this.terms.read([term.id]);
    const position = books?.position;
    if (!books || !position) return { contractId: contract.id, consult: CONSULT, reads: [], sums: [] };
    const documents = await this.money.of(contract.id, position.memos.map((memo) => memo.memoId));
    return { contractId: contract.id, consult: CONSULT, ...explanationOf(position, documents.filter((one) => one.kind === 'invoice'), books.happened.map(({ happening }) => happening)) };
  }
}
