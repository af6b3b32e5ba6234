import { describe, expect, it } from 'vitest';
import { connection } from '../../src/state/database';

// That a closed connection lets nothing be begun (InvalidStateError) and ends what was: W3C Indexed Database API 3.0,
// section 4.4, "transaction" and "close".

function connections() {
  const log = { made: 0, open: 0, refuses: false };
  const lost: (() => void)[] = [];
  const waiting: (() => void)[] = [];
  const tried = connection(async (forget) => {
    log.made++;
    await new Promise<void>((go) => waiting.push(go));
    if (log.refuses) throw new Error('refused');
    log.open++;
    lost.push(forget);
    return { close: () => void log.open-- };
  });
  const answer = () => {
    for (const go of waiting.splice(0)) go();
  };
  return { ...tried, log, lost, answer };
}

describe('a connection', () => {
  it('is one for all who ask at the same time', async () => {
    const { opened, answer, log } = connections();
    const both = Promise.all([opened(), opened()]);
    answer();
    const [first, second] = await both;
    expect(first).toBe(second);
    expect(await opened()).toBe(first);
    expect(log).toMatchObject({ made: 1, open: 1 });
  });

  it('is made anew where it was lost, and where the browser refused it', async () => {
    const { opened, answer, log, lost } = connections();
    log.refuses = true;
    const refused = opened();
    answer();
    await expect(refused).rejects.toThrow('refused');
    log.refuses = false;
    const first = opened();
    answer();
    const before = await first;
    lost[0]();
    const second = opened();
    answer();
    expect(await second).not.toBe(before);
    // What is said of one that was lost before does not touch the present one.
    lost[0]();
    expect(await opened()).toBe(await second);
    expect(log.made).toBe(3);
  });

  it('is closed for good, also where it was still on its way', async () => {
    const { opened, answer, log, close } = connections();
    const late = opened();
    close();
    answer();
    await late;
    await new Promise((resolve) => setImmediate(resolve));
    expect(log).toMatchObject({ made: 1, open: 0 });
    await expect(opened()).rejects.toMatchObject({ name: 'InvalidStateError' });
    expect(log.made).toBe(1);
  });
});
