import type { NightForPacket, PersonForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';

export interface NeededRole {
  readonly role: string;
  readonly words: string;
}

const SINGER: NeededRole = { role: 'singer', words: 'Singer' };
const COLOUR_GUARD: NeededRole = { role: 'colourGuard', words: 'Color guard' };
const PRESENTER: NeededRole = { role: 'presenter', words: 'Presenter' };
const HONOUREE: NeededRole = { role: 'honouree', words: 'Honoree' };
const OFFICIALS: NeededRole = { role: 'official', words: 'Official' };

/** Which people of the night a cue cannot do without. */
export function rolesFor(cue: Pick<Cue, 'moment' | 'window'>, settings: NightForPacket['settings']): NeededRole[] {
  if (cue.moment === 'anthem' && cue.window !== null) {
    return [...(settings.flag === 'colourGuard' ? [COLOUR_GUARD] : []), ...(settings.anthem === 'sung' ? [SINGER] : [])];
  }
  if (cue.moment === 'sponsorPresentation') return [PRESENTER];
  if (cue.moment === 'recognition') return [HONOUREE];
  return cue.moment === 'officials' ? [OFFICIALS] : [];
}

function personText({ name, arrivesText, note }: PersonForPacket): string {
  const place = note ? ` (${note.replace(/[.\s]+$/, '')})` : '';
  return `${name}${place}${arrivesText === null ? '' : `, here by ${arrivesText}`}`;
}

/** Who must be where before a cue; null where nobody but the announcer is needed. */
export function whoText(cue: Pick<Cue, 'moment' | 'window'>, night: NightForPacket): string | null {
  const texts = rolesFor(cue, night.settings).map(({ role, words }) => {
    const people = night.people.filter((person) => person.role === role);
    return `${words}: ${people.length === 0 ? 'nobody is named yet' : people.map(personText).join('; ')}`;
  });
  return texts.length === 0 ? null : texts.join('. ');
}
