/** "1st", "2nd", "3rd", "11th", "22nd". */
export function ordinalOf(number: number): string {
  const last = number % 10;
  if (number % 100 >= 11 && number % 100 <= 13) return `${number}th`;
  return `${number}${last === 1 ? 'st' : last === 2 ? 'nd' : last === 3 ? 'rd' : 'th'}`;
}

const NAMES: Readonly<Record<string, string>> = {
  pregame: 'pregame', betweenPeriods: 'break', timeOut: 'time-out', halftime: 'halftime', postgame: 'postgame', deadBall: 'dead ball',
};

function partsOf(windowKey: string): { name: string; number: string } {
  const [, kind = windowKey, number = ''] = /^([a-zA-Z]+?)(\d*)$/.exec(windowKey) ?? [];
  return { name: NAMES[kind === 'timeout' ? 'timeOut' : kind] ?? kind, number };
}

/** A window in a sentence: "halftime", "the 2nd time-out", "the break". */
export function windowInWords(windowKey: string): string {
  const { name, number } = partsOf(windowKey);
  if (number !== '') return `the ${ordinalOf(Number(number))} ${name}`;
  return name === 'break' || name === 'time-out' || name === 'dead ball' ? `the ${name}` : name;
}

/** A window as a heading: "Halftime", "2nd time-out". */
export function windowHeading(windowKey: string): string {
  const { name, number } = partsOf(windowKey);
  return number === '' ? `${name.charAt(0).toUpperCase()}${name.slice(1)}` : `${ordinalOf(Number(number))} ${name}`;
}
