import { afterEach, describe, expect, test, vi } from 'vitest';
import { serializeDesign } from '../../src/design/file';
import { designOf, fullHead } from './designs';

describe('a content policy without code from strings', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
  });

  test('is kept: a design is read without the Function constructor', async () => {
    vi.resetModules();
    let made = 0;
    const counting = new Proxy(Function, {
      construct: () => {
        made++;
        throw new EvalError('forbidden');
      },
    });
    vi.stubGlobal('Function', counting);
    const fresh = await import('../../src/design/file');
    expect(fresh.parseDesign(serializeDesign(designOf(fullHead()))).ok).toBe(true);
    expect(made).toBe(0);
  });
});
