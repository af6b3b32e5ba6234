import { describe, expect, test } from 'vitest';
import { airAt } from '../../../src/engine/air/atmosphere';

/**
 * US Standard Atmosphere 1976 (ISO 2533), tables by geometric height, as printed; from memory: m, K, Pa, kg/m^3,
 * Pa s, m/s. A row agrees within half a unit of its last digit.
 */
const ROWS = [
  {
    altitudeM: 0,
    temperature: 288.15,
    pressure: 101325,
    density: 1.225,
    viscosity: 1.7894e-5,
    sound: 340.29,
  },
  {
    altitudeM: 1000,
    temperature: 281.651,
    pressure: 89876,
    density: 1.1117,
    viscosity: 1.7579e-5,
    sound: 336.43,
  },
  {
    altitudeM: 5000,
    temperature: 255.676,
    pressure: 54048,
    density: 0.73643,
    viscosity: 1.6282e-5,
    sound: 320.55,
  },
  {
    altitudeM: 10000,
    temperature: 223.252,
    pressure: 26499,
    density: 0.41351,
    viscosity: 1.4577e-5,
    sound: 299.53,
  },
];

describe('the standard atmosphere', () => {
  test('has the printed rows of its tables', () => {
    for (const row of ROWS) {
      const air = airAt({ altitudeM: row.altitudeM });
      expect(Math.abs(air.temperature - row.temperature)).toBeLessThan(0.00051);
      expect(Math.abs(air.pressure - row.pressure)).toBeLessThan(1);
      const digit = row.density > 1 ? 5e-5 : 5e-6;
      expect(Math.abs(air.density - row.density)).toBeLessThan(digit);
      expect(Math.abs(air.viscosity - row.viscosity)).toBeLessThan(0.51e-9);
      expect(Math.abs(air.soundSpeed - row.sound)).toBeLessThan(0.0051);
    }
  });

  // Perfect gas: at the same pressure density goes with 1/T; 101325 / (287.053 * 303.15) = 1.16439.
  test('keeps its pressure on a warm day, and the density falls with the temperature', () => {
    const warm = airAt({ altitudeM: 0, temperatureC: 30 });
    expect(warm.pressure).toBe(101325);
    expect(Math.abs(warm.density - 1.16439)).toBeLessThan(1e-5);
    // Sutherland's air at 20 C is 1.81e-5 to 1.83e-5 in handbooks (memory).
    expect(Math.abs(airAt({ altitudeM: 0, temperatureC: 20 }).viscosity - 1.82e-5)).toBeLessThan(
      1e-7,
    );
  });

  test('is refused, not clamped, outside the layer that its formula holds for', () => {
    expect(() => airAt({ altitudeM: 11001 })).toThrow(/11001/);
    expect(() => airAt({ altitudeM: Number.NaN })).toThrow(/altitudeM/);
    expect(() => airAt({ altitudeM: 0, temperatureC: 200 })).toThrow(/200/);
  });
});
