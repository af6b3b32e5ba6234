import { REPORT } from '../../messages/en/report';

/** Texts of the report until they are registered with the page's. */
export function say(
  key: keyof typeof REPORT,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return REPORT[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}
