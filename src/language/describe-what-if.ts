/** Changes tried beside the plan in the reader's language: each change, and what to buy for them. */
import { tryEdit } from '../plan/edits/apply-edit.ts';
import type { Edit } from '../plan/edits/edit.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { ShoppingList } from '../remedies/mix/shopping-list.ts';
import { describeEdit } from './describe-edit.ts';
import { mixWords } from './en/mix.ts';
import { whatIfsWords } from './en/what-ifs.ts';
import { formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

/** Records of weeks that a new zone takes along go without saying. */
const SAID_BY_OTHERS: ReadonlySet<Edit['type']> = new Set(['close-week', 'set-minutes-run', 'set-week-run']);

/** A sentence a change, each of the plan that those before it have made. */
export function describeTried(plan: Plan, edits: readonly Edit[], reader: Reader): readonly string[] {
  const said: string[] = [];
  let now = plan;
  for (const edit of edits.flatMap(oneByOne)) {
    if (!SAID_BY_OTHERS.has(edit.type)) said.push(describeChange(now, edit, reader));
    const result = tryEdit(now, edit);
    if (result.ok) now = result.plan;
  }
  return said;
}

/** A batch that has a sentence of its own stays one. */
function oneByOne(edit: Edit): readonly Edit[] {
  return edit.type === 'together' && edit.action === undefined ? edit.edits.flatMap(oneByOne) : [edit];
}

function describeChange(plan: Plan, edit: Edit, reader: Reader): string {
  if (edit.type !== 'change-planting' || edit.change.shutOff !== true) return describeEdit(plan, edit, reader);
  const zone = plan.zones.find(({ id }) => id === edit.zone);
  const name = zone?.plantings.find(({ id }) => id === edit.planting)?.name ?? edit.planting;
  return mixWords(reader.language).remedies.change['shut-off'](isolated(name));
}

/** A line a kind and size: `36 ft of dripline, 0.6 gph every 12 in`. */
export function describeShopping(list: ShoppingList, reader: Reader): readonly string[] {
  const words = whatIfsWords(reader.language);
  const { goods } = mixWords(reader.language).remedies;
  const format = formatFor(reader);
  return [
    ...list.driplines.map(({ lengthM, emitterFlowLph, spacingM }) =>
      words.dripline(format, lengthM, emitterFlowLph, spacingM),
    ),
    ...list.emitters.map(({ pieces, emitterFlowLph }) => words.emitters(format, pieces, emitterFlowLph)),
    ...list.sprays.map(({ pieces, emitterFlowLph }) => words.sprays(format, pieces, emitterFlowLph)),
    ...(list.solidM > 0 ? [words.solid(format, list.solidM)] : []),
    ...(['shutOffs', 'valves'] as const)
      .filter((kind) => list[kind] > 0)
      .map((kind) => goods[kind](format, list[kind])),
    ...(['tees', 'endCaps'] as const).filter((kind) => list[kind] > 0).map((kind) => words[kind](format, list[kind])),
  ];
}
