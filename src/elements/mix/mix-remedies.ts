/** The ranked list of what would help, with the zone as it is at its foot. */
import { html, nothing, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatDays } from '../../language/format/dates.ts';
import { formatNumber } from '../../language/format/number.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import { formatWeekdays } from '../../language/format/weekdays.ts';
import type { Reader } from '../../language/reader.ts';
import { leastWorth } from '../../remedies/mix/rank.ts';
import type { MixRemedy, ShutOffCalendar } from '../../remedies/mix/remedy.ts';
import type { MixRemedies } from '../../remedies/mix/search.ts';
import { cautionItems } from '../shared/cautions-template.ts';
import { mixWords, remedyWords } from '../shared/words/mix-words.ts';
import { goodsInWords, type NameOf, promiseInWords, remedyInWords } from './change-words.ts';

/** More than these are folded away. */
const MOST_IN_SIGHT = 4;

export interface RemedyList {
  readonly found: MixRemedies;
  readonly nameOf: NameOf;
  readonly span: SeasonSpan;
  readonly reading: Reader;
  /** Whether the best alone are drawn yet. */
  readonly isBegun: boolean;
  /** Left out where the plan can only be looked at. */
  readonly apply: ((remedy: MixRemedy) => void) | undefined;
}

export function remedyList(list: RemedyList): TemplateResult {
  const { found, reading } = list;
  if (found.areAlike) return html`<p>${remedyWords.alike}</p>`;
  const tried = formatCount(found.tried, remedyWords.changes, reading.locale);
  const { remedies } = found;
  const items = (some: readonly MixRemedy[]) => some.map((remedy) => remedyItem(remedy, list));
  return html`<p class="quiet">
      ${remedies.length === 0 ? remedyWords.none(tried) : remedyWords.found(formatCount(remedies.length, remedyWords.changes, reading.locale), tried)}
    </p>
    <ol class="remedies">${items(remedies.slice(0, MOST_IN_SIGHT))}</ol>
    ${list.isBegun ? nothing : restOfList(list, items(remedies.slice(MOST_IN_SIGHT)))}`;
}

function restOfList(
  { found: { remedies, before }, reading }: RemedyList,
  rest: readonly TemplateResult[],
): TemplateResult {
  return html`${
    rest.length > 0
      ? html`<details class="more">
            <summary>${remedyWords.more(rest.length)}</summary>
            <ol class="remedies" start=${MOST_IN_SIGHT + 1}>${rest}</ol>
          </details>`
      : nothing
  }
    <div class="leave">
      <h4>${remedyWords.leave}</h4>
      <p>
        ${remedyWords.leaveSays(formatQuantity(before.litres, 'volume', reading), formatCount(before.shortDays, mixWords.days, reading.locale))}
      </p>
    </div>
    <p class="quiet small">${remedyWords.rule(formatQuantity(leastWorth(before), 'volume', reading))}</p>
    ${remedies.length === 0 ? nothing : cautionsBeside(reading)}`;
}

function remedyItem(remedy: MixRemedy, { nameOf, span, reading, apply }: RemedyList): TemplateResult {
  const what = remedyInWords(remedy, nameOf, reading);
  const refills = remedy.changes.some((change) => change.kind === 'shut-off' && change.turnsToRefill);
  return html`<li>
    <h4>${what}</h4>
    <p class="promise">${promiseInWords(remedy, reading)}</p>
    <p>${remedyWords.get} ${goodsInWords(remedy.goods, reading)}.${refills ? ` ${remedyWords.refills}` : ''}</p>
    ${remedy.calendars.map((calendar) => calendarTemplate(calendar, nameOf(calendar.plantingId), span, reading.locale))}
    ${
      apply === undefined
        ? nothing
        : html`<button aria-label=${remedyWords.applyLabel(what)} @click=${() => apply(remedy)}>${remedyWords.apply}</button>`
    }
  </li>`;
}

/** The weeks in which somebody has to open it; in all others it is closed. */
export function calendarTemplate(
  { stretches }: Pick<ShutOffCalendar, 'stretches'>,
  name: string,
  { firstDay }: SeasonSpan,
  locale: string,
): TemplateResult {
  const open = stretches.filter(({ openDays }) => openDays > 0);
  const number = (count: number) => formatNumber(count, locale);
  return html`<details class="calendar">
    <summary>${remedyWords.calendar(name)}</summary>
    <ul>
      ${open.map(({ firstWeek, lastWeek, openDays, wateringDays, openMask }) => {
        const when = formatDays(firstDay + 7 * firstWeek, firstDay + 7 * lastWeek + 6, locale);
        if (openDays === wateringDays) return html`<li>${remedyWords.openAll(when)}</li>`;
        const days = formatWeekdays(firstDay, openMask, locale);
        return html`<li>${remedyWords.open(when, days, number(openDays), number(wateringDays))}</li>`;
      })}
      <li>${open.length === 0 ? remedyWords.neverOpen : remedyWords.otherwise}</li>
    </ul>
  </details>`;
}

function cautionsBeside({ language }: Reader): TemplateResult {
  return html`<section class="cautions" part="cautions">
    <h4>${cautionWords(language).beforeChange}</h4>
    <ul>${cautionItems(['digging', 'backflow', 'codes', 'promise'], language)}</ul>
  </section>`;
}
