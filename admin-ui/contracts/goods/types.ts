export type { GoodsDeliveryView as GoodsDelivery, GoodsPromiseView as GoodsPromise, GoodsView as Goods } from '../../../server/billing/goods/goods.dto.ts';
