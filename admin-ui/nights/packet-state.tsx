import { Tag } from '../fields/tag.tsx';
import type { Night } from './types.ts';

/** Whether the paper of a night is ready, in words. */
export function PacketState({ night }: { night: Night }) {
  if (night.state === 'signedOff') return <Tag mood="good">Signed off</Tag>;
  if (night.packetIssued !== null && night.packetBecause === 'choice') return <Tag mood="bad">Issue packet {night.packetIssued} again: a family’s choice</Tag>;
  if (night.packetIssued !== null && night.packetOutOfDate) return <Tag mood="care">Packet {night.packetIssued} is out of date</Tag>;
  if (night.packetIssued !== null) return <Tag mood="good">Packet {night.packetIssued} issued</Tag>;
  if (night.readiness === null) return <>No packet yet</>;
  if (night.readiness.ready) return <Tag mood="good">Ready to issue</Tag>;
  return <Tag mood="care">Not ready</Tag>;
}
