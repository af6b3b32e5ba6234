// What StrykerJS writes into the sources for each mutant is `stryMutAct("12") ? mutant : (stryCov("12"), original)`. To
// ask that at every step of every loop, and to count it, makes a numerical test ten to fifty times slower.
const ASKED = /\bstryMutAct_\w+(?:\$\d+)?\("(\d+)"\)/g;
const COUNTED = /\bstryCov_\w+(?:\$\d+)?\((?:"\d+"(?:, ?)?)+\)/g;

/** A script taken apart at its questions, to be put together with the questions about one mutant, or without any. */
export function partsOf(code) {
  const plain = code.replace(COUNTED, '0');
  const pieces = [];
  const ids = [];
  let from = 0;
  for (const asked of plain.matchAll(ASKED)) {
    pieces.push(plain.slice(from, asked.index), asked[0]);
    ids.push(asked[1]);
    from = asked.index + asked[0].length;
  }
  const end = plain.slice(from);
  const only = (id) =>
    ids.map((one, k) => pieces[2 * k] + (one === id ? pieces[2 * k + 1] : 'false')).join('') + end;
  return { only, without: () => only(null) };
}
