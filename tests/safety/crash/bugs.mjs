/** The harness's own test: bugs that the product does not have, put into a copy of the built server, one at a time. */
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { checkout } from '../../../server/commands/build.mjs'

/** @typedef {{ file: string, from: string, to: string }} Change @typedef {{ what: string, changes: Change[], sql?: string }} Seeded */

/** What is replaced stands word for word in the built file; else the bug is not seeded and the run fails. */
export const BUGS = /** @satisfies {Record<string, Seeded>} */ ({
  'no-idempotency-record': {
    what: 'an Idempotency-Key is not remembered',
    changes: [
      { file: 'platform/http/idempotency.service.js', from: 'const earlier = await this.work.first(IdempotencyRecord, { key });', to: 'const earlier = null;' },
      { file: 'platform/http/idempotency.service.js', from: 'await this.work.insert(IdempotencyRecord, {', to: 'if (false) await this.work.insert(IdempotencyRecord, {' },
    ],
  },
  'numbers-from-a-sequence': {
    what: 'numbers of documents come from sequences instead of the counter row',
    sql: 'create sequence crash_invoice; create sequence crash_payment; grant usage on sequence crash_invoice, crash_payment to rafterline_web',
    changes: [
      {
        file: 'access/number.service.js',
        from: 'async next(kind, sellerId, fiscalYear) {',
        to: 'async next(kind, sellerId, fiscalYear) {\nif (kind === "invoice" || kind === "payment") return (await this.work.sql(`select nextval($2)::int as number from department where id = $1`, [`crash_${kind}`]))[0].number;',
      },
      {
        file: 'access/number.service.js',
        from: 'async nextMany(kind, sellerId, fiscalYear, count) {',
        to: 'async nextMany(kind, sellerId, fiscalYear, count) {\nif (kind === "invoice" || kind === "payment") return (await this.work.sql(`select nextval($2)::int as number from department, generate_series(1, $3) where id = $1`, [`crash_${kind}`, count])).map((row) => row.number);',
      },
    ],
  },
  'answer-before-commit': {
    what: 'the answer goes out before the commit',
    changes: [
      {
        file: 'platform/database/unit-of-work.js',
        from: 'await runner.query("commit");\n\t\t\tfor (const begin of errand.afterCommit ?? []) begin();\n\t\t\treturn result;',
        to: 'setTimeout(() => void runner.query("commit").catch(() => void 0).finally(() => runner.letGo()), 10);\n\t\t\trunner.letGo = runner.release.bind(runner);\n\t\t\trunner.release = async () => void 0;\n\t\t\treturn result;',
      },
    ],
  },
  'no-lock-when-billing': {
    what: 'what is due is worked out without a lock on the contract and its term',
    changes: [
      { file: 'billing/invoices/invoice-issuing.service.js', from: 'await this.work.lock(Contract, contractIds);', to: '' },
      { file: 'billing/invoices/invoice-issuing.service.js', from: 'await this.work.lock(Term, deals.map(({ termId }) => termId));', to: '' },
      {
        file: 'billing/invoices/invoice-issuing.service.js',
        from: 'const booked = await this.terms.book(numbered.map(({ planned: { books, lines, amounts }, invoiceId, number }) => ({',
        to: 'for (const one of numbered) one.planned.books = (await this.terms.open([one.planned.deal.termId]))[0];\nconst booked = await this.terms.book(numbered.map(({ planned: { books, lines, amounts }, invoiceId, number }) => ({',
      },
    ],
  },
  'entry-in-two-transactions': {
    what: 'an entry of the books and its postings are written in two transactions',
    changes: [
      {
        file: 'ledger/ledger.service.js',
        from: 'await this.write("ledger_entry", entries);',
        to: 'await this.write("ledger_entry", entries);\nawait this.work.manager.query(`commit; begin; set local app.department_id = \'${this.work.departmentId}\'; set local app.person_id = \'${this.work.scope.personId}\'`);',
      },
    ],
  },
  'synchronous-commit-off': {
    what: 'the database acknowledges what it has not written yet',
    changes: [
      { file: 'platform/database/database.module.js', from: 'options: "-c timezone=UTC', to: 'options: "-c synchronous_commit=off -c timezone=UTC' },
      { file: 'platform/database/database.module.js', from: 'await refuseUnsafeSettings(source);', to: '' },
    ],
  },
})
/** @typedef {keyof typeof BUGS} Bug */

/** A copy of the built server with one bug in it. @param {Bug} bug @param {string} ownerUrl */
export async function seedBug(bug, ownerUrl) {
  /** @type {Seeded} */
  const { changes, sql } = BUGS[bug]
  // Beside the built one, so that it finds its packages.
  const copy = join(checkout, `.build/crash-${bug}-${process.pid}`)
  const remove = () => rmSync(copy, { recursive: true, force: true })
  cpSync(join(checkout, '.build/server'), copy, { recursive: true })
  try {
    for (const change of changes) apply(copy, change)
    if (sql) await asOwner(ownerUrl, sql)
  } catch (failure) {
    remove()
    throw failure
  }
  return { program: join(copy, 'main.js'), remove }
}

/** @param {string} copy @param {Change} change */
function apply(copy, { file, from, to }) {
  const path = join(copy, file)
  const text = readFileSync(path, 'utf8')
  if (text.split(from).length !== 2) throw new Error(`the bug cannot be seeded: ${file} does not hold exactly once\n${from}`)
  writeFileSync(path, text.replace(from, () => to))
}

/** @param {string} ownerUrl @param {string} sql */
async function asOwner(ownerUrl, sql) {
  const client = new pg.Client({ connectionString: ownerUrl })
  await client.connect()
  await client.query(sql).finally(() => client.end())
}
