/** Edits of a planting's lines, which stand in the order of their first days. */
import type { Plan, PlanLine, PlanPlanting } from '../../schema/plan-schema.ts';
import { changed, insertedAt, removedAt, replacedAt } from '../change.ts';
import type { LineEdit } from '../edit.ts';
import { refuse, withPlanting } from '../find.ts';

export function editLine(plan: Plan, edit: LineEdit): Plan {
  return withPlanting(plan, edit, (planting) => changed(planting, { lines: linesAfter(planting, edit) }));
}

function linesAfter(planting: PlanPlanting, edit: LineEdit): readonly PlanLine[] {
  const { lines } = planting;
  if (edit.type === 'add-line') return insertedAt(lines, edit.line, placeOf(edit.line, lines));
  if (!(Number.isInteger(edit.index) && edit.index >= 0 && edit.index < lines.length)) {
    return refuse(
      'zones',
      `Planting “${planting.name}”: line ${Number(edit.index) + 1}`,
      `one of its lines, 1 to ${lines.length}`,
    );
  }
  return edit.type === 'remove-line' ? removedAt(lines, edit.index) : replacedAt(lines, edit.index, edit.line);
}

/** Before the first line that lies from a later day; a line without a day is there from the first. */
function placeOf({ from = '' }: PlanLine, lines: readonly PlanLine[]): number {
  const later = lines.findIndex((line) => (line.from ?? '') > from);
  return later < 0 ? lines.length : later;
}
