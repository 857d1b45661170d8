import { Inject, Injectable } from '@nestjs/common';
import { rightInWords } from '../../domain/sponsorship/company/words.ts';
import { CompanyRows } from './company-rows.service.ts';
import type { CompanyExceptionView, ExclusivityView } from './company.dto.ts';

interface DealCompanyView {
  exclusivities: ExclusivityView[];
  companyExceptions: CompanyExceptionView[];
}

/** What is exclusive in a deal, and whose rights it went past. */
@Injectable()
export class DealCompanyViews {
  constructor(@Inject(CompanyRows) private readonly rows: CompanyRows) {}

  /** Of contracts or offers, in two statements for all of them. */
  async of(dealIds: readonly string[]): Promise<(dealId: string) => DealCompanyView> {
    const rights = await this.rows.rightsOf(dealIds);
    const exceptions = await this.rows.exceptionsOf(dealIds);
    return (id) => ({
      exclusivities: rights.filter((one) => one.dealId === id).map(({ dealId: _, ...right }) => ({ ...right, words: rightInWords(right) })),
      companyExceptions: exceptions.filter((one) => one.dealId === id).map(({ dealId: _, againstId: _against, ...one }) => one),
    });
  }
}
