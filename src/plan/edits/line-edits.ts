/** Edits of a planting's lines, which stand in the order of their first days. */
import type { Place } from '../reading/place.ts';
import type { Plan, PlanLine, PlanPlanting } from '../schema/plan-schema.ts';
import { shortText } from '../words/short-text.ts';
import { changed, insertedAt, removedAt, replacedAt } from './change.ts';
import type { LineEdit } from './edit.ts';
import { refuse, withPlanting, zoneIn } from './find.ts';

export function editLine(plan: Plan, edit: LineEdit): Plan {
  return withPlanting(plan, edit, (planting) => changed(planting, { lines: linesAfter(plan, planting, edit) }));
}

function linesAfter(plan: Plan, planting: PlanPlanting, edit: LineEdit): readonly PlanLine[] {
  const { lines } = planting;
  if (edit.type === 'add-line') return insertedAt(lines, edit.line, indexFor(edit.line, lines));
  if (!(Number.isInteger(edit.index) && edit.index >= 0 && edit.index < lines.length)) {
    const zone = { name: shortText(zoneIn(plan, edit.zone).name) };
    const place: Place = {
      part: 'line',
      zone,
      planting: { name: shortText(planting.name) },
      line: Number(edit.index) + 1,
      fields: [],
    };
    return refuse({
      path: 'zones',
      code: 'line-unknown',
      values: { lines: lines.length, place, found: undefined },
    });
  }
  return edit.type === 'remove-line' ? removedAt(lines, edit.index) : replacedAt(lines, edit.index, edit.line);
}

/** Before the first line that lies from a later day; a line without a day is there from the first. */
function indexFor({ from = '' }: PlanLine, lines: readonly PlanLine[]): number {
  const later = lines.findIndex((line) => (line.from ?? '') > from);
  return later < 0 ? lines.length : later;
}
