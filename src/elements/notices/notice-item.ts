/** One notice: its sign and severity, what is the matter, what to do, and where to look. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Notice, NoticeKind } from '../../explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../explain/notices/notice-kinds.ts';
import type { NoticeSeverity } from '../../explain/notices/severity.ts';
import { describeNotice, type NoticeText } from '../../language/describe-notice.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import { noticesWords } from '../../language/en/notices.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import { yearsHoldWords } from '../../language/years-hold-words.ts';
import { type NoticeFix, noticeFix } from '../../remedies/notices/notice-fix.ts';
import { hasRemedies } from '../../remedies/notices/remedied-kinds.ts';
import type { Selection } from '../../store/plan-view.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import type { YearsState } from '../shared/season-years.ts';
import type { ListedNotice } from './notice-list.ts';

export interface NoticeItem {
  readonly listed: ListedNotice;
  readonly view: ReadyView;
  readonly select: (selection: Selection) => void;
  readonly apply: (fix: NoticeFix, label: string) => void;
  /** What its "What to do" holds, under the name of what it concerns; only of a notice whose remedies are tried. */
  readonly remedies: (name: string) => TemplateResult;
  readonly years: YearsState;
}

/** Kinds of which it is told in how many years of ten the supply holds. */
const YEARLY: ReadonlySet<NoticeKind> = new Set(['tank-dry', 'allowance-exceeded']);

export const isYearly = ({ notice }: ListedNotice): boolean => YEARLY.has(notice.kind);

export function noticeItem({ listed, view, select, apply, remedies, years }: NoticeItem): TemplateResult {
  const { notice, key } = listed;
  const { severity } = notice;
  const reader = readingOf(view);
  const words = noticesWords(reader.language);
  const text = describeNotice(notice, view.season, view.plan.name, reader);
  const isTried = hasRemedies(notice);
  const fix = view.readOnly ? undefined : noticeFix(notice, view.plan, view.season);
  const look = lookAt(notice, text, reader);
  return html`<li class="notice ${severity}" data-key=${key} data-kind=${notice.kind}>
    ${severitySign(severity)}
    <p class="severity visually-hidden">${words.severity[severity]}</p>
    <p><strong>${text.name}:</strong> ${text.sentence}${isYearly(listed) && years.step === 'done' ? ` ${yearsHoldWords(years.band, view.season, reader)}` : ''}</p>
    <p class="quiet small ${isTried ? 'on-paper' : ''}">${words.remedies[notice.remedy]} ${cautionsBeside(notice.kind, reader)}</p>
    ${isTried ? remedies(text.name) : nothing}
    <p class="actions">
      ${look === undefined ? nothing : html`<button class="plain" @click=${() => select(look.selection)}>${look.label}</button>`}
      ${fix === undefined ? nothing : fixButton(fix, words.fixes[fix.kind], apply)}
    </p>
  </li>`;
}

function fixButton(fix: NoticeFix, label: string, apply: NoticeItem['apply']): TemplateResult {
  return html`<button class="plain" @click=${() => apply(fix, label)}>${label}</button>`;
}

/** A shape of its own for each, so that none is told by colour alone. */
const SHAPES: Readonly<Record<NoticeSeverity, TemplateResult>> = {
  danger: svg`<path class="filled" d="M8 .8 15.6 15H.4z" /><path class="cut" d="M8 5.5v4.6M8 11.6v1.6" />`,
  warning: svg`<path class="outlined" d="M8 2 14.6 14H1.4z" /><path class="mark" d="M8 6.5v3.6M8 11.4v1.2" />`,
  note: svg`<circle class="outlined" cx="8" cy="8" r="6.2" /><path class="mark" d="M8 7v4.4M8 4.4v1.3" />`,
};

function severitySign(severity: NoticeSeverity): TemplateResult {
  return html`<svg class="sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[severity]}</svg>`;
}

/** The cautions that a notice's remedy calls for; that every figure is to be checked at the plant stands once, at the foot. */
function cautionsBeside(kind: NoticeKind, reader: Reader): string {
  const ids = NOTICE_KINDS[kind].cautions.filter((id) => id !== 'promise');
  return ids.length === 0 ? '' : cautionWords(reader.language).checkFirst(formatFor(reader), ids);
}

/** Where somebody sees what a kind of notice is about: the cell of its zone, planting and week, or a part of the garden's form. */
const LOOK_AT: Readonly<Record<NoticeKind, 'cell' | 'climate'>> = {
  'no-climate': 'climate',
  'no-line': 'cell',
  'too-long': 'cell',
  closed: 'cell',
  'short-by-hand': 'cell',
  'short-as-run': 'cell',
  'cut-short': 'cell',
  'cut-not-met': 'cell',
  restricted: 'cell',
  'beyond-timer': 'cell',
  'shut-off-short': 'cell',
  'left-behind': 'cell',
  'few-days': 'cell',
  'dry-spell': 'cell',
  short: 'cell',
  'crop-early': 'cell',
  'crop-past': 'cell',
  'out-of-season': 'cell',
  over: 'cell',
  'over-by-hand': 'cell',
  'step-too-long': 'cell',
  'hand-set': 'cell',
  'line-too-long': 'cell',
  'pressure-low': 'cell',
  'flow-below-label': 'cell',
  'flow-too-fast': 'cell',
  'flow-too-great': 'cell',
  'window-too-short': 'cell',
  'tank-dry': 'cell',
  'allowance-exceeded': 'cell',
  'flow-together': 'cell',
  'emitters-far-apart': 'cell',
  'line-downhill': 'cell',
  'pot-dries-out': 'cell',
  'wetted-too-little': 'cell',
};

interface Look {
  readonly label: string;
  readonly selection: Selection;
}

/** Undefined where there is nothing to point at. */
function lookAt(
  { kind, zoneId, plantingId, firstWeek }: Notice,
  { where }: NoticeText,
  reader: Reader,
): Look | undefined {
  const words = noticesWords(reader.language);
  if (LOOK_AT[kind] === 'climate') return { label: words.fillClimate, selection: { part: 'climate' } };
  if (where === '') return undefined;
  return { label: words.show(where), selection: { zone: zoneId, planting: plantingId, week: firstWeek } };
}
