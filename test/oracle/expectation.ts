/** What is expected of a planting's days, as it is known on the morning of one of them. Depths in mm. */
import type { Forecast, ForecastDay, Garden } from '../../src/engine/garden.ts';
import { depletionShare, rainFactorOf } from './crop.ts';
import type { PlantingFacts } from './planting-facts.ts';
import { soakedRain } from './rain.ts';
import { daysFrom } from './watering-days.ts';

export interface ExpectedDay {
  readonly etcMm: number;
  readonly tawMm: number;
  readonly rawMm: number;
  /** Rain that will enter the soil. */
  readonly rainMm: number;
  /** Missing water of the soil that roots reach at its start. */
  readonly rootedMm: number;
}

/** By a day of the season. */
export type Expectation = (day: number) => ExpectedDay;

/**
 * Normals, but for what has been forecast by that morning. What was read of earlier days changes no expectation. A forecast ETo
 * raises or lowers the use that the normals tell; where they tell of none it says nothing.
 */
export function expectationOn(garden: Garden, { planting, days }: PlantingFacts, morning: number): Expectation {
  const known = forecastsBy(garden, garden.span.firstDay + morning);
  return (index) => {
    const day = days[index];
    if (day === undefined) throw new Error(`day ${index} is outside the season`);
    const rainMm = forecastFigure(known, day.date, 'rainMm');
    const etoMm = day.expectedEtoMm === 0 ? undefined : forecastFigure(known, day.date, 'etoMm');
    const forecastEtcMm = etoMm === undefined ? undefined : day.coefficient * etoMm;
    return {
      etcMm: forecastEtcMm ?? day.expectedEtcMm,
      tawMm: day.tawMm,
      rawMm: forecastEtcMm === undefined ? day.expectedRawMm : depletionShare(planting, forecastEtcMm) * day.tawMm,
      rainMm:
        rainMm === undefined || !day.inGround
          ? day.expectedRainMm
          : rainFactorOf(planting) * soakedRain(rainMm, etoMm ?? day.expectedEtoMm, garden.site.rain),
      rootedMm: day.rootedMm,
    };
  };
}

/** Those issued up to the date, the latest first. */
function forecastsBy({ observed }: Garden, date: number): readonly Forecast[] {
  return (observed.forecasts ?? []).filter(({ issued }) => issued <= date).toReversed();
}

/** Of the latest that has the figure: a forecast does not tell of days before its issue. */
function forecastFigure(known: readonly Forecast[], date: number, figure: keyof ForecastDay): number | undefined {
  return known
    .filter(({ issued }) => issued <= date)
    .find(({ days }) => days.get(date)?.[figure] !== undefined)
    ?.days.get(date)?.[figure];
}

/** What plants use from a day to another if they are never short, and what new soil lacks that their roots reach after the first. */
export function useFrom(expected: Expectation, first: number, last: number): number {
  return daysFrom(first, last).reduce((sum, day) => {
    const { etcMm, rootedMm } = expected(day);
    return sum + etcMm + (day > first ? rootedMm : 0);
  }, 0);
}

/** Change of depletion from a morning to the end of a day, if nobody waters, nothing drains, and no plant is short. */
export function changeFrom(expected: Expectation, first: number, last: number): number {
  return daysFrom(first, last).reduce((sum, day) => sum - expected(day).rainMm, useFrom(expected, first, last));
}
