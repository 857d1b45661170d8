import type { Department } from './department.ts';
import { aContract } from './season.ts';
import type { Season } from './season.ts';

/** A contract whose reads are all given; its 1,260.00 are billed and paid by check 1041. */
export async function aPaidContract(department: Department, season: Season) {
  const { id, commitments } = await aContract(department, season, {
    title: 'All given', priceCents: 120_000, billingPlan: { kind: 'inFull', on: '2026-11-23' },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5_000 }],
  });
  const { director, bookkeeper } = department;
  await director.make(`/api/contracts/${id}/opening`, { givenByCommitment: [{ commitmentId: commitments[0].id, given: 24 }], billedCents: 0, paidCents: 0, asOf: '2026-11-20' });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const payment = await bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference: '1041', amountCents: 126_000, applications: [{ invoiceId: invoice.id, amountCents: 126_000 }],
  });
  const contract = () => director.look(`/api/contracts/${id}`);
  return { id, invoice, payment, contract, number: (await contract()).number as string };
}

/** The same, closed. */
export async function aClosedContract(department: Department, season: Season) {
  const paid = await aPaidContract(department, season);
  await department.director.make(`/api/contracts/${paid.id}/close`, { on: '2026-12-08' });
  return paid;
}
