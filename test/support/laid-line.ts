/** Lines as they are laid, and a planting on one. Their figures are invented. */
import fc from 'fast-check';
import type { GardenLine, GardenPlanting, GardenSupply } from '../../src/engine/garden.ts';
import { between } from './garden-numbers.ts';
import { plantingWithFlows } from './with-flows.ts';

/** Dripline in equal runs: 2.3 L/h every 0.3 m, compensating from 70 kPa, unless changed. */
export function laidLine({
  runs = 1,
  outlets = 100,
  ...change
}: { readonly runs?: number; readonly outlets?: number } & Partial<GardenLine> = {}): GardenLine {
  const emitterFlowLph = change.emitterFlowLph ?? 2.3;
  const spacingM = change.spacingM ?? 0.3;
  return {
    from: 20_000,
    kind: 'dripline',
    emitters: runs * outlets,
    emitterFlowLph,
    flowLph: runs * outlets * emitterFlowLph,
    spacingM,
    lengthM: runs * outlets * spacingM,
    runs,
    topology: 'dead-end',
    slopeSide: 'level',
    riseMPerM: 0,
    insideDiameterMm: 14.2,
    compensating: true,
    leastPressureKpa: 70,
    exponent: 0.5,
    ...change,
  };
}

/** Emitters set one by one: no spacing, length or runs of their own. */
export function pointLine(emitters: number, change: Partial<GardenLine> = {}): GardenLine {
  const { spacingM: _spacing, lengthM: _length, runs: _runs, ...line } = laidLine({ outlets: emitters });
  return { ...line, kind: 'point', ...change };
}

/** In the ground from day 20,000 to 20,200 on 30 m2, fed by the sources. */
export function plantingWith(
  lines: readonly GardenLine[],
  change: Partial<GardenPlanting> = {},
  sources: GardenSupply['sources'] = [],
): GardenPlanting {
  const planting = {
    id: 'beds',
    name: 'Beds',
    coefficient: {
      kind: 'landscape',
      name: { en: 'plants' },
      factor: 0.5,
      density: 1,
      microclimate: 1,
      source: 'invented',
    },
    areaM2: 30,
    rootZone: {
      depthM: 0.4,
      allowedDepletion: 0.5,
      adjustsDepletion: false,
      targetDepletion: 0,
      startDepletion: 0,
    },
    watering: 'keep',
    from: 20_000,
    to: 20_200,
    hasShutOff: false,
    lines,
    flows: [],
    ...change,
  } satisfies GardenPlanting;
  return plantingWithFlows(planting, 0.8, sources);
}

/** Compensating and plain, dead end and loop, flat and sloping, short and far too long. */
export const arbitraryLaidLine: fc.Arbitrary<GardenLine> = fc
  .record({
    runs: fc.integer({ min: 1, max: 6 }),
    outlets: fc.oneof(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 30, max: 400 })),
    emitterFlowLph: between(1, 8),
    spacingM: between(0.15, 0.9),
    topology: fc.constantFrom<GardenLine['topology'][]>('dead-end', 'loop'),
    riseMPerM: fc.oneof(fc.constant(0), between(-0.05, 0.05)),
    insideDiameterMm: between(4, 20),
    compensating: fc.boolean(),
    exponent: fc.constantFrom(0.4, 0.5, 0.75, 1),
  })
  .map(laidLine);
