/** The plan document in whichever unit system it declares. */
import * as v from 'valibot';
import { PLAN_SCHEMAS } from './plan-schema.ts';

export const planSchema = v.variant('units', [PLAN_SCHEMAS.us, PLAN_SCHEMAS.metric]);
