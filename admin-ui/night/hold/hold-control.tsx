export function HoldControl() {
  return null;
}
