export type { SellerView as Seller } from '../../server/sponsorship/seller.dto.ts';
