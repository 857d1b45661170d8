import { get } from 'node:http';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkout } from '../../server/commands/build.mjs';
import { scriptBytes } from '../../server/commands/compress.mjs';
import { baseUrl } from '../support/database.ts';

const LARGEST_SCRIPT_BYTES = 110_000;

interface Sent {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  text: string;
}

/** As it travels: fetch would unpack it before anybody could look. */
function sent(path: string, encoding = 'identity'): Promise<Sent> {
  return new Promise((done, fail) => {
    get(baseUrl + path, { headers: { 'accept-encoding': encoding } }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece));
      answer.on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, text: Buffer.concat(pieces).toString() }));
    }).on('error', fail);
  });
}

test('all script of the page at the table is under 110 kB packed, its service worker included', () => {
  const bytes = scriptBytes(join(checkout, '.build/night'));
  console.log(`page of the table: ${(bytes / 1000).toFixed(1)} kB of script, gzip`);
  expect(bytes).toBeGreaterThan(20_000);
  expect(bytes).toBeLessThan(LARGEST_SCRIPT_BYTES);
});

test.each([
  ['/night/', 'text/html', 'no-cache'],
  ['/night/index.html', 'text/html', 'no-cache'],
  ['/night/service-worker.js', 'javascript', 'no-cache'],
  ['/night/manifest.webmanifest', 'manifest+json', 'no-cache'],
])('%s is asked for anew each time and keeps the strict policy', async (path, type, caching) => {
  const { status, headers } = await sent(path);
  expect([status, headers['cache-control']]).toEqual([200, caching]);
  expect(headers['content-type']).toContain(type);
  expect(headers['content-security-policy']).toContain("script-src 'self';");
});

test('scripts and styles come packed, may be kept for good, and the styles stand last', async () => {
  const { text } = await sent('/night/');
  const [script] = /\/night\/assets\/[\w-]+\.js/.exec(text)!;
  const packed = await sent(script, 'gzip, br');
  expect([packed.headers['content-encoding'], packed.headers['cache-control']]).toEqual(['br', 'public, max-age=31536000, immutable']);
  expect((await sent(script, 'gzip')).headers['content-encoding']).toBe('gzip');
  expect((await sent(script)).headers['content-encoding']).toBeUndefined();
  expect(text.indexOf('rel="stylesheet"')).toBeGreaterThan(text.indexOf('first-words'));
  expect(text).not.toMatch(/<script(?![^>]*\bsrc=)/);
});

test('the office keeps its addresses, packed too, and what is not there at the table is not there', async () => {
  const office = await sent('/somewhere/of/its/own', 'gzip');
  expect([office.status, office.headers['content-encoding']]).toEqual([200, office.text.startsWith('<') ? undefined : 'gzip']);
  expect([(await sent('/night')).status, (await sent('/night')).headers['location']]).toEqual([302, '/night/']);
  expect((await sent('/night/nothing.js')).status).toBe(404);
  expect((await sent('/night/index.html.br')).status).toBe(404);
});
