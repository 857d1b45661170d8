/** For `ref`: the field that a tap brought up is typed into at once. One function, so that later drawings leave the focus alone. */
export const focusOnArrival = (field: HTMLElement | null): void => field?.focus();
