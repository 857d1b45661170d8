import { Box, Button } from '@mui/material';
import { SaveButton } from 'react-admin';
import { useNavigate } from 'react-router';
import { FormError } from './form-error.tsx';

export function FormToolbar({ saveLabel = 'Save', alwaysOn = false }: { saveLabel?: string; alwaysOn?: boolean }) {
  const navigate = useNavigate();
  return (
    <Box sx={{ px: 2, pb: 2 }}>
      <FormError />
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', mt: 1 }}>
        <SaveButton label={saveLabel} icon={<span />} alwaysEnable={alwaysOn} sx={{ '& .MuiButton-startIcon': { display: 'none' } }} />
        <Button variant="text" onClick={() => void navigate(-1)}>
          Cancel
        </Button>
      </Box>
    </Box>
  );
}
