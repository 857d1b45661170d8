import { checkCopy, checkMessage } from '../domain/sponsorship/copy-check.ts';
import type { CopyLanguage, KnownOfSponsor, MessageCheck } from '../domain/sponsorship/copy-check.ts';
import { MARKS_EXPLAINED, NOT_TAX_ADVICE, VERDICTS } from '../domain/sponsorship/copy-mark.ts';
import type { CopyCheckView, CopyVersionView, CopyView } from './copy.dto.ts';

/** A copy as the database hands it, with what the check has to know of its sponsor. */
export interface CopyRow extends Omit<CopyView, 'versions' | 'marked' | 'fallbackMarks'> {
  versions: Omit<CopyVersionView, 'check'>[];
  slogans: string[];
}

/** Stopped beats all; words count as approved once one version is. */
export const STATE = `case when copy.stopped_at is not null then 'stopped'
  when exists (select 1 from copy_version as version where version.department_id = $1 and version.copy_id = copy.id and version.approved_on is not null)
    then 'approved' else 'waiting' end`;

export const VIEW = `copy.id, copy.sponsor_id as "sponsorId", sponsor.name as "sponsorName", copy.read_kind_id as "readKindId", read_kind.name as "readKindName",
  copy.title, copy.fallback_text as "fallbackText", copy.rotates, copy.stopped_at as "stoppedAt", copy.stopped_because as "stoppedBecause",
  copy.stopped_by_name as "stoppedByName", copy.version, ${STATE} as state,
  (select coalesce(jsonb_agg(slogan.text order by slogan.id), '[]') from slogan where slogan.department_id = $1 and slogan.sponsor_id = copy.sponsor_id) as slogans,
  (select coalesce(jsonb_agg(jsonb_build_object('id', version.id, 'number', version.number, 'language', version.language, 'text', version.text,
      'secondLanguage', version.second_language, 'secondText', version.second_text,
      'startsOn', version.starts_on, 'endsOn', version.ends_on, 'approvedOn', version.approved_on, 'approvedByName', version.approved_by_name,
      'approvedHow', version.approved_how, 'approvalNote', version.approval_note, 'changeAskedAt', to_char(version.change_asked_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
      'changeAskedByName', version.change_asked_by_name, 'changeNote', version.change_note) order by version.number desc), '[]')
     from copy_version as version where version.department_id = $1 and version.copy_id = copy.id) as versions`;

export const FROM = `copy join sponsor on sponsor.department_id = copy.department_id and sponsor.id = copy.sponsor_id
  join read_kind on read_kind.department_id = copy.department_id and read_kind.id = copy.read_kind_id`;

export function copyViewOf({ slogans, versions, ...row }: CopyRow): CopyView {
  const known = { sponsorName: row.sponsorName, slogans };
  const checked = versions.map((version) => ({ ...version, check: checkOf(version, known) }));
  const marked = [...new Set((checked[0]?.check.texts ?? []).flatMap((text) => text.marks.map((mark) => mark.kind)))];
  const language = versions[0]?.language ?? 'en';
  return { ...row, marked, fallbackMarks: [...checkCopy(row.fallbackText, language, known).marks], versions: checked };
}

/** Both texts of a version are one message. */
export function checkOf(version: { text: string; language?: CopyLanguage; secondText?: string | null; secondLanguage?: CopyLanguage | null }, known: KnownOfSponsor): MessageCheck {
  const language = version.language ?? 'en';
  const second = version.secondText ? [{ text: version.secondText, language: version.secondLanguage ?? (language === 'en' ? ('es' as const) : ('en' as const)) }] : [];
  return checkMessage([{ text: version.text, language }, ...second], known);
}

export function checkViewOf({ verdict, texts }: MessageCheck): CopyCheckView {
  const { title, paragraph } = VERDICTS[verdict];
  return {
    verdict,
    verdictTitle: title,
    paragraph,
    texts: texts.map(({ language, marks, slogans }) => ({ language, marks: marks.map((mark) => ({ ...mark, ...MARKS_EXPLAINED[mark.kind] })), slogans: [...slogans] })),
    caution: NOT_TAX_ADVICE,
  };
}
