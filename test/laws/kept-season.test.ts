import fc from 'fast-check';
import { describe, expect } from 'vitest';
import type {
  ForecastDay,
  Garden,
  GardenPlanting,
  GardenZone,
  WeatherYears,
  WeekChoice,
} from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { seasonBuffers } from '../../src/engine/season/zone-season.ts';
import { arbitraryGarden, arbitraryZone } from '../support/arbitrary-garden.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { expectAllSame, expectSame } from '../support/same-figures.ts';
import { law } from './law.ts';
import { allFigures } from './weeks-of.ts';

/** One change to a garden, in the way the plan makes it: what did not change stays the same object. */
type Change = (garden: Garden) => Garden;

const arbitraryChoice: fc.Arbitrary<WeekChoice> = fc.oneof(
  fc.record({ minutes: fc.integer({ min: 0, max: 200 }) }),
  fc.record({ minutesRun: fc.integer({ min: 0, max: 200 }) }),
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.record({ minutes: fc.integer({ min: 0, max: 90 }) })))
    .map((runs) => ({
      runs: new Map(runs),
    })),
  fc.constant({ closed: true }),
  fc.constant({}),
);

const anyWhere = fc.integer({ min: 0, max: 1000 });

/** One planting made anew: as it was, with what changes its use of water, or with what does not. */
const arbitraryGrowing: fc.Arbitrary<Growing> = fc.constantFrom<Growing[]>(
  (planting) => structuredClone(planting),
  (planting) => ({ ...planting, areaM2: 2 * planting.areaM2 }),
  ({ container, ...planting }) => ({ ...planting, wettedShare: planting.wettedShare === 0.4 ? 1 : 0.4 }),
  ({ wettedShare, ...planting }) => planting,
  (planting) => ({
    ...planting,
    wettedShareByWeek: Array.from({ length: 200 }, (_, week) => (week % 9 < 4 ? 0.3 : 0.8)),
  }),
  ({ wettedShareByWeek, ...planting }) => planting,
  (planting) => ({ ...planting, leachingFraction: planting.leachingFraction === 0.2 ? 0 : 0.2 }),
  (planting) => inPots(planting),
  (planting) => ({ ...planting, rainFactor: planting.rainFactor === 0 ? 1 : 0 }),
  (planting) => ({ ...planting, rest: [{ from: planting.from + 12, to: planting.from + 30, kind: 'leafless' }] }),
  (planting) => ({ ...planting, rest: [{ from: planting.from + 12, to: planting.to, kind: 'dry-down' }] }),
  ({ rest, ...planting }) => planting,
  (planting) => ({ ...planting, rootZone: { ...planting.rootZone, startDepletion: 1, initialDepthM: 0.05 } }),
  (planting) => ({ ...planting, from: planting.from + 9 }),
  (planting) => ({ ...planting, lines: planting.lines.map((line) => ({ ...line, flowLph: 0.6 * line.flowLph })) }),
  (planting) => ({ ...planting, lines: planting.lines.slice(1), hasShutOff: !planting.hasShutOff }),
  (planting) => ({ ...planting, rootZone: { ...planting.rootZone, depthM: planting.rootZone.depthM + 0.1 } }),
  (planting) => ({
    ...planting,
    watering: planting.watering === 'keep' ? 'refill' : 'keep',
    rootZone: { ...planting.rootZone, targetDepletion: 0 },
  }),
  (planting) => ({ ...planting, establishing: undefined }),
  (planting) => ({ ...planting, establishing: { until: planting.from + 20, factor: 1.5 } }),
  (planting) => ({ ...planting, coefficient: LANDSCAPE }),
);

type Growing = (planting: GardenPlanting) => GardenPlanting;

/** Two of 20 L of a mix that gives 0.3 of its volume. */
function inPots({ rootZone, ...planting }: GardenPlanting): GardenPlanting {
  return {
    ...planting,
    container: { count: 2, volumeLitres: 20, openingM: 0.3, rainShare: 1 },
    rootZone: { ...rootZone, depthM: 0.04 / planting.areaM2, availableWater: 0.3, adjustsDepletion: false },
  };
}

const LANDSCAPE: GardenPlanting['coefficient'] = {
  kind: 'landscape',
  name: { en: 'moderate' },
  factor: 0.5,
  density: 1,
  microclimate: 1,
  source: 'invented',
};

