/** What a morning expected of the days up to the week's last watering, where it is not what came. */

import {
  type ExpectedDays,
  expectedEtcMm,
  expectedRainOnMm,
  expectedRawMm,
  usualEtcMm,
} from '../../../engine/season/expected-days.ts';
import { isWettedAlone } from '../../../engine/season/planting-demand.ts';
import { isReadDay } from '../../../engine/weather.ts';
import { type DaySpan, daysIn } from '../day-span.ts';
import type { TraceSource, TraceStep } from '../trace-step.ts';
import { depth, factor, input } from '../trace-value.ts';
import { dailyCoefficients } from './coefficients.ts';
import { normalRainInputs } from './effective-rain.ts';
import { isParted, type PlantingCell } from './planting-cell.ts';
import { type PlantingMorning, rootedInputs } from './planting-morning.ts';
import { rainFactorInput } from './rain-there.ts';

/** `known`: the morning before that asked, of which the expectation may still stand. */
export function expectedSteps(
  cell: PlantingCell,
  morning: PlantingMorning,
  known: PlantingMorning | undefined,
): readonly TraceStep[] {
  const { index, outlook, forecast } = morning;
  const { weather } = cell.season;
  const { isRefill } = cell.keeper;
  if (isRefill && !(cell.planting.hasShutOff && known === undefined)) return [];
  if (known !== undefined && known.forecast === forecast) return [];
  const ahead = daysIn({ first: index, end: outlook.last + 1 });
  const isOther = ahead.some((day) => isReadDay(weather, day) || forecast?.days.has(day));
  return isOther ? [demandStep(cell, morning, ahead), rainStep(cell, morning, ahead)] : [];
}

/** Where lines wet a part of its ground: what that part is expected to have to give up to the week's last watering, mm over it. */
export function wettedDemandSteps(cell: PlantingCell, morning: PlantingMorning): readonly TraceStep[] {
  const { days, dayOf } = cell;
  const { index, outlook } = morning;
  const { dryFrom, dryMm, last } = outlook;
  const from = Math.max(outlook.first, dryFrom);
  if (!isParted(cell)) return [];
  const through = daysIn({ first: from, end: last + 1 });
  const shared = through.filter((day) => !isWettedAlone(days.demand, day));
  const of = (
    id: 'day-demand' | 'day-rain-soaked' | 'day-readily-available',
    indexes: readonly number[],
    on: typeof usualEtcMm,
  ) => indexes.map((day) => input({ id, day: dayOf(day) }, depth(on(outlook.days, day))));
  return [
    {
      id: 'wetted-demand',
      day: dayOf(index),
      source: [{ id: 'choice' }, 'FAO-56 eq. 84–88'],
      inputs: [
        input('wetted-share', factor(days.demand.share)),
        input({ id: 'day-part-depletion', day: dayOf(from), part: 'dry' }, depth(dryMm)),
        ...of('day-demand', through, usualEtcMm),
        ...of('day-rain-soaked', through, expectedRainOnMm),
        ...of('day-readily-available', shared, expectedRawMm),
        ...rootedInputs(morning, from, last, dayOf),
      ],
      result: depth(sumFrom(outlook.days, { first: index, end: last + 1 })),
    },
  ];
}

function sumFrom(days: ExpectedDays, span: DaySpan): number {
  return daysIn(span).reduce((sum, day) => sum + expectedEtcMm(days, day), 0);
}

function demandStep(cell: PlantingCell, { index, forecast }: PlantingMorning, ahead: readonly number[]): TraceStep {
  const { season, days, dayOf } = cell;
  const expected = { ...days, known: forecast };
  const normals = season.weather.eto.expectedMm;
  const etoOn = (day: number) => (normals[day] as number) * (forecast?.days.get(day)?.etoShare ?? 1);
  const coefficients = dailyCoefficients(cell, ahead);
  return {
    id: 'expected-demand',
    day: dayOf(index),
    source: sourcesOf(cell, forecast?.issued),
    inputs: ahead.flatMap((day, at) => [
      input({ id: 'day-coefficient', day: dayOf(day) }, factor(coefficients[at] as number)),
      input({ id: 'day-eto', day: dayOf(day) }, depth(etoOn(day))),
    ]),
    result: depth(ahead.reduce((sum, day) => sum + expectedEtcMm(expected, day), 0)),
  };
}

function rainStep(cell: PlantingCell, { index, forecast }: PlantingMorning, ahead: readonly number[]): TraceStep {
  const { days, dayOf } = cell;
  const expected = { ...days, known: forecast };
  const soakedOn = (day: number) => forecast?.days.get(day)?.soakedMm;
  const rainOn = (day: number) => expectedRainOnMm(expected, day);
  return {
    id: 'expected-rain',
    day: dayOf(index),
    source: sourcesOf(cell, forecast?.issued),
    inputs: [
      ...normalRainInputs(
        cell,
        ahead.filter((day) => soakedOn(day) === undefined),
      ),
      ...ahead
        .filter((day) => soakedOn(day) !== undefined)
        .map((day) => input({ id: 'day-rain-soaked', day: dayOf(day) }, depth(soakedOn(day) as number))),
      ...rainFactorInput(cell),
    ],
    result: depth(ahead.reduce((sum, day) => sum + rainOn(day), 0)),
  };
}

function sourcesOf({ season, dayOf }: PlantingCell, issued: number | undefined): readonly TraceSource[] {
  const normals: TraceSource = { id: 'normals', text: season.garden.site.climate.source };
  return issued === undefined ? [normals] : [{ id: 'forecast', day: dayOf(issued), cite: 'FAO-56 p. 170' }, normals];
}
