/**
 * The kernel's file with our own words in its header (ISO 10303-21, 8.2.2 and 8.2.3): description, file name's entry and
 * the program that made it. What is not found stays as it is.
 */
export function describedStep(file: string, title: string, description: string): string {
  return file
    .replace(
      /FILE_DESCRIPTION\(\('[^']*'\)/,
      () => `FILE_DESCRIPTION((${inLines(description).join(',')})`,
    )
    .replace(/FILE_NAME\('[^']*'/, () => `FILE_NAME(${stepString(title)}`)
    .replace(/'Open CASCADE 7\.\d+'|'Unknown'/g, (name) =>
      name === "'Unknown'" ? "'Stillgrip'" : name,
    );
}

/** Strings of at most 256 characters each (STRING(256) of the header section). */
function inLines(text: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    if (line !== '' && stepString(`${line} ${word}`).length > 256) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].map(stepString);
}

/** A string of ISO 10303-21: quotes and backslashes doubled, letters beyond ASCII as \X2\ and four hexadecimal digits. */
export function stepString(text: string): string {
  let out = '';
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 39) out += "''";
    else if (code === 92) out += '\\\\';
    else if (code >= 32 && code < 127) out += text[i];
    else out += `\\X2\\${code.toString(16).toUpperCase().padStart(4, '0')}\\X0\\`;
  }
  return `'${out}'`;
}
