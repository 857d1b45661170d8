import { expect, test } from 'vitest';
import { readConfig } from '../../server/platform/config/config.ts';

const enough = { DATABASE_URL: 'postgres://rafterline_web@localhost/rafterline' };

test('a database address is enough to start', () => {
  expect(readConfig(enough)).toMatchObject({ port: 3000, publicUrl: null, trustProxy: false });
});

test.each([
  ['no database', {}, /DATABASE_URL is not set/],
  ['a setting that nobody knows', { ...enough, RAFTERLINE_COLOUR: 'green' }, /unknown setting RAFTERLINE_COLOUR/],
  ['a port that is none', { ...enough, PORT: 'three thousand' }, /PORT is a whole number from 0 to 65535/],
  ['a port beyond the last', { ...enough, PORT: '65536' }, /PORT is a whole number from 0 to 65535/],
  ['an address with a path', { ...enough, RAFTERLINE_PUBLIC_URL: 'https://reads.tamarack.example/desk' }, /without a path/],
])('%s refuses to start, in words', (_, environment, sentence) => {
  expect(() => readConfig(environment)).toThrow(sentence);
});

test('a public address is taken without its last stroke', () => {
  expect(readConfig({ ...enough, PORT: '65535', RAFTERLINE_PUBLIC_URL: 'https://reads.tamarack.example/' })).toMatchObject({ port: 65_535, publicUrl: 'https://reads.tamarack.example' });
});
