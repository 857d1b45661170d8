import { addCents, centsOf, shareOfCents } from '../../money.ts';

/** The price of one read of a kind, or of one other benefit by its name. */
export interface PricedKind {
  readonly readKindId: string | null;
  readonly benefitName: string | null;
  /** cents */
  readonly priceCents: number;
}

/**
 * What a season's prices become in another: so much higher, rounded half up to the cent. What has a price there already
 * keeps it.
 *
 * @param increaseBasisPoints hundredths of a percent; 300 is 3 %
 */
export function rateCardCopy<Line extends PricedKind>(from: readonly Line[], to: readonly Line[], increaseBasisPoints: number): { toCopy: Line[]; alreadySet: Line[] } {
  const thereIs = (line: PricedKind) => to.find((one) => one.readKindId === line.readKindId && one.benefitName === line.benefitName);
  const raised = (priceCents: number) => addCents(centsOf(priceCents), shareOfCents(centsOf(priceCents), increaseBasisPoints));
  return {
    toCopy: from.filter((line) => !thereIs(line)).map((line) => ({ ...line, priceCents: raised(line.priceCents) })),
    alreadySet: from.flatMap((line) => thereIs(line) ?? []),
  };
}
