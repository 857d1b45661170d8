import type { SheetName } from './desk-sheets.tsx';

export type RegionName = 'now' | 'coming' | 'game';

interface Props {
  region: RegionName;
  hasGame: boolean;
  onRegion: (region: RegionName) => void;
  onOpen: (sheet: SheetName) => void;
}

const REGIONS = [['now', 'Now'], ['coming', 'Coming'], ['game', 'Game']] as const;

/** On a phone: what a thumb reaches. Each place is fixed, also where a region is not worked with. */
export function TabBar({ region, hasGame, onRegion, onOpen }: Props) {
  return (
    <nav className="desk-tabs" aria-label="Parts of the desk">
      {REGIONS.map(([name, label]) => (
        <button key={name} type="button" className="desk-tab" aria-pressed={region === name} disabled={name === 'game' && !hasGame} onClick={() => onRegion(name)}>{label}</button>
      ))}
      <button type="button" className="desk-tab" onClick={() => onOpen('log')}>Log</button>
      <button type="button" className="desk-tab" onClick={() => onOpen('more')}>More</button>
    </nav>
  );
}