/** One zone made anew around the same plantings. */
const arbitraryRunning: fc.Arbitrary<Running> = fc.constantFrom<Running[]>(
  (zone) => ({ ...zone, rule: { kind: zone.rule.kind === 'thirstiest' ? 'area-weighted' : 'thirstiest' } }),
  (zone) => ({ ...zone, efficiency: 0.5 * zone.efficiency }),
  (zone) => ({ ...zone, wateringDays: zone.wateringDays === 127 ? 18 : 127 }),
  (zone) => ({ ...zone, timerStepMinutes: 7 }),
  (zone) => ({ ...zone, longestCycleMinutes: 9, startsADay: zone.startsADay === 2 ? 5 : 2 }),
  (zone) => ({ ...zone, rule: { kind: 'planting', plantingId: zone.plantings.at(-1)?.id ?? '' } }),
  (zone) => ({ ...zone, choices: logged(zone, true) }),
  (zone) => ({ ...zone, choices: logged(zone, false) }),
  (zone) => ({ ...zone, soil: { ...zone.soil, availableWater: 0.11 } }),
  (zone) => ({ ...zone, soil: { ...zone.soil } }),
  (zone) => ({ ...zone, plantings: zone.plantings.toReversed() }),
  (zone) => ({ ...zone, wateringDaysByWeek: Array.from({ length: 200 }, (_, week) => (week % 5 === 2 ? 0 : 42)) }),
  (zone) => ({ ...zone, wateringDaysByWeek: Array.from({ length: 200 }, (_, week) => (week % 13 < 3 ? 1 : 0)) }),
  ({ wateringDaysByWeek, ...zone }) => zone,
  (zone) => ({ ...zone, cutOrder: 9 - (zone.cutOrder ?? 1) }),
  (zone) => ({ ...zone, cutExempt: zone.cutExempt !== true }),
);

type Running = (zone: GardenZone) => GardenZone;

/** Two weeks: runs by day, all shut-offs open or none; and shut-offs set by hand. */
function logged({ plantings, choices }: GardenZone, isOpen: boolean): GardenZone['choices'] {
  const open = new Set(isOpen ? plantings.map(({ id }) => id) : []);
  const runs = new Map([
    [1, { minutes: 25, open }],
    [4, { minutes: 40 }],
  ]);
  const openDays = new Map(plantings.map(({ id }) => [id, isOpen ? 1 : 0]));
  return new Map(choices).set(1, { runs }).set(2, { openDays });
}

const oneChange: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(anyWhere, anyWhere, arbitraryChoice).map(([zone, week, choice]) => chooseIn(zone, week, choice)),
  fc.tuple(anyWhere, fc.integer({ min: 0, max: 60 })).map(([day, rainMm]) => observeOn(day, { rainMm })),
  fc.tuple(anyWhere, fc.integer({ min: 0, max: 9 })).map(([day, etoMm]) => observeOn(day, { etoMm })),
  fc.tuple(anyWhere, fc.integer({ min: 0, max: 60 })).map(([day, rainMm]) => observeInWeek(day, { rainMm })),
  fc
    .tuple(anyWhere, fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 6 }))
    .map(([day, rainMm, through]) => observeInWeek(day, { rainMm }, through)),
  fc.tuple(anyWhere, fc.integer({ min: 0, max: 50 })).map(([day, etoMm]) => observeInWeek(day, { etoMm })),
  fc
    .tuple(anyWhere, fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 9 }))
    .map(([day, rainMm, etoMm]) => forecastOn(day, { rainMm, etoMm })),
  fc.tuple(anyWhere, fc.integer({ min: 0, max: 30 })).map(([day, rainMm]) => forecastOn(day, { rainMm })),
  fc.constant<Change>(({ observed: { days, weeks }, ...garden }) => ({ ...garden, observed: { days, weeks } })),
  fc.tuple(anyWhere, anyWhere, arbitraryGrowing).map(([zone, place, change]) => plantIn(zone, place, change)),
  fc.tuple(anyWhere, arbitraryRunning).map(([zone, change]) => runIn(zone, change)),
  fc.tuple(anyWhere, anyWhere).map(([from, to]) => moveFirst(from, to)),
  fc.constant<Change>((garden) => ({ ...garden, zones: garden.zones.slice(1) })),
  fc.constant<Change>((garden) => ({ ...garden, zones: garden.zones.toReversed() })),
  fc.constant<Change>((garden) => ({ ...garden, observed: { days: new Map(), weeks: new Map() } })),
  fc.constant<Change>((garden) => ({ ...garden, span: { ...garden.span, weeks: garden.span.weeks + 1 } })),
  fc.integer({ min: -8, max: 8 }).map((days): Change => {
    return (garden) => ({ ...garden, span: { ...garden.span, firstDay: garden.span.firstDay + days } });
  }),
  fc.constantFrom('tr21', 'fao', 'balance', 'fraction').map((method): Change => {
    return ({ site, ...rest }) => ({ ...rest, site: { ...site, rain: { ...site.rain, method } } });
  }),
  fc.integer({ min: 0, max: 300 }).map((rainMm): Change => {
    return ({ site, ...rest }) => ({
      ...rest,
      site: { ...site, climate: { ...site.climate, rainMm: site.climate.rainMm.map(() => rainMm) } },
    });
  }),
  fc.integer({ min: 1, max: 12 }).map((rainDay): Change => {
    return ({ site, ...rest }) => ({
      ...rest,
      site: { ...site, climate: { ...site.climate, rainDays: site.climate.rainMm.map(() => rainDay) } },
    });
  }),
  fc.double({ min: 0, max: 1, noNaN: true }).map((runoffFraction): Change => {
    return ({ site, ...rest }) => ({ ...rest, site: { ...site, rain: { ...site.rain, runoffFraction } } });
  }),
  fc.integer({ min: 1, max: 9 }).map((rainMm): Change => {
    return ({ site, ...rest }) => ({ ...rest, site: { ...site, years: aRecord(rest.span.firstDay, rainMm) } });
  }),
  fc
    .tuple(fc.integer({ min: 0, max: 60 }), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([day, share]) => cutFrom(day, share)),
  fc.constant<Change>(({ supply: { cuts, ...supply }, ...garden }) => ({ ...garden, supply })),
);

