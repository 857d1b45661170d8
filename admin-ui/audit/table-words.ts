/** The word for a record and, where it has one, its page. */
const TABLES: Record<string, [word: string, resource: string | null]> = {
  school: ['School', 'schools'], venue: ['Venue', 'venues'], floor: ['Floor', null], season: ['Season', 'seasons'], team: ['Team', 'teams'],
  player: ['Player', null], roster_entry: ['Roster', null], night: ['Night', 'nights'], game: ['Game', 'games'], game_participant: ['Teams of a game', null],
  game_night: ['Game on a night', null], person_of_night: ['People of a night', null], sponsor_category: ['Category', 'sponsor-categories'],
  sponsor: ['Sponsor', 'sponsors'], seller: ['Seller of record', 'sellers'], payer: ['Payer', 'payers'], read_kind: ['Read kind', 'read-kinds'],
  rate_card_line: ['Price', 'rate-card-lines'], package: ['Package', 'packages'], package_line: ['Line of a package', null],
  offer: ['Offer', 'offers'], offer_line: ['Line of an offer', null], season_plan: ['Plan of a season', null], plan_proposal: ['Proposed plan', 'plan-proposals'], night_lock: ['Lock of a night', null],
  contract: ['Contract', 'contracts'], term: ['Term of a contract', null], commitment: ['Commitment', null],
  benefit: ['Benefit', null], copy: ['Copy', 'copies'], copy_version: ['Version of copy', null], placement: ['Planned read', null],
  script: ['Script', 'scripts'], makegood: ['Makegood', null], membership: ['Roles', 'people'], link: ['Private link', null],
  account: ['Account', null], journal_layout: ['Journal layout', null], goods_promise: ['Promised goods', null],
  window_places: ['Places in windows', null], exclusivity: ['Exclusive right', null], reserved_category: ['Reserved category', null],
};

export const tableWord = (table: string): string => TABLES[table]?.[0] ?? table.replaceAll('_', ' ');
export const tablePage = (table: string): string | null => TABLES[table]?.[1] ?? null;
export const TABLE_CHOICES = Object.entries(TABLES).map(([id, [name]]) => ({ id, name }));

/** `head_coach_say_as` is "head coach say as". */
export const fieldWord = (field: string): string => field.replace(/_(id|cents|on|at)$/, '').replaceAll('_', ' ');
