import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden } from '../../../src/engine/garden.ts';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { heldMask } from '../../../src/engine/season/week-masks.ts';
import { zoneFigure, zoneState } from '../../../src/engine/season/zone-week.ts';
import type { StepId } from '../../../src/explain/trace/step-kinds.ts';
import { type TracedCell, traceCell } from '../../../src/explain/trace/trace-cell.ts';
import type { TraceStep } from '../../../src/explain/trace/trace-step.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { arbitraryGarden } from '../../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { oneRow, potWith } from '../../support/troubled-plans.ts';
import { unlikeUsual } from '../../support/unlike-usual.ts';
import { DEMAND_FORMULAS } from './demand-formulas.ts';
import { GROUND_FORMULAS } from './ground-formulas.ts';
import { type Formulas, inputsOf, type LabelId } from './step-inputs.ts';
import { WATERING_FORMULAS } from './watering-formulas.ts';
import { WEATHER_FORMULAS } from './weather-formulas.ts';
import { GARDEN_FORMULAS, ZONE_FORMULAS } from './zone-formulas.ts';

const FORMULAS = {
  planting: { ...WEATHER_FORMULAS, ...DEMAND_FORMULAS, ...GROUND_FORMULAS, ...WATERING_FORMULAS },
  zone: { ...WEATHER_FORMULAS, ...ZONE_FORMULAS },
  garden: { ...WEATHER_FORMULAS, ...GARDEN_FORMULAS },
  weather: WEATHER_FORMULAS,
} satisfies Record<string, Formulas>;
type Level = keyof typeof FORMULAS;

interface Traced {
  readonly season: Season;
  readonly place: TracedCell;
  readonly level: Level;
  readonly steps: readonly TraceStep[];
}

/** Every cell of some weeks of a season, of all levels. */
function tracesOf(season: Season, everyWeek: number): readonly Traced[] {
  const weeks = Array.from({ length: season.garden.span.weeks }, (_, week) => week).filter(
    (week) => week % everyWeek === 0,
  );
  return weeks.flatMap((week) => [
    traced(season, 'garden', { week }),
    ...(['eto', 'rain'] as const).map((weather) => traced(season, 'weather', { week, weather })),
    ...season.zones.flatMap(({ zone: { id: zoneId }, plantings }) => [
      traced(season, 'zone', { week, zoneId }),
      ...plantings.map(({ planting }) => traced(season, 'planting', { week, zoneId, plantingId: planting.id })),
    ]),
  ]);
}

function traced(season: Season, level: Level, place: TracedCell): Traced {
  return { season, level, place, steps: traceCell(season, place) };
}

const gardens: readonly Garden[] = fc.sample(arbitraryGarden(), { numRuns: 200, seed: 7 });
const traces = [
  ...gardens.flatMap((garden) => tracesOf(runSeason(garden), 3)),
  ...gardens.slice(5, 10).flatMap((garden) => tracesOf(runSeason(unlikeUsual(garden)), 3)),
  ...fc.sample(arbitraryPlan(), { numRuns: 30, seed: 8 }).flatMap((plan) => tracesOf(computeSeason(plan), 5)),
];

/** What a formula makes of the step's inputs, beside the step's own result. */
function disagreement(level: Level, step: TraceStep): string | undefined {
  const formula = (FORMULAS[level] as Formulas)[step.id];
  if (formula === undefined) return `no formula for ${step.id} of a ${level}`;
  const inputs = inputsOf(step);
  const worked = formula(inputs);
  const { value } = step.result;
  if (typeof value !== 'number' || typeof worked !== 'number') {
    return JSON.stringify(worked) === JSON.stringify(value) ? undefined : mismatch(step, worked);
  }
  const scale = Math.max(1, Math.abs(value), ...inputs.numbers().map(Math.abs));
  return Math.abs(worked - value) <= 1e-9 * scale ? undefined : mismatch(step, worked);
}

function mismatch(step: TraceStep, worked: unknown): string {
  return `${step.id}: ${step.result.value} in the trace, ${worked} from ${JSON.stringify(step.inputs)}`;
}

const ZONE_ONLY = [
  'days-a-week',
  'runs-a-day',
  'zone-minutes',
  'minutes-per-day',
  'minutes-cut',
  'cycles',
  'flow',
  'rain-credit',
  'rain-credit-minutes',
  'state',
];

