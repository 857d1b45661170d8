import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RecordedAtColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

export type MessageEventKind = 'handedOver' | 'tryFailed' | 'refused' | 'bounced' | 'givenUp';

@Entity('message_event')
export class MessageEvent {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() messageId: string;
  @TextColumn() kind: MessageEventKind;
  @TextColumn({ nullable: true }) detail: string | null;
  @RecordedAtColumn() recordedAt: string;
}
