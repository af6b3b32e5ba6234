const FACES = {
  regular: new URL('./fonts/LiberationSans-Regular.ttf', import.meta.url),
  bold: new URL('./fonts/LiberationSans-Bold.ttf', import.meta.url),
} as const;

/** A face of the PDF files as it is to be embedded. Throws what the browser says where it cannot be fetched. */
export async function fetchFont(face: keyof typeof FACES): Promise<Uint8Array> {
  const answer = await fetch(FACES[face]);
  if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
  return new Uint8Array(await answer.arrayBuffer());
}
