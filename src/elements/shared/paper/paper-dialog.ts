/** The choice of a sheet of paper, its pages as they will be, and printing them. */
import { html, nothing, render, type TemplateResult } from 'lit';
import { dayNumber } from '../../../engine/calendar.ts';
import { paperWords } from '../../../language/en/paper.ts';
import { formatFor } from '../../../language/format/format.ts';
import { adoptStyles } from '../adopt-styles.ts';
import { fetchLateWords } from '../fetch-late-words.ts';
import { type ReadyView, readingOf } from '../plan-state.ts';
import { attentionLayout } from './attention-layout.ts';
import { dialogStyles } from './dialog.styles.ts';
import type { PaperContext, PaperLayout } from './paper-block.ts';
import { PAPER_KINDS, PAPER_SIZES, type PaperChoice, type PaperKind, paperInches } from './paper-choice.ts';
import { showPages } from './paper-pages.ts';
import { reviewLayout } from './review-layout.ts';
import { shedLayout } from './shed-layout.ts';
import { seasonLayout, weeksLayout, zoneLayout } from './table-layouts.ts';

const LAYOUTS: Readonly<Record<PaperKind, (context: PaperContext) => PaperLayout>> = {
  shed: shedLayout,
  weeks: weeksLayout,
  season: seasonLayout,
  zone: zoneLayout,
  review: reviewLayout,
  attention: attentionLayout,
};

/** Sheets that are wider than high where nobody says otherwise. */
const ACROSS: ReadonlySet<PaperKind> = new Set(['season', 'weeks']);

const PX_PER_INCH = 96;

export interface PaperRequest {
  readonly kind: PaperKind;
  readonly week: number;
  readonly zone?: string | undefined;
  /** ISO day. */
  readonly today: string;
}

/** Opens over the page; what is printed is the plan as it stands. `root`: the shadow root that holds it. */
export async function openPaper(root: ShadowRoot | HTMLElement, view: ReadyView, request: PaperRequest): Promise<void> {
  await fetchLateWords('paper', view.locale);
  adoptStyles(root, dialogStyles);
  const dialog = document.createElement('dialog');
  dialog.className = 'paper';
  root.append(dialog);
  const reader = readingOf(view);
  let choice: PaperChoice = {
    kind: request.kind,
    week: request.week,
    zone: request.zone,
    size: reader.units === 'us' ? 'letter' : 'a4',
    isAcross: ACROSS.has(request.kind),
  };
  let pages = 0;
  const context = (): PaperContext => ({
    view,
    choice,
    today: dayNumber(request.today),
    reader,
    format: formatFor(reader),
  });
  const frame = () => dialog.querySelector('iframe');
  const show = (): void => {
    const target = frame()?.contentDocument;
    if (!target) return;
    pages = showPages(target, LAYOUTS[choice.kind](context()), context());
    scale();
    draw();
  };
  const scale = (): void => {
    const inside = frame();
    const body = inside?.contentDocument?.body;
    if (!inside || !body) return;
    const needed = (paperInches(choice).width + 0.5) * PX_PER_INCH;
    body.style.zoom = String(Math.min(1, inside.clientWidth / needed));
  };
  const change = (next: Partial<PaperChoice>): void => {
    choice = { ...choice, ...next };
    draw();
    show();
  };
  const print = (): void => {
    const inside = frame()?.contentWindow;
    inside?.focus();
    inside?.print();
  };
  const draw = (): void => {
    render(controls({ choice, pages, change, print, dialog }, context()), dialog);
  };
  draw();
  dialog.addEventListener('close', () => dialog.remove(), { once: true });
  dialog.showModal();
  const inside = frame();
  inside?.contentDocument?.documentElement.setAttribute('lang', reader.language.locale);
  show();
  // Where a browser puts its own empty document in later.
  inside?.addEventListener('load', show, { once: true });
}

interface Controls {
  readonly choice: PaperChoice;
  readonly pages: number;
  readonly change: (next: Partial<PaperChoice>) => void;
  readonly print: () => void;
  readonly dialog: HTMLDialogElement;
}

function controls(
  { choice, pages, change, print, dialog }: Controls,
  { view, reader, format }: PaperContext,
): TemplateResult {
  const say = paperWords(reader.language);
  const { span } = view.season.garden;
  const weeks = Array.from({ length: span.weeks }, (_, week) => week);
  const ofWeek = choice.kind === 'shed' || choice.kind === 'weeks';
  return html`<form method="dialog">
      <h2>${say.title}</h2>
      ${select(
        'kind',
        say.what,
        PAPER_KINDS,
        choice.kind,
        (kind) => say.kinds[kind],
        (kind) => change({ kind, isAcross: ACROSS.has(kind) }),
      )}
      ${
        ofWeek
          ? select(
              'week',
              say.week,
              weeks.map(String),
              String(choice.week),
              (week) => format.week(span.firstDay + 7 * Number(week)),
              (week) => change({ week: Number(week) }),
            )
          : nothing
      }
      ${
        choice.kind === 'zone'
          ? select(
              'zone',
              say.zone,
              view.season.zones.map(({ zone }) => zone.id),
              choice.zone ?? view.season.zones[0]?.zone.id ?? '',
              (id) => view.season.zones.find(({ zone }) => zone.id === id)?.zone.name ?? id,
              (zone) => change({ zone }),
            )
          : nothing
      }
      ${select(
        'size',
        say.size,
        PAPER_SIZES,
        choice.size,
        (size) => say.sizes[size],
        (size) => change({ size }),
      )}
      ${select(
        'direction',
        say.direction,
        ['upright', 'across'] as const,
        choice.isAcross ? 'across' : 'upright',
        (each) => say.directions[each],
        (each) => change({ isAcross: each === 'across' }),
      )}
      <p class="quiet" role="status">${pages === 0 ? nothing : say.pages(format, pages)}</p>
      <span class="buttons"><button type="button" name="print" class="primary" @click=${print}>${say.print}</button>
        <button type="button" name="close" @click=${() => dialog.close()}>${say.close}</button></span>
    </form>
    <iframe title=${say.preview}></iframe>`;
}

function select<Value extends string>(
  name: string,
  label: string,
  values: readonly Value[],
  chosen: Value,
  words: (value: Value) => string,
  change: (value: Value) => void,
): TemplateResult {
  const changed = (event: Event) => change((event.target as HTMLSelectElement).value as Value);
  return html`<label>${label}<select name=${name} @change=${changed}>
    ${values.map((value) => html`<option value=${value} ?selected=${value === chosen}>${words(value)}</option>`)}
  </select></label>`;
}
