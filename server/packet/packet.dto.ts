import type { Packet } from '../domain/packet/packet.ts';
import { CountField } from '../platform/http/fields.ts';
import { Transform } from 'class-transformer';

export class PdfQuery {
  /** the number of an issue; without one the packet as it stands */
  @CountField(1, 1_000_000, { optional: true })
  @Transform(({ value }) => (value === undefined || value === '' ? undefined : Number(value)))
  issue?: number;
}

export interface IssueView {
  id: string;
  number: number;
  recordedAt: string;
}

export interface PacketView extends Packet {
  isReady: boolean;
  /** digest of everything that is printed */
  contentDigest: string;
  /** the latest issue; null before the first */
  issue: IssueView | null;
  /** something changed since the latest issue */
  isOutOfDate: boolean;
}

/** How the paper of a night stands, for lists of nights. */
export interface PaperState {
  packetIssued: number | null;
  packetOutOfDate: boolean;
  readiness: { ready: boolean; missing: string[] };
  placementCount: number;
}
