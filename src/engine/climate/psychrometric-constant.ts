import { atmosphericPressure } from './atmospheric-pressure.ts';

/** Psychrometric constant gamma at an elevation, kPa per degree C (FAO-56 eq. 8); 1800 m gives 0.054 (Example 2). */
export function psychrometricConstant(elevationM: number): number {
  return 0.665e-3 * atmosphericPressure(elevationM);
}
