import { BillingRunCreate } from './create.tsx';
import { BillingRunList } from './list.tsx';
import { BillingRunShow } from './show.tsx';

export const billingRuns = { name: 'billing-runs', list: BillingRunList, show: BillingRunShow, create: BillingRunCreate, recordRepresentation: 'throughDay' };
