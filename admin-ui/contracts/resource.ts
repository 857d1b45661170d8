import { ContractCreate } from './create.tsx';
import { ContractEdit } from './edit.tsx';
import { ContractList } from './list.tsx';
import { ContractShow } from './show.tsx';

export const contracts = { name: 'contracts', list: ContractList, create: ContractCreate, edit: ContractEdit, show: ContractShow, recordRepresentation: 'title' };
