import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { DepartmentForm } from './form.tsx';
import type { DepartmentView } from './types.ts';

/** The department and what it decided for itself. */
export function DepartmentPage() {
  const asked = useServer<DepartmentView>('/department');
  return (
    <>
      <Title title="Department" />
      <Reading of={asked}>
        {(department) =>
          iMay('department', 'edit') ? (
            <DepartmentForm key={department.version} department={department} />
          ) : (
            <Section title={department.name}>
              <Facts facts={[['Time zone', department.zone], ['Currency', department.currency], ['Locale', department.locale]]} />
            </Section>
          )
        }
      </Reading>
    </>
  );
}
