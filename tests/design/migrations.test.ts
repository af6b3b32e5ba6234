import { describe, expect, test } from 'vitest';
import { DESIGN_VERSION } from '../../src/design/design';
import { describeFault } from '../../src/design/faultText';
import { parseDesign } from '../../src/design/file';
import { MIGRATIONS, type Migration, migrate } from '../../src/design/migrations';

/** An invented older form: the speed stood at the top, in revolutions per second. */
const fromZero: Migration = {
  from: 0,
  apply: ({ speedHz, ...rest }) => ({
    ...rest,
    rotor: { speedRpm: 60 * (speedHz as number), bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
  }),
};
const OLD = '{"format":"stillgrip-design","version":0,"name":"Old","speedHz":100,"parts":[]}';

describe('migrations', () => {
  test('bring an older file up to date, and it is then checked like any other', () => {
    const design = parseDesign(OLD, [fromZero]);
    expect(design).toEqual({
      ok: true,
      value: {
        format: 'stillgrip-design',
        version: DESIGN_VERSION,
        name: 'Old',
        rotor: { speedRpm: 6000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
        parts: [],
      },
    });
    const fast = parseDesign(OLD.replace('100', '1e6'), [fromZero]);
    expect(fast.ok ? '' : describeFault(fast.error)).toBe(
      'rotor.speedRpm: must be at most 200000 rpm; found 60000000 rpm',
    );
  });

  test('are found by the version that they start from', () => {
    const other: Migration = { from: 5, apply: () => ({ version: 6 }) };
    expect(parseDesign(OLD, [other, fromZero])).toEqual(parseDesign(OLD, [fromZero]));
  });

  test('leave the document they were given alone', () => {
    const document = JSON.parse(OLD) as Record<string, unknown>;
    migrate(document, [fromZero]);
    expect(document).toEqual(JSON.parse(OLD));
  });

  test('without a step for a version say that it is no longer read', () => {
    const design = parseDesign(OLD, []);
    expect(design.ok ? null : design.error).toEqual({
      path: 'version',
      reason: { code: 'olderVersion', found: 0, known: DESIGN_VERSION },
    });
  });

  test('that fail on a damaged file are told of, not thrown', () => {
    const failing: Migration = {
      from: 0,
      apply: () => {
        throw new Error('speedHz is not there');
      },
    };
    const design = parseDesign(OLD, [failing]);
    expect(design.ok ? '' : describeFault(design.error)).toBe(
      'version: a file of version 0 could not be brought up to date: speedHz is not there',
    );
  });

  test('do not touch a file of the present version or one from the future', () => {
    const never: Migration = {
      from: DESIGN_VERSION,
      apply: () => {
        throw new Error('must not run');
      },
    };
    expect(migrate({ version: DESIGN_VERSION }, [never]).ok).toBe(true);
    expect(migrate({ version: DESIGN_VERSION + 1 }, [never])).toEqual({
      ok: false,
      error: { code: 'newerVersion', found: DESIGN_VERSION + 1, known: DESIGN_VERSION },
    });
  });

  test('are listed one for each version left behind', () => {
    expect(MIGRATIONS.map((one) => one.from)).toEqual(
      Array.from({ length: DESIGN_VERSION - 1 }, (_, i) => i + 1),
    );
  });
});
