import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { operationsOf } from '../support/open-document.ts';
import type { OpenDocument } from '../support/open-document.ts';
import { aNightInDays, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';
import { OR_LINK_ROUTES } from './routes.ts';

const CANARY = 'Zx9CanaryQv7';

/** A department in which every text that can be typed carries the canary. */
async function theDepartmentNextDoor(): Promise<{ department: Department; season: Season; names: string[] }> {
  const department = await aDepartment({ name: `${CANARY} Athletics` });
  const season = await aSeason(department, 1);
  const { director } = department;
  const rename = async (path: string, changes: Record<string, unknown>) => {
    const seen = await director.look(path);
    const answer = await director.patch(path, changes, { version: seen.version });
    if (answer.status !== 200) throw new Error(`${path}: ${JSON.stringify(answer.body)}`);
  };
  await rename(`/api/schools/${season.schoolId}`, { name: `${CANARY} High School`, nickname: `${CANARY} Larks`, sayAs: CANARY });
  await rename(`/api/venues/${season.venueId}`, { name: `${CANARY} Gym`, exitsText: CANARY, weatherText: CANARY });
  await rename(`/api/sponsors/${season.sponsorId}`, { name: `${CANARY} Hardware`, note: CANARY, contactName: CANARY });
  await rename(`/api/payers/${season.payerId}`, { name: `${CANARY} Payer`, address: CANARY });
  await rename(`/api/sellers/${season.sellerId}`, { name: `${CANARY} Seller`, remitTo: CANARY });
  await rename(`/api/players/${season.playerIds[0]}`, { name: `${CANARY} Wren` });
  await aSignedContract(department, season, { title: `${CANARY} contract` });
  await director.make(`/api/nights/${season.games[0]!.nightId}/requests`, { kind: 'other', fields: { text: CANARY } });
  await director.make(`/api/nights/${season.games[0]!.nightId}/table-links`, { label: `${CANARY} substitute`, maySignOff: true });
  return { department, season, names: [department.director.personId, department.id] };
}

async function textOfPdf(bytes: Buffer): Promise<string> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = await Promise.all(Array.from({ length: document.numPages }, async (_, page) => (await document.getPage(page + 1)).getTextContent()));
  return pages.flatMap((page) => page.items.map((item) => ('str' in item ? item.str : ''))).join(' ');
}

test('nothing of one department shows in an answer, a paper, an error or the log of another', async () => {
  const next = await theDepartmentNextDoor();
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season);
  const invoice = await department.director.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  const operations = operationsOf((await department.director.look('/api/openapi.json')) as OpenDocument);
  const leaks: string[] = [];
  const note = (where: string, text: string) => {
    if (text.includes(CANARY) || next.names.some((name) => text.includes(name))) leaks.push(where);
  };
  const own: Record<string, string> = { nights: season.games[0]!.nightId, games: season.games[0]!.gameId, contracts: contract.id, invoices: invoice.id, teams: season.teamId };
  const theirs: Record<string, string> = { nights: next.season.games[0]!.nightId, games: next.season.games[0]!.gameId, teams: next.season.teamId, schools: next.season.schoolId };
  for (const { method, path } of operations) {
    const noun = path.split('/')[2]!;
    if (/sign-out|me\/password/.test(path)) continue;
    for (const id of [own[noun], theirs[noun]]) {
      const address = path.replace(/\{\w+\}/g, id ?? next.season.sponsorId);
      const answer = await department.director.send(method, address, method === 'GET' ? undefined : { name: 'x' }, { version: 1, key: crypto.randomUUID() });
      note(`${method} ${address}`, JSON.stringify(answer.body) + JSON.stringify([...answer.headers]));
    }
  }
  const tonight = await aNightInDays(department, 0);
  const atTable = await Visitor.atTable(await department.director.make(`/api/nights/${tonight.nightId}/table-links`, { label: 'Odell, substitute', maySignOff: true }));
  note('GET /api/table', JSON.stringify((await atTable.get(`/api/table?nightId=${theirs['nights']}`)).body));
  for (const route of Object.keys(OR_LINK_ROUTES).filter((one) => !one.endsWith('/live'))) {
    const [method, path] = route.split(' ') as [string, string];
    for (const id of [tonight.nightId, theirs['nights']!]) {
      const answer = await atTable.send(method, path.replace('{id}', id), method === 'GET' ? undefined : {}, { key: crypto.randomUUID() });
      note(`by a table’s link: ${route}`, JSON.stringify(answer.body) + JSON.stringify([...answer.headers]));
    }
  }
  for (const paper of [`/api/nights/${season.games[0]!.nightId}/packet.pdf`, `/api/invoices/${invoice.id}/invoice.pdf`]) {
    const { status, bytes } = await department.director.bytes(paper);
    expect([paper, status]).toEqual([paper, 200]);
    note(paper, await textOfPdf(bytes));
  }
  const log = readFileSync(join(application.folder, 'server.log'), 'utf8');
  expect(log.length).toBeGreaterThan(1000);
  note('server.log', log);
  for (const secret of [department.director.token!, 'Juniper', 'Łukasz', '@tamarack.example']) expect([secret, log.includes(secret)]).toEqual([secret, false]);
  expect(leaks).toEqual([]);
});
