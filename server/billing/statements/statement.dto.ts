/** What caused a line, with words for its link. */
export interface CauseView {
  kind: string;
  id: string;
  label: string;
}

export type ReadAccount = 'promised' | 'owed' | 'given' | 'madeGood' | 'credited' | 'released' | 'carried' | 'extra';

export interface DeliveryLineView {
  id: string;
  eventId: string;
  occurredOn: string;
  bookedOn: string;
  sentence: string;
  commitmentId: string;
  readKindName: string | null;
  /** what the happening changed, account by account; what did not change is left out */
  reads: Partial<Record<ReadAccount, number>>;
  /** how this commitment stood after it */
  after: Record<ReadAccount, number>;
  cause: CauseView | null;
}

export type AmountName = 'toBill' | 'billed' | 'receivable' | 'contractBalance' | 'unapplied' | 'tax' | 'earned';

export interface AccountLineView {
  id: string;
  occurredOn: string;
  bookedOn: string;
  sentence: string;
  /** cents; what did not change is left out. `contractBalance` below zero is billed and not earned yet */
  amounts: Partial<Record<AmountName, number>>;
  after: Record<AmountName, number>;
  cause: CauseView | null;
}

export interface Statement<Line> {
  contractId: string;
  number: string | null;
  title: string;
  lines: Line[];
}
