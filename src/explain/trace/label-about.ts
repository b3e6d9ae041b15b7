/** What labels and steps are told apart by. */
import type { DayNumber } from '../../engine/calendar.ts';

export interface OfDay {
  readonly day: DayNumber;
}

/** 0 is January. */
export interface OfMonth {
  readonly month: number;
}

/** What lines wet of a planting's ground, or the rest of it. */
export type GroundPart = 'wetted' | 'dry';

export interface OfPart {
  readonly part: GroundPart;
}

/** `line`: its number among the planting's, from 1, where the week has more than one; `from`: where its flow changes within the week. */
export interface OfLine {
  readonly line?: number;
  readonly from?: DayNumber;
}

/** Its number among the planting's, from 1. */
export interface NumberedLine {
  readonly line: number;
}

export interface Named {
  readonly name: string;
}
