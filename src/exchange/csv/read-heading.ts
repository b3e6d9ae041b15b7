/** A column's heading: what it is about, and the unit that it may end with: `Rain (mm)`, `tmin_c`, `Low, °F`. */
import type { UnitSystem } from '../../engine/units.ts';

export interface Heading {
  /** In lower case, letters only, without its unit: `rain`, `tempmin`. */
  readonly word: string;
  /** Undefined where it names no unit. */
  readonly units: UnitSystem | undefined;
}

const UNITS: ReadonlyMap<string, UnitSystem> = new Map([
  ...['mm', 'millimetres', 'millimeters', 'c', 'celsius'].map((word) => [word, 'metric'] as const),
  ...['in', 'inch', 'inches', 'f', 'fahrenheit'].map((word) => [word, 'us'] as const),
]);

export function readHeading(text: string): Heading {
  const words = text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '' && word !== 'deg');
  const units = words.length > 1 ? UNITS.get(words.at(-1) ?? '') : undefined;
  return { word: (units === undefined ? words : words.slice(0, -1)).join(''), units };
}
