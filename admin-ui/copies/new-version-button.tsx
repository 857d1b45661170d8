import { only } from '../api/changes.ts';
import { CommandButton } from '../forms/command-button.tsx';
import type { Copy } from './types.ts';
import { WordsFields } from './words-fields.tsx';

export function NewVersionButton({ copy }: { copy: Copy }) {
  const newest = copy.versions.toSorted((a, b) => b.number - a.number)[0];
  return (
    <CommandButton
      label="New version"
      title={`New version of ${copy.title}`}
      explains={newest?.changeNote ? `${newest.changeAskedByName} asked: “${newest.changeNote}” The version before stays in use until this one is approved.` : 'The version before stays in use until this one is approved.'}
      path={`/copies/${copy.id}/versions`}
      defaults={{ language: newest?.language ?? 'en', text: newest?.text ?? '', secondText: newest?.secondText ?? '' }}
      body={(values) => only(values, 'text', 'secondText', 'startsOn', 'endsOn', 'language')}
      success="The version is added and waits for approval."
      wide
    >
      <WordsFields sponsorId={copy.sponsorId} />
    </CommandButton>
  );
}
