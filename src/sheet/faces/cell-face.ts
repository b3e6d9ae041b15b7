/** What one cell shows and says: text only, so that a name is never read as markup. */

export interface FigureFace {
  readonly kind: 'figure';
  /** Read first; empty on paper. */
  readonly main: string;
  /** Small beneath it; empty where only one figure is shown. */
  readonly lines: readonly string[];
  readonly className: string;
  /** Everything in words. */
  readonly label: string;
  /** Height of the bar behind the figure, as a share of the tallest. */
  readonly bar?: number | undefined;
}

export interface NameFace {
  readonly kind: 'name';
  readonly name: string;
  readonly detail: string;
  readonly className: string;
  /** Whether the plantings show; undefined where nothing folds out. */
  readonly isOpen?: boolean | undefined;
}

export type CellFace = FigureFace | NameFace;

/** A class of the sheet's style, with its prefix. */
export function classNames(...names: readonly (string | false | undefined)[]): string {
  return names
    .filter((name) => name !== false && name !== undefined)
    .map((name) => `runnel-${name}`)
    .join(' ');
}
