import { useEffect, useState } from 'react';
import { Frame } from '../opening/frame.tsx';
import { OpenNight } from '../opening/open-night.tsx';
import { Keeper } from '../store/keeper.ts';
import { askToPersist } from '../store/database.ts';
import { Sync } from '../sync/sync.ts';
import { DeskScreen } from './desk-screen.tsx';
import { useWakeLock } from './wake-lock.ts';

interface Working {
  keeper: Keeper;
  sync: Sync;
}

/** A night from this device's store, with or without a server. */
export function StoredDesk({ nightId }: { nightId: string }) {
  const [working, setWorking] = useState<Working | 'reading' | 'missing' | 'broken'>('reading');
  useWakeLock();
  useEffect(() => {
    let isLeft = false;
    let made: Working | null = null;
    Keeper.open(nightId).then(
      (keeper) => {
        if (isLeft) return keeper?.close();
        if (!keeper) return setWorking('missing');
        made = { keeper, sync: new Sync(keeper) };
        void askToPersist();
        made.sync.start();
        setWorking(made);
      },
      () => setWorking('broken'),
    );
    return () => {
      isLeft = true;
      made?.sync.stop();
      made?.keeper.close();
    };
  }, [nightId]);
  if (working === 'reading') return <Frame><p role="status">Reading this device’s store…</p></Frame>;
  if (working === 'missing') return <OpenNight nightId={nightId} />;
  if (working === 'broken') {
    return (
      <Frame>
        <h1>The store cannot be read</h1>
        <p className="desk-notice desk-notice-bad" role="alert">The browser does not let this page read its store. Close other windows of this page and load it again; log on paper until then.</p>
      </Frame>
    );
  }
  return <DeskScreen keeper={working.keeper} sync={working.sync} />;
}
