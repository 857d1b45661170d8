import { Inject, Injectable } from '@nestjs/common';
import type { BeforeApplicationShutdown } from '@nestjs/common';
import pg from 'pg';
import { CONFIG } from '../config/config.ts';
import type { Config } from '../config/config.ts';
import { LOG } from '../log/log.ts';
import type { Log } from '../log/log.ts';
import { UnitOfWork } from './unit-of-work.ts';

/** What there is something new of. */
export type NoticeKind = 'entries' | 'requests' | 'night';

/** Ids and numbers only: what it is about is read by whoever may see it. */
export interface Notice {
  departmentId: string;
  /** the night */
  subjectId: string;
  kind: NoticeKind;
  /** of entries, the last number there is */
  number: number | null;
}

/** `missed`: the connection was away, so anything may have happened. */
export type Listener = (notice: Notice | 'missed') => void;

const CHANNEL = 'rafterline';
const FIRST_WAIT_MILLISECONDS = 200;
const LONGEST_WAIT_MILLISECONDS = 5000;
const PING_MILLISECONDS = 30_000;

/**
 * Tells every process of the server that something is new, when the unit of work that made it so is committed, and not
 * before. One connection of a process listens for all who read there; it begins with the first of them and comes back when it is lost.
 */
@Injectable()
export class Notices implements BeforeApplicationShutdown {
  private readonly listeners = new Map<string, Set<Listener>>();
  private client: pg.Client | null = null;
  private wait = FIRST_WAIT_MILLISECONDS;
  private retry: NodeJS.Timeout | null = null;
  private isOver = false;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(LOG) private readonly log: Log,
  ) {}

  /** Part of the present unit of work: it goes out with the commit, and not at all when that fails. */
  async tell(kind: NoticeKind, subjectId: string, number: number | null = null): Promise<void> {
    await this.work.sql(`select pg_notify('${CHANNEL}', $1::text || ' ' || $2)`, [[subjectId, kind, number ?? ''].join(' ')]);
  }

  /** Hears what is told of one subject of one department. Answers how to stop. */
  listen(departmentId: string, subjectId: string, listener: Listener): () => void {
    const key = `${departmentId} ${subjectId}`;
    const those = this.listeners.get(key) ?? new Set();
    this.listeners.set(key, those.add(listener));
    if (!this.client && !this.retry) void this.connect();
    return () => {
      those.delete(listener);
      if (those.size === 0 && this.listeners.get(key) === those) this.listeners.delete(key);
    };
  }

  async beforeApplicationShutdown(): Promise<void> {
    this.isOver = true;
    if (this.retry) clearTimeout(this.retry);
    await this.client?.end().catch(() => undefined);
  }

  private async connect(): Promise<void> {
    if (this.isOver) return;
    this.retry = null;
    const client = new pg.Client({ connectionString: this.config.databaseUrl, keepAlive: true, connectionTimeoutMillis: 5000, query_timeout: 5000, application_name: 'rafterline notices' });
    this.client = client;
    client.on('notification', ({ payload }) => this.pass(payload ?? ''));
    client.on('error', () => this.lost(client));
    client.on('end', () => this.lost(client));
    try {
      await client.connect();
      await client.query(`listen ${CHANNEL}`);
      this.wait = FIRST_WAIT_MILLISECONDS;
      this.keepAsking(client);
      for (const listener of this.everyone()) listener('missed');
    } catch {
      this.lost(client);
    }
  }

  /** A connection may be gone without a word; only a question without an answer shows it. */
  private keepAsking(client: pg.Client): void {
    const ping = setInterval(() => {
      if (this.client !== client) return clearInterval(ping);
      client.query('select 1').catch(() => this.lost(client));
    }, PING_MILLISECONDS);
    ping.unref();
  }

  private lost(client: pg.Client): void {
    if (this.client !== client) return;
    this.client = null;
    client.end().catch(() => undefined);
    if (this.isOver) return;
    this.log.warn({ waitMilliseconds: this.wait }, 'the connection that hears of news was lost');
    this.retry = setTimeout(() => void this.connect(), this.wait);
    this.retry.unref();
    this.wait = Math.min(this.wait * 2, LONGEST_WAIT_MILLISECONDS);
  }

  private pass(payload: string): void {
    const [departmentId = '', subjectId = '', kind, number] = payload.split(' ');
    const notice: Notice = { departmentId, subjectId, kind: kind as NoticeKind, number: number ? Number(number) : null };
    for (const listener of this.listeners.get(`${departmentId} ${subjectId}`) ?? []) listener(notice);
  }

  private everyone(): Listener[] {
    return [...this.listeners.values()].flatMap((those) => [...those]);
  }
}
