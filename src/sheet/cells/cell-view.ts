/** What one cell shows: text only, so that a name is never read as markup. */

export interface FigureView {
  readonly kind: 'figure';
  /** Read first; empty on paper. */
  readonly main: string;
  /** Small beneath it, on one line: at its end, and before that at its start. Empty where only one figure is shown. */
  readonly lines: readonly string[];
  readonly className: string;
}

export interface NameView {
  readonly kind: 'name';
  readonly name: string;
  readonly detail: string;
  readonly className: string;
  /** Whether the plantings show; undefined where nothing folds out. */
  readonly isOpen?: boolean | undefined;
  /** Of the button that folds them out. */
  readonly foldLabel?: string | undefined;
}

export type CellView = FigureView | NameView;
