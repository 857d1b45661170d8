import { randomUUID } from 'node:crypto';
import { v7 } from 'uuid';
import type pg from 'pg';
import { onTestFinished } from 'vitest';
import type { Role } from '../../server/domain/access/rights.ts';
import { checkBooks } from '../../server/reports/books.ts';
import { setTypeParsers } from '../../server/platform/database/types.ts';
import { baseUrl as sharedUrl, webPool as sharedPool } from './database.ts';
import { Visitor, newToken } from './visitor.ts';

setTypeParsers();

/** Nobody signs in with it: sessions of tests are written straight into the database. */
const NO_PASSWORD = '$argon2id$v=19$m=19456,t=2,p=1$bm9ib2R5$bm9ib2R5';

export interface Department {
  id: string;
  name: string;
  director: Visitor;
  bookkeeper: Visitor;
  announcer: Visitor;
  stranger: Visitor;
  pool: pg.Pool;
  /** Asks the database in the name of this department. */
  ask<T = Record<string, any>>(sql: string, parameters?: readonly unknown[]): Promise<T[]>;
}

interface Where {
  baseUrl?: string;
  pool?: pg.Pool;
  name?: string;
  zone?: string;
  /** false where the department outlives the test that makes it */
  checksBooks?: boolean;
}

/** A department of the test's own, with a director, a bookkeeper and an announcer. When the test ends its books are checked. */
export async function aDepartment({ baseUrl = sharedUrl, pool = sharedPool, name, zone = 'America/Denver', checksBooks = true }: Where = {}): Promise<Department> {
  const id = v7();
  const called = name ?? `Tamarack Ridge Athletics ${id.slice(-6)}`;
  await pool.query('insert into department (id, name, zone) values ($1, $2, $3)', [id, called, zone]);
  const ask = <T,>(sql: string, parameters: readonly unknown[] = []) => askAs<T>(pool, id, sql, parameters);
  const visitor = (role: Role) => aMember(pool, id, [role], baseUrl);
  const department: Department = {
    id,
    name: called,
    director: await visitor('director'),
    bookkeeper: await visitor('bookkeeper'),
    announcer: await visitor('announcer'),
    stranger: new Visitor(randomUUID(), null, baseUrl),
    pool,
    ask,
  };
  if (checksBooks) onTestFinished(() => theBooksHold(department));
  return department;
}

/** Somebody with these roles in a department, signed in. */
export async function aMember(pool: pg.Pool, departmentId: string, roles: Role[], baseUrl = sharedUrl): Promise<Visitor> {
  const personId = v7();
  const { token, tokenHash } = newToken();
  await pool.query('insert into person (id, email, name, password_hash) values ($1, $2, $3, $4)', [
    personId,
    `${personId}@tamarack.example`,
    `${roles.join(' and ')} ${personId.slice(-4)}`,
    NO_PASSWORD,
  ]);
  await askAs(pool, departmentId, 'insert into membership (department_id, id, person_id, roles) values ($1, $2, $3, $4)', [
    departmentId,
    v7(),
    personId,
    roles,
  ]);
  await pool.query(`insert into session (token_hash, person_id, department_id, expires_at) values ($1, $2, $3, now() + interval '12 hours')`, [
    tokenHash,
    personId,
    departmentId,
  ]);
  return new Visitor(personId, token, baseUrl);
}

async function askAs<T>(pool: pg.Pool, departmentId: string, sql: string, parameters: readonly unknown[]): Promise<T[]> {
  const client = await pool.connect();
  try {
    await client.query(`begin; set local app.department_id = '${departmentId}'; set local timezone = 'UTC'`);
    const { rows } = await client.query(sql, [...parameters]);
    await client.query('commit');
    return rows as T[];
  } catch (failure) {
    await client.query('rollback');
    throw failure;
  } finally {
    client.release();
  }
}

/** @throws Error naming each invariant that is broken, and by what */
export async function theBooksHold(department: Department): Promise<void> {
  const findings = await checkBooks((sql, parameters) => department.ask(sql, parameters), department.id);
  const broken = findings.filter((finding) => finding.broken.length > 0);
  if (broken.length > 0) throw new Error(`the books of ${department.name} are broken: ${JSON.stringify(broken, null, 2)}`);
}
