/**
 * Random edits of every kind. Each is made for the plan that it meets, so that a whole row of them can be drawn at once; some name
 * what is not there or ask for what cannot be.
 */
import fc from 'fast-check';
import { addDays } from '../../src/engine/calendar.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { newPlantingId, newZoneId } from '../../src/plan/ids.ts';
import type { Plan, PlanLine, PlanPlanting, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { shrubs, tomatoes, zone } from './small-plans.ts';

export type EditMaker = (plan: Plan) => Edit;

/** What an edit's maker draws from: places in the plan by number, and an amount. */
interface Draw {
  readonly zone: number;
  readonly planting: number;
  readonly place: number;
  readonly day: number;
  readonly amount: number;
  readonly clears: boolean;
}

const draws: fc.Arbitrary<Draw> = fc.record({
  zone: fc.nat(20),
  planting: fc.nat(20),
  place: fc.integer({ min: -1, max: 6 }),
  // A few days before and after most seasons.
  day: fc.integer({ min: -9, max: 430 }),
  amount: fc.oneof(fc.integer({ min: 0, max: 7 }), fc.constantFrom(45, 120.5, 10_081, -1, Number.NaN)),
  clears: fc.boolean(),
});

type Maker = (plan: Plan, draw: Draw) => Edit;

const zoneOf = (plan: Plan, draw: Draw): PlanZone | undefined => plan.zones[draw.zone % (plan.zones.length + 1)];
const zoneId = (plan: Plan, draw: Draw): string => zoneOf(plan, draw)?.id ?? 'nowhere';
const plantingId = (plan: Plan, draw: Draw): string => {
  const plantings = zoneOf(plan, draw)?.plantings ?? [];
  return plantings[draw.planting % (plantings.length + 1)]?.id ?? 'nothing';
};
const at = (plan: Plan, draw: Draw) => ({ zone: zoneId(plan, draw), planting: plantingId(plan, draw) });
const dayOf = ({ season }: Plan, { day }: Draw): string => addDays(season.firstDay, day % (7 * season.weeks + 9));
const cell = (plan: Plan, draw: Draw) => ({ zone: zoneId(plan, draw), week: dayOf(plan, draw) });
const orNothing = ({ amount, clears }: Draw): number | undefined => (clears ? undefined : amount);

const newPlanting = (plan: Plan, { amount, clears }: Draw): PlanPlanting =>
  clears ? tomatoes({ id: newPlantingId(plan, 'Tomatoes') }) : shrubs({ id: `shrubs-${amount}` });

const line = (plan: Plan, draw: Draw): PlanLine => ({
  kind: 'point',
  flow: 1 + Math.abs(draw.amount),
  count: 2,
  ...(draw.clears ? {} : { from: dayOf(plan, draw) }),
});

const MAKERS: readonly Maker[] = [
  (plan, draw) => ({ type: 'set-minutes', ...cell(plan, draw), minutes: orNothing(draw) }),
  (plan, draw) => ({ type: 'set-minutes-run', ...cell(plan, draw), minutes: orNothing(draw) }),
  (plan, draw) => ({
    type: 'set-day-run',
    zone: zoneId(plan, draw),
    day: dayOf(plan, draw),
    run: draw.clears ? undefined : { minutes: draw.amount, ...(draw.place > 1 && { open: [plantingId(plan, draw)] }) },
  }),
  (plan, draw) => ({
    type: 'set-week-run',
    ...cell(plan, draw),
    run: draw.clears ? undefined : { days: { [dayOf(plan, draw)]: { minutes: draw.amount } }, rest: 'computed' },
  }),
  (plan, draw) => ({ type: 'set-week-note', week: dayOf(plan, draw), note: draw.clears ? undefined : 'Supply off.' }),
  (plan, draw) => ({ type: 'set-meter', day: dayOf(plan, draw), reading: orNothing(draw) }),
  (plan, draw) => ({ type: 'close-week', ...cell(plan, draw), closed: !draw.clears }),
  (plan, draw) => ({ type: 'set-open-days', ...at(plan, draw), week: dayOf(plan, draw), days: orNothing(draw) }),
  (plan, draw) => ({ type: 'set-note', ...cell(plan, draw), note: draw.clears ? undefined : 'Heat is coming.' }),
  (plan, draw) => ({
    type: 'set-choice',
    ...cell(plan, draw),
    choice: draw.clears ? undefined : { minutes: draw.amount, closed: false },
  }),
  (plan, draw) => ({ type: 'set-week-rain', week: dayOf(plan, draw), rain: orNothing(draw) }),
  (plan, draw) => ({
    type: 'set-week-rain',
    week: dayOf(plan, draw),
    rain: orNothing(draw),
    through: addDays(dayOf(plan, draw), draw.place),
  }),
  (plan, draw) => ({
    type: 'set-forecast',
    issued: dayOf(plan, draw),
    days: draw.clears ? undefined : { [addDays(dayOf(plan, draw), draw.place)]: { rain: draw.amount } },
  }),
  (plan, draw) => ({ type: 'set-week-eto', week: dayOf(plan, draw), eto: orNothing(draw) }),
  (plan, draw) => ({
    type: 'set-day-weather',
    day: dayOf(plan, draw),
    weather: draw.clears ? undefined : { rain: draw.amount, minTemperature: 40 - draw.amount },
  }),
  (plan, draw) => ({
    type: 'change-day-weather',
    day: dayOf(plan, draw),
    change: { rain: orNothing(draw), eto: undefined },
  }),
  (plan, draw) => ({ type: 'set-climate', climate: { ...plan.site.climate, source: `${draw.amount}` } }),
  (_plan, draw) => ({ type: 'rename-plan', name: draw.clears ? '' : `Plan ${draw.amount}` }),
  (_plan, draw) => ({ type: 'set-assumed', assumed: draw.clears ? undefined : ['soil', 'season'] }),
  (_plan, draw) => ({ type: 'set-plan-notes', notes: draw.clears ? undefined : 'Notes' }),
  (plan, draw) => ({
    type: 'set-season',
    season: { firstDay: dayOf(plan, draw), weeks: draw.clears ? plan.season.weeks : draw.amount },
  }),
  (_plan, draw) => ({ type: 'change-site', change: { soil: 'clay', slopePercent: orNothing(draw) } }),
  (_plan, draw) => ({
    type: 'change-supply',
    change: { window: draw.clears ? undefined : { hoursPerDay: draw.amount, weekdays: ['tue', 'sat'] } },
  }),
  (plan, draw) => ({
    type: 'set-what-if',
    name: `What-if ${draw.place}`,
    edits: draw.clears
      ? undefined
      : [{ type: 'close-week', zone: plan.zones[0]?.id ?? 'gone', week: dayOf(plan, draw), closed: true }],
  }),
  (_plan, draw) => ({ type: 'convert-units', units: draw.clears ? 'us' : 'metric' }),
  (plan, draw) => ({
    type: 'add-zone',
    zone: zone({
      id: draw.clears ? newZoneId(plan, 'Beds') : 'beds',
      plantings: [newPlanting(plan, draw)],
    }),
    at: draw.place,
  }),
  (plan, draw) => ({
    type: 'change-zone',
    zone: zoneId(plan, draw),
    change: {
      soil: draw.clears ? undefined : 'sand',
      rule: { kind: 'planting', planting: plantingId(plan, draw) },
    },
  }),
  (plan, draw) => ({ type: 'change-zone', zone: zoneId(plan, draw), change: { name: `${draw.amount}` } }),
  (plan, draw) => ({ type: 'remove-zone', zone: zoneId(plan, draw) }),
  (plan, draw) => ({ type: 'move-zone', zone: zoneId(plan, draw), to: draw.place }),
  (plan, draw) => ({ type: 'add-planting', zone: zoneId(plan, draw), planting: newPlanting(plan, draw) }),
  (plan, draw) => ({
    type: 'change-planting',
    ...at(plan, draw),
    change: { extent: { kind: 'area', area: draw.amount }, target: draw.clears ? undefined : 0.5 },
  }),
  (plan, draw) => ({
    type: 'change-planting',
    ...at(plan, draw),
    change: { inGround: { from: dayOf(plan, draw), to: addDays(plan.season.firstDay, 20) } },
  }),
  (plan, draw) => ({ type: 'remove-planting', ...at(plan, draw) }),
  (plan, draw) => ({
    type: 'move-planting',
    ...at(plan, draw),
    toZone: plan.zones[Math.abs(draw.place) % (plan.zones.length + 1)]?.id ?? 'nowhere',
    at: draw.place,
  }),
  (plan, draw) => ({ type: 'add-line', ...at(plan, draw), line: line(plan, draw) }),
  (plan, draw) => ({ type: 'replace-line', ...at(plan, draw), index: draw.place, line: line(plan, draw) }),
  (plan, draw) => ({ type: 'remove-line', ...at(plan, draw), index: draw.place }),
];

const oneEdit: fc.Arbitrary<EditMaker> = fc.tuple(fc.constantFrom(...MAKERS), draws).map(
  ([make, draw]) =>
    (plan) =>
      make(plan, draw),
);

const together: fc.Arbitrary<EditMaker> = fc.array(oneEdit, { maxLength: 3 }).map((makers) => (plan) => ({
  type: 'together',
  edits: makers.map((make) => make(plan)),
}));

/** Nine single edits to one of several together. */
export const arbitraryEdit: fc.Arbitrary<EditMaker> = fc.oneof(
  { weight: 9, arbitrary: oneEdit },
  { weight: 1, arbitrary: together },
);
