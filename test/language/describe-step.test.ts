import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LEAST_SHOWN_MM } from '../../src/engine/season/planting-state.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import type { StepId } from '../../src/explain/trace/step-kinds.ts';
import { type TracedCell, traceCell } from '../../src/explain/trace/trace-cell.ts';
import type { TraceStep } from '../../src/explain/trace/trace-step.ts';
import { type DescribedStep, describeStep } from '../../src/language/describe-step.ts';
import { en, type Words } from '../../src/language/en.ts';
import { loadLanguage, wantWords } from '../../src/language/languages.ts';
import { type LateWords, lateWords } from '../../src/language/late-words.ts';
import { type Reader, readerFor } from '../../src/language/reader.ts';
import { registerLanguage } from '../../src/language/register-language.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../support/plain-garden.ts';
import { oneRow, potWith } from '../support/troubled-plans.ts';
import { unlikeUsual } from '../support/unlike-usual.ts';

const us = readerFor('en-US', 'us');
const gb = readerFor('en-GB', 'metric');

/** The texts of a step, whole. */
const textsOf = ({ title, says, formula, source, inputs, result }: DescribedStep): readonly string[] => [
  ...[title, says, formula, source, result],
  ...inputs.flatMap(({ label, value }) => [label, value]),
];

const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

function tracesOf(season: Season): readonly (readonly TraceStep[])[] {
  const weeks = Array.from({ length: season.garden.span.weeks }, (_, week) => week).filter((week) => week % 3 === 0);
  return weeks.flatMap((week) => [
    traceCell(season, { week }),
    ...season.zones.flatMap(({ zone, plantings }) => [
      traceCell(season, { week, zoneId: zone.id }),
      ...plantings.map(({ planting }) => traceCell(season, { week, zoneId: zone.id, plantingId: planting.id })),
    ]),
  ]);
}

/** At most so many of a kind and variant: they are said alike. */
const MOST_OF_A_KIND = 25;

const usedLabels = new Set<string>();

/** Steps of random gardens, some of every kind. */
const steps: readonly TraceStep[] = (() => {
  const byKind = new Map<string, TraceStep[]>();
  const logged = plainZone({ choices: new Map([[0, { runs: new Map([[2, { minutes: 40 }]]) }]]) });
  const limited = fc.sample(arbitraryLimitedGarden({ mostZones: 3, mostPlantings: 3 }), { numRuns: 60, seed: 12 });
  const crop = { kind: 'crop', name: { en: 'crop' }, stageDays: [7, 30, 30, 30], source: 'invented' } as const;
  const growing = plainPlanting({
    coefficient: { ...crop, plantedOn: FIRST_DAY, kcInitial: 0.5, kcMid: 1, kcEnd: 0.7 },
    rootZone: { initialDepthM: 0.15, startDepletion: 1 },
    rest: [{ from: FIRST_DAY + 42, to: FIRST_DAY + 70, kind: 'dry-down' }],
  });
  const grounds = [
    oneRow(),
    potWith(),
    { ...potWith(), log: { days: { '2027-06-08': { rain: 2 } } } },
    oneRow({ wettedShare: 0.4, mulch: { kind: 'plastic' } }),
    oneRow({ mulch: { kind: 'organic', cover: 0.8 }, startDepletion: 0.6, soak: true }),
  ].map((plan) => gardenOf(plan));
  for (const garden of [
    plainGarden([logged]),
    unlikeUsual(plainGarden([logged])),
    ...grounds,
    plainGarden([plainZone({ plantings: [growing] })]),
    ...fc.sample(arbitraryGarden(), { numRuns: 100, seed: 11 }),
    ...limited,
  ]) {
    for (const step of tracesOf(runSeason(garden)).flat()) {
      for (const { label } of step.inputs) usedLabels.add(label.id);
      const kind = `${step.id} ${'variant' in step ? step.variant : ''}`;
      const alike = byKind.get(kind) ?? [];
      if (alike.length < MOST_OF_A_KIND) byKind.set(kind, [...alike, step]);
    }
  }
  return [...byKind.values()].flat();
})();

/** Kinds that language says, each with its variants. */
const { traceWeather, traceNeed, traceMinutes, traceCheck, traceLabels } = lateWords.trace;
const { traceBalance, traceGround, traceGroundLabels } = lateWords.traceGround;

const said = [
  ...[traceWeather, traceNeed, traceMinutes, traceCheck],
  ...[traceGround.need, traceGround.minutes, traceBalance],
].flatMap((texts) =>
  Object.entries(texts).map(([id, text]: [string, Readonly<Record<string, unknown>>]) => {
    const varied = Object.values(text).filter((part) => typeof part === 'object' && part !== null);
    return { id, variants: [...new Set(varied.flatMap((part) => Object.keys(part as object)))] };
  }),
);

