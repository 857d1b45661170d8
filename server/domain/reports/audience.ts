import { HEARD } from './statement-content.ts';
import type { StatementNight } from './statement-content.ts';

/** How many times the sponsor's words met somebody in the gym, as far as attendance is known. An estimate. */
export interface Audience {
  /** over the reads that were heard: the attendance of their night, added up */
  contacts: number;
  /** nights with a read that was heard and a known attendance, and the reads heard there */
  nights: number;
  reads: number;
  /** nights with a read that was heard whose attendance nobody recorded, and the reads heard there */
  nightsWithout: number;
  readsWithout: number;
}

/** Reads of a night that were heard: given, extra and makegoods. */
export function readsHeard({ reads }: Pick<StatementNight, 'reads'>): number {
  return reads.filter(({ outcome }) => HEARD.includes(outcome)).length;
}

/** Counts each read heard once for each person who came that night; nobody knows who was in the seat. Common practice, no source. */
export function audienceOf(nights: readonly Pick<StatementNight, 'attendance' | 'reads'>[]): Audience {
  const audience: Audience = { contacts: 0, nights: 0, reads: 0, nightsWithout: 0, readsWithout: 0 };
  for (const night of nights) {
    const heard = readsHeard(night);
    if (heard === 0) continue;
    if (night.attendance === null) {
      audience.nightsWithout += 1;
      audience.readsWithout += heard;
    } else {
      audience.nights += 1;
      audience.reads += heard;
      audience.contacts += heard * night.attendance;
    }
  }
  return audience;
}

const counted = (count: number, one: string): string => `${count.toLocaleString('en-US')} ${one}${count === 1 ? '' : 's'}`;

/** How the estimate was reckoned and what it leaves out, for the sponsor to read. */
export function audienceWords({ contacts, nights, reads, nightsWithout, readsWithout }: Audience): string[] {
  const left = nightsWithout === 0 ? [] : [`For ${counted(nightsWithout, 'night')} with ${counted(readsWithout, 'read')} no attendance was recorded; nothing is counted for ${nightsWithout === 1 ? 'it' : 'them'}.`];
  if (nights === 0) return nightsWithout === 0 ? ['No read was given yet, so there is nothing to estimate.'] : left;
  return [
    `An estimate: ${counted(contacts, 'audience contact')}. Each of ${counted(reads, 'read')} given on ${counted(nights, 'night')} counts once for everybody who came that night, makegoods and extra reads too. It does not say how many different people heard them.`,
    ...left,
  ];
}
