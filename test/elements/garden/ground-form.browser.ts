import { expect } from 'chai';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelGarden } from '../../../src/elements/garden/runnel-garden.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { oneBed, shrubs, zone } from '../../support/small-plans.ts';
import { oneRow, potWith } from '../../support/troubled-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replace(/\s+/g, ' ').trim();

/** A garden's forms with the first zone, its first planting and what it grows in unfolded. */
async function unfolded(made: ReturnType<typeof oneRow>, ...names: readonly string[]) {
  const place = onPage(html`<runnel-plan locale="en" .plan=${made}><runnel-garden></runnel-garden></runnel-plan>`);
  const garden: RunnelGarden = await settled(place, 'runnel-garden');
  const plan: RunnelPlan = await settled(place, 'runnel-plan');
  const all = (selector: string) => [...(garden.shadowRoot?.querySelectorAll<HTMLInputElement>(selector) ?? [])];
  for (const words of [...names, 'Ground, pots, mulch and rest']) {
    const summary = all('summary').findLast((each) => plain(each.textContent).includes(words));
    if (summary === undefined) throw new Error(`there is no summary "${words}"`);
    const details = summary.parentElement as HTMLDetailsElement;
    if (!details.open) summary.click();
    await until(() => details.querySelector('.part-body') !== null, `${words} is unfolded`);
    await quiet(garden);
  }
  const field = (name: string) => {
    const [found] = all(`[name="${name}"]`);
    if (found === undefined) throw new Error(`there is no field "${name}"`);
    return found;
  };
  const enter = async (name: string, value: string) => {
    const input = field(name);
    input.value = value;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    await quiet(garden);
  };
  const planting = () => plan.plan?.zones[0]?.plantings[0];
  return { garden, all, field, enter, planting };
}

describe('what a planting grows in', () => {
  afterEach(clearPage);

  // A foot of roots to each side for an inch of trunk (common practice, no source): 24 x 2 in = 48 in.
  it('tells of a trunk and a canopy which is larger', async () => {
    const names = ['Beds', 'Shrubs', 'Roots and soil of this planting'];
    const { all, enter, planting } = await unfolded(oneBed({ zones: [zone({ plantings: [shrubs()] })] }), ...names);
    const told = () =>
      all('.help')
        .map((each) => plain(each.textContent))
        .filter((text) => text.startsWith('24 trunks'));
    expect(told()).to.deep.equal([]);
    await enter('planting-shrubs-extent-trunk', '2');
    expect(planting()?.extent).to.include({ diameter: 36, trunk: 2 });
    expect(told()).to.deep.equal(['24 trunks across are 48 in, wider than the canopy: that is its ground.']);
    await enter('planting-shrubs-extent-trunk', '1');
    expect(told()).to.deep.equal(['24 trunks across are 24 in; the canopy is wider: that is its ground.']);
  });

  it('says how much of its ground its lines wet, and how wide an emitter does', async () => {
    const { garden, all, field, enter, planting } = await unfolded(oneRow(), 'Beds', 'Tomatoes');
    expect(field('planting-tomatoes-wettedShare').placeholder).to.equal('from its lines: 0.72');
    expect(all('.help').map((each) => plain(each.textContent))).to.contain(
      'At the depth of its roots an emitter wets ground 34.8 in wide.',
    );
    await enter('planting-tomatoes-wettedShare', '0.5');
    expect(planting()?.wettedShare).to.equal(0.5);
    await enter('planting-tomatoes-wettedShare', '');
    expect(planting()).not.to.have.property('wettedShare');
    expect(await accessibilityFaults(garden, {})).to.deep.equal([]);
  });

  it('takes mulch with its cover, months without leaves, a soak and a dry-down, and says so above the fold', async () => {
    const { garden, all, field, enter, planting } = await unfolded(oneRow(), 'Beds', 'Tomatoes');
    await enter('planting-tomatoes-mulch', 'organic');
    await enter('planting-tomatoes-mulch-cover', '0.5');
    expect(planting()?.mulch).to.deep.equal({ kind: 'organic', cover: 0.5 });
    field('planting-tomatoes-leaflessMonths-12').click();
    await quiet(garden);
    field('planting-tomatoes-leaflessMonths-1').click();
    field('planting-tomatoes-soak').click();
    await quiet(garden);
    await enter('planting-tomatoes-dryDownDays', '10');
    expect(planting()).to.deep.include({ leaflessMonths: [1, 12], soak: true, dryDownDays: 10 });
    const summary = all('summary').find((each) => plain(each.textContent).startsWith('Ground, pots'));
    expect(plain(summary?.textContent)).to.equal(
      'Ground, pots, mulch and rest bark, straw, leaves or compost; Share of the ground under it: 0.5; Dry-down before harvest: 10 days…',
    );
    await enter('planting-tomatoes-mulch', 'none');
    expect(planting()).not.to.have.property('mulch');
  });

  it('takes a pot with its mix, its opening and its rain, and asks of a pot neither for a soak nor for a share', async () => {
    const { garden, all, enter, planting } = await unfolded(potWith(), 'Pots', 'Pot');
    await enter('planting-pot-container-volume', '12');
    await enter('planting-pot-container-mix', 'peat');
    await enter('planting-pot-container-rainShare', '0');
    await enter('planting-pot-container-count', '3');
    expect(planting()?.container).to.deep.equal({ volume: 12, mix: 'peat', rainShare: 0, count: 3 });
    expect(all('[name="planting-pot-soak"], [name="planting-pot-wettedShare"]')).to.have.length(0);
    expect(await accessibilityFaults(garden, {})).to.deep.equal([]);
    await enter('planting-pot-growsIn', 'ground');
    expect(planting()).not.to.have.property('container');
  });
});
