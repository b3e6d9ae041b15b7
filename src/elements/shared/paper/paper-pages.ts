/** Puts a sheet's contents on pages of a document of their own: what is seen there is what is printed. */
import { html, nothing, render, type TemplateResult } from 'lit';
import { CAUTION_IDS } from '../../../explain/notices/cautions.ts';
import { cautionWords } from '../../../language/en/cautions.ts';
import { paperWords } from '../../../language/en/paper.ts';
import { type Heights, paged } from './page-breaks.ts';
import { sheetStyles } from './paper.styles.ts';
import type { PaperBlock, PaperContext, PaperLayout } from './paper-block.ts';
import { MARGIN_INCHES, type PaperChoice, paperInches } from './paper-choice.ts';
import { shedStyles } from './shed.styles.ts';

const PX_PER_INCH = 96;
/** A browser's own rounding must not push a page's last line onto another. */
const SPARE_PX = 2;
const SPARE_INCHES = 0.01;

/** How many pages it came to. */
export function showPages(target: Document, layout: PaperLayout, context: PaperContext): number {
  const { choice } = context;
  adopt(target, choice);
  const room = (paperInches(choice).height - 2 * MARGIN_INCHES) * PX_PER_INCH - SPARE_PX;
  const pagesIn = (form: PageForm) => ({
    form,
    pages: paged(layout.blocks, measured(target, layout, context, form), room),
  });
  let { form, pages } = pagesIn({ isAcross: choice.isAcross, isDense: false });
  if (pages.length > 1 && layout.mayBeDense) {
    const dense = pagesIn({ ...form, isDense: true });
    if (dense.pages.length < pages.length) ({ form, pages } = dense);
  }
  render(
    pages.map((blocks, at) =>
      pageTemplate(
        html`${at === 0 ? layout.title : nothing}${withHeadings(blocks)}`,
        footTemplate(context, at, pages.length),
        form,
      ),
    ),
    target.body,
  );
  return pages.length;
}

interface PageForm {
  readonly isAcross: boolean;
  /** With low rows. */
  readonly isDense: boolean;
}

const classOf = ({ isAcross, isDense }: PageForm, ...others: readonly string[]): string =>
  ['page', isAcross ? 'across' : '', isDense ? 'dense' : '', ...others].join(' ');

const inInches = (inches: number): string => `${inches}in`;

const sheets = new WeakMap<Document, CSSStyleSheet>();

/** The page's size is that of the paper. */
function adopt(target: Document, choice: PaperChoice): void {
  const Sheet = target.defaultView?.CSSStyleSheet;
  if (Sheet === undefined) return;
  const sheet = sheets.get(target) ?? new Sheet();
  sheets.set(target, sheet);
  const { width, height } = paperInches(choice);
  sheet.replaceSync([sheetStyles, shedStyles].map(({ cssText }) => cssText).join(''));
  const rule = sheet.cssRules[sheet.insertRule('@page{margin:0}')] as CSSPageRule;
  rule.style.setProperty('size', [width, height].map(inInches).join(' '));
  target.documentElement.style.setProperty('--width', inInches(width));
  target.documentElement.style.setProperty('--height', inInches(height - SPARE_INCHES));
  target.adoptedStyleSheets = [sheet];
}

function measured(target: Document, { title, blocks }: PaperLayout, context: PaperContext, form: PageForm): Heights {
  render(
    html`<section class=${classOf(form, 'measured')}><div>${title}</div>
      ${blocks.map(({ content }) => html`<div>${content}</div>`)}${blocks.map(({ heading }) => html`<div>${heading ?? nothing}</div>`)}
      <div>${footTemplate(context, 1, 2)}</div></section>`,
    target.body,
  );
  const [first, ...others] = [...(target.body.firstElementChild?.children ?? [])];
  const heightOf = (element: Element | undefined) => element?.getBoundingClientRect().height ?? 0;
  const zoom = Number.parseFloat(target.body.style.zoom || '1');
  const all = others.map((element) => heightOf(element) / zoom);
  return {
    title: heightOf(first) / zoom,
    blocks: all.slice(0, blocks.length),
    headings: all.slice(blocks.length, 2 * blocks.length),
    foot: heightOf(target.querySelector('.foot') ?? undefined) / zoom,
  };
}

function withHeadings(blocks: readonly PaperBlock[]): readonly TemplateResult[] {
  return blocks.map(({ heading, content }, at) =>
    heading !== undefined && blocks[at - 1]?.heading !== heading ? html`${heading}${content}` : content,
  );
}

function pageTemplate(content: TemplateResult, foot: TemplateResult, form: PageForm): TemplateResult {
  return html`<section class=${classOf(form)}>${content}${foot}</section>`;
}

/** The cautions once, on the last page. */
function footTemplate({ view, today, reader, format }: PaperContext, at: number, pages: number): TemplateResult {
  const say = paperWords(reader.language);
  const { full } = cautionWords(reader.language);
  const ids = CAUTION_IDS.filter((id) => view.season.garden.supply.tank !== undefined || id !== 'tank');
  const isLast = at === pages - 1;
  return html`<footer class="foot">${isLast ? html`<p>${ids.map((id) => `${full[id]} `)}${say.printed(format, today)}</p>` : nothing}
    ${pages > 1 ? html`<p class="number">${say.page(format, at + 1, pages)}</p>` : nothing}</footer>`;
}
