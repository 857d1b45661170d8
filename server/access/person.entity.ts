import { Entity, PrimaryColumn } from 'typeorm';
import { CountColumn, TextColumn } from '../platform/database/columns.ts';

/** Known before a department is: one person may work for several. */
@Entity('person')
export class Person {
  @PrimaryColumn('uuid') id: string;
  @TextColumn() email: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @TextColumn() passwordHash: string;
  @CountColumn() version: number;
}
