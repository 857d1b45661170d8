import { CheckEntryController } from './check-entry.controller.ts';
import { DepositSlipLine } from './deposit-slip-line.entity.ts';
import { DepositSlipPrinting } from './deposit-slip-printing.service.ts';
import { DepositSlipViews } from './deposit-slip-view.service.ts';
import { DepositSlipController } from './deposit-slip.controller.ts';
import { DepositSlip } from './deposit-slip.entity.ts';
import { DepositSlipService } from './deposit-slip.service.ts';
import { DrawerService } from './drawer.service.ts';
import { ReceiptPrinting } from './receipt-printing.service.ts';
import { ReceiptViews } from './receipt-view.service.ts';
import { ReceiptController } from './receipt.controller.ts';
import { Receipt } from './receipt.entity.ts';
import { ReceiptService } from './receipt.service.ts';
import { Takers } from './takers.service.ts';

/** What the module of billing is told of receipts and deposits. */
export const receiptEntities = [Receipt, DepositSlip, DepositSlipLine];

export const receiptControllers = [ReceiptController, DepositSlipController, CheckEntryController];

export const receiptServices = [ReceiptService, ReceiptViews, ReceiptPrinting, DepositSlipService, DepositSlipViews, DepositSlipPrinting, DrawerService, Takers];
