import { Liquid } from 'liquidjs';
import type { Template } from 'liquidjs';
import type { Render } from '../domain/packet/script.ts';

/** What a user writes may not read files, reach inside objects, loop for long or fill the memory. */
const liquid = new Liquid({
  strictVariables: true,
  strictFilters: true,
  ownPropertyOnly: true,
  relativeReference: false,
  templates: {},
  parseLimit: 20_000,
  renderLimit: 200,
  memoryLimit: 200_000,
});

const KEPT = 500;
const parsed = new Map<string, Template[]>();

function parse(text: string): Template[] {
  const known = parsed.get(text);
  if (known) return known;
  const made = liquid.parse(text);
  if (parsed.size >= KEPT) parsed.clear();
  parsed.set(text, made);
  return made;
}

/** Fills a script in; throws a sentence when a variable or a filter is unknown, or when it does too much. */
export const fillIn: Render = (text, variables) => {
  try {
    return liquid.renderSync(parse(text), variables) as string;
  } catch (failure) {
    const [reason = 'it cannot be read'] = String((failure as Error).message).split('\n');
    throw new Error(reason.replace(/, (file|line):.*$/, ''), { cause: failure });
  }
};

const GAME = { opponentName: 'Quarry Bend', isHome: true, level: 'varsity', dayText: 'Friday, December 11', clockText: '7:00 PM', placeName: 'Alder Fieldhouse' };

/** Every name a script may use, with an example, so that a misspelt one is found while it is written. */
export const EXAMPLE_VARIABLES: Readonly<Record<string, unknown>> = {
  department: 'Tamarack Ridge', day: 'Friday, December 4, 2026', venue: 'Alder Fieldhouse', floor: 'the Perch', gameCount: 2, level: 'varsity', starts: '7:00 PM',
  homeSchool: 'Tamarack Ridge High School', homeShortName: 'Tamarack Ridge', homeNickname: 'Kestrels',
  visitorSchool: 'Port Ansel High School', visitorShortName: 'Port Ansel', visitorNickname: 'Herons',
  laterGame: 'Herons at Kestrels, varsity', singer: 'Xochitl', presenter: 'Siobhán', honouree: 'Łukasz', announcer: 'Nguyễn', nextGame: GAME, nextHomeGame: GAME,
  sponsor: 'Juniper & Pike Hardware', copy: 'Juniper & Pike Hardware.', presents: 'game ball',
  exitsText: 'Two exits.', evacuationText: 'Leave now.', weatherText: 'Stay inside.', injuryText: 'Wait.', threatText: 'Stay where you are.', defibrillatorPlace: 'the lobby',
};
