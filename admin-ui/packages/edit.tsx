import { EditPage } from '../forms/record-form.tsx';
import { PackageFields } from './fields.tsx';
import { fromForm, toForm } from './from-form.ts';
import type { Package } from './types.ts';

export const PackageEdit = () => (
  <EditPage title={(one: Package) => `Change ${one.name}`} expand={toForm} transform={fromForm}>
    <PackageFields />
  </EditPage>
);
