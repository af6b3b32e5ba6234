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

/** Each survivor: where, what kind, and the text before and after. */
export function survivorLines(report) {
  return mutantsOf(report)
    .filter(({ status }) => SURVIVED.has(status))
    .map(({ file, source, location, mutatorName, replacement, status }) => {
      const before = textAt(source, location);
      const mark = status === 'NoCoverage' ? ' (no test)' : '';
      const place = `${file}:${location.start.line}:${location.start.column}`;
      return `${place} ${mutatorName}${mark}: ${short(before)} -> ${short(replacement)}`;
    });
}

function textAt(source, { start, end }) {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column - 1);
  lines[0] = lines[0].slice(start.column - 1);
  return lines.join('\n');
}

function short(text) {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 90 ? `${line.slice(0, 87)}...` : line;
}
