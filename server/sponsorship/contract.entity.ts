import { Entity } from 'typeorm';
import type { CancelledGamePolicy, PriceVariesWith } from '../domain/sponsorship/contract-terms.ts';
import type { FollowsAs } from '../domain/sponsorship/rollover/lines-followed.ts';
import { CountColumn, DepartmentColumn, FlagColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('contract')
export class Contract {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn({ nullable: true }) number: string | null;
  @RefColumn() sponsorId: string;
  @RefColumn() sellerId: string;
  @RefColumn() payerId: string;
  @TextColumn() title: string;
  @TextColumn({ nullable: true }) purchaseOrderNumber: string | null;
  @TextColumn() cancelledGamePolicy: CancelledGamePolicy;
  @FlagColumn() isInKind: boolean;
  @TextColumn({ nullable: true }) categoryException: string | null;
  @TextColumn({ nullable: true }) categoryExceptionApprovedBy: string | null;
  @CountColumn() years: number;
  @CountColumn() increaseBasisPoints: number;
  @TextColumn() priceVariesWith: PriceVariesWith;
  /** the contract of the season before that this one carries on or renews */
  @RefColumn({ nullable: true }) followsContractId: string | null;
  @TextColumn({ nullable: true }) followsAs: FollowsAs | null;
  /** which of the agreed years this is */
  @CountColumn() yearNumber: number;
  @TextColumn({ nullable: true }) outsideId: string | null;
  @TextColumn({ nullable: true }) note: string | null;
  @VersionColumn() version: number;
}
