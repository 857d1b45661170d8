export type { LinkView as TableLink } from '../../../server/access/link.dto.ts';
export type { NewTableLinkView as NewTableLink } from '../../../server/night/table/table.dto.ts';
