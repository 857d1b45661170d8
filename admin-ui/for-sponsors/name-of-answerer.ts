import { useState } from 'react';

let lastName = '';

/** The name is written once; the next answer of the same visit begins with it. */
export function useNameOfAnswerer(): [string, (name: string) => void] {
  const [name, setName] = useState(lastName);
  return [name, (next) => { lastName = next; setName(next); }];
}
