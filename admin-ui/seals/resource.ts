import { SealList } from './list.tsx';

export const seals = { name: 'seals', list: SealList };
