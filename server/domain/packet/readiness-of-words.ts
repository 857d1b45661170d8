import { mustFix } from './readiness-line.ts';
import type { Mend } from './readiness-line.ts';
import type { Looked, ReadinessLine, TextRedacted } from './readiness.ts';

const scriptAt = (scriptId: string | null): Mend => ({ resource: 'scripts', id: scriptId });

function mendOf({ cue, scriptId }: TextRedacted, { night }: Looked): Mend {
  if (cue === null) return { resource: 'nights', id: night.nightId, tab: 'people' };
  if (cue.moment === 'honours') return { resource: 'nights', id: night.nightId, tab: 'honours' };
  if (!cue.isSponsored) return scriptAt(scriptId);
  const reads = night.games.flatMap((game) => [...game.placements, ...game.mentions]);
  return { resource: 'copies', id: reads.find(({ cueKey }) => cueKey === cue.cueKey)?.facts?.copyId ?? null };
}

/** Scripts that cannot be filled in or have a hole in them tonight, and any text that names a student it must not name. */
export function linesOfWords(looked: Looked): ReadinessLine[] {
  const { broken, empty, redacted } = looked;
  return [
    ...broken.map(({ title, reason, scriptId }) => mustFix('script-broken', `The script “${title}” could not be filled in: ${reason}`, scriptAt(scriptId))),
    ...empty.map(({ title, reason, scriptId }) => mustFix('script-variable-empty', `The script “${title}” says “${reason}”, and tonight nothing stands there.`, scriptAt(scriptId))),
    ...redacted.map((one) => {
      const where = one.cue === null ? 'A text of the night' : `“${one.cue.title}”`;
      return mustFix('name-not-to-be-used', `${where} named a student whose family chose otherwise; it now says: “${one.text}”`, mendOf(one, looked), one.cue?.gameId ?? null);
    }),
  ];
}
