import { LANGUAGE_CODES } from '../messages/languages';
import type { LocalNotes } from './localNotes';
import {
  BENCH_VIEWS,
  CHART_QUANTITIES,
  DEFAULT_SETTINGS,
  type DisplayUnits,
  LAYERS,
  LEARN_VIEWS,
  LOWER_ROOMS,
  MAKE_VIEWS,
  NEUTRALISE_VIEWS,
  ROOMS,
  type Settings,
} from './settings';
import type { AppStore } from './store';

const NOTE = 'settings';
const UNITS: { readonly [K in keyof DisplayUnits]: readonly DisplayUnits[K][] } = {
  length: ['mm', 'in'],
  mass: ['g', 'oz'],
  force: ['N', 'ozf'],
  moment: ['N mm', 'ozf in'],
};
const THEMES = ['system', 'light', 'dark'] as const;

/** The settings of the last visit; whatever in them is not understood is as it is by default. */
export function readSettings(notes: LocalNotes): Settings {
  const text = notes.read(NOTE);
  if (text === null) return DEFAULT_SETTINGS;
  try {
    return settingsFrom(JSON.parse(text));
  } catch {
    return DEFAULT_SETTINGS;
  }
}

/** Keeps the settings from now on; returns a function that stops. */
export function keepSettings(store: AppStore, notes: LocalNotes): () => void {
  return store.subscribe((state, before) => {
    if (state.settings !== before.settings) notes.write(NOTE, JSON.stringify(state.settings));
  });
}

/** The settings in a value of whatever form; what is not understood is as it is by default. */
export function settingsFrom(value: unknown): Settings {
  const found = members(value);
  const units = members(found.units);
  const layers = members(found.layers);
  const standard = DEFAULT_SETTINGS;
  return {
    ...standard,
    units: {
      length: oneOf(UNITS.length, units.length, standard.units.length),
      mass: oneOf(UNITS.mass, units.mass, standard.units.mass),
      force: oneOf(UNITS.force, units.force, standard.units.force),
      moment: oneOf(UNITS.moment, units.moment, standard.units.moment),
    },
    language: oneOf(['system', ...LANGUAGE_CODES], found.language, standard.language),
    theme: oneOf(THEMES, found.theme, standard.theme),
    layers: Object.fromEntries(
      LAYERS.map((layer) => [layer, flag(layers[layer], standard.layers[layer])]),
    ) as Settings['layers'],
    letterKeys: flag(found.letterKeys, standard.letterKeys),
    chartQuantity: oneOf(CHART_QUANTITIES, found.chartQuantity, standard.chartQuantity),
    chartShares: flag(found.chartShares, standard.chartShares),
    chartBench: flag(found.chartBench, standard.chartBench),
    lowerRoom: oneOf(LOWER_ROOMS, found.lowerRoom, standard.lowerRoom),
    room: oneOf(ROOMS, found.room, standard.room),
    neutraliseView: oneOf(NEUTRALISE_VIEWS, found.neutraliseView, standard.neutraliseView),
    makeView: oneOf(MAKE_VIEWS, found.makeView, standard.makeView),
    benchView: oneOf(BENCH_VIEWS, found.benchView, standard.benchView),
    learnView: oneOf(LEARN_VIEWS, found.learnView, standard.learnView),
  };
}

function members(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}
function oneOf<T extends string>(options: readonly T[], value: unknown, standard: T): T {
  return options.includes(value as T) ? (value as T) : standard;
}
function flag(value: unknown, standard: boolean): boolean {
  return typeof value === 'boolean' ? value : standard;
}
