import { Column, PrimaryColumn } from 'typeorm';
import type { ColumnOptions } from 'typeorm';

/** Columns spelled out by what they hold. Types say how a value travels; the schema itself is in migrations/. */

export const DepartmentColumn = () => PrimaryColumn('uuid');
export const IdColumn = () => PrimaryColumn('uuid');
export const RefColumn = (options: ColumnOptions = {}) => Column('uuid', options);
export const TextColumn = (options: ColumnOptions = {}) => Column('text', options);
export const CountColumn = (options: ColumnOptions = {}) => Column('integer', options);
/** Whole cents; the database holds a bigint, the driver hands a checked number. */
export const CentsColumn = (options: ColumnOptions = {}) => Column('integer', options);
export const FlagColumn = (options: ColumnOptions = {}) => Column('boolean', options);
export const DayColumn = (options: ColumnOptions = {}) => Column('date', options);
/** A moment stays the text it is: ISO 8601 in UTC. */
export const InstantColumn = (options: ColumnOptions = {}) => Column('text', options);
export const ListColumn = (of: 'text' | 'uuid' | 'date', options: ColumnOptions = {}): PropertyDecorator =>
  Column({ ...options, type: of, array: true } satisfies ColumnOptions);
export const JsonColumn = (options: ColumnOptions = {}) => Column('jsonb', options);
export const VersionColumn = () => Column('integer', { default: 1 });
/** Set by the database when the row is written. */
export const RecordedAtColumn = () => Column({ type: 'text', insert: false, update: false });
