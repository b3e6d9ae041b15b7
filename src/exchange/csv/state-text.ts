import type { State } from '../../engine/season/season.ts';
import { sheetWords } from '../../language/en/sheet.ts';
import type { Reader } from '../../language/reader.ts';

/** The state of a zone's or a planting's week in a word; empty where nothing is in the ground. */
export const stateText = (state: State, { language }: Reader): string =>
  state === 'off' ? '' : sheetWords(language).states[state];
