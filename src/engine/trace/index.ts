/** Why a number of a season is so: every step with its formula, inputs, units and source. */
export { type CellPlace, traceCell } from './trace-cell.ts';
export type { TraceStep, TraceValue } from './trace-step.ts';
