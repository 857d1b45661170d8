/** What a forecast of scheduled reads rests on. Counts of reads. */
export interface ScheduledGround {
  readonly owed: number;
  readonly logged: number;
  readonly planned: number;
  readonly withoutPlace: number;
  readonly shortfall: number;
  readonly windowReadsPlanned: number;
  readonly windowReadsGiven: number;
}

const reads = (count: number): string => (count === 1 ? '1 read' : `${count} reads`);
const games = (count: number): string => (count === 1 ? '1 game' : `${count} games`);
const isOrAre = (count: number): string => (count === 1 ? 'is' : 'are');

/** On what a forecast of scheduled reads rests, in one sentence. */
export function scheduledWords(ground: ScheduledGround): string {
  const { owed, logged, planned, withoutPlace, shortfall, windowReadsPlanned, windowReadsGiven } = ground;
  if (owed === 0) return 'Everything that was promised is settled.';
  const rest = [
    planned > 0 && `${reads(planned)} planned for games to come`,
    logged > 0 && `${reads(logged)} logged on nights not signed off yet and counted as given`,
    withoutPlace > 0 && `${reads(withoutPlace)} without a place yet, counted as if ${withoutPlace === 1 ? 'it' : 'they'} got one`,
    shortfall > 0 && `${reads(shortfall)} that can no longer be given as promised`,
  ].filter(Boolean).join('; ');
  if (rest === '') return 'No game is left in which these reads could be given.';
  if (planned + withoutPlace === 0) return `Worked out from ${rest}.`;
  const record =
    windowReadsPlanned === 0
      ? 'no read of these windows has been planned on a night signed off yet, so nine in ten are assumed to be given'
      : `of the ${reads(windowReadsPlanned)} planned in these windows on nights signed off this season ${windowReadsGiven} ${windowReadsGiven === 1 ? 'was' : 'were'} given`;
  return `Worked out from ${rest}; ${record}.`;
}

export interface MentionGround {
  readonly occurrences: number;
  readonly gamesCounted: number;
  readonly gamesLeft: number;
  readonly earlierGames: number;
}

/** On what a forecast of mentions rests, in one sentence. */
export function mentionWords({ occurrences, gamesCounted, gamesLeft, earlierGames }: MentionGround): string {
  const seen = gamesCounted === 0 ? 'no game counted yet' : `${occurrences === 0 ? 'none' : occurrences} in ${games(gamesCounted)} counted so far`;
  const before = earlierGames > 0 ? `${games(earlierGames)} of earlier seasons` : 'a general assumption of two a game, because no earlier season is known';
  if (gamesLeft === 0) return `${capital(seen)}, and no game is left that could bring more.`;
  return `Worked out from ${seen} and from ${before}; ${games(gamesLeft)} ${isOrAre(gamesLeft)} left, and each time it happens a mention is assumed to be read.`;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
