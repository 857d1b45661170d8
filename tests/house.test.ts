import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, normalize, resolve } from 'node:path';
import { expect, test } from 'vitest';

const house = resolve(import.meta.dirname, '..');

const TOP_LEVEL = [
  'README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json', 'compose.yaml',
  'server', 'admin-ui', 'migrations', 'seeds', 'tests', '.ci',
];

/** What each room of the server may import, itself apart. Arrows only point to rooms named before. */
const ROOMS: Record<string, string[]> = {
  platform: [],
  access: ['platform'],
  ledger: ['access', 'platform'],
  season: ['access', 'platform'],
  sponsorship: ['season', 'ledger', 'access', 'platform'],
  billing: ['sponsorship', 'season', 'ledger', 'access', 'platform'],
  planning: ['billing', 'sponsorship', 'season', 'ledger', 'access', 'platform'],
  packet: ['planning', 'sponsorship', 'season', 'access', 'platform'],
  night: ['packet', 'planning', 'sponsorship', 'season', 'ledger', 'access', 'platform'],
  makegoods: ['night', 'packet', 'planning', 'billing', 'sponsorship', 'season', 'ledger', 'access', 'platform'],
  reports: ['makegoods', 'night', 'packet', 'planning', 'billing', 'sponsorship', 'season', 'ledger', 'access', 'platform'],
};

const DOMAIN_ORDER = ['access', 'ledger', 'season', 'sponsorship', 'billing', 'planning', 'packet', 'night', 'makegoods', 'reports'];

const NAMELESS = /\/(utils?|common|helpers?|shared|core|base|misc|lib)(\/|\.tsx?$)/;

const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: house, encoding: 'utf8' })
  .split('\n')
  .filter((file) => file !== '' && /^(server|admin-ui|seeds|tests)\/.*\.(ts|tsx|mjs)$/.test(file));

const textOf = (file: string) => readFileSync(join(house, file), 'utf8');

function importsOf(file: string): { from: string; isType: boolean }[] {
  return [...textOf(file).matchAll(/(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^'"\n;]*?\s+from\s+)?['"]([^'"]+)['"]/g)].map(
    (match) => ({ isType: Boolean(match[1]), from: match[2]!.startsWith('.') ? normalize(join(dirname(file), match[2]!)) : match[2]! }),
  );
}

const roomOf = (file: string) => /^server\/([a-z-]+)\//.exec(file)?.[1] ?? null;

test('the top level of the house is exactly what the guide says', () => {
  const found = readdirSync(house).filter((name) => !name.startsWith('.') && name !== 'node_modules');
  expect(found.filter((name) => !TOP_LEVEL.includes(name))).toEqual([]);
});

test('every room of the server is on the map', () => {
  const rooms = readdirSync(join(house, 'server'), { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const known = [...Object.keys(ROOMS), 'domain', 'commands'];
  expect(rooms.map((room) => room.name).filter((name) => !known.includes(name))).toEqual([]);
});

test('a room imports only the rooms before it', () => {
  const wrong: string[] = [];
  for (const file of files) {
    const room = roomOf(file);
    const allowed = room ? ROOMS[room] : undefined;
    if (!room || !allowed) continue;
    for (const { from } of importsOf(file)) {
      const target = roomOf(`${from}`);
      if (target && target !== room && target !== 'domain' && !allowed.includes(target)) wrong.push(`${file} → ${from}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('the domain imports nothing but itself, in room order; Temporal only in days and instants', () => {
  const wrong: string[] = [];
  for (const file of files.filter((name) => name.startsWith('server/domain/'))) {
    const own = DOMAIN_ORDER.indexOf(/^server\/domain\/([a-z-]+)\//.exec(file)?.[1] ?? '');
    for (const { from, isType } of importsOf(file)) {
      if (from === 'temporal-polyfill' && /\/(day|instant)\.ts$/.test(file)) continue;
      if (!from.startsWith('server/domain/')) wrong.push(`${file} → ${from}`);
      const target = DOMAIN_ORDER.indexOf(/^server\/domain\/([a-z-]+)\//.exec(from)?.[1] ?? '');
      if (!isType && own !== -1 && target > own) wrong.push(`${file} → ${from}`);
      if (own === -1 && target !== -1) wrong.push(`${file} → ${from}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('the domain is told, it never asks: no clock, chance, environment or database', () => {
  const asks = /\bDate\b|Math\.random|process\.|crypto\.|Temporal\.Now|fetch\(|setTimeout/;
  const strip = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$|'[^'\n]*'|`[^`]*`/gm, '');
  const wrong = files.filter((name) => name.startsWith('server/domain/')).filter((file) => asks.test(strip(textOf(file))));
  expect(wrong).toEqual([]);
});

test('the pages import of the server only its rules and the types of its forms', () => {
  const wrong: string[] = [];
  for (const file of files.filter((name) => name.startsWith('admin-ui/'))) {
    for (const { from, isType } of importsOf(file)) {
      if (!from.startsWith('server/') || from.startsWith('server/domain/')) continue;
      if (!isType || !from.endsWith('.dto.ts')) wrong.push(`${file} → ${from}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('no folder or file is a place for what has no name, and no file only passes on others', () => {
  expect(files.filter((file) => NAMELESS.test(`/${file}`))).toEqual([]);
  expect(files.filter((file) => /\/index\.tsx?$/.test(file))).toEqual([]);
});

test('only the unit of work asks the database, save for what stands before and around it', () => {
  const mayAsk = /^server\/(platform\/(database|health)\/|access\/session\.service|reports\/books|commands\/)|^(seeds|tests)\//;
  const wrong = files.filter((file) => file.startsWith('server/') && !mayAsk.test(file) && /\bDataSource\b|from 'pg'/.test(textOf(file)));
  expect(wrong).toEqual([]);
});

test('a file can be read in one sitting', () => {
  const LONG_TABLES = ['server/domain/refusals.ts', 'tests/house.test.ts', 'tests/safety/routes.ts'];
  const long = files.filter((file) => !LONG_TABLES.includes(file)).filter((file) => textOf(file).split('\n').length > 320);
  expect(long).toEqual([]);
});

test('every refusal that is thrown stands in the table, and every constraint that can refuse has its sentence', async () => {
  const { REFUSALS } = await import('../server/domain/refusals.ts');
  const named = readdirSync(join(house, 'migrations')).flatMap((file) =>
    [...textOf(`migrations/${file}`).matchAll(/constraint "([a-z-]+)"|unique index "([a-z-]+)"/g)].map((match) => match[1] ?? match[2]!),
  );
  expect([...new Set(named)].filter((code) => !(code in REFUSALS)).sort()).toEqual([]);
});

test('each migration says in one sentence why it is there', () => {
  const silent = readdirSync(join(house, 'migrations')).filter((file) => !/^-- [A-Z].*\.\n/.test(textOf(`migrations/${file}`)));
  expect(silent).toEqual([]);
});
