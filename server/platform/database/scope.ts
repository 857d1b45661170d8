import { AsyncLocalStorage } from 'node:async_hooks';
import type { PoolClient } from 'pg';
import type { EntityManager } from 'typeorm';

/** In whose name the database is asked: one department, one person. */
export interface Scope {
  readonly departmentId: string;
  readonly personId: string | null;
  /** the link of a night's table by which they came, where they have no session */
  readonly table?: { readonly linkId: string; readonly nightId: string } | null;
}

/** What one request, or one command, carries along. Only the unit of work touches it. */
export interface Errand {
  scope: Scope | null;
  manager: EntityManager | null;
  /** the connection the manager works on, for SQL of our own */
  client?: PoolClient | null;
  /** what begins once the unit is committed, and never if it is not */
  afterCommit?: (() => void)[];
}

export const errands = new AsyncLocalStorage<Errand>();

/** A department that is none: what is known before anyone signed in. */
export const NOWHERE: Scope = { departmentId: '00000000-0000-0000-0000-000000000000', personId: null };
