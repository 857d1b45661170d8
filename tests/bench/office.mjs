/** The rooms of the built server without its port, on a database of the stage. */
import 'reflect-metadata'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { NestFactory } from '@nestjs/core'
import { checkout } from '../../server/commands/build.mjs'

export const built = (/** @type {string} */ file) => import(pathToFileURL(join(checkout, '.build/server', `${file}.js`)).href)

/** @param {import('./stage.mjs').Stage} stage @param {import('./stage.mjs').Database} database @param {string} name */
export async function openRooms(stage, database, name) {
  const [{ AppModule }, { readConfig }, { makeLog, NestLog }, { errands }] = await Promise.all(
    ['app.module', 'platform/config/config', 'platform/log/log', 'platform/database/scope'].map(built),
  )
  const log = makeLog('error')
  const app = await NestFactory.createApplicationContext(AppModule.with(readConfig({ DATABASE_URL: database.webUrl, RAFTERLINE_DATA: stage.file(name) }), log), { logger: new NestLog(log) })
  stage.onClose(() => app.close())
  return {
    get: (/** @type {any} */ service) => app.get(service),
    /** @template T @param {string} departmentId @param {() => Promise<T>} work @returns {Promise<T>} */
    inDepartment: (departmentId, work) => errands.run({ scope: { departmentId, personId: null }, manager: null }, work),
  }
}
