/** `(plan, edit) -> plan`: pure, sharing all that does not change, and the same object where nothing does. */

import { changeIssues } from '../reading/change-issues.ts';
import type { Fault } from '../reading/fault.ts';
import { faultsOf, foundOf } from '../reading/issue.ts';
import { WHOLE_PLAN } from '../reading/place.ts';
import { requireObject } from '../require-argument.ts';
import type { Plan } from '../schema/plan-schema.ts';
import { editDayRun } from './day-run-edits.ts';
import type { Edit } from './edit.ts';
import { requireParts } from './edit-parts.ts';
import { EditRefused } from './edit-refused.ts';
import { refuse } from './find.ts';
import { editGarden } from './garden-edits.ts';
import { editLine } from './line-edits.ts';
import { editPlanting } from './planting-edits.ts';
import { withoutReplacedAssumptions } from './replaced-assumptions.ts';
import { editWeather } from './weather-edits.ts';
import { editWeek } from './week-edits.ts';
import { editZone } from './zone-edits.ts';

/** `changed`: false where the plan already says what the edit asks for, and is the same object. */
export type EditResult =
  | { readonly ok: true; readonly plan: Plan; readonly changed: boolean }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The next plan of a valid plan. Throws `EditRefused` with every fault where the edit would make one that is not
 * valid, and a TypeError where the plan or the edit is none at all.
 */
export function applyEdit(plan: Plan, edit: Edit): Plan {
  requireObject('plan', plan, 'zones');
  requireObject('edit', edit);
  const next = edited(plan, edit);
  const issues = changeIssues(next, plan);
  if (issues.length > 0) throw new EditRefused(faultsOf(next, issues));
  return withoutReplacedAssumptions(plan, next, edit);
}

/** The same without a throw for what is refused. */
export function tryEdit(plan: Plan, edit: Edit): EditResult {
  try {
    const next = applyEdit(plan, edit);
    return { ok: true, plan: next, changed: next !== plan };
  } catch (error) {
    if (error instanceof EditRefused) return { ok: false, faults: error.faults };
    throw error;
  }
}

function edited(plan: Plan, edit: Edit): Plan {
  requireParts(edit);
  switch (edit.type) {
    case 'set-minutes':
    case 'set-minutes-run':
    case 'set-week-run':
    case 'close-week':
    case 'set-open-days':
    case 'set-note':
    case 'set-choice':
      return editWeek(plan, edit);
    case 'set-day-run':
      return editDayRun(plan, edit);
    case 'set-week-rain':
    case 'set-week-eto':
    case 'set-week-note':
    case 'set-meter':
    case 'set-day-weather':
    case 'change-day-weather':
    case 'set-forecast':
    case 'set-climate':
    case 'set-departure':
      return editWeather(plan, edit);
    case 'rename-plan':
    case 'set-plan-notes':
    case 'set-assumed':
    case 'set-season':
    case 'change-site':
    case 'change-supply':
    case 'set-what-if':
    case 'convert-units':
      return editGarden(plan, edit);
    case 'add-zone':
    case 'change-zone':
    case 'remove-zone':
    case 'move-zone':
      return editZone(plan, edit);
    case 'add-planting':
    case 'change-planting':
    case 'remove-planting':
    case 'move-planting':
      return editPlanting(plan, edit);
    case 'add-line':
    case 'replace-line':
    case 'remove-line':
      return editLine(plan, edit);
    case 'together':
      // Only what they come to is checked: on the way the plan may be anything.
      return edit.edits.reduce(edited, plan);
    default:
      return refuse({
        path: '',
        code: 'edit-unknown',
        values: { place: WHOLE_PLAN, found: foundOf((edit as { readonly type: unknown }).type) },
      });
  }
}
