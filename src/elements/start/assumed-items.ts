/** All that is assumed, in words, each with the way to change it or to say that it is right. */

import { dayNumber } from '../../engine/calendar.ts';
import { weekMask } from '../../engine/season/week-masks.ts';
import { SOIL_TEXTURES } from '../../engine/soil/textures.data.ts';
import { startWords } from '../../language/en/start.ts';
import { nameIn } from '../../language/name-in.ts';
import type { AssumedOfPlan, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { sourceFlowLpm } from '../../plan/to-garden/supply.ts';
import { wayOf } from '../../plan/usual-lines.ts';
import { plantNameOf } from '../garden/plant-name.ts';
import { sizeText } from '../garden/size-text.ts';
import { needText } from './need-text.ts';
import type { StartContext } from './start-context.ts';
import type { StartStep } from './start-steps.ts';

export interface AssumedItem {
  readonly name: string;
  readonly value: string;
  readonly change: () => void;
  readonly right: () => void;
}

const STEP_OF: Readonly<Record<AssumedOfPlan, StartStep>> = {
  season: 'where',
  climate: 'where',
  soil: 'where',
  source: 'water',
  flow: 'water',
  zones: 'timer',
  days: 'timer',
  window: 'timer',
};

/** What is still assumed of a step, in words. */
export function assumedOfStep(step: StartStep, context: StartContext): readonly string[] {
  const parts = (context.plan.assumed ?? []).filter((part) => STEP_OF[part] === step);
  return parts.map((part) => assumedValue(part, context)).filter((value) => value !== '');
}

export function assumedItems(context: StartContext): readonly AssumedItem[] {
  const { plan, go, form } = context;
  const parts = plan.assumed ?? [];
  const ofPlan = parts.map((part) => ({
    name: startWords(context.reader.language).assumptions.names[part],
    value: assumedValue(part, context),
    change: () => go(STEP_OF[part]),
    right: () =>
      form.send(`assumed-${part}`, '', { type: 'set-assumed', assumed: parts.filter((other) => other !== part) }),
  }));
  const ofPlantings = plan.zones.flatMap((zone) =>
    zone.plantings.flatMap((planting) => itemsOf(context, zone, planting)),
  );
  return [...ofPlan, ...ofPlantings];
}

function itemsOf(context: StartContext, zone: PlanZone, planting: PlanPlanting): readonly AssumedItem[] {
  const { reader, format, form, go, laying, row, toggle } = context;
  const say = startWords(reader.language);
  const parts = planting.assumed ?? [];
  const values = {
    need: () => needText(planting.need, reader),
    plantedOn: () => (planting.need.kind === 'crop' ? format.day(dayNumber(planting.need.plantedOn)) : ''),
    extent: () => sizeText(planting, reader),
    lines: () => linesText(context, planting),
  };
  return parts.map((part) => ({
    name: `${planting.name}, ${say.assumptions.of[part]}`,
    value: values[part](),
    change: () => {
      laying.planting = planting.id;
      if (part !== 'lines') row.begin(zone, planting, sizeText(planting, reader), plantNameOf(planting.need, reader));
      if (part === 'plantedOn') toggle('row-more', true);
      go(part === 'lines' ? 'lines' : 'plants');
    },
    right: () => {
      const assumed = parts.filter((other) => other !== part);
      const change = { assumed: assumed.length > 0 ? assumed : undefined };
      form.send('assumed', '', { type: 'change-planting', zone: zone.id, planting: planting.id, change });
    },
  }));
}

function linesText({ reader }: StartContext, { lines }: PlanPlanting): string {
  const say = startWords(reader.language).lines;
  return say.ways[wayOf(lines)].name;
}

function assumedValue(part: AssumedOfPlan, { plan, season, reader, format }: StartContext): string {
  const say = startWords(reader.language);
  const [source] = plan.supply?.sources ?? [];
  switch (part) {
    case 'season': {
      const { first, last } = seasonDays(plan.season);
      return say.assumptions.season(format, first, last);
    }
    case 'climate':
      return say.assumptions.climate;
    case 'soil': {
      const name = SOIL_TEXTURES.find(({ id }) => id === plan.site.soil)?.name;
      return name === undefined ? '' : nameIn(name, reader.language);
    }
    case 'source':
      return source?.name ?? '';
    case 'flow':
      return source?.flow === undefined ? '' : say.assumptions.flow(format, sourceFlowLpm(source.flow, plan.units));
    case 'zones':
      return say.assumptions.zones(format, plan.zones.length);
    case 'days': {
      const [zone] = season.garden.zones;
      return zone === undefined ? '' : format.weekdays(season.garden.span.firstDay, weekMask(zone, 0));
    }
    case 'window': {
      const { windowOpensAtMinute: opensAt, windowHoursPerDay } = season.garden.supply;
      return opensAt === undefined ? '' : say.assumptions.hours(format, opensAt, windowHoursPerDay);
    }
  }
}
