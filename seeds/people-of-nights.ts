import { instantAt } from '../server/domain/instant.ts';
import { PacketIssueService } from '../server/packet/packet-issue.service.ts';
import { NightService } from '../server/season/night.service.ts';
import type { PersonOfNightDto } from '../server/season/night.dto.ts';
import type { Games } from './schedule.ts';
import type { Story } from './story.ts';

const CREW: readonly PersonOfNightDto[] = [
  { role: 'announcer', name: 'Casimir Thornquist', sayAs: 'KAZ-uh-meer THORN-kwist' },
  { role: 'spotter', name: 'Delia Marchbanks' },
  { role: 'scorer', name: 'Roland Petrakis', sayAs: 'ROH-lund peh-TRAH-kis', note: 'Keeps the official book' },
  { role: 'clock', name: 'Judith Amsel' },
  { role: 'presenter', name: 'Gus Pike', note: 'Juniper & Pike Hardware; hands over the game ball at center floor' },
];

/** For the nights on which the anthem is sung and the colors are presented. */
const ANTHEM: readonly PersonOfNightDto[] = [
  { role: 'colourGuard', name: 'the Tamarack Ridge color guard', note: 'At the west doors with the flags' },
  { role: 'singer', name: 'Xochitl Barros', sayAs: 'SO-cheel BAH-rohs', note: 'At the west doors; takes the second microphone' },
];

/** Who is at the table. The second night to come has nobody to announce yet, which its packet says. */
export async function tellPeople(story: Story, games: Games): Promise<void> {
  const keys = ['night1', 'night2', 'night3', 'night4', 'night5', 'last', 'next', 'boiler', 'third', 'fourth'];
  await story.today(async () => {
    const announcer = story.visitor('announcer').personId;
    const crew = CREW.map((person) => (person.role === 'announcer' ? { ...person, personId: announcer } : person));
    for (const key of keys) await tellCrew(story, games[key]!, key === 'next' ? [...crew, ...ANTHEM] : crew);
    await tellCrew(story, games['seniors-boys']!, [...crew, ...ANTHEM]);
    await tellCrew(story, games['second']!, CREW.filter((person) => person.role !== 'announcer'));
    const seniors = await story.of(NightService).one(games['seniors-boys']!.nightId);
    await story.of(NightService).change(seniors.id, seniors.version, { title: 'Senior night', note: 'Seniors and their families are introduced between the games.' });
  });
}

async function tellCrew(story: Story, { nightId, line }: Games[string], people: readonly PersonOfNightDto[]): Promise<void> {
  const nights = story.of(NightService);
  const isDouble = line.after !== undefined;
  const night = await nights.one(nightId);
  const arrivesAt = instantAt(night.heldOn, isDouble ? '16:45' : '18:15', story.zone);
  const changed = await nights.change(nightId, night.version, { doorsAt: instantAt(night.heldOn, isDouble ? '16:30' : '18:00', story.zone) });
  await nights.putPeople(nightId, changed.version, people.map((person) => ({ ...person, arrivesAt })));
}

/** Prints a night's packet, so that it has a number. */
export async function issuePacket(story: Story, { nightId, day }: Games[string]): Promise<void> {
  const on = day < story.calendar.today ? day : story.calendar.today;
  await story.outside(on, () => story.of(PacketIssueService).issue(nightId));
}
