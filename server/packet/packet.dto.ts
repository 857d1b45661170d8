import type { Instant } from '../domain/instant.ts';
import { changeSentence, changeSetOf } from '../domain/packet/change-set.ts';
import type { ChangeSet } from '../domain/packet/change-set.ts';
import type { Packet } from '../domain/packet/packet.ts';
import { CountField } from '../platform/http/fields.ts';
import { Transform } from 'class-transformer';
import type { IssueReason, IssueWithPages } from './issue-shelf.service.ts';

const numberGiven = ({ value }: { value: unknown }): unknown => (value === undefined || value === '' ? undefined : Number(value));

export class PdfQuery {
  /** the number of an issue; without one the packet as it stands */
  @CountField(1, 1_000_000, { optional: true })
  @Transform(numberGiven)
  issue?: number;
}

export class ChangeSetQuery {
  /** the number of the issue that the binder is brought up to, from the one before; without one the latest */
  @CountField(2, 1_000_000, { optional: true })
  @Transform(numberGiven)
  issue?: number;
}

export interface IssueView {
  id: string;
  number: number;
  recordedAt: Instant;
  issuedByName: string | null;
  reason: IssueReason | null;
  /** null for an issue from before packets were frozen */
  pageCount: number | null;
  /** against the issue before; null for the first */
  changes: ChangeSet | null;
  /** what to do with the binder, in words */
  sentence: string | null;
  /** says what the packet says now */
  isCurrent: boolean;
  /** names a student whose family has since chosen otherwise: only who may change students opens it */
  isSealed: boolean;
  erasedAt: Instant | null;
}

/** @param issues all of the night, the latest first @param digest of the packet as it stands */
export function issueView(issue: IssueWithPages, issues: readonly IssueWithPages[], digest: string): IssueView {
  const { id, number, recordedAt, issuedByName, reason, isSealed, erasedAt, pages } = issue;
  const before = issues.find((one) => one.number === number - 1)?.pages;
  const changes = pages && before ? changeSetOf(before.pages, pages.pages) : null;
  return {
    id, number, recordedAt, issuedByName, reason, isSealed, erasedAt, changes,
    pageCount: pages?.pages.length ?? null,
    sentence: changes && changeSentence(changes),
    isCurrent: issue.contentDigest === digest && !isSealed,
  };
}

/** What issuing would do. */
export interface NextIssueView {
  number: number;
  reason: IssueReason | 'none';
  pageCount: number;
  /** null where the whole packet is to be printed */
  changes: ChangeSet | null;
  sentence: string;
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
  /** why the packet has to be issued again; null where it has not */
  packetBecause: 'change' | 'choice' | null;
  readiness: { ready: boolean; missing: string[] };
  placementCount: number;
}
