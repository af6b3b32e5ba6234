/** Solid files, pictures and tables. */
export function FilesRoom() {
  return <p className="app-loading">…</p>;
}
