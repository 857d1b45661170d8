import { letterOf, oneLine } from './letter.ts';
import type { Letter, Signature, Writing } from './letter.ts';

/** What a sponsor is thanked for, and what was given in return. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface Thanks {
  readonly toName: string;
  readonly sponsorName: string;
  readonly departmentName: string;
  readonly seasonName: string;
  readonly contractTitle: string;
  readonly asOf: string;
  /** reads given and made good, by kind */
  readonly reads: readonly { readonly kind: string; readonly count: number }[];
  /** other benefits delivered */
  readonly benefits: readonly { readonly name: string; readonly count: number }[];
  readonly paidCents: number;
  /** what was given in goods; its value is not this letter's to say */
  readonly goods: readonly { readonly what: string; readonly receivedOn: string }[];
}

/**
 * Names what was given in return, one line each, and puts no value on it or on goods: what part of a payment is a
 * benefit in return, and what may be deducted, is for counsel and for the sponsor’s tax adviser.
 *
 * @source 26 CFR 1.513-4(c): benefits in return matter to a sponsorship payment, so the letter lists them; the
 * wording is our own, no source
 */
export function thankYouLetter(thanks: Thanks, seller: Signature, write: Writing): Letter {
  const given = [...thanks.reads.map((one) => lineOf(one.kind, one.count)), ...thanks.benefits.map((one) => lineOf(one.name, one.count))];
  const goods = thanks.goods.map(({ what, receivedOn }) => `- ${oneLine(what)}, received ${write.day(receivedOn)}`);
  return letterOf(`Thank you from ${seller.name}`, [
    `Dear ${oneLine(thanks.toName)},`,
    `Thank you, ${oneLine(thanks.sponsorName)}, for standing behind ${oneLine(thanks.departmentName)} in ${oneLine(thanks.seasonName)} (${oneLine(thanks.contractTitle)}).`,
    thanks.paidCents > 0 ? `By ${write.day(thanks.asOf)} you had paid ${write.amount(thanks.paidCents)}.` : null,
    goods.length > 0 ? ['You gave in goods:', ...goods].join('\n') : null,
    given.length > 0 ? [`In return you were given by ${thanks.paidCents > 0 ? 'then' : write.day(thanks.asOf)}:`, ...given].join('\n') : null,
    'This letter is not tax advice; the amount of any deductible part is for your tax adviser.',
  ], seller);
}

const lineOf = (name: string, count: number): string => `- ${oneLine(name)}: ${count}`;
