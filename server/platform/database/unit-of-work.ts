import { Inject, Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { PoolClient } from 'pg';
import type { EntityManager, EntityTarget, FindOptionsOrder, FindOptionsWhere, ObjectLiteral } from 'typeorm';
import { refuse } from '../../domain/refusals.ts';
import { isId, newId } from './ids.ts';
import { snake } from './naming.ts';
import { errands } from './scope.ts';
import type { Errand, Scope } from './scope.ts';

const TRIES = 3;
const WORTH_ANOTHER_TRY = new Set(['40001', '40P01']);

export type Row<T> = T & ObjectLiteral;
type Where<T> = FindOptionsWhere<T> | FindOptionsWhere<T>[];

/** Ends a unit that was only tried. */
class TriedOut extends Error {
  constructor(readonly answer: unknown) {
    super('only tried');
  }
}

/**
 * Every access to the database happens in a unit of work: one department, one person, one
 * transaction. Outside of one it throws, because a bare read would find nothing, silently.
 */
@Injectable()
export class UnitOfWork {
  constructor(@Inject(DataSource) private readonly source: DataSource) {}

  /** Runs `work` in a transaction in the name of `scope`; a serialization failure or a deadlock is tried again. */
  async runAs<T>(scope: Scope, work: () => Promise<T>): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await this.once(scope, work);
      } catch (error) {
        if (attempt >= TRIES || !WORTH_ANOTHER_TRY.has(String((error as { code?: string }).code))) throw error;
      }
    }
  }

  /** Opens a short unit in the name of whoever sent the present request. */
  async run<T>(work: () => Promise<T>): Promise<T> {
    return this.runAs(this.scope, work);
  }

  /** Runs work in a unit that is rolled back whatever comes of it: nothing it wrote stays, nothing begins after it. Answers what it answered. */
  async tryOut<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await this.run(async () => {
        throw new TriedOut(await work());
      });
    } catch (error) {
      if (error instanceof TriedOut) return error.answer as T;
      throw error;
    }
  }

  get scope(): Scope {
    const scope = errands.getStore()?.scope;
    if (!scope) throw new Error('nobody is signed in here: no scope for a unit of work');
    return scope;
  }

  get departmentId(): string {
    return this.scope.departmentId;
  }

  get personId(): string {
    const person = this.scope.personId;
    if (!person) throw new Error('this unit of work has no person');
    return person;
  }

  /** The link of a night's table that lets this request in; null for a session. */
  get tableLinkId(): string | null {
    return this.scope.table?.linkId ?? null;
  }

  /** Begins something once this unit is committed; a unit that is rolled back begins nothing. */
  afterCommit(begin: () => void): void {
    const errand = errands.getStore();
    if (!errand?.afterCommit) throw new Error('there is no unit of work to wait for');
    errand.afterCommit.push(begin);
  }

  async find<T extends ObjectLiteral>(
    entity: EntityTarget<T>,
    where: Where<T> = {},
    options: { order?: FindOptionsOrder<T>; take?: number; skip?: number } = {},
  ): Promise<T[]> {
    return this.manager.find(entity, { where: this.withDepartment(where), ...options });
  }

  async first<T extends ObjectLiteral>(entity: EntityTarget<T>, where: Where<T>): Promise<T | null> {
    const [row] = await this.find(entity, where, { take: 1 });
    return row ?? null;
  }

  /** @throws Refused `not-found`, the same for a row of another department and one that never was */
  async one<T extends ObjectLiteral>(entity: EntityTarget<T>, id: string): Promise<T> {
    const row = isId(id) ? await this.first(entity, { id } as unknown as FindOptionsWhere<T>) : null;
    return row ?? refuse('not-found');
  }

  async count<T extends ObjectLiteral>(entity: EntityTarget<T>, where: Where<T> = {}): Promise<number> {
    return this.manager.count(entity, { where: this.withDepartment(where) });
  }

  /** Adds the department, and an id where the caller made none. Answers the rows as they were written. */
  async insert<T extends ObjectLiteral>(entity: EntityTarget<T>, rows: Partial<T> | Partial<T>[]): Promise<T[]> {
    const list = (Array.isArray(rows) ? rows : [rows]).map((row) => ({
      ...row,
      id: (row as { id?: string }).id ?? newId(),
      departmentId: this.departmentId,
    })) as unknown as T[];
    if (list.length > 0) await this.manager.insert(entity, list as never);
    return list;
  }

  /**
   * Adds many rows in one statement of plain VALUES, the only kind that a distributed server takes for
   * tenant tables; quicker than `insert` where a table has no entity to hydrate. All rows name the same fields.
   *
   * @returns the ids that were added; an id that is there already is left as it is
   */
  async add(table: string, rows: readonly ({ id: string } & Record<string, unknown>)[]): Promise<string[]> {
    // A field that no row fills stays what the table says: half as many values to send.
    const fields = Object.keys(rows[0] ?? {}).filter((field) => rows.some((row) => row[field] !== null && row[field] !== undefined));
    if (fields.length === 0) return [];
    const places = rows.map((_, row) => `($1, ${fields.map((_field, column) => `$${row * fields.length + column + 2}`).join(', ')})`);
    const added = await this.ask<{ id: string }>(
      `insert into ${table} (department_id, ${fields.map(snake).join(', ')}) values ${places.join(', ')} on conflict (department_id, id) do nothing returning id`,
      [this.departmentId, ...rows.flatMap((row) => fields.map((field) => columnValue(row[field])))],
    );
    return added.map((row) => row.id);
  }

  /**
   * Changes one row and raises its version.
   *
   * @param version the version the caller saw, or null where the row is locked by this unit
   * @throws Refused `not-found`, or `stale-version` when somebody else changed the row since
   */
  async update<T extends ObjectLiteral>(
    entity: EntityTarget<T>,
    id: string,
    version: number | null,
    changes: Partial<T>,
  ): Promise<void> {
    const table = this.manager.connection.getMetadata(entity).tableName;
    const result = await this.manager
      .createQueryBuilder()
      .update(entity)
      .set({ ...changes, version: () => 'version + 1' } as never)
      .where(`department_id = :departmentId and id = :id${version === null ? '' : ' and version = :version'}`, {
        departmentId: this.departmentId,
        id,
        version,
      })
      .execute();
    if (result.affected === 1) return;
    const exists = await this.sql(`select 1 from ${table} where department_id = $1 and id = $2`, [id]);
    refuse(exists.length === 0 ? 'not-found' : 'stale-version');
  }

  async remove<T extends ObjectLiteral>(entity: EntityTarget<T>, where: FindOptionsWhere<T>): Promise<number> {
    const result = await this.manager.delete(entity, this.withDepartment(where) as FindOptionsWhere<T>);
    return result.affected ?? 0;
  }

  /** Locks rows until the unit ends, in the order of their ids so that two units cannot wait for each other. */
  async lock<T extends ObjectLiteral>(entity: EntityTarget<T>, ids: readonly string[]): Promise<void> {
    const table = this.manager.connection.getMetadata(entity).tableName;
    await this.sql(`select 1 from ${table} where department_id = $1 and id = any($2::uuid[]) order by id for update`, [
      [...new Set(ids)].sort(),
    ]);
  }

  /** Runs SQL whose `$1` is the department; the caller's parameters begin at `$2`. */
  async sql<T = Record<string, unknown>>(text: string, parameters: readonly unknown[] = []): Promise<T[]> {
    return this.ask<T>(text, [this.departmentId, ...parameters], nameOf(text));
  }

  /** SQL over what is known before a department is: persons, sessions, departments. */
  async sqlEverywhere<T = Record<string, unknown>>(text: string, parameters: readonly unknown[] = []): Promise<T[]> {
    return this.ask<T>(text, parameters, nameOf(text));
  }

  /** A library's own statement over its own tables, such as the queues of jobs: it happens in this unit or not at all. */
  async statement(text: string, parameters: readonly unknown[]): Promise<{ rows: unknown[] }> {
    return { rows: await this.ask(text, parameters) };
  }

  private async ask<T>(text: string, values: readonly unknown[], name?: string): Promise<T[]> {
    const client = errands.getStore()?.client;
    if (!client) throw new Error('the database is only asked inside a unit of work');
    if (this.source.options.logging) this.source.logger.logQuery(text);
    const { rows } = await client.query({ text, values: [...values], ...(name ? { name } : {}) });
    return rows as T[];
  }

  private get manager(): EntityManager {
    const manager = errands.getStore()?.manager;
    if (!manager) throw new Error('the database is only asked inside a unit of work');
    return manager;
  }

  private withDepartment<T extends ObjectLiteral>(where: Where<T>): Where<T> {
    const departmentId = this.departmentId;
    if (Array.isArray(where)) return where.map((part) => ({ ...part, departmentId }));
    return { ...where, departmentId };
  }

  private async once<T>(scope: Scope, work: () => Promise<T>): Promise<T> {
    const runner = this.source.createQueryRunner();
    const client = (await runner.connect()) as PoolClient;
    try {
      await runner.query(opening(scope));
      const errand: Errand = { scope, manager: runner.manager, client, afterCommit: [] };
      const result = await errands.run(errand, work);
      await runner.query('commit');
      for (const begin of errand.afterCommit ?? []) begin();
      return result;
    } catch (error) {
      await runner.query('rollback').catch(() => undefined);
      throw error;
    } finally {
      await runner.release();
    }
  }
}

/** One round trip opens the transaction and says whose it is. The ids are checked, because SET takes no parameters. */
function opening(scope: Scope): string {
  for (const id of [scope.departmentId, scope.personId]) {
    if (id !== null && !/^[0-9a-f-]{36}$/i.test(id)) throw new Error('a scope is made of ids');
  }
  return `begin; set local app.department_id = '${scope.departmentId}'; set local app.person_id = '${scope.personId ?? ''}'`;
}

function columnValue(value: unknown): unknown {
  return typeof value === 'object' && value !== null ? JSON.stringify(value) : (value ?? null);
}

const MOST_NAMES = 1000;
const names = new Map<string, string>();

/**
 * A statement that comes again is parsed and planned once a connection, under a name: with a wall on
 * every table the planning costs more than the asking. Texts that vary without end stay nameless.
 */
function nameOf(text: string): string | undefined {
  const known = names.get(text);
  if (known || names.size >= MOST_NAMES) return known;
  const name = `s${names.size + 1}`;
  names.set(text, name);
  return name;
}
