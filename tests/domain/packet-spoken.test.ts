import { describe, expect, test } from 'vitest';
import { directionSeconds, secondsOf, segmentsOf } from '../../server/domain/packet/segment.ts';
import { voiceAt } from '../../server/domain/packet/voice.ts';

describe('directions', () => {
  test.each([['pause 3', 3], ['Pause 20', 20], ['wait for applause', 8], ['wait for the starter to turn', 4], ['hand over the microphone to the singer', 5], ['Music down.', 0]])('“%s” takes %i seconds', (text, seconds) => {
    expect(directionSeconds(text)).toBe(seconds);
  });

  test('a script is taken apart into what is said and what is done', () => {
    const segments = segmentsOf('[[level voice]]\nGood evening.\n\nWelcome to\nthe Perch.[[pause 3]]Thank you.[[ ]]', voiceAt(140));
    expect(segments.map((segment) => [segment.kind, segment.text])).toEqual([
      ['direction', 'Level voice'], ['spoken', 'Good evening.'], ['spoken', 'Welcome to\nthe Perch.'], ['direction', 'Pause 3 seconds'], ['spoken', 'Thank you.'],
    ]);
    expect(secondsOf(segments)).toBe(2 + 2 + 3 + 1);
  });

  test('brackets that do not close are read as they stand', () => {
    expect(segmentsOf('Say [[this', voiceAt(140))).toEqual([expect.objectContaining({ kind: 'spoken', text: 'Say [[this' })]);
  });
});
