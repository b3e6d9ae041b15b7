/**
 * Invented gardens of any size for the bench: three plantings a zone, a whole year of 53 weeks. They are made by place
 * in the list alone, so the same size is always the same garden, and twice the zones are twice the work.
 */
import { dayNumber, isoDate } from '../../src/engine/calendar.ts';
import type { Plan, PlanLine, PlanPlanting, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../src/plan/season-weeks.ts';
import { SEATTLE } from '../support/small-plans.ts';

export const PLANTINGS_PER_ZONE = 3;
export const WEEKS = 53;

const SEASON = { firstDay: '2027-01-04', weeks: WEEKS };

/** Weeks with a rain gauge read, up to the day on which the plan is looked at. */
const READ_WEEKS = 20;

export function benchGarden(zones: number): Plan {
  const list = Array.from({ length: zones }, (_, place) => zone(place));
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'metric',
    name: `${zones} zones`,
    notes: 'Invented for the bench.',
    season: SEASON,
    site: { latitude: 47.45, elevation: 122, soil: 'sandy-loam', climate: SEATTLE },
    zones: list,
    log: {
      weeks: Object.fromEntries(Array.from({ length: READ_WEEKS }, (_, week) => [weekKey(week), readRain(week)])),
    },
    choices: Object.fromEntries(
      list.filter((_, place) => place % 10 === 9).map(({ id }) => [id, { [weekKey(26)]: { minutes: 90 } }]),
    ),
  };
}

/** Roots that are no deeper at first, cm: they do not grow. */
const STEADY_ROOTS = 15;

/** The same with all its ground wetted and roots that do not grow, as the sheet has it: one store of one depth a planting. */
export function inOneStore(plan: Plan): Plan {
  const inOne = (planting: PlanPlanting): PlanPlanting => ({
    ...planting,
    wettedShare: 1,
    ...(planting.need.kind === 'crop' ? { rootDepth: STEADY_ROOTS } : {}),
  });
  return { ...plan, zones: plan.zones.map((of) => ({ ...of, plantings: of.plantings.map(inOne) })) };
}

/** The same on a source of a known pressure: every line of plain emitters, behind a solid line of its own. */
export function atPressure(plan: Plan): Plan {
  return {
    ...plan,
    name: `${plan.name} at pressure`,
    supply: { sources: [{ name: 'Main', pressure: 120 }] },
    zones: plan.zones.map((of) => ({ ...of, plantings: of.plantings.map(behindSolidLine) })),
  };
}

function behindSolidLine(planting: PlanPlanting, place: number): PlanPlanting {
  const plain = planting.lines.map((line): PlanLine => {
    return line.kind === 'solid' ? line : { ...line, emitter: { kind: 'plain', exponent: 0.5 } };
  });
  return { ...planting, lines: [...plain, { kind: 'solid', length: 4 + 3 * place }] };
}

/** Another figure in one week's rain gauge. */
export function withWeekRain(plan: Plan, week: number, rain: number): Plan {
  return { ...plan, log: { ...plan.log, weeks: { ...plan.log?.weeks, [weekKey(week)]: { rain } } } };
}

/** Another figure for one zone's minutes in one week. */
export function withWeekMinutes(plan: Plan, zoneId: string, week: number, minutes: number): Plan {
  const choices = { ...plan.choices?.[zoneId], [weekKey(week)]: { minutes } };
  return { ...plan, choices: { ...plan.choices, [zoneId]: choices } };
}

export function zoneIdAt(place: number): string {
  return `zone-${place}`;
}

function weekKey(week: number): string {
  return weekFirstDay(SEASON, week);
}

function readRain(week: number): { rain: number } {
  return { rain: (week * 17) % 43 };
}

