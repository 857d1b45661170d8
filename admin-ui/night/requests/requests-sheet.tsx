export function RequestsSheet() {
  return null;
}
