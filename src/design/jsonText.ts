import { fail, type Result, succeed } from '../engine/result';
import { type DesignFault, type FaultReason, fault } from './fault';
import { scanJson } from './jsonScan';
import { MAX_DEPTH, MAX_TEXT } from './limits';

/**
 * The value of a JSON text (RFC 8259; a leading byte order mark is passed over). Refused with their place: text that
 * is no JSON or ends early, a key given twice in one object (which JSON.parse would silently take the last of), keys
 * that reach for an object's prototype, and nesting deeper than `MAX_DEPTH`. Never throws.
 */
export function parseJson(source: string): Result<unknown, DesignFault> {
  const text = source.charCodeAt(0) === 0xfeff ? source.slice(1) : source;
  if (text.length > MAX_TEXT) {
    return fail(fault('', { code: 'tooLong', length: text.length, limit: MAX_TEXT }));
  }
  if (text.trim() === '') return fail(fault('', { code: 'empty' }));
  const stop = scanJson(text, MAX_DEPTH);
  if (stop) return fail(fault(stop.path, reasonAt(text, stop)));
  try {
    return succeed(JSON.parse(text) as unknown);
  } catch {
    // The scan and the platform's parser follow the same grammar; the tests hold them against each other.
    return fail(fault('', { code: 'notJson', line: 1, column: 1, found: excerpt(text, 0) }));
  }
}

function reasonAt(text: string, stop: NonNullable<ReturnType<typeof scanJson>>): FaultReason {
  const before = text.slice(0, stop.at);
  const line = before.split('\n').length;
  const column = stop.at - before.lastIndexOf('\n');
  switch (stop.kind) {
    case 'end':
      return { code: 'truncated', line, column };
    case 'depth':
      return { code: 'tooDeep', limit: MAX_DEPTH };
    case 'repeatedKey':
      return { code: 'repeatedKey', key: stop.key, line };
    case 'prototypeKey':
      return { code: 'unknownKey', key: stop.key };
    default:
      return { code: 'notJson', line, column, found: excerpt(text, stop.at) };
  }
}

function excerpt(text: string, at: number): string {
  return text.slice(at, at + 12);
}
