/** Why a number of a season is so, and what in it needs attention: ids, figures and units, without words. */
export { seasonDayTiming } from '../engine/supply/season-supply.ts';
export type { Notice, NoticeKind, NoticeRemedy } from './notices/notice.ts';
export { noticesOf } from './notices/notices-of.ts';
export type { NoticeSeverity } from './notices/severity.ts';
export {
  type SeasonReview,
  type ShortCause,
  seasonReview,
  type WorstWeek,
  type ZoneReview,
} from './review/season-review.ts';
export { type TracedCell, traceCell } from './trace/trace-cell.ts';
export type { TraceFigure, TraceLabel, TraceSource, TraceStep, TraceValue } from './trace/trace-step.ts';
export { type WateringTimes, wateringTimes } from './watering-times.ts';
