import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { ReactNode } from 'react';
import { isBounce } from '../../../server/domain/night/desk/one-tap.ts';
import { DeskContext } from '../desk.ts';
import type { Desk } from '../desk.ts';
import { ComingRegion } from '../coming/coming-region.tsx';
import { GameRegion } from '../game/game-region.tsx';
import { KeysRest } from '../keys.ts';
import { NowRegion } from '../now/now-region.tsx';
import type { Keeper } from '../store/keeper.ts';
import type { Sync } from '../sync/sync.ts';
import { DeskBar } from './desk-bar.tsx';
import { DeskSheets } from './desk-sheets.tsx';
import type { SheetName } from './desk-sheets.tsx';
import { ShowRegion } from './show-region.ts';
import { TabBar } from './tab-bar.tsx';
import type { RegionName } from './tab-bar.tsx';

/** Three regions beside each other on a laptop, one at a time on a phone. */
export function DeskScreen({ keeper, sync }: { keeper: Keeper; sync: Sync }) {
  const snapshot = useSyncExternalStore(keeper.watch, keeper.look);
  const { night, lines } = snapshot;
  const unstoredCount = snapshot.unstored.length;
  const [region, setRegion] = useState<RegionName>('now');
  const [sheet, setSheet] = useState<SheetName | null>(null);
  const lastTakenBack = useRef<number | null>(null);
  const desk = useMemo<Desk>(
    () => ({
      bundle: night.bundle, lines, unstoredCount, way: night.way, workerName: night.workerName, maySignOff: night.maySignOff, isSignedOff: night.isSignedOff,
      lookAgain: sync.tryNow,
      write: async (said) => {
        const entry = await keeper.write(said);
        sync.nudge();
        return entry;
      },
      takeBack: async (entryId) => {
        // Every taking back comes through here: a tap that bounces takes back one entry.
        if (isBounce(lastTakenBack.current, performance.now())) return;
        lastTakenBack.current = performance.now();
        await keeper.takeBack(entryId);
        sync.nudge();
      },
    }),
    [keeper, sync, night, lines, unstoredCount],
  );
  useEffect(() => {
    document.title = `${night.bundle.title} – Rafterline table`;
  }, [night.bundle.title]);
  const shown = night.way === 'reads' && region === 'game' ? 'now' : region;
  return (
    <DeskContext value={desk}>
      <div className="desk" data-way={night.way} data-region={shown}>
        <DeskBar keeper={keeper} sync={sync} snapshot={snapshot} onOpen={setSheet} />
        <main className="desk-regions">
          <section className="desk-region desk-region-now" aria-label="Now"><WhileOpen isSignedOff={night.isSignedOff}><NowRegion /></WhileOpen></section>
          <section className="desk-region desk-region-coming" aria-label="What is coming"><ShowRegion value={setRegion}><ComingRegion /></ShowRegion></section>
          {night.way !== 'reads' && <section className="desk-region desk-region-game" aria-label="The game"><WhileOpen isSignedOff={night.isSignedOff}><GameRegion /></WhileOpen></section>}
        </main>
        <TabBar region={shown} onRegion={setRegion} onOpen={setSheet} hasGame={night.way !== 'reads'} />
        {sheet && <DeskSheets sheet={sheet} onClose={() => setSheet(null)} onOpen={setSheet} keeper={keeper} sync={sync} snapshot={snapshot} />}
      </div>
    </DeskContext>
  );
}

/** After sign-off the night can be looked at; what is found later goes to the office. */
function WhileOpen({ isSignedOff, children }: { isSignedOff: boolean; children: ReactNode }) {
  return <KeysRest value={isSignedOff}><fieldset className="desk-while-open" disabled={isSignedOff}>{children}</fieldset></KeysRest>;
}
