import { HeldSheet } from '../held/held-sheet.tsx';
import { LogSheet } from '../log/log-sheet.tsx';
import { RequestsSheet } from '../requests/requests-sheet.tsx';
import { SignOffSheet } from '../sign-off/sign-off-sheet.tsx';
import type { Keeper, Snapshot } from '../store/keeper.ts';
import type { Sync } from '../sync/sync.ts';
import { MoreSheet } from './more-sheet.tsx';
import { Sheet } from './sheet.tsx';

export type SheetName = 'log' | 'requests' | 'sign-off' | 'held' | 'more';

const TITLES: Record<SheetName, string> = { log: 'The log', requests: 'Requests', 'sign-off': 'Sign-off', held: 'Where the entries are', more: 'More' };

interface Props {
  sheet: SheetName;
  onClose: () => void;
  onOpen: (sheet: SheetName) => void;
  keeper: Keeper;
  sync: Sync;
  snapshot: Snapshot;
}

export function DeskSheets({ sheet, onClose, onOpen, keeper, sync, snapshot }: Props) {
  return (
    <Sheet key={sheet} title={TITLES[sheet]} onClose={onClose}>
      {sheet === 'log' && <LogSheet />}
      {sheet === 'requests' && <RequestsSheet />}
      {sheet === 'sign-off' && <SignOffSheet />}
      {sheet === 'held' && <HeldSheet keeper={keeper} sync={sync} snapshot={snapshot} />}
      {sheet === 'more' && <MoreSheet keeper={keeper} snapshot={snapshot} onOpen={onOpen} />}
    </Sheet>
  );
}
