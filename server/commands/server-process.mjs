/** The built server as a process of its own: started, waited for, ended. */
import { spawn } from 'node:child_process'
import { closeSync, existsSync, openSync, readFileSync, rmSync, statSync } from 'node:fs'
import { get } from 'node:http'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { checkout } from './build.mjs'
import { freePort } from './port.mjs'
import { WayOut, wait } from './terminal.mjs'

/** @typedef {{ port: number, pid: number, exited: Promise<number | null>, isGone: () => boolean, stop: () => Promise<void> }} ServerProcess */

const builtProgram = join(checkout, '.build/server/main.js')
const follow = fileURLToPath(new URL('./follow-parent.mjs', import.meta.url))

/** Is nobody listening on this port, on any address of this machine? @param {number} port */
export async function isFree(port) {
  for (const host of ['0.0.0.0', '127.0.0.1', '::', '::1']) {
    try {
      await freePort(port, host)
    } catch (failure) {
      const { code } = /** @type {NodeJS.ErrnoException} */ (failure)
      if (code === 'EACCES') throw new WayOut(`This account may not open port ${port}. Choose one above 1023: PORT=3000 npm start`)
      if (code === 'EADDRINUSE') return false
    }
  }
  return true
}

/** The wanted port, else the next free one. @param {number} wanted */
export async function portFrom(wanted) {
  for (let port = wanted; port < wanted + 200 && port < 65_536; port++) if (await isFree(port)) return port
  throw new WayOut(`No port is free from ${wanted} on. Choose another: PORT=8080 npm start`)
}

/** What a server answers now; null when nobody answers. @param {string} address @returns {Promise<number | null>} */
export function answerOf(address) {
  return new Promise((done) => {
    const request = get(address, { timeout: 2000, agent: false }, (response) => {
      response.resume()
      done(response.statusCode ?? null)
    })
    request.on('timeout', () => request.destroy())
    request.on('error', () => done(null))
  })
}

/** Starts the built server and waits until it is ready.
 * @param {{ environment: Record<string, string>, port: number, logFile?: string, program?: string }} options logFile: instead of this terminal; program: another build
 * @returns {Promise<ServerProcess>} */
export async function startServer({ environment, port, logFile, program = builtProgram }) {
  if (!existsSync(program)) throw new WayOut('The server is not built; run "npm run build".')
  if (logFile && existsSync(logFile) && statSync(logFile).size > 5_000_000) rmSync(logFile)
  const log = logFile ? openSync(logFile, 'a', 0o600) : null
  const from = logFile ? statSync(logFile).size : 0
  const child = spawn(process.execPath, ['--enable-source-maps', '--import', follow, program], {
    cwd: checkout,
    env: { ...inherited(), ...environment, PORT: String(port) },
    detached: true,
    stdio: ['ignore', log ?? 'inherit', log ?? 'inherit', 'ipc'],
  })
  if (log !== null) closeSync(log)
  let gone = false
  /** @type {Promise<number | null>} */
  const exited = new Promise((done) => {
    child.on('exit', (code) => done(code))
    child.on('error', () => done(1))
  })
  void exited.then(() => (gone = true))
  const server = { port, pid: child.pid ?? 0, exited, isGone: () => gone, stop: () => stopServer(child, exited) }
  for (const until = Date.now() + 60_000; Date.now() < until && !gone; await wait(50)) {
    if ((await answerOf(`http://127.0.0.1:${port}/health/ready`)) === 200) return server
  }
  await server.stop()
  const said = logFile ? `:\n${readFileSync(logFile, 'utf8').slice(from).trim().slice(-3000)}` : '.'
  throw new WayOut(`The server ${gone ? 'stopped while starting' : 'did not become ready within a minute'}${said}`)
}

/** What the server may know of the caller's environment; the owner's login is not for it. */
function inherited() {
  const { DATABASE_OWNER_URL: _owner, NODE_OPTIONS: _options, ...rest } = process.env
  return rest
}

/** @param {import('node:child_process').ChildProcess} child @param {Promise<number | null>} exited */
async function stopServer(child, exited) {
  if (child.exitCode !== null || child.signalCode !== null) return
  child.kill('SIGTERM')
  const late = setTimeout(() => child.kill('SIGKILL'), 20_000)
  await exited
  clearTimeout(late)
}
