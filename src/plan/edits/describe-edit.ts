/** An edit in a short sentence, for undo labels and announcements: `Beds, week of 5 July: 45 minutes by hand`. */
import type { Plan } from '../schema/plan-schema.ts';
import type { Edit } from './edit.ts';
import { gardenEditInWords, weatherEditInWords } from './words/garden-edit-words.ts';
import { weekEditInWords } from './words/week-edit-words.ts';
import { lineEditInWords, plantingEditInWords, zoneEditInWords } from './words/zone-edit-words.ts';

/** `plan`: before the edit, so that what it takes out still has its name. Never throws: what is not there goes by its id. */
export function describeEdit(plan: Plan, edit: Edit): string {
  switch (edit.type) {
    case 'set-minutes':
    case 'set-minutes-run':
    case 'close-week':
    case 'set-open-days':
    case 'set-note':
    case 'set-choice':
      return weekEditInWords(plan, edit);
    case 'set-week-rain':
    case 'set-week-eto':
    case 'set-day-weather':
    case 'change-day-weather':
    case 'set-climate':
      return weatherEditInWords(plan, edit);
    case 'rename-plan':
    case 'set-plan-notes':
    case 'set-season':
    case 'change-site':
    case 'change-supply':
    case 'convert-units':
      return gardenEditInWords(plan, edit);
    case 'add-zone':
    case 'change-zone':
    case 'remove-zone':
    case 'move-zone':
      return zoneEditInWords(plan, edit);
    case 'add-planting':
    case 'change-planting':
    case 'remove-planting':
    case 'move-planting':
      return plantingEditInWords(plan, edit);
    case 'add-line':
    case 'replace-line':
    case 'remove-line':
      return lineEditInWords(plan, edit);
    case 'together':
      return edit.label;
  }
}
