import { toSi } from '../units.ts';

/**
 * Least pressure of a compensating emitter about which nothing is known, kPa: 10 psi (7-15 psi by type, from memory).
 */
export const LEAST_PRESSURE_KPA = toSi(10, 'pressure', 'us');

/**
 * Pressure at which a plain emitter or spray gives the flow on its label, kPa: 20 psi (usual regulators hold 20-30 psi,
 * from memory).
 */
export const NOMINAL_PRESSURE_KPA = toSi(20, 'pressure', 'us');
