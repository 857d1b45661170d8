import { Box, Typography } from '@mui/material';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { iMay } from '../session/rights.ts';
import { LANGUAGE_WORDS, wordFor } from '../words/choices.ts';
import { ApproveButton } from './approve-button.tsx';
import type { Copy, CopyVersion } from './types.ts';

function daysOf({ startsOn, endsOn }: CopyVersion): string {
  if (startsOn && endsOn) return `${dayText(startsOn)} to ${dayText(endsOn)}`;
  if (startsOn) return `from ${dayText(startsOn)}`;
  return endsOn ? `until ${dayText(endsOn)}` : 'all season';
}

export function VersionView({ copy, version }: { copy: Copy; version: CopyVersion }) {
  return (
    <Box component="article" sx={{ py: 1.5, borderTop: 1, borderColor: 'divider' }}>
      <Typography variant="h3">Version {version.number} · {wordFor(LANGUAGE_WORDS, version.language)} · {daysOf(version)}</Typography>
      <Box component="blockquote" lang={version.language} sx={{ m: 0, my: 1, pl: 1.5, borderLeft: '5px solid #f2b134', fontSize: '1.0625rem', maxWidth: '68ch', whiteSpace: 'pre-line' }}>{version.text}</Box>
      {version.approvedOn ? (
        <Tag mood="good">Approved by {version.approvedByName} on {dayText(version.approvedOn)}{version.approvedHow === 'recordedByDirector' ? ', recorded by the director' : ''}</Tag>
      ) : (
        <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center' }}>
          <Tag mood="care">Waiting for approval</Tag>
          {iMay('copies', 'edit') && copy.state !== 'stopped' && <ApproveButton copy={copy} version={version} />}
        </Box>
      )}
    </Box>
  );
}
