import { describe, expect, test } from 'vitest';
import { LIBRARY_TO_START_WITH } from '../../server/domain/packet/default-scripts.ts';
import { EXAMPLE_VARIABLES } from '../../server/domain/packet/script-variables.ts';
import { fillIn } from '../../server/packet/liquid.ts';
import { checkScript } from '../../server/packet/script-check.ts';

const lines = (text: string): string[] => checkScript(text).problems.map(({ line, sentence }) => (line === null ? sentence : `line ${line}: ${sentence}`));

describe('a script with a mistake is refused with the line and what was meant', () => {
  test.each([
    ['one\n\nand {{ homeNicknam }}', 'line 3: `homeNicknam` is not known; did you mean `homeNickname`?'],
    ['{{ xyzzy }}', 'line 1: `xyzzy` is not known'],
    ['{% if venu %}never drawn{% endif %}', 'line 1: `venu` is not known; did you mean `venue`?'],
    ['{% if singer %}a{% else %}\n{{ venu }}{% endif %}', 'line 2: `venu` is not known; did you mean `venue`?'],
    ['{{ nextGame.dayTex }}', 'line 1: `nextGame.dayTex` is not known; did you mean `nextGame.dayText`?'],
    ['{{ venue.name }}', 'line 1: `venue` has no parts; write {{ venue }}'],
    ['a\n{{ venue | upcas }}', 'line 2: the filter `upcas` is not known here; did you mean `upcase`?'],
    ['a\n{% iff singer %}', 'line 2: `{% iff %}` is not known here; did you mean `{% if %}`?'],
    ['{% include "x" %}', 'line 1: `{% include %}` is not known here; a script may use if, unless, case, for, assign and comment'],
    ['{% render "x" %}', 'line 1: `{% render %}` is not known here'],
    ['{% layout "x" %}', 'line 1: `{% layout %}` is not known here'],
    ['a\nb\n{% if singer %}c', 'line 3: `{% if singer %}` is never closed'],
    ['a\n{{ venue ', 'line 2: `{{ venue ` is opened and never closed'],
    ['a {% endif %}', 'line 1: `{% endif %}` closes what was never opened'],
    ['{{ "now" | date: "%Y" }}', 'line 1: the filter `date` is not known here'],
    ['{{ venue.constructor }}', 'line 1: `venue` has no parts'],
    ['{{ __proto__ }}', 'line 1: `__proto__` is not known'],
    ['hello\n[[pause 3', 'line 2: a direction is opened with [[ and never closed with ]]'],
  ])('%j', (text, sentence) => expect(lines(text).join(' / ')).toContain(sentence));

  test('all unknown names are told at once, each with its line', () => {
    expect(lines('{{ a1 }}\n{{ a2 }}\n[[pause]]')).toEqual(['line 1: `a1` is not known', 'line 2: `a2` is not known', expect.stringContaining('line 3: “pause” does not say')]);
  });

  test('a name the script assigns itself is known', () => expect(lines('{% assign whose = homeNickname %}{{ whose }}{% for i in (1..3) %}{{ i }}{% endfor %}')).toEqual([]));
});

describe('a script that does too much', () => {
  const bombs: Record<string, string> = {
    'a huge range': '{% for i in (1..100000000) %}x{% endfor %}',
    'loops in loops': '{% for a in (1..100) %}{% for b in (1..100) %}{% for c in (1..100) %}{% for d in (1..100) %}{% endfor %}{% endfor %}{% endfor %}{% endfor %}',
    'doubling': `{% assign a = "xxxxxxxxxx" %}${'{% assign a = a | append: a %}'.repeat(60)}`,
    'a long book': '{% for a in (1..9000) %}{{ exitsText }}{% endfor %}',
    'tags inside tags': `${'{% if venue %}'.repeat(150)}x${'{% endif %}'.repeat(150)}`,
    'tags never closed': '{% if venue %}'.repeat(300),
    '100 kB of words': 'All rise. '.repeat(10_240),
    'a name of 4,900 letters': `{{ ${'x'.repeat(4900)} }}`,
  };

  test.each(Object.entries(bombs))('%s is refused in a sentence', (_, text) => {
    expect(lines(text).join()).toMatch(/does too much|comes out longer|one inside another|a script may have|is not known/);
  });

  test('eleven tags inside one another are one too many, ten are not', () => {
    const nested = (deep: number): string => `${'{% if venue %}'.repeat(deep)}x${'{% endif %}'.repeat(deep)}`;
    expect(lines(nested(10))).toEqual([]);
    expect(lines(`one\n${nested(11)}`)).toEqual(['line 2: more than 10 tags stand one inside another']);
  });

  test('5,000 letters are a script, 5,001 are not', () => {
    expect(lines('x'.repeat(5000))).toEqual([]);
    expect(lines('x'.repeat(5001))).toEqual(['it has 5,001 letters; a script may have 5,000']);
  });

  test('a script that fits is filled in at once after a bomb', () => {
    for (const text of Object.values(bombs)) checkScript(text);
    expect(fillIn('{{ homeNickname }}', EXAMPLE_VARIABLES)).toBe('Kestrels');
  });
});

describe('what may be empty', () => {
  const notes = (text: string, moment: Parameters<typeof checkScript>[1] = null): unknown[] => checkScript(text, moment).notes.map(({ line, sentence }) => [line, /`(\w+)`/.exec(sentence)?.[1]]);
  test.each([
    ['{{ singer }}', [[1, 'singer']]],
    ['{% if singer %}{{ singer }}{% endif %}', []],
    ['{% if presenter %}\n{{ singer }}{% endif %}', [[2, 'singer']]],
    ['{{ singer | default: "our guest" }}', []],
    ['{{ venue }}', []],
    ['a\n{{ nextGame.dayText }}', [[2, 'nextGame']]],
    ['{% if nextGame %}{{ nextGame.dayText }}{% endif %}', []],
  ])('%j', (text, expected) => expect(notes(text)).toEqual(expected));

  test('a sponsor stands in every presentation and in nothing else', () => {
    expect(notes('{{ sponsor }}', 'sponsorPresentation')).toEqual([]);
    expect(notes('{{ sponsor }}', 'welcome')).toEqual([[1, 'sponsor']]);
  });

  test.each(LIBRARY_TO_START_WITH.map((script) => [script.key, script] as const))('%s of the library asks first', (_, script) => {
    expect(checkScript(script.text, script.moment)).toEqual({ problems: [], notes: [] });
  });
});
