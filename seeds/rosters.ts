import type { RosterPlayerDto } from '../server/season/team.dto.ts';

type Line = [number: string, name: string, sayAs: string | null, position: string, grade: string, announce?: 'numberOnly' | 'aMember'];

// Everyone is invented. The first five of each list start.
const BOYS_VARSITY: readonly Line[] = [
  ['3', 'Emeka Okonkwo', 'eh-MEH-kah oh-KON-kwoh', 'guard', '12'],
  ['11', 'Łukasz Wierzba', 'WOO-kahsh VYEZH-bah', 'guard', '12'],
  ['23', 'Minh Nguyễn', 'min NWIN', 'forward', '11'],
  ['32', 'Bramwell Achterberg', 'BRAM-well AHK-ter-berg', 'forward', '12'],
  ['50', 'Tobias Redcloud-Hale', null, 'center', '11'],
  ['0', 'Jericho Vance', null, 'guard', '10'],
  ['00', 'Anselm Tregarth', 'AN-selm tre-GARTH', 'guard', '11'],
  ['5', 'Corwin Ashgrove', null, 'guard', '12'],
  ['14', 'Dashiell Omondi', 'DASH-ul oh-MON-dee', 'forward', '11'],
  ['20', 'Percival Lund', null, 'forward', '10'],
  ['34', 'Rafferty Quill', null, 'forward', '11', 'aMember'],
  ['42', 'Leopold Maas', 'LAY-oh-pold MAHSS', 'center', '10'],
  ['55', 'Quentin Sallow', null, 'center', '12'],
];

const GIRLS_VARSITY: readonly Line[] = [
  ['2', 'Siobhán Kellaway', 'shih-VAWN KEL-uh-way', 'guard', '12'],
  ['10', 'Xochitl Barranca', 'SOH-cheel bah-RAHN-kah', 'guard', '11'],
  ['21', 'Thuý Nguyễn', 'TWEE NWIN', 'forward', '12'],
  ['33', 'Adaeze Okonkwo', 'ah-DAH-zeh oh-KON-kwoh', 'forward', '10'],
  ['44', 'Marguerite Foss', 'mar-guh-REET FOSS', 'center', '12'],
  ['1', 'Beatrix Lowell', null, 'guard', '10'],
  ['4', 'Ingrid Sorrel', null, 'guard', '11'],
  ['12', 'Paloma Whitlock', null, 'guard', '12'],
  ['15', 'Octavia Brandt', null, 'forward', '11', 'numberOnly'],
  ['24', 'Saoirse Penhallow', 'SEER-shuh pen-HAL-oh', 'forward', '10'],
  ['30', 'Winifred Oduya', 'WIN-ih-fred oh-DOO-yah', 'forward', '11'],
  ['41', 'Clementine Drury', null, 'center', '10'],
];

const BOYS_JV: readonly Line[] = [
  ['4', 'Ambrose Fenn', null, 'guard', '10'],
  ['12', 'Kwabena Ofori-Lyle', 'KWAH-beh-nah oh-FOH-ree LYLE', 'guard', '9'],
  ['22', 'Silas Marchetti', 'SY-lus mar-KET-ee', 'forward', '10'],
  ['31', 'Gideon Pryce', null, 'forward', '9'],
  ['45', 'Magnus Ellery', null, 'center', '10'],
  ['1', 'Otto Bellweather', null, 'guard', '9'],
  ['10', 'Fitzgerald Nakai', 'fits-JERR-uld nah-KY', 'guard', '10'],
  ['13', 'Lysander Crowe', 'ly-SAN-der KROH', 'guard', '9'],
  ['24', 'Hollis Underhill', null, 'forward', '10'],
  ['33', 'Evander Stroud', null, 'forward', '9'],
  ['40', 'Thaddeus Wick', null, 'center', '9'],
  ['52', 'Barnaby Okeke', 'BAR-nuh-bee oh-KEH-keh', 'center', '10'],
];

export const OUR_ROSTERS = {
  'Boys varsity': listed(BOYS_VARSITY),
  'Girls varsity': listed(GIRLS_VARSITY),
  'Boys JV': listed(BOYS_JV),
} as const;

export const OUR_COACHES: Readonly<Record<keyof typeof OUR_ROSTERS, [name: string, sayAs: string | null]>> = {
  'Boys varsity': ['Horatio Vandermeer', 'huh-RAY-shee-oh VAN-der-meer'],
  'Girls varsity': ['Rosalind Achebe', 'ROZ-uh-lind ah-CHAY-bay'],
  'Boys JV': ['Dunstan Fairweather', null],
};

function listed(lines: readonly Line[]): RosterPlayerDto[] {
  return lines.map(([number, name, sayAs, position, grade, announce], place) => ({
    ...{ number, name, sayAs, position, grade, isStarter: place < 5 },
    announce: announce ?? 'name',
  }));
}

const GIVEN = {
  'Boys varsity': ['Alaric', 'Benedict', 'Cormac', 'Desmond', 'Elias', 'Florian', 'Gareth', 'Humphrey', 'Isidore', 'Jasper'],
  'Girls varsity': ['Agnes', 'Briony', 'Cordelia', 'Delphine', 'Estelle', 'Freya', 'Greta', 'Harriet', 'Imogen', 'Juniper'],
  'Boys JV': ['Kendrick', 'Lambert', 'Milo', 'Nestor', 'Orson', 'Phineas', 'Rupert', 'Stellan', 'Tiberius', 'Wilfred'],
} as const;
const FAMILY = ['Abernathy', 'Birchall', 'Calloway', 'Dunmore', 'Eastlake', 'Farrow', 'Greaves', 'Holloway', 'Inglewood', 'Jessup', 'Kirkbride', 'Larkspur', 'Mossman'];
const COACHES = ['Edmund Castellan', 'Philippa Grange', 'Lorcan Haverford', 'Minerva Stokes', 'Augustin Pell', 'Verity Langdon', 'Osric Templeton', 'Harmony Voss', 'Bartholomew Quist', 'Lavinia Marsh', 'Emeric Dole', 'Constance Arbor', 'Fergus Holt', 'Beata Winslow', 'Clovis Hartley'];
const NUMBERS = ['3', '10', '14', '22', '35', '1', '5', '20', '31', '43'];
const POSITIONS = ['guard', 'guard', 'forward', 'forward', 'center'];

/** A visiting team's list: names are combined by its place, so that every telling has the same people. */
export function theirRoster(schoolPlace: number, team: keyof typeof GIVEN): RosterPlayerDto[] {
  return GIVEN[team].map((given, place) => ({
    number: NUMBERS[(place + schoolPlace) % NUMBERS.length]!,
    name: `${given} ${FAMILY[(place * 3 + schoolPlace * 5) % FAMILY.length]}`,
    position: POSITIONS[place % POSITIONS.length]!,
    grade: String(team === 'Boys JV' ? 9 + (place % 2) : 10 + (place % 3)),
    isStarter: place < 5,
  }));
}

export function theirCoach(schoolPlace: number, team: keyof typeof GIVEN): string {
  return COACHES[schoolPlace * 3 + Object.keys(GIVEN).indexOf(team)]!;
}
