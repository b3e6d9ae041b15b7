/** Keys of what a cell's menu offers and spreadsheets have a key for: its note, and why it is so. */
import { cellReference } from '../reference.ts';
import { editNote } from './note-box.ts';
import type { SeasonBinding } from './season-binding.ts';

const GROUP = 'runnel-cell';

export function bindCellKeys(binding: SeasonBinding): void {
  const { hot, setting } = binding;
  const context = hot.getShortcutManager().getContext('grid');
  if (context === undefined) return;
  const selected = () => {
    const { row, col } = hot.getSelectedRangeActive()?.highlight ?? {};
    return binding.cell(row ?? -1, col ?? -1);
  };
  context.addShortcuts(
    [
      {
        keys: [['Shift', 'F2']],
        runOnlyIf: () => selected()?.column.kind === 'week' && !setting.sheet.state.readOnly,
        callback: () => editNote(binding),
      },
      {
        keys: [['Alt', 'Enter']],
        runOnlyIf: () => setting.onWhy !== undefined && selected()?.column.kind === 'week',
        callback: () => {
          const cell = selected();
          if (cell !== undefined) setting.onWhy?.(cellReference(cell));
        },
      },
    ],
    { group: GROUP },
  );
  binding.onStop(() => context.removeShortcutsByGroup(GROUP));
}
