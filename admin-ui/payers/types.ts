export type { PayerView as Payer } from '../../server/sponsorship/payer.dto.ts';
