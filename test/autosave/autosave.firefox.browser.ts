import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../src/elements/plan/define.ts';
import type { AutosaveChoice } from '../../src/autosave/report.ts';
import { savedPlanIn } from '../../src/autosave/saved-plan.ts';
import type { RunnelPlan } from '../../src/elements/plan/runnel-plan.ts';
import type { RunnelAutosaveEvent } from '../../src/elements/shared/events/autosave-event.ts';
import { linkTo } from '../../src/exchange/link/link-to.ts';
import { autosave as words } from '../../src/language/en/autosave.ts';
import { writePlan } from '../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { accessibilityFaults } from '../elements/shared/axe.ts';
import { clearPage, html, onPage, quiet, until } from '../elements/shared/on-page.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';
import { clearStorage, mirrored } from './clear-storage.ts';

const KEY = 'runnel:beds';
const setMinutes = (minutes: number) => ({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes }) as const;
const minutesOf = (plan: Plan | undefined) => plan?.choices?.['beds']?.['2027-06-07']?.minutes;
const savedMinutes = () => minutesOf(savedPlanIn(localStorage.getItem(KEY) ?? undefined)?.plan);
const addressOf = (plan: Plan) => URL.createObjectURL(new Blob([writePlan(plan)]));
const fragmentOf = async (plan: Plan) => new URL(await linkTo(plan, location.href)).hash;
const choice = (...choices: readonly AutosaveChoice[]) => choices.map((each) => words.choices[each]).join(' ');
const otherPlans = (count: number) => new RegExp(`^${count}\\s`);

/** A tab that is looked at saves what it has, and looks for what others have saved. */
function lookAt(plan: Element): void {
  plan.ownerDocument.dispatchEvent(new Event('visibilitychange'));
}

/** Waits until the mirror on the disk has a text under the key. */
async function mirroredText(): Promise<string> {
  const end = performance.now() + 20_000;
  for (let text = await mirrored(KEY); performance.now() < end; text = await mirrored(KEY))
    if (text !== undefined) return text;
  throw new Error('nothing reached the mirror');
}

const strip = (plan: Element) => plan.shadowRoot?.querySelector('runnel-plan-autosave')?.shadowRoot;
const wordsOf = (elements: Iterable<Element>) =>
  [...elements].map(({ textContent }) => textContent?.replaceAll(/\s+/g, ' ').trim()).join(' ');
const said = (plan: Element) => wordsOf(strip(plan)?.querySelectorAll('[role=status] :is(p, button)') ?? []);
const hidden = (plan: Element) => wordsOf(strip(plan)?.querySelectorAll('details :is(summary, span, button)') ?? []);

function press(plan: Element, wanted: AutosaveChoice): void {
  const buttons = [...(strip(plan)?.querySelectorAll('button') ?? [])];
  const button = buttons.find(({ textContent }) => textContent?.trim() === words.choices[wanted]);
  if (button === undefined) throw new Error(`there is no button ${wanted} in: ${said(plan)} ${hidden(plan)}`);
  button.click();
}

interface Visit {
  readonly src?: string;
  readonly key?: string;
  readonly readOnly?: boolean;
  readonly fromLink?: boolean;
}

/** A page with a plan of its own, opened anew. */
async function visit({ src = addressOf(oneBed()), key = 'beds', readOnly = false, fromLink = false }: Visit = {}) {
  clearPage();
  const place = onPage(
    html`<runnel-plan src=${src} storage-key=${key} ?read-only=${readOnly} ?from-link=${fromLink}></runnel-plan>`,
  );
  const plan = place.querySelector('runnel-plan');
  if (plan === null) throw new Error('there is no plan');
  await until(() => plan.plan !== undefined, 'a plan is open');
  await quiet(plan);
  return plan;
}

