import { GLANCE_ROWS } from '../../domain/reports/glance.ts';
import type { GlanceRow } from '../../domain/reports/glance.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import type { GlanceView, OfSeason } from './board.dto.ts';

const named = (what: string, { seasonName, today }: OfSeason) => ({ fileName: `${what}-${seasonName ?? 'no-season'}-${today}`, sheetName: `${what.replaceAll('-', ' ')} ${today}` });

const HEADINGS: Readonly<Record<GlanceRow, string>> = {
  rosters: 'Rosters', names: 'How names are said', people: 'People of the night', reads: 'Reads placed', copy: 'Copy approved', packet: 'Packet', signOff: 'Sign-off', attendance: 'Attendance',
};

/** In words alone: a sentence may name a student, and a file travels. */
export function glanceTable(view: GlanceView): ReportTable {
  return {
    ...named('season-at-a-glance', view),
    totalRows: 0,
    rows: [
      ['Day', 'Night', ...GLANCE_ROWS.map((row) => HEADINGS[row])],
      ...view.nights.map(({ heldOn, label, cells }) => [{ day: heldOn }, label, ...GLANCE_ROWS.map((row) => (cells[row].state === 'none' ? null : cells[row].words))]),
    ],
  };
}
