export type {
  DepositSlipLineView as DepositSlipLine, DepositSlipView as DepositSlip, DrawerLineView as DrawerLine, DrawerView as Drawer, WholeDepositSlipView as WholeDepositSlip,
} from '../../server/billing/receipts/deposit-slip.dto.ts';
