import { expect } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import type { Answer } from '../support/visitor.ts';

type Steps = Readonly<Record<string, () => Promise<Answer>>>;

/**
 * How the steps come to meet: each after the answer to the one before; all waiting for the lock that they begin with, in this
 * order, let go at once; or all let in as far as the booking itself, so that whoever decided without a lock decided too early.
 */
export const WAYS = ['one after the other', 'all at once', 'all at once at the books'] as const;
export type Way = (typeof WAYS)[number];

/** What another connection holds until the last step waits: a contract's, an offer's or a season plan's row, the lock of a document, or the books of the department. */
type Held = { contract: string } | { offer: string } | { seasonPlan: string } | { document: string } | { books: true };

export function ordersOf(names: readonly string[]): string[][] {
  if (names.length === 0) return [[]];
  return names.flatMap((name) => ordersOf(names.filter((other) => other !== name)).map((order) => [name, ...order]));
}

/** Until each step that was sent either waits or has its answer. */
export async function untilSettled(department: Department, sent: number, answered: () => number): Promise<void> {
  for (const until = Date.now() + 20_000; Date.now() < until; await new Promise((done) => setTimeout(done, 15))) {
    const { rows } = await department.pool.query(`select count(*)::int as waiting from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock'`);
    if (rows[0].waiting + answered() >= sent) return;
  }
  throw new Error(`${sent} steps were to wait or be answered`);
}

export async function take(department: Department, held: Held, steps: Steps, order: readonly string[], way: Way): Promise<Record<string, Answer>> {
  const answers: Record<string, Answer> = {};
  if (way === 'one after the other') {
    for (const name of order) answers[name] = await steps[name]!();
    return answers;
  }
  const holder = await department.pool.connect();
  try {
    await holder.query(`begin; set local app.department_id = '${department.id}'`);
    const isAtTheBooks = 'books' in held || way === 'all at once at the books';
    if (isAtTheBooks) await holder.query('select pg_advisory_xact_lock(hashtextextended($1::uuid::text, 19))', [department.id]);
    else if ('contract' in held) await holder.query('select 1 from contract where department_id = $1 and id = $2 for update', [department.id, held.contract]);
    else if ('offer' in held) await holder.query('select 1 from offer where department_id = $1 and id = $2 for update', [department.id, held.offer]);
    else if ('seasonPlan' in held) await holder.query('select 1 from season_plan where department_id = $1 and season_id = $2 for update', [department.id, held.seasonPlan]);
    else await holder.query('select pg_advisory_xact_lock(hashtextextended($1::uuid::text || $2::text, 13))', [department.id, held.document]);
    const sent: Promise<void>[] = [];
    for (const name of order) {
      sent.push(steps[name]!().then((answer) => void (answers[name] = answer)));
      await untilSettled(department, sent.length, () => Object.keys(answers).length);
    }
    await holder.query('commit');
    await Promise.all(sent);
  } finally {
    holder.release();
  }
  return answers;
}

export const saidOf = ({ status, body }: Answer): string => (status < 300 ? 'done' : body.code);
const ANSWER_OF_OUR_FAULT = /^(our-fault|busy|undefined)$/;

/** Nobody was told of our faults, and what each was told is what these names allow. */
export function told(answers: Record<string, Answer>, order: readonly string[]): Record<string, string> {
  const said = Object.fromEntries(order.map((name) => [name, saidOf(answers[name]!)]));
  expect(Object.values(said).filter((one) => ANSWER_OF_OUR_FAULT.test(one)), order.join(', ')).toEqual([]);
  return said;
}

export interface Office {
  department: Department;
  season: Season;
  pay(invoiceId: string, amountCents: number): Promise<Answer>;
  /** 350.00 and 17.50 tax, of a contract whose first half is billed */
  billed(title: string): Promise<{ contractId: string; invoiceId: string }>;
}

export async function anOffice(): Promise<Office> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { bookkeeper } = department;
  return {
    department,
    season,
    pay: (invoiceId, amountCents) =>
      bookkeeper.post('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents, applications: [{ invoiceId, amountCents }] }),
    billed: async (title) => {
      const contract = await aSignedContract(department, season, { title, billingPlan: { kind: 'inFull', on: '2026-11-23' } });
      const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
      return { contractId: contract.id, invoiceId: invoice.id };
    },
  };
}

/** What such an invoice comes to, with its tax. */
export const FULL = 73_500;
