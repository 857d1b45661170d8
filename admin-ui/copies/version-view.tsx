import { Alert, Box, Typography } from '@mui/material';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { iMay } from '../session/rights.ts';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { ApproveButton } from './approve-button.tsx';
import { CheckSheet } from './check-sheet.tsx';
import type { Copy, CopyVersion } from './types.ts';

function daysOf({ startsOn, endsOn }: CopyVersion): string {
  if (startsOn && endsOn) return `${dayText(startsOn)} to ${dayText(endsOn)}`;
  if (startsOn) return `from ${dayText(startsOn)}`;
  return endsOn ? `until ${dayText(endsOn)}` : 'all season';
}

function languagesOf({ language, secondLanguage }: CopyVersion): string {
  const first = wordFor(LANGUAGE_WORDS, language);
  return secondLanguage ? `${first}, then ${wordFor(LANGUAGE_WORDS, secondLanguage)}` : first;
}

function Standing({ copy, version }: { copy: Copy; version: CopyVersion }) {
  if (version.approvedOn) {
    const how = version.approvedHow === 'recordedByDirector' ? ', recorded by the director' : version.approvedHow === 'link' ? ', by link' : '';
    return <Tag mood="good">Approved by {version.approvedByName} on {dayText(version.approvedOn)}{how}</Tag>;
  }
  return (
    <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center' }}>
      <Tag mood="care">Waiting for approval</Tag>
      {iMay('copies', 'edit') && copy.state !== 'stopped' && <ApproveButton copy={copy} version={version} />}
    </Box>
  );
}

export function VersionView({ copy, version }: { copy: Copy; version: CopyVersion }) {
  return (
    <Box component="article" sx={{ py: 1.5, borderTop: 1, borderColor: 'divider' }}>
      <Typography variant="h3">Version {version.number} · {languagesOf(version)} · {daysOf(version)}</Typography>
      {version.changeNote && !version.approvedOn && (
        <Alert severity="warning" icon={false} sx={{ my: 1 }}>
          {version.changeAskedByName} asked for a change on {instantText(version.changeAskedAt)}: “{version.changeNote}”
        </Alert>
      )}
      <CheckSheet check={version.check} texts={[version.text, ...(version.secondText ? [version.secondText] : [])]} />
      <Box sx={{ mt: 1.5 }}><Standing copy={copy} version={version} /></Box>
    </Box>
  );
}
