import type { Sport } from '../season/sport-profile.ts';
import { script } from './default-script.ts';
import type { DefaultScript } from './default-script.ts';

const SCORE = '{{ visitorShortName }}\u00a0____, {{ homeShortName }}\u00a0____';

const PERIOD_SCORE = `
[[At the end of every {{ period }}, once the ball is dead: the visitors first, then home. The official scorer's count is the count.]]
At the end of the ________ {{ period }} it is ${SCORE}.`;

const SET_SCORE = `
[[At the end of every set: the visitors first, then home.]]
Set ____ is over: ${SCORE}. In sets it is ${SCORE}.`;

const MEET_SCORE = `
[[After each bout, once the official has raised a hand: weight, winner, how. Then the team score, the visitors first.]]
At ____ pounds, for ____________, by ____________: ________________.

The team score: ${SCORE}.`;

const INNING_SCORE = `
[[At the end of a full inning, once the teams are changing sides: the visitors first, then home.]]
After ____ innings it is ${SCORE}.`;

const HALFTIME = `
That brings us to halftime. It is ${SCORE}.
[[pause 3]]
Both teams will be back on the {{ playingArea }} when the clock has run down.`;

const FOOTBALL_HALFTIME = `
That brings us to halftime. It is ${SCORE}.
[[pause 3]]
When halftime is over the teams come back for three minutes of warm-up, and then the second half begins.`;

// What may and may not be told: NFHS basketball point of emphasis 2014-15, announcer responsibilities.
const NOT_TOLD = `
[[Not told: points or fouls of a player, fouls of a team, time-outs used or left, time left, the kind of foul or violation.]]`;

const TIMEOUTS = 'Time-out, ____________ (team). Sixty seconds.\n\nTime-out, ____________ (team). Thirty seconds.';

const CALLS: Readonly<Partial<Record<Sport, string>>> = {
  basketball: `
[[For the table, in the order things come up. Wait for the dead ball; a level voice for both teams.]]
Basket by number ____, ________________.

Foul on ____________ (team) number ____, ________________.

Shooting ____ for ____________ (team): number ____, ________________.

Coming in for ____________ (team): number ____, ________________.

${TIMEOUTS}
${NOT_TOLD}`,
  football: `
[[For the table. After the whistle and before the snap; nothing while the ball is live, no commentary.]]
Carry by number ____, ________________. Tackle by number ____, ________________.

Pass from number ____, ________________, to number ____, ________________.

Brings up ________ down and ____.

First down, ____________ (team).

Touchdown, ____________ (team): number ____, ________________.

Field goal, ____________ (team): number ____, ________________. The kick is ____________ (good or no good).

Time-out, ____________ (team).
[[A flag: wait for the referee's signal, then tell what was signaled. Not told: time-outs used or left, an opinion of the call.]]`,
  volleyball: `
[[For the table. Between rallies only; a level voice for both teams.]]
Serving for ____________ (team): number ____, ________________.

Point, ____________ (team).

Kill by number ____, ________________. Ace by number ____, ________________.

Coming in for ____________ (team): number ____, ________________, for number ____, ________________.

Time-out, ____________ (team).
[[Not told: time-outs used or left, the kind of fault, an opinion of the call.]]`,
  soccer: `
[[For the table. Only while play is stopped; a level voice for both teams.]]
Goal for ____________ (team), by number ____, ________________. Assisted by number ____, ________________.

Coming in for ____________ (team): number ____, ________________, for number ____, ________________.

Corner kick, ____________ (team).
[[A card: number and team only when the referee has shown it, and no reason.]]`,
  wrestling: `
[[For the table. Before and after a bout, never during one.]]
On the mat at ____ pounds: for ____________ (visitors), ________________; for ____________ (home), ________________.

On deck at ____ pounds: ________________ and ________________. In the hole: ____ pounds.

The winner at ____ pounds, by ____________: ________________ of ____________.
[[Injury time: say nothing. Not told: an injury, a weight missed, why somebody forfeits.]]`,
  baseball: `
[[For the table. Between batters and between innings; nothing while the ball is live.]]
Now batting for ____________ (team), number ____, ________________ (position, name).

Pitching for ____________ (team): number ____, ________________.

Batting for number ____: number ____, ________________.

Running for number ____: number ____, ________________.

That is ____ runs, ____ hits and ____ left on base.
[[Not told: the conferences a coach has used, an opinion of the call.]]`,
  softball: `
[[For the table. Between batters and between innings; nothing while the ball is live.]]
Now batting for ____________ (team), number ____, ________________ (position, name).

In the circle for ____________ (team): number ____, ________________.

Batting for number ____: number ____, ________________.

Running for number ____: number ____, ________________.

That is ____ runs, ____ hits and ____ left on base.
[[Not told: the conferences a coach has used, an opinion of the call.]]`,
};

