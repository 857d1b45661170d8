import { describe, expect, test } from 'vitest';
import { checkCopy, worseVerdict } from '../../server/domain/sponsorship/copy-check.ts';
import { MARKS_EXPLAINED, VERDICTS } from '../../server/domain/sponsorship/copy-mark.ts';
import type { CopyVerdict, MarkKind } from '../../server/domain/sponsorship/copy-mark.ts';

const JUNIPER = { sponsorName: 'Juniper & Pike Hardware', slogans: ['Better Tools, Better Days'] };
const check = (text: string, known = JUNIPER) => checkCopy(text, 'en', known);
const spanish = (text: string) => checkCopy(text, 'es', JUNIPER);
const kindsOf = (text: string) => check(text).marks.map((mark) => mark.kind);

/**
 * The worked examples of 26 CFR 1.513-4(f), as far as words are concerned; their facts and conclusions from memory, told
 * with our own sponsors. The examples that turn on money alone are in two-percent.test.ts.
 */
describe('the worked examples of 26 CFR 1.513-4(f) (from memory)', () => {
  test.each<[example: string, text: string, verdict: CopyVerdict]>([
    ['1: a run named after the company that gave drinks and prizes', 'Welcome to the Snowmelt Creamery Ridge Run. Drinks and prizes were provided by Snowmelt Creamery.', 'acknowledgment'],
    ['2: name and logo on what announces an exhibition', 'The hall of fame display is supported by Halvorsen Orthodontics.', 'acknowledgment'],
    ['3: the name in the title of a tournament, its goods on display', 'This is the Blue Lantern Tire Holiday Tournament. A set of snow tires from Blue Lantern Tire is on display in the lobby.', 'acknowledgment'],
    ['4: the exclusive sponsor of a bowl game', 'Copperline Credit Union is the exclusive sponsor of tonight’s bowl game.', 'acknowledgment'],
    ['5: uniforms with a name on them', 'The shirts of the junior team come from Mirabel’s Kitchen.', 'acknowledgment'],
    ['6: a contest named after the sole seller of soft drinks', 'Snowmelt Creamery names the writing contest and is the exclusive provider of soft drinks on campus.', 'exclusiveProvider'],
    ['7: one message that thanks and suggests a call', 'The Music Shop, at 123 Main Street: give them a call for all their music needs. We thank the Music Shop.', 'advertising'],
    ['8, the poster: name, address and telephone', 'The Music Shop, 123 Main Street, 555-0142.', 'acknowledgment'],
    ['8, the program: a visit for the finest selection', 'Visit the Music Shop for the finest selection of music.', 'advertising'],
    ['9: an established slogan, registered', 'Juniper & Pike Hardware. Better tools, better days.', 'acknowledgment'],
    ['10: a name inside the cover of a magazine', 'This page is sponsored by Pinyon Print Works.', 'acknowledgment'],
    ['11: a name and a bare web address', 'The Music Shop, musicshop.example.', 'acknowledgment'],
    ['12: an endorsement', 'The Tamarack Ridge trainers recommend the braces of Halvorsen Orthodontics.', 'advertising'],
  ])('example %s', (_, text, verdict) => {
    expect(check(text).verdict).toBe(verdict);
  });
});