describe('runnel-plan with storage-key', () => {
  beforeEach(clearStorage);
  afterEach(() => {
    clearPage();
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
    history.replaceState(history.state, '', location.pathname + location.search);
  });

  it('saves what is changed, in both places, and begins the next visit with it', async () => {
    const plan = await visit();
    expect(said(plan)).to.equal('');
    plan.edit(setMinutes(70));
    await until(() => savedMinutes() === 70, 'it is saved');
    expect(await mirroredText()).to.equal(localStorage.getItem(KEY));
    const next = await visit();
    expect(minutesOf(next.plan)).to.equal(70);
    expect(next.autosave.notes.map(({ code }) => code)).to.deep.equal(['restored']);
    expect(said(next).endsWith(`. ${choice('own-plan', 'close')}`)).to.equal(true);
    expect(await accessibilityFaults(next)).to.deep.equal([]);
  });

  it('saves at once what was changed last where the element goes', async () => {
    const plan = await visit();
    plan.edit(setMinutes(75));
    plan.remove();
    expect(savedMinutes()).to.equal(75);
  });

  it('goes back to the page’s own plan by keyboard, and opens the saved one again from its copy', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    const next = await visit();
    strip(next)?.querySelector('button')?.focus();
    await sendKeys({ press: 'Enter' });
    await until(() => minutesOf(next.plan) === undefined, 'the page’s own plan is open');
    await quiet(next);
    expect(said(next)).to.equal(`${words.ownPlan} ${choice('close')}`);
    expect(strip(next)?.activeElement, 'the keyboard stays where it was').not.to.equal(null);
    expect(hidden(next)).to.match(otherPlans(1)).and.to.contain('“One bed”');
    expect(hidden(next).endsWith(choice('restore-copy', 'save-copy', 'delete-copy'))).to.equal(true);
    strip(next)?.querySelector('details')?.setAttribute('open', '');
    expect(await accessibilityFaults(next)).to.deep.equal([]);
    press(next, 'delete-copy');
    await quiet(next);
    expect(hidden(next)).to.contain(words.deleteForGood);
    press(next, 'restore-copy');
    await quiet(next);
    expect(minutesOf(next.plan)).to.equal(70);
    expect(savedMinutes()).to.equal(70);
    expect(hidden(next)).to.equal('');
  });

  it('tells the page in an event what it says, and takes the choice from there', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    clearPage();
    const place = onPage(html``);
    const events: RunnelAutosaveEvent[] = [];
    place.addEventListener('runnel-autosave', (event) => events.push(event));
    const next = document.createElement('runnel-plan');
    Object.assign(next, { src: addressOf(oneBed()), storageKey: 'beds' });
    place.append(next);
    await until(() => events.length > 0, 'the page is told');
    expect(events[0]?.autosave).to.equal(next.autosave);
    expect(next.autosave).to.deep.include({ status: 'saved', copies: [] });
    expect(next.autosave.notes[0]).to.deep.include({ code: 'restored', choices: ['own-plan', 'close'] });
    next.chooseAutosave('close', 'restored');
    expect(next.autosave.notes).to.deep.equal([]);
  });

  it('goes on with the same plan when it is moved', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    const open = plan.plan;
    onPage(html``).append(plan);
    await quiet(plan);
    expect(plan.plan).to.equal(open);
    plan.edit(setMinutes(80));
    await until(() => savedMinutes() === 80, 'it is saved as before');
  });

  it('neither reads nor writes where it is read-only', async () => {
    (await visit()).edit(setMinutes(70));
    const plan = await visit({ readOnly: true });
    expect(minutesOf(plan.plan)).to.equal(undefined);
    plan.openText(writePlan(mixedGarden()));
    lookAt(plan);
    expect(savedMinutes()).to.equal(70);
    expect(localStorage.length).to.equal(1);
  });

  it('comes back from the disk where the browser was killed', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    await until(() => savedMinutes() === 70, 'it is saved');
    await mirroredText();
    clearPage();
    localStorage.clear();
    expect(minutesOf((await visit()).plan)).to.equal(70);
    expect(savedMinutes()).to.equal(70);
  });

  it('says where what was saved is damaged, opens the page’s own plan, and offers the text as a file', async () => {
    localStorage.setItem(KEY, '{"format":"runnel-kept","vers');
    const plan = await visit();
    expect(plan.plan?.name).to.equal('One bed');
    await until(() => said(plan) !== '', 'something is said');
    expect(said(plan)).to.equal(`${words.damaged(words.damage.unreadable)} ${choice('close')}`);
    expect(hidden(plan)).to.contain(`${words.damagedCopy} ${choice('save-copy')}`);
    const files: string[] = [];
    const note = (event: Event) => {
      const [link] = event.composedPath();
      if (!(link instanceof HTMLAnchorElement)) return;
      event.preventDefault();
      files.push(link.download);
    };
    // A link that is not in the page tells nobody of its click but itself.
    const click = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = function clicked() {
      this.addEventListener('click', note);
      click.call(this);
    };
    press(plan, 'save-copy');
    HTMLAnchorElement.prototype.click = click;
    expect(files).to.deep.equal([words.damagedFile]);
    plan.edit(setMinutes(70));
    await until(() => savedMinutes() === 70, 'it is saved again');
    expect(localStorage.length).to.equal(2);
  });

  it('says where the storage is full, lets editing go on, and stops saying so', async () => {
    const plan = await visit();
    let size = 4_000_000;
    for (let place = 0; size > 10; place++) {
      try {
        localStorage.setItem(`other${place}`, 'x'.repeat(size));
      } catch {
        size = Math.floor(size / 2);
      }
    }
    plan.edit(setMinutes(70));
    await until(() => said(plan) !== '', 'something is said');
    expect(said(plan)).to.equal(`${words.full} ${choice('save-file', 'retry')}`);
    expect(plan.edit(setMinutes(80)).ok).to.equal(true);
    expect(await accessibilityFaults(plan)).to.deep.equal([]);
    localStorage.removeItem('other0');
    press(plan, 'retry');
    await quiet(plan);
    expect(said(plan)).to.equal('');
    expect(savedMinutes()).to.equal(80);
  });

  for (const [what, access] of [
    [
      'throws',
      () => {
        throw new DOMException('Access is denied for this document.', 'SecurityError');
      },
    ],
    ['is null', () => null],
  ] as const) {
    it(`says where the storage ${what}, and lets editing go on`, async () => {
      const own =
        Object.getOwnPropertyDescriptor(window, 'localStorage') ??
        Object.getOwnPropertyDescriptor(Window.prototype, 'localStorage');
      if (own === undefined) throw new Error('the storage is nowhere');
      const isOnWindow = Object.hasOwn(window, 'localStorage');
      Object.defineProperty(window, 'localStorage', { configurable: true, get: access });
      try {
        const plan = await visit();
        expect(plan.plan?.name).to.equal('One bed');
        await until(() => said(plan) !== '', 'something is said');
        expect(said(plan)).to.contain(words.forbidden);
        expect(plan.edit(setMinutes(70)).ok).to.equal(true);
        lookAt(plan);
        expect(plan.autosave.status).to.equal('not-saved');
        if (isOnWindow) Object.defineProperty(window, 'localStorage', own);
        else Reflect.deleteProperty(window, 'localStorage');
        await until(() => said(plan) === '', 'it works again by itself');
        expect(savedMinutes()).to.equal(70);
      } finally {
        if (isOnWindow) Object.defineProperty(window, 'localStorage', own);
        else Reflect.deleteProperty(window, 'localStorage');
      }
    });
  }
});

