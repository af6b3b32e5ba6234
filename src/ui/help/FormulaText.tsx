import { Fragment } from 'react';

const SYMBOL =
  /(?<![\w\u0370-\u03ff])([A-Za-z\u0370-\u03ff\u0394]{1,3}_[A-Za-z0-9\u0370-\u03ff]{1,8}(?:,[A-Za-z]+)?)/;

/** A formula written as in a book: "J_yy" becomes J with a small low yy. Nothing else is changed. */
export function FormulaText({ text }: { readonly text: string }) {
  return text.split(SYMBOL).map((piece, at) => {
    if (at % 2 === 0) return <Fragment key={`${at} ${piece}`}>{piece}</Fragment>;
    const cut = piece.indexOf('_');
    return (
      <Fragment key={`${at} ${piece}`}>
        {piece.slice(0, cut)}
        <sub className="ui-sub">{piece.slice(cut + 1)}</sub>
      </Fragment>
    );
  });
}
