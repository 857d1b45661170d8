import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import pg from 'pg'
import { afterAll, expect, inject, test } from 'vitest'
import { backup } from '../../server/commands/backup.mjs'
import { tablesOf } from '../../server/commands/backup-file.mjs'
import { createDatabase } from '../../server/commands/logins.mjs'
import { migrate } from '../../server/commands/migrate.mjs'
import { restore } from '../../server/commands/restore.mjs'
import { cloneOf, urlsOf } from '../support/global-setup.ts'

const server = inject('testServer')
const file = join(server.folder, `drill-${process.pid}.backup`)
const kestrels = '019a0000-0000-7000-8000-00000000000a'
const herons = '019a0000-0000-7000-8000-00000000000b'
let made = 0
const name = () => `drill_${process.pid}_${++made}`

afterAll(() => rmSync(file, { force: true }))

async function connected<T>(url: string, run: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  try {
    return await run(client)
  } finally {
    await client.end()
  }
}

/** A database that nobody ever migrated. */
async function anEmptyDatabase() {
  const database = name()
  await connected(server.adminUrl, (client) => createDatabase(client, database))
  return urlsOf(server.adminUrl, server.ownerPassword, server.webPassword, database)
}

/** Two departments with text that a careless format would break. */
async function aDatabaseWithTwoDepartments() {
  const urls = await cloneOf(server, name())
  await connected(urls.ownerUrl, async (client) => {
    for (const [id, school] of [[kestrels, 'Tamarack Ridge'], [herons, 'Port Ansel']] as const) {
      await client.query('begin')
      await client.query(`set local app.department_id = '${id}'`)
      await client.query(`insert into department (id, name, zone) values ($1, $2, 'America/Denver')`, [id, `${school} "Athletics"\tand\nmore \\. \\N`])
      const schools = `insert into school (department_id, id, name, short_name, nickname, first_colour, second_colour, say_as)
        values ($1, gen_random_uuid(), $2, 'x', 'Nguyễn, Łukasz', '#1F5C3A', '#B8632A', $3)`
      await client.query(schools, [id, school, null])
      await client.query(schools, [id, '\\.', 'shih-VAWN\r\n\\.'])
      await client.query('commit')
    }
  })
  return urls
}

/** A fingerprint of every row of every table, seen from inside each department. */
async function fingerprint(url: string): Promise<Record<string, string>> {
  return connected(url, async (client) => {
    await client.query(`set timezone = 'UTC'`)
    const prints: Record<string, string> = {}
    for (const table of await tablesOf(client)) {
      for (const department of table.ofDepartment ? [kestrels, herons] : [kestrels]) {
        await client.query('begin')
        await client.query(`set local app.department_id = '${department}'`)
        const { rows } = await client.query(`select count(*)::int as rows, md5(coalesce(string_agg(t::text, '|' order by t::text), '')) as print from "${table.name}" t`)
        await client.query('commit')
        prints[`${table.name} ${table.ofDepartment ? department : ''}`] = `${rows[0].rows} ${rows[0].print}`
      }
    }
    return prints
  })
}

test('a backup brought back into an empty database holds every row of every department, stamps and digests included', async () => {
  const source = await aDatabaseWithTwoDepartments()
  const before = await fingerprint(source.ownerUrl)
  const { rows } = await backup({ ownerUrl: source.ownerUrl, file })
  expect(rows).toMatchObject({ department: 2, school: 4 })
  const target = await anEmptyDatabase()
  await restore({ ...target, file })
  expect(await fingerprint(target.ownerUrl)).toEqual(before)
})

