import { createContext, useContext } from 'react';
import type { Design } from '../design/design';
import type { PlotData } from './drawn/plotLayout';

/** A small plot as it is to leave the page. */
export interface PlotToSave {
  readonly data: PlotData;
  readonly design: Design;
  /** Under the title, which is the design's name: what is plotted and what holds for it. */
  readonly lines: readonly string[];
  /** What it shows, in sentences. */
  readonly summary: string;
  /** Of the file, after the design's. */
  readonly name: string;
}

export const PLOT_FILES = ['svg', 'png', 'csv'] as const;
export type PlotFile = (typeof PLOT_FILES)[number];

/** Saves a plot as a file; says what came of it, nothing where the person thought better of it. */
export type SavePlot = (plot: PlotToSave, kind: PlotFile) => Promise<string>;

/**
 * The way out of the page for plots of panels, which know nothing of the files that `output` writes: the page puts its own
 * in here.
 */
const PlotFilesContext = createContext<SavePlot | null>(null);

export const PlotFilesProvider = PlotFilesContext.Provider;

/** Throws outside a provider: a programmer's fault. */
export function useSavePlot(): SavePlot {
  const save = useContext(PlotFilesContext);
  if (!save) throw new Error('useSavePlot(): there is no PlotFilesProvider above');
  return save;
}
