import type { Plan, PlanChoice } from '../../schema/plan-schema.ts';
import { shortText } from '../../words/short-text.ts';
import type { WeekEdit } from '../edit.ts';
import { cellName, counted, listed, plantingName } from './names.ts';

export function weekEditInWords(plan: Plan, edit: WeekEdit): string {
  return `${cellName(plan, edit)}: ${done(plan, edit)}`;
}

function done(plan: Plan, edit: WeekEdit): string {
  switch (edit.type) {
    case 'set-minutes':
      return edit.minutes === undefined ? 'minutes as calculated' : `${counted(edit.minutes, 'minute')} by hand`;
    case 'set-minutes-run':
      return edit.minutes === undefined ? 'minutes run taken out' : `${counted(edit.minutes, 'minute')} run`;
    case 'close-week':
      return edit.closed ? 'closed' : 'open again';
    case 'set-open-days': {
      const name = plantingName(plan, edit.planting);
      return edit.days === undefined ? `${name} open as calculated` : `${name} open on ${counted(edit.days, 'day')}`;
    }
    case 'set-note':
      return edit.note === undefined || edit.note === '' ? 'note taken out' : `note “${shortText(edit.note)}”`;
    case 'set-choice':
      return choiceInWords(edit.choice);
  }
}

function choiceInWords(choice: PlanChoice = {}): string {
  const words = [
    choice.closed ? 'closed' : '',
    choice.minutes === undefined ? '' : `${counted(choice.minutes, 'minute')} by hand`,
    choice.openDays === undefined ? '' : 'open days by hand',
    choice.note === undefined ? '' : 'a note',
  ].filter((word) => word !== '');
  return words.length === 0 ? 'all as calculated' : listed(words);
}
