/** What becomes of something typed, pasted or dragged into a cell: an edit of the plan, nothing, or a refusal in words. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import type { EntryWords } from '../../language/en/entry.ts';
import type { Unread } from '../../language/format/parse-number.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { CellContext } from '../cells/cell-context.ts';

export type Entry =
  | EditEntry
  /** It says what the plan says already. */
  | { readonly kind: 'same'; readonly remark?: string | undefined }
  | Refused;

/** `remark` is a sentence on what became of the entry, where that is not plain from the cell. */
export interface EditEntry {
  readonly kind: 'edit';
  readonly edit: Edit;
  readonly remark?: string | undefined;
}

/** The plan stays as it is. */
export interface Refused {
  readonly kind: 'refused';
  readonly code: RefusalCode;
  /** One or more sentences. */
  readonly why: string;
}

export type RefusalCode = Unread['code'] | keyof EntryWords['fixed'] | keyof EntryWords['refused'] | 'own-days';

export interface EntryContext extends CellContext {
  readonly plan: Plan;
  readonly season: Season;
  readonly readOnly: boolean;
  /** Left out where nobody knows it. */
  readonly today?: DayNumber | undefined;
}

export function refused(code: RefusalCode, why: string): Refused {
  return { kind: 'refused', code, why };
}
