import { PackageCreate } from './create.tsx';
import { PackageEdit } from './edit.tsx';
import { PackageList } from './list.tsx';
import { PackageShow } from './show.tsx';

export const packages = { name: 'packages', create: PackageCreate, edit: PackageEdit, list: PackageList, show: PackageShow, recordRepresentation: 'name' };
