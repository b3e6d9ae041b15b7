/** What needs attention in a season, worst first, as data without words. */
export type { Notice, NoticeKind, NoticeRemedy, NoticeSeverity } from './notice.ts';
export { noticesOf } from './notices-of.ts';
