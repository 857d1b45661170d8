import { GLANCE_ROWS } from '../../server/domain/reports/glance.ts';
import type { GlanceRow } from './types.ts';

export const ROWS = GLANCE_ROWS;

export const GLANCE_WORDS: Readonly<Record<GlanceRow, string>> = {
  rosters: 'Rosters', names: 'Names said', people: 'People', reads: 'Reads placed', copy: 'Copy', packet: 'Packet', signOff: 'Sign-off', attendance: 'Attendance',
};
