/** The family's choice how a student is announced. */
export const ANNOUNCE_CHOICES = ['name', 'numberOnly', 'aMember', 'silence'] as const;
export type AnnounceChoice = (typeof ANNOUNCE_CHOICES)[number];

export interface PlayerNamed {
  readonly name: string;
  /** the number of the list, as text */
  readonly number: string;
  readonly sayAs: string | null;
  readonly announce: AnnounceChoice;
}

/**
 * How a player may be printed in a packet, a page, an export or a statement; null for silence. An
 * opted-out student's name never leaves this function.
 *
 * @param wornNumber what the player wears tonight, where it differs from the list
 */
export function nameToPrint(player: PlayerNamed, wornNumber: string = player.number): string | null {
  switch (player.announce) {
    case 'name':
      return player.name;
    case 'numberOnly':
      return wornNumber === '' ? 'a member of the team' : `number ${wornNumber}`;
    case 'aMember':
      return 'a member of the team';
    case 'silence':
      return null;
  }
}

/** What is said aloud: the respelling where there is one, under the same choice of the family. */
export function nameToSay(player: PlayerNamed, wornNumber: string = player.number): string | null {
  const spoken = player.announce === 'name' ? (player.sayAs ?? '').trim() : '';
  return spoken === '' ? nameToPrint(player, wornNumber) : spoken;
}

/** The choice that tells less of two, so that last year's opt-out is not lost by a new list. */
export function stricterChoice(one: AnnounceChoice, other: AnnounceChoice): AnnounceChoice {
  return ANNOUNCE_CHOICES.indexOf(one) >= ANNOUNCE_CHOICES.indexOf(other) ? one : other;
}
