import { Box } from '@mui/material';
import type { SportProfile, WindowKind } from '../../server/domain/season/sport-profile.ts';
import { Rows } from '../lists/rows.tsx';
import { windowName } from '../seasons/sports.ts';
import { iMay } from '../session/rights.ts';
import { count } from '../words/count.ts';
import { SayButtons } from './say-buttons.tsx';
import type { WindowPlaces } from './types.ts';

interface Line {
  id: string;
  kind: WindowKind;
  group: string | null;
  times: number;
  /** of the sport's profile, or for a group of its window */
  otherwise: number;
  said: WindowPlaces | undefined;
}

function linesOf(profile: SportProfile, places: readonly WindowPlaces[], groups: ReadonlyMap<string, readonly string[]>): Line[] {
  const said = (kind: string, group: string | null): WindowPlaces | undefined => places.find((one) => one.windowKind === kind && one.placeGroup === group);
  return profile.windows.flatMap((rule) => {
    const whole = { id: rule.kind, kind: rule.kind, group: null, times: rule.timesPerGame, otherwise: rule.places, said: said(rule.kind, null) };
    const holds = whole.said?.places ?? rule.places;
    const named = [...groups].filter(([name, windows]) => windows.includes(rule.kind) || said(rule.kind, name)).map(([name]) => name);
    return [whole, ...named.map((group) => ({ ...whole, id: `${rule.kind} ${group}`, group, otherwise: holds, said: said(rule.kind, group) }))];
  });
}

/** What the profile of a sport says of its windows, and what the department says. */
export function SportTable({ profile, places, groups }: { profile: SportProfile; places: readonly WindowPlaces[]; groups: ReadonlyMap<string, readonly string[]> }) {
  const may = iMay('window-places', 'edit');
  return (
    <Rows<Line>
      label="Places in windows"
      rows={linesOf(profile, places, groups)}
      columns={[
        { label: 'Window', show: (line) => (line.group === null ? windowName(line.kind) : <Box component="span" sx={{ pl: { md: 2 }, fontWeight: 400 }}>{windowName(line.kind)}, of these {line.group}</Box>) },
        { label: 'In a usual game', show: (line) => (line.group !== null ? '–' : line.times === 0 ? 'Only where it is allowed' : line.times === 1 ? 'Once' : `${line.times} times`) },
        { label: 'The profile says', show: (line) => (line.group === null ? count(line.otherwise, 'read') : 'No fewer than the window') },
        { label: 'We say', show: (line) => (line.said ? <strong>{count(line.said.places, 'read')}</strong> : 'The same') },
        ...(may ? [{ label: 'Change', show: (line: Line) => <SayButtons sport={profile.sport} windowKind={line.kind} group={line.group} said={line.said} otherwise={line.otherwise} /> }] : []),
      ]}
    />
  );
}
