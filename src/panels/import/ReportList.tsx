import type { ReportLine } from './meshReportText';

/** What was found in a file, line by line. */
export function ReportList(props: { readonly lines: readonly ReportLine[] }) {
  return (
    <ul className="import-lines" data-testid="import-report">
      {props.lines.map(({ tone, text }) => (
        <li key={text} data-tone={tone}>
          {text}
        </li>
      ))}
    </ul>
  );
}
