import { spoken } from './spoken';

/**
 * A label in the middle of a sentence: English begins it with a small letter, but not what is all capitals ("PMI foam"). A
 * language that writes its nouns with capitals keeps them.
 */
export function inSentence(label: string): string {
  if (spoken.code !== 'en') return label;
  return /^[A-Z][a-z]/.test(label) ? label[0].toLowerCase() + label.slice(1) : label;
}
