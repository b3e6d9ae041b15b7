import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../src/elements/plan/define.ts';
import { keptIn } from '../../src/autosave/kept-writer.ts';
import type { RunnelPlan } from '../../src/elements/plan/runnel-plan.ts';
import type { RunnelKeepEvent } from '../../src/elements/shared/events/keep-event.ts';
import { linkTo } from '../../src/exchange/link/link-to.ts';
import { writePlan } from '../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { accessibilityFaults } from '../elements/shared/axe.ts';
import { clearPage, html, onPage, quiet, until } from '../elements/shared/on-page.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';
import { copyOf, forgetAll } from './forget.ts';

const KEY = 'runnel:beds';
const setMinutes = (minutes: number) => ({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes }) as const;
const minutesOf = (plan: Plan | undefined) => plan?.choices?.['beds']?.['2027-06-07']?.minutes;
const keptMinutes = () => minutesOf(keptIn(localStorage.getItem(KEY) ?? undefined)?.plan);
const addressOf = (plan: Plan) => URL.createObjectURL(new Blob([writePlan(plan)]));
const fragmentOf = async (plan: Plan) => new URL(await linkTo(plan, location.href)).hash;
const wait = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

const strip = (plan: Element) => plan.shadowRoot?.querySelector('runnel-plan-keeping')?.shadowRoot;
const wordsOf = (elements: Iterable<Element>) =>
  [...elements].map(({ textContent }) => textContent?.replaceAll(/\s+/g, ' ').trim()).join(' ');
const said = (plan: Element) => wordsOf(strip(plan)?.querySelectorAll('[role=status] :is(p, button)') ?? []);
const hidden = (plan: Element) => wordsOf(strip(plan)?.querySelectorAll('details :is(summary, span, button)') ?? []);

