import { partText } from '../../messages';
import { Symbols } from '../MathText';

const SYMBOL =
  /(?<![\w\u0370-\u03ff])([A-Za-z\u0370-\u03ff\u0394]{1,3}_[A-Za-z0-9\u0370-\u03ff]{1,8}(?:,[A-Za-z]+)?)/;
const EVERY_SYMBOL = new RegExp(SYMBOL, 'g');

/** A formula written as in a book: like `MathText`, with every symbol of the help, words beside letters in the language spoken. */
export function FormulaText({ text }: { readonly text: string }) {
  return <Symbols text={text.replace(EVERY_SYMBOL, spokenSymbol)} pattern={SYMBOL} />;
}

/** "M_rod", its word in the language spoken. Single letters are no words. */
function spokenSymbol(symbol: string): string {
  const cut = symbol.indexOf('_') + 1;
  const words = symbol.slice(cut).split(',');
  return symbol.slice(0, cut) + words.map((word) => partText(`symbol.${word}`, word)).join(',');
}
