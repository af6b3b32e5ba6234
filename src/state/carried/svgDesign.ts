import { SaxesParser } from 'saxes';
import { fail, succeed } from '../../engine/result';
import { type CarriedText, DESIGN_NAMESPACE, MOST_CARRIED } from './carried';

/** Elements in elements; a drawing nests a dozen. The parser looks for a namespace in every one that is open. */
const DEEPEST = 200;

/** The first text of a design in an SVG, whoever wrote the rest of it. Never throws; what is not XML is unreadable. */
export function designInSvg(svg: string): CarriedText {
  // Not even read by the parser where there is none, however long it is.
  if (!svg.includes(DESIGN_NAMESPACE))
    return fail({ kind: /<svg[\s>]/.test(svg) ? 'noDesign' : 'unreadable' });
  const pieces: string[] = [];
  let size = 0;
  let depth = 0;
  let open = 0;
  let state: 'before' | 'in' | 'after' = 'before';
  let broken = false;
  const parser = new SaxesParser({ xmlns: true });
  const take = (piece: string) => {
    if (state !== 'in') return;
    size += piece.length;
    if (size <= MOST_CARRIED) pieces.push(piece);
  };
  parser.on('error', () => {
    broken = true;
  });
  parser.on('opentag', ({ uri, local }) => {
    if (++open > DEEPEST) throw new Error('nested too deep');
    if (state === 'in') depth++;
    else if (state === 'before' && uri === DESIGN_NAMESPACE && local === 'design') state = 'in';
  });
  parser.on('closetag', () => {
    open--;
    if (state === 'in' && depth-- === 0) state = 'after';
  });
  parser.on('text', take);
  parser.on('cdata', take);
  try {
    parser.write(svg).close();
  } catch {
    broken = true;
  }
  if (broken) return fail({ kind: 'unreadable' });
  if (size > MOST_CARRIED) return fail({ kind: 'tooLarge', limit: MOST_CARRIED });
  return state === 'before' ? fail({ kind: 'noDesign' }) : succeed(pieces.join(''));
}
