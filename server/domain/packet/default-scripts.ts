import type { Moment, Script } from './script.ts';

function script(moment: Moment, title: string, text: string, extra: Partial<Script> = {}): Script {
  return { key: moment, moment, title, language: 'en', text: text.trim(), isOn: true, place: 1, ...extra };
}

/** The first verse as it was published in 1814; kept for the night when the singer freezes or the recording fails. */
export const ANTHEM_FIRST_VERSE = `
O say can you see, by the dawn's early light,
What so proudly we hailed at the twilight's last gleaming,
Whose broad stripes and bright stars, through the perilous fight,
O'er the ramparts we watched, were so gallantly streaming?
And the rockets' red glare, the bombs bursting in air,
Gave proof through the night that our flag was still there;
O say does that star-spangled banner yet wave
O'er the land of the free and the home of the brave?`.trim();

const WELCOME = `
[[Music down. Wait until the floor is clear for the opening.]]
Good evening, everyone, and welcome to {{ venue }}, home of the {{ homeSchool }} {{ homeNickname }}.

{% if gameCount > 1 %}There are {{ gameCount }} games on tonight's program. {% endif %}Tonight the {{ homeNickname }} play host to the {{ visitorNickname }} of {{ visitorSchool }}.
[[pause 3]]
Thank you for coming. Have a look around for the exit nearest to your seat, and enjoy the game.`;

const CONDUCT = `
These students have worked hard to be here. Cheer for your own, be fair to the others, and leave the calls to the officials.

Please keep noisemakers at home and the aisles clear. There is no tobacco, vaping, alcohol or drug use anywhere on school grounds.`;

const PRAYER = `
[[Read only where the district's counsel has agreed to it.]]
Please stand, if you wish, for a moment of quiet reflection.
[[pause 20]]
Thank you.`;

const ANTHEM_PLAYED = `
[[The flag is in place or the colors are being presented. Not before.]]
Please rise, take off your hats, and face the flag for our national anthem.
[[Play the recording. Hand on the fader; the words are on the next page if it fails.]]
[[wait for applause]]
Thank you. Please be seated.`;

const ANTHEM_SUNG = `
[[The flag is in place or the colors are being presented. Not before.]]
Please rise, take off your hats, and face the flag. Our national anthem is sung tonight by {% if singer %}{{ singer }}{% else %}our guest{% endif %}.
[[Hand over the microphone. The words are on the next page if the singer needs them.]]
[[wait for applause]]
{% if singer %}Thank you, {{ singer }}. {% else %}Thank you. {% endif %}Please be seated.`;

const PRESENTATION = `
[[Wait until the {{ presents }} and the presenter are at center floor.]]
Tonight's {{ presents }} comes from {{ sponsor }}.{% if presenter %} To present it, please welcome {{ presenter }}.{% endif %}
[[wait for applause]]
{{ copy }}`;

const PERIOD_SCORE = `
[[At the end of every period, once the ball is dead: the visitors first, then home. The official scorer's count is the count.]]
At the end of the ________ it is {{ visitorShortName }}\u00a0____, {{ homeShortName }}\u00a0____.`;

const HALFTIME = `
That brings us to halftime. It is {{ visitorShortName }}\u00a0____, {{ homeShortName }}\u00a0____.
[[pause 3]]
Both teams will be back on the floor when the clock has run down.`;

const FLOOR_SAFETY = `
For everyone's safety, please stay off the playing floor at the break, with food and drink in the stands. Leave the ends of the floor open for the teams.`;

const CONCESSION = `
The concession stand in the lobby is open through the second half. What you spend there goes to the teams you came to see.`;

const BETWEEN_GAMES = `
That is the final of our {{ level }} game. Thank you to both teams and to the officials.
[[wait for applause]]
{% if laterGame %}Please stay with us: {{ laterGame }} is next.{% endif %}`;

const POSTGAME = `
[[Horn. Wait for the handshake line.]]
The final score tonight: {{ visitorShortName }}\u00a0____, {{ homeShortName }}\u00a0____.

A hand for both teams, please.
[[wait for applause]]
Thank you to the officials, to everyone at the table, and to {{ visitorSchool }} for the visit.
{% if nextGame %}
The {{ homeNickname }} play next on {{ nextGame.dayText }} at {{ nextGame.clockText }}, {% if nextGame.isHome %}right here against {{ nextGame.opponentName }}{% else %}on the road at {{ nextGame.opponentName }}{% endif %}.{% if nextHomeGame and nextGame.isHome == false %} The next home game is {{ nextHomeGame.dayText }} at {{ nextHomeGame.clockText }} against {{ nextHomeGame.opponentName }}.{% endif %}
{% endif %}
Good night, and drive home safely.`;

const VEHICLE = `
[[Read the plate character by character, then the whole notice once again.]]
Attention, please. Would the owner of a ____________ (color and make), parked at ____________ (where), license plate __ __ __ __ __ __ __, please go to it now: ______________________ (what is wrong).`;

/**
 * The library a new department starts with. The emergency scripts read the venue's own words; where
 * the venue has none, they say the least that is safe to say.
 */
export const DEFAULT_SCRIPTS: readonly Script[] = [
  script('welcome', 'Welcome', WELCOME),
  script('conduct', 'Conduct', CONDUCT),
  script('prayer', 'Opening prayer', PRAYER, { isOn: false }),
  script('anthem', 'Colors and anthem, played', ANTHEM_PLAYED, { key: 'anthem-played' }),
  script('anthem', 'Colors and anthem, sung', ANTHEM_SUNG, { key: 'anthem-sung' }),
  script('sponsorPresentation', 'Presentation', PRESENTATION),
  script('lineUpVisitors', 'Visiting line-up', '[[Level voice.]]\nAnd now the starting line-up for the visiting {{ visitorSchool }} {{ visitorNickname }}.\n[[pause 3]]'),
  script('lineUpHome', 'Home line-up', "[[With energy.]]\nAnd now the starting line-up for your {{ homeSchool }} {{ homeNickname }}!\n[[pause 3]]"),
  script('periodScore', 'Score at the end of a period', PERIOD_SCORE),
  script('halftime', 'Halftime', HALFTIME),
  script('floorSafety', 'Stay off the floor', FLOOR_SAFETY),
  script('concession', 'Concession stand', CONCESSION),
  script('betweenGames', 'Between games', BETWEEN_GAMES),
  script('postgame', 'Final score and good night', POSTGAME),
  script('vehicleNotice', 'Vehicle notice', VEHICLE),
  script('injury', 'Injury', '{% if injuryText %}{{ injuryText }}{% else %}[[Say nothing while a player is down. No music, no reads.]]{% endif %}'),
  script('weather', 'Weather delay', '{% if weatherText %}{{ weatherText }}{% else %}Play is stopped because of the weather. Please move indoors now and stay there. We will tell you when it is safe to go back out.{% endif %}\n[[Lightning: play restarts thirty minutes after the last thunder or flash.]]'),
  script('evacuation', 'Evacuation', '{% if evacuationText %}{{ evacuationText }}{% else %}Please leave the building now by the nearest exit. Walk, do not run, and leave your things behind.{% endif %}{% if exitsText %}\n\n{{ exitsText }}{% endif %}'),
  script('threat', 'Threat', '{% if threatText %}{{ threatText }}{% else %}[[The district has given no wording. Call the administrator on duty; say nothing.]]{% endif %}'),
];
