/** `45 s`; from two minutes on as a clock, `6:20`. */
export function secondsText(seconds: number): string {
  const whole = Math.ceil(seconds);
  return whole < 120 ? `${whole} s` : `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
