import { expect } from 'chai';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelGarden } from '../../../src/elements/garden/runnel-garden.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { planOn } from '../../support/one-soil.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replace(/\s+/g, ' ').trim();

/** Too few on sand: the bed goes short of water. */
const TWO_DAYS = Object.fromEntries([4, 5, 6, 7, 8, 9, 10].map((month) => [month, 2]));

/** A garden's forms with the zone and its days that fit unfolded. */
async function unfolded() {
  const place = onPage(
    html`<runnel-plan locale="en" .plan=${planOn('sand', TWO_DAYS)}><runnel-garden></runnel-garden></runnel-plan>`,
  );
  const garden: RunnelGarden = await settled(place, 'runnel-garden');
  const plan: RunnelPlan = await settled(place, 'runnel-plan');
  const all = (selector: string) => [...(garden.shadowRoot?.querySelectorAll<HTMLElement>(selector) ?? [])];
  const summary = (words: string) => {
    const found = all('summary').find((each) => plain(each.textContent).includes(words));
    if (found === undefined) throw new Error(`there is no summary "${words}"`);
    return found;
  };
  for (const words of ['Beds', 'How often']) {
    const details = summary(words).parentElement;
    summary(words).click();
    await until(() => (details?.querySelector('.part-body') ?? null) !== null, `${words} is unfolded`);
    await quiet(garden);
  }
  return { garden, plan, all, summary };
}

describe('how often a zone should be watered', () => {
  afterEach(clearPage);

  it('is said month by month, with why, and is one press away', async () => {
    const { garden, plan, all, summary } = await unfolded();
    expect(plain(summary('How often').textContent)).to.equal('How often: more days fit in 7 months');
    const july = all('.often li').map((each) => plain(each.textContent))[3];
    expect(july).to.match(/^July: 7 days a week; the plan has 2 days Bed: 0\.3\d in at hand, 0\.2\d in used a day\.$/);
    const effect = all('.often + p').map((each) => plain(each.textContent))[0];
    expect(effect).to.match(
      /^With the days that fit: short of water on 0 days instead of \d+ days\. Over the season: /,
    );
    expect(await accessibilityFaults(garden, {})).to.deep.equal([]);
    all('[name="zone-beds-howOften"]')[0]?.click();
    await quiet(garden);
    const days = { '4': 4, '5': 7, '6': 7, '7': 7, '8': 7, '9': 7, '10': 4 };
    expect(plan.plan?.zones[0]?.wateringDaysByMonth).to.deep.equal(days);
    expect(plain(summary('How often').textContent)).to.equal('How often: the plan’s days are enough');
    expect(all('[name="zone-beds-howOften"]')).to.have.length(0);
  });

  it('is only said where the plan can only be looked at', async () => {
    const { plan, garden, all } = await unfolded();
    plan.readOnly = true;
    await quiet(garden);
    expect(all('.often li')).to.have.length(7);
    expect(all('[name="zone-beds-howOften"]')).to.have.length(0);
  });
});
