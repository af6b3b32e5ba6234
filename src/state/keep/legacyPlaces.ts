/** Where earlier builds kept their one design: a database and a note of their own. */
export const OLD = { database: 'stillgrip', store: 'designs', note: 'stillgrip.rescue' };

/** Whether anything may lie there; false where the browser does not say. Never rejects. */
export async function hasLegacy(): Promise<boolean> {
  try {
    if (localStorage.getItem(OLD.note) !== null) return true;
    return (await indexedDB.databases()).some(({ name }) => name === OLD.database);
  } catch {
    return false;
  }
}
