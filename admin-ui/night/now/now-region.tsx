export function NowRegion() {
  return null;
}
