/**
 * Random gardens whose water is limited: laid lines behind solid tube that costs pressure, watering days that change from week to week, and weeks
 * in which water is cut. Their figures are invented.
 */
import fc from 'fast-check';
import type {
  Garden,
  GardenLine,
  GardenPlanting,
  GardenSupply,
  GardenZone,
  SeasonSpan,
  SupplyCut,
} from '../../src/engine/garden.ts';
import type { GardenOptions } from './arbitrary-garden.ts';
import { between, dayAround, some } from './garden-numbers.ts';
import { arbitraryLaidGarden } from './laid-garden.ts';
import { withFlows } from './with-flows.ts';

export function arbitraryLimitedGarden(options: GardenOptions = {}): fc.Arbitrary<Garden> {
  return arbitraryLaidGarden(options).chain((garden) =>
    fc
      .record({
        cuts: fc.array(arbitraryCut(garden.span), { maxLength: 4 }),
        limits: fc.array(arbitraryLimits(garden.span), { minLength: MOST_ZONES, maxLength: MOST_ZONES }),
        tubes: fc.array(some(arbitraryTube(garden.span)), { minLength: TUBES, maxLength: TUBES }),
      })
      .map(({ cuts, limits, tubes }) => {
        let behind = 0;
        const withTube = (planting: GardenPlanting): GardenPlanting => {
          behind += 1;
          const tube = tubes[behind % TUBES];
          const laid = planting.lines.map((line) => ({ ...line, riseMPerM: Math.abs(line.riseMPerM) }));
          const lines = tube === undefined ? laid : [...laid, tube];
          return { ...planting, lines: lines.toSorted((one, other) => one.from - other.from) };
        };
        const zones = garden.zones.map((zone, place): GardenZone => {
          return { ...zone, ...limits[place % MOST_ZONES], plantings: zone.plantings.map(withTube) };
        });
        return withFlows({ ...garden, supply: { ...lifting(garden.supply), cuts }, zones });
      }),
  );
}

/** Where a pressure is known it lifts water through the solid tube: 100 kPa at least. Lines lie level or climb. */
function lifting(supply: GardenSupply): GardenSupply {
  const sources = supply.sources.map(({ pressureKpa, ...source }) => {
    return pressureKpa === undefined ? source : { ...source, pressureKpa: 100 + pressureKpa };
  });
  return { ...supply, sources };
}

/** More than a small garden has of either. */
const MOST_ZONES = 5;
const TUBES = 7;

/** A day of restrictions, a month with days of its own, a week without any. */
function arbitraryLimits({ weeks }: SeasonSpan) {
  const days = fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: 127 }) }, fc.constant(0));
  return fc.record({
    wateringDaysByWeek: fc.oneof(
      fc.constant(undefined),
      fc
        .tuple(days, days, days, fc.integer({ min: 0, max: weeks }), fc.integer({ min: 0, max: weeks }))
        .map(([early, middle, late, one, other]) => {
          const [first, second] = [Math.min(one, other), Math.max(one, other)];
          return Array.from({ length: weeks }, (_, week) => {
            if (week < first) return early;
            return week < second ? middle : late;
          });
        }),
      fc.array(days, { minLength: weeks, maxLength: weeks }),
    ),
    cutOrder: some(fc.integer({ min: 1, max: 4 })),
    cutExempt: fc.constantFrom(undefined, undefined, false, true),
  });
}

function arbitraryCut(span: SeasonSpan): fc.Arbitrary<SupplyCut> {
  const days = fc.tuple(dayAround(span, 20), dayAround(span, 20));
  const share = fc.oneof(fc.constantFrom(0, 1), between(0, 1));
  const litresPerWeek = fc.oneof(fc.constant(0), between(0, 1500));
  return fc.tuple(days, share, litresPerWeek, fc.boolean()).map(([[one, other], part, litres, isShare]): SupplyCut => {
    const stay = { from: Math.min(one, other), to: Math.max(one, other) };
    return isShare ? { ...stay, share: part } : { ...stay, litresPerWeek: litres };
  });
}

function arbitraryTube(span: SeasonSpan): fc.Arbitrary<GardenLine> {
  return fc
    .record({
      from: fc.oneof(fc.constant(span.firstDay - 30), dayAround(span, 5)),
      to: some(fc.constant(span.firstDay + 7 * span.weeks)),
      lengthM: some(between(0.5, 60)),
      insideDiameterMm: between(8, 26),
      riseMPerM: fc.oneof(fc.constant(0), between(0, 0.1)),
    })
    .map((tube) => ({
      kind: 'solid',
      emitters: 0,
      emitterFlowLph: 0,
      flowLph: 0,
      topology: 'dead-end',
      slopeSide: 'level',
      compensating: true,
      leastPressureKpa: 70,
      exponent: 0.5,
      ...tube,
    }));
}
