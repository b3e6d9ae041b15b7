/** The chart's running totals up to a week, of a zone or of the whole garden. */
import { type Cumulative, cumulative } from '../../../engine/season/cumulative.ts';
import { fieldByWeek } from '../../../engine/season/field-by-week.ts';
import { type SeasonTotals, SUPPLY_FIELDS, type ZoneSeason } from '../../../engine/season/season.ts';
import type { TraceStep } from '../trace-step.ts';
import { input, volume } from '../trace-value.ts';

type Block = ZoneSeason | SeasonTotals;

const FIELDS = {
  rain: 'rainStayedLitres',
  irrigation: 'irrigationStayedLitres',
  demand: 'demandLitres',
} as const satisfies Record<string, keyof typeof SUPPLY_FIELDS>;

/** `block` is the zone's weeks or the garden's totals. */
export function runningTotalSteps(block: Block, week: number): readonly TraceStep[] {
  const sums = cumulative(block);
  return [
    runningStep(block, sums, 'rain', week),
    runningStep(block, sums, 'irrigation', week),
    runningStep(block, sums, 'demand', week),
    {
      id: 'cumulative-from-soil',
      source: [{ id: 'definition' }],
      inputs: [input('cumulative-storage', volume(runningSum(block, 'storageLitres', week)))],
      result: volume(sums.fromSoil[week] as number),
    },
    {
      id: 'cumulative-unmet',
      source: [{ id: 'definition' }],
      inputs: [
        input('cumulative-demand', volume(sums.demand[week] as number)),
        input('cumulative-used', volume(runningSum(block, 'usedLitres', week))),
      ],
      result: volume(sums.unmet[week] as number),
    },
  ];
}

function runningStep(block: Block, sums: Cumulative, name: keyof typeof FIELDS, week: number): TraceStep {
  return {
    id: `cumulative-${name}`,
    source: [{ id: 'definition' }],
    inputs: [
      input('weeks-before', volume(week === 0 ? 0 : (sums[name][week - 1] as number))),
      input('this-week', volume(block.figures.at(SUPPLY_FIELDS[FIELDS[name]], week))),
    ],
    result: volume(sums[name][week] as number),
  };
}

function runningSum({ figures }: Block, field: keyof typeof SUPPLY_FIELDS, week: number): number {
  const byWeek = fieldByWeek(figures, SUPPLY_FIELDS[field]);
  return byWeek.subarray(0, week + 1).reduce((sum, litres) => sum + litres, 0);
}
