/** What undo and redo are asked for with, in a page or in a grid. */
export type HistoryStep = 'undo' | 'redo';

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
