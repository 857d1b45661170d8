import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';

test('an announcer keeps the rate they measured, and nobody else’s changes', async () => {
  const { director, announcer } = await aDepartment();
  expect((await announcer.get('/api/me/reading-rate')).body).toEqual({ wordsPerMinute: null, usualWordsPerMinute: 140 });
  const kept = await announcer.send('PUT', '/api/me/reading-rate', { wordsPerMinute: 152 });
  expect([kept.status, kept.body]).toEqual([200, { wordsPerMinute: 152, usualWordsPerMinute: 140 }]);
  expect((await announcer.get('/api/me/reading-rate')).body.wordsPerMinute).toBe(152);
  expect((await director.get('/api/me/reading-rate')).body.wordsPerMinute).toBeNull();
});

test('the department’s rate comes back when the own one is given up', async () => {
  const { director, announcer } = await aDepartment();
  const department = await director.get('/api/department');
  await director.send('PATCH', '/api/department', { settings: { wordsPerMinute: 128 } }, { version: department.body.version });
  await announcer.send('PUT', '/api/me/reading-rate', { wordsPerMinute: 200 });
  expect((await announcer.send('PUT', '/api/me/reading-rate', { wordsPerMinute: null })).body).toEqual({ wordsPerMinute: null, usualWordsPerMinute: 128 });
});

test.each([[60, 200], [240, 200], [59, 400], [241, 400], ['fast', 400], [undefined, 400]])('%s words a minute: %i', async (wordsPerMinute, status) => {
  const { announcer } = await aDepartment();
  expect((await announcer.send('PUT', '/api/me/reading-rate', { wordsPerMinute })).status).toBe(status);
});
