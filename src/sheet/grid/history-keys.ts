/** Undo and redo belong to the plan, not to one grid: the keys ask for them. */
import { type HistoryStep, historyKey } from '../../plan/history/history-key.ts';
import type { SeasonBinding } from './season-binding.ts';

const GROUP = 'runnel-history';

export function bindHistoryKeys(binding: SeasonBinding): void {
  const { rootElement } = binding.hot;
  const context = binding.hot.getShortcutManager().getContext('grid');
  if (binding.setting.onHistory === undefined || context === undefined) return;
  const taken = new WeakSet<Event>();
  // Before an element around the grid takes the key for its own, of which nothing would be said here.
  const onKeydown = (event: KeyboardEvent) => {
    const step = historyKey(event);
    if (step === undefined || event.defaultPrevented || event.target instanceof HTMLTextAreaElement) return;
    event.preventDefault();
    taken.add(event);
    binding.step(step);
  };
  rootElement.addEventListener('keydown', onKeydown);
  // The grid also hears keys while the page itself has the keyboard.
  const onShortcut = (step: HistoryStep) => (event: Event) => {
    if (!taken.has(event)) binding.step(step);
  };
  context.addShortcuts(
    [
      { keys: [['Control/Meta', 'Z']], callback: onShortcut('undo') },
      {
        keys: [
          ['Control/Meta', 'Y'],
          ['Control/Meta', 'Shift', 'Z'],
        ],
        callback: onShortcut('redo'),
      },
    ],
    { group: GROUP },
  );
  binding.onStop(() => {
    rootElement.removeEventListener('keydown', onKeydown);
    context.removeShortcutsByGroup(GROUP);
  });
}
