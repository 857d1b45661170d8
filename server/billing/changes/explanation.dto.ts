import type { Explanation } from '../../domain/sponsorship/explanation.ts';

/** The figures of a contract in plain words; empty before it is signed. */
export interface ExplanationView extends Explanation {
  contractId: string;
  /** who decides how revenue is shown in the district's own books */
  consult: string;
}
