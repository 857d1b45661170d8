import { expect, test } from 'vitest';
import { aPaidContract } from '../support/closed-contract.ts';
import { aSignedContract } from '../support/season.ts';
import type { Answer, Visitor } from '../support/visitor.ts';
import { WAYS, anOffice, ordersOf, take, told } from './interleaving.ts';

/** Starts a billing run and answers when it has dealt with every contract. */
async function run(visitor: Visitor, runs: string[]): Promise<Answer> {
  const answer = await visitor.post('/api/billing-runs', { throughDay: '2026-12-31', issuedOn: '2026-12-31' });
  if (answer.status !== 201) return answer;
  runs.push(answer.body.id);
  for (const until = Date.now() + 30_000; Date.now() < until; await new Promise((done) => setTimeout(done, 25))) {
    const { isFinished } = await visitor.look(`/api/billing-runs/${answer.body.id}`);
    if (isFinished) return answer;
  }
  throw new Error(`the run ${answer.body.id} was to end`);
}

test.each(WAYS)('two billing runs and an invoice by hand meet on one contract, %s: it is billed once, and one of the three says so', async (way) => {
  const { department, season } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['a run', 'another run', 'by hand'])) {
    const contract = await aSignedContract(department, season, { title: order.join(', '), billingPlan: { kind: 'inFull', on: '2026-11-23' } });
    const runs: string[] = [];
    const answers = await take(department, { contract: contract.id }, {
      'a run': () => run(bookkeeper, runs),
      'another run': () => run(director, runs),
      'by hand': () => bookkeeper.post('/api/invoices', { contractId: contract.id, throughDay: '2026-12-31', issuedOn: '2026-12-31' }),
    }, order, way);
    const said = told(answers, order);
    expect([said['a run'], said['another run']], order.join(', ')).toEqual(['done', 'done']);
    const issued = await department.ask<{ outcome: string }>('select outcome from billing_run_line where department_id = $1 and contract_id = $2 order by outcome', [department.id, contract.id]);
    const byHand = said['by hand'] === 'done';
    expect(issued.map(({ outcome }) => outcome), order.join(', ')).toEqual(byHand ? ['skipped', 'skipped'] : ['issued', 'skipped']);
    if (!byHand) expect(said['by hand']).toBe('nothing-to-bill');
    if (way === 'one after the other') expect(byHand, order.join(', ')).toBe(order[0] === 'by hand');
    const { data } = await bookkeeper.look(`/api/invoices?contractId=${contract.id}`);
    expect(data.map((invoice: any) => invoice.netCents), order.join(', ')).toEqual([70_000]);
  }
});

test.each(WAYS)('a contract is closed while its check comes back and another pays, %s: a closed contract has nothing open', async (way) => {
  const { department, season, pay } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['closes', 'comes back', 'pays anew'])) {
    const { id, invoice, payment, contract } = await aPaidContract(department, season);
    const answers = await take(department, { contract: id }, {
      closes: () => director.post(`/api/contracts/${id}/close`, { on: '2026-12-08' }),
      'comes back': () => bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-10', reason: 'Not sufficient funds' }),
      'pays anew': () => pay(invoice.id, 126_000),
    }, order, way);
    const said = told(answers, order);
    const { term, standing } = await contract();
    expect(said['comes back'], order.join(', ')).toBe('done');
    expect(['done', 'close-with-open-invoices'], order.join(', ')).toContain(said['closes']);
    expect(['done', 'more-than-balance'], order.join(', ')).toContain(said['pays anew']);
    expect(standing.receivableCents, order.join(', ')).toBe(said['pays anew'] === 'done' ? 0 : 126_000);
    if (term.state === 'closed') expect([said['closes'], standing.receivableCents], order.join(', ')).toEqual(['done', 0]);
    if (way === 'one after the other' && order.indexOf('comes back') === 2) expect([said['closes'], term.state], order.join(', ')).toEqual(['done', 'signed']);
  }
});
