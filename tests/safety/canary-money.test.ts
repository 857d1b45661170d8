import readExcelFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { operationsOf } from '../support/open-document.ts';
import type { OpenDocument } from '../support/open-document.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import type { Visitor } from '../support/visitor.ts';
import { LINK_ROUTES, ROUTES } from './routes.ts';
import { everyObject } from './wall-objects.ts';
import type { Objects } from './wall-objects.ts';

const CANARY = 'Zx9CanaryQv7';
const on = '2026-12-03';

/** A department whose office has written the canary wherever it may write. */
async function theOfficeNextDoor(): Promise<{ department: Department; objects: Objects }> {
  const department = await aDepartment({ name: `${CANARY} Athletics` });
  const objects = await everyObject(department);
  const { director, bookkeeper, announcer } = department;
  const parties = { sellerId: objects['sellers/id'], payerId: objects['payers/id'] };
  for (const [path, changes] of [
    [`/api/sellers/${parties.sellerId}`, { name: `${CANARY} Seller`, remitTo: CANARY, address: CANARY, contactName: CANARY }],
    [`/api/payers/${parties.payerId}`, { name: `${CANARY} Payer`, address: CANARY }],
    [`/api/sponsors/${objects['sponsors/id']}`, { name: `${CANARY} Bakery`, note: CANARY }],
    [`/api/packages/${objects['packages/id']}`, { name: `${CANARY} package`, note: CANARY }],
    [`/api/offers/${objects['offers/id']}`, { title: `${CANARY} offer`, note: CANARY }],
    [`/api/reserved-categories/${objects['reserved-categories/id']}`, { heldBy: `${CANARY} district`, note: CANARY }],
  ] as const) {
    const answer = await director.patch(path, changes, { version: (await director.look(path)).version });
    expect([path, answer.status]).toEqual([path, 200]);
  }
  const charge = await bookkeeper.make('/api/charges', { ...parties, description: `${CANARY} fee`, amountCents: 4_300, issuedOn: on });
  const payment = await bookkeeper.make('/api/payments', { ...parties, receivedOn: on, method: 'check', reference: CANARY, note: CANARY, amountCents: 900, applications: [{ invoiceId: charge.id, amountCents: 300 }] });
  await bookkeeper.make(`/api/payments/${payment.id}/refunds`, { amountCents: 100, refundedOn: on, method: 'check', reference: CANARY });
  await bookkeeper.make(`/api/payments/${payment.id}/applications`, { invoiceId: charge.id, amountCents: 200 });
  await bookkeeper.make('/api/payments', { ...parties, receivedOn: on, method: 'check', amountCents: 50 }).then(({ id }) => bookkeeper.make(`/api/payments/${id}/return`, { kind: 'returned', returnedOn: on, reason: CANARY }));
  await bookkeeper.make(`/api/invoices/${charge.id}/write-off-requests`, { amountCents: 1_000, reason: CANARY });
  await announcer.make('/api/receipts', { ...parties, fromWhom: CANARY, takenOn: on, method: 'cash', amountCents: 800 });
  await director.make(`/api/sponsors/${objects['sponsors/id']}/contacts`, { contactedOn: '2024-12-04', how: 'call', withWhom: CANARY, what: CANARY, nextStep: CANARY, nextStepOn: on });
  await director.make('/api/messages', { kind: 'invoice', aboutId: charge.id, toAddress: `${CANARY}@juniper.example`.toLowerCase() });
  return { department, objects: { ...objects, charge: charge.id, payment: payment.id } };
}

/** What a person reads of an answer, whatever it is written in. */
async function wordsOf(visitor: Visitor, path: string): Promise<{ status: number; words: string }> {
  const { status, bytes, headers } = await visitor.bytes(path);
  const type = headers.get('content-type') ?? '';
  const head = JSON.stringify([...headers]);
  if (status < 300 && /[./]pdf$/.test(path)) return { status, words: head + (await pagesOfPdf(bytes)).join(' ') };
  if (status < 300 && type.includes('spreadsheet')) return { status, words: head + JSON.stringify(await readExcelFile(bytes)) };
  return { status, words: head + bytes.toString('utf8') };
}

test('nothing that another department’s accounts office wrote shows in an answer, a report, a file or a paper', async () => {
  const next = await theOfficeNextDoor();
  const department = await aDepartment();
  const own = await everyObject(department);
  const { director } = department;
  const theirs = [next.department.id, ...Object.values(next.objects).filter((id) => /^[0-9a-f-]{36}$/.test(id))];
  const addressOf = (path: string, objects: Objects) => path.replace(/\{(\w+)\}/g, (_, name: string) => objects[`${path.split('/')[2]}/${name}`] ?? next.objects['payment']!);
  const shown: string[] = [];
  const papers: string[] = [];
  const note = async (address: string, asked: string[] = []) => {
    const { status, words } = await wordsOf(director, address);
    if (status === 200 && /\.pdf|\.csv|format=|as=/.test(address)) papers.push(address);
    const names = theirs.filter((id) => !asked.includes(id) && words.includes(id));
    if (words.toLowerCase().includes(CANARY.toLowerCase()) || names.length > 0 || status >= 500) shown.push(`${address} → ${status} ${names.join(' ')}`);
    return status;
  };
  const operations = operationsOf((await director.look('/api/openapi.json')) as OpenDocument).filter(({ method, path }) => method === 'GET' && ROUTES[`${method} ${path}`] !== 'open' && !(`${method} ${path}` in LINK_ROUTES) && !path.endsWith('/live'));
  for (const { path } of operations) {
    expect([path, await note(addressOf(path, own))]).toEqual([path, 200]);
    if (path.startsWith('/api/reports/')) for (const format of ['csv', 'xlsx']) await note(`${path}?format=${format}`);
    if (path.startsWith('/api/boards/')) for (const as of ['csv', 'xlsx']) await note(`${path}?as=${as}`);
    if (!path.includes('{')) for (const query of [`sellerId=${next.objects['sellers/id']}`, `payerId=${next.objects['payers/id']}`, `q=${CANARY}`]) await note(`${path}?${query}`, theirs.concat());
    else if (!/^\/api\/(months|accounts)\//.test(path)) expect([path, await note(addressOf(path, next.objects), theirs)]).toEqual([path, 404]);
  }
  expect(shown).toEqual([]);
  expect(papers.length).toBeGreaterThan(15);
});