test.each<[text: string, kind: MarkKind, words: string]>([
  ['The finest selection in the valley.', 'qualitative', 'finest'],
  ['Give them a call.', 'callToBuy', 'Give them a call'],
  ['20% off tonight.', 'price', '20% off'],
  ['Blue Lantern Tire, our team’s choice.', 'endorsement', 'our team’s choice'],
  ['The official and only drink sold here.', 'exclusiveProvider', 'official and only drink sold here'],
  // Public-radio underwriting lists mark these as well, and so does the regulation's wording.
  ['The oldest hardware store in town.', 'qualitative', 'oldest'],
  ['An award-winning bakery.', 'qualitative', 'award-winning'],
  ['The most reliable tires.', 'qualitative', 'most reliable'],
  ['Call now.', 'callToBuy', 'Call now'],
  ['Call 555-0142 for an appointment.', 'callToBuy', 'Call 555-0142'],
  ['Visit our store on Third Street.', 'callToBuy', 'Visit our store'],
  ['Come on down to Quarry Road.', 'callToBuy', 'Come on down'],
  ['Head to the stand at halftime.', 'callToBuy', 'Head to'],
  ['Get your popcorn in the lobby.', 'callToBuy', 'Get your'],
  ['Tools are on sale now.', 'price', 'on sale'],
  ['The year-end sale at Juniper & Pike.', 'price', 'year-end sale'],
  ['Work boots for $59.95.', 'price', '$59.95'],
  ['Buy one, get one.', 'price', 'Buy one, get one'],
  ['A free estimate for every home.', 'price', 'free'],
  ['Half off all paint.', 'price', 'Half off'],
  ['We recommend Halvorsen Orthodontics.', 'endorsement', 'recommend'],
  ['Copperline Credit Union, number one in service.', 'qualitative', 'number one in'],
  ['More choice than anyone else.', 'qualitative', 'More choice than'],
])('“%s” is marked as %s', (text, kind, words) => {
  expect(check(text).marks[0]).toMatchObject({ kind, words });
});

test.each([
  ['name, address and telephone', 'Juniper & Pike Hardware, 18 Third Street, Tamarack Ridge, 555-0142.'],
  ['years in business', 'Okafor Family Insurance, on Ridge Road since 1991, in business for more than thirty years.'],
  ['what it carries, without praise', 'Snowmelt Creamery makes ice cream, yogurt and drinks on Mill Lane. Food and drink, tools and paint.'],
  ['exclusive sponsorship', 'Copperline Credit Union is the exclusive and official sponsor of Kestrels basketball.'],
  ['a share of the proceeds', 'Ten percent of the proceeds goes to Kestrels athletics.'],
  ['a gift with its sum', 'Juniper & Pike Hardware gave $500 to the marching band.'],
  // Station rules, not in 26 CFR 1.513-4: personal pronouns and bare invitations to a web address.
  ['personal pronouns', 'You, your family and our teams: we thank you.'],
  ['a bare invitation to a web address', 'Visit our website. Visit us at juniperpike.example. More at www.juniperpike.example.'],
  // A word that is a name, or means something else in a gym.
  ['Best Street', 'Juniper & Pike Hardware, 40 Best Street.'],
  ['Price Avenue', 'Blue Lantern Tire, at Price Avenue and Quarry Road.'],
  ['a coach whose name is Sale', 'The game ball is presented to Coach Dana Sale by Juniper & Pike Hardware.'],
  ['a double name with Price in it', 'Thanks to Amara Price-Okonkwo and to Xochitl Price.'],
  ['free throws', 'Every free throw is brought to you by Copperline Credit Union.'],
  ['a drug-free school', 'Tamarack Ridge is a tobacco-free and drug-free campus. Feel free to ask an usher.'],
  ['calls of play', 'The call of play and the foul calls tonight are with our announcer. They call the Perch home.'],
  ['a team that visits', 'The Herons visit the Perch next Friday; the visiting team is welcome.'],
  ['a bake sale', 'The bake sale of the Kestrel Boosters is in the lobby; tickets are on sale at the door.'],
  ['the best of three, a season best', 'A best of three series, and her season best.'],
  ['a savings account', 'Copperline Credit Union offers checking and savings accounts.'],
  ['saving the date', 'Save the date: senior night is in February.'],
  ['a save and a shot', 'A save and a shot, with Blue Lantern Tire.'],
  ['the half and the game', 'Enjoy the second half. Get loud.'],
  ['directions of the script', 'Juniper & Pike Hardware. [[wait for the best applause]]'],
])('%s passes', (_, text) => {
  expect(check(text)).toMatchObject({ verdict: 'acknowledgment', marks: [] });
});

test('a capital letter alone does not hide praise', () => {
  expect(kindsOf('Best pizza in town.')).toEqual(['qualitative']);
  expect(kindsOf('Try Our Best Pizza.')).toContain('qualitative');
  expect(kindsOf('At Juniper & Pike Hardware Best prices always.')).toContain('qualitative');
});

