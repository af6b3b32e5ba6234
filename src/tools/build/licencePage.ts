import { APART, type BundledPackage } from './licenceRules.ts';

/** A licence of something that is no package, or our own. */
export interface NamedText {
  readonly name: string;
  readonly licence: string;
  readonly note: string;
  readonly text: string;
}

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
      one.text,
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
  const whole =
    text === ''
      ? '<p>The package brings no text of its licence; the name above is what it declares.</p>'
      : `<details><summary>Text</summary><pre>${escaped(text)}</pre></details>`;
  return `      <section><h2>${escaped(name)} <small>${escaped(licence)}</small></h2>${about}${whole}</section>`;
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
