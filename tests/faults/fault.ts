/**
 * One deliberate fault: a text of one source file and what a tired or hurried author might have put there instead.
 * `npm run faults` plants them one at a time and expects a failing test.
 */
export interface Fault {
  /** What is wrong, as a sentence without a full stop; no two alike. */
  readonly name: string;
  /** The file, from src. */
  readonly file: string;
  /** A text that stands in the file exactly once. */
  readonly find: string;
  readonly put: string;
  /** Why it is a mistake that people make. */
  readonly why: string;
  /** The tests that are run, as files or folders from tests: those nearest to the fault. */
  readonly tests: readonly string[];
}
