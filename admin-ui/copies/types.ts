export type { CopyVersionView as CopyVersion, CopyView as Copy } from '../../server/sponsorship/copy.dto.ts';
