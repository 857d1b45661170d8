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
