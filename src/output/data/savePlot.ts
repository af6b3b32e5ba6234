import { INCH_MM, mmFromMetres } from '../../engine/units';
import { plotColumns } from '../../ui/drawn/plotColumns';
import { fileStem } from '../../ui/fileStem';
import type { PlotFile, PlotToSave } from '../../ui/plotFiles';
import { KINDS, saveFile } from '../files/saveFile';
import { conditionLines } from './conditionLines';
import { csvFile } from './csv';
import { figurePng } from './figurePng';
import { figureSheet } from './figureSheet';
import { figureSvg } from './figureSvg';
import { plotFigure } from './plotFigure';
import { withDensity } from './pngSize';

/** A picture's width on paper and its pixels an inch, as the room of files has them at first. */
const WIDTH_MM = 160;
const DENSITY = 300;

/** Saves a small plot of the page as a picture with title and names, or as numbers with what holds for them. */
export function savePlot(plot: PlotToSave, kind: PlotFile): Promise<string> {
  const stem = `${fileStem(plot.design.name, 'head')}-${plot.name}`;
  return saveFile(stem, KINDS[kind], () => {
    if (kind === 'csv') return plotCsv(plot);
    return kind === 'svg' ? plotSvg(plot) : plotPng(plot);
  });
}

export function plotCsv({ data, design, lines }: PlotToSave): string {
  const columns = plotColumns(data);
  const rows = Array.from(columns[0].values, (_, i) => columns.map(({ values }) => values[i]));
  const header = columns.map(({ title }) => title);
  return csvFile([...conditionLines(design), ...lines], header, rows);
}

export function plotSvg(plot: PlotToSave): string {
  return figureSvg(sheetOf(plot), plot.design.name, WIDTH_MM);
}

async function plotPng(plot: PlotToSave): Promise<BlobPart> {
  const sheet = sheetOf(plot);
  const width = Math.round((WIDTH_MM / INCH_MM) * DENSITY);
  const png = await figurePng(sheet, {
    width,
    height: Math.round((width * sheet.height) / sheet.width),
  });
  return withDensity(png, (DENSITY / INCH_MM) * mmFromMetres(1)) as Uint8Array<ArrayBuffer>;
}

function sheetOf({ data, design, lines, summary }: PlotToSave) {
  return figureSheet(plotFigure(data, summary), { title: design.name, lines });
}
