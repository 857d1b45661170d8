export type { SchoolView as School } from '../../server/season/school.dto.ts';
