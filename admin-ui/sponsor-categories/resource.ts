import { CategoryCreate } from './create.tsx';
import { CategoryEdit } from './edit.tsx';
import { CategoryList } from './list.tsx';
import { CategoryShow } from './show.tsx';

export const sponsorCategories = { name: 'sponsor-categories', create: CategoryCreate, edit: CategoryEdit, list: CategoryList, show: CategoryShow, recordRepresentation: 'name' };
