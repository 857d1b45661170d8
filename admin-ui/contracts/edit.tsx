import { EditPage } from '../forms/record-form.tsx';
import { ContractFields } from './form/fields.tsx';
import { contractFromForm, contractIntoForm } from './form/from-form.ts';
import type { Contract } from './types.ts';

export const ContractEdit = () => (
  <EditPage title={(contract: Contract) => `Change ${contract.title}`} transform={contractFromForm} expand={contractIntoForm}>
    <ContractFields />
  </EditPage>
);
