import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { NumberService } from '../access/number.service.ts';
import { assertGoodsMeetPrice } from '../domain/billing/goods.ts';
import type { GoodsPromise } from '../domain/billing/goods.ts';
import { checkPlanCovers } from '../domain/billing/billing-plan.ts';
import { documentNumber } from '../domain/billing/document-number.ts';
import type { Day } from '../domain/day.ts';
import { fiscalYearOf } from '../domain/day.ts';
import { refuse, Refused } from '../domain/refusals.ts';
import { signedPosition } from '../domain/sponsorship/apply-signing.ts';
import type { ContractTerms } from '../domain/sponsorship/contract-terms.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Benefit } from './benefit.entity.ts';
import type { Commitment } from './commitment.entity.ts';
import { CompanyCheck } from './company/company-check.service.ts';
import type { CompanyExceptionDto } from './company/company.dto.ts';
import { ContractRecords } from './contract-records.service.ts';
import type { ContractRecord } from './contract-records.service.ts';
import { Contract } from './contract.entity.ts';
import { CoveredGames } from './covered-games.service.ts';
import { Sponsor } from './sponsor.entity.ts';
import { Term } from './term.entity.ts';
import { termsOfRows } from './terms-of-rows.ts';
import type { ContractLines } from './terms-of-rows.ts';

export interface Signature {
  signedOn: Day;
  signedByName: string | null;
  categoryException?: string | null;
  categoryExceptionApprovedBy?: string | null;
  companyException?: CompanyExceptionDto | null;
}

export interface ReadyToSign extends ContractRecord {
  number: string;
  fiscalYear: number;
  seriesNumber: number;
  terms: ContractTerms;
  /** the games of the season, for what was given in them before */
  lines: ContractLines;
}

const LINES = `select commitment.id, commitment.counting, commitment.reads, commitment.reads_at_least as "readsAtLeast",
    commitment.reads_at_most as "readsAtMost", commitment.rate_cents as "rateCents", commitment.price_each_cents as "priceEachCents", commitment.is_taxed as "isTaxed",
    commitment.starts_on as "startsOn", commitment.ends_on as "endsOn", commitment.team_ids as "teamIds", commitment.levels, commitment.blackout_days as "blackoutDays",
    read_kind.name as "readKindName"
  from commitment join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
  where commitment.department_id = $1 and commitment.term_id = $2 order by commitment.place`;

/** Makes a draft ready for the ledgers: terms, number, signature. Whoever books the happening calls it first. */
@Injectable()
export class ContractSigning {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(CoveredGames) private readonly games: CoveredGames,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CompanyCheck) private readonly company: CompanyCheck,
  ) {}

  /**
   * Locks the draft, checks it and writes number and signature.
   *
   * @throws Refused `contract-already-signed`, `category-blocked`, `category-exclusive`, `category-reserved`, `contract-without-lines`, `installments-exceed-price`, `goods-miss-the-price`
   */
  async prepare(contractId: string, signature: Signature): Promise<ReadyToSign> {
    const { record, exception, lines, terms } = await this.check(contractId, signature);
    const { fiscalYearStartsInMonth } = await this.departments.here();
    const fiscalYear = fiscalYearOf(signature.signedOn, fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next('contract', null, fiscalYear);
    const number = documentNumber('C', fiscalYear, seriesNumber);
    await this.work.update(Contract, contractId, null, { number, ...exception });
    await this.work.update(Term, record.term.id, null, { signedOn: signature.signedOn, signedByName: signature.signedByName });
    await this.makeActive(record.contract.sponsorId);
    return { ...record, number, fiscalYear, seriesNumber, terms, lines };
  }

  /** The refusal that signing would meet, before anything is written; null where it would go through. */
  async whyNot(contractId: string, signature: Signature): Promise<Refused | null> {
    try {
      signedPosition((await this.check(contractId, signature)).terms);
      return null;
    } catch (error) {
      if (error instanceof Refused) return error;
      throw error;
    }
  }

  private async check(contractId: string, signature: Signature): Promise<Checked> {
    const record = await this.records.lock(contractId);
    if (record.term.state !== 'draft') refuse('contract-already-signed');
    const exception = exceptionOf(record.contract, signature);
    await this.checkCompany(record, signature);
    await this.checkCategory(record.contract, exception);
    const lines = await this.linesOf(record.term.id);
    if (lines.commitments.length + lines.benefits.length === 0) refuse('contract-without-lines');
    const terms = termsOfRows(record, lines, await this.games.ofReach([{ seasonId: record.term.seasonId, teamIds: lines.commitments.flatMap((line) => line.teamIds) }]));
    checkPlanCovers(record.term.billingPlan, record.term.priceCents);
    await this.checkGoods(record);
    return { record, exception, lines, terms };
  }

  /** The price may have been changed after the goods were written down. */
  private async checkGoods({ contract, term }: ContractRecord): Promise<void> {
    if (!contract.isInKind) return;
    const goods = await this.work.sql<Pick<GoodsPromise, 'quantity' | 'unitCents'>>(
      'select quantity, unit_cents as "unitCents" from goods_promise where department_id = $1 and contract_id = $2',
      [contract.id],
    );
    if (goods.length > 0) assertGoodsMeetPrice(goods, term.priceCents);
  }

  private async checkCompany({ contract, term }: ContractRecord, { companyException }: Signature): Promise<void> {
    const { startsOn, endsOn } = term;
    await this.company.refuseInTheWay({ kind: 'contract', dealId: contract.id, sponsorId: contract.sponsorId, startsOn, endsOn, exception: companyException });
  }

  private async checkCategory(contract: Contract, exception: Exception): Promise<void> {
    const [category] = await this.work.sql<{ name: string; is_blocked: boolean }>(
      `select category.name, category.is_blocked and not exists (select from company_exception as exception where exception.department_id = $1
           and (exception.contract_id = $3 or exception.offer_id in (select offer.id from offer where offer.department_id = $1 and offer.contract_id = $3)) and exception.blocked_category_id = category.id) as is_blocked from sponsor
         join sponsor_category as category on category.department_id = sponsor.department_id and category.id = sponsor.category_id
        where sponsor.department_id = $1 and sponsor.id = $2`,
      [contract.sponsorId, contract.id],
    );
    const isExcepted = Boolean(exception.categoryException && exception.categoryExceptionApprovedBy);
    if (category?.is_blocked && !isExcepted) refuse('category-blocked', { category: category.name });
  }

  private async linesOf(termId: string): Promise<ContractLines> {
    return {
      commitments: await this.work.sql<Commitment & { readKindName: string }>(LINES, [termId]),
      benefits: await this.work.find(Benefit, { termId }, { order: { place: 'ASC' } }),
    };
  }

  private async makeActive(sponsorId: string): Promise<void> {
    const sponsor = await this.work.one(Sponsor, sponsorId);
    if (sponsor.status !== 'active') await this.work.update(Sponsor, sponsorId, null, { status: 'active' });
  }
}

interface Checked {
  record: ContractRecord;
  exception: Exception;
  lines: ContractLines;
  terms: ContractTerms;
}

type Exception = Pick<Contract, 'categoryException' | 'categoryExceptionApprovedBy'>;

function exceptionOf(contract: Contract, signature: Signature): Exception {
  return {
    categoryException: signature.categoryException ?? contract.categoryException,
    categoryExceptionApprovedBy: signature.categoryExceptionApprovedBy ?? contract.categoryExceptionApprovedBy,
  };
}
