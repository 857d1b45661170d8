import { Entity } from 'typeorm';
import type { Instant } from '../domain/instant.ts';
import { DepartmentColumn, IdColumn, InstantColumn, JsonColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';
import type { PacketContent } from './packet-content.ts';

/** The words of an issue as they were printed; null once a student in it was erased. */
@Entity('packet_content')
export class PacketContentRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() packetIssueId: string;
  @JsonColumn({ nullable: true }) content: PacketContent | null;
  @InstantColumn({ nullable: true }) erasedAt: Instant | null;
  @VersionColumn() version: number;
}
