import { NumberInput, maxValue, minValue } from 'react-admin';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

const percent = (points: number | null) => (points === null || points === undefined ? '' : points / 100);
const points = (typed: string | number | null) => (typed === '' || typed === null ? null : Math.round(Number(typed) * 100));

export function SellerFields() {
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={120} required helperText="Who signs and banks: the school or a booster club" />
        <WordsInput source="numberPrefix" label="Letters before invoice numbers" longest={6} required helperText="Capitals and digits, such as TRHS" />
        <WordsInput source="address" label="Address" longest={300} lines={2} />
        <WordsInput source="remitTo" label="Where to pay" longest={300} lines={2} helperText="Printed on every invoice" />
      </FormGrid>
      <FormPart title="Invoices" why="Local rules and the business office decide about sales tax and terms; this only carries out what they say.">
        <FormGrid>
          <CountInput source="termsDays" label="Days to pay" max={365} defaultValue={30} required />
          <NumberInput source="taxBasisPoints" label="Sales tax in percent" defaultValue={0} step={0.01} format={percent} parse={points} validate={[minValue(0), maxValue(10_000)]} helperText={false} />
          <WordsInput source="taxIdentity" label="Tax identity" longest={40} />
        </FormGrid>
        <FlagInput source="keepsBooksHere" label="Keeps its books here" defaultValue helperText="Off where a club sells and banks elsewhere and the school only reads" />
      </FormPart>
      <FormPart title="Who answers questions about an invoice">
        <FormGrid columns={3}>
          <WordsInput source="contactName" label="Name" longest={120} />
          <WordsInput source="contactEmail" label="E-mail" longest={254} type="email" />
          <WordsInput source="contactPhone" label="Telephone" longest={40} type="tel" />
        </FormGrid>
      </FormPart>
    </>
  );
}
