export type { WindowPlacesView as WindowPlaces } from '../../server/season/window-places.dto.ts';
