import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/week/define.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, settled, until } from './on-page.ts';

/** Where the words of each pattern stand in the first text that holds both, CSS pixels. */
function placesOf(place: Node, patterns: readonly RegExp[]): readonly DOMRect[] {
  const texts = document.createTreeWalker(place, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    const found = patterns.map((pattern) => pattern.exec(text.nodeValue ?? ''));
    if (found.includes(null)) continue;
    return found.map((match) => {
      const range = document.createRange();
      range.setStart(text, match?.index ?? 0);
      range.setEnd(text, (match?.index ?? 0) + (match?.[0].length ?? 0));
      return range.getBoundingClientRect();
    });
  }
  throw new Error('no text holds them');
}

describe('a page that runs right to left', () => {
  before(async () => {
    document.documentElement.dir = 'rtl';
    // Wide enough that the sums of the season are frozen beside the names.
    await setViewport({ width: 1400, height: 900 });
  });

  afterEach(clearPage);

  after(() => document.documentElement.removeAttribute('dir'));

  it('has the planner’s columns from the right, its words readable, and nothing beyond its edge', async () => {
    const place = onPage(
      html`<runnel-planner license-key="non-commercial-and-evaluation" view="season" .plan=${mixedGarden()}></runnel-planner>`,
    );
    const planner = await settled(place, 'runnel-planner');
    const grid = await settled(planner, 'runnel-grid');
    const cells = [...grid.querySelectorAll('.ht_clone_inline_start tbody tr:last-child td')];
    const [name, whole] = cells.map((cell) => cell.getBoundingClientRect());
    if (name === undefined || whole === undefined) throw new Error('no column is frozen');
    expect(name.left).to.be.at.least(whole.right - 1);
    const root = document.documentElement;
    expect(root.scrollWidth).to.be.at.most(root.clientWidth);
  });

  it('has a week whose figures stand before their units', async () => {
    const place = onPage(html`<runnel-plan .plan=${mixedGarden()}><runnel-week></runnel-week></runnel-plan>`);
    const week = (await settled(place, 'runnel-week')).shadowRoot;
    if (!week) throw new Error('there is no week');
    await until(() => /\d+\s*\u2060?min\b/.test(week.textContent ?? ''), 'the week is there');
    const [minutes, unit] = placesOf(week, [/^\s*\d+/, /\bmin\b/]);
    expect(minutes?.right).to.be.at.most(unit?.left ?? 0);
  });
});
