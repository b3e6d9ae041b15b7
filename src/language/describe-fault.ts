/** A fault of a plan or of an edit, in the reader's language. */
import type { Fault } from '../plan/reading/fault.ts';
import type { Reader } from './reader.ts';

export interface FaultText {
  /** The place: `Zone “Beds”, planting “Tomatoes”: area`. */
  readonly where: string;
  /** What stands there, shortened. */
  readonly value: string;
  /** What was expected there: `a number from 0.1 to 1,000,000 sq ft`. */
  readonly expected: string;
}

export function describeFault({ where, value, expected }: Fault, _reader: Reader): FaultText {
  return { where, value, expected };
}
