import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Calendar } from './calendar.ts';
import { OUR_ROSTERS } from './rosters.ts';
import { SCHEDULE, outsideIdOf } from './schedule.ts';
import { OPPONENTS } from './schools.ts';

/** A cell as RFC 4180 quotes it. */
function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function csv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** Our three lists as they stand, and one player who joined since. */
function rosters(): string {
  const rows = Object.entries(OUR_ROSTERS).flatMap(([team, players]) =>
    players.map((player) => [team, player.number, player.name, player.sayAs ?? '', player.position ?? '', player.grade ?? '', player.announce ?? '']),
  );
  return csv([['Team', 'No.', 'Player', 'Say as', 'Pos', 'Grade', 'Announce'], ...rows, ['Boys JV', '55', 'Cuthbert Ames', '', 'center', '9', 'name']]);
}

/** The season's schedule with its moved game where it is now, and one road game that was agreed since. */
function schedule(calendar: Calendar): string {
  const rows = SCHEDULE.map((line) => {
    const day = calendar.gameDay(line.movedTo ?? line.day);
    const { name, gym } = OPPONENTS[line.opponent];
    const isHome = line.at === 'home';
    return [outsideIdOf(line), day, line.clock ?? 'TBA', line.team, name, isHome ? 'H' : 'A', isHome ? 'Alder Fieldhouse' : gym, line.class ?? 'regular'];
  });
  const added = ['TR-90', calendar.gameDay(7), '17:15', 'Boys JV', OPPONENTS.Otters.name, 'A', OPPONENTS.Otters.gym, 'regular'];
  return csv([['Game ID', 'Date', 'Time', 'Team', 'Opponent', 'H/A', 'Location', 'Type'], ...rows, added]);
}

/** Six contracts that are signed, and two offers. */
function contracts(): string {
  return csv([
    ['Contract number', 'Sponsor', 'Contact', 'Item', 'Reads', 'Per', 'At least', 'At most', 'Contract total', 'Sold by', 'Bill to'],
    ['A-101', 'Juniper & Pike Hardware', 'Gus Pike', 'Game ball', '1', 'per game', '', '', '$1,400.00', 'Tamarack Ridge Athletics', ''],
    ['A-102', 'Copperline Credit Union', 'Nadia Ferreira-Holm', 'Bank-shot mention', '', 'each time', '12', '40', '$900.00', 'Tamarack Ridge Athletics', ''],
    ['A-103', 'Snowmelt Creamery', 'Elspeth Moor', 'Concession read', '20', 'season', '', '', '$800.00', 'Tamarack Ridge Athletics', ''],
    ['A-104', 'Halvorsen Orthodontics', 'Dr. Signe Halvorsen', 'Time-out read', '14', 'season', '', '', '$850.00', 'Tamarack Ridge Athletics', ''],
    ['A-107', 'Okafor Family Insurance', 'Chidi Okafor', 'Quarter-break read', '18', 'season', '', '', '$540.00', 'Tamarack Ridge Athletics', 'Okafor Agency Accounts Payable'],
    ['B-202', 'Blue Lantern Tire', 'Hank Delacroix-Wynn', 'Time-out read', '16', 'season', '', '', '0', 'Kestrel Boosters', ''],
    ['B-203', "Mirabel's Kitchen", 'Mirabel Otero-Lane', 'Time-out read', '4', 'season', '', '', '$100.00', 'Kestrel Boosters', ''],
    ['A-108', 'Pinyon Print Works', 'Ruben Castellane', 'Quarter-break read', '6', 'season', '', '', '$180.00', 'Tamarack Ridge Athletics', ''],
  ]);
}

export function exampleFiles(calendar: Calendar): Record<string, string> {
  return { 'rosters.csv': rosters(), 'schedule.csv': schedule(calendar), 'contracts.csv': contracts() };
}

/** Puts the example files beside the data, with the demo's own days in them. */
export function writeExamples(dataFolder: string, calendar: Calendar): void {
  const folder = join(dataFolder, 'examples');
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(exampleFiles(calendar))) writeFileSync(join(folder, name), text);
}
