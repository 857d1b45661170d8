import polyglotI18nProvider from 'ra-i18n-polyglot';
import english from 'ra-language-english';

const named = (one: string, many: string) => ({ name: `${one} |||| ${many}` });

/** Plain words instead of the framework's: what a coach would say on the telephone. */
const messages = {
  ...english,
  ra: {
    ...english.ra,
    action: { ...english.ra.action, create: 'Add', clear_input_value: 'Empty this field', remove_all_filters: 'Show everything', add: 'Add a row', remove: 'Take this row out', undo: 'Undo' },
    auth: {
      ...english.ra.auth,
      auth_check_error: 'Sign in to go on.',
      sign_in_error: 'That e-mail and password do not belong together.',
      logout: 'Sign out',
    },
    notification: {
      ...english.ra.notification,
      created: 'Added.',
      updated: 'Saved.',
      deleted: 'Removed.',
      item_doesnt_exist: 'This is not here, or not yours to see.',
      http_error: 'The server does not answer. Look at the network connection and try again.',
      logged_out: 'You were signed out. Sign in again to go on.',
      not_authorized: 'Your role does not allow this.',
    },
    message: {
      ...english.ra.message,
      invalid_form: 'Something in the form is missing or not right. Look at the marked fields.',
      unsaved_changes: 'Your changes are not saved. Leave without saving them?',
    },
    navigation: {
      ...english.ra.navigation,
      no_results: 'Nothing here.',
      page_rows_per_page: 'On one page:',
      page_range_info: '%{offsetBegin} to %{offsetEnd} of %{total}',
    },
    validation: {
      ...english.ra.validation,
      required: 'This is needed.',
      minValue: 'At least %{min}.',
      maxValue: 'At most %{max}.',
      maxLength: 'At most %{max} letters.',
      number: 'Write a number.',
      email: 'Write an e-mail address.',
    },
  },
  resources: {
    schools: named('School', 'Schools'),
    venues: named('Venue', 'Venues'),
    seasons: named('Season', 'Seasons'),
    teams: named('Team', 'Teams'),
    games: named('Game', 'Games'),
    nights: named('Night', 'Nights'),
    sponsors: named('Sponsor', 'Sponsors'),
    'sponsor-categories': named('Category', 'Categories'),
    sellers: named('Seller of record', 'Sellers of record'),
    payers: named('Payer', 'Payers'),
    'read-kinds': named('Read kind', 'Read kinds'),
    packages: named('Package', 'Packages'),
    'rate-card-lines': named('Price', 'Rate card'),
    offers: named('Offer', 'Offers'),
    contracts: named('Contract', 'Contracts'),
    copies: named('Copy', 'Copy'),
    scripts: named('Script', 'Scripts'),
    'billing-runs': named('Billing run', 'Billing runs'),
    invoices: named('Invoice', 'Invoices'),
    'credit-memos': named('Credit memo', 'Credit memos'),
    'performance-statements': named('Statement', 'Statements'),
    'statement-runs': named('Run of statements', 'Runs of statements'),
    messages: named('Letter', 'Letters'),
    payments: named('Payment', 'Payments'),
    receipts: named('Receipt', 'Receipts'),
    'deposit-slips': named('Deposit slip', 'Deposit slips'),
    months: named('Month', 'Months'),
    'journal-batches': named('Batch', 'Journal'),
    'journal-layouts': named('Journal layout', 'Journal layouts'),
    accounts: named('Account', 'Accounts'),
    people: named('Person', 'People and roles'),
    audit: named('Change', 'Audit'),
    'makegood-proposals': named('Makegood', 'Makegoods'),
    'read-disputes': named('Dispute', 'Disputes'),
    'plan-proposals': named('Plan', 'Plans proposed'),
    seals: named('Seal', 'Seals'),
  },
};

export const i18nProvider = polyglotI18nProvider(() => messages, 'en', [{ locale: 'en', name: 'English' }], { allowMissing: true });
