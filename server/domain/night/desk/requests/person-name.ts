/** Words before a name, and occasions on which somebody is named. */
const TELLING = /\b(?:mr|mrs|ms|miss|mister|dr|doctor|coach|principal|professor|señora?|pastor|officer|birthday|anniversary|engaged|engagement|marry|proposal|in memory of|named)\b/i;

/** Capitalized words that are no names of persons: of days, of the building, of what schools hold. */
const NO_NAMES = new Set(
  ('monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december ' +
    'north south east west main street avenue road high middle junior senior elementary school gym gymnasium fieldhouse cafeteria commons library stadium field lobby hall room entrance ' +
    'band booster boosters club team council association pta pto choir orchestra drama theater robotics honor society student students athletic department ' +
    'pancake breakfast dinner supper bake sale car wash raffle auction fair camp clinic night drive food coat blood toy game tickets the a an and of for at in on to our from with please ' +
    'varsity jv boys girls basketball football volleyball soccer wrestling baseball softball swim track cross country thank you good evening everyone').split(' '),
);

const NAMELIKE = /^\p{Lu}[\p{Ll}’'-]+(?:\p{Lu}\p{Ll}+)?$/u;

/**
 * Whether a text may name a person: a title, an occasion on which people are named, or two words beside each other that are
 * written like a name. A guess on the safe side; a name in small letters is for the eye of whoever approves.
 *
 * @source common practice, no source
 */
export function mayNamePerson(text: string): boolean {
  if (TELLING.test(text)) return true;
  const words = text.split(/\s+/u).map((word) => word.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, ''));
  return words.some((word, place) => isNamelike(word) && isNamelike(words[place + 1] ?? ''));
}

function isNamelike(word: string): boolean {
  return NAMELIKE.test(word) && !NO_NAMES.has(word.toLowerCase());
}
