import type { ForecastView } from '../../../server/planning/forecast/forecast.dto.ts';
import { moneyText } from '../../format/money.ts';
import { count, numberText } from '../../words/count.ts';

/** 0.5242 is "52%"; what is nearly sure is never said to be sure. */
export function chanceText(chance: number): string {
  if (chance > 0.99 && chance < 1) return 'more than 99%';
  if (chance < 0.01 && chance > 0) return 'less than 1%';
  return `${Math.round(chance * 100)}%`;
}

/** How many more mentions are likely, in sentences. */
export function forecastSentences(forecast: ForecastView): string[] {
  const { counted, expected, low, high, gamesLeft } = forecast;
  if (gamesLeft === 0) return [`${count(counted, 'mention')} so far, and no game is left that could bring more.`];
  const about = Math.round(expected);
  const likely = about === 0 ? 'Hardly any more are likely' : `About ${numberText(about)} more ${about === 1 ? 'is' : 'are'} likely`;
  const games = gamesLeft === 1 ? 'the one game left' : `the ${numberText(gamesLeft)} games left`;
  return [`${likely} in ${games} (${numberText(low)} to ${numberText(high)} in nine of ten seasons like this).`, ...leastSentence(forecast), ...mostSentence(forecast), ...costSentence(forecast)];
}

function leastSentence({ readsAtLeast, chanceOfLeast, counted }: ForecastView): string[] {
  if (readsAtLeast === null || chanceOfLeast === null || readsAtLeast === 0) return [];
  const more = readsAtLeast - counted;
  if (more <= 0) return [`The ${numberText(readsAtLeast)} promised at least have happened.`];
  return [`The chance that at least ${numberText(more)} more happen, as promised, is ${chanceText(chanceOfLeast)}; what does not happen is owed all the same.`];
}

function mostSentence({ readsAtMost, chanceOfMost }: ForecastView): string[] {
  return readsAtMost === null || chanceOfMost === null ? [] : [`The chance that more happen than the ${numberText(readsAtMost)} that count at most is ${chanceText(chanceOfMost)}.`];
}

const costSentence = ({ likelyMostCents }: ForecastView): string[] =>
  likelyMostCents === null ? [] : [`In all but one of twenty seasons like this its mentions come to no more than ${moneyText(likelyMostCents)}.`];

/** What it was worked out from. */
export function forecastGround({ counted, gamesCounted, earlierGames }: ForecastView): string {
  const seen = `${count(counted, 'mention')} in ${count(gamesCounted, 'game')} signed off this season`;
  const before = earlierGames > 0 ? `${count(earlierGames, 'game')} of your earlier seasons` : 'a general assumption of two a game, because no earlier season is known';
  return `Worked out from ${seen} and from ${before}. An expectation: nothing is placed for it.`;
}
