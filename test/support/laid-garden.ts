/**
 * Random gardens whose lines are laid: rows, loops and single emitters, plain and compensating, on level ground and on
 * slopes, on every soil, fed by a supply of their own, plenty or scarce. Each line keeps its flow, and so the season its figures.
 */
import fc from 'fast-check';
import type {
  Garden,
  GardenLine,
  GardenPlanting,
  GardenSupply,
  GardenZone,
  ZoneSoil,
} from '../../src/engine/garden.ts';
import { TEXTURE_IDS } from '../../src/engine/soil/textures.data.ts';
import type { GardenOptions } from './arbitrary-garden.ts';
import { between, some } from './garden-numbers.ts';
import { arbitrarySuppliedGarden } from './garden-supply.ts';
import { withFlows } from './with-flows.ts';

/** How a line is laid, whatever its flow. */
interface Laying
  extends Pick<
    GardenLine,
    'topology' | 'slopeSide' | 'riseMPerM' | 'insideDiameterMm' | 'compensating' | 'leastPressureKpa' | 'exponent'
  > {
  /** Emitters come as near to it as whole ones can. */
  readonly emitterFlowLph: number;
  readonly spacingM: number;
  readonly runs: number;
  /** Tube over what the spacings take. */
  readonly slack: number;
}

const arbitraryLaying: fc.Arbitrary<Laying> = fc.record({
  topology: fc.constantFrom<GardenLine['topology'][]>('dead-end', 'loop'),
  slopeSide: fc.constantFrom<GardenLine['slopeSide'][]>('level', 'uphill', 'downhill'),
  riseMPerM: fc.oneof(fc.constant(0), between(-0.1, 0.1)),
  insideDiameterMm: fc.oneof({ weight: 4, arbitrary: between(4, 20) }, { weight: 1, arbitrary: between(20, 60) }),
  compensating: fc.boolean(),
  leastPressureKpa: fc.oneof(fc.constant(0), between(30, 140)),
  exponent: fc.constantFrom(0.4, 0.5, 0.75, 1),
  emitterFlowLph: fc.oneof({ weight: 6, arbitrary: between(1, 10) }, { weight: 1, arbitrary: between(0.2, 1) }),
  spacingM: between(0.1, 0.9),
  runs: fc.integer({ min: 1, max: 8 }),
  slack: fc.oneof(fc.constant(1), between(0.7, 1.5)),
});

const arbitraryGround: fc.Arbitrary<Pick<ZoneSoil, 'texture' | 'slopePercent'>> = fc.record({
  texture: fc.constantFrom(...TEXTURE_IDS),
  slopePercent: fc.integer({ min: 0, max: 30 }),
});

/** More ways of laying than a small garden has lines. */
const LAYINGS = 7;

export function arbitraryLaidGarden(options: GardenOptions = {}): fc.Arbitrary<Garden> {
  return fc
    .record({
      garden: arbitrarySuppliedGarden(options),
      layings: fc.array(arbitraryLaying, { minLength: LAYINGS, maxLength: LAYINGS }),
      ground: arbitraryGround,
      sourceShare: some(between(0.1, 1)),
    })
    .map(({ garden, layings, ground, sourceShare }) => {
      let laid = 0;
      const lay = (line: GardenLine, planting: GardenPlanting) => {
        laid += 1;
        return laidLine(line, planting, layings[laid % LAYINGS] as Laying);
      };
      const zones = garden.zones.map(
        (zone): GardenZone => ({
          ...zone,
          soil: { ...zone.soil, ...ground },
          plantings: zone.plantings.map((planting) => ({
            ...planting,
            lines: planting.lines.map((line) => lay(line, planting)),
          })),
        }),
      );
      const supply = sourceShare === undefined ? garden.supply : scarce(garden, sourceShare);
      return withFlows({ ...garden, zones, supply });
    });
}

/** A supply whose sources, where they tell their flow, give that share of what all first lines take together. */
function scarce({ supply, zones }: Garden, share: number): GardenSupply {
  const flowsLph = zones.flatMap(({ plantings }) => plantings.map(({ lines }) => lines[0]?.flowLph ?? 0));
  const flowLpm = (share * flowsLph.reduce((sum, flow) => sum + flow, 0)) / 60;
  return { ...supply, sources: supply.sources.map((source) => (source.flowLpm ? { ...source, flowLpm } : source)) };
}

function laidLine(line: GardenLine, { plants = 1 }: GardenPlanting, laying: Laying): GardenLine {
  if (!(line.flowLph > 0)) return line;
  const { emitterFlowLph, spacingM, runs, slack, ...rest } = laying;
  const inRuns = line.kind === 'dripline';
  const equal = inRuns ? runs : plants;
  const emitters = equal * Math.max(1, Math.round(line.flowLph / emitterFlowLph / equal));
  return {
    ...line,
    ...rest,
    emitters,
    emitterFlowLph: line.flowLph / emitters,
    ...(inRuns ? { spacingM, runs, lengthM: slack * emitters * spacingM } : {}),
  };
}
