/** Next year's plan, checked against what a person would write down by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { learnedOf, withLearned } from '../../../src/plan/next-year/learned.ts';
import { nextName, nextYear } from '../../../src/plan/next-year/next-year.ts';
import { canBeYear, daysRead } from '../../../src/plan/next-year/season-as-year.ts';
import { unpackedMm } from '../../../src/plan/packed-days.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { DEMO_PLANS } from '../../support/demo-plans.ts';
import { oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const line = tomatoes().lines[0] as NonNullable<ReturnType<typeof tomatoes>['lines'][number]>;

/** Tomatoes re-laid in June, shrubs planted in May, and an empty second zone. */
const plan: Plan = oneBed({
  name: 'Beds 2027',
  supply: {
    sources: [
      { name: 'Hose', flow: { kind: 'typed', flow: 5 } },
      { name: 'Main', from: '2027-06-14', flow: { kind: 'typed', flow: 9 } },
    ],
    cuts: [{ from: '2027-06-14', to: '2027-06-20', share: 0.5 }],
    restrictions: [{ from: '2027-06-07', to: '2027-06-20', weekdays: ['mon'] }],
  },
  zones: [
    zone({
      rule: { kind: 'planting', planting: 'shrubs' },
      plantings: [
        tomatoes({
          lines: [
            { ...line, to: '2027-06-13' },
            { ...line, from: '2027-06-14' },
          ],
          inGround: { from: '2027-06-07', to: '2027-07-01' },
        }),
        shrubs({ inGround: { from: '2027-06-08' }, establishing: { until: '2027-06-30', factor: 1.3 } }),
      ],
    }),
    zone({ id: 'border', name: 'Border', plantings: [] }),
  ],
  log: { days: { '2027-06-09': { rain: 0.4 } }, runs: { beds: { '2027-06-07': 50 } } },
  choices: { beds: { '2027-06-14': { minutes: 20, note: 'hot' } } },
});

describe('next year’s plan', () => {
  const next = nextYear(plan);

  it('is the same garden from the same weekday a year on, with nothing logged or decided', () => {
    // June 7, 2027 and June 5, 2028 are Mondays.
    expect(next).toMatchObject({ name: 'Beds 2028', season: { firstDay: '2028-06-05', weeks: 4 } });
    expect(next).not.toHaveProperty('log');
    expect(next).not.toHaveProperty('choices');
    expect(checkPlan(next).ok).toBe(true);
    expect(plan.name).toBe('Beds 2027');
  });

  it('lays the last lines again, sows crops anew, and keeps what lasts in the ground', () => {
    const [tomato, shrub] = next.zones[0]?.plantings ?? [];
    expect(tomato).toMatchObject({
      need: { plantedOn: '2028-05-08' },
      inGround: { from: '2028-06-05', to: '2028-06-29' },
      lines: [line],
    });
    expect(tomato?.lines[0]).not.toHaveProperty('from');
    expect(shrub).not.toHaveProperty('inGround');
    expect(shrub).not.toHaveProperty('establishing');
  });

  it('has the supply as it is now, moves restrictions, and leaves a cut behind', () => {
    expect(next.supply?.sources).toEqual([{ name: 'Main', flow: { kind: 'typed', flow: 9 } }]);
    expect(next.supply?.restrictions).toEqual([{ from: '2028-06-05', to: '2028-06-18', weekdays: ['mon'] }]);
    expect(next.supply).not.toHaveProperty('cuts');
  });

  it('moves, ends and adds plantings; a rule that named one that left goes', () => {
    const { id: _id, ...basil } = tomatoes({ name: 'Shrubs' });
    const other = nextYear(plan, {
      plantings: new Map([
        ['tomatoes', { kind: 'ends' }],
        ['shrubs', { kind: 'moves', toZone: 'border' }],
      ]),
      added: [{ zone: 'beds', planting: basil }],
    });
    expect(other.zones.map(({ plantings }) => plantings.map(({ id }) => id))).toEqual([['shrubs-2'], ['shrubs']]);
    expect(other.zones[0]).not.toHaveProperty('rule');
    expect(nextYear(plan).zones[0]?.rule).toEqual({ kind: 'planting', planting: 'shrubs' });
    expect(checkPlan(other).ok).toBe(true);
  });

  it('names a year only where it stands by itself', () => {
    expect(nextName({ ...plan, name: '2027: plot 20271' })).toBe('2028: plot 20271');
  });

  it('is valid of 200 random plans, whatever becomes of their plantings', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostZones: 3, mostWeeks: 20 }), fc.infiniteStream(fc.nat(3)), (random, picks) => {
        const fates = new Map(
          random.zones.flatMap(({ plantings }) =>
            plantings.map(({ id }) => {
              const pick = picks.next().value ?? 0;
              const toZone = random.zones[pick % random.zones.length]?.id ?? '';
              return [id, pick === 0 ? { kind: 'ends' as const } : { kind: 'moves' as const, toZone }] as const;
            }),
          ),
        );
        const checked = checkPlan(nextYear(random, { plantings: fates, source: 'log' }));
        expect(checked.ok ? [] : checked.faults).toEqual([]);
      }),
      { numRuns: 200, seed: 21 },
    );
  });
});

