/** A package as its page has it. */
export interface PackageOffered {
  id: string;
  seasonId: string;
  name: string;
  priceCents: number;
  lines: {
    readKindId: string | null;
    benefitName: string | null;
    counting: string | null;
    quantity: number;
    rateCents: number;
    leastPerGame: number | null;
    mostPerGame: number | null;
  }[];
}

/** The fields of an offer that a package fills in; everything may still be changed. */
export function packageIntoForm({ id, seasonId, name, priceCents, lines }: PackageOffered): Record<string, unknown> {
  const reads = lines.filter((line) => line.readKindId !== null);
  const benefits = lines.filter((line) => line.benefitName !== null);
  return {
    packageId: id,
    seasonId,
    title: name,
    priceCents,
    readLines: reads.map(({ readKindId, counting, quantity, rateCents, leastPerGame, mostPerGame }) => ({
      readKindId, counting: counting ?? 'perTerm', rateCents, leastPerGame, mostPerGame, ...(counting === 'onOccurrence' ? { readsAtLeast: quantity || null } : { reads: quantity }),
    })),
    benefitLines: benefits.map(({ benefitName, quantity, rateCents }) => ({ name: benefitName, quantity, rateCents })),
  };
}
