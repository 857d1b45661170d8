import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { lastToTakeBack } from '../../../server/domain/night/desk/one-tap.ts';

/** One tap takes back what was logged last on this device. */
export function TakeBackLast() {
  const desk = useDesk();
  const last = lastToTakeBack(desk.lines);
  const act = () => {
    if (last && !desk.isSignedOff) void desk.takeBack(last.id).catch(() => {});
  };
  useKey('z', 'Take back my last entry', act);
  return (
    <button type="button" className="desk-button desk-bar-button" disabled={!last || desk.isSignedOff} onClick={act}>Take back last <kbd>{keyName('z')}</kbd></button>
  );
}
