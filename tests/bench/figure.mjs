/** A figure as it is printed. */
import { loadavg } from 'node:os'

/** What the machine has to do just now, for figures that are no ratio. */
export const load = () => `load of the machine ${loadavg().map((one) => one.toFixed(1)).join(', ')}`

/** @param {readonly number[]} values */
export function median(values) {
  const sorted = values.toSorted((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? (sorted[middle] ?? NaN) : ((sorted[middle - 1] ?? NaN) + (sorted[middle] ?? NaN)) / 2
}

/** The measurements a figure is made of. @param {string} what @param {readonly number[]} values @param {string} unit */
export function raw(what, values, unit) {
  console.log(`    ${what}: median ${median(values).toFixed(2)} ${unit} (${values.length} measured, ${Math.min(...values).toFixed(2)} to ${Math.max(...values).toFixed(2)})`)
}

/** @param {string} name @param {number} value @param {{ atLeast: number } | { atMost: number }} target @param {string} [unit] @returns {boolean} */
export function figure(name, value, target, unit = 'x') {
  const [sign, bound, holds] = 'atLeast' in target ? ['>=', target.atLeast, value >= target.atLeast] : ['<=', target.atMost, value <= target.atMost]
  console.log(`${name}: ${value.toFixed(2)} ${unit} (target ${sign} ${bound} ${unit}) ${holds ? 'ok' : 'short'}`)
  return holds
}

/** What the pairs measured side by side come to; noise of the machine falls on both of a pair. @param {readonly number[]} ours @param {readonly number[]} bare */
export function ratioOf(ours, bare) {
  return median(ours.map((value, index) => value / (bare[index] ?? NaN)))
}
