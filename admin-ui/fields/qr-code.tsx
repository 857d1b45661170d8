import { useId } from 'react';
import { encode } from 'uqr';

/** Light modules around the code, so that a camera finds its edge (ISO/IEC 18004:2015 asks for four; from memory). */
const QUIET_MODULES = 4;

/** A square that a phone's camera reads; dark on white on every screen and on paper. */
export function QrCode({ text, title, size }: { text: string; title: string; size: number | string }) {
  const titleId = useId();
  const { data, size: modules } = encode(text, { ecc: 'M', border: QUIET_MODULES });
  const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return (
    <svg role="img" aria-labelledby={titleId} viewBox={`0 0 ${modules} ${modules}`} width={size} height={size} shapeRendering="crispEdges">
      <title id={titleId}>{title}</title>
      <rect width={modules} height={modules} fill="#ffffff" />
      <path d={path} fill="#000000" />
    </svg>
  );
}
