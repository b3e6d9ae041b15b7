/** What the lines of a random garden carry, as they lie in some week of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { KPA_PER_METRE } from '../../src/engine/line/elevation.ts';
import { emissionUniformity } from '../../src/engine/line/emission-uniformity.ts';
import { hazenWilliamsC } from '../../src/engine/line/hazen-williams-c.ts';
import { lateral } from '../../src/engine/line/lateral.ts';
import { lineDays, plantingLine, type ZoneLine, zoneLines } from '../../src/engine/line/zone-lines.ts';
import { zoneUniformity } from '../../src/engine/line/zone-uniformity.ts';
import { christiansenF, christiansenHalfSpacingF, christiansenSum } from '../published/formulas/christiansen.ts';
import { arbitraryLaidGarden } from '../support/laid-garden.ts';
import { pipeLossKpa } from '../support/pipe-loss.ts';
import { sampled } from './law.ts';

const ROUNDING = 1e-6;
const LIMITS = ['least-pressure', 'flow-variation'];
/** The usual regulated pressure, taken where a source tells none: 20 psi (common practice, no source). */
const USUAL_KPA = 20 * 6.894757293168361;

const inSomeWeek = arbitraryLaidGarden({ mostWeeks: 4, mostZones: 2, mostPlantings: 2 }).chain((garden) =>
  fc.record({ garden: fc.constant(garden), week: fc.integer({ min: 0, max: garden.span.weeks - 1 }) }),
);

interface LinesOfWeek {
  readonly garden: Garden;
  readonly week: number;
  readonly lines: readonly ZoneLine[];
}

const weeks: readonly LinesOfWeek[] = sampled(inSomeWeek, 450).map(({ garden, week }) => ({
  garden,
  week,
  lines: garden.zones.flatMap((zone) => zoneLines(garden, zone, week)),
}));
const everyLine = weeks.flatMap(({ lines }) => lines);

