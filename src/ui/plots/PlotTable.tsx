import type { RefObject } from 'react';
import './plotTools.css';

/** The numbers of a plot in its place, in a region that scrolls; what is in it is written by `writePlotTable`. */
export function PlotTable(props: {
  readonly table: RefObject<HTMLTableElement | null>;
  readonly name: string;
  readonly testId: string;
}) {
  return (
    // A scrolling region needs a tab stop of its own.
    <div className="ui-plot-table" role="region" aria-label={props.name} tabIndex={0}>
      <table ref={props.table} data-testid={props.testId}>
        <caption data-name={props.name} />
        <thead>
          <tr />
        </thead>
        <tbody />
      </table>
    </div>
  );
}
