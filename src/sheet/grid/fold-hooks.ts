/** The button that folds a zone's plantings out, for pointer and touch; on the keyboard Enter on the name does it. */
import type { Events } from 'handsontable/base';
import { FOLD_CLASS } from './render-cell.ts';
import type { SeasonBinding } from './season-binding.ts';

export function foldHooks(binding: SeasonBinding): Partial<Events> {
  const { hot, setting } = binding;
  const onClick = (event: Event) => {
    const button = (event.target as Element).closest(`.${FOLD_CLASS}`);
    const td = button?.closest('td');
    if (!td) return;
    const at = hot.getCoords(td);
    const row = at === null || at.row === null ? undefined : binding.row(at.row);
    if (row?.kind === 'zone') setting.sheet.setOpen(row.zone.zone.id, row.isOpen !== true);
  };
  hot.rootElement.addEventListener('click', onClick);
  binding.onStop(() => hot.rootElement.removeEventListener('click', onClick));
  return {};
}
