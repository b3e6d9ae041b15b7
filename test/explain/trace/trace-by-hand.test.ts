/**
 * One week of the plain garden worked by hand, line by line.
 *
 *     ETo              7 days of 5 mm                                    35 mm
 *     KL               0.5 x 1 x 1                                       0.5
 *     ETc              0.5 x 35                                          17.5 mm
 *     TAW              1000 x 0.15 x 0.5                                 75 mm
 *     RAW              0.5 x 75                                          37.5 mm
 *     need             17.5 mm, from a full soil with no rain            17.5 mm
 *     flow             10 emitters of 6 L/h                              1 L/min
 *     rate             60 L/h on 10 m2                                   6 mm/h, of which 80 % count: 4.8
 *     minutes asked    60 x 17.5 / (4.8 x 2)                             109.375
 *     minutes          rounded to the nearest whole minute               109 on each day, 218 in the week
 *     gross, net       218 / 60 x 6; 80 % of it                          21.8 mm; 17.44 mm
 *     litres           21.8 mm on 10 m2                                  218 L
 *     missed           17.5 - 17.44                                      0.06 mm
 *     lost             21.8 - 17.44                                      4.36 mm
 */
import { describe, expect, it } from 'vitest';
import type { GardenSite, ObservedDay } from '../../../src/engine/garden.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { Quantity } from '../../../src/engine/units.ts';
import type { StepId } from '../../../src/explain/trace/step-kinds.ts';
import { type TracedCell, traceCell } from '../../../src/explain/trace/trace-cell.ts';
import type { TraceStep } from '../../../src/explain/trace/trace-step.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

const season = runSeason(plainGarden());
const stepsOf = (place: TracedCell) => new Map(traceCell(season, place).map((step) => [step.id, step]));

describe('the trace of a planting', () => {
  const steps = stepsOf({ zoneId: 'zone', plantingId: 'bed', week: 0 });

  it.each<[StepId, number, Quantity | undefined]>([
    ['reference-et', 35, 'depth'],
    ['landscape-coefficient', 0.5, undefined],
    ['demand', 17.5, 'depth'],
    ['rain', 0, 'depth'],
    ['effective-rain', 0, 'depth'],
    ['available-water', 75, 'depth'],
    ['readily-available-water', 37.5, 'depth'],
    ['depletion-start', 0, 'depth'],
    ['target-depletion', 0, 'depth'],
    ['goal', 0, 'depth'],
    ['need', 17.5, 'depth'],
    ['line-flow', 1, 'supplyFlow'],
    ['application-rate', 6, 'rate'],
    ['net-rate', 4.8, 'rate'],
    ['minutes-asked', 109.375, undefined],
    ['open-days', 2, undefined],
    ['minutes-open', 218, undefined],
    ['irrigation-gross', 21.8, 'depth'],
    ['irrigation-net', 17.44, 'depth'],
    ['need-met', 17.44 / 17.5, undefined],
    ['short-days', 0, undefined],
    ['used', 17.5, 'depth'],
    ['irrigation-drained', 0, 'depth'],
    ['rain-drained', 0, 'depth'],
    ['missed', 0.06, 'depth'],
    ['depletion-end', 0.06, 'depth'],
    ['lost', 4.36, 'depth'],
    ['litres', 218, 'volume'],
    ['needed-litres', 175, 'volume'],
    ['unmet-litres', 0, 'volume'],
  ])('%s is %d', (id, value, quantity) => {
    const { result } = steps.get(id) ?? { result: undefined };
    expect(result?.value).toBeCloseTo(value, 9);
    expect(result !== undefined && 'quantity' in result ? result.quantity : undefined).toBe(quantity);
  });

  it('is met', () => {
    expect(steps.get('state')?.result.value).toBe('met');
  });

  it('goes from the weather to the state', () => {
    const order: readonly StepId[] = ['reference-et', 'demand', 'rain', 'minutes-asked', 'need', 'litres', 'state'];
    expect([...steps.keys()].filter((id) => order.includes(id))).toEqual(order);
  });

  it('names the climate’s own source, the method of the rain and the equations', () => {
    expect(steps.get('reference-et')?.source).toEqual([{ id: 'normals', text: season.garden.site.climate.source }]);
    expect(steps.get('effective-rain')?.source[0]).toContain('TR-21');
    expect(steps.get('available-water')?.source).toEqual(['FAO-56 eq. 82']);
    expect(steps.get('short-days')?.source).toEqual(['FAO-56 eq. 84']);
  });
});

describe('the trace of a zone', () => {
  const steps = stepsOf({ zoneId: 'zone', week: 0 });

  it.each<[StepId, number]>([
    ['zone-minutes', 109.375],
    ['minutes-per-day', 109],
    ['cycles', 1],
    ['minutes', 218],
    ['flow', 1],
    ['litres', 218],
    ['demand-litres', 175],
    ['drained-litres', 0],
    ['lost-litres', 43.6],
    ['cumulative-demand', 175],
  ])('%s is %d', (id, value) => {
    expect(steps.get(id)?.result.value).toBeCloseTo(value, 9);
  });

  it('adds the weeks before to this one', () => {
    expect(stepsOf({ zoneId: 'zone', week: 3 }).get('cumulative-demand')?.inputs).toMatchObject([
      { label: { id: 'weeks-before' }, value: 525 },
      { label: { id: 'this-week' }, value: 175 },
    ]);
  });

  it('tells plantings of one name apart', () => {
    const twins = runSeason(plainGarden([plainZone({ plantings: [plainPlanting(), plainPlanting({ id: 'bed-2' })] })]));
    const [litres] = traceCell(twins, { zoneId: 'zone', week: 0 }).filter(({ id }) => id === 'litres');
    expect(litres?.inputs.map(({ label }) => label)).toEqual([
      { id: 'planting', name: 'Bed (bed)' },
      { id: 'planting', name: 'Bed (bed-2)' },
    ]);
  });
});

