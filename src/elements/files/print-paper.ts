/** The choice of a sheet of paper, with the part of the page that shows it: fetched when somebody prints. */
import { dayNumber } from '../../engine/calendar.ts';
import { nearestWeek } from '../../engine/season/week-span.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import type { PaperKind } from '../shared/paper/paper-choice.ts';
import type { ReadyView } from '../shared/plan-state.ts';
import { todayOf } from '../shared/today-here.ts';
import type { FilesHost } from './files-host.ts';

export async function printPaper(host: FilesHost, view: ReadyView, kind: PaperKind): Promise<void> {
  const part = await fetchPart(() => import('../shared/paper/paper-dialog.ts'));
  if (part === undefined) return;
  const today = todayOf(host.today);
  await part.openPaper(host.renderRoot as ShadowRoot, view, {
    kind,
    week: view.selection.week ?? nearestWeek(view.season.garden.span, dayNumber(today)),
    today,
    zone: view.selection.zone,
  });
}