test('after a restore the walls stand, history is still only added to, and foreign keys hold', async () => {
  const target = await anEmptyDatabase()
  await restore({ ...target, file })
  await connected(target.ownerUrl, async (client) => {
    const { rows } = await client.query(
      `select count(*) filter (where not relforcerowsecurity)::int as open from pg_class
       where relnamespace = 'public'::regnamespace and relrowsecurity and relkind = 'r'`,
    )
    expect(rows[0].open).toBe(0)
    const sleeping = await client.query(`select tgname from pg_trigger where tgenabled = 'D'`)
    expect(sleeping.rows).toEqual([])
  })
  const fresh = await cloneOf(server, name())
  const keys = `select conname, pg_get_constraintdef(oid) as definition from pg_constraint where connamespace = 'public'::regnamespace order by 1, 2`
  const keysOf = (url: string) => connected(url, async (client) => (await client.query(keys)).rows)
  expect(await keysOf(target.ownerUrl)).toEqual(await keysOf(fresh.ownerUrl))
  await connected(target.webUrl, async (client) => {
    await client.query('begin')
    await client.query(`set local app.department_id = '${kestrels}'`)
    expect((await client.query('select count(*)::int as n from school')).rows[0].n).toBe(2)
    await client.query('rollback')
  })
})

test('a backup is never restored over a department', async () => {
  const used = await aDatabaseWithTwoDepartments()
  const before = await fingerprint(used.ownerUrl)
  await expect(restore({ ...used, file })).rejects.toThrow('already holds departments')
  expect(await fingerprint(used.ownerUrl)).toEqual(before)
})

test('a damaged or cut-off backup is refused before anything is written', async () => {
  const whole = readFileSync(file)
  const altered = gunzipSync(whole).toString('utf8').replace('Port Ansel', 'Port Unsel')
  const broken: [string, Buffer | string][] = [
    ['one letter changed', gzipSync(altered)],
    ['cut off in the middle', whole.subarray(0, whole.length / 2)],
    ['empty', ''],
    ['not a backup', 'Dear sponsor'],
    ['another format', gzipSync('{"format":"a-picture"}\n{}\n')],
  ]
  const target = await anEmptyDatabase()
  for (const [what, content] of broken) {
    const bad = `${file}.bad`
    writeFileSync(bad, content)
    await expect(restore({ ...target, file: bad }), what).rejects.toThrow(/damaged|not a backup/)
    rmSync(bad)
  }
  await connected(target.ownerUrl, async (client) => {
    expect((await client.query(`select count(*)::int as n from pg_tables where schemaname = 'public'`)).rows[0].n).toBe(0)
  })
})

test('a database brought forward by a newer version is refused with the way out', async () => {
  const urls = await cloneOf(server, name())
  await connected(urls.ownerUrl, (client) => client.query(`insert into schema_migration (number, name, checksum) values (9999, '9999_later.sql', 'x')`))
  await expect(migrate(urls)).rejects.toThrow(/newer Rafterline.*\n.*way out/s)
})

test('a migration that was changed after it was applied is refused', async () => {
  const urls = await cloneOf(server, name())
  await connected(urls.ownerUrl, (client) => client.query(`update schema_migration set checksum = 'x' where number = 1`))
  await expect(migrate(urls)).rejects.toThrow(/0001_foundations\.sql was changed/)
})

test('two starts at one moment bring the schema forward once', async () => {
  const urls = await anEmptyDatabase()
  const [first, second] = await Promise.all([migrate(urls), migrate(urls)])
  expect([first.applied.length, second.applied.length].filter((count) => count > 0)).toHaveLength(1)
  expect(first.schema).toBe(second.schema)
})

test('before the schema of a department in use goes forward, a backup is made', async () => {
  const urls = await aDatabaseWithTwoDepartments()
  const backups: number[] = []
  const noted = (before: number) => Promise.resolve(`number ${backups.push(before)}`)
  await migrate({ ...urls, backup: noted })
  expect(backups).toEqual([])
  await connected(urls.ownerUrl, (client) => client.query('delete from schema_migration where number = (select max(number) from schema_migration)'))
  await expect(migrate({ ...urls, backup: noted })).rejects.toThrow('Nothing of this file was kept')
  expect(backups).toHaveLength(1)
})

test.each([
  ['the login that may step over the walls', (urls: { ownerUrl: string }) => ({ ...urls, webUrl: server.adminUrl }), 'step over row-level security'],
  ['one login for both', (urls: { ownerUrl: string }) => ({ ...urls, webUrl: urls.ownerUrl }), 'the same login'],
])('the server never runs as %s', async (_what, changed, sentence) => {
  const urls = await cloneOf(server, name())
  await expect(migrate(changed(urls))).rejects.toThrow(sentence)
})
