/** All steps of the whole garden's week: its weather and its totals. */
import type { Season, ZONE_FIELDS, ZoneSeason } from '../../engine/season/season.ts';
import { SUPPLY_FIELDS } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { weekSpan } from './day-span.ts';
import type { TraceStep, TraceValue } from './trace-step.ts';
import { minutes, volume } from './trace-value.ts';
import { rainSteps } from './weather/rain-steps.ts';
import { referenceEtSteps } from './weather/reference-et-steps.ts';
import { cumulativeSteps } from './zone/cumulative-steps.ts';
import { sumSteps } from './zone/sum-steps.ts';

export function traceGarden(season: Season, week: number): readonly TraceStep[] {
  const { totals, zones } = season;
  const parts = zones.map((zone) => ({
    label: labelOf(zone, zones),
    at: (field: keyof typeof ZONE_FIELDS) => zoneFigure(zone, field, week),
  }));
  const totalOf = (
    field: keyof typeof ZONE_FIELDS,
    value: (label: string, number: number) => TraceValue,
    rest: Pick<TraceStep, 'id' | 'title' | 'says'>,
  ): TraceStep => ({
    ...rest,
    formula: 'sum over the zones',
    source: 'Definition',
    inputs: parts.map(({ label, at }) => value(label, at(field))),
    result: value(
      rest.title,
      parts.reduce((sum, { at }) => sum + at(field), 0),
    ),
  });
  return [
    ...referenceEtSteps(season, weekSpan(week)),
    ...rainSteps(season, weekSpan(week)),
    totalOf('minutes', minutes, {
      id: 'minutes',
      title: 'Minutes of the week',
      says: 'All zones, one after the other.',
    }),
    ...sumSteps({
      of: 'zone',
      parts,
      at: (field) => totals.figures[SUPPLY_FIELDS[field] * totals.weeks + week] as number,
    }),
    totalOf('rainCreditLitres', volume, {
      id: 'rain-credit-litres',
      title: 'Irrigation that the rain saved',
      says: 'So much would have had to be applied to do what the rain did.',
    }),
    ...cumulativeSteps(totals, week),
  ];
}

function labelOf({ zone: { id, name } }: ZoneSeason, zones: readonly ZoneSeason[]): string {
  return zones.filter(({ zone }) => zone.name === name).length === 1 ? name : `${name} (${id})`;
}
