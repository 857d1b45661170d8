import { mayUse, type Right } from '../../server/domain/access/rights.ts';
import { knownMe, type Role } from './me.ts';

/** Which right of the server's table opens a room, and which one changes what is in it. */
const RIGHTS: Record<string, { see: Right; change: Right }> = {
  home: { see: 'be here', change: 'be here' },
  schools: { see: 'see the season', change: 'change the season' },
  venues: { see: 'see the season', change: 'change the season' },
  seasons: { see: 'see the season', change: 'change the season' },
  'season-roll-over': { see: 'sign contracts', change: 'sign contracts' },
  teams: { see: 'see the season', change: 'change the season' },
  rosters: { see: 'see students', change: 'change students' },
  games: { see: 'see the season', change: 'change the season' },
  nights: { see: 'see the season', change: 'change the season' },
  packets: { see: 'see packets', change: 'issue packets' },
  plan: { see: 'see contracts', change: 'plan placements' },
  placements: { see: 'see packets', change: 'plan placements' },
  'plan-proposals': { see: 'see contracts', change: 'plan placements' },
  log: { see: 'log a night', change: 'log a night' },
  'sign-off': { see: 'sign off a night', change: 'sign off a night' },
  amendments: { see: 'log a night', change: 'amend a night' },
  sponsors: { see: 'see contracts', change: 'change contracts' },
  packages: { see: 'see contracts', change: 'make offers' },
  calls: { see: 'see contracts', change: 'make offers' },
  'sponsor-categories': { see: 'see contracts', change: 'change contracts' },
  sellers: { see: 'see contracts', change: 'change contracts' },
  payers: { see: 'see contracts', change: 'change contracts' },
  'read-kinds': { see: 'see contracts', change: 'change contracts' },
  'can-we-promise': { see: 'see contracts', change: 'see contracts' },
  'left-to-sell': { see: 'see contracts', change: 'see contracts' },
  'rate-card-lines': { see: 'see contracts', change: 'change contracts' },
  'reserved-categories': { see: 'see contracts', change: 'make offers' },
  'window-places': { see: 'see the season', change: 'change the season' },
  offers: { see: 'see contracts', change: 'make offers' },
  contracts: { see: 'see contracts', change: 'change contracts' },
  'makegood-proposals': { see: 'see contracts', change: 'change contracts' },
  'read-disputes': { see: 'see contracts', change: 'change contracts' },
  'contract-changes': { see: 'see contracts', change: 'sign contracts' },
  copies: { see: 'see copy', change: 'change copy' },
  slogans: { see: 'see copy', change: 'change copy' },
  'calendar-feeds': { see: 'give out links', change: 'give out links' },
  links: { see: 'give out links', change: 'give out links' },
  scripts: { see: 'see packets', change: 'change copy' },
  'billing-runs': { see: 'see money', change: 'bill' },
  invoices: { see: 'see money', change: 'bill' },
  receipts: { see: 'take receipts', change: 'take receipts' },
  'deposit-slips': { see: 'see money', change: 'record payments' },
  'check-entry': { see: 'record payments', change: 'record payments' },
  documents: { see: 'see money', change: 'see money' },
  'credit-memos': { see: 'see money', change: 'bill' },
  payments: { see: 'see money', change: 'record payments' },
  months: { see: 'see money', change: 'close a month' },
  accounts: { see: 'see money', change: 'export the journal' },
  messages: { see: 'see money', change: 'send letters' },
  'performance-statements': { see: 'see money', change: 'issue statements' },
  'statement-runs': { see: 'see money', change: 'issue statements' },
  'at-risk': { see: 'see contracts', change: 'see contracts' },
  glance: { see: 'see packets', change: 'see packets' },
  'open-money': { see: 'see money', change: 'record payments' },
  'write-offs': { see: 'see money', change: 'approve write-offs' },
  'income-board': { see: 'see money', change: 'see money' },
  renewals: { see: 'see contracts', change: 'make offers' },
  'trial-balance': { see: 'see money', change: 'see money' },
  'account-ledger': { see: 'see the journal', change: 'see the journal' },
  aging: { see: 'see money', change: 'see money' },
  'unearned-revenue': { see: 'see money', change: 'see money' },
  'income-by-team': { see: 'see money', change: 'see money' },
  'journal-batches': { see: 'see the journal', change: 'export the journal' },
  'journal-layouts': { see: 'see the journal', change: 'export the journal' },
  imports: { see: 'import the season', change: 'import the season' },
  people: { see: 'see people', change: 'change people' },
  department: { see: 'be here', change: 'change the department' },
  audit: { see: 'see the audit', change: 'change the department' },
  seals: { see: 'see the audit', change: 'change the department' },
};

const LOOKS = new Set(['list', 'show']);

/** The table by which the server refuses decides which buttons are drawn. */
export function mayDo(roles: readonly Role[], resource: string, action: string): boolean {
  const rights = RIGHTS[resource];
  return rights !== undefined && mayUse(roles, LOOKS.has(action) ? rights.see : rights.change);
}

/** Whether the person signed in may do this. */
export function iMay(resource: string, action: string): boolean {
  return mayDo(knownMe()?.roles ?? [], resource, action);
}
