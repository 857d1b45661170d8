import { dayText } from '../format/day.ts';
import { clockText } from '../format/instant.ts';
import { Facts } from '../show/facts.tsx';
import { PageTabs } from '../show/page-tabs.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { iMay } from '../session/rights.ts';
import { Go } from '../fields/go.tsx';
import { ANTHEM_FORM_WORDS, FLAG_FORM_WORDS, wordFor } from '../words/choices.ts';
import { gameOfNight } from './game-words.ts';
import { HonoursSheet } from './honours/honours-sheet.tsx';
import { LogSheet } from './log/log-sheet.tsx';
import { PacketSheet } from './packet/packet-sheet.tsx';
import { PacketState } from './packet-state.tsx';
import { PeopleSheet } from './people-sheet.tsx';
import { PlacementSheet } from './placement-sheet.tsx';
import { TableSheet } from './table/table-sheet.tsx';
import { RequestsSheet } from './requests/requests-sheet.tsx';
import { TidySheet } from './tidy/tidy-sheet.tsx';
import type { Night } from './types.ts';

function Head({ night }: { night: Night }) {
  return (
    <Section title={dayText(night.heldOn, 'long')}>
      <Facts
        facts={[
          ['Where', [night.venueName, night.floorName].filter(Boolean).join(', ')],
          ['Doors', night.doorsAt && clockText(night.doorsAt)],
          ['Games', night.games.map((game) => <div key={game.id}><Go resource="games" id={game.id}>{gameOfNight(game)}</Go>, {game.startsAtShown || 'no hour yet'}</div>)],
          ['Anthem', [night.anthemForm && wordFor(ANTHEM_FORM_WORDS, night.anthemForm), night.flagForm && wordFor(FLAG_FORM_WORDS, night.flagForm).toLowerCase()].filter(Boolean).join(', ')],
          ['Halftime', night.halftimeSeconds && `${night.halftimeSeconds / 60} minutes`],
          ['Packet', <PacketState key="packet" night={night} />],
          ['Note', night.note],
        ]}
      />
    </Section>
  );
}

function sheetsOf(night: Night) {
  return [
    { key: 'packet', label: 'Packet', content: () => <PacketSheet night={night} />, open: iMay('packets', 'show') },
    { key: 'placements', label: 'Planned reads', content: () => <PlacementSheet night={night} />, open: iMay('placements', 'show') },
    { key: 'honours', label: 'Honors', content: () => <HonoursSheet night={night} />, open: iMay('rosters', 'show') },
    { key: 'people', label: 'People', content: () => <PeopleSheet night={night} />, open: true },
    { key: 'table', label: 'Table', content: () => <TableSheet night={night} />, open: iMay('log', 'show') || iMay('links', 'list') },
    { key: 'requests', label: 'Requests', content: () => <RequestsSheet night={night} />, open: iMay('log', 'show') },
    { key: 'log', label: 'Log', content: () => <LogSheet night={night} />, open: iMay('log', 'show') },
    { key: 'tidy', label: 'Tidy up', content: () => <TidySheet night={night} />, open: iMay('sign-off', 'show') },
  ].filter((sheet) => sheet.open);
}

export const NightShow = () => (
  <ShowPage<Night> title={(night) => night.title} canEdit={(night) => night.state === 'open'}>
    {(night) => (
      <>
        <Head night={night} />
        <PageTabs label="Parts of the night" sheets={sheetsOf(night)} />
      </>
    )}
  </ShowPage>
);
