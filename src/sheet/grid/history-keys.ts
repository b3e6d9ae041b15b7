/** Undo and redo belong to the plan, not to one grid: the keys ask for them. */
import type { SeasonBinding } from './season-binding.ts';

const GROUP = 'runnel-history';

export function bindHistoryKeys(binding: SeasonBinding): void {
  const context = binding.hot.getShortcutManager().getContext('grid');
  if (binding.setting.onHistory === undefined || context === undefined) return;
  context.addShortcuts(
    [
      { keys: [['Control/Meta', 'Z']], callback: () => binding.step('undo') },
      {
        keys: [
          ['Control/Meta', 'Y'],
          ['Control/Meta', 'Shift', 'Z'],
        ],
        callback: () => binding.step('redo'),
      },
    ],
    { group: GROUP },
  );
  binding.onStop(() => context.removeShortcutsByGroup(GROUP));
}
