import type { PlanFault, PlanFaultCode } from '../plan-fault.ts';
import type { PlanNames } from './names.ts';

const reads = (number: number): string => (number === 1 ? '1 read' : `${number === 0 ? 'no' : number} reads`);
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function places(fault: PlanFault, names: PlanNames): string {
  const window = capital(names.window(fault.windowKey));
  if (fault.limit === 0) return `${window} of ${names.game(fault.gameId)} holds no reads of yours.`;
  if (fault.place !== undefined && fault.has! <= fault.limit!) {
    return `${names.sponsor(fault.promiseId)} would stand on place ${fault.place} of ${names.window(fault.windowKey)}, which holds ${reads(fault.limit!)}.`;
  }
  return `${window} of ${names.game(fault.gameId)} would have ${reads(fault.has!)} and holds ${fault.limit}.`;
}

const SENTENCES: Readonly<Record<PlanFaultCode, (fault: PlanFault, names: PlanNames) => string>> = {
  'unknown-promise': () => 'A read belongs to no promise of this season.',
  'unknown-game': (fault, names) => `${names.sponsor(fault.promiseId)} would be read at a game that is not there any more.`,
  'unknown-window': (fault, names) => `${names.game(fault.gameId)} has no ${names.window(fault.windowKey).replace(/^the /, '')}.`,
  'place-taken-twice': (fault, names) => `${names.sponsor(fault.promiseId)} and ${names.sponsor(fault.other)} would have the same place in ${names.window(fault.windowKey)}.`,
  'window-full': places,
  'group-full': (fault, names) =>
    fault.limit === 0
      ? `${capital(names.window(fault.windowKey))} holds no reads of this kind.`
      : `${capital(names.window(fault.windowKey))} would have ${reads(fault.has!)} of this kind and holds ${fault.limit}.`,
  'window-not-of-kind': (fault, names) => `The ${names.readKind(fault.promiseId)} of ${names.sponsor(fault.promiseId)} is not read in ${names.window(fault.windowKey)}.`,
  'game-not-of-slot': (fault, names) => `${names.sponsor(fault.promiseId)} is not promised for ${names.game(fault.gameId)}.`,
  'more-than-slot': (fault, names) => `${names.sponsor(fault.promiseId)} would have more than the ${reads(fault.limit!)} still to be placed there.`,
  'sponsors-per-game': (fault, names) => `${names.game(fault.gameId)} would have ${fault.has} sponsors of the ${names.readKind(fault.promiseId)} and may have ${fault.limit}.`,
  'most-per-game': (fault, names) => `${names.sponsor(fault.promiseId)} would have ${reads(fault.has!)} at ${names.game(fault.gameId)} and may have ${fault.limit}.`,
  'fixed-read-gone': (fault, names) => `${names.sponsor(fault.promiseId)} is printed or pinned in ${names.window(fault.windowKey)} of ${names.game(fault.gameId)} and stays there.`,
  'locked-night-touched': (fault, names) => `The night of ${names.game(fault.gameId)} is locked.`,
  'competitors-in-window': (fault, names) => `${names.sponsor(fault.promiseId)} and ${names.sponsor(fault.other)} would stand next to each other in ${names.window(fault.windowKey)}.`,
  'competitors-next-to-each-other': (fault, names) =>
    `${names.sponsor(fault.promiseId)} in ${names.window(fault.windowKey)} would come right beside ${names.sponsor(fault.other)} in ${names.window(fault.otherWindowKey)}.`,
  'competitors-in-game': (fault, names) => `${names.sponsor(fault.promiseId)} and ${names.sponsor(fault.other)} would both be read at ${names.game(fault.gameId)}.`,
  'seconds-exceeded': (fault, names) => `The reads of ${names.window(fault.windowKey)} would take ${fault.has} seconds; it has ${fault.limit}.`,
  'pinned-game-without-read': (fault, names) => `${names.sponsor(fault.promiseId)} was promised ${names.game(fault.gameId)} aloud and would have no read there.`,
  'least-per-game-missed': (fault, names) => `${names.sponsor(fault.promiseId)} would have ${reads(fault.has!)} at ${names.game(fault.gameId)}; at least ${fault.limit} were wished for.`,
};

/** What a plan breaks, as a sentence for the director. */
export function faultInWords(fault: PlanFault, names: PlanNames): string {
  return SENTENCES[fault.code](fault, names);
}
