/** The chart's running sums up to a week, of a zone or of the whole garden. */
import { type Cumulative, cumulative } from '../../../engine/season/cumulative.ts';
import { type SeasonTotals, SUPPLY_FIELDS, type ZoneSeason } from '../../../engine/season/season.ts';
import type { TraceStep } from '../trace-step.ts';
import { volume } from '../trace-value.ts';

type Running = 'rain' | 'irrigation' | 'demand';

const RUNNING: Readonly<Record<Running, { readonly title: string; readonly field: keyof typeof SUPPLY_FIELDS }>> = {
  rain: { title: 'Rain that stayed, since the season began', field: 'rainStayedLitres' },
  irrigation: { title: 'Irrigation that stayed, since the season began', field: 'irrigationStayedLitres' },
  demand: { title: 'Demand since the season began', field: 'demandLitres' },
};

/** `block` is the zone's weeks or the garden's totals. */
export function cumulativeSteps(block: ZoneSeason | SeasonTotals, week: number): readonly TraceStep[] {
  const sums = cumulative(block);
  return [
    ...(Object.keys(RUNNING) as Running[]).map((name) => runningStep(block, sums, name, week)),
    fromSoilStep(block, sums, week),
    unmetStep(block, sums, week),
  ];
}

function runningStep(block: ZoneSeason | SeasonTotals, sums: Cumulative, name: Running, week: number): TraceStep {
  const { title, field } = RUNNING[name];
  return {
    id: `cumulative-${name}`,
    title,
    says: 'One more week is added to what the weeks before came to.',
    formula: 'sum = the weeks before + this week',
    source: 'Definition',
    inputs: [
      volume('The weeks before', week === 0 ? 0 : (sums[name][week - 1] as number)),
      volume('This week', block.figures[SUPPLY_FIELDS[field] * block.weeks + week] as number),
    ],
    result: volume(title, sums[name][week] as number),
  };
}

function fromSoilStep(block: ZoneSeason | SeasonTotals, sums: Cumulative, week: number): TraceStep {
  return {
    id: 'cumulative-from-soil',
    title: 'Taken out of the soil’s store since the season began',
    says: 'Beside rain and irrigation the plants have lived on what the soil held at the start.',
    formula: 'taken out = − change of the water in the soil since the season began, at least 0',
    source: 'Definition',
    inputs: [
      volume('Change of the water in the soil since the season began', runningSum(block, 'storageLitres', week)),
    ],
    result: volume('Taken out of the soil', sums.fromSoil[week] as number),
  };
}

function unmetStep(block: ZoneSeason | SeasonTotals, sums: Cumulative, week: number): TraceStep {
  return {
    id: 'cumulative-unmet',
    title: 'Demand that went unmet since the season began',
    says: 'By so much the plants have gone short so far.',
    formula: 'unmet = demand − water used, both since the season began, at least 0',
    source: 'Definition',
    inputs: [
      volume('Demand since the season began', sums.demand[week] as number),
      volume('Water used since the season began', runningSum(block, 'usedLitres', week)),
    ],
    result: volume('Unmet demand', sums.unmet[week] as number),
  };
}

function runningSum(
  { figures, weeks }: ZoneSeason | SeasonTotals,
  field: keyof typeof SUPPLY_FIELDS,
  week: number,
): number {
  const start = SUPPLY_FIELDS[field] * weeks;
  return figures.subarray(start, start + week + 1).reduce((sum, litres) => sum + litres, 0);
}
