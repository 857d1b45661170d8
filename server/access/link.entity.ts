import { Entity } from 'typeorm';
import type { LinkKind } from '../domain/access/link-rights.ts';
import { DepartmentColumn, FlagColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** A way in without a sign-in; of its token only the hash is kept. */
@Entity('link')
export class Link {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() kind: LinkKind;
  @RefColumn() subjectId: string;
  @TextColumn({ nullable: true }) label: string | null;
  @TextColumn() tokenHash: string;
  @TextColumn({ nullable: true }) pinHash: string | null;
  @InstantColumn() notBeforeAt: string;
  @InstantColumn() expiresAt: string;
  @InstantColumn({ nullable: true }) revokedAt: string | null;
  @RefColumn({ nullable: true }) madeByPersonId: string | null;
  @InstantColumn({ nullable: true }) madeAt: string | null;
  @RefColumn({ nullable: true }) personId: string | null;
  @FlagColumn() maySignOff: boolean;
  @VersionColumn() version: number;
}
