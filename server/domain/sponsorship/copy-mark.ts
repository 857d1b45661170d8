/** What the copy check looks for: the four things that make a message an advertisement, and the claim that makes a benefit. */
export const MARK_KINDS = ['qualitative', 'price', 'endorsement', 'callToBuy', 'exclusiveProvider'] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

export interface MarkExplained {
  readonly title: string;
  /** of 26 CFR 1.513-4 */
  readonly paragraph: string;
  readonly sentence: string;
}

const LAW = '26 U.S.C. 513(i)(2)(A)';

/** Why each kind of words matters, in our own words, with the paragraph it rests on. */
export const MARKS_EXPLAINED: Readonly<Record<MarkKind, MarkExplained>> = {
  qualitative: {
    title: 'Praise or comparison',
    paragraph: '26 CFR 1.513-4(c)(2)(v)',
    sentence: `Words that say how good something is, or better than what, advertise it. Say what it is and where it is instead. A slogan the sponsor has long used may stand: register it with the sponsor. (${LAW})`,
  },
  price: {
    title: 'Price or savings',
    paragraph: '26 CFR 1.513-4(c)(2)(v)',
    sentence: `A price, a discount or any other sign of savings or value advertises. Leave the figure to the sponsor’s own counter. (${LAW})`,
  },
  endorsement: {
    title: 'Endorsement',
    paragraph: '26 CFR 1.513-4(c)(2)(v)',
    sentence: `Words in which the school, its team or its coaches stand behind what a sponsor sells endorse it. Thank the sponsor for its support instead. (${LAW})`,
  },
  callToBuy: {
    title: 'Call to buy or use',
    paragraph: '26 CFR 1.513-4(c)(2)(v)',
    sentence: `Words that ask the crowd to buy, to come in or to call advertise. An address, a telephone number or a web address by itself is no call. (${LAW})`,
  },
  exclusiveProvider: {
    title: 'The only one sold here',
    paragraph: '26 CFR 1.513-4(c)(2)(vi)(B)',
    sentence: 'Being the only sponsor is no benefit; being the only one whose goods are sold or used here usually is, and its fair value counts against the payment. Ask the business office before this is promised or read.',
  },
};

export type CopyVerdict = 'acknowledgment' | 'advertising' | 'exclusiveProvider';

/** What the whole message is, once it is judged as one. */
export const VERDICTS: Readonly<Record<CopyVerdict, { title: string; paragraph: string; sentence: string }>> = {
  acknowledgment: {
    title: 'Reads as an acknowledgment',
    paragraph: '26 CFR 1.513-4(c)(2)(iv)',
    sentence: 'It names the sponsor: who, where, what it carries. Nothing in it was found to praise, price, endorse or call to buy.',
  },
  advertising: {
    title: 'Reads as an advertisement',
    paragraph: '26 CFR 1.513-4(c)(2)(v)',
    sentence: 'One message is judged as a whole: a single marked word makes all of it advertising, the thanks and the address too.',
  },
  exclusiveProvider: {
    title: 'Claims an exclusive provider: a benefit',
    paragraph: '26 CFR 1.513-4(c)(2)(vi)(B)',
    sentence: 'It says that only this sponsor’s goods are sold or used here. That is something given in return for the payment.',
  },
};

export const NOT_TAX_ADVICE = 'Guidance, not tax advice: words alone do not settle it. The business office and the district’s counsel decide.';
