import { GLANCE_ROWS } from '../../domain/reports/glance.ts';
import type { Risk } from '../../domain/reports/at-risk.ts';
import type { GlanceRow } from '../../domain/reports/glance.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import type { AtRiskView, GlanceView, InventoryView, OfSeason } from './board.dto.ts';

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

export const RISK_WORDS: Readonly<Record<Risk, string>> = { shortfall: 'cannot be given as promised', held: 'on hold', floor: 'a game below its least', behind: 'behind', chance: 'unlikely to be given in full' };

const percent = (chance: number | null) => (chance === null ? null : Math.round(chance * 100));

export function atRiskTable(view: AtRiskView): ReportTable {
  return {
    ...named('promises-at-risk', view),
    totalRows: 1,
    rows: [
      ['Contract', 'Title', 'Sponsor', 'Read kind', 'Promised', 'Given', 'Owed', 'Should be given by now', 'Behind', 'Planned', 'Cannot be given', 'Games below least', 'On hold since', 'Chance of all in %', 'Not earned yet', 'At stake', 'Why', 'Cheapest repair', 'Its cost'],
      ...view.lines.map((line) => [
        line.contractNumber, line.title, line.sponsorName, line.readKindName, line.promised, line.given, line.owed, line.expectedByNow, line.behind, line.planned, line.shortfall, line.brokenFloors,
        line.heldOn === null ? null : { day: line.heldOn }, percent(line.chanceAllGiven), { cents: line.openCents }, { cents: line.atStakeCents }, line.risks.map((risk) => RISK_WORDS[risk]).join(', '), line.repair.words,
        line.repair.costCents === null ? null : { cents: line.repair.costCents },
      ]),
      ['Total', null, null, null, null, null, view.owed, null, null, null, view.shortfall, null, null, null, null, { cents: view.atStakeCents }, null, null, null],
    ],
  };
}

export function inventoryTable(view: InventoryView): ReportTable {
  const names = new Map(view.kinds.map(({ readKindId, readKindName }) => [readKindId, readKindName]));
  return {
    ...named('places-sold-and-left', view),
    totalRows: 0,
    rows: [
      ['Month', 'Read kind', 'Home games', 'Places', 'Given', 'Sold', 'Held by offers', 'Left', 'Went unused'],
      ...view.months.map((row) => [row.month, row.readKindId === null ? 'All kinds' : (names.get(row.readKindId) ?? null), row.games, row.places, row.given, row.sold, row.held, row.left, row.unused]),
      ...view.unplaced.map(({ readKindName, reads }) => ['Promised, without a place yet', readKindName, null, null, null, reads, null, null, null]),
    ],
  };
}
