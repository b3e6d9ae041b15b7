import type { Season } from '../../src/engine/season/season.ts';
import { isOfKind, type Notice, type NoticeFigures, type NoticeKind } from '../../src/explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../src/explain/notices/notice-kinds.ts';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';

type Figures = Readonly<Record<string, number | undefined>>;

/** A notice's figures by name, whatever its kind; undefined where it has no such figure. */
export function figuresOf({ figures }: Pick<Notice, 'figures'>): Figures {
  return figures;
}

/** A notice made for a test: severity and remedy are its kind's unless given, and only those figures that the test needs are there. */
export function noticeOf<Kind extends NoticeKind>(
  kind: Kind,
  { figures = {}, ...change }: Partial<Omit<Notice, 'kind' | 'figures'>> & { readonly figures?: Figures } = {},
): Notice<Kind> {
  const { severity, remedy } = NOTICE_KINDS[kind];
  return { severity, remedy, ...change, kind, figures: figures as NoticeFigures[Kind] };
}

/** A season's notices of one kind. */
export function noticesOfKind<Kind extends NoticeKind>(season: Season, kind: Kind): readonly Notice<Kind>[] {
  return noticesOf(season).filter((notice): notice is Notice<Kind> => isOfKind(notice, kind));
}
