/** Air at rest, SI. */
export interface Air {
  /** kg/m^3 */
  readonly density: number;
  /** Dynamic viscosity, Pa s. */
  readonly viscosity: number;
  /** m/s */
  readonly soundSpeed: number;
  /** Pa */
  readonly pressure: number;
  /** K */
  readonly temperature: number;
}

/** As typed: the temperature read from a thermometer if known, and the height above sea level. */
export interface AirPlace {
  readonly temperatureC?: number;
  readonly altitudeM: number;
}

/** What the formulas hold for: the lowest layer of the standard atmosphere ends at 11 km. */
export const AIR_LIMITS = {
  altitudeM: { least: -2000, most: 11000 },
  temperatureC: { least: -80, most: 80 },
} as const;

const GRAVITY = 9.80665;
const GAS_CONSTANT = 8314.32 / 28.9644;
const HEAT_RATIO = 1.4;
const EARTH_RADIUS = 6356766;
const LAPSE = 0.0065;
const SEA_LEVEL = { temperature: 288.15, pressure: 101325 } as const;
const SUTHERLAND = { beta: 1.458e-6, temperature: 110.4 } as const;
const ZERO_CELSIUS = 273.15;

/**
 * Air by the standard atmosphere (ISO 2533, the same as US Standard Atmosphere 1976 up to 11 km): pressure from the
 * geometric height, temperature as given or, left out, that of the standard; dry; viscosity by Sutherland's formula.
 * Weather moves the pressure by some 3 %, humidity the density by up to 1 %: neither is in here.
 * A height outside -2,000 to 11,000 m, a temperature outside -80 to 80 C or a value that is not a number throws:
 * the caller holds what a person typed against AIR_LIMITS first.
 */
export function airAt(place: AirPlace): Air {
  const { altitudeM, temperatureC } = place;
  requireWithin(altitudeM, AIR_LIMITS.altitudeM, 'altitudeM');
  if (temperatureC !== undefined)
    requireWithin(temperatureC, AIR_LIMITS.temperatureC, 'temperatureC');
  // Geopotential height: the standard's pressure law has constant gravity.
  const height = (EARTH_RADIUS * altitudeM) / (EARTH_RADIUS + altitudeM);
  const standard = SEA_LEVEL.temperature - LAPSE * height;
  const exponent = GRAVITY / (GAS_CONSTANT * LAPSE);
  const pressure = SEA_LEVEL.pressure * (standard / SEA_LEVEL.temperature) ** exponent;
  const temperature = temperatureC === undefined ? standard : temperatureC + ZERO_CELSIUS;
  return {
    density: pressure / (GAS_CONSTANT * temperature),
    viscosity: (SUTHERLAND.beta * temperature ** 1.5) / (temperature + SUTHERLAND.temperature),
    soundSpeed: Math.sqrt(HEAT_RATIO * GAS_CONSTANT * temperature),
    pressure,
    temperature,
  };
}

function requireWithin(
  value: number,
  limits: { readonly least: number; readonly most: number },
  name: string,
): void {
  if (!(value >= limits.least && value <= limits.most))
    throw new RangeError(
      `airAt(): ${name} is not within ${limits.least} to ${limits.most}: ${value}`,
    );
}
