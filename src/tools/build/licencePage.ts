import { APART, type BundledPackage } from './licenceRules.ts';

/** A licence of something that is no package, or our own. */
export interface NamedText {
  readonly name: string;
  readonly licence: string;
  readonly note: string;
  readonly text: string;
}

const NO_WARRANTY_MIT = `THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;
const NO_WARRANTY_ISC = `THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

/** Texts of SPDX (spdx.org/licenses/MIT, ISC). */
const STANDARD: Readonly<Record<string, string>> = {
  MIT: `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:\n\nThe above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.\n\n${NO_WARRANTY_MIT}`,
  ISC: `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above copyright notice and this permission notice appear in all copies.\n\n${NO_WARRANTY_ISC}`,
};

/** The page that lists what the built folder is made of: plain text in plain markup, no script. */
export function licencePage(
  packages: readonly BundledPackage[],
  texts: readonly NamedText[],
): string {
  const own = texts.map((one) => section(one.name, one.licence, one.note, one.text));
  const others = packages.map((one) =>
    section(
      `${one.name} ${one.version}`,
      one.licence,
      [APART[one.name]?.how, one.author, one.source].filter(Boolean).join(' \u00b7 '),
      one.text || standardText(one),
    ),
  );
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <link rel="stylesheet" href="./licences.css" />
    <title>Licences \u00b7 Stillgrip</title>
  </head>
  <body>
    <main>
      <h1>Licences</h1>
      <p>Made by the build from what is in it: ${packages.length} packages. <a href="./">Back to Stillgrip</a></p>
${[...own, ...others].join('\n')}
    </main>
  </body>
</html>
`;
}

function section(name: string, licence: string, note: string, text: string): string {
  const about = note === '' ? '' : `<p>${escaped(note)}</p>`;
  const whole = `<details><summary>Text</summary><pre>${escaped(text)}</pre></details>`;
  return `      <section><h2>${escaped(name)} <small>${escaped(licence)}</small></h2>${about}${whole}</section>`;
}

/** For a package that declares a licence and brings no file of it. */
function standardText(one: BundledPackage): string {
  const text = STANDARD[one.licence];
  if (text === undefined) throw new Error(`licencePage(): ${one.name} brings no text`);
  return `The package brings no file of its licence. The text of the licence that it declares:\n\nCopyright (c) ${one.author || `the authors of ${one.name}`}\n\n${text}`;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

export function licenceStyle(): string {
  return `:root { color-scheme: light dark; }
body { margin: 0; font: 14px/20px system-ui, sans-serif; color: #1d2321; background: #ffffff; }
main { max-width: 760px; margin: 0 auto; padding: 24px 16px; }
h1 { font-size: 22px; line-height: 28px; }
h2 { margin: 16px 0 4px; font-size: 14px; }
small { margin-left: 8px; font-weight: 400; }
p { margin: 4px 0; overflow-wrap: anywhere; }
a { color: inherit; }
summary { min-height: 24px; cursor: pointer; }
pre { padding: 12px; font-size: 12px; line-height: 16px; white-space: pre-wrap; overflow-wrap: anywhere; border: 1px solid #8a918d; }
@media (prefers-color-scheme: dark) { body { color: #e6e9e7; background: #1b1e1d; } }
`;
}