function press(plan: Element, words: string): void {
  const buttons = [...(strip(plan)?.querySelectorAll('button') ?? [])];
  const button = buttons.find(({ textContent }) => textContent?.trim() === words);
  if (button === undefined) throw new Error(`there is no button ${words} in: ${said(plan)} ${hidden(plan)}`);
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
  beforeEach(forgetAll);
  afterEach(() => {
    clearPage();
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
    history.replaceState(history.state, '', location.pathname + location.search);
  });

  it('keeps what is changed within 300 ms, in both places, and begins the next visit with it', async () => {
    const plan = await visit();
    expect(said(plan)).to.equal('');
    plan.edit(setMinutes(70));
    await wait(350);
    expect(keptMinutes()).to.equal(70);
    await until(() => keptMinutes() === 70, 'it is kept');
    let copy: string | undefined;
    for (let tries = 0; tries < 100 && copy === undefined; tries++) {
      await wait(50);
      copy = await copyOf(KEY);
    }
    expect(copy).to.equal(localStorage.getItem(KEY));
    const next = await visit();
    expect(minutesOf(next.plan)).to.equal(70);
    expect(said(next)).to.match(
      /^This is the plan as it was left in this browser, .+\. Open the page’s own plan Close$/,
    );
    expect(await accessibilityFaults(next)).to.deep.equal([]);
  });

  it('keeps at once what was changed last where the element goes', async () => {
    const plan = await visit();
    plan.edit(setMinutes(75));
    plan.remove();
    expect(keptMinutes()).to.equal(75);
  });

  it('goes back to the page’s own plan by keyboard, and brings the kept one back from where it was put aside', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    const next = await visit();
    strip(next)?.querySelector('button')?.focus();
    await sendKeys({ press: 'Enter' });
    await until(() => minutesOf(next.plan) === undefined, 'the page’s own plan is open');
    await quiet(next);
    expect(said(next)).to.equal('This is the page’s own plan. Yours is put aside, below. Close');
    expect(strip(next)?.activeElement, 'the keyboard stays where it was').not.to.equal(null);
    expect(hidden(next)).to.match(
      /^One plan is put aside in this browser “One bed”, changed .+ Bring it back Save as a file Throw away$/,
    );
    strip(next)?.querySelector('details')?.setAttribute('open', '');
    expect(await accessibilityFaults(next)).to.deep.equal([]);
    press(next, 'Throw away');
    await quiet(next);
    expect(hidden(next)).to.contain('Throw away for good');
    press(next, 'Bring it back');
    await quiet(next);
    expect(minutesOf(next.plan)).to.equal(70);
    expect(keptMinutes()).to.equal(70);
    expect(hidden(next)).to.equal('');
  });

  it('tells the page in an event what it says, and takes the choice from there', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    clearPage();
    const place = onPage(html``);
    const events: RunnelKeepEvent[] = [];
    place.addEventListener('runnel-keep', (event) => events.push(event));
    const next = document.createElement('runnel-plan');
    Object.assign(next, { src: addressOf(oneBed()), storageKey: 'beds' });
    place.append(next);
    await until(() => events.length > 0, 'the page is told');
    expect(events[0]?.keeping).to.equal(next.keeping);
    expect(next.keeping).to.deep.include({ status: 'kept', putAside: [] });
    expect(next.keeping.notes[0]).to.deep.include({ kind: 'returned', choices: ['page-plan', 'close'] });
    next.keep('close', 'returned');
    expect(next.keeping.notes).to.deep.equal([]);
  });

  it('goes on with the same plan when it is moved', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    const open = plan.plan;
    onPage(html``).append(plan);
    await wait(50);
    expect(plan.plan).to.equal(open);
    plan.edit(setMinutes(80));
    await until(() => keptMinutes() === 80, 'it is kept as before');
  });

  it('neither reads nor writes where it is read-only', async () => {
    (await visit()).edit(setMinutes(70));
    const plan = await visit({ readOnly: true });
    expect(minutesOf(plan.plan)).to.equal(undefined);
    plan.openText(writePlan(mixedGarden()));
    await wait(400);
    expect(keptMinutes()).to.equal(70);
    expect(localStorage.length).to.equal(1);
  });

  it('comes back from the disk where the browser was killed', async () => {
    const plan = await visit();
    plan.edit(setMinutes(70));
    await until(() => keptMinutes() === 70, 'it is kept');
    for (let tries = 0; tries < 100 && (await copyOf(KEY)) === undefined; tries++) await wait(50);
    clearPage();
    localStorage.clear();
    expect(minutesOf((await visit()).plan)).to.equal(70);
    expect(keptMinutes()).to.equal(70);
  });

  it('says where what was kept is corrupt, opens the page’s own plan, and offers the text as a file', async () => {
    localStorage.setItem(KEY, '{"format":"runnel-kept","vers');
    const plan = await visit();
    expect(plan.plan?.name).to.equal('One bed');
    await until(() => said(plan) !== '', 'something is said');
    expect(said(plan)).to.match(
      /^What this browser had kept cannot be read .+ put aside, below, and can be saved as a file\. Close$/,
    );
    expect(hidden(plan)).to.contain('A text that cannot be read Save as a file');
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
    press(plan, 'Save as a file');
    HTMLAnchorElement.prototype.click = click;
    expect(files).to.deep.equal(['damaged-plan.txt']);
    plan.edit(setMinutes(70));
    await until(() => keptMinutes() === 70, 'it is kept again');
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
    expect(said(plan)).to.match(
      /^This browser’s storage is full: your changes are not being kept\..+Save this one as a file Try again$/,
    );
    expect(plan.edit(setMinutes(80)).ok).to.equal(true);
    expect(await accessibilityFaults(plan)).to.deep.equal([]);
    localStorage.removeItem('other0');
    press(plan, 'Try again');
    await quiet(plan);
    expect(said(plan)).to.equal('');
    expect(keptMinutes()).to.equal(80);
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
        expect(said(plan)).to.match(/^This browser does not let the page keep anything/);
        expect(plan.edit(setMinutes(70)).ok).to.equal(true);
        await wait(300);
        expect(plan.keeping.status).to.equal('not-kept');
        if (isOnWindow) Object.defineProperty(window, 'localStorage', own);
        else Reflect.deleteProperty(window, 'localStorage');
        await until(() => said(plan) === '', 'it works again by itself');
        expect(keptMinutes()).to.equal(70);
      } finally {
        if (isOnWindow) Object.defineProperty(window, 'localStorage', own);
        else Reflect.deleteProperty(window, 'localStorage');
      }
    });
  }
});

