import type { DeskCue } from '../../../server/domain/night/desk/bundle.ts';
import type { Segment } from '../../../server/domain/packet/segment.ts';

/** What is said large, what is done apart from it and small, how a name is said right below it. */
export function Segments({ segments }: { segments: readonly Segment[] }) {
  return segments.map((segment, place) =>
    segment.kind === 'direction' ? (
      <p key={place} className="desk-now-direction">{segment.text}</p>
    ) : (
      <p key={place} className="desk-now-spoken">
        {segment.text}
        {segment.sayAs !== null && <span className="desk-now-say-as"> say: {segment.sayAs}</span>}
      </p>
    ),
  );
}

const LANGUAGES: Readonly<Record<string, string>> = { en: 'English', es: 'Spanish' };

export function CueWords({ cue }: { cue: DeskCue }) {
  return (
    <>
      {cue.whoText !== null && <p className="desk-now-direction">{cue.whoText}</p>}
      {cue.caution !== null && <p className="desk-now-caution">{cue.caution}</p>}
      {cue.usesFallback && <p className="desk-now-caution">No approved words: the neutral line is read.</p>}
      <div lang={cue.language}><Segments segments={cue.segments} /></div>
      {cue.second !== null && (
        <div lang={cue.second.language} className="desk-now-second-language">
          <p className="desk-now-direction" lang="en">The same in {LANGUAGES[cue.second.language] ?? cue.second.language}; both are one reading</p>
          <Segments segments={cue.second.segments} />
        </div>
      )}
    </>
  );
}
