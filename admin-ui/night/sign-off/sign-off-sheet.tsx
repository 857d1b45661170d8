export function SignOffSheet() {
  return null;
}
