import { script } from './default-script.ts';
import type { DefaultScript } from './default-script.ts';

const WELCOME = `
[[music down; wait until the {{ playingArea }} is clear for the opening]]
{{ greeting }}, everyone, and welcome to {{ venue }}, home of the {{ homeSchool }} {{ homeNickname }}.

{% if gameCount > 1 %}There are {{ gameCount }} games on the program. {% endif %}The {{ homeNickname }} play host to the {{ visitorNickname }} of {{ visitorSchool }}.
[[pause 3]]
Thank you for coming. Please look around for the exit nearest to your seat, and enjoy the game.`;

const CONDUCT = `
These students have worked hard to be here. Cheer for your own, be fair to the others, and leave the calls to the officials.

Please keep noisemakers at home and the aisles clear.`;

const SUBSTANCES = `
This is a school. There is no smoking, vaping, tobacco, alcohol or drug use in the building, in the stands or anywhere on the grounds.`;

const SEATING = `
Seats without stairs, help with hearing, and these announcements in writing are there for anyone who needs them. Please ask at the ticket table, or wave to any usher.`;

const MUST_CARRY = `
[[The words of the association or the conference go here, exactly as they were sent. They are read and owe nobody anything. Turn this script on when they stand here.]]`;

const PRAYER = `
[[read only where the district's counsel has agreed to it]]
Please stand, if you wish, for a moment of quiet reflection.
[[pause 20]]
Thank you.`;

const COLORS = `
[[The color guard is in place before you begin. No sponsor is named next to the flag or the anthem.]]
Please rise, if you are able, and take off your hats, as {% if colourGuard %}{{ colourGuard }} presents{% else %}the color guard presents{% endif %} the colors.
[[the colors come in, about 40 seconds]]`;

const IN_PLACE = `
[[The flag is in place and lit; where no flag is displayed, everyone faces the music. No sponsor is named next to the flag or the anthem.]]
Please rise, if you are able, take off your hats, and face the flag, with the right hand over the heart.`;

const SUNG = `
Our national anthem is sung {{ tonight }} by {% if singer %}{{ singer }}{% else %}our guest{% endif %}.
[[hand over the microphone to {% if singer %}{{ singer }}{% else %}the singer{% endif %}; the words are on the next page if they are needed]]
[[the anthem, about 110 seconds]]
[[wait for applause]]
{% if singer %}Thank you, {{ singer }}.{% else %}Thank you to our singer.{% endif %}`;

const PLAYED = `
Our national anthem.
[[Play the recording. One hand stays on the fader; the words are on the next page if it fails.]]
[[the recording, about 90 seconds]]
[[wait for applause]]`;

const FACE = `
[[wait until the colors are presented; not before]]
Please face the flag, with the right hand over the heart.`;

const COLORS_OUT = `
[[the color guard leaves, about 25 seconds]]
Thank you{% if colourGuard %} to {{ colourGuard }}{% else %} to our color guard{% endif %}. Please be seated.`;

const anthem = (key: string, variant: string, title: string, parts: readonly string[]): DefaultScript =>
  script('anthem', title, parts.map((part) => part.trim()).join('\n'), { key, variant });

const PRESENTATION = `
[[wait until the {{ presents }} and the presenter are at the center of the {{ playingArea }}]]
The {{ presents }} {{ tonight }} comes from {{ sponsor }}.{% if presenter %} Here to present it: {{ presenter }}.{% endif %}{% if honouree %} It goes to {{ honouree }}.{% endif %}
[[wait for applause]]
{{ copy }}`;

const OFFICIALS = `
The officials for this game: {% if officials %}{{ officials }}{% else %}[[read the names from the officials' card]]{% endif %}.
[[pause 2]]
Thank you for being here. Without officials there is no game.`;

const opening = (team: string): string => `And now the ${team}.\n[[pause 3]]`;

const VISITORS = `[[Level voice.]]\nAnd now the starting line-up for the visiting {{ visitorSchool }} {{ visitorNickname }}.\n[[pause 3]]`;
const HOME = `[[With energy.]]\nAnd now the starting line-up for your {{ homeSchool }} {{ homeNickname }}!\n[[pause 3]]`;
const VISITING = 'visiting {{ visitorSchool }} {{ visitorNickname }}';
const OURS = '{{ homeSchool }} {{ homeNickname }}';

const LINE_UPS: readonly DefaultScript[] = [
  script('lineUpVisitors', 'Visiting line-up', VISITORS),
  script('lineUpHome', 'Home line-up', HOME),
  script('lineUpVisitors', 'Visiting wrestlers', `[[level voice; both teams are at their benches]]\n${opening(`wrestlers of the ${VISITING}, by weight class`)}`, { sport: 'wrestling' }),
  script('lineUpHome', 'Home wrestlers', `[[With energy.]]\n${opening(`wrestlers of your ${OURS}, by weight class`)}`, { sport: 'wrestling' }),
  ...(['baseball', 'softball'] as const).flatMap((sport) => [
    script('lineUpVisitors', 'Visiting batting order', `[[level voice; the teams are on the foul lines]]\n${opening(`batting order for the ${VISITING}`)}`, { sport }),
    script('lineUpHome', 'Home batting order', `[[With energy.]]\n${opening(`batting order for your ${OURS}`)}`, { sport }),
  ]),
];

/** What is said before the game begins. */
export const OPENING_SCRIPTS: readonly DefaultScript[] = [
  script('welcome', 'Welcome', WELCOME),
  script('conduct', 'Conduct', CONDUCT),
  script('substances', 'No tobacco, alcohol or drugs', SUBSTANCES),
  script('seating', 'Seating, hearing and captions', SEATING),
  script('mustCarryPregame', 'The association’s words before the game', MUST_CARRY, { isOn: false }),
  script('prayer', 'Opening prayer', PRAYER, { isOn: false }),
  anthem('anthem-sung-color-guard', 'sungColourGuard', 'Colors and anthem: sung, with a color guard', [COLORS, FACE, SUNG, COLORS_OUT]),
  anthem('anthem-sung-flag-in-place', 'sungFlagInPlace', 'Anthem: sung, the flag in place', [IN_PLACE, SUNG, 'Please be seated.']),
  anthem('anthem-played-color-guard', 'playedColourGuard', 'Colors and anthem: played, with a color guard', [COLORS, FACE, PLAYED, COLORS_OUT]),
  anthem('anthem-played-flag-in-place', 'playedFlagInPlace', 'Anthem: played, the flag in place', [IN_PLACE, PLAYED, 'Thank you. Please be seated.']),
  script('sponsorPresentation', 'Presentation', PRESENTATION),
  script('officials', 'Officials', OFFICIALS),
  ...LINE_UPS,
];
