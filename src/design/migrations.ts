import { fail, type Result, succeed } from '../engine/result';
import { DESIGN_VERSION } from './design';
import type { FaultReason } from './fault';

export type JsonObject = Readonly<Record<string, unknown>>;

/** Turns a document of version `from` into one of the next version. It must not change its argument. */
export interface Migration {
  readonly from: number;
  /** Returns the document without regard to its `version`, which is set by `migrate`. */
  readonly apply: (document: JsonObject) => JsonObject;
}

/** One entry for every version that has been left behind, ascending. Version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [];

/**
 * A document of any known version as one of the present version. Refused: a version that is no whole number or below
 * zero, one from the future, one for which no migration is listed, and a document on which a migration fails.
 */
export function migrate(
  document: JsonObject,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<JsonObject, FaultReason> {
  const { version } = document;
  if (version === undefined) return fail({ code: 'missing' });
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 0) {
    return fail({ code: 'badVersion', found: String(JSON.stringify(version)).slice(0, 40) });
  }
  if (version > DESIGN_VERSION) {
    return fail({ code: 'newerVersion', found: version, known: DESIGN_VERSION });
  }
  let current = document;
  for (let from = version; from < DESIGN_VERSION; from++) {
    const step = migrations.find((one) => one.from === from);
    if (!step) return fail({ code: 'olderVersion', found: version, known: DESIGN_VERSION });
    try {
      current = { ...step.apply(current), version: from + 1 };
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      return fail({ code: 'migrationFailed', from, detail });
    }
  }
  return succeed(current);
}
