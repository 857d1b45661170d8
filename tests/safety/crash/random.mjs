/** Chance that comes again: everything the harness decides is drawn from its seed. */

export class Chance {
  #state

  /** @param {number} seed @param {string} [name] each drawer draws a series of its own */
  constructor(seed, name = '') {
    this.#state = mixed(`${seed}/${name}`)
  }

  /** From 0 up to 1, 1 left out. */
  fraction() {
    // mulberry32, from memory
    this.#state = (this.#state + 0x6d2b79f5) | 0
    let drawn = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state)
    drawn = (drawn + Math.imul(drawn ^ (drawn >>> 7), 61 | drawn)) ^ drawn
    return ((drawn ^ (drawn >>> 14)) >>> 0) / 4_294_967_296
  }

  /** @param {number} least @param {number} most both may be drawn */
  whole(least, most) {
    return least + Math.floor(this.fraction() * (most - least + 1))
  }

  /** @param {number} share from 0 to 1 */
  happens(share) {
    return this.fraction() < share
  }

  /** @template T @param {readonly T[]} list @returns {T} */
  one(list) {
    return /** @type {T} */ (list[this.whole(0, list.length - 1)])
  }

  /** By weight. @template {string} K @param {Record<K, number>} weights @returns {K} */
  weighted(weights) {
    const names = /** @type {K[]} */ (Object.keys(weights))
    let left = this.fraction() * names.reduce((sum, name) => sum + weights[name], 0)
    for (const name of names) {
      left -= weights[name]
      if (left < 0) return name
    }
    return /** @type {K} */ (names.at(-1))
  }

  /** In the form of a UUID of version 4. */
  id() {
    const digits = Array.from({ length: 32 }, (_, place) => (place === 12 ? 4 : place === 16 ? this.whole(8, 11) : this.whole(0, 15)).toString(16)).join('')
    return `${digits.slice(0, 8)}-${digits.slice(8, 12)}-${digits.slice(12, 16)}-${digits.slice(16, 20)}-${digits.slice(20)}`
  }
}

/** @param {string} words */
function mixed(words) {
  let hash = 2_166_136_261
  for (const sign of words) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 16_777_619)
  return hash | 0
}
