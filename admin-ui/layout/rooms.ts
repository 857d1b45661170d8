export interface Room {
  title: string;
  pages: readonly { to: string; label: string; resource: string }[];
}

const page = (resource: string, label: string, to = `/${resource}`) => ({ resource, label, to });

/** The rooms of the house in the order of the job. */
export const ROOMS: readonly Room[] = [
  { title: 'Now', pages: [page('home', 'Home', '/'), page('nights', 'Nights')] },
  {
    title: 'Calendar',
    pages: [page('games', 'Games'), page('teams', 'Teams'), page('schools', 'Schools'), page('venues', 'Venues'), page('seasons', 'Seasons'), page('window-places', 'Places in windows'), page('plan', 'Plan board'), page('calendar-feeds', 'Calendar feeds')],
  },
  {
    title: 'Selling',
    pages: [
      page('calls', 'Who to call'),
      page('offers', 'Offers'),
      page('packages', 'Packages'),
      page('rate-card-lines', 'Rate card'),
      page('can-we-promise', 'Can we promise this?'),
      page('left-to-sell', 'Left to sell'),
    ],
  },
  {
    title: 'Promises',
    pages: [
      page('contracts', 'Contracts'), page('sponsors', 'Sponsors'), page('copies', 'Copy'), page('read-kinds', 'Read kinds'),
      page('sponsor-categories', 'Categories'), page('scripts', 'Scripts'),
    ],
  },
  {
    title: 'Money',
    pages: [
      page('open-money', 'Open money'), page('billing-runs', 'Billing runs'), page('invoices', 'Invoices'), page('credit-memos', 'Credit memos'), page('payments', 'Payments'), page('receipts', 'Receipts'), page('deposit-slips', 'Deposit slips'),
      page('check-entry', 'Enter checks'), page('documents', 'Find a document', '/find'), page('payers', 'Payers'), page('sellers', 'Sellers of record'),
      page('messages', 'Letters'),
    ],
  },
  {
    title: 'Proof',
    pages: [
      page('glance', 'Season at a glance'),
      page('at-risk', 'Promises at risk'),
      page('makegood-proposals', 'Makegoods'),
      page('read-disputes', 'Disputes'),
      page('performance-statements', 'Statements'),
      page('income-board', 'Income'),
      page('renewals', 'Renewals'),
    ],
  },
  {
    title: 'Books',
    pages: [
      page('trial-balance', 'Trial balance'), page('aging', 'Aging'), page('account-ledger', 'Account ledger'), page('unearned-revenue', 'Unearned revenue'),
      page('income-by-team', 'Income by team'), page('months', 'Months'), page('journal-batches', 'Journal'), page('accounts', 'Accounts'),
    ],
  },
  {
    title: 'Office',
    pages: [
      page('imports', 'Imports'), page('people', 'People and roles'), page('department', 'Department'), page('audit', 'Audit'), page('seals', 'Seals'),
    ],
  },
];
