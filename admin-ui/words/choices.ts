export interface Choice {
  id: string;
  name: string;
}

const choices = (words: Record<string, string>): Choice[] => Object.entries(words).map(([id, name]) => ({ id, name }));

export const LEVEL_WORDS: Record<string, string> = {
  varsity: 'Varsity', juniorVarsity: 'Junior varsity', sophomore: 'Sophomore', freshman: 'Freshman', middleSchool: 'Middle school',
};
export const CLASS_WORDS: Record<string, string> = {
  regular: 'Regular season', invitational: 'Invitational', conference: 'Conference', stateSeries: 'State series',
};
export const GAME_STATUS_WORDS: Record<string, string> = {
  planned: 'Planned', underWay: 'Under way', suspended: 'Suspended', played: 'Played', postponed: 'Postponed', cancelled: 'Cancelled',
};
export const OWNER_WORDS: Record<string, string> = {
  us: 'Us – our sponsors may be read', conference: 'The conference – no places for our sponsors', association: 'The state association – no places for our sponsors',
};
export const ANNOUNCE_WORDS: Record<string, string> = {
  name: 'By name', numberOnly: 'Number only', aMember: '“A member of the team”', silence: 'Not at all',
};
export const SPONSOR_STATUS_WORDS: Record<string, string> = { prospect: 'Prospect', active: 'Active', past: 'Past' };
export const CONTACT_WAY_WORDS: Record<string, string> = { call: 'Call', visit: 'Visit', message: 'Message', letter: 'Letter' };
export const TIMING_WORDS: Record<string, string> = { scheduled: 'Planned into a window', onOccurrence: 'When something happens' };
export const COUNTING_WORDS: Record<string, string> = {
  perTerm: 'Over the whole term', perGame: 'In every game', perNight: 'On every night', onOccurrence: 'Each time it happens',
};
export const WHOSE_WORDS: Record<string, string> = { ours: 'Our team’s', both: 'Both teams’' };
export const PRIORITY_WORDS: Record<string, string> = { 1: 'First', 2: 'Normal', 3: 'Last' };
export const PRICING_WORDS: Record<string, string> = { fixed: 'One fixed price', perRead: 'A price for each read given' };
export const POLICY_WORDS: Record<string, string> = {
  credit: 'Its reads are credited', valueMovesOn: 'Its value moves on to the reads that remain',
};
export const EARNS_WORDS: Record<string, string> = { onDelivery: 'When it is delivered', overDays: 'Evenly over its days' };
export const OFFER_STATE_WORDS: Record<string, string> = {
  draft: 'Draft', open: 'Open', lapsed: 'Lapsed', declined: 'Declined', withdrawn: 'Withdrawn', accepted: 'Accepted',
};
export const PRICE_VARIES_WORDS: Record<string, string> = { nothing: 'Nothing: it is fixed', attendance: 'Attendance', audience: 'How many see or hear it' };
export const TERM_STATE_WORDS: Record<string, string> = { draft: 'Draft', signed: 'Signed', ended: 'Ended', closed: 'Closed' };
export const INVOICE_STATE_WORDS: Record<string, string> = {
  open: 'Open', partlyPaid: 'Partly paid', paid: 'Paid', overdue: 'Past due', writtenOff: 'Written off', void: 'Void',
};
export const METHOD_WORDS: Record<string, string> = { check: 'Check', cash: 'Cash', card: 'Card', transfer: 'Bank transfer' };
export const COPY_STATE_WORDS: Record<string, string> = { approved: 'Approved', waiting: 'Waiting for approval', stopped: 'Stopped' };
export const LINK_STATE_WORDS: Record<string, string> = { early: 'Not open yet', open: 'Open', ended: 'Ended', revoked: 'Revoked' };
export const LANGUAGE_WORDS: Record<string, string> = { en: 'English', es: 'Spanish' };
export const NIGHT_STATE_WORDS: Record<string, string> = { open: 'Open', signedOff: 'Signed off' };
export const NIGHT_ROLE_WORDS: Record<string, string> = {
  announcer: 'Announcer', spotter: 'Spotter', scorer: 'Official scorer', clock: 'Clock', singer: 'Singer', colourGuard: 'Color guard',
  presenter: 'Presenter', honouree: 'Honoree', official: 'Official', other: 'Other',
};
export const ATTENDANCE_HOW_WORDS: Record<string, string> = {
  tickets: 'From the tickets', counted: 'Counted at the door', estimated: 'Estimated', signOff: 'Said at sign-off',
};
export const ANTHEM_FORM_WORDS: Record<string, string> = { sung: 'Sung', played: 'Played' };
export const FLAG_FORM_WORDS: Record<string, string> = { colourGuard: 'Presented by a color guard', inPlace: 'In its place already' };
export const ROLE_WORDS: Record<string, string> = { director: 'Athletic director', bookkeeper: 'Bookkeeper', announcer: 'Announcer' };
export const OUTCOME_WORDS: Record<string, string> = { given: 'Given', cutShort: 'Cut short', notRead: 'Not read' };
export const WINDOW_WORDS: Record<string, string> = {
  pregame: 'Pregame', betweenPeriods: 'Between periods', timeOut: 'Time-out', halftime: 'Halftime', postgame: 'Postgame', deadBall: 'Dead-ball mention',
};
export const NOT_READ_WORDS: Record<string, string> = {
  noTime: 'No time', playResumed: 'Play resumed', injury: 'An injury', emergency: 'An emergency', equipment: 'The equipment failed',
  copyMissing: 'The words were missing', heldByDirector: 'Held by the director', gameEnded: 'The game ended', forgotten: 'Forgotten', other: 'Something else',
};

