import { SPANISH_EXAMPLES } from '../server/domain/packet/default-scripts-spanish.ts';
import type { HonouredStudentDto } from '../server/packet/honours-list.dto.ts';
import { HonoursLists } from '../server/packet/honours-list.service.ts';
import { ScriptService } from '../server/packet/script.service.ts';
import { ScriptVersions } from '../server/packet/script-versions.service.ts';
import { PlayerService } from '../server/season/player.service.ts';
import type { Games } from './schedule.ts';
import type { Story } from './story.ts';

// Everyone is invented. Those on a roster are found there by name.
const SENIORS: readonly HonouredStudentDto[] = [
  { name: 'Siobhán Kellaway', escorts: 'her parents, Maeve and Dermot', line: 'Three years with the varsity, captain this season.' },
  { name: 'Thuý Nguyễn', escorts: 'her mother, Lan, and her brother Minh', line: 'Forward, and first chair of the cello section.' },
  { name: 'Marguerite Foss', escorts: 'her grandmother, Odile' },
  { name: 'Paloma Whitlock', escorts: 'her parents and her sister Ines', line: 'Guard, and editor of the yearbook.' },
  { name: 'Emeka Okonkwo', escorts: 'his parents, Ngozi and Chidi', line: 'Captain, all-conference last season.' },
  { name: 'Łukasz Wierzba', escorts: 'his father, Marek', line: 'Guard, and sings in the chamber choir.' },
  { name: 'Bramwell Achterberg', escorts: 'his parents and both grandfathers' },
  { name: 'Corwin Ashgrove', escorts: 'his aunt, Lettice', line: 'Guard, and builds the sets of the spring musical.' },
  { name: 'Quentin Sallow', escorts: 'his mother, Roberta' },
  { name: 'Araminta Voss-Delgado', sayAs: 'air-uh-MIN-tuh VOSS del-GAH-doh', escorts: 'her parents', line: 'Keeps the book for both varsity teams.' },
  { name: 'Cedric Balogun', sayAs: 'SED-rik bah-loh-GOON', escorts: 'his brother Tunde', line: 'Student trainer for four years.' },
  { name: 'Leocadia Strand', escorts: 'her family' },
  { name: 'Ruben Ixchel', sayAs: 'roo-BEN ish-CHEL', escorts: 'his parents, Marisol and Tomás', line: 'Runs the clock at every JV game.' },
  { name: 'Harriet Plume', escorts: 'her father, Silvan', line: 'Pep band, trumpet.' },
];

/** Spanish beside the English where it is an example, the welcome approved, and the seniors of the last home night. */
export async function tellScripts(story: Story, games: Games): Promise<void> {
  await story.on(story.calendar.seasonStartsOn, async () => {
    const scripts = story.of(ScriptService);
    for (const script of (await scripts.list({ perPage: 500 })).data) {
      const secondText = script.cameAs === null ? undefined : SPANISH_EXAMPLES[script.cameAs];
      if (!secondText) continue;
      const changed = await scripts.change(script.id, script.version, { secondLanguage: 'es', secondText });
      if (script.moment !== 'welcome') continue;
      await story.of(ScriptVersions).approve(script.id, { approvedByName: 'Marisol Ferreira, principal', approvedOn: story.calendar.seasonStartsOn, wordsNumber: changed.wordsNumber });
    }
    const lists = story.of(HonoursLists);
    const list = await lists.add(games['seniors-boys']!.nightId, { title: 'Senior night', kind: 'seniors', windowKind: 'pregame', secondsEach: 20 }, ['director']);
    const { students } = await lists.put(list.id, list.version, SENIORS, null, ['director']);
    const reserved = students.find(({ name }) => name === 'Leocadia Strand')!;
    await story.of(PlayerService).change(reserved.playerId, 1, { announce: 'numberOnly' }, ['director']);
  });
}
