import { addDays } from '../server/domain/day.ts';
import { CopyService } from '../server/sponsorship/copy.service.ts';
import { SloganService } from '../server/sponsorship/slogan.service.ts';
import type { Market, ReadKindKey, SponsorKey } from './sponsors.ts';
import type { Story } from './story.ts';

interface Words {
  sponsor: SponsorKey;
  kind: ReadKindKey;
  title: string;
  text: string;
  fallback: string;
  approvedBy: string;
  /** the same message in Spanish */
  spanish?: string;
  rotates?: boolean;
}

const WORDS: readonly Words[] = [
  {
    ...{ sponsor: 'juniper', kind: 'gameBall', title: 'Game ball', approvedBy: 'Gus Pike' },
    text: 'Juniper & Pike Hardware, on Third Street in Tamarack Ridge, is a sponsor of every Kestrels varsity home game this season.',
    fallback: 'Juniper & Pike Hardware is a sponsor of the Kestrels.',
  },
  {
    ...{ sponsor: 'copperline', kind: 'bankShot', title: 'Off the glass', approvedBy: 'Nadia Ferreira-Holm' },
    text: 'Off the glass: bank shots at the Perch, with Copperline Credit Union.',
    fallback: 'With Copperline Credit Union.',
  },
  {
    ...{ sponsor: 'snowmelt', kind: 'concession', title: 'At the stand', approvedBy: 'Elspeth Moor' },
    text: 'The concession stand in the lobby is supported by Snowmelt Creamery, on Mill Lane. Proceeds from the stand go to Kestrels athletics.',
    fallback: 'The concession stand is supported by Snowmelt Creamery.',
  },
  {
    ...{ sponsor: 'halvorsen', kind: 'timeOut', title: 'Time-out', approvedBy: 'Dr. Signe Halvorsen' },
    text: 'Halvorsen Orthodontics, on Aspen Court, supports Kestrels athletics.',
    fallback: 'Halvorsen Orthodontics supports Kestrels athletics.',
    rotates: true,
  },
  {
    ...{ sponsor: 'halvorsen', kind: 'timeOut', title: 'Time-out, mouthguards', approvedBy: 'Dr. Signe Halvorsen' },
    text: 'The mouthguards of the junior teams were fitted by Halvorsen Orthodontics, on Aspen Court.',
    fallback: 'Halvorsen Orthodontics supports Kestrels athletics.',
    rotates: true,
  },
  {
    ...{ sponsor: 'pinyon', kind: 'quarter', title: 'Quarter break', approvedBy: 'Ruben Castellane' },
    text: "Tonight's programs were printed by Pinyon Print Works, on Depot Road, a sponsor of the Kestrels.",
    fallback: 'Pinyon Print Works is a sponsor of the Kestrels.',
  },
  {
    ...{ sponsor: 'mirabel', kind: 'timeOut', title: 'Time-out', approvedBy: 'Mirabel Otero-Lane' },
    text: "The Kestrel Boosters thank Mirabel's Kitchen, at one-oh-five Main Street, for supporting tonight's teams.",
    spanish: "Los Kestrel Boosters agradecen a Mirabel's Kitchen, en el ciento cinco de Main Street, su apoyo a los equipos de esta noche.",
    fallback: "The Kestrel Boosters thank Mirabel's Kitchen.",
  },
  {
    ...{ sponsor: 'lantern', kind: 'timeOut', title: 'Time-out', approvedBy: 'Hank Delacroix-Wynn' },
    text: 'Blue Lantern Tire, on Quarry Road: the friendliest tires on the ridge. A supporter of the Kestrel Boosters.',
    fallback: 'Blue Lantern Tire is a supporter of the Kestrel Boosters.',
  },
];

const OKAFOR: Words = {
  ...{ sponsor: 'okafor', kind: 'quarter', title: 'Quarter break', approvedBy: 'Chidi Okafor' },
  text: 'Okafor Family Insurance, on Ridge Road since 1991, is a sponsor of Kestrels basketball.',
  fallback: 'Okafor Family Insurance is a sponsor of Kestrels basketball.',
};

interface LongUsed {
  sponsor: SponsorKey;
  text: string;
  knownFrom: string;
}

const SLOGANS: readonly LongUsed[] = [
  { sponsor: 'lantern', text: 'The friendliest tires on the ridge', knownFrom: 'Painted over the shop door since 1996' },
  { sponsor: 'juniper', text: 'Better tools, better days', knownFrom: 'Letterhead and delivery trucks, since the founding' },
];

/** What the sponsor would like to have read; the copy check will not like it. */
const WISHED = 'Come see us at the half for the finest hot chocolate in the valley, one dollar off tonight, from Snowmelt Creamery.';

/**
 * Every sponsor's words, approved; Okafor's next version waits for its yes, while the present one has run out; Snowmelt's
 * next one waits too, marked by the copy check.
 */
export async function tellCopy(story: Story, market: Market): Promise<void> {
  const { seasonStartsOn, today } = story.calendar;
  const copyIds = new Map<string, string>();
  await story.on(seasonStartsOn, async () => {
    for (const { sponsor, ...slogan } of SLOGANS) await story.of(SloganService).add({ sponsorId: market.sponsors[sponsor], ...slogan });
    for (const words of WORDS) copyIds.set(words.title, await tellWords(story, market, words));
  });
  await story.today(async () => {
    const copyId = await tellWords(story, market, OKAFOR, addDays(today, -1));
    await story.of(CopyService).addVersion(copyId, {
      text: 'From the tip to the last horn, Okafor Family Insurance, on Ridge Road, is a sponsor of Kestrels basketball and of the senior class.',
      startsOn: today,
    });
    await story.of(CopyService).addVersion(copyIds.get('At the stand')!, { text: WISHED });
  });
}

async function tellWords(story: Story, market: Market, words: Words, endsOn: string | null = null): Promise<string> {
  const copies = story.of(CopyService);
  const { title, text, fallback: fallbackText, approvedBy, rotates = false, spanish: secondText = null } = words;
  const copy = await copies.add({ sponsorId: market.sponsors[words.sponsor], readKindId: market.kinds[words.kind].id, title, fallbackText, text, secondText, rotates, endsOn });
  await copies.approve(copy.id, copy.versions[0]!.id, { approvedByName: approvedBy, approvedOn: story.calendar.seasonStartsOn, note: 'By e-mail' });
  return copy.id;
}
