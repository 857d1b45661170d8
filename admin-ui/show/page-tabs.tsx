import { Box, Tab, Tabs } from '@mui/material';
import { useId, type ReactNode } from 'react';
import { useSearchParams } from 'react-router';

export interface Sheet {
  key: string;
  label: string;
  content: () => ReactNode;
}

/** Tabs whose choice stands in the address, so that a link opens the right one. */
export function PageTabs({ label, sheets }: { label: string; sheets: readonly Sheet[] }) {
  const [search, setSearch] = useSearchParams();
  const id = useId();
  const wanted = search.get('tab');
  const open = sheets.find((sheet) => sheet.key === wanted) ?? sheets[0]!;
  return (
    <>
      <Tabs
        value={open.key}
        onChange={(_, key: string) => setSearch({ tab: key }, { replace: true })}
        variant="scrollable"
        scrollButtons="auto"
        allowScrollButtonsMobile
        aria-label={label}
        sx={{ borderBottom: 1, borderColor: 'divider', mb: 2 }}
      >
        {sheets.map((sheet) => (
          <Tab key={sheet.key} value={sheet.key} label={sheet.label} id={`${id}-tab-${sheet.key}`} aria-controls={`${id}-sheet-${sheet.key}`} />
        ))}
      </Tabs>
      {sheets.map((sheet) => (
        <Box key={sheet.key} role="tabpanel" hidden={sheet !== open} id={`${id}-sheet-${sheet.key}`} aria-labelledby={`${id}-tab-${sheet.key}`}>
          {sheet === open && sheet.content()}
        </Box>
      ))}
    </>
  );
}
