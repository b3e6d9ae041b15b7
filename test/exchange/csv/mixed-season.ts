import { computeSeason } from '../../../src/plan/compute-season.ts';
import { mixedGarden } from '../../support/small-plans.ts';

export const plan = mixedGarden();
export const season = computeSeason(plan);
