export type { AccountView as Account } from '../../server/ledger/account.dto.ts';
