export type * from './statement.dto.ts';
