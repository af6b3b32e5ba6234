/**
 * uPlot formats numbers in the browser's language and fails at import where that is no language tag (under the C
 * locale Chromium says "en-US@posix"). Importing this first puts English in its place.
 */
function mendLanguage(): void {
  try {
    Intl.getCanonicalLocales(navigator.language);
  } catch {
    Object.defineProperty(navigator, 'language', { value: 'en-US', configurable: true });
  }
}

mendLanguage();
