export type { SeasonView as Season } from '../../server/season/season.dto.ts';
