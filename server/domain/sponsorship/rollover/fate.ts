/** What may become of a contract when its season is rolled over. */
export const CONTRACT_CHOICES = ['carryOn', 'renew', 'leave'] as const;
export type ContractChoice = (typeof CONTRACT_CHOICES)[number];

/** A contract as its season ends. */
export interface EndingContract {
  readonly state: 'draft' | 'signed' | 'ended' | 'closed';
  /** which of the agreed years this is, from 1 */
  readonly yearNumber: number;
  readonly years: number;
  readonly isFollowed: boolean;
  readonly isInKind: boolean;
  readonly isHeld: boolean;
  /** questions of the sponsor that nobody has answered */
  readonly openDisputes: number;
  /** a fixed price that is shared over games, and the next season has none yet */
  readonly waitsForGames: boolean;
  /** teams it names whose season has not been rolled over */
  readonly teamsOfOtherSeasons: number;
}

export type Because = keyof typeof BECAUSE;
export type WaitsFor = keyof typeof WAITS_FOR;

/** Why it is proposed, in a sentence. */
export const BECAUSE = {
  followedAlready: 'Another contract follows this one already.',
  neverSigned: 'This draft was never signed. It stays in its season.',
  endedEarly: 'It was ended before its time, so it is left unless you choose to renew it.',
  yearsLeft: 'More years were agreed, so the next one is carried on as it was agreed.',
  lastYear: 'Its last agreed year is this one, so a draft of a renewal is proposed. Nothing is signed by it.',
} as const;

/** Why the next year is written down and not signed at once, in a sentence. */
export const WAITS_FOR = {
  onHold: 'It is on hold: the next year is a draft until you sign it.',
  inKind: 'It is paid in goods: what they are worth is looked at anew, so the next year is a draft until you sign it.',
  countedByGame: 'Its price is shared over games: the next year is a draft until the schedule is there, then sign it.',
  otherSeasons: 'It names teams of another season: roll that season over too, then sign the draft.',
} as const;

export interface Fate {
  /** the first is proposed */
  readonly choices: readonly ContractChoice[];
  readonly because: Because;
  /** what keeps the next year, if it is carried on, from being signed at once */
  readonly waitsFor: readonly WaitsFor[];
}

/**
 * What becomes of a contract: years that were agreed are carried on, the last one is renewed as a draft, and what was never
 * signed or ended early is left.
 *
 * @source common practice, no source
 */
export function fateOf(contract: EndingContract): Fate {
  if (contract.isFollowed) return { choices: ['leave'], because: 'followedAlready', waitsFor: [] };
  if (contract.state === 'draft') return { choices: ['leave'], because: 'neverSigned', waitsFor: [] };
  if (contract.state === 'ended') return { choices: ['leave', 'renew'], because: 'endedEarly', waitsFor: [] };
  if (contract.yearNumber >= contract.years) return { choices: ['renew', 'leave'], because: 'lastYear', waitsFor: [] };
  return { choices: ['carryOn', 'renew', 'leave'], because: 'yearsLeft', waitsFor: waitsFor(contract) };
}

function waitsFor(contract: EndingContract): WaitsFor[] {
  return [
    ...(contract.isHeld ? ['onHold' as const] : []),
    ...(contract.isInKind ? ['inKind' as const] : []),
    ...(contract.waitsForGames ? ['countedByGame' as const] : []),
    ...(contract.teamsOfOtherSeasons > 0 ? ['otherSeasons' as const] : []),
  ];
}

/** Whether a fixed price is shared over games of lines like these, so that it cannot be signed before there are any. */
export function waitsForGames(pricing: 'fixed' | 'perRead', lines: readonly { counting: string; readsAtLeast: number | null }[]): boolean {
  const isByGame = ({ counting, readsAtLeast }: (typeof lines)[number]) => counting === 'perGame' || counting === 'perNight' || (counting === 'onOccurrence' && !readsAtLeast);
  return pricing === 'fixed' && lines.some(isByGame);
}
