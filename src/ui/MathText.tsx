import { Fragment } from 'react';

/** Text with symbols written as in a book: "J_yy" becomes J with a small low yy. Nothing else is changed. */
export function MathText(props: { readonly text: string }) {
  return props.text.split(/((?<![\w-])[IJ]_[xyz]{2}(?![\w-]))/).map((piece, at) => {
    const [letter, index] = piece.split('_');
    const isSymbol = at % 2 === 1;
    return (
      <Fragment key={`${at} ${piece}`}>
        {isSymbol ? (
          <>
            {letter}
            <sub className="ui-sub">{index}</sub>
          </>
        ) : (
          piece
        )}
      </Fragment>
    );
  });
}
