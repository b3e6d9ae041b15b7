import { requireNumber } from '../require-number.ts';

/** An emitter whose flow rises with pressure: q = k H^x, so that it gives its nominal flow at its nominal pressure. */
export interface PlainEmitter {
  readonly kind: 'plain';
  readonly nominalFlowLph: number;
  readonly nominalPressureKpa: number;
  /** x: see `EMITTER_EXPONENTS`. */
  readonly exponent: number;
}

/** A pressure-compensating emitter: its nominal flow at any pressure from `leastPressureKpa` up. */
export interface CompensatingEmitter {
  readonly kind: 'compensating';
  readonly nominalFlowLph: number;
  readonly leastPressureKpa: number;
}

export type Emitter = PlainEmitter | CompensatingEmitter;

/**
 * Exponents x of q = k H^x by the emitter's flow path (from memory: Keller and Karmeli 1975; USDA-NRCS NEH 623 ch. 7).
 */
export const EMITTER_EXPONENTS = Object.freeze({
  /** Orifice or turbulent path. */
  turbulent: 0.5,
  vortex: 0.4,
  longPath: 0.75,
  laminar: 1,
});

/** Flow of an emitter, L/h, at a pressure, kPa. */
export type EmitterLaw = (pressureKpa: number) => number;

/**
 * The pressure-flow law of an emitter. At no pressure or suction it gives 0. Below its least pressure a compensating
 * emitter's flap stands open and it runs as an orifice, with the square root of pressure (a simplification; the maker's
 * sheet knows better).
 *
 * @throws RangeError where a flow or a pressure is not above 0, or an exponent is below it
 */
export function emitterLaw(emitter: Emitter): EmitterLaw {
  const { nominalFlowLph } = emitter;
  requireNumber('emitter flow (L/h)', nominalFlowLph, { above: 0 });
  if (emitter.kind === 'compensating') {
    const { leastPressureKpa } = emitter;
    requireNumber('least pressure of the emitter (kPa)', leastPressureKpa, { above: 0 });
    return (pressureKpa) => {
      if (pressureKpa >= leastPressureKpa) return nominalFlowLph;
      return pressureKpa > 0 ? nominalFlowLph * Math.sqrt(pressureKpa / leastPressureKpa) : 0;
    };
  }
  const { nominalPressureKpa, exponent } = emitter;
  requireNumber('nominal pressure of the emitter (kPa)', nominalPressureKpa, { above: 0 });
  requireNumber('exponent of the emitter', exponent, { atLeast: 0 });
  return (pressureKpa) => (pressureKpa > 0 ? nominalFlowLph * (pressureKpa / nominalPressureKpa) ** exponent : 0);
}

/** Flow of one emitter at a pressure, L/h. */
export function emitterFlowLph(emitter: Emitter, pressureKpa: number): number {
  return emitterLaw(emitter)(pressureKpa);
}
