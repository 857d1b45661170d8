import { createContext } from 'react';
import type { RegionName } from './tab-bar.tsx';

/** On a phone one region is seen at a time: a cue taken in hand brings up where it is read. */
export const ShowRegion = createContext<(region: RegionName) => void>(() => {});
