/** The way of a file with readings to the measuring bench, which panels know nothing of; the page gives it. */
export interface ReadingsDoor {
  /** Whether tables of readings come under such a name. */
  isName(name: string): boolean;
  /** How much the file looks like readings, from 0 (certainly none) to 1. */
  likeness(file: File): Promise<number>;
  /** The bench's readings are on the page: a table that could be readings is meant for them. */
  isOpen(): boolean;
  /** Opens the bench's readings with a preview of the files. */
  offer(files: readonly File[]): Promise<void>;
}