/** The step that shows a figure of the season; those left out are not shown by any view. */
const PLANTING_STEPS: Partial<Record<Parameters<typeof plantingFigure>[1], StepId>> = {
  demandMm: 'demand',
  usedMm: 'used',
  rainMm: 'rain',
  rainSoakedMm: 'effective-rain',
  rainDrainedMm: 'rain-drained',
  irrigationNetMm: 'irrigation-net',
  irrigationGrossMm: 'irrigation-gross',
  irrigationDrainedMm: 'irrigation-drained',
  depletionStartMm: 'depletion-start',
  depletionEndMm: 'depletion-end',
  neededMm: 'need',
  openDays: 'open-days',
  shortDays: 'short-days',
  litres: 'litres',
  demandLitres: 'demand-litres',
  usedLitres: 'used-litres',
  rainStayedLitres: 'rain-stayed-litres',
  irrigationStayedLitres: 'irrigation-stayed-litres',
  neededLitres: 'needed-litres',
};

const ZONE_STEPS: Partial<Record<Parameters<typeof zoneFigure>[1], StepId>> = {
  litres: 'litres',
  rainLitres: 'rain-litres',
  demandLitres: 'demand-litres',
  usedLitres: 'used-litres',
  rainStayedLitres: 'rain-stayed-litres',
  irrigationStayedLitres: 'irrigation-stayed-litres',
  drainedLitres: 'drained-litres',
  lostLitres: 'lost-litres',
  storageLitres: 'storage-litres',
  neededLitres: 'needed-litres',
  minutes: 'minutes',
  cycles: 'cycles',
  rainCreditMm: 'rain-credit',
  rainCreditLitres: 'rain-credit-litres',
  rainCreditMinutes: 'rain-credit-minutes',
  flowLpm: 'flow',
};

/** Results by id of a trace's steps. */
const resultsOf = ({ steps }: Traced) => new Map(steps.map(({ id, result }) => [id, result.value]));

function plantingOf({ season, place }: Traced) {
  const zone = season.zones.find((candidate) => candidate.zone.id === place.zoneId);
  const own = zone?.plantings.find(({ planting }) => planting.id === place.plantingId);
  if (zone === undefined || own === undefined) throw new Error('a trace of a planting names it');
  return { zone, own };
}

