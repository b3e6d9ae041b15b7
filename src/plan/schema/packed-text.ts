/** Figures of days in a row, as text. */
import * as v from 'valibot';
import { MOST_PACKED_CHARACTERS, PACKED_PATTERN } from '../packed-days.ts';

/** Its figures are checked with the relations, which name the one that is wrong; the pattern is for those who read the JSON Schema alone. */
export const packedText = v.pipe(
  v.string(),
  v.minLength(1),
  v.maxLength(MOST_PACKED_CHARACTERS),
  v.metadata({ pattern: PACKED_PATTERN }),
);
