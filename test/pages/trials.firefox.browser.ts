/**
 * Pages as other people write them, with the bundled script: what stands there, and what a reader gets. Each is a document of its own, of
 * the site's own origin.
 */
import { expect } from 'chai';
import { type OpenFrame, openFrame } from './open-frame.ts';

/** The first request bundles the script; a busy machine takes its time over that. */
const LONG = 90_000;

const SCRIPT = `<script type="module" src="${location.origin}/dist/page/runnel.js"></script>`;
const GARDEN = `${location.origin}/demo/club/garden.runnel.json`;
const KEY = 'license-key="non-commercial-and-evaluation"';
const WEEK = `<runnel-plan src="${GARDEN}"><runnel-week></runnel-week></runnel-plan>`;
const PLANNER = `<runnel-planner src="${GARDEN}" ${KEY}></runnel-planner>`;
const SHEET = `<runnel-plan src="${GARDEN}"><runnel-grid ${KEY}></runnel-grid></runnel-plan>`;

/** By its address: of a page that is a blob, one of the browsers does not take `self` for it. */
const STRICT = `<meta http-equiv="Content-Security-Policy" content="default-src ${location.origin}; img-src ${location.origin} data:">`;

/** Answers late, or never, in place of the site's server. `waitMs`: how long a minute of waiting is. */
const answering = (answer: string, waitMs = 60_000) => `<script>
  const { fetch: own, setTimeout: after } = window;
  window.fetch = (address, options) => String(address).endsWith('.json') ? ${answer} : own(address, options);
  window.setTimeout = (act, ms, ...more) => after(act, ms === 60000 ? ${waitMs} : ms, ...more);
</script>`;
const SLOW = answering('new Promise((resolve) => after(resolve, 1500)).then(() => own(address, options))');
const ENDLESS = answering(
  "new Promise((_, reject) => options.signal.addEventListener('abort', () => reject(options.signal.reason)))",
  300,
);
const MISSING = answering("Promise.resolve(new Response('', { status: 404 }))");
const NO_PLAN = answering("Promise.resolve(new Response('<!doctype html><title>Log in</title>'))");

const shownOf = (of: ParentNode, tag: string): string => of.querySelector(tag)?.shadowRoot?.textContent ?? '';

/** What a reader gets in the end. */
const RESULTS = {
  week: (page: Document) => shownOf(page, 'runnel-week').includes('Quince hedge'),
  sheet: (page: Document) => hasSheet(page),
  'week and sheet': (page: Document) => RESULTS.week(page) && hasSheet(page),
  'two weeks': (page: Document) =>
    [...page.querySelectorAll('runnel-week')].filter((each) => each.shadowRoot?.textContent?.includes('Quince hedge'))
      .length === 2,
  'week in a frame': (page: Document) => {
    const inside = page.querySelector('iframe')?.contentDocument;
    return inside !== null && inside !== undefined && RESULTS.week(inside);
  },
  'the address, and that it did not come': (page: Document) =>
    shownOf(page, 'runnel-week').includes('garden.runnel.json') && !RESULTS.week(page),
  'the status of the answer': (page: Document) =>
    shownOf(page, 'runnel-week').includes('404') && shownOf(page, 'runnel-week').includes('garden.runnel.json'),
  'that it is no plan': (page: Document) => /could not be read/i.test(shownOf(page, 'runnel-week')),
} as const;

/** Rows of figures, one beneath the other, each with cells side by side. */
function hasSheet(page: Document): boolean {
  const rows = [...page.querySelectorAll('runnel-grid .ht_master tbody tr')].map((row) =>
    [...row.querySelectorAll('td.runnel-cell')].map((cell) => cell.getBoundingClientRect()),
  );
  const [first, second] = rows;
  if (first === undefined || second === undefined || first.length < 3) return false;
  const isLevel = first.every(({ top, height }) => top === first[0]?.top && height > 10);
  return isLevel && (second[0]?.top ?? 0) > (first[0]?.top ?? 0);
}

interface Trial {
  readonly page: string;
  readonly head?: string;
  readonly body: string;
  readonly gets: keyof typeof RESULTS;
  readonly doctype?: false;
}

const head = SCRIPT;

