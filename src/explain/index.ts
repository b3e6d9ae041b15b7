/** Why a number of a season is so, and what in it needs attention: ids, figures and units, without words. */
export type { Notice, NoticeKind, NoticeRemedy } from './notices/notice.ts';
export { noticesOf } from './notices/notices-of.ts';
export type { NoticeSeverity } from './notices/severity.ts';
export { type TracedCell, traceCell } from './trace/trace-cell.ts';
export type { TraceFigure, TraceLabel, TraceSource, TraceStep, TraceValue } from './trace/trace-step.ts';
