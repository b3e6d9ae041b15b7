/** The parts without which an edit says nothing: plain JavaScript can leave one out. */
import { foundOf } from '../reading/issue.ts';
import { recordIn } from '../reading/loose.ts';
import { WHOLE_PLAN } from '../reading/place.ts';
import type { Edit } from './edit.ts';
import { refuse } from './find.ts';

/** By kind of edit: its field that has to be a group of fields, or a list. */
const PARTS: { readonly [Type in Edit['type']]?: string } = {
  'change-day-weather': 'change',
  'change-site': 'change',
  'change-supply': 'change',
  'set-season': 'season',
  'add-zone': 'zone',
  'change-zone': 'change',
  'add-planting': 'planting',
  'change-planting': 'change',
  'add-line': 'line',
  'replace-line': 'line',
  together: 'edits',
};

/** Refuses an edit that is no group of fields, and one whose part is missing or is something else. */
export function requireParts(edit: Edit): void {
  const fields =
    recordIn(edit) ?? refuse({ path: '', code: 'edit-unknown', values: { place: WHOLE_PLAN, found: foundOf(edit) } });
  const field = Object.hasOwn(PARTS, edit.type) ? PARTS[edit.type] : undefined;
  if (field === undefined) return;
  const part = fields[field];
  const isThere = edit.type === 'together' ? Array.isArray(part) : recordIn(part) !== undefined;
  if (!isThere)
    refuse({ path: '', code: 'edit-incomplete', values: { field, place: WHOLE_PLAN, found: foundOf(part) } });
}
