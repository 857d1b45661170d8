import { describe, expect, test } from 'vitest';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { neighborIn, nextOpenIn } from '../../server/domain/night/desk/reading/place-in-run.ts';
import { readEntry } from '../../server/domain/night/desk/reading/read-entry.ts';
import { cueStandings } from '../../server/domain/night/desk/reading/reads-left.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';

const cue = (cueKey: string, isSponsored = false) => ({ ...aNightBundle().cues[0]!, cueKey, isSponsored });
const run = [cue('A'), cue('B'), cue('C', true), cue('D'), cue('E')];
const OUTSIDE = 'request:1';

function standingsAfter(...cueKeys: string[]) {
  const log = new DeskLog();
  for (const cueKey of cueKeys) log.write(readEntry(run.find((one) => one.cueKey === cueKey)!) as NewDeskEntry);
  return cueStandings(run, log.lines);
}

describe('the place in the order of the night', () => {
  test.each([
    ['the next one', ['A'], 'A', true, 'B'],
    ['what was logged is passed over', ['A', 'B'], 'A', true, 'C'],
    ['no sponsor right after a hold', ['A', 'B'], 'B', false, 'D'],
    ['after a request it goes on behind the last one logged', ['A', 'B'], OUTSIDE, true, 'C'],
    ['a request before anything was logged', [], OUTSIDE, true, 'A'],
    ['behind the last one', ['E'], 'E', true, undefined],
  ] as const)('%s', (_, logged, cueKey, mayReadSponsors, expected) => {
    expect(nextOpenIn(run, standingsAfter(...logged), cueKey, mayReadSponsors)?.cueKey).toBe(expected);
  });

  test.each([
    ['next', ['A'], 'C', 1, 'D'],
    ['before', ['A'], 'C', -1, 'B'],
    ['before the first', [], 'A', -1, 'A'],
    ['behind the last', [], 'E', 1, undefined],
    ['next from a request', ['A', 'B'], OUTSIDE, 1, 'C'],
    ['before, from a request', ['A', 'B'], OUTSIDE, -1, 'B'],
    ['before, from a request, with nothing logged', [], OUTSIDE, -1, 'A'],
  ] as const)('the neighbor: %s', (_, logged, cueKey, by, expected) => {
    expect(neighborIn(run, standingsAfter(...logged), cueKey, by)?.cueKey).toBe(expected);
  });
});
