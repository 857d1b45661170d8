import { script } from './default-script.ts';
import type { DefaultScript } from './default-script.ts';

const MEDICAL = `
[[Never from the public form: only when an administrator or the athletic trainer asks for it. All music and sponsor reads stop.]]
Your attention, please. Would a doctor, nurse or paramedic please come to the scorer's table.
[[say no name, no place in the stands and no reason]]{% if defibrillatorPlace %}
[[The defibrillator: {{ defibrillatorPlace }}.]]{% endif %}`;

const DELAY = `
[[Read when the officials or the administrator have decided, and again whenever the time changes.]]
Your attention, please. The game is delayed. We expect to go on at ________ (time). We will tell you as soon as we know more. Thank you for your patience.`;

const INJURY = `{% if injuryText %}{{ injuryText }}{% else %}[[Say nothing while a player is down. No music, no reads, no name.]]{% endif %}`;

// Thirty minutes after the last thunder or flash: common practice in schools, no source named.
const WEATHER = `
{% if weatherText %}{{ weatherText }}{% else %}Play is stopped because of the weather. Please move indoors now and stay there. We will tell you when it is safe to go back out.{% endif %}
[[Lightning: play restarts thirty minutes after the last thunder or flash; each new one starts the thirty minutes again.]]`;

const EVACUATION = `
{% if evacuationText %}{{ evacuationText }}{% else %}Please leave the building now by the nearest exit. Walk, do not run, and leave your things behind. Stay outside until you are told that it is safe.{% endif %}{% if exitsText %}

{{ exitsText }}{% endif %}
[[read it again until the building is empty or you have to leave yourself]]`;

const THREAT = `{% if threatText %}{{ threatText }}{% else %}[[The district has given no wording. Call the administrator on duty; say nothing.]]{% endif %}`;

/** Read instead of everything else; the venue's and the district's own words come first. */
export const EMERGENCY_SCRIPTS: readonly DefaultScript[] = [
  script('medical', 'A doctor is needed', MEDICAL),
  script('delay', 'The game is delayed', DELAY),
  script('injury', 'Injury', INJURY),
  script('weather', 'Weather delay', WEATHER),
  script('evacuation', 'Evacuation', EVACUATION),
  script('threat', 'Threat', THREAT),
];