/** Two at once now and then, as a paste or an import makes them. */
const arbitraryChange: fc.Arbitrary<Change> = fc.oneof(
  { weight: 3, arbitrary: oneChange },
  {
    weight: 1,
    arbitrary: fc.tuple(oneChange, oneChange).map(
      ([one, other]): Change =>
        (garden) =>
          other(one(garden)),
    ),
  },
);

const addedZone = arbitraryGarden().chain((garden) =>
  arbitraryZone(garden.span, 2).map((zone) => ({
    garden,
    changes: [({ zones, ...rest }: Garden): Garden => ({ ...rest, zones: [{ ...zone, id: 'added' }, ...zones] })],
  })),
);

/** Where few zones of many change, only the weeks that moved are added up anew. */
const MANY_ZONES = arbitraryGarden({ mostWeeks: 6, mostZones: 9, mostPlantings: 2 });

/** Where water is cut, one zone's change may change all others. */
const LIMITED = arbitraryLimitedGarden({ mostWeeks: 8 });

const edited = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      garden: fc.oneof(arbitraryGarden({ mostWeeks: 30 }), MANY_ZONES, LIMITED),
      changes: fc.array(arbitraryChange, { minLength: 1, maxLength: 5 }),
    }),
  },
  { weight: 1, arbitrary: addedZone },
);

describe('a season with an earlier one at hand', () => {
  law('is the season without it, after any run of edits, and the earlier one stays as it was', {
    on: edited,
    runs: 250,
    holds: ({ garden, changes }) => {
      let now = garden;
      let season = runSeason(now);
      const buffers = seasonBuffers();
      for (const change of changes) {
        now = change(now);
        const before = { season, figures: allFigures(season) };
        season = runSeason(now, before.season);
        expectAllSame(allFigures(before.season), before.figures);
        const fresh = runSeason(now);
        expectAllSame(allFigures(season), allFigures(fresh));
        expectAllSame(allFigures(runSeason(now, before.season, buffers)), allFigures(fresh));
        expectSame(season.weather.eto.mm, fresh.weather.eto.mm);
        expectSame(season.weather.rain.mm, fresh.weather.rain.mm);
        expect(season.garden).toBe(now);
        expect(season.zones.map(({ zone }) => zone)).toEqual(now.zones);
      }
    },
  });

  law('keeps the weeks of the zones that did not change', {
    on: fc.record({
      garden: arbitraryGarden({ mostZones: 4, mostPlantings: 2 }),
      at: anyWhere,
      choice: arbitraryChoice,
    }),
    runs: 150,
    holds: ({ garden, at, choice }) => {
      const before = runSeason(garden);
      const after = runSeason(chooseIn(at, at, choice)(garden), before);
      after.zones.forEach((season, place) => {
        const unchanged = season.zone === garden.zones[place];
        expect(season === before.zones[place]).toBe(unchanged);
      });
      expect(runSeason(garden, before).zones).toEqual(before.zones);
    },
  });
});

