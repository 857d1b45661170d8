export type { HonouredStudentView as HonouredStudent, HonoursListView as HonoursList } from '../../../server/packet/honours-list.dto.ts';
