/** All steps of the whole garden's week: its weather and its totals. */
import { type Season, SUPPLY_FIELDS, type ZONE_FIELDS } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { weekSpan } from './day-span.ts';
import type { TraceFigure, TraceStep } from './trace-step.ts';
import { input, minutes, volume } from './trace-value.ts';
import { rainSteps } from './weather/rain.ts';
import { referenceEtSteps } from './weather/reference-et.ts';
import { runningTotalSteps } from './zone/running-totals.ts';
import { sumSteps } from './zone/sums.ts';
import { distinctName } from './zone/zone-cell.ts';

type ZoneField = keyof typeof ZONE_FIELDS;

export function traceGarden(season: Season, week: number): readonly TraceStep[] {
  const { totals, zones, garden } = season;
  const parts = zones.map((own) => ({
    name: distinctName(own.zone, garden.zones),
    at: (field: ZoneField) => zoneFigure(own, field, week),
  }));
  const sumOf = (field: ZoneField, figure: (value: number) => TraceFigure): Pick<TraceStep, 'inputs' | 'result'> => ({
    inputs: parts.map(({ name, at }) => input({ id: 'zone', name }, figure(at(field)))),
    result: figure(parts.reduce((sum, { at }) => sum + at(field), 0)),
  });
  return [
    ...referenceEtSteps(season, weekSpan(week)),
    ...rainSteps(season, weekSpan(week)),
    { id: 'minutes', variant: 'garden', source: [{ id: 'definition' }], ...sumOf('minutes', minutes) },
    ...sumSteps({
      of: 'garden',
      parts,
      at: (field) => totals.figures.at(SUPPLY_FIELDS[field], week),
    }),
    {
      id: 'rain-credit-litres',
      variant: 'garden',
      source: [{ id: 'definition' }],
      ...sumOf('rainCreditLitres', volume),
    },
    ...runningTotalSteps(totals, week),
  ];
}
