import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { ListPage } from '../lists/list-page.tsx';
import type { Category } from './types.ts';

export const CategoryList = () => (
  <ListPage<Category>
    title="Categories"
    addLabel="Add a category"
    sort={{ field: 'name', order: 'ASC' }}
    empty="Categories keep rivals apart and say whom the department does not take: tobacco, vaping, alcohol and gambling to begin with."
    columns={[
      { label: 'Category', sortBy: 'name', show: (category) => <Go resource="sponsor-categories" id={category.id}>{category.name}</Go> },
      { label: 'Food or drink', show: (category) => (category.isFood ? 'Yes' : 'No') },
      { label: 'Taken', show: (category) => (category.isBlocked ? <Tag mood="bad">Not taken</Tag> : <Tag mood="good">Taken</Tag>) },
    ]}
  />
);
