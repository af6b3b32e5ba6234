import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followLanguage, speakAtFirst } from '../../src/app/spokenLanguage';
import { LANGUAGES, speak, spokenLanguage } from '../../src/messages/languages';
import type { OtherLanguage } from '../../src/messages/spoken';
import { createSession } from '../../src/state/createSession';

/** Fetches of German, answered when the test says so. */
function heldFetches() {
  const waiting: { give(language: OtherLanguage): void; refuse(reason: Error): void }[] = [];
  const load = () =>
    new Promise<OtherLanguage>((give, refuse) => {
      waiting.push({ give, refuse });
    });
  return { load, waiting };
}

const page = { documentElement: { lang: '' }, querySelector: () => null };
const loadGerman = LANGUAGES.de.load;
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

beforeEach(() => {
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', { languages: ['en-GB'] });
});
afterEach(async () => {
  Object.assign(LANGUAGES.de, { load: loadGerman });
  await speak('en');
  vi.unstubAllGlobals();
});

function following() {
  const session = createSession(undefined, () => {});
  let drawn = 0;
  followLanguage(session, () => drawn++);
  const { store, actions } = session;
  return { actions, drawn: () => drawn, state: () => store.getState() };
}

describe('a language that cannot be fetched', () => {
  it('is refused aloud with the reason, and page and choice stay with the one that is spoken', async () => {
    const { load, waiting } = heldFetches();
    Object.assign(LANGUAGES.de, { load });
    const { actions, drawn, state } = following();
    actions.setSettings({ language: 'de' });
    waiting[0].refuse(new Error('the network is off'));
    await settled();
    expect(state().settings.language).toBe('en');
    expect(state().notice).toMatchObject({ tone: 'warning' });
    expect(state().notice?.text).toContain('the network is off');
    expect(spokenLanguage()).toBe('en');
    expect(drawn()).toBe(0);
  });

  it('says nothing where another was chosen meanwhile, and can be tried again', async () => {
    const { load, waiting } = heldFetches();
    Object.assign(LANGUAGES.de, { load });
    const { actions, drawn, state } = following();
    actions.setSettings({ language: 'de' });
    actions.setSettings({ language: 'en' });
    waiting[0].refuse(new Error('too late'));
    await settled();
    expect(state().notice).toBeNull();
    expect(state().settings.language).toBe('en');

    actions.setSettings({ language: 'de' });
    waiting[1].give(await loadGerman());
    await vi.waitFor(() => expect(drawn()).toBe(1));
    expect(spokenLanguage()).toBe('de');
    expect(page.documentElement.lang).toBe('de');
  });

  it('at the start leaves a page in English', async () => {
    Object.assign(LANGUAGES.de, { load: () => Promise.reject(new Error('no network')) });
    await speakAtFirst('de');
    expect(spokenLanguage()).toBe('en');
    expect(page.documentElement.lang).toBe('en');
  });
});