function zone(place: number): PlanZone {
  const kinds = [vegetables, border, shrubbery];
  const plantings = (kinds[place % kinds.length] ?? vegetables)(place);
  return {
    id: zoneIdAt(place),
    name: `Zone ${place + 1}`,
    wateringDays: 1 + (place % 4),
    rule: { kind: place % 4 === 2 ? 'area-weighted' : 'thirstiest' },
    timerStepMinutes: place % 5 === 0 ? 5 : 1,
    plantings: plantings.map((planting, at) => ({ ...planting, id: `${zoneIdAt(place)}-${at}` })),
  };
}

type Planting = Omit<PlanPlanting, 'id'>;

/** Crops that come and go, all of one bed. */
function vegetables(place: number): readonly Planting[] {
  return [
    {
      name: 'Tomatoes',
      need: { kind: 'crop', crop: 'tomato', plantedOn: weekKey(17 + (place % 4)) },
      extent: { kind: 'area', area: 6 + (place % 7) },
      lines: [{ kind: 'dripline', flow: 2.3, spacing: 30, layout: { kind: 'rows', rows: 3, length: 6 } }],
    },
    {
      name: 'Peppers',
      need: { kind: 'crop', crop: 'sweet-pepper', plantedOn: weekKey(18 + (place % 3)) },
      extent: { kind: 'area', area: 4 + (place % 5) },
      lines: [{ kind: 'dripline', flow: 2.3, spacing: 30, layout: { kind: 'rows', rows: 2, length: 6 } }],
    },
    {
      name: 'Strawberries',
      need: { kind: 'crop', crop: 'strawberries', plantedOn: weekKey(9) },
      extent: { kind: 'area', area: 3 + (place % 3) },
      lines: [{ kind: 'dripline', flow: 1.6, spacing: 20, layout: { kind: 'rows', rows: 2, length: 4 } }],
    },
  ];
}

/** Flowers and grass that stay, with shrubs behind a shut-off. */
function border(place: number): readonly Planting[] {
  return [
    {
      name: 'Perennials',
      need: { kind: 'class', class: 'moderate' },
      extent: { kind: 'area', area: 10 + (place % 9) },
      lines: [{ kind: 'dripline', flow: 2.3, spacing: 40, layout: { kind: 'length', length: 30 } }],
    },
    {
      name: 'Summer flowers',
      need: { kind: 'type', type: 'annual-flowers' },
      extent: { kind: 'area', area: 2 + (place % 4) },
      inGround: { from: weekKey(18), to: weekKey(42) },
      lines: [{ kind: 'point', flow: 2, count: 12 }],
    },
    {
      name: 'Shrubs',
      need: { kind: 'class', class: 'low' },
      extent: { kind: 'canopy', count: 5 + (place % 6), diameter: 90 },
      shutOff: true,
      lines: [{ kind: 'dripline', flow: 2.3, spacing: 40, layout: { kind: 'loops', perPlant: 1 } }],
    },
  ];
}

/** New shrubs, a hedge kept moist, and a fruit hedge re-laid in June. */
function shrubbery(place: number): readonly Planting[] {
  return [
    {
      name: 'New shrubs',
      need: { kind: 'class', class: 'low', density: 1.1 },
      extent: { kind: 'canopy', count: 6 + (place % 5), diameter: 80 },
      establishing: { until: weekKey(30), factor: 1.4 },
      lines: [{ kind: 'point', flow: 4, count: 2 }],
    },
    {
      name: 'Hedge',
      need: { kind: 'class', class: 'moderate', microclimate: 1.2 },
      extent: { kind: 'area', area: 8 + (place % 6) },
      target: 0.2,
      lines: [{ kind: 'dripline', flow: 2.3, spacing: 30, layout: { kind: 'length', length: 24 } }],
    },
    {
      name: 'Berries',
      need: { kind: 'crop', crop: 'bush-berries', plantedOn: weekKey(8) },
      extent: { kind: 'area', area: 5 + (place % 4) },
      shutOff: true,
      lines: [
        { kind: 'point', flow: 4, count: 6, to: isoDate(dayNumber(weekKey(22)) - 1) },
        { kind: 'point', flow: 4, count: 10, from: weekKey(22) },
      ],
    },
  ];
}
