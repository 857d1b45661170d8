import { CreatePage } from '../forms/record-form.tsx';
import { fromForm } from './from-form.ts';
import { PackageFields } from './fields.tsx';

export const PackageCreate = () => (
  <CreatePage title="Put a package together" defaults={{ isOffered: true, lines: [{ what: 'read', counting: 'perTerm' }] }} transform={fromForm}>
    <PackageFields />
  </CreatePage>
);