describe('runnel-plan in two tabs', function () {
  this.timeout(60_000);
  beforeEach(clearStorage);
  afterEach(() => {
    clearPage();
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
  });

  /** A second tab: a document of its own with the same storage. */
  async function tab(inside = ''): Promise<RunnelPlan> {
    const frame = document.createElement('iframe');
    frame.srcdoc = `<!doctype html><html lang="en"><title>Tab</title><script type="module">
      import '/src/elements/plan/define.ts'; import '/src/elements/garden/define.ts';</script>
      <runnel-plan src="${addressOf(oneBed())}" storage-key="beds">${inside}</runnel-plan>`;
    document.body.append(frame);
    const plan = () => frame.contentDocument?.querySelector('runnel-plan') ?? undefined;
    const end = performance.now() + 50_000;
    while (plan()?.plan === undefined && performance.now() < end) await new Promise(requestAnimationFrame);
    const found = plan();
    if (found?.plan === undefined) throw new Error('the tab has no plan');
    return found;
  }

  it('shows in one what is changed in the other, and says so', async () => {
    const [one, two] = [await visit(), await tab()];
    two.edit(setMinutes(70));
    await until(() => minutesOf(one.plan) === 70, 'the first tab has it');
    await quiet(one);
    expect(said(one)).to.equal(`${words.otherTab} ${choice('close')}`);
    one.edit(setMinutes(80));
    await until(() => minutesOf(two.plan) === 80, 'the second tab has it');
    expect(savedMinutes()).to.equal(80);
  });

  it('tells another plan of the same page that has the same key from another tab, and its maker hears it', async () => {
    const { warn } = console;
    const warnings: unknown[] = [];
    console.warn = (text: unknown) => warnings.push(text);
    try {
      const one = await visit();
      const place = onPage(html`<runnel-plan src=${addressOf(oneBed())} storage-key="beds"></runnel-plan>`);
      const two = place.querySelector('runnel-plan');
      if (two === null) throw new Error('there is no second plan');
      await until(() => two.plan !== undefined && two.autosave.status === 'saved', 'the second plan is open');
      expect(
        warnings.filter((text) => /two plans of this page have the storage-key/.test(String(text))),
      ).to.have.length(1);
      one.edit(setMinutes(70));
      two.edit(setMinutes(80));
      const isHeld = (plan: RunnelPlan) => plan.autosave.status === 'asking';
      await until(() => isHeld(one) || isHeld(two), 'one of them asks');
      const held = isHeld(one) ? one : two;
      await quiet(held);
      expect(said(held)).to.contain(words.onPage.conflict).and.to.contain(words.onPage.choice);
      expect(said(held)).not.to.match(/\btab\b/);
    } finally {
      console.warn = warn;
    }
  });

  /** Both change the plan at once. */
  async function apart(): Promise<{ held: RunnelPlan; other: RunnelPlan }> {
    const [one, two] = [await visit(), await tab()];
    one.edit(setMinutes(70));
    two.edit(setMinutes(80));
    const isHeld = (plan: RunnelPlan) => plan.autosave.status === 'asking';
    await until(() => isHeld(one) || isHeld(two), 'one of them asks');
    lookAt(one);
    lookAt(two);
    expect([isHeld(one), isHeld(two)].filter(Boolean)).to.have.length(1);
    await quiet(one);
    await quiet(two);
    const held = isHeld(one) ? one : two;
    expect(said(held)).to.equal(`${words.conflict} ${choice('other-tab', 'this-plan', 'save-file')}`);
    return { held, other: held === one ? two : one };
  }

  it('asks where both were changed, and takes the other’s without losing this one’s', async () => {
    const { held, other } = await apart();
    const [mine, theirs] = [minutesOf(held.plan), minutesOf(other.plan)];
    expect(savedMinutes()).to.equal(theirs);
    press(held, 'other-tab');
    await quiet(held);
    expect(minutesOf(held.plan)).to.equal(theirs);
    expect(hidden(held)).to.match(otherPlans(1));
    press(held, 'restore-copy');
    await until(() => minutesOf(other.plan) === mine, 'the other tab takes it over');
    expect(savedMinutes()).to.equal(mine);
  });

  it('asks where both were changed, and keeps this one’s without losing the other’s', async () => {
    const { held, other } = await apart();
    const mine = minutesOf(held.plan);
    press(held, 'this-plan');
    await until(() => minutesOf(other.plan) === mine, 'the other tab takes it over');
    await quiet(other);
    expect(hidden(other)).to.match(otherPlans(1));
    expect(savedMinutes()).to.equal(mine);
    expect(localStorage.length).to.equal(2);
  });

  it('counts what stands in a field as entered where the tab goes', async () => {
    const plan = await tab('<runnel-garden></runnel-garden>');
    const fields = () => [...(plan.querySelector('runnel-garden')?.shadowRoot?.querySelectorAll('input') ?? [])];
    await until(
      () => plan.querySelector('runnel-garden')?.shadowRoot?.querySelector('#plan') != null,
      'the garden is there',
    );
    plan.querySelector('runnel-garden')?.shadowRoot?.querySelector('#plan')?.setAttribute('open', '');
    await until(() => fields().length > 0, 'the garden has fields');
    const name = fields().find(({ type }) => type === 'text');
    if (name === undefined) throw new Error('the garden has no text field');
    const frame = document.querySelector('iframe');
    frame?.contentWindow?.focus();
    name.focus();
    name.select();
    name.ownerDocument.execCommand('insertText', false, 'Half a name');
    expect(localStorage.length).to.equal(0);
    frame?.remove();
    expect(localStorage.getItem(KEY)).to.contain('Half a name');
  });
});

