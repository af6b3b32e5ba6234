import { setConsoleFunction } from 'three';

/** three warns whoever makes a Clock that it will go; the Canvas that draws here makes one, and this page none. */
const OF_THE_CANVAS = /^THREE\.Clock: This module has been deprecated/;

/** What three says goes to the console but for that one warning, of which nobody who reads it could do anything. */
export function quietThree(): void {
  setConsoleFunction((type, message, ...more) => {
    if (!OF_THE_CANVAS.test(message)) console[type](message, ...more);
  });
}
