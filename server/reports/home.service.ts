import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { InvoiceViews } from '../billing/invoices/invoice-view.service.ts';
import { OpenItems } from '../billing/open-items/open-items.service.ts';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import { daysBetween } from '../domain/day.ts';
import type { Day } from '../domain/day.ts';
import { ReadDisputeViews } from '../makegoods/disputes/dispute-views.service.ts';
import { NightsWithPaper } from '../packet/nights-with-paper.service.ts';
import type { NightView } from '../season/night.dto.ts';
import { ContractViews } from '../sponsorship/contract-view.service.ts';
import type { ContractView } from '../sponsorship/contract-view.ts';
import type { AskedView, BehindView, HeldView, HomeFigures, HomeView, UnpaidView } from './home.dto.ts';
import { RecentService } from './recent.service.ts';

const NIGHTS_SHOWN = 5;
const LINES_SHOWN = 10;
const CONTRACTS_AT_ONCE = 500;

/** The first screen: four questions, each answered by the room that knows. */
@Injectable()
export class HomeService {
  constructor(
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(NightsWithPaper) private readonly nights: NightsWithPaper,
    @Inject(ContractViews) private readonly contracts: ContractViews,
    @Inject(InvoiceViews) private readonly invoices: InvoiceViews,
    @Inject(OpenItems) private readonly openItems: OpenItems,
    @Inject(RecentService) private readonly recent: RecentService,
    @Inject(ReadDisputeViews) private readonly disputes: ReadDisputeViews,
  ) {}

  async show(roles: readonly Role[]): Promise<Omit<HomeView, 'proof'>> {
    const today = await this.departments.today();
    const seesMoney = mayUse(roles, 'see money');
    const contracts = await this.signed();
    return {
      today,
      nights: await this.nextNights(today),
      behind: behindOf(contracts),
      held: heldOf(contracts),
      asked: mayUse(roles, 'see contracts') ? await this.asked() : [],
      unpaid: seesMoney ? await this.unpaid(today) : [],
      recent: await this.recent.list(LINES_SHOWN, seesMoney),
      figures: figuresOf(contracts, seesMoney),
      openMoney: seesMoney ? await this.openItems.figures(today) : null,
    };
  }

  /** All of them, page by page: the figures are of every signed contract. */
  private async signed(): Promise<ContractView[]> {
    const all: ContractView[] = [];
    for (let page = 1; ; page += 1) {
      const { data, total } = await this.contracts.list({ state: 'signed', page, perPage: CONTRACTS_AT_ONCE });
      all.push(...data);
      if (data.length === 0 || all.length >= total) return all;
    }
  }

  private async nextNights(today: Day): Promise<NightView[]> {
    const { data } = await this.nights.list({ from: today, state: 'open', sort: 'heldOn', perPage: NIGHTS_SHOWN });
    return data;
  }

  private async asked(): Promise<AskedView[]> {
    const { data } = await this.disputes.list({ state: 'open', perPage: LINES_SHOWN });
    return data.map(({ id, sponsorName, readKindName, heldOn, what }) => ({ disputeId: id, sponsorName, readKindName, heldOn, what }));
  }

  private async unpaid(today: Day): Promise<UnpaidView[]> {
    const { data } = await this.invoices.list({ unpaid: true, sort: 'dueOn', perPage: LINES_SHOWN });
    return data.map((invoice) => ({
      invoiceId: invoice.id,
      number: invoice.number,
      sponsorName: invoice.sponsorName ?? invoice.payerName,
      balanceCents: invoice.balanceCents,
      dueOn: invoice.dueOn,
      daysPastDue: daysBetween(invoice.dueOn as Day, today),
    }));
  }
}

/** The furthest behind first. */
function behindOf(contracts: readonly ContractView[]): BehindView[] {
  return contracts
    .flatMap((contract) =>
      contract.commitments.map(({ id, readKindName, standing }) => ({
        contractId: contract.id,
        contractTitle: contract.title,
        sponsorName: contract.sponsorName,
        commitmentId: id,
        readKindName,
        promised: standing.promised,
        given: standing.given,
        owed: standing.owed,
        expectedByNow: standing.expectedByNow,
        behindBy: standing.behind,
      })),
    )
    .filter((line) => line.behindBy > 0)
    .sort((one, other) => other.behindBy - one.behindBy)
    .slice(0, LINES_SHOWN);
}

function heldOf(contracts: readonly ContractView[]): HeldView[] {
  return contracts.flatMap(({ id, title, sponsorName, hold, standing }) =>
    hold ? [{ contractId: id, contractTitle: title, sponsorName, heldOn: hold.heldOn, reason: hold.reason, owed: standing.owed }] : [],
  );
}

function figuresOf(contracts: readonly ContractView[], seesMoney: boolean): HomeFigures {
  const sum = (of: (standing: ContractView['standing']) => number) => contracts.reduce((total, { standing }) => total + of(standing), 0);
  const money = (of: (standing: ContractView['standing']) => number) => (seesMoney ? sum(of) : null);
  return {
    signedCents: money((standing) => standing.priceCents),
    earnedCents: money((standing) => standing.earnedCents),
    billedCents: money((standing) => standing.billedCents),
    receivableCents: money((standing) => standing.receivableCents),
    promisedReads: sum((standing) => standing.promised),
    givenReads: sum((standing) => standing.given),
    owedReads: sum((standing) => standing.owed),
    loggedNotSignedOff: sum((standing) => standing.loggedNotSignedOff),
  };
}
