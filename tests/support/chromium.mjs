/** The browser of the tests: named, installed, or installed now. */
import { accessSync, constants } from 'node:fs'
import { spawnSync } from 'node:child_process'
import { delimiter, join } from 'node:path'

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']
const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
]

/** @param {string} file */
function runs(file) {
  try {
    accessSync(file, constants.X_OK)
    return true
  } catch {
    return false
  }
}

function installed() {
  const folders = (process.env.PATH ?? '').split(delimiter)
  return [...folders.flatMap((folder) => names.map((name) => join(folder, name))), ...places].find(runs)
}

/** @param {(text: string) => void} say @returns {string} */
export function findChromium(say) {
  const named = process.env.CHROMIUM_PATH
  if (named) {
    if (!runs(named)) throw new Error(`CHROMIUM_PATH names ${named}, which cannot be run.`)
    return named
  }
  const found = installed()
  if (found) return found
  say('No Chromium or Chrome is installed; installing it with apt-get (Debian) …')
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env: environment })
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { stdio: 'ignore', env: environment })
  const fresh = installed()
  if (fresh) return fresh
  throw new Error('The browser tests need Chromium or Chrome, and it could not be installed here. Install it, or set CHROMIUM_PATH to its program.')
}
