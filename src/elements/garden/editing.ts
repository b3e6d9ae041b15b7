/** What the parts of the garden's editor share. */
import type { Season } from '../../engine/season/season.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { FieldKeeper } from './field-keeper.ts';

export interface Editing {
  readonly plan: Plan;
  readonly season: Season;
  readonly keeper: FieldKeeper;
  readonly reading: Reader;
  /** Whether a zone's or planting's form is unfolded. */
  readonly isOpen: (id: string) => boolean;
  readonly toggle: (id: string, open: boolean) => void;
}
