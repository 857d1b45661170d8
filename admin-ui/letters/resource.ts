import { LetterList } from './list.tsx';
import { LetterShow } from './show.tsx';

export const letters = { name: 'messages', list: LetterList, show: LetterShow, recordRepresentation: 'subject' };
