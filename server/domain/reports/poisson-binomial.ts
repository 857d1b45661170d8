/**
 * The chances of 0, 1, 2 … successes of independent trials whose chances differ, by exact convolution: after each trial
 * k successes are k before and a failure, or k - 1 before and a success.
 *
 * @param probabilities each between 0 and 1
 * @returns one more chance than there are trials; they add up to 1
 * @source Poisson-binomial distribution, from memory; checked against every subset, the binomial and the Poisson limit
 */
export function chancesOfCount(probabilities: readonly number[]): number[] {
  const chances = Array<number>(probabilities.length + 1).fill(0);
  chances[0] = 1;
  probabilities.forEach((chance, tried) => {
    for (let count = tried + 1; count > 0; count -= 1) chances[count] = chances[count]! * (1 - chance) + chances[count - 1]! * chance;
    chances[0]! *= 1 - chance;
  });
  return chances;
}
