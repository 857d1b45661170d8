/** What is believed of happenings in one game: Gamma with a shape and a rate in games, so that shape / rate are expected a game. */
export interface Belief {
  readonly shape: number;
  readonly rate: number;
}

/** What was seen: so many happenings in so many games. */
export interface Seen {
  readonly occurrences: number;
  readonly games: number;
}

/** How many more will happen, as chances. */
export interface Forecast {
  readonly mean: number;
  /** the fewest that all but one in twenty seasons like this reach */
  readonly low: number;
  readonly middle: number;
  /** as many as all but one in twenty seasons like this stay at or below */
  readonly high: number;
  /** that at least so many more happen, between 0 and 1 */
  readonly chanceOfAtLeast: (occurrences: number) => number;
}

/** Where nothing is known: two a game, and the first games count for more. Common practice, no source. */
export const WEAK_BELIEF: Belief = { shape: 2, rate: 1 };

/** Earlier seasons tell as much as so many games of this one, however many there were. Common practice, no source. */
const EARLIER_GAMES_COUNT_AS = 4;

/**
 * A belief with what was seen. Gamma is the conjugate prior of Poisson counts: shape and rate grow by happenings and games.
 *
 * @source Gelman et al., Bayesian Data Analysis, 3rd edition, section 2.6, from memory
 */
export const learned = (belief: Belief, seen: Seen): Belief => ({ shape: belief.shape + seen.occurrences, rate: belief.rate + seen.games });

/** The belief before a season: the weak one, with the department's own earlier games of that sport, which fade against this season's. */
export function beliefBefore(earlier: Seen): Belief {
  if (earlier.games === 0) return WEAK_BELIEF;
  const share = Math.min(1, EARLIER_GAMES_COUNT_AS / earlier.games);
  return learned(WEAK_BELIEF, { occurrences: earlier.occurrences * share, games: earlier.games * share });
}

/** Sums of chances that differ by less are the same: NB(400, 0.5) lies at or below 399 half of the time exactly. */
const TIE = 1e-12;
/** Beyond this no chance is worth naming. */
const NEGLIGIBLE = 1e-13;

/**
 * Happenings in the games that are left: negative binomial with r = shape and p = rate / (rate + games).
 *
 * @param gamesLeft whole games, 0 or more
 * @source Gelman et al., Bayesian Data Analysis, 3rd edition, section 2.6, from memory
 */
export function forecastOf(belief: Belief, gamesLeft: number): Forecast {
  const upTo = cumulativeChances(belief.shape, belief.rate / (belief.rate + gamesLeft));
  const quantile = (chance: number): number => {
    const found = upTo.findIndex((reached) => reached >= chance - TIE);
    return found === -1 ? upTo.length - 1 : found;
  };
  return {
    mean: (belief.shape * gamesLeft) / belief.rate,
    low: quantile(0.05),
    middle: quantile(0.5),
    high: quantile(0.95),
    chanceOfAtLeast: (occurrences) => (occurrences <= 0 ? 1 : Math.max(0, 1 - (upTo[Math.ceil(occurrences) - 1] ?? 1))),
  };
}

/** P(Y <= 0), P(Y <= 1) … of a negative binomial, until the rest is negligible. In logarithms, so that no r is too large. */
function cumulativeChances(r: number, p: number): number[] {
  const upTo: number[] = [];
  const mean = (r * (1 - p)) / p;
  let logarithm = r * Math.log(p);
  let sum = 0;
  for (let count = 0; ; count += 1) {
    const chance = Math.exp(logarithm);
    sum += chance;
    upTo.push(Math.min(1, sum));
    if (count >= mean && chance < NEGLIGIBLE) return upTo;
    logarithm += Math.log(((r + count) / (count + 1)) * (1 - p));
  }
}
