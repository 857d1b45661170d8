export function ComingRegion() {
  return null;
}