describe('runnel-plan with from-link', () => {
  beforeEach(clearStorage);
  afterEach(() => {
    clearPage();
    history.replaceState(history.state, '', location.pathname + location.search);
  });
  const arrive = async (fragment: string) => history.replaceState(history.state, '', fragment);

  it('opens the link’s plan and leaves what is saved alone until somebody says yes', async () => {
    (await visit()).edit(setMinutes(70));
    await arrive(await fragmentOf(mixedGarden()));
    const plan = await visit({ fromLink: true });
    expect(plan.plan?.name).to.equal('Mixed garden');
    lookAt(plan);
    expect(savedMinutes()).to.equal(70);
    expect(said(plan)).to.equal(`${words.link} ${choice('this-plan', 'saved-plan', 'save-file')}`);
    expect(await accessibilityFaults(plan)).to.deep.equal([]);
    press(plan, 'this-plan');
    await quiet(plan);
    expect(savedPlanIn(localStorage.getItem(KEY) ?? '')?.plan.name).to.equal('Mixed garden');
    expect(hidden(plan)).to.match(otherPlans(1)).and.to.contain('“One bed”');
    expect(location.hash).to.equal('');
  });

  it('opens the saved one instead', async () => {
    (await visit()).edit(setMinutes(70));
    await arrive(await fragmentOf(mixedGarden()));
    const plan = await visit({ fromLink: true });
    press(plan, 'saved-plan');
    expect(minutesOf(plan.plan)).to.equal(70);
    expect(location.hash).to.equal('');
  });

  it('follows a link within the page', async () => {
    const plan = await visit({ fromLink: true });
    location.hash = await fragmentOf(mixedGarden());
    await until(() => plan.plan?.name === 'Mixed garden', 'the link’s plan is open');
    const isElsewhere = new Promise((resolve) => addEventListener('hashchange', resolve, { once: true }));
    location.hash = '#elsewhere';
    await isElsewhere;
    await quiet(plan);
    expect(plan.plan?.name).to.equal('Mixed garden');
  });

  it('refuses a link that is cut short, in words, and opens the page’s own plan', async () => {
    await arrive((await fragmentOf(mixedGarden())).slice(0, 200));
    const plan = await visit({ fromLink: true });
    expect(plan.plan?.name).to.equal('One bed');
    await until(() => said(plan) !== '', 'something is said');
    expect(plan.autosave.notes.map(({ code }) => code)).to.deep.equal(['bad-link']);
    expect(said(plan).startsWith(words.badLink(''))).to.equal(true);
    expect(plan.faults).to.deep.equal([]);
  });

  it('opens none where the page did not ask for it', async () => {
    await arrive(await fragmentOf(mixedGarden()));
    expect((await visit()).plan?.name).to.equal('One bed');
  });
});
