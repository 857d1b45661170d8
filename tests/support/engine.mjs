/** Which database the tests run on: a container where an engine answers, else a private embedded server. */
import { spawnSync } from 'node:child_process'

/** @returns {'container' | 'embedded'} */
export function chosenDatabase() {
  const asked = process.env.TEST_DATABASE
  if (asked === 'container' || asked === 'embedded') return asked
  if (asked) throw new Error(`TEST_DATABASE is "${asked}"; it is container or embedded.`)
  return engineAnswers() ? 'container' : 'embedded'
}

function engineAnswers() {
  const answer = spawnSync('docker', ['version', '--format', '{{.Server.Version}}'], { timeout: 10_000, stdio: 'ignore' })
  return answer.status === 0
}

export const postgresImage = process.env.TEST_POSTGRES_IMAGE || 'postgres:17'
