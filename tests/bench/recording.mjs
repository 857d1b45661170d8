/** Loaded before the server (`--import`): writes down each statement that `pg` sends, with its values, one a line of JSON. */
import { appendFileSync } from 'node:fs'
import pg from 'pg'

const file = process.env.BENCH_RECORD ?? ''
const send = pg.Client.prototype.query

/** @param {any} asked @param {any[]} rest */
pg.Client.prototype.query = function (asked, ...rest) {
  const text = typeof asked === 'string' ? asked : asked?.text
  const values = Array.isArray(rest[0]) ? rest[0] : asked?.values
  if (file && typeof text === 'string') appendFileSync(file, `${JSON.stringify({ text, values: values ?? [] })}\n`)
  return Reflect.apply(send, this, [asked, ...rest])
}
