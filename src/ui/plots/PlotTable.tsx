import type { RefObject } from 'react';
import './plotTools.css';

/** The numbers of a plot in its place, in a region that scrolls; what is in it is written by `writePlotTable`. */
export function PlotTable(props: {
  readonly table: RefObject<HTMLTableElement | null>;
  readonly name: string;
  readonly testId: string;
}) {
  const { table, name, testId } = props;
  return (
    // A scrolling region needs a tab stop of its own.
    <div className="ui-plot-table" role="region" aria-label={name} tabIndex={0}>
      <table ref={table} data-testid={testId}>
        <caption data-name={name} />
        <thead>
          <tr />
        </thead>
        <tbody />
      </table>
    </div>
  );
}
