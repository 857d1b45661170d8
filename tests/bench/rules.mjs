/** Rules of the domain, bundled from their sources as they stand: what no room of the server uses is in no build. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'
import { checkout } from '../../server/commands/build.mjs'

/** @param {import('./stage.mjs').Stage} stage @param {readonly string[]} files from the top of the house @returns {Promise<any>} everything they export */
export async function rules(stage, files) {
  const entry = stage.file('rules.ts')
  writeFileSync(entry, files.map((file) => `export * from '${join(checkout, file)}'`).join('\n'))
  const outDir = stage.file('rules')
  await build({ configFile: false, logLevel: 'error', root: checkout, build: { lib: { entry, formats: ['es'], fileName: 'rules' }, outDir, emptyOutDir: true, minify: false, target: 'node20' } })
  return import(pathToFileURL(join(outDir, 'rules.js')).href)
}
