import { mayUse } from '../../../server/domain/access/rights.ts';
import type { AsideView } from '../../../server/night/log/aside.dto.ts';
import { useServer } from '../../api/use-server.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { knownMe } from '../../session/me.ts';
import type { Night } from '../types.ts';
import { AsideEntry } from './aside-entry.tsx';
import { ImportFile } from './import-file.tsx';

/** What did not come in by itself: entries kept aside, and files of devices that never reached the server. */
export function FromDevices({ night, onChange }: { night: Night; onChange: () => void }) {
  const isDirector = mayUse(knownMe()?.roles ?? [], 'amend a night');
  const aside = useServer<{ data: AsideView[] }>(isDirector ? `/nights/${night.id}/log/aside` : null);
  if (!isDirector) return null;
  const changed = () => {
    void aside.refetch();
    onChange();
  };
  return (
    <Section title="From the devices at the table" lead="A device that could not reach the server writes its entries into a file. Bring it in here: an entry that is there already is not taken twice.">
      <ImportFile night={night} onDone={changed} />
      <Reading of={aside}>
        {({ data }) => (
          <>
            {data.map((one) => <AsideEntry key={one.id} night={night} aside={one} onDone={changed} />)}
          </>
        )}
      </Reading>
    </Section>
  );
}
