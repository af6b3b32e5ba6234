import { renderToStaticMarkup } from 'react-dom/server';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { ReportPages } from '../../../src/output/report/ReportPages';
import { reportModel } from '../../../src/output/report/reportModel';
import { demoDesign, inputsOf } from './demoReport';

/** Element names with their number, and all text, read by a strict XML parser. */
function readMarkup(markup: string) {
  const names = new Map<string, number>();
  let text = '';
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name }) => names.set(name, (names.get(name) ?? 0) + 1));
  parser.on('text', (piece) => {
    text += piece;
  });
  parser.write(markup).close();
  return { names, text };
}

describe('the report on the page', () => {
  const design = { ...demoDesign('5-both-sides'), name: 'Dunlin <260> & "both"' };
  const report = reportModel(inputsOf(design));
  const found = readMarkup(renderToStaticMarkup(<ReportPages report={report} scale={1} />));

  it('is well formed whatever the design is called', () => {
    expect(found.text).toContain('Dunlin <260> & "both"');
  });

  it('has every section, table row and figure of the model, figures as SVG with text', () => {
    for (const { title } of report.sections) expect(found.text).toContain(title);
    const tables = report.sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'table' ? [block] : [])),
    );
    const rows = tables.reduce((sum, table) => sum + table.rows.length + 1, 0);
    // The two rows of the frame that carries the foot to every sheet.
    expect(found.names.get('tr')).toBe(rows + 2);
    expect(found.names.get('svg')).toBe(2);
    expect(found.names.get('text') ?? 0).toBeGreaterThan(30);
    expect(found.text).toContain('50 mm');
  });
});
