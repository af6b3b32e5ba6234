const SURVIVED = new Set(['Survived', 'NoCoverage']);

function mutantsOf(report) {
  return Object.entries(report.files).flatMap(([file, { source, mutants }]) =>
    mutants.map((mutant) => ({ ...mutant, file, source })),
  );
}

/** One line of figures: mutants, killed, timed out, survived, without any test, left out, score in percent. */
export function scoreLine(name, report) {
  const mutants = mutantsOf(report);
  const count = (...statuses) => mutants.filter(({ status }) => statuses.includes(status)).length;
  const killed = count('Killed');
  const timedOut = count('Timeout');
  const survived = count('Survived');
  const uncovered = count('NoCoverage');
  const failed = count('RuntimeError', 'CompileError');
  const valid = killed + timedOut + survived + uncovered;
  const score = valid === 0 ? 'none' : `${((100 * (killed + timedOut)) / valid).toFixed(1)} %`;
  return (
    `${name}: ${valid} mutants, ${killed} killed, ${timedOut} timed out, ${survived} survived, ` +
    `${uncovered} untested, ${count('Ignored')} left out, ${failed} not runnable, score ${score}`
  );
}

/** Each survivor, in the order of the source: its file, its place in it, and what was put in place of what. */
export function survivorsOf(report) {
  return mutantsOf(report)
    .filter(({ status }) => SURVIVED.has(status))
    .map(({ file, source, location: { start, end }, mutatorName, replacement, status }) => {
      const line = source.split('\n')[start.line - 1].trim();
      const before = textAt(source, { start, end });
      const untested = status === 'NoCoverage' ? ' (no test)' : '';
      const around = line === before ? '' : ` in ${quoted(line)}`;
      return {
        file,
        line: start.line,
        column: start.column,
        change: `${mutatorName}${untested}: ${quoted(before)} -> ${quoted(replacement)}${around}`,
      };
    })
    .toSorted((a, b) => a.file.localeCompare(b.file) || a.line - b.line || a.column - b.column);
}

function textAt(source, { start, end }) {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column - 1);
  lines[0] = lines[0].slice(start.column - 1);
  return lines.join('\n');
}

/** On one line, in the marks of code; such marks in it become others, which Markdown does not take for an end. */
function quoted(text) {
  const line = text.replace(/\s+/g, ' ').replaceAll('`', "'").trim();
  return `\`${line.length > 90 ? `${line.slice(0, 87)}...` : line}\``;
}
