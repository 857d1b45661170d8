/** `npm run books`: the invariants of every department's books, one line each; fails when one is broken. */
import pg from 'pg'
import { build } from './build.mjs'
import { openDatabase } from './database.mjs'
import { command } from './terminal.mjs'

await command(async () => {
  await build(['server'])
  const { checkBooks } = await import('../../.build/server/reports/books.js')
  const { setTypeParsers } = await import('../../.build/server/platform/database/types.js')
  setTypeParsers()
  const database = await openDatabase()
  const client = new pg.Client({ connectionString: database.webUrl, options: '-c timezone=UTC -c default_transaction_isolation=repeatable\\ read' })
  await client.connect()
  let broken = 0
  try {
    const departments = (await client.query('select id, name from department order by name')).rows
    for (const department of departments) {
      console.log(`${department.name}`)
      await client.query('begin read only')
      await client.query(`set local app.department_id = '${department.id}'`)
      /** @param {string} sql @param {unknown[]} parameters */
      const ask = async (sql, parameters) => (await client.query(sql, parameters)).rows
      for (const finding of await checkBooks(ask, department.id)) {
        broken += finding.broken.length
        console.log(`  ${finding.broken.length === 0 ? 'holds ' : 'BROKEN'}  ${finding.id}: ${finding.sentence}`)
        for (const what of finding.broken) console.log(`          ${what}`)
      }
      await client.query('rollback')
    }
    if (departments.length === 0) console.log('There is no department in these books yet.')
  } finally {
    await client.end()
    await database.close()
  }
  return broken > 0 ? 1 : 0
})
