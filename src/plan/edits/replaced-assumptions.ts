/** What a plan assumed goes as soon as somebody gives another value, whatever it was before. */
import { sameData } from '../same-data.ts';
import type { AssumedOfPlan, Plan, PlanPlanting, PlanZone } from '../schema/plan-schema.ts';
import type { AssumedOfPlanting } from '../schema/planting.ts';
import { changed } from './change.ts';
import type { Edit } from './edit.ts';

/** What each part is: another value of it was given by somebody. */
const PARTS: Readonly<Record<Exclude<AssumedOfPlan, 'days'>, (plan: Plan) => unknown>> = {
  season: ({ season }) => season,
  climate: ({ site }) => site.climate,
  soil: ({ site }) => site.soil,
  source: ({ supply }) => supply?.sources[0]?.name,
  flow: ({ supply }) => supply?.sources[0]?.flow,
  zones: ({ zones }) => zones.length,
  window: ({ supply }) => supply?.window,
};

const PARTS_OF_PLANTING: Readonly<Record<AssumedOfPlanting, (planting: PlanPlanting) => unknown>> = {
  need: ({ need }) => (need.kind === 'crop' ? { ...need, plantedOn: undefined } : need),
  plantedOn: ({ need }) => (need.kind === 'crop' ? need.plantedOn : undefined),
  extent: ({ extent }) => extent,
  lines: ({ lines }) => lines,
};

/** A zone that is added takes the days of the one before it: what those are assumed to be, its own are too. */
function isSame(part: AssumedOfPlan, before: Plan, after: Plan): boolean {
  if (part !== 'days') return PARTS[part](before) === PARTS[part](after);
  const known = new Map(before.zones.map(({ id, wateringDays }) => [id, wateringDays]));
  return after.zones.every(({ id, wateringDays }) => !known.has(id) || sameData(known.get(id), wateringDays));
}

/** The plan after an edit, without the assumptions that it has replaced by what somebody gave. Those that it names itself stay. */
export function withoutReplacedAssumptions(before: Plan, after: Plan, edit: Edit): Plan {
  const { assumed } = after;
  const kept = namesAssumed(edit) ? assumed : assumed?.filter((part) => isSame(part, before, after));
  const told = kept?.length === assumed?.length ? after : changed(after, { assumed: kept?.length ? kept : undefined });
  if (before.zones === after.zones) return told;
  const plantings = new Map(before.zones.flatMap((zone) => zone.plantings.map((planting) => [planting.id, planting])));
  const named = new Set(plantingsThatName(edit));
  const isTold = ({ id }: PlanPlanting) => !named.has(id);
  const zones = told.zones.map((zone) => toldZone(zone, plantings, isTold));
  return zones.every((zone, index) => zone === told.zones[index]) ? told : { ...told, zones };
}

function toldZone(
  zone: PlanZone,
  before: ReadonlyMap<string, PlanPlanting>,
  isTold: (planting: PlanPlanting) => boolean,
): PlanZone {
  const plantings = zone.plantings.map((planting) =>
    isTold(planting) ? toldPlanting(planting, before.get(planting.id)) : planting,
  );
  return plantings.every((planting, index) => planting === zone.plantings[index]) ? zone : { ...zone, plantings };
}

function toldPlanting(planting: PlanPlanting, before: PlanPlanting | undefined): PlanPlanting {
  const { assumed } = planting;
  if (assumed === undefined || before === undefined || assumed !== before.assumed || planting === before)
    return planting;
  const kept = assumed.filter((part) => sameData(PARTS_OF_PLANTING[part](planting), PARTS_OF_PLANTING[part](before)));
  return kept.length === assumed.length ? planting : changed(planting, { assumed: kept.length > 0 ? kept : undefined });
}

/** The ids of those of which an edit itself says what is assumed. */
function plantingsThatName(edit: Edit): readonly string[] {
  if (edit.type === 'together') return edit.edits.flatMap(plantingsThatName);
  return edit.type === 'change-planting' && 'assumed' in edit.change ? [edit.planting] : [];
}

function namesAssumed(edit: Edit): boolean {
  return edit.type === 'together' ? edit.edits.some(namesAssumed) : edit.type === 'set-assumed';
}
