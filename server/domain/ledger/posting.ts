import type { AccountKey, Journal } from './account.ts';

/** The keys that both sides of a posting carry. `gameId` is the night's id for what is counted per night. */
export type PostingKeys = Partial<Record<AccountKey, string>>;

/**
 * Moves an amount above zero from one account to another: `to` is debited, `from` is credited.
 * The unit is reads in the journal `reads`, cents in the other two.
 */
export interface Posting extends PostingKeys {
  journal: Journal;
  from: string;
  to: string;
  amount: number;
}
