import { symbolWords } from '../../state/help/shownWork';
import { Symbols } from '../MathText';

const SYMBOL =
  /(?<![\w\u0370-\u03ff])([A-Za-z\u0370-\u03ff\u0394]{1,3}_[A-Za-z0-9\u0370-\u03ff]{1,8}(?:,[A-Za-z]+)?)/;

/** A formula written as in a book: like `MathText`, with every symbol of the help, words beside letters in the language spoken. */
export function FormulaText({ text }: { readonly text: string }) {
  return <Symbols text={symbolWords(text)} pattern={SYMBOL} />;
}
