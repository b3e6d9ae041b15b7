import { expect } from 'chai';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/week/define.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet } from './on-page.ts';

const { warn } = console;

describe('the day that a page sets as today', () => {
  let warnings: unknown[][];

  beforeEach(() => {
    warnings = [];
    console.warn = (...values: unknown[]) => warnings.push(values);
  });

  afterEach(() => {
    console.warn = warn;
    clearPage();
  });

  for (const tag of ['runnel-week', 'runnel-grid', 'runnel-garden', 'runnel-planner']) {
    it(`${tag} warns its maker once where it is none, and goes on`, async () => {
      const view = document.createElement(tag);
      view.setAttribute('today', 'tomorrow');
      view.setAttribute('license-key', 'non-commercial-and-evaluation');
      const place = onPage(html`<runnel-plan .plan=${mixedGarden()}>${view}</runnel-plan>`);
      await quiet(place);
      const plan = place.querySelector('runnel-plan');
      plan?.select({ week: 2 });
      await quiet(place);
      const ours = warnings.filter(([text]) => String(text).startsWith('Runnel'));
      expect(ours).to.deep.equal([
        ['Runnel: today="tomorrow" is not a day. Write year-month-day, like 2027-06-01.', view],
      ]);
      view.setAttribute('today', '2027-06-01');
      await quiet(place);
      expect(warnings.filter(([text]) => String(text).startsWith('Runnel')).length).to.equal(1);
    });
  }
});
