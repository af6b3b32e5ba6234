import { useId, useRef } from 'react';
import { formatText } from './formatText';
import { t } from './roomText';
import { SheetPicture } from './SheetPicture';
import type { Sheet } from './sheetTypes';
import { usePaperView, ZOOM_STEP } from './usePaperView';

/** The sheet on the desk: as it will be printed, to zoom and move. */
export function SheetDesk(props: { readonly sheet: Sheet }) {
  const { sheet } = props;
  const { format, title, scale } = sheet;
  const svg = useRef<SVGSVGElement>(null);
  const hands = usePaperView(svg, format);
  const keys = useId();
  const label = t('drawing.preview', {
    part: title,
    scale: scale.name,
    sheet: formatText(format.name),
  });
  return (
    <div className="drawing-desk">
      <div
        className="drawing-view"
        role="group"
        tabIndex={0}
        aria-label={t('drawing.title')}
        aria-describedby={keys}
        title={t('drawing.previewKeys')}
        onKeyDown={hands.onKeyDown}
      >
        <svg
          ref={svg}
          className="drawing-svg"
          role="img"
          aria-label={label}
          data-testid="drawing-sheet"
          data-format={format.name}
          data-scale={scale.name}
        >
          <SheetPicture sheet={sheet} />
        </svg>
        <span className="ui-unseen" id={keys}>
          {t('drawing.previewKeys')}
        </span>
      </div>
      <ul className="ui-unseen" aria-label={t('drawing.sizes')}>
        {sheet.dimensions.map(({ feature, text }) => (
          <li key={feature}>{text}</li>
        ))}
      </ul>
      <div className="drawing-zoom">
        <button
          type="button"
          className="ui-button ui-button-icon"
          aria-label={t('drawing.smaller')}
          title={t('drawing.smaller')}
          onClick={() => hands.zoom(1 / ZOOM_STEP)}
        >
          {'\u2212'}
        </button>
        <button
          type="button"
          className="ui-button ui-button-icon"
          aria-label={t('drawing.larger')}
          title={t('drawing.larger')}
          data-testid="drawing-larger"
          onClick={() => hands.zoom(ZOOM_STEP)}
        >
          +
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="drawing-fit"
          onClick={() => hands.whole()}
        >
          {t('drawing.fit')}
        </button>
      </div>
    </div>
  );
}
