import { Alert } from '@mui/material';

/** What is odd about a roster; it warns and refuses nothing. */
export function RosterWarnings({ warnings }: { warnings: readonly { code: string; sentence: string }[] }) {
  if (warnings.length === 0) return null;
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 1.5 }}>
      {warnings.map((warning, place) => (
        <div key={place}>{warning.sentence}</div>
      ))}
    </Alert>
  );
}
