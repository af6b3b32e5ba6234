/** Longest stack that is handed on, characters. */
const LONGEST_STACK = 4000;

/**
 * A fault as plain text: where, what, the browser and this build's own file names. Nothing of the design, and no
 * address but the path of the page.
 */
export function faultReport(place: string, error: Error): string {
  const stack = error.stack ?? '';
  return [
    'Stillgrip fault report',
    `When: ${new Date().toISOString()}`,
    `Where: ${place}`,
    `What: ${error.name}: ${error.message}`,
    `Browser: ${navigator.userAgent}`,
    `Window: ${window.innerWidth} x ${window.innerHeight}`,
    `Network: ${navigator.onLine ? 'yes' : 'no'}`,
    '',
    withoutHost(stack).slice(0, LONGEST_STACK),
  ].join('\n');
}

function withoutHost(text: string): string {
  return text.replaceAll(window.location.origin, '');
}
