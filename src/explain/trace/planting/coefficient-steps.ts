/** What share of reference ET a planting uses in its week, and what that makes. */
import { isoDate } from '../../../engine/calendar.ts';
import type { PlantCoefficient } from '../../../engine/garden.ts';
import { dayOfGrowth, growthCycle } from '../../../engine/plants/growth-cycle.ts';
import { plantCoefficientOn } from '../../../engine/season/plant-coefficients.ts';
import { placesIn, sumAt } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { count, days, depth, factor, words } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function coefficientSteps(cell: PlantingCell): readonly TraceStep[] {
  const { coefficient } = cell.planting;
  return [
    coefficient.kind === 'landscape' ? landscapeStep(coefficient) : cropStep(cell, coefficient),
    ...establishingSteps(cell),
    demandStep(cell),
  ];
}

function landscapeStep(coefficient: Extract<PlantCoefficient, { kind: 'landscape' }>): TraceStep {
  const { label, factor: ks, density, microclimate, source } = coefficient;
  return {
    id: 'landscape-coefficient',
    title: 'Landscape coefficient',
    says: 'How thirsty the plants are, how densely they stand and how exposed the place is.',
    formula: 'KL = ks × kd × kmc',
    source: `Costello, Matheny and Clark (2000), landscape coefficient method; ks: ${source}`,
    inputs: [
      factor(`Plant factor ks, ${label}`, ks),
      factor('Density kd', density),
      factor('Microclimate kmc', microclimate),
    ],
    result: factor('Landscape coefficient KL', ks * density * microclimate),
  };
}

const CROP_SAYS = 'A crop drinks more as its leaves spread, most in the middle of its life, and less as it ripens.';

function cropStep(cell: PlantingCell, coefficient: Extract<PlantCoefficient, { kind: 'crop' }>): TraceStep {
  const { ground, season } = cell;
  const { label, stageDays, kcInitial, kcMid, kcEnd, source } = coefficient;
  const settled = dailyCoefficients(cell, false);
  const [initial, development, mid, late] = stageDays;
  const firstDay = season.garden.span.firstDay + ground.first;
  const cycle = growthCycle(coefficient, firstDay);
  const daysToNext = cycle.next - firstDay;
  return {
    id: 'crop-coefficient',
    title: `Crop coefficient, ${label}`,
    says: coefficient.perennial ? `${CROP_SAYS} One that stays starts anew every year.` : CROP_SAYS,
    formula:
      'Kc = Kc ini in the first stage; rising in a straight line to Kc mid; Kc mid; in a straight line to Kc end; ' +
      '0 outside the stages, which begin again with day 1 where growth starts anew; result = mean of the days in the ground',
    source: `FAO-56 eq. 66; ${source}`,
    inputs: [
      words('Growth starts', isoDate(cycle.start)),
      count('Day of growth, first day of the week in the ground', dayOfGrowth(coefficient, cycle, firstDay)),
      days('Days in the ground', ground.end - ground.first),
      ...(daysToNext < ground.end - ground.first ? [days('Days until growth starts anew', daysToNext)] : []),
      days('Initial stage', initial),
      days('Development', development),
      days('Mid-season', mid),
      days('Late season', late),
      factor('Kc ini', kcInitial),
      factor('Kc mid', kcMid),
      factor('Kc end', kcEnd),
    ],
    result: factor('Crop coefficient Kc, mean of the days', settled.reduce((sum, kc) => sum + kc, 0) / settled.length),
  };
}

function establishingSteps({ planting, ground, season }: PlantingCell): readonly TraceStep[] {
  const { establishing } = planting;
  if (establishing === undefined) return [];
  const { firstDay } = season.garden.span;
  const inGround = ground.end - ground.first;
  const counted = placesIn(ground, (place) => firstDay + place <= establishing.until).length;
  if (counted === 0) return [];
  return [
    {
      id: 'establishing',
      title: 'Establishing',
      says: 'Young roots reach little soil yet, so until its date the planting is given more than it will need later.',
      formula: 'result = (establishing days × factor + other days × 1) / days in the ground',
      source: 'Factor and date set in the plan; common practice, no source',
      inputs: [
        factor('Establishing factor', establishing.factor),
        days('Establishing days', counted),
        days('Days in the ground', inGround),
      ],
      result: factor(
        'Establishing factor, mean of the days',
        (counted * establishing.factor + inGround - counted) / inGround,
      ),
    },
  ];
}

/** One coefficient for all days where it does not change, else day by day. */
function demandStep(cell: PlantingCell): TraceStep {
  const { ground, season, dayName } = cell;
  const eto = season.weather.eto.mm;
  const coefficients = dailyCoefficients(cell, true);
  const [first = 0] = coefficients;
  const inputs = coefficients.every((coefficient) => coefficient === first)
    ? [factor('Coefficient K', first), depth('ETo of the days in the ground', sumAt(eto, placesIn(ground)))]
    : placesIn(ground).flatMap((place, offset) => [
        factor(`${dayName(place)}, K`, coefficients[offset] as number),
        depth(`${dayName(place)}, ETo`, eto[place] as number),
      ]);
  return {
    id: 'demand',
    title: 'Demand',
    says: 'What the planting would use in these days if it never went short of water.',
    formula: 'ETc = K × ETo, summed over the days in the ground; K = coefficient × establishing factor',
    source: 'FAO-56 eq. 58 (its number from memory); landscape plants: Costello, Matheny and Clark (2000)',
    inputs,
    result: depth('Demand ETc', cell.at('demandMm')),
  };
}

function dailyCoefficients({ planting, ground, season }: PlantingCell, isEstablishing: boolean): readonly number[] {
  const { establishing, ...settled } = planting;
  const { firstDay } = season.garden.span;
  return placesIn(ground).map((place) => plantCoefficientOn(isEstablishing ? planting : settled, firstDay + place));
}
