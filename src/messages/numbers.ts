import { spoken } from './spoken';

/** The sign between whole and broken in numbers as shown and typed: a point in English, a comma in German. */
export function decimalSign(): '.' | ',' {
  return spoken.decimalSign;
}

/** A number's text as the program writes it ("-1.25") with the decimal sign of the language. */
export function localNumber(text: string): string {
  return spoken.decimalSign === '.' ? text : text.replace('.', spoken.decimalSign);
}

/** Numbers in a row: commas part them where the decimal sign is a point, semicolons where it is a comma. */
export function numberList(texts: readonly string[]): string {
  return texts.join(spoken.decimalSign === '.' ? ', ' : '; ');
}