describe('runnel-plan in two tabs', function () {
  this.timeout(60_000);
  beforeEach(forgetAll);
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
    while (plan()?.plan === undefined && performance.now() < end) await wait(30);
    const found = plan();
    if (found?.plan === undefined) throw new Error('the tab has no plan');
    return found;
  }

  it('shows in one what is changed in the other, and says so', async () => {
    const [one, two] = [await visit(), await tab()];
    two.edit(setMinutes(70));
    await until(() => minutesOf(one.plan) === 70, 'the first tab has it');
    await quiet(one);
    expect(said(one)).to.equal('The plan was changed in another tab. Its changes are shown here. Close');
    one.edit(setMinutes(80));
    await until(() => minutesOf(two.plan) === 80, 'the second tab has it');
    expect(keptMinutes()).to.equal(80);
  });

  /** Both change the plan at once. */
  async function apart(): Promise<{ held: RunnelPlan; other: RunnelPlan }> {
    const [one, two] = [await visit(), await tab()];
    one.edit(setMinutes(70));
    two.edit(setMinutes(80));
    const isHeld = (plan: RunnelPlan) => plan.keeping.status === 'asking';
    await until(() => isHeld(one) || isHeld(two), 'one of them asks');
    await wait(400);
    expect([isHeld(one), isHeld(two)].filter(Boolean)).to.have.length(1);
    await quiet(one);
    await quiet(two);
    const held = isHeld(one) ? one : two;
    expect(said(held)).to.match(
      /^The plan was changed here and in another tab\..+Take the other tab’s Keep this one Save this one as a file$/,
    );
    return { held, other: held === one ? two : one };
  }

  it('asks where both were changed, and takes the other’s without losing this one’s', async () => {
    const { held, other } = await apart();
    const [mine, theirs] = [minutesOf(held.plan), minutesOf(other.plan)];
    expect(keptMinutes()).to.equal(theirs);
    press(held, 'Take the other tab’s');
    await quiet(held);
    expect(minutesOf(held.plan)).to.equal(theirs);
    expect(hidden(held)).to.match(/^One plan is put aside/);
    press(held, 'Bring it back');
    await until(() => minutesOf(other.plan) === mine, 'the other tab takes it over');
    expect(keptMinutes()).to.equal(mine);
  });

  it('asks where both were changed, and keeps this one’s without losing the other’s', async () => {
    const { held, other } = await apart();
    const mine = minutesOf(held.plan);
    press(held, 'Keep this one');
    await until(() => minutesOf(other.plan) === mine, 'the other tab takes it over');
    await quiet(other);
    expect(hidden(other)).to.match(/^One plan is put aside/);
    expect(keptMinutes()).to.equal(mine);
    expect(localStorage.length).to.equal(2);
  });

  it('counts what stands in a field as typed where the tab goes', async () => {
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
  beforeEach(forgetAll);
  afterEach(() => {
    clearPage();
    history.replaceState(history.state, '', location.pathname + location.search);
  });
  const arrive = async (fragment: string) => history.replaceState(history.state, '', fragment);

  it('opens the link’s plan and leaves what is kept alone until somebody says yes', async () => {
    (await visit()).edit(setMinutes(70));
    await arrive(await fragmentOf(mixedGarden()));
    const plan = await visit({ fromLink: true });
    expect(plan.plan?.name).to.equal('Mixed garden');
    await wait(350);
    expect(keptMinutes()).to.equal(70);
    expect(said(plan)).to.equal(
      'This plan came with a link, and is not kept in this browser yet. Keep this one Open the one that is kept Save this one as a file',
    );
    expect(await accessibilityFaults(plan)).to.deep.equal([]);
    press(plan, 'Keep this one');
    await quiet(plan);
    expect(keptIn(localStorage.getItem(KEY) ?? '')?.plan.name).to.equal('Mixed garden');
    expect(hidden(plan)).to.match(/^One plan is put aside in this browser “One bed”/);
    expect(location.hash).to.equal('');
  });

  it('opens the kept one instead', async () => {
    (await visit()).edit(setMinutes(70));
    await arrive(await fragmentOf(mixedGarden()));
    const plan = await visit({ fromLink: true });
    press(plan, 'Open the one that is kept');
    expect(minutesOf(plan.plan)).to.equal(70);
    expect(location.hash).to.equal('');
  });

  it('follows a link within the page', async () => {
    const plan = await visit({ fromLink: true });
    location.hash = await fragmentOf(mixedGarden());
    await until(() => plan.plan?.name === 'Mixed garden', 'the link’s plan is open');
    location.hash = '#elsewhere';
    await wait(50);
    expect(plan.plan?.name).to.equal('Mixed garden');
  });

  it('refuses a link that is cut short, in words, and opens the page’s own plan', async () => {
    await arrive((await fragmentOf(mixedGarden())).slice(0, 200));
    const plan = await visit({ fromLink: true });
    expect(plan.plan?.name).to.equal('One bed');
    await until(() => said(plan) !== '', 'something is said');
    expect(said(plan)).to.match(/^The plan in the link was not opened\. The link is cut short or damaged/);
    expect(plan.faults).to.deep.equal([]);
  });

  it('opens none where the page did not ask for it', async () => {
    await arrive(await fragmentOf(mixedGarden()));
    expect((await visit()).plan?.name).to.equal('One bed');
  });
});
