export type ImportKind = 'rosters' | 'schedule' | 'contracts';

/** What each file holds; the headings are found in any order. */
export const IMPORTS: { id: ImportKind; name: string; holds: string; example: string }[] = [
  {
    id: 'rosters',
    name: 'Rosters',
    holds: 'One player a row: school, team, number, name, and where you have them say as, position, grade, starter, announce.',
    example: 'school,team,number,name,say as,position,grade\nTamarack Ridge High School,Varsity,12,Siobhán Okonkwo,shi-VAWN oh-KONK-woh,G,11',
  },
  {
    id: 'schedule',
    name: 'Schedule',
    holds: 'One game a row: date, time, level, home, visitor, venue, and where you have one an id.',
    example: 'date,time,level,home,visitor,venue\n2026-12-04,19:00,varsity,Tamarack Ridge High School,Port Ansel,Alder Fieldhouse',
  },
  {
    id: 'contracts',
    name: 'Sponsors and contracts',
    holds: 'One line of a contract a row: sponsor, category, contract, seller, payer, read kind, reads, price, first and last day.',
    example: 'sponsor,category,contract,seller,read kind,reads,price\nJuniper & Pike Hardware,Hardware,Game balls,Tamarack Ridge High School,Game ball,10,600.00',
  },
];
