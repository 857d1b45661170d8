import { Box, Typography } from '@mui/material';
import { useGetList, useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { checkMessage } from '../../server/domain/sponsorship/copy-check.ts';
import type { CopyLanguage } from '../../server/domain/sponsorship/copy-check.ts';
import type { Slogan } from '../slogans/types.ts';
import type { Sponsor } from '../sponsors/types.ts';
import { CheckSheet } from './check-sheet.tsx';

const other = (language: CopyLanguage): CopyLanguage => (language === 'en' ? 'es' : 'en');

/** The copy check while the words are typed; the same rule by which the server judges them. */
export function LiveCheck({ sponsorId }: { sponsorId?: string }) {
  const [pickedId, text, language, secondText] = useWatch({ name: ['sponsorId', 'text', 'language', 'secondText'] }) as [string?, string?, CopyLanguage?, string?];
  const id = sponsorId ?? pickedId;
  const sponsor = useGetOne<Sponsor>('sponsors', { id: id ?? '' }, { enabled: Boolean(id) });
  const slogans = useGetList<Slogan>('slogans', { filter: { sponsorId: id }, pagination: { page: 1, perPage: 100 }, sort: { field: 'text', order: 'ASC' } }, { enabled: Boolean(id) });
  const first = language || 'en';
  const texts = [{ text: text?.trim() ?? '', language: first }, { text: secondText?.trim() ?? '', language: other(first) }].filter((one) => one.text !== '');
  return (
    <Box component="section" aria-label="Copy check" sx={{ width: '100%', my: 1.5, p: 1.5, bgcolor: 'background.default', border: 1, borderColor: 'divider', borderRadius: 1 }}>
      <Typography variant="h3">Copy check</Typography>
      {texts.length === 0 ? (
        <Typography sx={{ color: 'text.secondary' }}>
          Write the words and they are read along: an acknowledgment names the sponsor, who, where and what it carries; an advertisement persuades.
          The flag is never part of a sponsor’s message. Guidance, not tax advice.
        </Typography>
      ) : (
        <CheckSheet check={checkMessage(texts, { sponsorName: sponsor.data?.name ?? '', slogans: (slogans.data ?? []).map((one) => one.text) })} texts={texts.map((one) => one.text)} />
      )}
    </Box>
  );
}
