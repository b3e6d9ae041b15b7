/** A sheet's contents before they are put on pages. */
import type { TemplateResult } from 'lit';
import type { DayNumber } from '../../../engine/calendar.ts';
import type { Format } from '../../../language/format/format.ts';
import type { Reader } from '../../../language/reader.ts';
import type { ReadyView } from '../plan-state.ts';
import type { PaperChoice } from './paper-choice.ts';

/** What stays together on a page. */
export interface PaperBlock {
  readonly content: TemplateResult;
  /** Stands above it, and again on a further page that begins with it. */
  readonly heading?: TemplateResult | undefined;
  /** Left out where it alone would begin a page. */
  readonly isOptional?: boolean;
}

export interface PaperLayout {
  /** Whether it has lower rows for where that saves a page. */
  readonly mayBeDense?: boolean;
  /** On the first page. */
  readonly title: TemplateResult;
  readonly blocks: readonly PaperBlock[];
}

export interface PaperContext {
  readonly view: ReadyView;
  readonly choice: PaperChoice;
  readonly today: DayNumber;
  readonly reader: Reader;
  readonly format: Format;
}
