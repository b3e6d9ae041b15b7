/** What becomes of something typed, pasted or dragged into a cell: an edit of the plan, nothing, or a refusal in words. */
import type { Season } from '../../engine/season/season.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { CellContext } from '../cells/cell-context.ts';

export type Entry =
  /** `remark` is a sentence on what became of the entry, where that is not plain from the cell. */
  | { readonly kind: 'edit'; readonly edit: Edit; readonly remark?: string | undefined }
  /** It says what the plan says already. */
  | { readonly kind: 'same' }
  /** `why` is one or more sentences; the plan stays as it is. */
  | { readonly kind: 'refused'; readonly why: string };

export interface EntryContext extends CellContext {
  readonly plan: Plan;
  readonly season: Season;
  readonly readOnly: boolean;
}

export function refused(why: string): Entry {
  return { kind: 'refused', why };
}
