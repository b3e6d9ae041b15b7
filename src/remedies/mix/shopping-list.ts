/**
 * What to buy for a plan that is to become another one: what is new in it, by size, as a shop sells it. Fittings are counted as lines are
 * usually laid (common practice, no source): each run of dripline leaves its feed by a tee; a dead end has an end cap, a run that is fed at
 * both ends a second tee.
 */
import type { GardenLine } from '../../engine/garden.ts';
import type { Plan, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { isSameSize } from './in-plan-units.ts';
import { lineInGarden } from './kinds/dripline.ts';

export interface ShoppingList {
  readonly driplines: readonly {
    readonly emitterFlowLph: number;
    readonly spacingM: number;
    readonly lengthM: number;
  }[];
  readonly emitters: readonly { readonly emitterFlowLph: number; readonly pieces: number }[];
  readonly sprays: readonly { readonly emitterFlowLph: number; readonly pieces: number }[];
  /** Solid line whose length the plan knows. */
  readonly solidM: number;
  readonly shutOffs: number;
  /** A valve or timer station, with its solid line. */
  readonly valves: number;
  readonly tees: number;
  readonly endCaps: number;
}

interface Bag {
  readonly driplines: { emitterFlowLph: number; spacingM: number; lengthM: number }[];
  readonly emitters: { emitterFlowLph: number; pieces: number }[];
  readonly sprays: { emitterFlowLph: number; pieces: number }[];
  solidM: number;
  shutOffs: number;
  tees: number;
  endCaps: number;
}

/** `before` becomes `after`: what is there already can stay, where it is of the same size. */
export function shoppingList(before: Plan, after: Plan): ShoppingList {
  const bag: Bag = { driplines: [], emitters: [], sprays: [], solidM: 0, shutOffs: 0, tees: 0, endCaps: 0 };
  const had = new Map(plantingsOf(before).map((planting) => [planting.id, planting]));
  for (const planting of plantingsOf(after)) addPlanting(bag, { before, after }, had.get(planting.id), planting);
  const zones = new Set(before.zones.map(({ id }) => id));
  return { ...bag, valves: after.zones.filter(({ id }) => !zones.has(id)).length };
}

const plantingsOf = ({ zones }: Plan): readonly PlanPlanting[] => zones.flatMap(({ plantings }) => plantings);

function addPlanting(
  bag: Bag,
  plans: { readonly before: Plan; readonly after: Plan },
  had: PlanPlanting | undefined,
  planting: PlanPlanting,
): void {
  if (planting.shutOff === true && had?.shutOff !== true) bag.shutOffs += 1;
  for (const [index, line] of planting.lines.entries()) {
    if (had?.lines[index] === line) continue;
    const laid = lineInGarden(plans.after, planting, index);
    if (laid !== undefined) addLine(bag, had && lineInGarden(plans.before, had, index), laid);
  }
}

function addLine(bag: Bag, had: GardenLine | undefined, line: GardenLine): void {
  const same = had !== undefined && isSameGoods(had, line) ? had : undefined;
  const more = (of: (line: GardenLine) => number) => Math.max(0, of(line) - (same === undefined ? 0 : of(same)));
  switch (line.kind) {
    case 'dripline': {
      const { emitterFlowLph, spacingM = 0 } = line;
      addTo(bag.driplines, { emitterFlowLph, spacingM, lengthM: more(({ lengthM = 0 }) => lengthM) }, 'lengthM');
      bag.tees += more(teesOf);
      bag.endCaps += more(endCapsOf);
      break;
    }
    case 'point':
    case 'spray': {
      const { emitterFlowLph } = line;
      const pieces = more(({ emitters }) => emitters);
      addTo(line.kind === 'point' ? bag.emitters : bag.sprays, { emitterFlowLph, pieces }, 'pieces');
      break;
    }
    case 'solid':
      bag.solidM += more(({ lengthM = 0 }) => lengthM);
  }
}

function isSameGoods(one: GardenLine, other: GardenLine): boolean {
  return (
    one.kind === other.kind &&
    isSameSize(one.emitterFlowLph, other.emitterFlowLph) &&
    isSameSize(one.spacingM ?? 0, other.spacingM ?? 0) &&
    isSameSize(one.insideDiameterMm, other.insideDiameterMm)
  );
}

const teesOf = ({ runs = 1, topology }: GardenLine): number => (topology === 'loop' ? 2 * runs : runs);
const endCapsOf = ({ runs = 1, topology }: GardenLine): number => (topology === 'loop' ? 0 : runs);

/** Of one size there is one row. */
function addTo<Row extends object>(rows: Row[], row: Row, amount: keyof Row): void {
  if (row[amount] === 0) return;
  const at = rows.findIndex((each) =>
    (Object.keys(row) as (keyof Row)[]).every((key) => key === amount || each[key] === row[key]),
  );
  const there = rows[at];
  if (there === undefined) rows.push(row);
  else rows[at] = { ...there, [amount]: Number(there[amount]) + Number(row[amount]) };
}
