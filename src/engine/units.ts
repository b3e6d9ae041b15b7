/** The unit system that a plan declares; its values are kept as typed in that system. */
export type UnitSystem = 'us' | 'metric';

/**
 * A unit of display, and the straight line that takes a value in it to the engine's unit. Units have ids; what a reader sees
 * beside a number is said by their language.
 */
export interface Unit<Id extends string = string> {
  /** Its id: `gal`, `in/h`, `°F`. */
  readonly name: Id;
  /** Id of the engine's own unit for the same quantity: `L`, `mm/h`, `°C`. */
  readonly siName: Id;
  /** Engine units in one unit of display. */
  readonly factor: number;
  /** Value in the unit of display that is zero in the engine's unit; 0 for all but temperature. */
  readonly offset: number;
}

// Exact by definition: the international yard and pound agreement of 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg), the US
// liquid gallon of 231 cubic inches, standard gravity 9.80665 m/s2. Stated in NIST SP 811 (2008), appendix B.
const MM_PER_INCH = 25.4;
const M_PER_INCH = 0.0254;
const M_PER_FOOT = 0.3048;
const M2_PER_SQUARE_FOOT = M_PER_FOOT * M_PER_FOOT;
const L_PER_GALLON = 3.785411784;
const KPA_PER_PSI = (0.45359237 * 9.80665) / (M_PER_INCH * M_PER_INCH) / 1000;
const MS_PER_MPH = 0.44704;

const unit = <Id extends string>(name: Id, siName: Id, factor = 1, offset = 0): Unit<Id> =>
  Object.freeze({ name, siName, factor, offset });

/** One row for each kind of quantity, one column for each system. The only place where a conversion factor is written. */
const UNITS = {
  /** Depth of water: rain, reference ET, storage. */
  depth: { us: unit('in', 'mm', MM_PER_INCH), metric: unit('mm', 'mm') },
  /** Depth of water in an hour: application rate, intake rate. */
  rate: { us: unit('in/h', 'mm/h', MM_PER_INCH), metric: unit('mm/h', 'mm/h') },
  /** Depth of water in a depth of soil. */
  availableWater: { us: unit('in/ft', 'mm/m', MM_PER_INCH / M_PER_FOOT), metric: unit('mm/m', 'mm/m') },
  /** Length of a line or a bed. */
  length: { us: unit('ft', 'm', M_PER_FOOT), metric: unit('m', 'm') },
  elevation: { us: unit('ft', 'm', M_PER_FOOT), metric: unit('m', 'm') },
  /** Of a gauge above the ground. */
  height: { us: unit('ft', 'm', M_PER_FOOT), metric: unit('m', 'm') },
  /** Of the water's surface above what it waters. */
  waterHeight: { us: unit('ft', 'm', M_PER_FOOT), metric: unit('m', 'm') },
  /** Between emitters, rows or plants. */
  spacing: { us: unit('in', 'm', M_PER_INCH), metric: unit('cm', 'm', 0.01) },
  /** Across a plant's canopy. */
  diameter: { us: unit('in', 'm', M_PER_INCH), metric: unit('cm', 'm', 0.01) },
  rootDepth: { us: unit('in', 'm', M_PER_INCH), metric: unit('cm', 'm', 0.01) },
  /** Inside a pipe or tube. */
  bore: { us: unit('in', 'mm', MM_PER_INCH), metric: unit('mm', 'mm') },
  area: { us: unit('ft²', 'm²', M2_PER_SQUARE_FOOT), metric: unit('m²', 'm²') },
  volume: { us: unit('gal', 'L', L_PER_GALLON), metric: unit('L', 'L') },
  /** Water on a unit of ground, of a budget. */
  waterPerArea: {
    us: unit('gal/ft²', 'L/m²', L_PER_GALLON / M2_PER_SQUARE_FOOT),
    metric: unit('L/m²', 'L/m²'),
  },
  /** Flow of an emitter or a spray. */
  emitterFlow: { us: unit('gph', 'L/h', L_PER_GALLON), metric: unit('L/h', 'L/h') },
  /** Flow of a supply or a whole zone. */
  supplyFlow: { us: unit('gpm', 'L/min', L_PER_GALLON), metric: unit('L/min', 'L/min') },
  pressure: { us: unit('psi', 'kPa', KPA_PER_PSI), metric: unit('kPa', 'kPa') },
  temperature: { us: unit('°F', '°C', 5 / 9, 32), metric: unit('°C', '°C') },
  windSpeed: { us: unit('mph', 'm/s', MS_PER_MPH), metric: unit('m/s', 'm/s') },
} as const satisfies Record<string, Readonly<Record<UnitSystem, Unit>>>;

/** A kind of quantity: what is measured, not in which unit. */
export type Quantity = keyof typeof UNITS;

/** Every unit that a plan or the engine states a quantity in. */
export type UnitId = (typeof UNITS)[Quantity][UnitSystem]['name'];

/** Every kind of quantity, in the table's order. */
export const QUANTITIES = Object.freeze(Object.keys(UNITS) as Quantity[]);

/**
 * The unit in which a system states a quantity: `unitOf('volume', 'us').name` is `gal`. Throws a TypeError for a quantity or a
 * system that there is not.
 */
export function unitOf(quantity: Quantity, system: UnitSystem): Unit<UnitId> {
  const unit: Unit<UnitId> | undefined = UNITS[quantity]?.[system];
  if (unit?.factor) return unit;
  throw new TypeError(`There is no quantity ${quantity} in the system ${system}.`);
}

/**
 * A value as typed, in the engine's unit: `toSi(1, 'depth', 'us')` is 25.4 (mm).
 * NaN stays so; nothing is rounded. Throws as `unitOf` does.
 */
export function toSi(value: number, quantity: Quantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return (value - offset) * factor;
}

/**
 * A value of the engine in the unit that a system states it in: `fromSi(25.4, 'depth', 'us')` is 1 (in).
 * Undoes `toSi` to rounding error, and throws as it does.
 */
export function fromSi(value: number, quantity: Quantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return value / factor + offset;
}
