/** What a morning expected of the days up to the week's last watering, where it is not what came. */

import { expectedChangeMm, expectedEtcMm } from '../../../engine/season/week-outlook.ts';
import { isReadDay } from '../../../engine/weather.ts';
import { daysIn } from '../day-span.ts';
import type { TraceSource, TraceStep } from '../trace-step.ts';
import { depth, factor, input } from '../trace-value.ts';
import { dailyCoefficients } from './coefficients.ts';
import { normalRainInputs } from './effective-rain.ts';
import type { PlantingCell } from './planting-cell.ts';
import type { PlantingMorning } from './planting-morning.ts';

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

function demandStep(cell: PlantingCell, { index, forecast }: PlantingMorning, ahead: readonly number[]): TraceStep {
  const { season, days, dayOf } = cell;
  const normals = season.weather.eto.expectedMm;
  const etoOn = (day: number) => (normals[day] as number) * (forecast?.days.get(day)?.etoShare ?? 1);
  const coefficients = dailyCoefficients(cell, ahead);
  return {
    id: 'expected-demand',
    day: dayOf(index),
    source: sourcesOf(cell, forecast?.issued),
    inputs: ahead.flatMap((day, place) => [
      input({ id: 'day-coefficient', day: dayOf(day) }, factor(coefficients[place] as number)),
      input({ id: 'day-eto', day: dayOf(day) }, depth(etoOn(day))),
    ]),
    result: depth(ahead.reduce((sum, day) => sum + expectedEtcMm(days, day, forecast), 0)),
  };
}

function rainStep(cell: PlantingCell, { index, forecast }: PlantingMorning, ahead: readonly number[]): TraceStep {
  const { days, dayOf } = cell;
  const soakedOn = (day: number) => forecast?.days.get(day)?.soakedMm;
  const rainOn = (day: number) => expectedEtcMm(days, day, forecast) - expectedChangeMm(days, day, forecast);
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
    ],
    result: depth(ahead.reduce((sum, day) => sum + rainOn(day), 0)),
  };
}

function sourcesOf({ season, dayOf }: PlantingCell, issued: number | undefined): readonly TraceSource[] {
  const normals: TraceSource = { id: 'normals', text: season.garden.site.climate.source };
  return issued === undefined ? [normals] : [{ id: 'forecast', day: dayOf(issued), cite: 'FAO-56 p. 170' }, normals];
}
