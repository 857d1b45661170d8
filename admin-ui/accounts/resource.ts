import { AccountList } from './list.tsx';

export const accounts = { name: 'accounts', list: AccountList, recordRepresentation: 'name' };