describe('the lines of a week of 450 random gardens', () => {
  it('are those of the plantings that stand there with emitters, at the pressure of the source that serves', () => {
    for (const { garden, week, lines } of weeks) {
      const first = garden.span.firstDay + 7 * week;
      const expected = garden.zones.flatMap(({ plantings }) =>
        plantings.flatMap((planting) => {
          const days = [0, 1, 2, 3, 4, 5, 6].map((offset) => first + offset).filter((day) => stands(planting, day));
          const last = days.at(-1);
          if (last === undefined) return [];
          const source = garden.supply.sources.filter(({ from }) => from <= last).at(-1);
          return planting.lines
            .filter(({ from, to = last, emitters }) => from <= last && to >= last && emitters > 0)
            .map(({ from }) => ({ id: planting.id, from, kpa: source?.pressureKpa ?? USUAL_KPA }));
        }),
      );
      expect(lines.map(({ planting, line }) => [planting.id, line.from])).toEqual(
        expected.map(({ id, from }) => [id, from]),
      );
      for (const [place, { inlet }] of lines.entries()) expectNear(inlet.kpa, expected[place]?.kpa ?? Number.NaN);
    }
  });

  it('carry what their outlets give, at no pressure above the source’s and what the fall adds', () => {
    for (const { line, run, inlet, profile, velocityMs } of everyLine) {
      const { reachFlowsLph, flowsLph, pressuresKpa, inletFlowLph } = profile;
      const given = sum(flowsLph);
      const fromFar = line.topology === 'loop' ? (reachFlowsLph.at(-1) as number) : 0;
      expectNear((reachFlowsLph[0] as number) - fromFar, given);
      expectNear(inletFlowLph, given);
      const fallM = Math.max(0, -line.riseMPerM) * (line.topology === 'loop' ? 0.5 : 1) * profile.lengthM;
      expect(Math.min(...pressuresKpa)).toBeGreaterThanOrEqual(0);
      const most = (inlet.kpa + fallM * KPA_PER_METRE) * (1 + ROUNDING);
      expect(Math.max(...pressuresKpa)).toBeLessThanOrEqual(most);
      if (line.compensating) expect(given * run.runs).toBeLessThanOrEqual(line.flowLph * (1 + ROUNDING));
      const bore = (Math.PI / 4) * (line.insideDiameterMm / 1000) ** 2;
      expectNear(velocityMs, Math.max(...reachFlowsLph.map(Math.abs)) / 3.6e6 / bore);
    }
  });

  it('have days on which they lie, and one more than there are has neither days nor water', () => {
    for (const { garden, week, lines } of weeks) {
      const first = garden.span.firstDay + 7 * week;
      for (const { planting, index, inlet } of lines) {
        const days = lineDays(planting, index, { first, last: first + 6 });
        expect(days?.last).toBe(Math.min(first + 6, planting.to));
        expect(days?.first).toBe(Math.max(first, planting.from, planting.lines[index]?.from ?? Number.NaN));
        expect(lineDays(planting, planting.lines.length, { first, last: first + 6 })).toBeUndefined();
        expect(plantingLine(planting, planting.lines.length, inlet)).toBeUndefined();
      }
    }
  });

  it('that are loops carry what their outlets give from two feeds at the ends of a slope too', () => {
    const loops = everyLine.filter(({ run }) => run.lateral.topology === 'loop' && run.lateral.outlets <= 200);
    for (const { run, inlet } of loops) {
      const through = lateral({ ...run.lateral, course: 'through', inletPressureKpa: inlet.kpa });
      const { reachFlowsLph, flowsLph, pressuresKpa, meetingM, lengthM } = through;
      expectNear((reachFlowsLph[0] as number) - (reachFlowsLph.at(-1) as number), sum(flowsLph));
      expect(Math.min(...pressuresKpa)).toBeGreaterThanOrEqual(0);
      expect(meetingM).toBeGreaterThanOrEqual(0);
      expect(meetingM).toBeLessThanOrEqual(lengthM);
    }
    expect(loops.length).toBeGreaterThan(20);
  });

  it('that are level, full and closed at their end lose Christiansen’s share of the friction of their whole flow', () => {
    let seen = 0;
    for (const { line, run, inlet, profile, fault } of everyLine) {
      const { outlets, spacingM } = run.lateral;
      const isFull = line.compensating && fault === undefined && line.riseMPerM === 0;
      // Beyond 2,000 outlets neighbours are reckoned as one.
      if (!isFull || line.topology === 'loop' || outlets > 2000) continue;
      const { insideDiameterMm } = line;
      const lengthM = outlets * spacingM;
      const pipe = { insideDiameterMm, lengthM, hazenWilliamsC: hazenWilliamsC(insideDiameterMm) };
      const lossKpa = pipeLossKpa({ ...pipe, flowLph: line.flowLph / run.runs }) * christiansenSum(outlets);
      expectNear(inlet.kpa - profile.endPressureKpa, lossKpa, 1e-6 * inlet.kpa);
      const f = christiansenF(outlets);
      expectNear(f, christiansenSum(outlets), 0.005);
      expectNear(christiansenHalfSpacingF(outlets), (outlets * f - 0.5) / (outlets - 0.5));
      seen += 1;
    }
    expect(seen).toBeGreaterThan(10);
  });

  it('are out of bounds just when an emitter is dry or below its least pressure, or plain ones differ too much', () => {
    for (const of of everyLine) {
      const { fault, longest, run } = of;
      expect(fault).toBe(faultOf(of));
      if (fault !== undefined) expect(longest.outlets).toBeLessThan(run.lateral.outlets);
      expect(longest.profile === undefined).toBe(longest.outlets === 0);
    }
  });

  it('water no more evenly than their least emitter tells', () => {
    for (const { profile } of everyLine) {
      const eu = emissionUniformity({ flowsLph: profile.flowsLph, manufacturingCv: 0, emittersPerPlant: 1 });
      expect(eu).toBeGreaterThanOrEqual(0);
      expect(eu).toBeLessThanOrEqual(profile.uniformity + ROUNDING);
      expect(profile.uniformity).toBeLessThanOrEqual(1 + ROUNDING);
    }
  });

  it('of a zone together water no more evenly than emitters are made, and not at all where none is laid', () => {
    for (const { garden } of weeks) {
      const { firstDay, weeks } = garden.span;
      for (const { plantings } of garden.zones) {
        const days = { firstDay, lastDay: firstDay + 7 * weeks - 1 };
        const uniformity = zoneUniformity({ plantings, ...days });
        const isLaid = plantings.some(({ lines }) => lines.some(({ emitters }) => emitters > 0));
        if (!isLaid) expect(uniformity).toBeUndefined();
        expect(uniformity ?? 0).toBeGreaterThanOrEqual(0);
        expect(uniformity ?? 0).toBeLessThanOrEqual(1 - 1.27 * 0.05 + ROUNDING);
      }
    }
  });

  it('are of every kind: closed and looped, full and dry, in bounds and out of each', () => {
    const kinds = everyLine.map(({ line, profile, fault }) => [
      line.topology,
      line.compensating ? 'compensating' : 'plain',
      profile.state,
      fault ?? 'in bounds',
    ]);
    expect([...new Set(kinds.flat())].sort()).toEqual(
      ['dead-end', 'loop', 'compensating', 'plain', 'full', 'partly-dry', 'dry', 'in bounds', ...LIMITS].sort(),
    );
  });
});

function faultOf({ line, profile }: ZoneLine): ZoneLine['fault'] {
  const { wetOutlets, pressuresKpa, leastPressureKpa, flowsLph } = profile;
  const asked = line.compensating ? Math.max(1, line.leastPressureKpa) : 0;
  if (wetOutlets < pressuresKpa.length || leastPressureKpa < asked * (1 - ROUNDING)) return 'least-pressure';
  return Math.min(...flowsLph) < (0.9 - ROUNDING) * Math.max(...flowsLph) ? 'flow-variation' : undefined;
}

function stands({ from, to }: GardenPlanting, day: number): boolean {
  return from <= day && day <= to;
}

function sum(values: ArrayLike<number>): number {
  return Array.from(values).reduce((total, value) => total + value, 0);
}

function expectNear(one: number, other: number, within = 1e-9 * Math.max(1, Math.abs(other))): void {
  if (!(Math.abs(one - other) <= within)) expect.fail(`${one} is not ${other}`);
}
