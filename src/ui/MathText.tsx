import { Fragment } from 'react';

/** Symbols of inertia, and nothing in a file's name that looks like one. */
const INERTIA = /((?<![\w-])[IJ]_[xyz]{2}(?![\w-]))/;

/** Text with symbols written as in a book: "J_yy" becomes J with a small low yy. Nothing else is changed. */
export function MathText({ text }: { readonly text: string }) {
  return <Symbols text={text} pattern={INERTIA} />;
}

/** Text in which what `pattern` takes, in one group, is a letter, "_" and what is written small and low. */
export function Symbols(props: { readonly text: string; readonly pattern: RegExp }) {
  return props.text.split(props.pattern).map((piece, at) => {
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
