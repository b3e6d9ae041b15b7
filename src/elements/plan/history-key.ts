import type { HistoryStep } from '../shared/events/history-event.ts';

interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** The step that a key asks for: Ctrl+Z, Ctrl+Shift+Z, Ctrl+Y, or the same with Command. */
export function historyKey({ key, ctrlKey, metaKey, shiftKey, altKey }: Key): HistoryStep | undefined {
  if (ctrlKey === metaKey || altKey) return undefined;
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return shiftKey ? undefined : 'redo';
    default:
      return undefined;
  }
}

/** Whether a key goes to a field in which a person types, which takes its own text back. */
export function isTyping(target: EventTarget | undefined): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement) return TEXT_FIELDS.has(target.type);
  return target instanceof HTMLElement && target.isContentEditable;
}

const TEXT_FIELDS = new Set([
  'text',
  'search',
  'number',
  'email',
  'url',
  'tel',
  'password',
  'date',
  'time',
  'week',
  'month',
]);
