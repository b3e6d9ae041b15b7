/** What to do about a mixed zone: the ranked list of changes that would help, with the zone as it is at its foot. */
import { html, nothing, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import { describeGoods, describeMixRemedy, describePromise, type NameOf } from '../../language/describe-mix-remedy.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import { mixWords } from '../../language/en/mix.ts';
import { unitsWords } from '../../language/en/units.ts';
import { whatIfsWords } from '../../language/en/what-ifs.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import { leastWorth } from '../../remedies/mix/rank.ts';
import type { MixRemedy, ShutOffCalendar } from '../../remedies/mix/remedy.ts';
import type { MixRemedies } from '../../remedies/mix/search.ts';
import { cautionItems } from '../shared/cautions-template.ts';

/** More than these are folded away. */
const MOST_IN_SIGHT = 4;

export interface RemediesShown {
  /** Undefined while the search goes on. */
  readonly found: MixRemedies | undefined;
  /** Changes that were tried so far. */
  readonly tried: number;
  /** What of the list is drawn: nothing yet, the best alone, all. */
  readonly drawn: 'nothing' | 'best' | 'all';
  readonly nameOf: NameOf;
  readonly span: SeasonSpan;
  readonly reader: Reader;
  /** Left out where the plan can only be looked at. */
  readonly apply: ((remedy: MixRemedy) => void) | undefined;
  readonly tryIt: (remedy: MixRemedy) => void;
  /** Whether something is tried already, on top of which it would come. */
  readonly isTrying: boolean;
  /** The remedy that was just applied, described; left out where there is none. */
  readonly applied: string | undefined;
  readonly undo: () => void;
}

export function remediesSection(shown: RemediesShown): TemplateResult {
  const { found, tried, drawn, reader, applied, undo } = shown;
  const words = mixWords(reader.language).remedies;
  return html`<section part="remedies">
    <h3>${words.title}</h3>
    <div role="status">
      ${found === undefined ? html`<p class="quiet">${words.searching(formatFor(reader), tried)}</p>` : nothing}
      ${
        applied === undefined
          ? nothing
          : html`<p class="taken">
              ${words.done(applied)}
              <button @click=${undo}>${words.undo}</button>
            </p>`
      }
    </div>
    ${found === undefined || drawn === 'nothing' ? nothing : remedyList(found, shown)}
  </section>`;
}

function remedyList(found: MixRemedies, shown: RemediesShown): TemplateResult {
  const { reader } = shown;
  const words = mixWords(reader.language).remedies;
  const format = formatFor(reader);
  if (found.areAlike) return html`<p>${words.alike}</p>`;
  const { remedies, tried } = found;
  const items = (some: readonly MixRemedy[]) => some.map((remedy) => remedyItem(remedy, shown));
  return html`<p class="quiet">
      ${remedies.length === 0 ? words.none(format, tried) : words.found(format, remedies.length, tried)}
    </p>
    <ol class="remedies">${items(remedies.slice(0, MOST_IN_SIGHT))}</ol>
    ${shown.drawn === 'best' ? nothing : restOfList(found, reader, items(remedies.slice(MOST_IN_SIGHT)))}`;
}

function restOfList(
  { remedies, before }: MixRemedies,
  reader: Reader,
  rest: readonly TemplateResult[],
): TemplateResult {
  const words = mixWords(reader.language).remedies;
  const format = formatFor(reader);
  const { names } = unitsWords(reader.language);
  return html`${
    rest.length > 0
      ? html`<details class="more">
            <summary>${words.more(format, rest.length)}</summary>
            <ol class="remedies" start=${MOST_IN_SIGHT + 1}>${rest}</ol>
          </details>`
      : nothing
  }
    <div class="leave">
      <h4>${words.leave}</h4>
      <p>${words.leaveSays(format, before.litres, before.shortDays)}</p>
    </div>
    <p class="quiet small">${words.ranking(format, names[reader.units === 'us' ? 'gal' : 'L'], leastWorth(before))}</p>
    ${remedies.length === 0 ? nothing : cautionsBeside(reader)}`;
}

function remedyItem(remedy: MixRemedy, shown: RemediesShown): TemplateResult {
  const { nameOf, span, reader, apply, tryIt, isTrying } = shown;
  const together = whatIfsWords(reader.language);
  const { remedies: words, trial } = mixWords(reader.language);
  const what = describeMixRemedy(remedy, nameOf, reader);
  const kinds = remedy.changes.map(({ kind }) => kind);
  const refills = remedy.changes.some((change) => change.kind === 'shut-off' && change.turnsToRefill);
  return html`<li data-kinds=${kinds.join(' ')}>
    <h4>${what}</h4>
    <p class="promise">${describePromise(remedy, reader)}</p>
    <p>${describeGoods(remedy.goods, reader)}${refills ? ` ${words.refills}` : ''}</p>
    ${remedy.calendars.map((calendar) => calendarTemplate(calendar, nameOf(calendar.plantingId), span, reader))}
    ${
      apply === undefined
        ? nothing
        : html`<button class="apply" aria-label=${words.applyLabel(what)} @click=${() => apply(remedy)}>${words.apply}</button>`
    }
    <button class="try" aria-label=${together.tryLabel(what)} @click=${() => tryIt(remedy)}>${isTrying ? together.tryToo : trial.try}</button>
  </li>`;
}

/** The weeks in which somebody has to open it; in all others it is shut. */
export function calendarTemplate(
  { stretches }: Pick<ShutOffCalendar, 'stretches'>,
  name: string,
  { firstDay }: SeasonSpan,
  reader: Reader,
): TemplateResult {
  const words = mixWords(reader.language).remedies.calendar;
  const format = formatFor(reader);
  const open = stretches.filter(({ openDays }) => openDays > 0);
  return html`<details class="calendar">
    <summary>${words.title(name)}</summary>
    <ul>
      ${open.map((stretch) => {
        const [first, last] = [firstDay + 7 * stretch.firstWeek, firstDay + 7 * stretch.lastWeek + 6];
        const isAlwaysOpen = stretch.openDays === stretch.wateringDays;
        return html`<li>${isAlwaysOpen ? words.openAll(format, first, last) : words.open(format, first, last, stretch)}</li>`;
      })}
      <li>${open.length === 0 ? words.never : words.otherwise}</li>
    </ul>
  </details>`;
}

function cautionsBeside({ language }: Reader): TemplateResult {
  return html`<section class="cautions" part="cautions">
    <h4>${cautionWords(language).beforeChange}</h4>
    <ul>${cautionItems(['digging', 'backflow', 'codes', 'promise'], language)}</ul>
  </section>`;
}
