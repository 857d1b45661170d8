import { ReservedOfCategory } from '../company/reserved-of-category.tsx';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import type { Category } from './types.ts';

export const CategoryShow = () => (
  <ShowPage<Category> title={(category) => category.name}>
    {(category) => (
      <>
        <Section title="Category">
          <Facts facts={[['Name', category.name], ['Taken', category.isBlocked ? 'Not taken without a written exception' : 'Yes'], ['Food or drink', category.isFood ? 'Yes: cautioned inside the school day' : 'No']]} />
        </Section>
        <ReservedOfCategory categoryId={category.id} />
      </>
    )}
  </ShowPage>
);
