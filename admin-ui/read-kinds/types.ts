export type { ReadKindView as ReadKind } from '../../server/sponsorship/read-kind.dto.ts';
