import { useState } from 'react';
import { happeningButtons } from '../../../server/domain/night/desk/mention-queue.ts';
import type { HappeningButton } from '../../../server/domain/night/desk/mention-queue.ts';
import { keyName, useKey } from '../keys.ts';
import type { Logging } from './logging.ts';
import type { Reading } from './reading.ts';
import { ShooterNumber } from './shooter-number.tsx';

const KEYS = ['b', 'd', 'j', 'k'];
const capital = (text: string): string => text.replace(/^./, (first) => first.toUpperCase());

function OneButton({ button, keyOf, title, isOpen, toggle }: { button: HappeningButton; keyOf: string | null; title: string; isOpen: boolean; toggle: () => void }) {
  useKey(keyOf, title, toggle);
  return (
    <button type="button" className="desk-button desk-now-happening" aria-expanded={isOpen} onClick={toggle}>
      <b>{title}</b> {keyOf && <kbd>{keyName(keyOf)}</kbd>}
      <span>{button.mentions.map(({ sponsorName }) => sponsorName).join(', ')}</span>
    </button>
  );
}

/** A button for each kind of happening a sponsor waits for; then whose it was, and the number where somebody saw it. */
export function HappeningButtons({ reading, logging }: { reading: Reading; logging: Logging }) {
  const { bundle } = reading;
  const [open, setOpen] = useState<HappeningButton | null>(null);
  const buttons = happeningButtons(bundle.mentions);
  if (buttons.length === 0) return null;
  const isOpen = (one: HappeningButton): boolean => open?.gameId === one.gameId && open.happening === one.happening;
  const titleOf = ({ gameId, occurrence }: HappeningButton): string =>
    `${capital(occurrence)}${bundle.games.length > 1 ? `, ${bundle.games.find((game) => game.gameId === gameId)?.level ?? ''}` : ''}`;
  const game = open && bundle.games.find(({ gameId }) => gameId === open.gameId);
  return (
    <section className="desk-now-happenings" aria-label="When it happens">
      <div className="desk-now-row">
        {buttons.map((one, place) => (
          <OneButton key={`${one.gameId} ${one.happening}`} button={one} keyOf={KEYS[place] ?? null} title={titleOf(one)} isOpen={isOpen(one)} toggle={() => setOpen(isOpen(one) ? null : one)} />
        ))}
      </div>
      {open && game && (
        <ShooterNumber
          game={game} title={titleOf(open)} close={() => setOpen(null)}
          pick={(teamId, playerNumber) => {
            const said = `${titleOf(open)}${playerNumber === null ? '' : ` by number ${playerNumber}`} logged.`;
            void logging.log('happening', said, { kind: 'happening', gameId: open.gameId, teamId, playerNumber, detail: { happening: open.happening } }).then((isStored) => isStored && setOpen(null));
          }}
        />
      )}
    </section>
  );
}
