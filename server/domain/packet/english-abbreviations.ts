/** Abbreviations with one reading, written with a period or without where `true`. */
const ONE_READING: readonly (readonly [written: string, said: string])[] = [
  ['Mr', 'mister'], ['Mrs', 'missus'], ['Ms', 'miz'], ['Jr', 'junior'], ['Sr', 'senior'], ['Prof', 'professor'], ['Rev', 'reverend'],
  ['Sgt', 'sergeant'], ['Lt', 'lieutenant'], ['Capt', 'captain'], ['Col', 'colonel'], ['Gen', 'general'], ['Hon', 'honorable'], ['Asst', 'assistant'],
  ['Ave', 'avenue'], ['Blvd', 'boulevard'], ['Rd', 'road'], ['Hwy', 'highway'], ['Ln', 'lane'], ['Pkwy', 'parkway'], ['Ste', 'suite'], ['Apt', 'apartment'],
  ['Bldg', 'building'], ['Mt', 'mount'], ['Ft', 'fort'], ['vs', 'versus'], ['Dept', 'department'], ['Bros', 'brothers'], ['Inc', 'incorporated'],
  ['Corp', 'corporation'], ['Co', 'company'], ['Ltd', 'limited'], ['Assn', 'association'], ['Dist', 'district'], ['Univ', 'university'], ['ext', 'extension'],
  ['approx', 'approximately'], ['etc', 'et cetera'], ['lbs', 'pounds'], ['lb', 'pound'], ['oz', 'ounce'], ['min', 'minutes'], ['sec', 'seconds'], ['hrs', 'hours'], ['hr', 'hour'],
  ['Mon', 'monday'], ['Tues', 'tuesday'], ['Tue', 'tuesday'], ['Wed', 'wednesday'], ['Thurs', 'thursday'], ['Thu', 'thursday'], ['Fri', 'friday'], ['Sat', 'saturday'],
  ['Jan', 'january'], ['Feb', 'february'], ['Mar', 'march'], ['Apr', 'april'], ['Aug', 'august'], ['Sept', 'september'], ['Sep', 'september'], ['Oct', 'october'], ['Nov', 'november'], ['Dec', 'december'],
  ['N', 'north'], ['S', 'south'], ['E', 'east'], ['W', 'west'],
];

/** Read without a period too, since a word of that spelling is never meant. */
const WITHOUT_PERIOD = new Set(['Mr', 'Mrs', 'Jr', 'Blvd', 'Hwy', 'Pkwy', 'Bldg', 'vs', 'Dept', 'Bros', 'Assn', 'lbs', 'hrs']);

/** Only after a house number: "1200 N. Alder", since "N. Okonkwo" is an initial. */
const AFTER_A_NUMBER = new Set(['N', 'S', 'E', 'W']);

const READINGS = new Map(ONE_READING);

/**
 * An abbreviation in words, or null where it is a word or an initial after all.
 *
 * @param hasPeriod whether a period follows
 * @param before the text before it
 * @param after the text after its period
 */
export function abbreviationWords(written: string, hasPeriod: boolean, before: string, after: string): string | null {
  if (written === 'St' && hasPeriod) return /[\p{L}\d]\s+$/u.test(before) && !startsWithAName(after) ? 'street' : afterAHouse(before) ? 'street' : 'saint';
  if (written === 'Dr' && hasPeriod) return afterAHouse(before) && !/(?:^|[.!?,]\s+)$/.test(before) ? 'drive' : 'doctor';
  const said = READINGS.get(written);
  if (said === undefined || !(hasPeriod || WITHOUT_PERIOD.has(written))) return null;
  if (AFTER_A_NUMBER.has(written) && !/\d\s+$/.test(before)) return null;
  return said;
}

const startsWithAName = (after: string): boolean => /^\s+\p{Lu}/u.test(after);

/** "1200 Alder " or "1200 N. Alder Creek ": a number and then one to three names. */
const afterAHouse = (before: string): boolean => /\d+(?:st|nd|rd|th)?(?:\s+[\p{L}.]{1,30}){1,3}\s+$/u.test(before);
