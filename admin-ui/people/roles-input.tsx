import { CheckboxGroupInput, required } from 'react-admin';
import { ROLES } from '../words/choices.ts';

const validate = [required('Give at least one role.')];

export const RolesInput = () => <CheckboxGroupInput source="roles" label="Roles" choices={ROLES} validate={validate} helperText="One person may hold several." />;
