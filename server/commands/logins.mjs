/** The database and its two logins. */
import pg from 'pg'

/** @typedef {{ postgres: string, rafterline_owner: string, rafterline_web: string }} Passwords */

export const databaseName = 'rafterline'

/** Two logins: one owns the schema, the other runs the server and owns nothing. Neither may step over the walls between departments.
 * @param {string} adminUrl @param {Passwords} passwords @param {string} [database] */
export async function prepareLogins(adminUrl, passwords, database = databaseName) {
  const client = new pg.Client({ connectionString: adminUrl })
  await client.connect()
  try {
    for (const login of /** @type {const} */ (['rafterline_owner', 'rafterline_web'])) {
      const { rowCount } = await client.query('select from pg_roles where rolname = $1', [login])
      if (rowCount === 0) {
        await client.query(`create role ${login} login nosuperuser nobypassrls nocreatedb nocreaterole noreplication password ${client.escapeLiteral(passwords[login])}`)
      }
    }
    const { rowCount } = await client.query('select from pg_database where datname = $1', [database])
    if (rowCount === 0) await createDatabase(client, database)
  } finally {
    await client.end()
  }
}

/** @param {pg.Client} client @param {string} name @param {string} [template] */
export async function createDatabase(client, name, template) {
  const quoted = client.escapeIdentifier(name)
  await client.query(`create database ${quoted} owner rafterline_owner ${template ? `template ${client.escapeIdentifier(template)}` : ''}`)
  await client.query(`revoke all on database ${quoted} from public`)
  await client.query(`grant connect on database ${quoted} to rafterline_web`)
}