const TRIALS: readonly Trial[] = [
  { page: 'the script in the head', head, body: WEEK, gets: 'week' },
  { page: 'the script at the end', body: WEEK + SCRIPT, gets: 'week' },
  { page: 'the script before its elements', body: SCRIPT + WEEK, gets: 'week' },
  { page: 'the script async', head: SCRIPT.replace(' src', ' async src'), body: WEEK, gets: 'week' },
  { page: 'the script twice', head: SCRIPT + SCRIPT, body: WEEK + SCRIPT, gets: 'week' },
  {
    page: 'the script in two copies',
    head: SCRIPT + SCRIPT.replace('runnel.js', 'runnel.js?copy'),
    body: SHEET,
    gets: 'sheet',
  },
  { page: 'quirks: no doctype', head, body: SHEET, gets: 'sheet', doctype: false },
  { page: 'the planner in quirks', head, body: PLANNER, gets: 'sheet', doctype: false },
  {
    page: 'a base elsewhere, addresses whole',
    head: `<base href="https://elsewhere.example/deep/">${SCRIPT}`,
    body: WEEK + SHEET,
    gets: 'week and sheet',
  },
  {
    page: 'a base of the site’s, addresses by it',
    head: `<base href="${location.origin}/demo/club/">${SCRIPT.replace(`${location.origin}`, '../..')}`,
    body: WEEK.replace(GARDEN, 'garden.runnel.json'),
    gets: 'week',
  },
  {
    page: 'a frame in the page',
    body: `<iframe srcdoc="${`${SCRIPT}${WEEK}`.replaceAll('"', '&quot;')}"></iframe>`,
    gets: 'week in a frame',
  },
  {
    page: 'innerHTML, later',
    head,
    body: `<main></main><script>setTimeout(() => { document.querySelector('main').innerHTML = '${WEEK}'; }, 300);</script>`,
    gets: 'week',
  },
  {
    page: 'innerHTML that is set again',
    head,
    body: `<main>${WEEK}</main><script>setTimeout(() => { const main = document.querySelector('main'); main.innerHTML = main.innerHTML; }, 600);</script>`,
    gets: 'week',
  },
  {
    page: 'moved about in the page',
    head,
    body: `<main>${SHEET}</main><aside></aside><script>setTimeout(() => document.querySelector('aside').append(document.querySelector('main > *')), 600);</script>`,
    gets: 'sheet',
  },
  {
    page: 'a template, cloned twice',
    head,
    body: `<template>${WEEK}</template><script>for (const at of [1, 2]) document.body.append(document.querySelector('template').content.cloneNode(true));</script>`,
    gets: 'two weeks',
  },
  { page: 'document.write', head, body: `<script>document.write('${WEEK}');</script>`, gets: 'week' },
  {
    page: 'div placeholders, with an editor’s paragraphs',
    head,
    body: `<div data-runnel="plan" data-src="${GARDEN}"><p></p><p><br></p><div data-runnel="week"><p>When the script has loaded</p></div><br></div>`,
    gets: 'week',
  },
  {
    page: 'div placeholders by innerHTML',
    head,
    body: `<main></main><script>setTimeout(() => { document.querySelector('main').innerHTML = '<div data-runnel="plan" data-src="${GARDEN}"><div data-runnel="week"></div></div>'; }, 300);</script>`,
    gets: 'week',
  },
  {
    page: 'words for pages without scripts',
    head,
    body: WEEK.replace('</runnel-week>', '<p>Turn scripts on.</p></runnel-week>'),
    gets: 'week',
  },
  {
    page: 'a reset of margins, boxes and letters',
    head: `<style>* { margin: 0; padding: 0; border: 0; box-sizing: border-box; font: inherit; }</style>${SCRIPT}`,
    body: PLANNER,
    gets: 'sheet',
  },
  {
    page: 'a class-less stylesheet',
    head: `<link rel="stylesheet" href="${location.origin}/node_modules/@picocss/pico/css/pico.classless.css">${SCRIPT}`,
    body: PLANNER,
    gets: 'sheet',
  },
  { page: 'a strict policy', head: STRICT + SCRIPT, body: WEEK + SHEET, gets: 'week and sheet' },
  { page: 'a plan that comes late', head: SLOW + SCRIPT, body: WEEK, gets: 'week' },
  {
    page: 'a plan that never comes',
    head: ENDLESS + SCRIPT,
    body: WEEK,
    gets: 'the address, and that it did not come',
  },
  { page: 'a plan that is missing', head: MISSING + SCRIPT, body: WEEK, gets: 'the status of the answer' },
  { page: 'a page in the plan’s place', head: NO_PLAN + SCRIPT, body: WEEK, gets: 'that it is no plan' },
];

function open({ head: ofHead = '', body, doctype }: Trial): Promise<OpenFrame> {
  const start = doctype === false ? '' : '<!doctype html>';
  const text = `${start}<html lang="en"><head><title>Trial</title>${ofHead}</head><body>${body}</body></html>`;
  return openFrame(text, 'inline-size: 1100px; block-size: 800px');
}

describe('a page as other people write it', function () {
  this.timeout(LONG);

  afterEach(() => {
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
  });

  for (const trial of TRIALS) {
    it(`${trial.page}: ${trial.gets}`, async () => {
      const { page, complaints } = await open(trial);
      expect(page.compatMode).to.equal(trial.doctype === false ? 'BackCompat' : 'CSS1Compat');
      const end = performance.now() + LONG - 5000;
      while (!RESULTS[trial.gets](page)) {
        if (performance.now() > end) throw new Error(`in vain: ${shownOf(page, 'runnel-week').replace(/\s+/g, ' ')}`);
        await new Promise((resolve) => setTimeout(resolve, 30));
      }
      expect(complaints).to.deep.equal([]);
    });
  }
});