function chooseIn(zonePlace: number, weekPlace: number, choice: WeekChoice): Change {
  return (garden) => {
    const place = zonePlace % Math.max(1, garden.zones.length);
    const week = weekPlace % garden.span.weeks;
    const chosen = (zone: GardenZone): GardenZone => ({ ...zone, choices: new Map(zone.choices).set(week, choice) });
    return { ...garden, zones: garden.zones.map((zone, at) => (at === place ? chosen(zone) : zone)) };
  };
}

function plantIn(zonePlace: number, plantingPlace: number, change: Growing): Change {
  return (garden) => {
    const zone = garden.zones[zonePlace % Math.max(1, garden.zones.length)];
    const chosen = zone?.plantings[plantingPlace % zone.plantings.length];
    const plantings = zone?.plantings.map((planting) => (planting === chosen ? change(planting) : planting)) ?? [];
    return { ...garden, zones: garden.zones.map((each) => (each === zone ? { ...each, plantings } : each)) };
  };
}

function runIn(zonePlace: number, change: Running): Change {
  return (garden) => {
    const zone = garden.zones[zonePlace % Math.max(1, garden.zones.length)];
    return { ...garden, zones: garden.zones.map((each) => (each === zone ? change(each) : each)) };
  };
}

/** A zone's first planting goes to the end of another, the same object. */
function moveFirst(fromPlace: number, toPlace: number): Change {
  return (garden) => {
    const count = Math.max(1, garden.zones.length);
    const moving = garden.zones[fromPlace % count]?.plantings.slice(0, 1) ?? [];
    const taken = runIn(fromPlace, (zone) => ({ ...zone, plantings: zone.plantings.slice(1) }))(garden);
    return runIn(toPlace, (zone) => ({ ...zone, plantings: [...zone.plantings, ...moving] }))(taken);
  };
}

function observeOn(dayPlace: number, seen: { readonly rainMm?: number; readonly etoMm?: number }): Change {
  return (garden) => {
    const day = garden.span.firstDay + (dayPlace % (7 * garden.span.weeks));
    const days = new Map(garden.observed.days);
    return { ...garden, observed: { ...garden.observed, days: days.set(day, { ...days.get(day), ...seen }) } };
  };
}

/** Two weeks of less water, after the cuts that there are. */
function cutFrom(day: number, share: number): Change {
  return ({ supply, ...garden }) => {
    const from = garden.span.firstDay + day;
    return { ...garden, supply: { ...supply, cuts: [...(supply.cuts ?? []), { from, to: from + 13, share }] } };
  };
}

/** What is expected on a morning for its own day and the six after it. */
function forecastOn(dayPlace: number, expected: ForecastDay): Change {
  return (garden) => {
    const issued = garden.span.firstDay + (dayPlace % (7 * garden.span.weeks));
    const days = new Map([0, 1, 2, 3, 4, 5, 6].map((ahead) => [issued + ahead, expected]));
    const others = (garden.observed.forecasts ?? []).filter((forecast) => forecast.issued !== issued);
    const forecasts = [...others, { issued, days }].sort((one, other) => one.issued - other.issued);
    return { ...garden, observed: { ...garden.observed, forecasts } };
  };
}

/** Two years that hold any season: rain every fourth day. */
function aRecord(firstDay: number, rainMm: number): WeatherYears {
  const days = 1200;
  const rain = Float64Array.from({ length: days }, (_, day) => (day % 4 === 0 ? rainMm : 0));
  const stretch = { firstDay: firstDay - 800, rainMm: rain, etoMm: new Float64Array(days).fill(3) };
  return { source: 'invented', stretches: [stretch] };
}

/** Writes the week's total under the day it was first written by, or its first day. */
function observeInWeek(
  weekPlace: number,
  seen: { readonly rainMm?: number; readonly etoMm?: number },
  through?: number,
): Change {
  return (garden) => {
    const first = garden.span.firstDay + 7 * (weekPlace % garden.span.weeks);
    const weeks = new Map(garden.observed.weeks);
    const day = [...weeks.keys()].find((key) => key >= first && key < first + 7) ?? first;
    return {
      ...garden,
      observed: { ...garden.observed, weeks: weeks.set(day, { ...weeks.get(day), ...seen, ...until(first, through) }) },
    };
  };
}

function until(first: number, through: number | undefined): { readonly rainThrough?: number } {
  return through === undefined ? {} : { rainThrough: first + through };
}
