import { happeningButtons } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import type { HappeningButton } from '../../../server/domain/night/desk/reading/mention-queue.ts';
import { useDesk } from '../desk.ts';
import { useTable } from '../game/use-table.ts';
import { keyName, useKey } from '../keys.ts';
import type { Logging } from './logging.ts';
import type { Reading } from './reading.ts';
import { ShooterNumber } from './shooter-number.tsx';
import { capital } from './words.ts';

const KEYS = ['u', 'U', 'B', 'J'];

function titleOf({ gameId, occurrence }: HappeningButton, { bundle }: Reading): string {
  return capital(`${occurrence}${bundle.games.length > 1 ? `, ${bundle.games.find((game) => game.gameId === gameId)?.level ?? ''}` : ''}`);
}

function OneButton({ button, keyOf, title, isOpen, toggle }: { button: HappeningButton; keyOf: string | null; title: string; isOpen: boolean; toggle: () => void }) {
  useKey(keyOf, title, toggle);
  return (
    <button type="button" className="desk-button desk-now-happening" aria-pressed={isOpen} onClick={toggle}>
      <b>{title}</b> {keyOf && <kbd>{keyName(keyOf)}</kbd>}
      <span>{button.mentions.map(({ sponsorName }) => sponsorName).join(', ')}</span>
    </button>
  );
}

interface Props {
  reading: Reading;
  open: HappeningButton | null;
  setOpen: (button: HappeningButton | null) => void;
}

/** A button for each kind of happening a sponsor waits for. */
export function HappeningButtons({ reading, open, setOpen }: Props) {
  const buttons = happeningButtons(reading.bundle.mentions);
  if (buttons.length === 0) return null;
  const isOpen = (one: HappeningButton): boolean => open?.gameId === one.gameId && open.happening === one.happening;
  return (
    <section className="desk-now-row" aria-label="When it happens">
      {buttons.map((one, place) => (
        <OneButton key={`${one.gameId} ${one.happening}`} button={one} keyOf={KEYS[place] ?? null} title={titleOf(one, reading)} isOpen={isOpen(one)} toggle={() => setOpen(isOpen(one) ? null : one)} />
      ))}
    </section>
  );
}

/** Whose it was, and the number where somebody saw it: stands where the words stand, so no button moves. */
export function Shooter({ reading, logging, open, close }: { reading: Reading; logging: Logging; open: HappeningButton; close: () => void }) {
  const table = useTable();
  const { way } = useDesk();
  const planned = reading.bundle.games.find(({ gameId }) => gameId === open.gameId);
  if (!planned) return null;
  const isAtTable = table?.game.gameId === open.gameId;
  const game = isAtTable ? { ...planned, visitors: table.visitors, home: table.home } : planned;
  // Whoever logs only reads says no period: the one of the table would stay the first all night.
  const place = () => (isAtTable && way !== 'reads' ? table.place() : {});
  const title = titleOf(open, reading);
  return (
    <ShooterNumber
      game={game} title={title} close={close}
      pick={(teamId, playerNumber) => {
        const said = `${title}${playerNumber === null ? '' : ` by number ${playerNumber}`} logged.`;
        const entry = { ...place(), kind: 'happening', gameId: open.gameId, teamId, playerNumber, detail: { happening: open.happening } } as const;
        void logging.log('happening', said, entry).then((isStored) => isStored && close());
      }}
    />
  );
}
