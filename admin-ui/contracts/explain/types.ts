export type { ExplanationView as Explanation } from '../../../server/billing/changes/explanation.dto.ts';
export type { ExplainedReads, ExplainedSum } from '../../../server/domain/sponsorship/explanation.ts';
