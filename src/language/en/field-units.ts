/** Units as people type them behind the number in a form's field, in lower case; those that cells take too are in `units.ts`. */
import type { UnitId } from '../../engine/units.ts';
import { area } from '../area.ts';
import type { TypedUnit } from './units.ts';

export const fieldUnits = {
  typed: {
    ft: ['ft', 'foot', 'feet', '′', "'"],
    m: ['m', 'meter', 'meters', 'metre', 'metres'],
    cm: ['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
    'ft²': ['sq ft', 'sqft', 'sq. ft', 'ft²', 'ft2', 'sf', 'square foot', 'square feet'],
    'm²': ['m²', 'm2', 'sq m', 'sqm', 'square meter', 'square meters', 'square metre', 'square metres'],
    'gal/ft²': [
      'gal/sq ft',
      'gal/sqft',
      'gal/ft²',
      'gal/ft2',
      'gal/sf',
      'gallons per square foot',
      'gallons a square foot',
    ],
    'L/m²': ['l/m²', 'l/m2', 'l/sq m', 'liters per square meter', 'litres per square metre', 'litres a square metre'],
    gph: ['gph', 'gal/h', 'gal/hr', 'gallons per hour', 'gallons an hour'],
    'L/h': ['l/h', 'l/hr', 'lph', 'liters per hour', 'liters an hour', 'litres per hour', 'litres an hour'],
    gpm: ['gpm', 'gal/min', 'gallons per minute', 'gallons a minute'],
    'L/min': ['l/min', 'lpm', 'liters per minute', 'liters a minute', 'litres per minute', 'litres a minute'],
    psi: ['psi'],
    kPa: ['kpa'],
    mph: ['mph', 'miles per hour', 'miles an hour'],
    'm/s': ['m/s', 'meters per second', 'meters a second', 'metres per second', 'metres a second'],
  } as Readonly<Record<FieldUnit, readonly string[]>>,
  noUnit: (unit: string) => `“${unit}” is not a unit this field takes.`,
};

/** Rates and available water are computed, never typed. */
export type FieldUnit = Exclude<UnitId, TypedUnit | 'in/h' | 'mm/h' | 'in/ft' | 'mm/m'>;

export const fieldUnitsWords = area('fieldUnits', fieldUnits);
