const SIGN = { width: 13, height: 13, viewBox: '0 0 16 16', className: 'plan-sign', 'aria-hidden': true, fill: 'currentColor' } as const;

/** A pin: nobody but a person moves it. What it means is said in words beside it. */
export const PinSign = () => (
  <svg {...SIGN}><path d="M5 1h6v1.6l-1 .9v4l2.2 2V11H8.8v4.2L8 16l-.8-.8V11H3.8V9.5L6 7.5v-4l-1-.9z" /></svg>
);

/** A closed lock: nothing is planned into or out of this night. */
export const LockSign = () => (
  <svg {...SIGN}><path fillRule="evenodd" d="M4.5 7V4.5a3.5 3.5 0 0 1 7 0V7H13v8H3V7zM6.2 7h3.600V4.5a1.8 1.8 0 0 0-3.600 0zM7.2 9.5v3h1.600v-3z" /></svg>
);

/** An open lock. */
export const OpenSign = () => (
  <svg {...SIGN}><path fillRule="evenodd" d="M4.5 7V4a3.5 3.5 0 0 1 6.900-.8l-1.600.5A1.8 1.8 0 0 0 6.2 4v3H13v8H3V7zM7.2 9.5v3h1.600v-3z" /></svg>
);
