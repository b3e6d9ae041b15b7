/** How much of the rain enters a planting's root zone. */
import { RAIN_ORIGINS } from '../../../engine/rain/daily-rain.ts';
import type { RainMethod } from '../../../engine/rain/effective-rain.ts';
import { monthShare, rainMonth } from '../../../engine/season/planting-rain.ts';
import { placesIn, sumAt } from '../day-span.ts';
import { inId, monthName } from '../names.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, factor, percent } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { RAIN_METHOD_WORDS } from './rain-methods.ts';

/** A month of the season of which normal rain falls on the planting in this week. */
interface NormalMonth {
  /** Place in the season's months. */
  readonly place: number;
  readonly name: string;
  readonly rainMm: number;
}

export function rainCreditSteps(cell: PlantingCell): readonly TraceStep[] {
  const months = normalMonths(cell);
  return [...months.map((month) => shareStep(cell, month)), effectiveRainStep(cell, months)];
}

function normalMonths({ season, ground }: PlantingCell): readonly NormalMonth[] {
  const { months, rain } = season.weather;
  return months.calendarMonth
    .map((calendarMonth, place) => ({
      place,
      name: monthName(calendarMonth),
      rainMm: sumAt(
        rain.normalMm,
        placesIn(
          ground,
          (day) => day >= (months.starts[place] as number) && day < (months.starts[place + 1] as number),
        ),
      ),
    }))
    .filter(({ rainMm }) => rainMm > 0);
}

function shareStep(cell: PlantingCell, { place, name }: NormalMonth): TraceStep {
  const { site } = cell.season.garden;
  const { demand } = cell.days;
  const { method } = site.rain;
  const { title, says, formula, source } = RAIN_METHOD_WORDS[method];
  return {
    id: `rain-share:${inId(name)}`,
    title: `Share of ${name}’s rain that counts: ${title}`,
    says,
    formula: `share = Pe / P; ${formula}`,
    source,
    inputs: shareInputs(cell, place, method),
    result: factor(shareLabel(name), monthShare(demand, site, cell.season.weather, place)),
  };
}

function shareInputs({ season, days }: PlantingCell, place: number, method: RainMethod): readonly TraceValue[] {
  const { site } = season.garden;
  const month = rainMonth(days.demand, site, season.weather, place);
  if (month === undefined) return [];
  const rain = depth('Rain of the month P', month.rainMm);
  if (method === 'fraction') return [rain, percent('Share that counts', month.fraction)];
  if (method !== 'tr21') return [rain];
  return [
    rain,
    depth('Demand of the month ETc', month.etcMm),
    depth('Usable storage D, the readily available water', month.usableStorageMm),
  ];
}

const shareLabel = (name: string) => `Share of ${name}’s rain`;

function effectiveRainStep(cell: PlantingCell, months: readonly NormalMonth[]): TraceStep {
  const { season } = cell;
  const { site } = season.garden;
  const normals = months.flatMap(({ place, name, rainMm }) => [
    depth(`${name}, rain from the normals`, rainMm),
    factor(shareLabel(name), monthShare(cell.days.demand, site, season.weather, place)),
  ]);
  const observed = observedInputs(cell);
  return {
    id: 'effective-rain',
    title: 'Rain that soaks in',
    says: 'Usual rain counts by the share of its month; measured rain soaks in unless a day’s fall is so slight that it dries off again.',
    formula:
      'effective rain = normals × share of the month + (a measured day’s rain where it is at least 0.2 × that day’s ETo, ' +
      'else 0; and the week’s measured total) × (1 − runoff)',
    source: `${RAIN_METHOD_WORDS[site.rain.method].source}; measured days: FAO-56 p. 170`,
    inputs: [...normals, ...observed, ...(observed.length > 0 ? [percent('Runoff', site.rain.runoffFraction)] : [])],
    result: depth('Effective rain', cell.at('rainSoakedMm')),
  };
}

function observedInputs({ season, ground, dayName }: PlantingCell): readonly TraceValue[] {
  const { rain, eto } = season.weather;
  const from = (origin: (typeof RAIN_ORIGINS)[number]) =>
    placesIn(ground, (place) => rain.origin[place] === RAIN_ORIGINS.indexOf(origin) && (rain.mm[place] as number) > 0);
  const ofWeek = from('observed-week');
  return [
    ...from('observed-day').flatMap((place) => [
      depth(`${dayName(place)}, measured rain`, rain.mm[place] as number),
      depth(`${dayName(place)}, ETo`, eto.mm[place] as number),
    ]),
    ...(ofWeek.length > 0 ? [depth('From the week’s measured total', sumAt(rain.mm, ofWeek))] : []),
  ];
}
