import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { thankYouLetter } from '../../domain/billing/letters/thank-you-letter.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { LetterSheet } from '../../platform/typesetting/letter-sheet.ts';
import { dayAt } from '../../domain/instant.ts';
import type { Instant } from '../../domain/instant.ts';
import { ContractViews } from '../../sponsorship/contract-view.service.ts';
import { Payer } from '../../sponsorship/payer.entity.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { Sponsor } from '../../sponsorship/sponsor.entity.ts';
import { paperName } from './draft.ts';
import type { Draft } from './draft.ts';
import { writingOf } from './invoice-drafts.service.ts';
import { Message } from './message.entity.ts';

/** What payments settled of the contract's invoices; a credit memo is no payment. */
const PAID = `select coalesce(sum(application.amount_cents), 0) as cents from application
  join invoice on invoice.department_id = application.department_id and invoice.id = application.invoice_id
  where application.department_id = $1 and application.payment_id is not null and invoice.contract_id = $2`;

const GOODS = `select ledger_event.happening ->> 'what' as what, ledger_event.occurred_on as "receivedOn" from ledger_event
  where ledger_event.department_id = $1 and ledger_event.contract_id = $2 and ledger_event.happening ->> 'kind' = 'goodsReceived'
    and not exists (select 1 from ledger_event as later where later.department_id = $1 and later.takes_back_event_id = ledger_event.id)
  order by ledger_event.occurred_on, ledger_event.recorded_at`;

/** Thanks to a sponsor that name what was given in return. */
@Injectable()
export class ThankYouDrafts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractViews) private readonly contracts: ContractViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async thankYou(contractId: string): Promise<Draft> {
    const contract = await this.contracts.one(contractId);
    const [sponsor, payer, seller] = [await this.work.one(Sponsor, contract.sponsorId), await this.work.one(Payer, contract.payerId), await this.work.one(Seller, contract.sellerId)];
    const department = await this.departments.here();
    const [paid] = await this.work.sql<{ cents: number }>(PAID, [contractId]);
    const letter = thankYouLetter(
      {
        toName: sponsor.contactName ?? sponsor.name,
        sponsorName: sponsor.name,
        departmentName: department.name,
        seasonName: contract.term.seasonName,
        contractTitle: contract.title,
        asOf: await this.departments.today(),
        reads: countsByName(contract.commitments.map(({ readKindName, standing }) => [readKindName, standing.given + standing.madeGood])).map(([kind, count]) => ({ kind, count })),
        benefits: countsByName(contract.benefits.map(({ name, delivered }) => [name, delivered])).map(([name, count]) => ({ name, count })),
        paidCents: paid?.cents ?? 0,
        goods: await this.work.sql<{ what: string; receivedOn: string }>(GOODS, [contractId]),
      },
      seller,
      writingOf(department),
    );
    return {
      ...letter,
      kind: 'thankYou',
      aboutId: contractId,
      sponsorId: sponsor.id,
      payerId: payer.id,
      toName: sponsor.name,
      toAddress: sponsor.email ?? payer.email,
      fromName: seller.name,
      replyTo: seller.contactEmail,
      attachments: [{ kind: 'thankYou', aboutId: contractId, name: paperName(`thank-you-${contract.number ?? 'letter'}`) }],
      which: [],
    };
  }

  /** The letter on paper, with the words in which it was sent. */
  async sheetOf(messageId: string): Promise<LetterSheet> {
    const message = await this.work.one(Message, messageId);
    const { locale, zone } = await this.departments.here();
    const contract = await this.contracts.one(message.aboutId);
    const [seller, sponsor] = [await this.work.one(Seller, contract.sellerId), await this.work.one(Sponsor, contract.sponsorId)];
    return {
      subject: message.subject,
      fromName: message.fromName,
      fromAddress: seller.address,
      toName: sponsor.name,
      toAddress: sponsor.address,
      writtenOn: dayAt(message.recordedAt as Instant, zone),
      locale,
      body: message.body,
    };
  }
}

/** Lines of one name are one line of the letter; what was not given is not named. */
function countsByName(lines: readonly (readonly [name: string, count: number])[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const [name, count] of lines) counts.set(name, (counts.get(name) ?? 0) + count);
  return [...counts].filter(([, count]) => count > 0);
}