describe('traceCell of 200 random gardens and 30 random plans', () => {
  it('gives results that follow from their inputs', () => {
    const wrong = traces.flatMap(({ level, steps }) => steps.flatMap((step) => disagreement(level, step) ?? []));
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it('tells the share that is wetted, and the store of a pot, so that they follow from their inputs', () => {
    const parted = [oneRow(), oneRow({ wettedShare: 0.4 }), potWith()].flatMap((plan) =>
      tracesOf(computeSeason(plan), 2),
    );
    const steps = parted.flatMap(({ level, steps }) => steps.map((step) => ({ level, step })));
    const told = steps.filter(({ step: { id } }) => id === 'wetted-share' || id === 'available-water');
    expect(told.flatMap(({ level, step }) => disagreement(level, step) ?? [])).toEqual([]);
    const variants = told.map(({ step }) => `${step.id} ${'variant' in step ? step.variant : ''}`);
    expect(new Set(variants)).toEqual(
      new Set(['wetted-share computed', 'wetted-share typed', 'available-water soil', 'available-water pot']),
    );
  });

  it.each(['planting', 'zone', 'garden', 'weather'] as const)('reaches every kind of step of a %s', (level) => {
    const reached = new Set(
      traces.filter((trace) => trace.level === level).flatMap(({ steps }) => steps.map(({ id }) => id)),
    );
    const known = Object.keys(FORMULAS[level]).filter((kind) => level !== 'garden' || !ZONE_ONLY.includes(kind));
    expect([...reached].sort()).toEqual(known.sort());
  });

  it.each<[string, StepId, LabelId, string?]>([
    ['minutes that reach the goal', 'minutes-asked', 'day-net-rate', 'bounds'],
    ['minutes that are fewer for days that are short', 'minutes-asked', 'day-available', 'short'],
    [
      'irrigation that passes straight through a planting that lets none else drain',
      'irrigation-drained',
      'leaching-depth',
      'none',
    ],
    ['minutes that fill', 'minutes-asked', 'day-net-rate', 'filling'],
    ['minutes that no line could bring', 'minutes-asked', 'day-depletion-start', 'no-line'],
    ['a refill that is left alone', 'minutes-asked', 'due', 'left-alone'],
    ['a refill that is due', 'refill-due', 'readily-available-then', 'morning'],
    ['a refill that is due as expected', 'refill-due', 'days-due', 'expected'],
    ['a refill that is still due', 'refill-due', 'filling', 'still'],
    ['a refill behind a shut-off, on days before it is due', 'refill-expected', 'day-change'],
    ['a shut-off with fewest open days', 'named-days', 'minutes-on-days', 'fewest'],
    ['a shut-off set by hand', 'named-days', 'hand-set-days', 'hand-set'],
    ['a shut-off before a refill', 'named-days', 'days-due', 'filling'],
    ['a shut-off that stays shut', 'named-days', 'minutes-asked', 'none'],
    ['room for rain', 'goal', 'target', 'room'],
    ['less room before a long wait', 'goal', 'demand-between', 'room'],
    ['no room while establishing', 'goal', 'establishing-until', 'establishing'],
    ['rounding to the nearest', 'minutes-per-day', 'depletion-of', 'nearest'],
    ['rounding up', 'minutes-per-day', 'lasts-from', 'up'],
    ['a skipped morning', 'minutes-per-day', 'minutes-needed', 'skipped'],
    ['a morning on which nobody asks', 'minutes-per-day', 'minutes-needed', 'idle'],
    ['one number all week', 'minutes', 'run-days', 'one-number'],
    ['minutes by day', 'minutes', 'day-minutes', 'by-day'],
    ['two lines in a week', 'irrigation-gross', 'minutes-watered'],
    ['demand day by day', 'demand', 'day-coefficient'],
    ['rain of a measured day', 'effective-rain', 'day-rain'],
    ['what a morning expects beside readings', 'expected-demand', 'day-eto'],
    ['rain that roots keep', 'rain-share', 'years-kept', 'balance'],
    ['a month from its temperatures', 'eto-month', 'extraterrestrial-radiation', 'hargreaves-samani'],
    ['a month from its weather', 'eto-month', 'net-radiation', 'penman-monteith'],
    ['a day from its temperatures', 'eto-day', 'extraterrestrial-radiation', 'hargreaves-samani'],
    ['a day from its weather', 'eto-day', 'net-radiation', 'penman-monteith'],
    ['a day with less water there than it would use', 'used', 'day-water-there'],
  ])('reaches %s', (_, id, label, variant) => {
    const steps = traces.flatMap((trace) => trace.steps.filter((step) => step.id === id));
    const varied = steps.filter((step) => variant === undefined || inputsOf(step).variant === variant);
    expect(varied.some((step) => inputsOf(step).has(label))).toBe(true);
  });

  it('tells two lines of a week apart', () => {
    const lines = traces.flatMap(({ steps }) =>
      steps.filter(({ id }) => id === 'irrigation-gross').map((step) => inputsOf(step).by('minutes-watered', 'line')),
    );
    expect(lines.some((open) => open.size === 2 && [...open.keys()].every((line) => typeof line === 'number'))).toBe(
      true,
    );
  });

  it('shows the season’s own figures of a planting', () => {
    for (const trace of traces.filter(({ level }) => level === 'planting')) {
      const { own } = plantingOf(trace);
      const { week } = trace.place;
      const results = resultsOf(trace);
      expect(results.get('state')).toBe(plantingState(own, week));
      if (results.get('state') === 'off') continue;
      for (const [field, id] of Object.entries(PLANTING_STEPS)) {
        const figure = plantingFigure(own, field as keyof typeof PLANTING_STEPS, week);
        const told = field === 'rainMm' ? near(results.get('rain-there') ?? results.get(id), figure) : results.get(id);
        expect([id, told]).toEqual([id, figure]);
      }
    }
  });

  it('names the days on which a shut-off was open', () => {
    let named = 0;
    for (const trace of traces.filter(({ level }) => level === 'planting')) {
      const { zone, own } = plantingOf(trace);
      const { week } = trace.place;
      const step = trace.steps.find(({ id }) => id === 'named-days');
      const isLogged = zone.zone.choices.get(week)?.runs !== undefined;
      if (step === undefined || isLogged || zoneFigure(zone, 'minutes', week) === 0) continue;
      const { firstDay } = trace.season.garden.span;
      const { first, end } = own.demand;
      const days = step.result.value === 'none' ? [] : (step.result.value as readonly number[]);
      const inGround = days.filter((day) => day - firstDay >= first && day - firstDay < end);
      const mask = inGround.reduce((all, day) => all | (1 << (day - firstDay - 7 * week)), 0);
      expect(mask).toBe(plantingFigure(own, 'openMask', week));
      named++;
    }
    expect(named).toBeGreaterThan(100);
  });

  it('shows the season’s own figures of a zone', () => {
    for (const trace of traces.filter(({ level }) => level === 'zone')) {
      const zone = trace.season.zones.find((candidate) => candidate.zone.id === trace.place.zoneId);
      if (zone === undefined) throw new Error('a trace of a zone names it');
      const results = resultsOf(trace);
      expect(results.get('state')).toBe(zoneState(zone, trace.place.week));
      for (const [field, id] of Object.entries(ZONE_STEPS)) {
        const figure = zoneFigure(zone, field as keyof typeof ZONE_STEPS, trace.place.week);
        expect([id, results.get(id)]).toEqual([id, figure]);
      }
      // A week of which a restriction leaves no watering day has no morning on which minutes are decided.
      const isDecided = heldMask(zone.zone, trace.place.week) !== 0;
      const decided = trace.steps.find(({ id }) => id === 'zone-minutes')?.result.value;
      const wanted = zoneFigure(zone, 'minutesWanted', trace.place.week);
      expect([decided, wanted]).toEqual(isDecided ? [wanted, wanted] : [undefined, 0]);
    }
  });

  it('shows the season’s own weather, and nothing else', () => {
    for (const { season, place, steps } of traces.filter(({ level }) => level === 'weather')) {
      const daily = season.weather[place.weather as 'eto' | 'rain'].mm;
      const mm = daily.subarray(7 * place.week, 7 * place.week + 7).reduce((sum, day) => sum + day, 0);
      expect(near(steps.at(-1)?.result.value, mm)).toBe(mm);
      const others = steps.filter(({ id }) => id.startsWith(place.weather === 'rain' ? 'eto' : 'rain'));
      expect(others).toEqual([]);
    }
  });

  it('leaves no water over', () => {
    for (const { steps } of traces) {
      for (const step of steps.filter(({ id }) => id === 'closing')) {
        const larger = Math.max(1, ...inputsOf(step).numbers().map(Math.abs));
        expect(Math.abs(Number(step.result.value))).toBeLessThan(1e-9 * larger);
      }
    }
  });

  it('names each step once', () => {
    const names = traces.map(({ steps }) => steps.map(nameOf));
    expect(names.flatMap((all) => all.filter((name, order) => all.indexOf(name) !== order))).toEqual([]);
  });

  it('is plain data', () => {
    for (const { steps } of traces.slice(0, 100)) expect(structuredClone(steps)).toEqual(steps);
  });
});

/** A step's kind, and what tells it from others of its kind. */
function nameOf(step: TraceStep): string {
  const { variant, state, source, inputs, result, ...about }: Partial<Record<string, unknown>> = { ...step };
  return JSON.stringify(about);
}

/** The figure itself where the value is it but for the order of adding up. */
function near(value: unknown, figure: number): unknown {
  return typeof value === 'number' && Math.abs(value - figure) <= 1e-12 * Math.max(1, figure) ? figure : value;
}

describe('traceCell', () => {
  const [garden] = gardens.filter(({ zones }) => zones.some(({ plantings }) => plantings.length > 0));
  if (garden === undefined) throw new Error('no garden of 200 has a planting');
  const season = runSeason(garden);

  it.each([
    ['a week before the season', { week: -1 }, 'week -1 is outside the season'],
    ['a week after it', { week: garden.span.weeks }, 'is outside the season'],
    ['half a week', { week: 0.5 }, 'is outside the season'],
    ['an unknown zone', { week: 0, zoneId: 'moon' }, 'there is no zone “moon”'],
    [
      'an unknown planting',
      { week: 0, zoneId: garden.zones[0]?.id, plantingId: 'moon' },
      'there is no planting “moon”',
    ],
  ])('refuses %s', (_, place, message) => {
    expect(() => traceCell(season, place)).toThrow(message);
  });
});
