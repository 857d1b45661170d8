export type { ReadDisputeView as ReadDispute } from '../../server/makegoods/disputes/read-dispute.dto.ts';
