/** Builds what changed since the last build, and nothing else: `npm run build`. */
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { compressPages, scriptBytes } from './compress.mjs'
import { command, step, wait } from './terminal.mjs'

export const checkout = resolve(fileURLToPath(new URL('../..', import.meta.url)))
const out = join(checkout, '.build')

/** `leavesOut`: folders below the sources that are a target of their own. `pages`: handed out to browsers as they are.
 * @typedef {{ name: string, says: string, config: string, sources: string[], needs: string, leavesOut?: string, pages?: true, weighsScript?: true }} Target */

/** The order is the order of building. A target whose `needs` is missing is left out.
 * @type {Target[]} */
export const targets = [
  { name: 'server', says: 'server', config: 'server/vite.config.ts', sources: ['server', 'seeds', 'tsconfig.json'], needs: 'server/main.ts' },
  {
    name: 'admin-ui',
    says: 'office pages',
    config: 'admin-ui/vite.config.ts',
    sources: ['admin-ui', 'server', 'tsconfig.json'],
    needs: 'admin-ui/index.html',
    leavesOut: 'admin-ui/night/',
    pages: true,
  },
  {
    name: 'night',
    says: 'page of the table',
    config: 'admin-ui/night/vite.config.ts',
    sources: ['admin-ui/night', 'server/domain', 'tsconfig.json'],
    needs: 'admin-ui/night/index.html',
    pages: true,
    weighsScript: true,
  },
]

/** @param {string} path @returns {string[]} */
function filesOf(path) {
  const full = join(checkout, path)
  if (!existsSync(full)) return []
  if (statSync(full).isFile()) return [path]
  return readdirSync(full, { withFileTypes: true, recursive: true })
    .filter((found) => found.isFile() && !/(^|\/)(commands|pictures|node_modules)(\/|$)/.test(relative(full, found.parentPath)))
    .map((found) => relative(checkout, join(found.parentPath, found.name)))
    .sort()
}

/** A fingerprint of everything the result depends on. @param {Target} target */
function keyOf(target) {
  const digest = createHash('sha256')
  const sources = target.sources.flatMap(filesOf).filter((file) => !target.leavesOut || !file.startsWith(target.leavesOut))
  for (const file of ['package-lock.json', 'server/commands/build.mjs', 'server/commands/compress.mjs', ...sources]) {
    digest.update(file).update('\0').update(readFileSync(join(checkout, file))).update('\0')
  }
  return digest.digest('hex')
}

/** @param {Target} target */
function isBuilt(target) {
  const keyFile = join(out, `${target.name}.key`)
  return existsSync(join(out, target.name)) && existsSync(keyFile) && readFileSync(keyFile, 'utf8') === keyOf(target)
}

/** A build that a test run starts makes the same pages as any other. @param {Target} target @param {string} folder */
async function runVite(target, folder) {
  const { NODE_ENV } = process.env
  process.env.NODE_ENV = 'production'
  try {
    const { build } = await import('vite')
    await build({
      configFile: join(checkout, target.config),
      // Loaded in memory: node_modules may belong to somebody else.
      configLoader: 'runner',
      logLevel: 'warn',
      build: { outDir: folder, emptyOutDir: true, reportCompressedSize: false },
    })
  } finally {
    if (NODE_ENV === undefined) delete process.env.NODE_ENV
    else process.env.NODE_ENV = NODE_ENV
  }
}

/** @param {Target} target @param {(note: string) => void} note */
async function buildOne(target, note) {
  const key = keyOf(target)
  const aside = join(out, `${target.name}.${process.pid}`)
  await runVite(target, aside)
  if (target.pages) await compressPages(aside)
  if (target.weighsScript) note(`${(scriptBytes(aside) / 1000).toFixed(1)} kB of script, gzip`)
  // A running server keeps its open files; the next one sees the new folder as a whole.
  const former = join(out, `${target.name}.former.${process.pid}`)
  if (existsSync(join(out, target.name))) renameSync(join(out, target.name), former)
  renameSync(aside, join(out, target.name))
  writeFileSync(join(out, `${target.name}.key`), key)
  rmSync(former, { recursive: true, force: true })
}

/** Two starts from one checkout build one after the other. @template T @param {() => Promise<T>} run */
async function alone(run) {
  const lock = join(out, 'lock')
  mkdirSync(out, { recursive: true })
  for (;;) {
    try {
      writeFileSync(lock, String(process.pid), { flag: 'wx' })
      break
    } catch {
      const holder = readIfThere(lock)
      if (holder !== '' && !isAlive(Number(holder))) rmSync(lock, { force: true })
      else await wait(200)
    }
  }
  try {
    return await run()
  } finally {
    rmSync(lock, { force: true })
  }
}

/** @param {string} file */
function readIfThere(file) {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return ''
  }
}

/** @param {number} pid */
function isAlive(pid) {
  if (!(pid > 0)) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (failure) {
    return /** @type {NodeJS.ErrnoException} */ (failure).code === 'EPERM'
  }
}

/** Builds what changed and says what it did. @param {string[]} [only] names of targets */
export async function build(only) {
  const wanted = targets.filter((target) => (!only || only.includes(target.name)) && existsSync(join(checkout, target.needs)))
  await alone(async () => {
    for (const target of wanted) {
      if (isBuilt(target)) await step(`Nothing to build for the ${target.says}`, () => {})
      else await step(`Building the ${target.says}`, (note) => buildOne(target, note))
    }
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await command(() => build())
