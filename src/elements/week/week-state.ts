/** Whether a week is closed, or is still to be. */
import { html, nothing, type TemplateResult } from 'lit';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { weekWords } from '../../language/en/week.ts';
import { readingOf } from '../shared/plan-state.ts';
import { isClosed, openZones, type WeekContext } from './week-model.ts';

/** It has begun, its water is known, and of some zone nobody has said what was run. */
export function isToBeClosed(context: WeekContext): boolean {
  const { view, week, firstDay, today } = context;
  if (firstDay > today || weeksWithoutClimate(view.season).includes(week)) return false;
  return openZones(context).some((zone) => !isClosed(context, zone));
}

/** Of a week that is closed, and of one that is past and taken as planned. */
export function weekState(context: WeekContext): TemplateResult | typeof nothing {
  const { view, firstDay, today } = context;
  const say = weekWords(readingOf(view).language).table;
  const open = openZones(context);
  if (open.length > 0 && open.every((zone) => isClosed(context, zone))) {
    return html`<p class="state">${say.closedWeek}</p>`;
  }
  return firstDay + 7 <= today ? html`<p class="assumed quiet">${say.assumed}</p>` : nothing;
}
