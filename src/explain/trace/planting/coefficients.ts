/** What share of reference ET a planting uses in its week, and what that makes. */
import type { PlantCoefficient } from '../../../engine/garden.ts';
import { dayOfGrowth, growthCycle } from '../../../engine/plants/growth-cycle.ts';
import { landscapeCoefficient } from '../../../engine/plants/landscape-coefficient.ts';
import { plantCoefficientOn } from '../../../engine/season/plant-coefficients.ts';
import { daysIn, sumOver } from '../day-span.ts';
import { published } from '../published.ts';
import type { TraceStep } from '../trace-step.ts';
import { count, date, days, depth, factor, input } from '../trace-value.ts';
import { mulchSteps } from './mulch.ts';
import type { PlantingCell } from './planting-cell.ts';

type LandscapeCoefficient = Extract<PlantCoefficient, { kind: 'landscape' }>;
type CropCoefficient = Extract<PlantCoefficient, { kind: 'crop' }>;

export function coefficientSteps(cell: PlantingCell): readonly TraceStep[] {
  const { coefficient } = cell.planting;
  return [
    ...mulchSteps(cell),
    coefficient.kind === 'landscape' ? landscapeStep(coefficient) : cropStep(cell, coefficient),
    ...establishingSteps(cell),
    demandStep(cell),
  ];
}

function landscapeStep(coefficient: LandscapeCoefficient): TraceStep {
  const { name, density, microclimate, source } = coefficient;
  return {
    id: 'landscape-coefficient',
    source: [
      'Costello, Matheny and Clark (2000)',
      source === undefined ? { id: 'plant-factor-set' } : published(source),
    ],
    inputs: [
      input({ id: 'plant-factor', plant: name }, factor(coefficient.factor)),
      input('density', factor(density)),
      input('microclimate', factor(microclimate)),
    ],
    result: factor(landscapeCoefficient(coefficient)),
  };
}

function cropStep(cell: PlantingCell, coefficient: CropCoefficient): TraceStep {
  const { ground, dayOf } = cell;
  const { stageDays, source, stagesSource } = coefficient;
  const { establishing: _, rest: __, ...planting } = cell.planting;
  const settled = dailyCoefficients({ planting, dayOf }, daysIn(ground));
  const [initial, development, mid, late] = stageDays;
  const groundDays = ground.end - ground.first;
  const firstDay = dayOf(ground.first);
  const cycle = growthCycle(coefficient, firstDay);
  const daysLeft = cycle.next - firstDay;
  return {
    id: 'crop-coefficient',
    plant: coefficient.name,
    variant: coefficient.perennial ? 'perennial' : 'annual',
    source: [
      'FAO-56 eq. 66',
      source === undefined ? { id: 'crop-coefficients-set' } : published(source),
      stagesSource === undefined ? { id: 'stages-set' } : published(stagesSource),
    ],
    inputs: [
      input('growth-start', date(cycle.start)),
      input('growth-day', count(dayOfGrowth(coefficient, cycle, firstDay))),
      input('ground-days', days(groundDays)),
      ...(daysLeft < groundDays ? [input('growth-days-left', days(daysLeft))] : []),
      input('stage-initial', days(initial)),
      input('stage-development', days(development)),
      input('stage-mid', days(mid)),
      input('stage-late', days(late)),
      input('kc-initial', factor(coefficient.kcInitial)),
      input('kc-mid', factor(coefficient.kcMid)),
      input('kc-end', factor(coefficient.kcEnd)),
    ],
    result: factor(settled.reduce((sum, kc) => sum + kc, 0) / settled.length),
  };
}

function establishingSteps({ planting, ground, dayOf }: PlantingCell): readonly TraceStep[] {
  const { establishing } = planting;
  if (establishing === undefined) return [];
  const groundDays = ground.end - ground.first;
  const counted = daysIn(ground, (index) => dayOf(index) <= establishing.until).length;
  if (counted === 0) return [];
  return [
    {
      id: 'establishing',
      source: [{ id: 'establishing-factor' }, { id: 'common-practice' }],
      inputs: [
        input('establishing-factor', factor(establishing.factor)),
        input('establishing-days', days(counted)),
        input('ground-days', days(groundDays)),
      ],
      result: factor((counted * establishing.factor + groundDays - counted) / groundDays),
    },
  ];
}

/** One coefficient for all days where it does not change, else day by day. */
function demandStep(cell: PlantingCell): TraceStep {
  const { ground, season, dayOf } = cell;
  const eto = season.weather.eto.mm;
  const coefficients = dailyCoefficients(cell, daysIn(ground));
  const [first = 0] = coefficients;
  return {
    id: 'demand',
    source: [
      { id: 'not-checked', cite: 'FAO-56 eq. 58' },
      { id: 'landscape-demand', cite: 'Costello, Matheny and Clark (2000)' },
    ],
    inputs: coefficients.every((coefficient) => coefficient === first)
      ? [input('coefficient', factor(first)), input('eto', depth(sumOver(eto, daysIn(ground))))]
      : daysIn(ground).flatMap((index, offset) => [
          input({ id: 'day-coefficient', day: dayOf(index) }, factor(coefficients[offset] as number)),
          input({ id: 'day-eto', day: dayOf(index) }, depth(eto[index] as number)),
        ]),
    result: depth(cell.at('demandMm')),
  };
}

/** Of each of the days given by their indexes. */
export function dailyCoefficients(
  { planting, dayOf }: Pick<PlantingCell, 'planting' | 'dayOf'>,
  indexes: readonly number[],
): readonly number[] {
  return indexes.map((index) => plantCoefficientOn(planting, dayOf(index)));
}
