import type { ReactNode } from 'react';
import { only } from '../../api/changes.ts';
import type { Contract } from '../types.ts';
import { AmendFields } from './amend-fields.tsx';
import { CarryFields } from './carry-fields.tsx';
import { linesOf, priceOf } from './lines-of.ts';
import { AssignFields, EndFields, HoldFields, LowerPriceFields, SwapFields } from './simple-fields.tsx';

type Values = Record<string, unknown>;

/** One way to change a contract: its page, what its form sends, and when it is offered. */
export interface ChangeKind {
  /** the word in the address, of the page and of the command */
  key: string;
  label: string;
  title: (contract: Contract) => string;
  explains: string;
  success: string;
  isOffered: (contract: Contract) => boolean;
  fields: (contract: Contract) => ReactNode;
  defaults?: (contract: Contract) => Values;
  /** null where the form does not say enough yet */
  body: (values: Values, contract: Contract) => Values | null;
}

const goesOn = ({ term }: Contract) => term.state === 'signed';
const needs = (values: Values | undefined, ...keys: string[]) => keys.every((key) => values?.[key] !== undefined && values[key] !== null && values[key] !== '');
const pick = (values: Values, ...keys: string[]) => only(values, 'on', 'reason', ...keys);

function amendBody(values: Values, contract: Contract): Values | null {
  const rows = (values['changes'] ?? []) as (Values | undefined)[];
  const changes = linesOf(contract).flatMap((line, place) => {
    const row = rows[place] ?? {};
    const reads = typeof row['reads'] === 'number' ? row['reads'] : 0;
    const perRead = contract.term.pricing === 'perRead' && line.counting !== null;
    const priceCents = perRead ? 0 : priceOf(row['priceHow'], row['priceCents'], reads * line.rateCents);
    return reads === 0 && priceCents === 0 ? [] : [{ lineId: line.id, reads, priceCents, ...only(row, 'gameId') }];
  });
  const newCommitments = ((values['newCommitments'] ?? []) as Values[]).filter((one) => needs(one, 'readKindId', 'counting', 'rateCents', 'priceCents'));
  const newBenefits = ((values['newBenefits'] ?? []) as Values[]).filter((one) => needs(one, 'name', 'rateCents', 'priceCents'));
  if (changes.length + newCommitments.length + newBenefits.length === 0) return null;
  const clean = (list: Values[]) => list.map((one) => only(one, ...Object.keys(one)));
  return { ...pick(values), changes, newCommitments: clean(newCommitments), newBenefits: clean(newBenefits) };
}

export const CHANGE_KINDS: readonly ChangeKind[] = [
  {
    key: 'amend', label: 'Amend', title: (contract) => `Amend ${contract.title}`, success: 'The contract is amended.', isOffered: goesOn,
    explains: 'More or fewer reads and benefits, or new lines. It holds from now on: what was given, earned or billed keeps its amount.',
    fields: (contract) => <AmendFields contract={contract} />, body: amendBody,
    defaults: ({ term }) => ({ term: { seasonId: term.seasonId, pricing: term.pricing } }),
  },
  {
    key: 'swap', label: 'Swap reads', title: (contract) => `Swap reads of ${contract.title}`, success: 'The reads are swapped.', isOffered: (contract) => goesOn(contract) && linesOf(contract).length > 1,
    explains: 'Reads still owed on one line for reads of another. Their value moves along.',
    fields: (contract) => <SwapFields contract={contract} />,
    body: (values) => (needs(values, 'fromLineId', 'fromReads', 'toLineId', 'toReads') ? { ...pick(values, 'fromLineId', 'fromReads', 'toLineId', 'toReads'), priceCents: values['priceHow'] === 'same' ? 0 : priceOf(values['priceHow'], values['priceCents'], 0) } : null),
  },
  {
    key: 'lower-price', label: 'Lower the price', title: (contract) => `Lower the price of ${contract.title}`, success: 'The price is lowered.', isOffered: goesOn,
    explains: 'A lower price for what is still to come. The part that is billed is credited by a memo.',
    fields: () => <LowerPriceFields />, body: (values) => (needs(values, 'byCents') ? pick(values, 'byCents') : null),
  },
  {
    key: 'carry', label: 'Carry reads over', title: (contract) => `Carry reads of ${contract.title} over`, success: 'The reads are carried over.', isOffered: goesOn,
    explains: 'Reads still owed go into the next contract with this sponsor and this seller of record, with their value and what was billed for them.',
    fields: (contract) => <CarryFields contract={contract} />,
    body: (values) => (needs(values, 'count', 'lineId', 'toContractId', 'toLineId') ? pick(values, 'count', 'lineId', 'toContractId', 'toLineId') : null),
  },
  {
    key: 'assign', label: 'Hand on to a new owner', title: (contract) => `Hand ${contract.title} on`, success: 'The contract goes on with its new owner.', isOffered: ({ term }) => term.state === 'signed' || term.state === 'ended',
    explains: 'The business was sold: the contract goes on with its new owner. The seller of record stays.',
    fields: () => <AssignFields />, body: (values) => (needs(values, 'toSponsorId', 'toPayerId', 'reason') ? pick(values, 'toSponsorId', 'toPayerId') : null),
  },
  {
    key: 'hold', label: 'Put on hold', title: (contract) => `Put ${contract.title} on hold`, success: 'The contract is on hold.', isOffered: (contract) => goesOn(contract) && !contract.hold,
    explains: 'What is owed stays owed. Until the hold is lifted, no read of this contract is planned or printed.',
    fields: () => <HoldFields />, body: (values) => (needs(values, 'reason') ? pick(values) : null),
  },
  {
    key: 'lift-hold', label: 'Lift the hold', title: (contract) => `Lift the hold on ${contract.title}`, success: 'The hold is lifted.', isOffered: ({ hold }) => Boolean(hold),
    explains: 'Reads of this contract are planned and printed again.',
    fields: () => <HoldFields />, body: (values) => (needs(values, 'reason') ? pick(values) : null),
  },
  {
    key: 'end', label: 'End early', title: (contract) => `End ${contract.title} early`, success: 'The contract has ended.', isOffered: goesOn,
    explains: 'What is still owed is no longer promised, and its price no longer agreed. What was given stays earned and is billed.',
    fields: (contract) => <EndFields contract={contract} />, body: (values) => pick(values, 'feeCents', 'keepsMinimum'),
  },
  {
    key: 'close', label: 'Close', title: (contract) => `Close ${contract.title}`, success: 'The contract is closed.', isOffered: ({ term }) => term.state === 'signed' || term.state === 'ended',
    explains: 'Everything is settled: nothing is owed, to be billed, unpaid or unused. A closed contract takes no more changes until it is opened again.',
    fields: () => null, body: (values) => only(values, 'on'),
  },
  {
    key: 'reopen', label: 'Open again', title: (contract) => `Open ${contract.title} again`, success: 'The contract is open again.', isOffered: ({ term }) => term.state === 'closed',
    explains: 'For what comes after the close: a late read, a returned check.',
    fields: () => null, body: (values) => only(values, 'on'),
  },
];
