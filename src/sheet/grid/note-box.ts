/** A small form beside a cell for its week's note. */
import { type SheetActionsWords, sheetActionsWords } from '../../language/en/sheet-actions.ts';
import { DraftEvent, WAITING_FIELD } from '../draft-event.ts';
import { noteWeek } from '../entry/cell-actions.ts';
import { positionBeside } from './popup-position.ts';
import type { SeasonBinding } from './season-binding.ts';

/** Opens the note of the selected cell's week. Escape leaves it as it was. */
export function editNote(binding: SeasonBinding): void {
  const { hot, setting } = binding;
  const at = hot.getSelectedRangeActive()?.highlight;
  const cell = at && binding.cell(at.row ?? -1, at.col ?? -1);
  if (cell === undefined || cell.column.kind !== 'week' || !('zone' in cell.row)) return;
  const { sheet } = setting;
  // By its day: the season may move while somebody writes.
  const day = sheet.weekDay(cell.column.week);
  const before = cell.row.zone.zone.choices.get(cell.column.week)?.note ?? '';
  const words = sheetActionsWords(sheet.reader.language).note;
  const form = noteForm(hot.rootDocument, words, sheet.nameOf(cell), before);
  const { textarea } = form;
  const forget = binding.onStop(() => form.root.remove());
  const close = () => {
    forget();
    form.root.remove();
    hot.rootElement.dispatchEvent(new DraftEvent(textarea));
    hot.listen();
    hot.getFocusManager().focusOnHighlightedCell();
  };
  // What is refused stays in the form.
  const save = () => {
    const edit = noteWeek(cell, textarea.value, () => day);
    const why = binding.edit(edit, [cell]);
    if (why === undefined) close();
    else binding.callout.show(at?.row ?? 0, at?.col ?? 0, why);
  };
  textarea.addEventListener('input', () => hot.rootElement.dispatchEvent(new DraftEvent(textarea)));
  form.save.addEventListener('click', save);
  form.cancel.addEventListener('click', close);
  form.root.addEventListener('keydown', (event) => {
    // What is typed here is the note's, not the grid's.
    event.stopPropagation();
    if (event.key === 'Escape') close();
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) save();
  });
  hot.rootPortalElement.append(form.root);
  positionBeside(form.root, hot.getCell(at?.row ?? 0, at?.col ?? 0, true) ?? hot.rootElement);
  hot.unlisten();
  textarea.focus();
}

function noteForm(page: Document, words: SheetActionsWords['note'], cell: string, note: string) {
  const title = words.title(cell);
  const root = page.createElement('div');
  root.className = 'runnel-note';
  root.setAttribute('role', 'dialog');
  root.setAttribute('aria-label', title);
  const label = page.createElement('label');
  label.textContent = title;
  const textarea = page.createElement('textarea');
  textarea.rows = 3;
  textarea.maxLength = 10_000;
  textarea.value = note;
  textarea.toggleAttribute(WAITING_FIELD, true);
  label.append(textarea);
  const button = (text: string) => {
    const made = page.createElement('button');
    made.type = 'button';
    made.textContent = text;
    return made;
  };
  const save = button(words.save);
  const cancel = button(words.cancel);
  root.append(label, save, cancel);
  return { root, textarea, save, cancel };
}
