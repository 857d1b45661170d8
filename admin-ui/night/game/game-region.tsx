export function GameRegion() {
  return null;
}
