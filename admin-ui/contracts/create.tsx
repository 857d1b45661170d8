import { CreatePage } from '../forms/record-form.tsx';
import { ContractFields } from './form/fields.tsx';
import { contractFromForm } from './form/from-form.ts';

export const ContractCreate = () => (
  <CreatePage title="New contract" transform={contractFromForm} saveLabel="Keep as a draft">
    <ContractFields />
  </CreatePage>
);