const CALLS_OF_ANY_SPORT = `
[[For the table, in the order things come up. Only while play is stopped; a level voice for both teams.]]
Score by number ____, ________________.

Foul on ____________ (team) number ____, ________________.

Coming in for ____________ (team): number ____, ________________.

Time-out, ____________ (team).
${NOT_TOLD}`;

const RECOGNITION = `
[[wait until everyone to be recognized is on the {{ playingArea }}]]
Please turn to the {{ playingArea }} for a moment{% if honouree %}, where we recognize {{ honouree }}{% else %}[[say who is recognized, and for what]]{% endif %}.
[[wait for applause]]
Thank you.`;

const SENIORS = `
[[wait until the families are lined up in the order of the list]]
{% if honoursTitle %}{{ honoursTitle }}. {% endif %}{% if honoursCount %}Please meet our {{ honoursCount }} seniors and the people who stand beside them. {% else %}Please meet our seniors and the people who stand beside them. {% endif %}Each of them comes out with family, so a hand for every one.
[[pause 2]]`;

const HONOURS = `
[[wait until those who are honored are lined up in the order of the list]]
{% if honoursTitle %}{{ honoursTitle }}. {% endif %}Please join us in recognizing what these students have done for {{ homeShortName }}.
[[pause 2]]`;

const FLOOR_SAFETY = `
For everyone's safety, please stay off the {{ playingArea }} at the break, and keep food and drink in the stands. Leave the ends and the sidelines open for the teams.`;

const CONCESSION = `
The concession stand is open at the break and stays open for the rest of the game. Please bring nothing back across the {{ playingArea }}.`;

const BETWEEN_GAMES = `
That is the final of our {{ level }} game. Thank you to both teams and to the officials.
[[wait for applause]]
{% if laterGame %}Please stay with us: {{ laterGame }} is next.{% endif %}`;

const POSTGAME = `
[[horn; wait for the handshake line]]
The final score: ${SCORE}.

A hand for both teams, please.
[[wait for applause]]
Thank you to the officials, to everyone at the table, and to {{ visitorSchool }} for the visit.
{% if nextGame %}
The {{ homeNickname }} play next on {{ nextGame.dayText }} at {{ nextGame.clockText }}, {% if nextGame.isHome %}right here against {{ nextGame.opponentName }}{% else %}on the road at {{ nextGame.opponentName }}{% endif %}.{% if nextHomeGame and nextGame.isHome == false %} The next home game is {{ nextHomeGame.dayText }} at {{ nextHomeGame.clockText }} against {{ nextHomeGame.opponentName }}.{% endif %}
{% endif %}
Thank you for coming, and drive home safely.`;

const callsOf = ([sport, calls]: [string, string]): DefaultScript => script('callsOfPlay', `Calls of play: ${sport}`, calls, { sport: sport as Sport });

/** What is said from the first whistle to the last. */
export const GAME_SCRIPTS: readonly DefaultScript[] = [
  script('callsOfPlay', 'Calls of play', CALLS_OF_ANY_SPORT),
  ...Object.entries(CALLS).map(callsOf),
  script('periodScore', 'Score at the end of a period', PERIOD_SCORE),
  script('periodScore', 'Score at the end of a set', SET_SCORE, { sport: 'volleyball' }),
  script('periodScore', 'Winner of a bout and team score', MEET_SCORE, { sport: 'wrestling' }),
  script('periodScore', 'Score after an inning', INNING_SCORE, { sport: 'baseball' }),
  script('periodScore', 'Score after an inning', INNING_SCORE, { sport: 'softball' }),
  script('mustCarryHalftime', 'The association’s words at halftime', '[[The words of the association or the conference go here, exactly as they were sent. Turn this script on when they stand here.]]', { isOn: false }),
  script('halftime', 'Halftime', HALFTIME),
  script('halftime', 'Halftime with warm-up', FOOTBALL_HALFTIME, { sport: 'football' }),
  script('recognition', 'Recognition at halftime', RECOGNITION, { isOn: false }),
  script('honours', 'Senior night, opening', SENIORS, { key: 'honours-seniors', variant: 'seniors' }),
  script('honours', 'Honors, opening', HONOURS, { key: 'honours-honours', variant: 'honours', place: 2 }),
  script('floorSafety', 'Stay off the playing area', FLOOR_SAFETY),
  script('concession', 'Concession stand', CONCESSION),
  script('betweenGames', 'Between games', BETWEEN_GAMES),
  script('postgame', 'Final score and good night', POSTGAME),
];