describe('the season’s weather', () => {
  it('becomes a real year where its days were read, as it was read', () => {
    const days = Object.fromEntries(
      Array.from({ length: 28 }, (_, day) => [
        new Date(Date.UTC(2027, 5, 7 + day)).toISOString().slice(0, 10),
        { rain: day % 7 === 0 ? 0.25 : 0, ...(day < 14 && { eto: 0.2 }) },
      ]),
    );
    const read = oneBed({ log: { days } });
    expect(daysRead(read)).toEqual({ read: 28, days: 28 });
    const { years } = nextYear(read, { source: 'Own log' }).site;
    expect(years).toMatchObject({ source: 'Own log', stretches: [{ from: '2027-06-07' }] });
    const { rain = '', eto = '' } = years?.stretches[0] ?? {};
    // A quarter of an inch on each Monday, and a fifth of an inch of reference ET on each day that it was read.
    expect([...unpackedMm(rain, 'us')].slice(0, 8)).toEqual(
      [6.35, 0, 0, 0, 0, 0, 0, 6.35].map((mm) => expect.closeTo(mm, 2)),
    );
    expect([...unpackedMm(eto, 'us')].slice(13, 15)).toEqual([expect.closeTo(5.08, 2), Number.NaN]);
    const twice = nextYear({ ...read, site: { ...read.site, ...(years && { years }) } }, { source: 'Own log' });
    expect(twice.site.years).toEqual(years);
    expect(nextYear(read).site).not.toHaveProperty('years');
  });

  it('is left out where too few were', () => {
    expect(canBeYear(daysRead(plan))).toBe(false);
    expect(nextYear(plan, { source: 'Own log' }).site).toEqual(plan.site);
  });
});

describe('what a log teaches', () => {
  const [demo] = DEMO_PLANS as [Plan, ...Plan[]];
  const season = computeSeason(demo);
  const [first] = season.zones;
  if (first === undefined) throw new Error('the demo has no zone');
  const { id, efficiency } = first.zone;
  const computed = computeSeason({ ...demo, log: {}, choices: {} }).zones[0] ?? first;
  const weeks = Array.from({ length: first.weeks }, (_, week) => week).filter(
    (week) => computed.figures.at(10, week) > 0,
  );
  /** A quarter more than computed in eight weeks. */
  const runs = Object.fromEntries(
    weeks
      .slice(0, 8)
      .map((week) => [
        new Date((season.garden.span.firstDay + 7 * week) * 86_400_000).toISOString().slice(0, 10),
        1.25 * computed.figures.at(10, week),
      ]),
  );
  const lived: Plan = { ...demo, log: { runs: { [id]: runs } }, choices: {} };
  const [learned, ...others] = learnedOf(lived, computeSeason(lived));

  it('is how much more ran than was computed, and the efficiency that would have computed it', () => {
    expect(others).toEqual([]);
    expect(learned).toMatchObject({ zone: id, weeks: 8, efficiencyNow: efficiency });
    expect((learned?.minutesRun ?? 0) / (learned?.minutesComputed ?? 1)).toBeCloseTo(1.25, 6);
    expect(learned?.efficiencyThen).toBeCloseTo(efficiency / 1.25, 2);
  });

  it('is used only where it is taken', () => {
    const used = withLearned(demo, learned === undefined ? [] : [learned]);
    expect(used.zones[0]?.application).toEqual({ kind: 'efficiency', value: learned?.efficiencyThen });
    expect(used.zones.slice(1)).toEqual(demo.zones.slice(1));
    const after = computeSeason(used).zones[0]?.zone.efficiency;
    expect(after).toBe(learned?.efficiencyThen);
  });
});
