import { HomeScreenHint } from '../opening/inner-browser-warning.tsx';
import type { Way } from '../desk.ts';
import { keyName, useKey, useKeyMeanings, useKeysAreOn } from '../keys.ts';
import type { Keeper, Snapshot } from '../store/keeper.ts';
import { withOfferedTaken } from '../store/nights.ts';
import type { SheetName } from './desk-sheets.tsx';
import { useLook } from './look.ts';
import { usePageUpdate } from './page-update.ts';

interface Props {
  keeper: Keeper;
  snapshot: Snapshot;
  onOpen: (sheet: SheetName) => void;
}

const WAYS: readonly (readonly [Way, string, string])[] = [
  ['reads', 'Reads only', 'No score and no foul sheet: what is read, and nothing else.'],
  ['tally', 'Tally', 'A spotter logs here while the announcer reads from paper.'],
  ['full', 'Full', 'Reads, mentions and the game.'],
];

/** The way of working, the look, what the office changed, the keys: everything that is not needed in a hurry. */
export function MoreSheet({ keeper, snapshot: { night }, onOpen }: Props) {
  const [look, setLook] = useLook();
  useKey('v', 'Dim gym or bright field', () => setLook(look === 'gym' ? 'field' : 'gym'));
  return (
    <>
      <div className="desk-more-buttons">
        <button type="button" className="desk-button" onClick={() => onOpen('requests')}>Requests</button>
        <button type="button" className="desk-button" onClick={() => onOpen('sign-off')}>Sign-off</button>
        <button type="button" className="desk-button" onClick={() => onOpen('held')}>Where the entries are</button>
      </div>
      {night.offeredBundle && (
        <div className="desk-notice desk-notice-care">
          <p><strong>The office has changed something for tonight.</strong> Your log stays as it is; cues, rosters and texts become the new ones.</p>
          <button type="button" className="desk-button desk-button-main" onClick={() => void keeper.changeNight(withOfferedTaken)}>Take the new one</button>
        </div>
      )}
      <PageUpdate />
      <fieldset className="desk-choices">
        <legend>How this device works</legend>
        {WAYS.map(([way, label, says]) => (
          <label key={way} className="desk-choice">
            <input type="radio" name="way" checked={night.way === way} onChange={() => void keeper.changeNight((now) => ({ ...now, way }))} />
            <span><b>{label}</b><br /><span className="desk-soft">{says}</span></span>
          </label>
        ))}
      </fieldset>
      <fieldset className="desk-choices">
        <legend>Look <kbd>{keyName('v')}</kbd></legend>
        {(['gym', 'field'] as const).map((one) => (
          <label key={one} className="desk-choice">
            <input type="radio" name="look" checked={look === one} onChange={() => setLook(one)} />
            <span><b>{one === 'gym' ? 'Dim gym' : 'Bright field'}</b></span>
          </label>
        ))}
      </fieldset>
      <Keys />
      <p className="desk-soft">You work here as {night.workerName}. <a href="#">Other nights on this device</a></p>
      <HomeScreenHint />
    </>
  );
}

function PageUpdate() {
  const update = usePageUpdate();
  if (!update) return null;
  return (
    <div className="desk-notice">
      <p><strong>A newer page is ready.</strong> Take it in a quiet moment: it loads in a second, and nothing that is stored is touched.</p>
      <button type="button" className="desk-button" onClick={update}>Load it now</button>
    </div>
  );
}

function Keys() {
  const meanings = useKeyMeanings('behind');
  const [areOn, setAreOn] = useKeysAreOn();
  return (
    <>
      <h3>Keys</h3>
      <label className="desk-choice">
        <input type="checkbox" checked={areOn} onChange={(event) => setAreOn(event.target.checked)} />
        <span>Single keys do something</span>
      </label>
      <dl className="desk-keys">
        {meanings.map(({ key, label }) => (
          <div key={key}><dt><kbd>{keyName(key)}</kbd></dt><dd>{label}</dd></div>
        ))}
      </dl>
    </>
  );
}
