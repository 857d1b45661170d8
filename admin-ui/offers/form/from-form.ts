import type { RaRecord } from 'react-admin';
import { exclusivitiesOf } from '../../company/exclusivity-values.ts';
import { contractFromForm } from '../../contracts/form/from-form.ts';
import { choiceOf } from '../../contracts/billing-plan.ts';
import type { BillingPlan } from '../../contracts/types.ts';

const OWN = ['sponsorId', 'sellerId', 'payerId', 'packageId', 'title', 'priceVariesWith', 'cancelledGamePolicy', 'years', 'lapsesOn', 'holdsInventory', 'note', 'exclusivities'] as const;
const OF_TERM = ['seasonId', 'startsOn', 'endsOn', 'pricing', 'priceCents', 'billAtLeastCents', 'billAtMostCents', 'billingPlan'] as const;

type Fields = Record<string, unknown>;

/** What the form of an offer sends: the term lies flat, since an offer has only one. */
export function offerFromForm(values: RaRecord): Fields {
  const { term, commitments, benefits } = contractFromForm(values) as { term: Fields; commitments: unknown; benefits: unknown };
  const own = Object.fromEntries(OWN.map((name) => [name, values[name] ?? null]));
  if (values['exclusivities'] === undefined) delete own['exclusivities'];
  else own['exclusivities'] = exclusivitiesOf(values);
  const years = Number(values['years'] ?? 1);
  return {
    ...own,
    ...Object.fromEntries(OF_TERM.map((name) => [name, term[name] ?? null])),
    years,
    increaseBasisPoints: years > 1 ? Math.round(Number(values['increasePercent'] ?? 0) * 100) : 0,
    readLines: commitments,
    benefitLines: benefits,
  };
}

/** The same the other way round; it takes what another page knows of an offer too. */
export function offerIntoForm(offer: object): Fields {
  const fields = offer as Fields;
  const { readLines, benefitLines, increaseBasisPoints, billingPlan, ...rest } = fields;
  const term: Fields = Object.fromEntries(OF_TERM.filter((name) => fields[name] !== undefined).map((name) => [name, fields[name]]));
  const plan = billingPlan as BillingPlan | undefined;
  return {
    ...rest,
    ...(fields['version'] === undefined ? {} : { readLines, benefitLines, increaseBasisPoints, billingPlan }),
    ...(increaseBasisPoints === undefined ? {} : { increasePercent: Number(increaseBasisPoints) / 100 }),
    term: { ...term, ...(plan ? { billingPlan: { ...plan, kind: choiceOf(plan) } } : {}) },
    ...(readLines === undefined ? {} : { commitments: readLines }),
    ...(benefitLines === undefined ? {} : { benefits: benefitLines }),
  };
}
