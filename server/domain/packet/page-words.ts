import type { Block, BlockKind } from './sections.ts';

const WORDS: Readonly<Record<BlockKind, string>> = {
  cardFront: 'table card, front', cardBack: 'table card, back', run: 'run of show', cue: 'cue', pointer: 'line-up', lineUp: 'line-up', roster: 'roster',
  calls: 'calls of play', score: 'score by period', timeOuts: 'time-outs', fouls: 'foul sheet', voice: 'voice and microphone card', brief: 'one-page brief',
  form: 'blank form', tally: 'tally sheet',
};

function nameOf({ kind, data }: Block): string {
  const { code, team } = data as { code?: unknown; team?: { shortName?: unknown } };
  const whose = kind === 'roster' || kind === 'lineUp' ? team?.shortName : kind === 'cue' ? code : undefined;
  return typeof whose === 'string' && whose !== '' ? `${WORDS[kind]} ${whose}` : WORDS[kind];
}

const MOST_NAMED = 4;

function listed(blocks: readonly Block[]): string {
  const names = [...new Set(blocks.map(nameOf))];
  return names.length <= MOST_NAMED ? names.join(', ') : `${names.slice(0, MOST_NAMED - 1).join(', ')} and ${names.length - MOST_NAMED + 1} more`;
}

/**
 * What is different on a page, for the cover of a change set: "changed: cue H3; new: cue H4". No title and
 * no name stands in it, because it is kept with the history.
 *
 * @param page the blocks on the page now
 * @param was the blocks on the page of that label before; null where nobody knows any more
 * @param isSame whether a block of now says what it said before, on whatever page; null where it was not there
 */
export function whatChanged(page: readonly Block[], was: readonly Block[] | null, isSame: (block: Block) => boolean | null): string {
  if (was === null) return listed(page);
  const now = new Set(page.map((block) => block.key));
  const there = new Set(was.map((block) => block.key));
  const parts: [string, readonly Block[]][] = [
    ['changed', page.filter((block) => isSame(block) === false)],
    ['new', page.filter((block) => isSame(block) === null)],
    ['moved here', page.filter((block) => isSame(block) === true && !there.has(block.key))],
    ['no longer here', was.filter((block) => !now.has(block.key))],
  ];
  const words = parts.filter(([, blocks]) => blocks.length > 0).map(([what, blocks]) => `${what}: ${listed(blocks)}`);
  return words.length === 0 ? 'its heading' : words.join('; ');
}
