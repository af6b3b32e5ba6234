import { spoken } from './spoken';

/** The sign between whole and broken in numbers as shown and typed: a point in English, a comma in German. */
export function decimalSign(): '.' | ',' {
  return spoken.decimalSign;
}

/** A number's text as the program writes it ("-1.25") with the decimal sign of the language. */
export function localNumber(text: string): string {
  return spoken.decimalSign === '.' ? text : text.replace('.', spoken.decimalSign);
}
