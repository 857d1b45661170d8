import { NOTICE_SCRIPTS } from '../../packet/default-scripts-notices.ts';
import type { Cue } from '../../packet/packet.ts';
import type { Moment } from '../../packet/script.ts';
import type { Segment } from '../../packet/segment.ts';
import { direction, segmentsOf } from '../../packet/segment.ts';
import { voiceAt } from '../../packet/voice.ts';
import type { HoldSituation, HoldText, RequestScript } from './bundle.ts';
import { HOLD_SITUATIONS } from './bundle.ts';
import type { RequestKind } from './requests/request.ts';

const TITLES: Readonly<Record<HoldSituation, string>> = {
  injury: 'Injury', medical: 'A doctor is needed', weather: 'Weather', evacuation: 'Evacuation', threat: 'Threat', delay: 'Delay', silence: 'Silence',
};

const SILENCE = [direction('Microphone off, music off. Nothing is read until the hold is ended.')];
const NOTHING_APPROVED = [direction('The department has no text for this. Say nothing and call the administrator on duty.')];

/**
 * The texts of a hold, situation by situation, as the packet has them. A situation without a text says so instead of
 * being missing: the hold itself must be there.
 */
export function holdTextsOf(cues: readonly Cue[]): HoldText[] {
  return HOLD_SITUATIONS.flatMap((situation): HoldText[] => {
    if (situation === 'silence') return [{ situation, title: TITLES.silence, segments: SILENCE }];
    const own = cues.filter((cue) => cue.moment === situation && cue.gameId === null);
    if (own.length === 0) return [{ situation, title: TITLES[situation], segments: NOTHING_APPROVED }];
    return own.map((cue) => ({ situation, title: cue.title, segments: inBothLanguages(cue) }));
  });
}

const REQUEST_MOMENTS: readonly (readonly [moment: Moment, kind: RequestKind, isTableOnly: boolean])[] = [
  ['vehicleNotice', 'vehicle', false],
  ['fundraiser', 'fundraiser', false],
  ['club', 'fundraiser', false],
  ['camp', 'fundraiser', false],
  ['lostChild', 'lostChild', true],
  ['foundItem', 'foundItem', true],
  ['medical', 'medical', true],
];

/**
 * The scripts that requests are read with. A notice that is switched off in the library is left out of the packet, not
 * off the table: it stands here in the words of the house.
 *
 * @param wordsPerMinute of whoever reads
 */
export function requestScriptsOf(cues: readonly Cue[], wordsPerMinute: number): RequestScript[] {
  const voice = voiceAt(wordsPerMinute);
  return REQUEST_MOMENTS.flatMap(([moment, kind, isTableOnly]): RequestScript[] => {
    const own = cues.filter((cue) => cue.moment === moment && cue.gameId === null);
    if (own.length > 0) return own.map((cue) => ({ kind, title: cue.title, isTableOnly, segments: inBothLanguages(cue) }));
    return NOTICE_SCRIPTS.filter((script) => script.moment === moment).map(({ title, text }) => ({ kind, title, isTableOnly, segments: segmentsOf(text, voice) }));
  });
}

const LANGUAGES = { en: 'English', es: 'Spanish' } as const;

function inBothLanguages({ segments, second }: Cue): readonly Segment[] {
  return second === null ? segments : [...segments, direction(`In ${LANGUAGES[second.language]}`), ...second.segments];
}