describe('every kind of step', () => {
  it('is there', () => {
    expect([...new Set(steps.map(({ id }) => id))].sort()).toEqual(said.map(({ id }) => id).sort());
  });

  it('is there in each of its variants', () => {
    const reached = new Set<string>(steps.map((step) => `${step.id} ${'variant' in step ? step.variant : ''}`));
    const all = said.flatMap(({ id, variants }) => variants.map((variant) => `${id} ${variant}`));
    expect(all.filter((kind) => !reached.has(kind))).toEqual([]);
  });

  it('has between them every label', () => {
    const labels = Object.keys({ ...traceLabels, ...traceGroundLabels });
    expect(labels.filter((id) => !usedLabels.has(id))).toEqual([]);
  });

  it.each([
    ['US English', us],
    ['British English', gb],
  ])('says all it has to in %s', (_, reader) => {
    const faults = steps.flatMap((step) => {
      const { inputs, ...texts } = describeStep(step, reader);
      const all = [...Object.values(texts), ...inputs.flatMap(({ label, value }) => [label, value])];
      return all.some((text) => text.trim() === '' || /undefined|NaN|\[object/.test(text)) ? [step.id] : [];
    });
    expect(faults).toEqual([]);
  });

  it('has no number in its sentence', () => {
    expect(steps.filter((step) => /\d/.test(describeStep(step, us).says)).map(({ id }) => id)).toEqual([]);
  });

  it('names no input twice', () => {
    const faults = steps.filter((step) => {
      const labels = describeStep(step, us).inputs.map(({ label }) => label);
      return new Set(labels).size !== labels.length;
    });
    expect(faults.map(({ id }) => id)).toEqual([]);
  });

  it('is spelt in its own English', () => {
    const american = steps.flatMap((step) => textsOf(describeStep(step, us))).join('\n');
    const british = steps.flatMap((step) => textsOf(describeStep(step, gb))).join('\n');
    expect(american).not.toMatch(/litre|metre\b|vapour/i);
    expect(british).not.toMatch(/liter|millimeter|square meter|vapor\b/i);
  });
});

const TUESDAY = FIRST_DAY + 1;
const season = runSeason(
  plainGarden(
    [
      plainZone({
        plantings: [
          plainPlanting(),
          plainPlanting({ id: 'trees', name: 'Trees', hasShutOff: true, watering: 'refill' }),
        ],
      }),
    ],
    { observed: { days: new Map([[TUESDAY, { minTemperatureC: 10, maxTemperatureC: 25 }]]), weeks: new Map() } },
  ),
);
const BED: TracedCell = { zoneId: 'zone', plantingId: 'bed', week: 0 };
const ZONE: TracedCell = { zoneId: 'zone', week: 0 };

function stepOf(id: StepId, place: TracedCell): TraceStep {
  const found = traceCell(season, place).find((step) => step.id === id);
  if (found === undefined) throw new Error(`there is no step ${id}`);
  return found;
}

const described = (id: StepId, reader: Reader, place: TracedCell = BED): DescribedStep =>
  describeStep(stepOf(id, place), reader);

const valuesOf = ({ inputs }: DescribedStep) => inputs.map(({ label, value }) => [plain(label), plain(value)]);

describe('a step', () => {
  it('says its figures in the plan’s units and the reader’s language', () => {
    expect(plain(described('available-water', us).result)).toBe('2.95 in');
    expect(plain(described('available-water', gb).result)).toBe('75.0 mm');
    expect(valuesOf(described('zone-minutes', us, ZONE))[0]).toEqual(['Bed', '109.1 minutes']);
    expect(valuesOf(described('irrigation-net', us))[1]).toEqual(['Minutes it is watered', '218 minutes']);
    expect(valuesOf(described('net-rate', us))).toContainEqual(['Irrigation efficiency', '80%']);
    expect(valuesOf(described('minutes-open', us))[1]).toEqual(['Sunday, minutes', '109 minutes']);
    expect(valuesOf(described('minutes', us, ZONE))[1]).toEqual(['Days that run', '2 days']);
  });

  it('names a day of the week and a month as the language has them', () => {
    expect(described('eto-day', us).title).toBe('Reference ET of Tuesday from temperatures');
    const normals = valuesOf(described('rain-normals', us));
    expect(normals.map(([label]) => label)).toEqual([
      'April, total',
      'May, total',
      'June, total',
      'First day of the week',
      'Days',
    ]);
    expect(normals.slice(3)).toEqual([
      ['First day of the week', 'May 3, 2027'],
      ['Days', 'Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, and Sunday'],
    ]);
    expect(valuesOf(described('rain-normals', gb))[3]).toEqual(['First day of the week', '3 May 2027']);
  });

  it('is told for the morning on which it was decided', () => {
    expect(described('zone-minutes', us, ZONE).title).toBe('Thursday, minutes needed');
    expect(described('minutes-per-day', us, ZONE).title).toBe('Thursday, minutes that run');
    expect(described('minutes-asked', us).title).toBe('Thursday, minutes it asks for');
    expect(described('day-balance', us).title).toBe('Monday, depletion at the end');
  });

  it('says a forecast with its day of issue, and years as what they are', () => {
    const note = (source: TraceStep['source'][number]) =>
      plain(describeStep({ ...stepOf('rain', BED), source: [source] }, us).source);
    expect(note({ id: 'forecast', day: FIRST_DAY, cite: 'FAO-56 p. 170' })).toBe(
      'Forecast of May 3, 2027, a day’s rain as FAO-56 p. 170 counts it',
    );
    expect(note({ id: 'years-recorded', text: '' })).toBe('recorded years');
    expect(note({ id: 'years-recorded', text: 'station' })).toBe('recorded years: station');
    expect(note({ id: 'years-made', cite: 'Geng' })).toBe('years made of the normals: Geng');
  });

  it('says which order of a day it is worked in', () => {
    expect(described('day-balance', us).source).toBe(
      'FAO-56 eq. 85, 88; what comes is there before the day’s use, as in FAO-56 Example 38; what is too much drains after it',
    );
  });

  it('counts days in the form that the number gives them', () => {
    expect(valuesOf(described('reference-et', us)).map(([label]) => label)).toEqual([
      '6 days from the normals',
      '1 day by Hargreaves-Samani',
    ]);
  });

  it('says what stands in place of a number in words', () => {
    expect(described('state', us, ZONE).inputs[0]).toEqual({
      label: 'The minutes are',
      value: 'computed',
      isWords: true,
    });
    expect(valuesOf(described('eto-day', us))[2]).toEqual(['Not known', 'humidity, wind, and radiation or sunshine']);
    expect(valuesOf(described('minutes-per-day', us, ZONE))).toContainEqual([
      'Longest cycle',
      'no limit: the soil takes the water as fast as it comes',
    ]);
    expect(described('named-days', us, { ...BED, plantingId: 'trees' }).result).toBe('none');
  });

  it('tells a publication from Runnel’s own choice, and says what was not checked', () => {
    expect(described('available-water', us).source).toBe('FAO-56 eq. 82');
    expect(described('reference-et', us).source).toBe('Monthly normals: invented; FAO-56 eq. 52');
    expect(described('rain-normals', us).source).toBe('invented; the curve is Runnel’s own choice');
    expect(described('demand', us).source).toMatch(/^FAO-56 eq\. 58 \(not checked against the printed source\); /);
  });

  it('says a state by what it means, and names the least difference that counts', () => {
    const state = described('state', us);
    expect(state.says).toMatch(/^Met: /);
    expect(state.formula).toContain(` ${LEAST_SHOWN_MM} mm `);
  });
});

/** Every message in brackets. */
function bracketed(words: unknown): unknown {
  if (typeof words === 'string') return `⟦${words}⟧`;
  if (typeof words === 'function') return (...values: unknown[]) => bracketed(words(...values));
  return Object.fromEntries(Object.entries(words as object).map(([key, value]) => [key, bracketed(value)]));
}

describe('in another language', () => {
  it('has no word of English left', () => {
    registerLanguage('eo', () => bracketed(en) as Words, {
      trace: () => bracketed(lateWords.trace) as LateWords['trace'],
      traceGround: () => bracketed(lateWords.traceGround) as LateWords['traceGround'],
    });
    wantWords('trace');
    wantWords('traceGround');
    return loadLanguage('eo').then(() => {
      const reader = readerFor('eo', 'metric');
      const isSaid = (text: string) => text.startsWith('⟦') && text.endsWith('⟧');
      const english = steps.flatMap((step) => {
        const { title, says, formula, inputs } = describeStep(step, reader);
        const words = inputs
          .filter(({ isWords, label }) => isWords && !label.includes('Days'))
          .map(({ value }) => value);
        return [title, says, formula, ...inputs.map(({ label }) => label), ...words].filter((text) => !isSaid(text));
      });
      expect(english).toEqual([]);
    });
  });

  it('is English, days and months too, where nobody registered it', () => {
    const reader = readerFor('es', 'us');
    expect(described('eto-day', reader)).toEqual(described('eto-day', readerFor('en-GB', 'us')));
    expect(described('rain-normals', reader).inputs[0]?.label).toBe('April, total');
  });
});
