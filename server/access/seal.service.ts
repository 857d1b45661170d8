import { createHash } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { newId } from '../platform/database/ids.ts';
import type { SealView } from './audit.dto.ts';

const VIEW = `id, number, row_count as "rowCount", encode(head, 'hex') as head, recorded_at as "recordedAt"`;

interface LinkRow {
  number: number;
  coversFrom: string;
  coversTo: string;
  rowsDigest: string;
  previousHead: string | null;
  head: string;
}

/** The head of a seal, from the head before it and the digest of its rows, all hexadecimal. */
function chained(previousHead: string, rowsDigest: string): string {
  return createHash('sha256').update(Buffer.from(previousHead, 'hex')).update(Buffer.from(rowsDigest, 'hex')).digest('hex');
}

/** Tables whose rows are history carry their own digest; a seal chains the digests of all rows since the last one. */
@Injectable()
export class SealService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(): Promise<{ data: SealView[]; total: number }> {
    const data = await this.work.sql<SealView>(`select ${VIEW} from seal where department_id = $1 order by number desc limit 100`);
    return { data, total: data.length };
  }

  /** Seals when the last seal is a day old; the lock is taken first, so that of two servers one seals. */
  async sealWhenDue(): Promise<SealView | null> {
    await this.work.sql('select pg_advisory_xact_lock(hashtextextended($1::uuid::text, 7))');
    const recent = await this.work.sql(`select 1 from seal where department_id = $1 and recorded_at > now() - interval '1 day'`);
    return recent.length === 0 ? this.seal() : null;
  }

  /** Takes the department's lock alone, so it waits for writers that are still writing and sees every row they stamped. */
  async seal(): Promise<SealView> {
    await this.work.sql('select pg_advisory_xact_lock(hashtextextended($1::uuid::text, 7))');
    const [last] = await this.work.sql<{ number: number; covers_to: string; head: string }>(
      `select number, covers_to::text as covers_to, encode(head, 'hex') as head from seal where department_id = $1 order by number desc limit 1`,
    );
    const [clock] = await this.work.sql<{ now: string }>('select clock_timestamp()::text as now where $1::uuid is not null');
    const from = last?.covers_to ?? '-infinity';
    const { count, digest } = await this.digestOf(from, clock!.now);
    const head = chained(last?.head ?? '', digest);
    const id = newId();
    await this.work.sql(
      `insert into seal (department_id, id, number, covers_from, covers_to, row_count, rows_digest, previous_head, head)
       values ($1, $2, $3, $4::timestamptz, $5::timestamptz, $6, decode($7, 'hex'), decode($8, 'hex'), decode($9, 'hex'))`,
      [id, (last?.number ?? 0) + 1, from, clock!.now, count, digest, last?.head ?? null, head],
    );
    const [view] = await this.work.sql<SealView>(`select ${VIEW} from seal where department_id = $1 and id = $2`, [id]);
    return view!;
  }

  /**
   * Whether a seal is there with this head, covers the rows it covered then, and each seal from it to the latest follows from the one before.
   *
   * @param head hexadecimal
   */
  async standing(number: number, head: string): Promise<{ stands: boolean; followedTo: number }> {
    const chain = await this.work.sql<LinkRow>(
      `select number, covers_from::text as "coversFrom", covers_to::text as "coversTo", encode(rows_digest, 'hex') as "rowsDigest",
         encode(previous_head, 'hex') as "previousHead", encode(head, 'hex') as head from seal where department_id = $1 and number >= $2 order by number`,
      [number],
    );
    const [first] = chain;
    if (!first || first.number !== number || first.head !== head) return { stands: false, followedTo: number };
    const { digest } = await this.digestOf(first.coversFrom, first.coversTo);
    let before = first.previousHead ?? '';
    for (const link of chain) {
      if ((link.previousHead ?? '') !== before || chained(before, link.rowsDigest) !== link.head) return { stands: false, followedTo: link.number };
      before = link.head;
    }
    return { stands: digest === first.rowsDigest, followedTo: chain.at(-1)!.number };
  }

  private async digestOf(from: string, to: string): Promise<{ count: number; digest: string }> {
    const chain = createHash('sha256');
    let count = 0;
    for (const table of await this.historyTables()) {
      const [row] = await this.work.sql<{ count: number; digest: string }>(
        `select count(*) as count, coalesce(encode(sha256(string_agg(digest, ''::bytea order by id)), 'hex'), '') as digest
           from ${table} where department_id = $1 and recorded_at > $2::timestamptz and recorded_at <= $3::timestamptz`,
        [from, to],
      );
      count += row?.count ?? 0;
      chain.update(`${table}:${row?.count}:${row?.digest};`);
    }
    return { count, digest: chain.digest('hex') };
  }

  private async historyTables(): Promise<string[]> {
    const rows = await this.work.sqlEverywhere<{ name: string }>(
      `select relname::text as name from pg_trigger join pg_class on pg_class.oid = tgrelid where tgname = 'stamp' and relname <> 'seal' order by relname`,
    );
    return rows.map((row) => row.name);
  }
}
