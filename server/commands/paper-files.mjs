/** What the commands share that write many papers into a folder. */
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { WayOut } from './terminal.mjs'

/** Writes a file that nobody loses anything by. @param {string} file @param {Buffer} bytes @returns {'written' | 'same' | 'other'} */
function put(file, bytes) {
  if (existsSync(file)) {
    if (readFileSync(file).equals(bytes)) return 'same'
    if (!process.argv.includes('--overwrite')) return 'other'
  }
  const aside = `${file}.${process.pid}`
  try {
    writeFileSync(aside, bytes, { flag: 'wx' })
    renameSync(aside, file)
  } finally {
    rmSync(aside, { force: true })
  }
  return 'written'
}

/** A bar on a terminal, plain lines elsewhere. @param {number} total */
export function progress(total) {
  const width = 24
  const isTerminal = process.stdout.isTTY
  return {
    /** @param {number} done @param {string} what */
    show: (done, what) => {
      if (!isTerminal) return
      const filled = total === 0 ? width : Math.round((width * done) / total)
      process.stdout.write(`\r\x1b[2K  [${'#'.repeat(filled)}${'-'.repeat(width - filled)}] ${done} of ${total}  ${what}`.slice(0, (process.stdout.columns ?? 80) + 5))
    },
    /** @param {number} done @param {string} what */
    line: (done, what) => console.log(isTerminal ? `\r\x1b[2K  ${what}` : `  ${done} of ${total}  ${what}`),
    end: () => (isTerminal ? process.stdout.write('\r\x1b[2K') : undefined),
  }
}

/** @param {string} folder */
export function makeFolder(folder) {
  try {
    mkdirSync(folder, { recursive: true })
  } catch (failure) {
    throw new WayOut(`${folder} cannot be made: ${failure instanceof Error ? failure.message : String(failure)}`)
  }
}

/** The folder that a run fills with papers, and what became of each. */
export class PaperFolder {
  sum = { written: 0, same: 0, other: 0, failed: 0, drafts: 0, pages: 0 }
  /** @type {Set<string>} */
  taken = new Set()

  /** @param {string} out */
  constructor(out) {
    this.out = out
  }

  /** @param {string} name @param {Buffer} bytes @param {{ pageCount: number, isDraft: boolean }} paper @returns {string} what became of it, for a line */
  put(name, bytes, { pageCount, isDraft }) {
    const file = freeName(name, this.taken)
    const result = put(join(this.out, file), bytes)
    this.sum[result] += 1
    this.sum.pages += pageCount
    if (isDraft) this.sum.drafts += 1
    const said = { written: counted(pageCount, 'page'), same: 'there already, the same', other: 'NOT WRITTEN: another file of this name is there (--overwrite replaces it)' }[result]
    return `${file}  ${said}`
  }

  /** @param {string} what @param {unknown} failure @returns {string} for a line */
  fail(what, failure) {
    this.sum.failed += 1
    return `${what}  FAILED: ${because(failure)}`
  }

  isWhole() {
    return this.sum.other + this.sum.failed === 0
  }
}

export const because = (/** @type {unknown} */ failure) => (failure instanceof Error ? failure.message : String(failure))

/** A name that no other paper of this run took. @param {string} name @param {Set<string>} taken */
function freeName(name, taken) {
  let free = name
  for (let number = 2; taken.has(free); number += 1) free = name.replace(/\.pdf$/, `-${number}.pdf`)
  taken.add(free)
  return free
}

/** @param {number} number @param {string} one */
export const counted = (number, one) => `${number} ${one}${number === 1 ? '' : 's'}`
