/** How much of what runs out stays where it is wanted. */
import * as v from 'valibot';
import { fields } from './fields.ts';
import { range } from './quantity.ts';

/** A figure that somebody measured or knows. */
export const TYPED_APPLICATIONS = [
  fields({
    kind: v.literal('efficiency'),
    value: range(0.05, 1),
  }),
  fields({
    kind: v.literal('distribution-uniformity'),
    value: range(0.05, 1),
  }),
] as const;