test('the sponsor’s own name passes though it praises', () => {
  const known = { sponsorName: 'Best Value Tire', slogans: [] };
  expect(check('Tonight’s time-out is with Best Value Tire.', known).marks).toEqual([]);
  expect(check('Tonight’s time-out is with the best value tire shop.', { ...known, sponsorName: 'Blue Lantern Tire' }).marks).toHaveLength(1);
});

test('a slogan passes once it is registered for the sponsor, and is shown as found', () => {
  const text = 'Juniper & Pike Hardware: “Better tools, better days.”';
  expect(check(text).slogans.map((found) => text.slice(found.start, found.end))).toEqual(['Better tools, better days']);
  expect(check(text).verdict).toBe('acknowledgment');
  expect(check(text, { ...JUNIPER, slogans: [] }).verdict).toBe('advertising');
});

test('praise beside a registered slogan is still marked', () => {
  expect(check('Better Tools, Better Days, and better service.').marks.map((mark) => mark.words)).toEqual(['better']);
});

test('a mark says where it stands, in the order of the text', () => {
  const text = 'Come on down for the finest pies, half off tonight.';
  const { marks, verdict } = check(text);
  expect(marks.map((mark) => [mark.kind, text.slice(mark.start, mark.end)])).toEqual([['callToBuy', 'Come on down'], ['qualitative', 'finest'], ['price', 'half off']]);
  expect(verdict).toBe('advertising');
});

test.each<[text: string, kind: MarkKind]>([
  ['La mejor comida del valle.', 'qualitative'],
  ['Tacos deliciosos y café.', 'qualitative'],
  ['Visite nuestra tienda en la calle Main.', 'callToBuy'],
  ['Llámenos al 555-0142.', 'callToBuy'],
  ['Veinte pesos, con descuento.', 'price'],
  ['Refrescos gratis.', 'price'],
  ['Recomendamos a Blue Lantern Tire.', 'endorsement'],
  ['Proveedor exclusivo de bebidas.', 'exclusiveProvider'],
])('the Spanish “%s” is marked as %s', (text, kind) => {
  expect(spanish(text).marks[0]?.kind).toBe(kind);
});

test.each([
  ['El refugio de los Kestrels recibe el apoyo de la Cocina de Mirabel, en el 105 de la calle Main.'],
  ['La familia se llama Okonkwo. Más de treinta años en Tamarack Ridge.'],
  ['Patrocinador exclusivo del equipo. Una cuenta de ahorros.'],
  ['Visite nuestro sitio web. Disfruten del partido.'],
])('the Spanish “%s” passes', (text) => {
  expect(spanish(text)).toMatchObject({ verdict: 'acknowledgment', marks: [] });
});

test('English words in a Spanish text are not judged by the English list', () => {
  expect(spanish('El equipo “Best Friends”.').marks).toEqual([]);
});

test('one message in two languages is what the worse of them is', () => {
  expect(worseVerdict('acknowledgment', 'advertising')).toBe('advertising');
  expect(worseVerdict('exclusiveProvider', 'acknowledgment')).toBe('exclusiveProvider');
});

test('every kind and every verdict is explained with its paragraph', () => {
  for (const { paragraph, sentence } of [...Object.values(MARKS_EXPLAINED), ...Object.values(VERDICTS)]) {
    expect(paragraph).toMatch(/^26 CFR 1\.513-4\(c\)\(2\)\((iv|v|vi)\)/);
    expect(sentence.length).toBeGreaterThan(60);
  }
});

test('a text of the longest kind is checked at once', () => {
  const text = 'Come on down to the finest '.repeat(74).slice(0, 2000);
  const marks = check(text).marks;
  expect(marks.length).toBeGreaterThan(100);
});

test.each([' '.repeat(2000), '1'.repeat(2000), 'a'.repeat(2000), 'visit us at '.repeat(166), '$1,'.repeat(660), ', '.repeat(1000)])('every text of two thousand characters gets its verdict (%#)', (text) => {
  // A pattern that goes back over its own steps would not come to an end within the test's limit.
  expect(check(text).verdict).toBeDefined();
  expect(spanish(text).verdict).toBeDefined();
});
