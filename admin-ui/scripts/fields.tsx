import { useWatch } from 'react-hook-form';
import { VARIANTS } from '../../server/domain/packet/script.ts';
import type { Moment } from '../../server/domain/packet/script.ts';
import { PrayerCaution } from '../department/prayer-caution.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { SPORTS } from '../seasons/sports.ts';
import { LANGUAGES } from '../words/choices.ts';
import { ScriptEditor } from './editor.tsx';
import { MOMENT_CHOICES, variantName } from './moments.ts';

export function ScriptFields() {
  const moment = useWatch({ name: 'moment' }) as Moment | undefined;
  const variants = moment ? VARIANTS[moment] : undefined;
  return (
    <>
      <FormGrid>
        <WordsInput source="title" label="Title" longest={120} required />
        <ChoiceInput source="moment" label="Moment" choices={MOMENT_CHOICES} required />
        <ChoiceInput source="sport" label="Sport" choices={SPORTS} helperText="Empty for every sport" />
        <ChoiceInput source="language" label="Language" choices={LANGUAGES} defaultValue="en" required />
        {variants && <ChoiceInput source="variant" label="Form" choices={variants.map((id) => ({ id, name: variantName(id) }))} helperText="The night says which form is read" />}
      </FormGrid>
      {moment === 'prayer' && <PrayerCaution />}
      <ScriptEditor />
      <FormPart title="In the packet">
        <FormGrid>
          <CountInput source="place" label="Order within the moment" min={1} max={99} defaultValue={1} required />
          <FlagInput source="isOn" label="Goes into packets" defaultValue />
        </FormGrid>
      </FormPart>
    </>
  );
}

const FIELDS = ['moment', 'sport', 'variant', 'language', 'title', 'text', 'secondLanguage', 'secondText', 'isOn', 'place'] as const;

/** A form whose second language was emptied sends neither. */
export function scriptForm(values: Record<string, unknown>): Record<string, unknown> {
  const form = Object.fromEntries(FIELDS.filter((field) => field in values).map((field) => [field, values[field] === '' ? null : values[field]]));
  return form.secondLanguage && form.secondText ? form : { ...form, secondLanguage: null, secondText: null };
}
