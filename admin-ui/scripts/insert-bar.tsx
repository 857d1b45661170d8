import { Box, Button, Typography } from '@mui/material';
import { useState } from 'react';
import { KNOWN_DIRECTIONS } from '../../server/domain/packet/directions.ts';
import { SCRIPT_VARIABLES } from '../../server/domain/packet/script-variables.ts';
import type { ScriptVariable } from '../../server/domain/packet/script-variables.ts';

const SHOWN: readonly ScriptVariable[] = SCRIPT_VARIABLES;

function insertedFor({ name, example, mayBeEmpty }: ScriptVariable): string {
  const shown = `{{ ${name}${typeof example === 'object' ? '.dayText' : ''} }}`;
  return mayBeEmpty ? `{% if ${name} %}${shown}{% endif %}` : shown;
}

const exampleOf = ({ example }: ScriptVariable): string => (typeof example === 'object' ? Object.values(example).filter((part) => typeof part === 'string').join(', ') : String(example));

/** Directions and variables that go in where the cursor stands. */
export function InsertBar({ onInsert }: { onInsert: (text: string) => void }) {
  const [wanted, setWanted] = useState('');
  const found = SHOWN.filter(({ name, sentence }) => `${name} ${sentence}`.toLowerCase().includes(wanted.trim().toLowerCase()));
  return (
    <Box sx={{ width: '100%', minWidth: 0 }}>
      <Typography id="directions" variant="h3" sx={{ mt: 1 }}>Directions</Typography>
      <Box role="group" aria-labelledby="directions" sx={{ display: 'flex', gap: 0.75, flexWrap: 'wrap', my: 0.5 }}>
        {KNOWN_DIRECTIONS.map(({ insert, name, sentence }) => (
          <Button key={name} size="small" variant="outlined" title={sentence} onClick={() => onInsert(insert)} sx={{ minHeight: 36 }}>{name}</Button>
        ))}
      </Box>
      <details>
        <Box component="summary" sx={{ minHeight: 36, py: 0.75, cursor: 'pointer', fontWeight: 700 }}>Variables: names that are filled in for each night</Box>
        <Box component="label" sx={{ display: 'block', my: 0.5 }}>
          Find a variable{' '}
          <Box component="input" value={wanted} onChange={(event) => setWanted((event.target as HTMLInputElement).value)} sx={{ font: 'inherit', p: 0.75, minHeight: 36, maxWidth: '100%', color: 'inherit', bgcolor: 'background.paper', border: 1, borderColor: 'text.secondary', borderRadius: 1 }} />
        </Box>
        <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0, maxHeight: 320, overflowY: 'auto' }} tabIndex={0} aria-label="Variables">
          {found.map((variable) => (
            <Box component="li" key={variable.name} sx={{ py: 0.5, borderTop: 1, borderColor: 'divider' }}>
              <Button size="small" onClick={() => onInsert(insertedFor(variable))} sx={{ fontFamily: 'ui-monospace, monospace', textTransform: 'none', px: 0.5, minHeight: 32 }}>{variable.name}</Button>
              <Box component="span" sx={{ display: 'block', overflowWrap: 'anywhere' }}>{variable.sentence} <Box component="span" sx={{ color: 'text.secondary' }}>Such as “{exampleOf(variable)}”.{variable.mayBeEmpty ? ' Empty on some nights.' : ''}</Box></Box>
            </Box>
          ))}
        </Box>
      </details>
    </Box>
  );
}
