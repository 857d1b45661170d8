import { Entity } from 'typeorm';
import type { LetterKind } from '../../domain/billing/letters/letter.ts';
import { DepartmentColumn, IdColumn, JsonColumn, RecordedAtColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** A paper that goes with a letter; it is set anew whenever it is needed, out of what it is about. */
export interface Attachment {
  kind: LetterKind;
  aboutId: string;
  name: string;
  from?: string;
  to?: string;
}

/** A letter as it was written; what became of it stands in rows of its own. */
@Entity('message')
export class Message {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() kind: LetterKind;
  @RefColumn() aboutId: string;
  @RefColumn({ nullable: true }) sponsorId: string | null;
  @RefColumn({ nullable: true }) payerId: string | null;
  @TextColumn() toAddress: string;
  @TextColumn() fromName: string;
  @TextColumn({ nullable: true }) replyTo: string | null;
  @TextColumn() subject: string;
  @TextColumn() body: string;
  @JsonColumn() attachments: Attachment[];
  @TextColumn() onceKey: string;
  @TextColumn({ nullable: true }) againBecause: string | null;
  @RefColumn({ nullable: true }) writtenByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
