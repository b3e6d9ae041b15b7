import { findCrop } from '../../engine/plants/find-crop.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlanNeed } from '../../plan/schema/plan-schema.ts';

/** The plant that brought the class, or the crop; empty where neither was named. */
export function plantNameOf(need: PlanNeed, { language }: Reader): string {
  if (need.kind === 'class') return need.plant?.name ?? '';
  return need.kind === 'crop' ? nameIn(findCrop(need.crop).name, language) : '';
}
