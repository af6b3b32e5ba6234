/** The workshop drawing on its sheet. */
export function DrawingRoom() {
  return <p className="app-loading">…</p>;
}
