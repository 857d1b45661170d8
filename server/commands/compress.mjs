/** Compresses built pages once, so that the server only hands them out. */
import { readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip, gzipSync } from 'node:zlib'

const WORTH_IT_BYTES = 1024
/** Beyond this the last percent of brotli costs seconds. */
const LARGE_BYTES = 400_000

const brotli = promisify(brotliCompress)
const zip = promisify(gzip)

/** @param {string} folder */
const filesIn = (folder) => readdirSync(folder, { withFileTypes: true, recursive: true }).filter((found) => found.isFile()).map((found) => join(found.parentPath, found.name))

/** Lays `.br` and `.gz` beside each file of text. @param {string} folder */
export async function compressPages(folder) {
  const texts = filesIn(folder).filter((file) => /\.(js|css|html|svg|webmanifest|json)$/.test(file))
  await Promise.all(texts.map(async (file) => {
    const bytes = readFileSync(file)
    if (bytes.length < WORTH_IT_BYTES) return
    const quality = bytes.length > LARGE_BYTES ? 9 : 11
    const [small, zipped] = await Promise.all([brotli(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: quality } }), zip(bytes, { level: 9 })])
    writeFileSync(`${file}.br`, small)
    writeFileSync(`${file}.gz`, zipped)
  }))
}

/** All script of a page in bytes of gzip, the service worker's too. @param {string} folder */
export function scriptBytes(folder) {
  return filesIn(folder).filter((file) => file.endsWith('.js')).reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0)
}
