import { createHash } from 'node:crypto';
import { balancesOfPostings } from '../domain/ledger/balances.ts';
import type { Balances } from '../domain/ledger/balances.ts';
import type { Posting } from '../domain/ledger/posting.ts';
import { positionOf } from '../domain/sponsorship/apply-happening.ts';
import type { Happening } from '../domain/sponsorship/happening.ts';
import { invariantsOf } from '../domain/sponsorship/invariants.ts';
import { balancesOf } from '../domain/sponsorship/position-balances.ts';
import { BOOK_QUERIES } from './books-queries.ts';
import { JOURNAL_QUERIES } from './journal-queries.ts';

/** Asks the database in the scope of one department. */
export type Ask = <T = Record<string, unknown>>(sql: string, parameters: readonly unknown[]) => Promise<T[]>;

export interface Finding {
  id: string;
  sentence: string;
  /** what breaks it; empty when it holds */
  broken: string[];
}

/** Runs every invariant of the books of one department. The database is only read. */
export async function checkBooks(ask: Ask, departmentId: string): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const { id, sentence, sql } of [...BOOK_QUERIES, ...JOURNAL_QUERIES]) {
    const rows = await ask(sql, [departmentId]);
    findings.push({ id, sentence, broken: rows.slice(0, 20).map((row) => JSON.stringify(row)) });
  }
  findings.push(await termsAreTheirHappenings(ask, departmentId), await sealsVerify(ask, departmentId));
  return findings;
}

interface EventRow {
  term_id: string;
  happening: Happening;
  keeps_books_here: boolean;
}

/** I7, I11: replaying what happened gives the balances that were posted, values and bridge hold. */
async function termsAreTheirHappenings(ask: Ask, departmentId: string): Promise<Finding> {
  const events = await ask<EventRow>(
    `select ledger_event.term_id, ledger_event.happening, seller.keeps_books_here from ledger_event
       join seller on seller.department_id = ledger_event.department_id and seller.id = ledger_event.seller_id
      where ledger_event.department_id = $1 and place is not null order by term_id, place`,
    [departmentId],
  );
  const postings = await ask<{ term_id: string } & Record<string, string | number | null>>(
    `select posting.term_id, journal, from_account as "from", to_account as "to", amount, posting.contract_id as "contractId",
            commitment_id as "commitmentId", game_id as "gameId", invoice_id as "invoiceId", unapplied_id as "unappliedId"
       from posting join ledger_event on ledger_event.department_id = posting.department_id and ledger_event.id = posting.event_id
      where posting.department_id = $1 and ledger_event.place is not null`,
    [departmentId],
  );
  const posted = groupByTerm(postings);
  const broken: string[] = [];
  for (const [termId, rows] of groupByTerm(events)) {
    const position = positionOf(rows.map((row) => row.happening));
    if (!position) continue;
    broken.push(...invariantsOf(position).map((sentence) => `term ${termId}: ${sentence}`));
    const keepsBooks = rows[0]!.keeps_books_here;
    const replayed = [...balancesOf(position).values()].filter((balance) => keepsBooks || balance.journal === 'reads');
    if (textOf(replayed) !== textOf([...balancesOfPostings((posted.get(termId) ?? []).map(postingOf)).values()])) {
      broken.push(`term ${termId}: its postings are not what its happenings add up to`);
    }
  }
  return { id: 'I7 I11', sentence: 'values re-add to the price, the bridge of the two ledgers holds, and postings are what happened', broken };
}

function groupByTerm<T extends { term_id: string }>(rows: readonly T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(row.term_id);
    if (group) group.push(row);
    else groups.set(row.term_id, [row]);
  }
  return groups;
}

function postingOf(row: Record<string, unknown>): Posting {
  return Object.fromEntries(Object.entries(row).filter(([name, value]) => value !== null && name !== 'term_id')) as unknown as Posting;
}

function textOf(balances: Iterable<Balances extends ReadonlyMap<string, infer B> ? B : never>): string {
  return [...balances].map(({ journal, account, keys, amount }) => `${journal}|${account}|${JSON.stringify(Object.entries(keys).sort())}|${amount}`).sort().join('\n');
}

interface SealRow {
  number: number;
  covers_from: string;
  covers_to: string;
  rows_digest: string;
  previous_head: string | null;
  head: string;
}

/** I9: each row's digest is that of the row, each seal's is that of its rows, each head chains the one before. */
async function sealsVerify(ask: Ask, departmentId: string): Promise<Finding> {
  const tables = (await ask<{ name: string }>(
    `select relname::text as name from pg_trigger join pg_class on pg_class.oid = tgrelid where tgname = 'stamp' and $1::uuid is not null order by relname`,
    [departmentId],
  )).map((row) => row.name);
  const broken: string[] = [];
  for (const table of tables) {
    const rows = await ask(
      `select id from ${table} as kept where department_id = $1
         and digest is distinct from sha256(convert_to((jsonb_strip_nulls(to_jsonb(kept)) - 'digest')::text, 'UTF8')) limit 5`,
      [departmentId],
    );
    broken.push(...rows.map((row) => `${table} ${String(row['id'])} is not what was written`));
  }
  const seals = await ask<SealRow>(
    `select number, covers_from::text, covers_to::text, encode(rows_digest, 'hex') as rows_digest, encode(previous_head, 'hex') as previous_head,
            encode(head, 'hex') as head from seal where department_id = $1 order by number`,
    [departmentId],
  );
  let head = '';
  for (const seal of seals) {
    const digest = await rowsDigest(ask, departmentId, tables.filter((table) => table !== 'seal'), seal);
    const chained = createHash('sha256').update(Buffer.from(head, 'hex')).update(Buffer.from(digest, 'hex')).digest('hex');
    if (digest !== seal.rows_digest || (seal.previous_head ?? '') !== head || chained !== seal.head) broken.push(`seal ${seal.number} does not verify`);
    head = seal.head;
  }
  return { id: 'I9', sentence: 'the seals verify, each over its rows and the seal before', broken };
}

async function rowsDigest(ask: Ask, departmentId: string, tables: readonly string[], seal: SealRow): Promise<string> {
  const chain = createHash('sha256');
  for (const table of tables) {
    const [row] = await ask<{ count: number; digest: string }>(
      `select count(*)::int as count, coalesce(encode(sha256(string_agg(digest, ''::bytea order by id)), 'hex'), '') as digest
         from ${table} where department_id = $1 and recorded_at > $2::timestamptz and recorded_at <= $3::timestamptz`,
      [departmentId, seal.covers_from, seal.covers_to],
    );
    chain.update(`${table}:${row?.count}:${row?.digest};`);
  }
  return chain.digest('hex');
}
