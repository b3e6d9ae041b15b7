/** Undo and redo belong to the plan, not to one grid: the keys ask for them. */
import type { SeasonBinding } from './season-binding.ts';

const GROUP = 'runnel-history';

export function bindHistoryKeys(binding: SeasonBinding): void {
  const { hot, setting } = binding;
  const { onHistory } = setting;
  const context = hot.getShortcutManager().getContext('grid');
  if (onHistory === undefined || context === undefined) return;
  context.addShortcuts(
    [
      { keys: [['Control/Meta', 'Z']], callback: () => onHistory('undo') },
      {
        keys: [
          ['Control/Meta', 'Y'],
          ['Control/Meta', 'Shift', 'Z'],
        ],
        callback: () => onHistory('redo'),
      },
    ],
    { group: GROUP },
  );
  binding.onStop(() => context.removeShortcutsByGroup(GROUP));
}
