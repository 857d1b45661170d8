/** A UUID v7: the moment first, then chance, so that ids sort roughly by when they were made. Two are never the same. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const now = Date.now();
  for (let place = 0; place < 6; place += 1) bytes[place] = Math.floor(now / 2 ** (8 * (5 - place))) & 0xff;
  bytes[6] = (bytes[6]! & 0x0f) | 0x70;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return [...bytes].map((byte, place) => ([4, 6, 8, 10].includes(place) ? '-' : '') + byte.toString(16).padStart(2, '0')).join('');
}
