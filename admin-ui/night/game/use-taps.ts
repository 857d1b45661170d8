import { useRef, useState } from 'react';
import { useDesk } from '../desk.ts';
import type { Who } from './number-grid.tsx';
import type { Table } from './use-table.ts';
import type { What } from './whats.ts';

/** A second tap on the same spot so soon is a trembling thumb, not another foul. */
const SAME_TAP_MILLISECONDS = 400;

/** Two taps, in either order: what happened and whose number it was. The entry is written with the second. */
export function useTaps(table: Table) {
  const desk = useDesk();
  const [what, setWhat] = useState<What | null>(null);
  const [who, setWho] = useState<Who | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const lastWritten = useRef<{ spot: string; at: number }>({ spot: '', at: -Infinity });
  const isTrembling = (spot: string): boolean => lastWritten.current.spot === spot && performance.now() - lastWritten.current.at < SAME_TAP_MILLISECONDS;

  const write = (one: What, whose: Who, spot: string): void => {
    lastWritten.current = { spot, at: performance.now() };
    setWhat(null);
    setWho(null);
    setTrouble(null);
    const entry = { ...one.entry, ...table.place(), teamId: whose.teamId, playerNumber: one.isTeams ? null : whose.playerNumber };
    desk.write(entry).catch(() => setTrouble('It waits in the red line above and is stored from there. Do not log it again.'));
  };

  const tapWhat = (one: What): void => {
    if (who === null && isTrembling(one.id)) return;
    if (who !== null) write(one, who, one.id);
    else setWhat(what?.id === one.id ? null : one);
  };
  const tapWho = (whose: Who): void => {
    const spot = `${whose.teamId} ${whose.playerNumber ?? ''}`;
    if (what === null && isTrembling(spot)) return;
    if (what !== null) write(what, whose, spot);
    else setWho(who?.teamId === whose.teamId && who.playerNumber === whose.playerNumber ? null : whose);
  };
  const clear = (): void => {
    setWhat(null);
    setWho(null);
  };
  return { what, who, trouble, tapWhat, tapWho, clear };
}
