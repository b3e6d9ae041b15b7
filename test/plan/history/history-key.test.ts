import { expect, it } from 'vitest';
import { historyKey } from '../../../src/plan/history/history-key.ts';

const keys = (pressed: string) => {
  const parts = pressed.split('+');
  return {
    key: parts.at(-1) ?? '',
    ctrlKey: parts.includes('Ctrl'),
    metaKey: parts.includes('Meta'),
    shiftKey: parts.includes('Shift'),
    altKey: parts.includes('Alt'),
  };
};

it.each([
  ['Ctrl+z', 'undo'],
  ['Ctrl+Z', 'undo'],
  ['Meta+z', 'undo'],
  ['Ctrl+Shift+Z', 'redo'],
  ['Meta+Shift+z', 'redo'],
  ['Ctrl+y', 'redo'],
])('%s asks for %s', (pressed, step) => {
  expect(historyKey(keys(pressed))).toBe(step);
});

it.each(['z', 'Shift+Z', 'Ctrl+Alt+z', 'Ctrl+Meta+z', 'Ctrl+Shift+Y', 'Ctrl+a'])('%s asks for nothing', (pressed) => {
  expect(historyKey(keys(pressed))).toBeUndefined();
});
