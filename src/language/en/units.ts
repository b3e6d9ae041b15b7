/** Units beside a number, spelled out, and as people type them. */
import type { UnitId } from '../../engine/units.ts';
import { area } from '../area.ts';

export const units = {
  /** Beside a number. */
  symbols: {
    in: 'in',
    mm: 'mm',
    'in/h': 'in/h',
    'mm/h': 'mm/h',
    'in/ft': 'in/ft',
    'mm/m': 'mm/m',
    ft: 'ft',
    m: 'm',
    cm: 'cm',
    'ft²': 'sq ft',
    'm²': 'm²',
    gal: 'gal',
    L: 'L',
    'gal/ft²': 'gal/sq ft',
    'L/m²': 'L/m²',
    gph: 'gph',
    'L/h': 'L/h',
    gpm: 'gpm',
    'L/min': 'L/min',
    psi: 'psi',
    kPa: 'kPa',
    '°F': '°F',
    '°C': '°C',
    mph: 'mph',
    'm/s': 'm/s',
    min: 'min',
    h: 'h',
  } satisfies Readonly<Record<UnitId | 'min' | 'h', string>>,
  /** Of a column or field, where no number stands before them. */
  names: { in: 'inches', mm: 'millimeters', gal: 'gallons', L: 'liters' },
  /** The same where they stand alone. */
  titles: { gal: 'Gallons', L: 'Liters' },
  /** What people type behind a number and put into headings, in lower case. */
  typed: {
    min: ['min', 'mins', 'minute', 'minutes', 'm', '′'],
    h: ['h', 'hr', 'hrs', 'hour', 'hours'],
    day: ['d', 'day', 'days'],
    gal: ['gal', 'gals', 'gallon', 'gallons'],
    L: ['l', 'liter', 'liters', 'litre', 'litres'],
    in: ['in', 'inch', 'inches', '″', '"'],
    mm: ['mm', 'millimeter', 'millimeters', 'millimetre', 'millimetres'],
    '°C': ['c', 'celsius'],
    '°F': ['f', 'fahrenheit'],
  } as Readonly<Record<TypedUnit, readonly string[]>>,
  /** Between a part and the whole that is typed behind it: `3 of 5`. */
  typedOf: ['of'] as readonly string[],
};

/** Units that are read where they are typed. */
export type TypedUnit = Extract<UnitId, 'gal' | 'L' | 'in' | 'mm' | '°C' | '°F'> | 'min' | 'h' | 'day';

export const unitsWords = area('units', units, {
  names: { mm: 'millimetres', L: 'litres' },
  titles: { L: 'Litres' },
});
