import type { Posting } from '../ledger/posting.ts';
import { bookHappening } from './apply-happening.ts';
import type { ContractAmounts } from './contract-amounts.ts';
import { amountsOf } from './contract-amounts.ts';
import { earnsOverDays } from './days-earned.ts';
import type { Happening } from './happening.ts';
import type { LinePosition, MemoPosition, Position } from './position.ts';
import { openCentsOf } from './line-values.ts';
import type { SlotReads } from './slot-reads.ts';
import { readsOfLine } from './slot-reads.ts';

/** One line of a contract before and after a change; `null` where the contract does not have it. */
export interface LineEffect {
  lineId: string;
  name: string;
  kind: 'reads' | 'benefit';
  /** it is counted in days that pass, not in reads or pieces */
  isOverDays: boolean;
  before: SlotReads | null;
  after: SlotReads | null;
  /** cents that nothing has earned yet */
  openCentsBefore: number;
  openCentsAfter: number;
}

/** What happenings would do to a contract on both ledgers; nothing is booked. */
export interface ChangeEffect {
  before: ContractAmounts;
  after: ContractAmounts;
  lines: LineEffect[];
  /** happening by happening, as they would be booked */
  postings: Posting[];
  /** the memos that would be written */
  memos: MemoPosition[];
  position: Position;
}

/**
 * Tries happenings one after the other by the very rules that book them.
 *
 * @throws Refused as the rules of the happenings do
 */
export function effectOfChange(position: Position, happenings: readonly Happening[]): ChangeEffect {
  const postings: Posting[] = [];
  let after = position;
  for (const happening of happenings) {
    const booked = bookHappening(after, happening);
    after = booked.position;
    postings.push(...booked.postings);
  }
  const ids = [...new Set([...position.lines, ...after.lines].map((line) => line.terms.lineId))];
  return {
    before: amountsOf(position),
    after: amountsOf(after),
    lines: ids.map((lineId) => lineEffect(lineIn(position, lineId), lineIn(after, lineId))),
    postings,
    memos: after.memos.slice(position.memos.length),
    position: after,
  };
}

const lineIn = (position: Position, lineId: string) => position.lines.find((line) => line.terms.lineId === lineId);

function lineEffect(before: LinePosition | undefined, after: LinePosition | undefined): LineEffect {
  const line = (after ?? before)!;
  const { terms } = line;
  return {
    lineId: terms.lineId,
    name: terms.name,
    kind: terms.kind,
    isOverDays: earnsOverDays(line),
    before: before ? readsOfLine(before) : null,
    after: after ? readsOfLine(after) : null,
    openCentsBefore: before ? openCentsOf(before) : 0,
    openCentsAfter: after ? openCentsOf(after) : 0,
  };
}