export const LEVELS = choices(LEVEL_WORDS);
export const CLASSES = choices(CLASS_WORDS);
export const GAME_STATUSES = choices(GAME_STATUS_WORDS);
export const OWNERS = choices(OWNER_WORDS);
export const ANNOUNCES = choices(ANNOUNCE_WORDS);
export const SPONSOR_STATUSES = choices(SPONSOR_STATUS_WORDS);
export const CONTACT_WAYS = choices(CONTACT_WAY_WORDS);
export const TIMINGS = choices(TIMING_WORDS);
export const COUNTINGS = choices(COUNTING_WORDS);
export const WHOSES = choices(WHOSE_WORDS);
export const SEPARATION_WORDS: Record<string, string> = { none: 'Anywhere', window: 'Not in one window', next: 'Not in one window nor the next', game: 'Not in one game' };
export const SEPARATIONS = choices(SEPARATION_WORDS);
export const WINDOWS = choices(WINDOW_WORDS);
export const REACHES = choices({ season: 'All of its days', game: 'In named games', window: 'In some windows' });
export const PRIORITIES = [1, 2, 3].map((id) => ({ id, name: PRIORITY_WORDS[id]! }));
export const PRICINGS = choices(PRICING_WORDS);
export const POLICIES = choices(POLICY_WORDS);
export const EARNINGS = choices(EARNS_WORDS);
export const OFFER_STATES = choices(OFFER_STATE_WORDS);
export const PRICE_VARIES = choices(PRICE_VARIES_WORDS);
export const TERM_STATES = choices(TERM_STATE_WORDS);
export const INVOICE_STATES = choices(INVOICE_STATE_WORDS);
export const CREDIT_MEMO_STATES = choices({ open: 'Something is left', used: 'Used' });
export const METHODS = choices(METHOD_WORDS);
export const LANGUAGES = choices(LANGUAGE_WORDS);
export const NIGHT_STATES = choices(NIGHT_STATE_WORDS);
export const NIGHT_ROLES = choices(NIGHT_ROLE_WORDS);
export const ANTHEM_FORMS = choices(ANTHEM_FORM_WORDS);
export const FLAG_FORMS = choices(FLAG_FORM_WORDS);
export const ROLES = choices(ROLE_WORDS);
export const NOT_READ_REASONS = choices(NOT_READ_WORDS);

/** The word for a key; a key the table does not know is written apart: "stateSeries" is "State series". */
export function wordFor(words: Record<string, string>, key: string | null | undefined): string {
  if (!key) return '–';
  const apart = key.replace(/([a-z0-9])([A-Z])/g, '$1 $2').replaceAll('-', ' ').toLowerCase();
  return words[key] ?? apart.charAt(0).toUpperCase() + apart.slice(1);
}

/** "Check 1041", "Card, terminal 4". */
export const byWhat = ({ method, reference }: { method: string; reference: string | null }): string =>
  [wordFor({ ...METHOD_WORDS, opening: 'Paid before this began' }, method), reference].filter(Boolean).join(method === 'check' ? ' ' : ', ');
