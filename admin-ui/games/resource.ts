import { GameCreate } from './create.tsx';
import { GameEdit } from './edit.tsx';
import { GameList } from './list.tsx';
import { GameShow } from './show.tsx';

export const games = { name: 'games', list: GameList, create: GameCreate, edit: GameEdit, show: GameShow, recordRepresentation: 'label' };
