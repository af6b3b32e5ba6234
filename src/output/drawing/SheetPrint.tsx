import { useLayoutEffect } from 'react';
import { createPortal } from 'react-dom';
import { SheetPicture } from './SheetPicture';
import type { Sheet } from './sheetTypes';

/** The sheet alone, on paper of its own size; seen only in print. */
export function SheetPrint(props: { readonly sheet: Sheet }) {
  const { width, height } = props.sheet.format;
  usePageSize(width, height);
  return createPortal(
    <div className="drawing-print">
      <svg width={`${width}mm`} height={`${height}mm`} viewBox={`0 0 ${width} ${height}`}>
        <SheetPicture sheet={props.sheet} />
      </svg>
    </div>,
    document.body,
  );
}

/** By a constructed sheet of styles: the page's policy on content takes no style element. */
function usePageSize(width: number, height: number): void {
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0; }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [width, height]);
}