describe('the trace of the garden', () => {
  it('adds up its zones', () => {
    const two = runSeason(plainGarden([plainZone(), plainZone({ id: 'other', name: 'Other' })]));
    const steps = new Map(traceCell(two, { week: 0 }).map((step) => [step.id, step]));
    expect(steps.get('litres')?.result.value).toBeCloseTo(436, 9);
    expect(steps.get('minutes')?.result.value).toBe(436);
    expect(steps.get('litres')?.inputs.map(({ label }) => label)).toEqual([
      { id: 'zone', name: 'Zone' },
      { id: 'zone', name: 'Other' },
    ]);
  });
});

describe('the trace of reference ET says of each day what it rests on', () => {
  const full = { minTemperatureC: 10, maxTemperatureC: 25, dewPointC: 8, windMs: 3, radiationMj: 22 };
  const days = new Map<number, ObservedDay>([
    [FIRST_DAY, { etoMm: 6 }],
    [FIRST_DAY + 1, full],
    [FIRST_DAY + 2, { minTemperatureC: 10, maxTemperatureC: 25 }],
  ]);
  const { site } = plainGarden();
  const stepsAt = (place: Partial<GardenSite>) => {
    const garden = plainGarden(undefined, { observed: { days, weeks: new Map() }, site: { ...site, ...place } });
    return traceCell(runSeason(garden), { zoneId: 'zone', plantingId: 'bed', week: 0 });
  };
  const ofDay = (steps: readonly TraceStep[], day: number) => {
    const found = steps.find((step) => step.id === 'eto-day' && step.day === day);
    if (found === undefined) throw new Error(`no step has the ETo of day ${day}`);
    return found;
  };

  it('with little but temperatures: Hargreaves-Samani, and what it lacked', () => {
    const steps = stepsAt({});
    const [eto] = steps.filter(({ id }) => id === 'reference-et');
    expect(eto?.inputs.map(({ label }) => label)).toEqual([
      { id: 'eto-days', days: 4, method: 'normals' },
      { id: 'eto-days', days: 1, method: 'observed' },
      { id: 'eto-days', days: 1, method: 'penman-monteith' },
      { id: 'eto-days', days: 1, method: 'hargreaves-samani' },
    ]);
    expect(ofDay(steps, FIRST_DAY + 1).source).toEqual(['FAO-56 eq. 6–8, 11–13']);
    expect(ofDay(steps, FIRST_DAY + 2).source[0]).toContain('52');
    expect(ofDay(steps, FIRST_DAY + 2).inputs).toContainEqual({
      label: { id: 'not-known' },
      codes: 'reading',
      value: ['humidity', 'wind', 'radiation'],
    });
  });

  it('by where each reading comes from, typed ones first', () => {
    const read: readonly [number, ObservedDay][] = [
      [FIRST_DAY, { rainMm: 4, etoMm: 5 }],
      [FIRST_DAY + 1, { rainMm: 3, rainFrom: 'service', etoMm: 2, etoFrom: 'service' }],
      [FIRST_DAY + 2, { rainMm: 2, rainFrom: 'file', etoMm: 1, etoFrom: 'estimate' }],
    ];
    const garden = plainGarden(undefined, { observed: { days: new Map(read), weeks: new Map() } });
    const steps = traceCell(runSeason(garden), { zoneId: 'zone', plantingId: 'bed', week: 0 });
    const [rain, eto] = ['rain', 'reference-et'].map((id) => steps.find((step) => step.id === id));
    expect(rain?.inputs.slice(1)).toMatchObject([
      { label: { id: 'rain-days', days: 1, origin: 'observed-day' }, value: 4 },
      { label: { id: 'rain-days', days: 1, origin: 'observed-day', from: 'file' }, value: 2 },
      { label: { id: 'rain-days', days: 1, origin: 'observed-day', from: 'service' }, value: 3 },
    ]);
    expect(rain?.source.slice(1)).toEqual([{ id: 'observed' }]);
    expect(eto?.inputs.map(({ label }) => label).slice(1)).toMatchObject([
      { days: 1, method: 'observed' },
      { days: 1, from: 'service' },
      { days: 1, from: 'estimate' },
    ]);
  });

  it('where the site asks for Penman-Monteith with less: each estimate, by its place in FAO-56', () => {
    const steps = stepsAt({
      elevationM: undefined,
      whenIncomplete: 'penman-monteith',
      windHeightM: 10,
      setting: 'coastal',
    });
    expect(ofDay(steps, FIRST_DAY + 1).source.slice(1)).toEqual([
      { id: 'estimate', estimate: 'elevation-assumed' },
      { id: 'estimate', estimate: 'wind-from-height', cite: 'FAO-56 eq. 47' },
    ]);
    expect(ofDay(steps, FIRST_DAY + 2).source.slice(2)).toEqual([
      { id: 'estimate', estimate: 'vapour-pressure-from-min-temperature', cite: 'FAO-56 eq. 48' },
      { id: 'estimate', estimate: 'wind-assumed', cite: 'FAO-56 p. 63' },
      { id: 'estimate', estimate: 'radiation-from-temperature', cite: 'FAO-56 eq. 50' },
    ]);
    // FAO-56 eq. 47: 3 x 4.87 / ln(67.8 x 10 - 5.42) = 2.24.
    const wind = ofDay(steps, FIRST_DAY + 1).inputs.find(({ label }) => label.id === 'wind-2m');
    expect(wind?.value).toBeCloseTo(2.24, 2);
  });
});
