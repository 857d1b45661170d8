export type { DepartmentView } from '../../server/access/department.dto.ts';
