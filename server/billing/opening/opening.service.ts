import { Inject, Injectable } from '@nestjs/common';
import { dueOn } from '../../domain/billing/invoice.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import type { ContractTerms } from '../../domain/sponsorship/contract-terms.ts';
import type { BilledLine, HappeningOf } from '../../domain/sponsorship/happening.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractSigning } from '../../sponsorship/contract-signing.service.ts';
import type { ReadyToSign } from '../../sponsorship/contract-signing.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { AppliedCredit } from '../payments/application.entity.ts';
import { lineRows } from '../invoices/invoice-issuing.service.ts';
import { InvoiceLine } from '../invoices/invoice-line.entity.ts';
import { PARTIES, snapshotOf } from '../invoices/invoice-snapshot.ts';
import type { Parties } from '../invoices/invoice-snapshot.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import type { GivenBeforeDto, OpeningDto } from './opening.dto.ts';
import { Payment } from '../payments/payment.entity.ts';

type Given = HappeningOf<'openingPosition'>['given'];

/** Takes over a contract in mid-season: signed, with what was given, billed and paid before. */
@Injectable()
export class OpeningService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractSigning) private readonly signing: ContractSigning,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  /** @throws Refused as signing does, `more-given-than-promised`, `more-than-to-bill`, `more-paid-than-billed` */
  async open(contractId: string, form: OpeningDto): Promise<void> {
    const { givenByCommitment = [], billedCents = 0, paidCents = 0 } = form;
    const asOf = form.asOf as Day;
    const signature = { signedOn: (form.signedOn ?? asOf) as Day, signedByName: form.signedByName ?? null, companyException: form.companyException ?? null };
    const ready = await this.signing.prepare(contractId, signature);
    const [parties] = await this.work.sql<Parties>(PARTIES, [contractId]);
    if (!parties!.keepsBooksHere && billedCents + paidCents > 0) refuse('seller-keeps-own-books');
    const invoiceId = newId();
    const given = givenByCommitment.flatMap((one) => givenOf(ready.terms, one));
    const { eventIds } = await this.terms.happen(ready.term.id, [
      {
        happening: { kind: 'openingPosition', terms: ready.terms, given, billedCents: centsOf(billedCents), paidCents: centsOf(paidCents), invoiceId },
        because: { cause: 'contract', causeId: contractId, occurredOn: asOf },
      },
    ]);
    if (billedCents > 0) await this.writeInvoice(ready, parties!, { invoiceId, billedCents, asOf, eventId: eventIds[0]! });
    if (paidCents > 0) await this.writePayment(ready, parties!, { invoiceId, paidCents, asOf, eventId: eventIds[0]! });
  }

  private async writeInvoice(ready: ReadyToSign, parties: Parties, opening: { invoiceId: string; billedCents: number; asOf: Day; eventId: string }): Promise<void> {
    const { invoiceId, asOf, eventId } = opening;
    const amounts = { netCents: centsOf(opening.billedCents), taxCents: centsOf(0), grossCents: centsOf(opening.billedCents) };
    const number = `OPEN-${ready.number}`;
    const fallsDueOn = dueOn(asOf, parties.termsDays);
    const lines: BilledLine[] = [{ text: 'Billed before the start', amountCents: amounts.netCents }];
    const { fiscalYear, seriesNumber, contract, term } = ready;
    const { sellerId, payerId, sponsorId } = contract;
    const snapshot = snapshotOf({ ...parties, taxBasisPoints: 0 }, { number, issuedOn: asOf, dueOn: fallsDueOn, lines, amounts, note: 'Taken over from the books before the start.' });
    await this.work.insert(Invoice, {
      id: invoiceId,
      kind: 'opening',
      number,
      fiscalYear,
      seriesNumber,
      sellerId,
      payerId,
      sponsorId,
      contractId: contract.id,
      termId: term.id,
      purchaseOrderNumber: contract.purchaseOrderNumber,
      issuedOn: asOf,
      dueOn: fallsDueOn,
      ...amounts,
      taxBasisPoints: 0,
      eventId,
      snapshot: snapshot as never,
      issuedByPersonId: this.work.personId,
    });
    await this.work.insert(InvoiceLine, lineRows(lines, invoiceId, 0) as never);
  }

  /** The books have the open rest in one amount, so this payment posts nothing of its own. */
  private async writePayment(ready: ReadyToSign, { sellerId, payerId }: Parties, opening: { invoiceId: string; paidCents: number; asOf: Day; eventId: string }): Promise<void> {
    const { invoiceId, paidCents, asOf, eventId } = opening;
    const paymentId = newId();
    const recordedByPersonId = this.work.personId;
    const number = `OPEN-${ready.number}`;
    await this.work.insert(Payment, { id: paymentId, number, sellerId, payerId, receivedOn: asOf, method: 'opening', amountCents: paidCents, eventId, recordedByPersonId });
    await this.work.insert(AppliedCredit, { paymentId, invoiceId, amountCents: paidCents, appliedOn: asOf, eventId, recordedByPersonId });
  }
}

/** What was given of a line that counts by games is laid into its games, the earliest first. */
function givenOf(terms: ContractTerms, { commitmentId, given }: GivenBeforeDto): Given {
  const line = terms.lines.find((one) => one.lineId === commitmentId);
  if (!line) return refuse('unknown-line');
  if (given === 0) return [];
  if (line.kind !== 'reads' || (line.counting !== 'perGame' && line.counting !== 'perNight')) return [{ lineId: commitmentId, count: given }];
  let left = given;
  const laid = (line.games ?? []).flatMap(({ gameId, reads }) => {
    const count = Math.min(left, reads);
    left -= count;
    return count > 0 ? [{ lineId: commitmentId, gameId, count }] : [];
  });
  return left > 0 ? refuse('more-given-than-promised') : laid;
}
