import { toSi } from '../units.ts';
import type { Catalogue, Dripline, SingleEmitter } from './catalogue.ts';
import { EMITTER_EXPONENTS, type Emitter } from './emitter.ts';
import { TUBING } from './tubing.data.ts';
import { LEAST_PRESSURE_KPA, NOMINAL_PRESSURE_KPA } from './usual-pressures.data.ts';

const SOURCE = 'common practice, no source';

function compensating(gph: number): Emitter {
  return Object.freeze({
    kind: 'compensating',
    nominalFlowLph: toSi(gph, 'emitterFlow', 'us'),
    leastPressureKpa: LEAST_PRESSURE_KPA,
  });
}

function plain(gph: number): Emitter {
  return Object.freeze({
    kind: 'plain',
    nominalFlowLph: toSi(gph, 'emitterFlow', 'us'),
    nominalPressureKpa: NOMINAL_PRESSURE_KPA,
    exponent: EMITTER_EXPONENTS.turbulent,
  });
}

const metres = (...inches: readonly number[]): readonly number[] =>
  Object.freeze(inches.map((spacing) => toSi(spacing, 'spacing', 'us')));

function dripline(gph: number): Dripline {
  return Object.freeze({
    id: `dripline-${gph}gph`,
    emitter: compensating(gph),
    spacingsM: metres(6, 9, 12, 18, 24),
    tubingId: 'dripline-17mm',
    source: SOURCE,
  });
}

const single = (kind: string, gph: number, emitter: Emitter): SingleEmitter =>
  Object.freeze({ id: `${kind}-${gph}gph`, emitter, source: SOURCE });

/**
 * Usual trade sizes, sold by the US gallon and inch and stated here in SI, exactly converted: a 0.6 gph dripline is the
 * same goods as a 2.3 L/h one. Names no maker.
 */
export const CATALOGUE: Catalogue = Object.freeze({
  tubing: TUBING,
  driplines: Object.freeze([
    dripline(0.4),
    dripline(0.6),
    dripline(0.9),
    Object.freeze({
      id: 'dripline-quarter-inch-0.5gph',
      emitter: plain(0.5),
      spacingsM: metres(6, 9, 12),
      tubingId: 'dripline-quarter-inch',
      source: SOURCE,
    }),
  ]),
  pointEmitters: Object.freeze([0.5, 1, 2, 4].map((gph) => single('emitter', gph, compensating(gph)))),
  microSprays: Object.freeze([5, 10, 15, 20].map((gph) => single('micro-spray', gph, plain(gph)))),
});
