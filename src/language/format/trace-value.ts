import type { TraceValue } from '../../explain/trace/trace-step.ts';
import type { Reader } from '../reader.ts';
import { formatNumber } from './number.ts';
import { formatQuantity, withUnit } from './quantity.ts';

/** Decimals of a number whose step does not say how many are worth showing. */
const DIGITS = 2;

/** A value of a trace in the reader's units and language; a word stays as it is. */
export function formatTraceValue({ value, quantity, unit, digits }: TraceValue, reading: Reader): string {
  if (typeof value === 'string') return value;
  if (quantity !== undefined) return formatQuantity(value, quantity, reading);
  return withUnit(formatNumber(value, reading.locale, digits ?? DIGITS), unit ?? '');
}
