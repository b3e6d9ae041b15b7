/** Elements in light DOM: words for pages without scripts, and shadow roots, in which the spreadsheet does not work. */
import { expect } from 'chai';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import { watchPage } from '../../../src/page/watch-page.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, until } from './on-page.ts';

const { warn } = console;

const LIGHT = ['runnel-grid', 'runnel-planner'] as const;
const KEY = 'license-key="non-commercial-and-evaluation"';

async function planWith(markup: string): Promise<HTMLElement> {
  const place = onPage(html`<runnel-plan .plan=${mixedGarden()}></runnel-plan>`);
  const plan = place.querySelector('runnel-plan');
  plan?.insertAdjacentHTML('beforeend', markup);
  await quiet(place);
  return place;
}

describe('an element in light DOM', () => {
  afterEach(() => {
    console.warn = warn;
    clearPage();
  });

  for (const tag of LIGHT) {
    it(`${tag} takes the words away that stood in it for pages without scripts`, async () => {
      const place = await planWith(`<${tag} ${KEY}>Turn scripts <b>on</b>.<p>Or read the file.</p></${tag}>`);
      const element = place.querySelector(tag);
      expect(element?.textContent).not.to.match(/Turn scripts|Or read/);
      expect(element?.querySelectorAll('td').length).to.be.greaterThan(3);
    });
  }

  it('takes away what the parser adds after it has started', async () => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    const page = frame.contentDocument;
    if (page === null) throw new Error('there is no page in the frame');
    page.open();
    page.write(`<!doctype html><html lang="en"><body><script type="module" async>
      import '${new URL('../../../src/elements/planner/define.ts', import.meta.url).href}';
      window.isDefined = true;
    </${'script'}><p>Before</p>`);
    await until(() => 'isDefined' in (frame.contentWindow ?? {}), 'the element is defined');
    page.write('<runnel-planner>Turn scripts <b>on</b>.</runnel-planner><p>After</p></body></html>');
    await until(() => page.querySelector('runnel-planner > runnel-plan') !== null, 'the planner has started');
    page.close();
    await until(() => page.readyState !== 'loading', 'the page is read');
    expect(page.querySelector('runnel-planner')?.textContent).not.to.match(/Turn scripts|on\./);
    expect(page.querySelector('runnel-planner > runnel-plan')).not.to.equal(null);
    expect(page.body.textContent).to.contain('Before').and.to.contain('After');
    frame.remove();
  });

  it('says in a shadow root that the sheet works in the page itself, and draws nothing of it; its maker hears it once', async () => {
    const warnings: unknown[][] = [];
    console.warn = (...values: unknown[]) => warnings.push(values);
    const place = await planWith('<section></section>');
    const shadow = place.querySelector('section')?.attachShadow({ mode: 'open' });
    if (shadow === undefined) throw new Error('there is no shadow root');
    shadow.innerHTML = `<runnel-grid ${KEY}></runnel-grid>`;
    const grid = shadow.querySelector('runnel-grid');
    if (grid === null) throw new Error('there is no grid');
    await quiet(grid);
    place.querySelector('runnel-plan')?.select({ week: 2 });
    await quiet(grid);
    expect(grid.textContent?.trim()).to.equal('The sheet must stand in the page itself.');
    expect(grid.querySelectorAll('td, .runnel-grid__box').length).to.equal(0);
    expect(warnings.filter(([text]) => String(text).includes('shadow root')).map(([, of]) => of)).to.deep.equal([grid]);
    const plan = place.querySelector('runnel-plan');
    plan?.append(grid);
    await quiet(grid);
    expect(grid.querySelectorAll('td').length).to.be.greaterThan(3);
  });
});

describe('the one script', () => {
  before(() => watchPage(document));
  afterEach(clearPage);

  it('defines what stands in open shadow roots, there already, added to them, and of elements defined later', async () => {
    const place = onPage(html`<club-card></club-card>
      <div id="now"></div>`);
    const now = place.querySelector('#now');
    const inside = document.createElement('div');
    inside.attachShadow({ mode: 'open' }).innerHTML = '<div data-runnel="week"></div>';
    now?.append(inside);
    customElements.define(
      'club-card',
      class extends HTMLElement {
        connectedCallback() {
          this.attachShadow({ mode: 'open' }).innerHTML = '<runnel-trace></runnel-trace>';
        }
      },
    );
    await until(() => customElements.get('runnel-week') !== undefined, 'the week is defined');
    await until(() => customElements.get('runnel-trace') !== undefined, 'the trace is defined');
    const week = inside.shadowRoot?.querySelector('runnel-week');
    expect(week?.shadowRoot).not.to.equal(null);
    inside.shadowRoot?.append(document.createElement('runnel-mix'));
    await until(() => customElements.get('runnel-mix') !== undefined, 'the mix is defined');
  });
});
