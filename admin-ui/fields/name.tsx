import { Box } from '@mui/material';

/** A name with how to say it beside it. */
export function Name({ name, sayAs }: { name: string | null | undefined; sayAs?: string | null }) {
  if (!name) return <>–</>;
  return (
    <>
      {name}
      {sayAs && (
        <Box component="span" sx={{ color: 'text.secondary', fontStyle: 'italic', ml: 0.75 }}>
          say “{sayAs}”
        </Box>
      )}
    </>
  );
}
