export type { PersonView as Person } from '../../server/access/person.dto.ts';
