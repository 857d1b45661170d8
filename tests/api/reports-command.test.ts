import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { checkout } from '../../server/commands/build.mjs';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

// Each command opens the rooms of the server anew.
vi.setConfig({ testTimeout: 180_000 });

let department: Department;
beforeAll(async () => {
  department = await aDepartment({ checksBooks: false });
  const season = await aSeason(department, 1);
  await aSignedContract(department, season);
  await aSignedContract(department, season, { title: 'Concession reads of the winter' });
  await aContract(department, season, { title: 'Not signed' });
});

function aFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'rafterline-reports-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The command as somebody at a terminal runs it, while the server of the tests is running. */
async function reports(...words: string[]): Promise<{ code: number; said: string }> {
  const env = { ...process.env, DATABASE_URL: application.webUrl, DATABASE_OWNER_URL: application.ownerUrl, RAFTERLINE_DATA: join(tmpdir(), 'rafterline-reports-data'), NODE_OPTIONS: '' };
  return new Promise((done) => {
    execFile(process.execPath, [join(checkout, 'server/commands/reports.mjs'), '--department', department.name, ...words], { cwd: checkout, env }, (failure, out, errors) => {
      done({ code: failure ? Number(failure.code) : 0, said: `${out}${errors}` });
    });
  });
}

const papersIn = (folder: string) => readdirSync(folder).sort();

describe('npm run reports', () => {
  test('prints drafts where nothing is issued, numbers with --issue, and the same bytes afterward', async () => {
    const folder = aFolder();
    const drafts = await reports('--out', folder);
    expect([drafts.code, papersIn(folder)]).toEqual([0, ['performance-Juniper-Pike-Hardware-C-2027-0001-draft.pdf', 'performance-Juniper-Pike-Hardware-C-2027-0002-draft.pdf']]);
    expect(drafts.said).toContain('2 statements written, 2 of them drafts');
    expect((await department.director.look('/api/performance-statements')).total).toBe(0);
    const issued = await reports('--out', folder, '--issue', '--season', 'Basketball 2026-27');
    expect([issued.code, issued.said]).toEqual([0, expect.stringContaining('2 issued, 2 statements written')]);
    expect((await department.director.look('/api/performance-statements')).data.map((one: any) => [one.number, one.issuedByName])).toEqual([[1, null], [1, null]]);
    const [paper] = papersIn(folder).filter((name) => name.endsWith('-1.pdf'));
    expect((await pagesOfPdf(readFileSync(join(folder, paper!)))).join(' ')).toContain('Statement 1 of contract C-2027-000');
    const again = await reports('--out', folder, '--issue');
    expect([again.code, again.said]).toEqual([0, expect.stringContaining('0 statements written, 2 there already')]);
  });

  test('replaces a file that says something else only when it is told to', async () => {
    const folder = aFolder();
    await reports('--out', folder, '--draft');
    const [paper] = papersIn(folder);
    writeFileSync(join(folder, paper!), 'somebody’s own notes');
    const kept = await reports('--out', folder, '--draft');
    expect([kept.code, readFileSync(join(folder, paper!), 'utf8')]).toEqual([1, 'somebody’s own notes']);
    expect(kept.said).toContain('NOT WRITTEN');
    expect((await reports('--out', folder, '--draft', '--overwrite')).code).toBe(0);
    expect(readFileSync(join(folder, paper!)).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test.each([
    ['no folder', [], 'Say where to: --out DIR'],
    ['both a draft and a number', ['--out', 'x', '--draft', '--issue'], 'choose one'],
    ['a season that is none', ['--out', 'x', '--season', 'Curling 1899'], 'There is no season "Curling 1899"'],
    ['a day that is none', ['--out', 'x', '--through', '2027-02-30'], 'is no day'],
    ['a word that is none', ['--out', 'x', '--isue'], 'is not known here'],
  ])('given %s, says what is wrong and does nothing', async (_, words, said) => {
    const answer = await reports(...(words as string[]));
    expect([answer.code, answer.said]).toEqual([1, expect.stringContaining(said as string)]);
  });
});
