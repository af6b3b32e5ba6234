/**
 * A strict reader after RFC 4180, section 2: records end with CR LF, cells are quoted whole or hold no quote, a quote in a
 * quoted cell is doubled, every record has as many cells as the first. Throws at anything else. Lines in front that begin
 * with "#" are ours, not of the standard, and are given apart.
 */
export function readCsv(text: string): { above: string[]; header: string[]; rows: string[][] } {
  if (!text.startsWith('\ufeff')) throw new Error('no byte order mark');
  let rest = text.slice(1);
  const above: string[] = [];
  while (rest.startsWith('#')) {
    const end = rest.indexOf('\r\n');
    if (end < 0) throw new Error('a line above does not end');
    above.push(rest.slice(2, end));
    rest = rest.slice(end + 2);
  }
  const records = readRecords(rest);
  const [header, ...rows] = records;
  for (const row of rows) {
    if (row.length !== header.length) throw new Error(`${row.length} cells, not ${header.length}`);
  }
  return { above, header, rows };
}

function readRecords(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length) {
    const cell = text[at] === '"' ? quoted(text, at) : plain(text, at);
    record.push(cell.value);
    at = cell.end;
    if (text[at] === ',') at++;
    else if (text.startsWith('\r\n', at)) {
      records.push(record);
      record = [];
      at += 2;
    } else throw new Error(`neither comma nor line end at ${at}`);
  }
  if (record.length > 0) throw new Error('the last record does not end');
  return records;
}

function plain(text: string, from: number): { value: string; end: number } {
  const value = /^[^,\r\n"]*/.exec(text.slice(from, from + 10_000))?.[0] ?? '';
  return { value, end: from + value.length };
}

function quoted(text: string, from: number): { value: string; end: number } {
  let value = '';
  for (let at = from + 1; at < text.length; at++) {
    if (text[at] !== '"') value += text[at];
    else if (text[at + 1] === '"') {
      value += '"';
      at++;
    } else return { value, end: at + 1 };
  }
  throw new Error('a quoted cell does not end');
}
