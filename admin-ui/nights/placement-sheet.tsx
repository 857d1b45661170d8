import { Alert } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { windowName } from '../seasons/sports.ts';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { gameOfNight } from './game-words.ts';
import { LockButton } from './lock-button.tsx';
import { PlaceButton } from './place-button.tsx';
import { UnplaceButton } from './unplace-button.tsx';
import type { Night, NightLock, Placement } from './types.ts';

type Answer = Placement[] | { data: Placement[] };
const listOf = (answer: Answer): Placement[] => (Array.isArray(answer) ? answer : answer.data);

function LockNote({ lock }: { lock: NightLock }) {
  const why = lock.why === 'issued' ? 'its packet is issued' : (lock.note ?? 'somebody locked it by hand');
  return <Alert severity="info" icon={false} sx={{ mb: 2 }}>This night is locked ({why}): planning the season leaves it as it is. A read can still be placed or taken out here, by hand.</Alert>;
}

/** Which sponsor reads are planned into which window of which game. */
export function PlacementSheet({ night }: { night: Night }) {
  const asked = useServer<Answer>(`/nights/${night.id}/placements`);
  const lock = useServer<NightLock>(`/nights/${night.id}/lock`).data;
  const may = iMay('placements', 'edit') && night.state === 'open';
  const gameOf = (one: Placement) => {
    const game = night.games.find(({ id }) => id === one.gameId);
    return game ? gameOfNight(game) : (one.gameLabel ?? '–');
  };
  return (
    <Section title="Planned reads" actions={may && <><PlaceButton night={night} />{lock && <LockButton lock={lock} />}</>}>
      {lock?.isLocked && night.state === 'open' && <LockNote lock={lock} />}
      <Reading of={asked}>
        {(answer) =>
          listOf(answer).length === 0 ? (
            <EmptyList>No sponsor is planned into this night. Open the season and press “Plan the season”, or place one read by hand.</EmptyList>
          ) : (
            <Rows<Placement>
              label="Planned reads"
              rows={listOf(answer)}
              columns={[
                { label: 'Sponsor', show: (one) => <Go resource="contracts" id={one.contractId ?? null}>{one.sponsorName}</Go> },
                { label: 'Read', show: (one) => one.readKindName },
                { label: 'Game', show: (one) => gameOf(one) },
                { label: 'Window', show: (one) => windowName(one.windowKey) },
                { label: 'Place', numeric: true, show: (one) => one.place },
                ...(may ? [{ label: 'Change', show: (one: Placement) => <UnplaceButton placement={one} /> }] : []),
              ]}
            />
          )
        }
      </Reading>
    </Section>
  );
}
