import { HELP_ALSO } from './help/also';
import { HELP_BALANCE } from './help/balance';
import { HELP_BENCH } from './help/bench';
import { HELP_CONTROL } from './help/control';
import { HELP_FIGURES } from './help/figures';
import { HELP_HOLDING } from './help/holding';
import { HELP_LOADS } from './help/loads';
import { HELP_MAKING } from './help/making';
import { HELP_NONE } from './help/none';
import { HELP_PAGE } from './help/page';
import { HELP_REST } from './help/rest';
import { HELP_SOURCES } from './help/sources';
import { HELP_SPREAD } from './help/spread';
import { SYMBOL_WORDS } from './help/symbols';
import { HELP_TURNING } from './help/turning';
import { HELP_WORDS } from './help/words';

/** Help on quantities and words, and the glossary: the keys of the English one. */
export const HELP_TEXT = {
  ...HELP_PAGE,
  ...HELP_FIGURES,
  ...HELP_NONE,
  ...HELP_SOURCES,
  ...HELP_SPREAD,
  ...HELP_TURNING,
  ...HELP_CONTROL,
  ...HELP_REST,
  ...HELP_HOLDING,
  ...HELP_LOADS,
  ...HELP_BALANCE,
  ...HELP_MAKING,
  ...HELP_BENCH,
  ...HELP_WORDS,
  ...SYMBOL_WORDS,
  ...HELP_ALSO,
} as const;
