export type { RateCardLineView as RateCardLine } from '../../server/sponsorship/rate-card-line.dto.ts';
