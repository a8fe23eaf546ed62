/** The short line at the foot of the page that says what was just done, and can undo it. */
export interface Toast {
  text: string;
  undo: (() => void) | null;
}

const shown = $state<{ toast: Toast | null }>({ toast: null });
let timer: ReturnType<typeof setTimeout> | undefined;
const secondsShown = 12;

export function toast(): Toast | null {
  return shown.toast;
}

export function say(text: string, undo: (() => void) | null = null): void {
  clearTimeout(timer);
  shown.toast = { text, undo };
  timer = setTimeout(hush, secondsShown * 1000);
}

export function hush(): void {
  clearTimeout(timer);
  shown.toast = null;
}
