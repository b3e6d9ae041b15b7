/** Keys that reach past the cells: undo and redo, which belong to the plan, and Tab, which leaves the grid. */
import { type HistoryStep, historyKey } from '../../plan/history/history-key.ts';
import type { SeasonBinding } from './season-binding.ts';

const GROUP = 'runnel-history';

/** Asks the plan for undo and redo: one grid has none of its own. */
export function bindHistoryKeys(binding: SeasonBinding): void {
  const { rootElement } = binding.hot;
  const context = binding.hot.getShortcutManager().getContext('grid');
  if (binding.setting.onHistory === undefined || context === undefined) return;
  const taken = new WeakSet<Event>();
  // Before an element around the grid takes the key: then nothing would be announced here.
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

/**
 * Lets Tab leave the grid. A cell stands outside the tab order, and from such an element Chromium goes back to the first
 * control of the slot that the grid is in, when nothing behind the grid in that slot takes the focus. So the cell joins
 * the order for the moment in which the browser looks for what comes next.
 */
export function letTabOut(binding: SeasonBinding): void {
  const { rootWindow, rootDocument, rootElement } = binding.hot;
  const onKeydown = (event: KeyboardEvent) => {
    const focused = rootDocument.activeElement;
    if (event.key !== 'Tab' || event.defaultPrevented || focused === null || !rootElement.contains(focused)) return;
    focused.setAttribute('tabindex', '0');
    rootWindow.setTimeout(() => focused.setAttribute('tabindex', '-1'));
  };
  // On the window, where it comes after Handsontable's own handling.
  rootWindow.addEventListener('keydown', onKeydown);
  binding.onStop(() => rootWindow.removeEventListener('keydown', onKeydown));
}
