/** Changes tried together: what the plan would be, and what it would come to beside the plan as it is. */
import type { Season } from '../../engine/season/season.ts';
import { toSi } from '../../engine/units.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanWhatIf } from '../../plan/schema/plan-schema.ts';
import { type ShoppingList, shoppingList } from './shopping-list.ts';

/** An edit of a kind that a plan keeps beside itself. */
export type TriedEdit = PlanWhatIf['edits'][number];

export interface Tried {
  readonly plan: Plan;
  readonly season: Season;
  readonly shopping: ShoppingList;
}

/** Undefined where the plan refuses them: it has changed since, and they no longer fit. */
export function tryTogether(plan: Plan, season: Season, edits: readonly Edit[]): Tried | undefined {
  const result = tryEdit(plan, { type: 'together', edits });
  if (!result.ok) return undefined;
  const next = result.plan;
  return { plan: next, season: computeSeason(next, season), shopping: shoppingList(plan, next) };
}

const KEPT: { readonly [Type in TriedEdit['type']]: true } = {
  'change-planting': true,
  'change-zone': true,
  'replace-line': true,
  'move-planting': true,
  'add-zone': true,
  'close-week': true,
  'set-minutes-run': true,
  'set-week-run': true,
  'set-departure': true,
};

/** One after another, as the plan keeps them; undefined where one is of a kind that it does not keep. */
export function editsToKeep(edits: readonly Edit[]): readonly TriedEdit[] | undefined {
  const flat = edits.flatMap(flattened);
  return flat.every(isKept) ? flat : undefined;
}

function flattened(edit: Edit): readonly Edit[] {
  return edit.type === 'together' ? edit.edits.flatMap(flattened) : [edit];
}

const isKept = (edit: Edit): edit is Edit & TriedEdit => Object.hasOwn(KEPT, edit.type);

export interface Money {
  readonly amount: number;
  /** ISO 4217. */
  readonly currency: string;
}

/** What so much water costs; undefined where the plan has no price of water. */
export function priceOf(litres: number, { supply, units }: Plan): Money | undefined {
  const price = supply?.price;
  if (price === undefined) return undefined;
  return { amount: (litres / toSi(price.per, 'volume', units)) * price.amount, currency: price.currency };
}
