import { createHash } from 'node:crypto';
import type { StatementContent } from '../../domain/reports/statement-content.ts';

/**
 * Of what the books say, and nothing else: not of names that may be put right, not of the last day where nothing happened in
 * between, and not of the pace, which moves with the calendar.
 */
export function digestOfStatement({ lines, benefits, nights, changes, account }: StatementContent): string {
  const said = {
    lines: lines.map((line) => [line.commitmentId, line.promised, line.given, line.madeGood, line.credited, line.released, line.carried, line.stillToCome, line.extra]),
    benefits: benefits.map((one) => [one.name, one.quantity, one.delivered, one.proofs.map(({ on, quantity, proof }) => [on, quantity, proof])]),
    nights: nights.map((night) => [night.nightId, night.heldOn, night.attendance, night.reads.map((read) => [read.readKindName, read.outcome, read.clock, read.windowName, read.forMissedOn])]),
    changes: changes.map(({ on, sentence }) => [on, sentence]),
    account: account.map((line) => [line.on, line.chargeCents, line.creditCents, line.balanceCents]),
  };
  return createHash('sha256').update(JSON.stringify(said)).digest('hex');
}
