import { expect } from 'chai';
import { html as lit, nothing } from 'lit';
import { ViewElement } from '../../../src/elements/shared/view-element.ts';
import { clearPage, html, onPage, until } from './on-page.ts';

class ThreeButtons extends ViewElement {
  gone = false;
  disabled = false;

  protected override render(): unknown {
    return lit`<button id="first">First</button>
      ${this.gone ? nothing : lit`<button id="second" ?disabled=${this.disabled}>Second</button>`}
      <button id="third" ?hidden=${this.gone}>Third</button>`;
  }
}
customElements.define('test-three-buttons', ThreeButtons);

async function shown(): Promise<{
  element: ThreeButtons;
  focused: () => string | undefined;
  move: (id: string) => void;
}> {
  const place = onPage(html`<test-three-buttons></test-three-buttons>`);
  const element = place.querySelector('test-three-buttons') as ThreeButtons;
  await element.updateComplete;
  const move = (id: string) => element.renderRoot.querySelector<HTMLElement>(`#${id}`)?.focus();
  move('first');
  // What keeps the place is fetched as the keyboard comes in.
  await new Promise((resolve) => setTimeout(resolve, 300));
  return { element, move, focused: () => element.shadowRoot?.activeElement?.id };
}

describe('the keyboard', () => {
  afterEach(clearPage);

  it('goes on to the next button where its own can no longer be pressed', async () => {
    const { element, move, focused } = await shown();
    move('second');
    element.disabled = true;
    element.requestUpdate();
    await until(() => focused() === 'third', 'the third has the keyboard');
  });

  it('goes back to the one before where nothing after it can be seen', async () => {
    const { element, move, focused } = await shown();
    move('second');
    element.gone = true;
    element.requestUpdate();
    await until(() => focused() === 'first', 'the first has the keyboard');
  });

  it('stays where it is when its button stays', async () => {
    const { element, focused } = await shown();
    element.disabled = true;
    element.requestUpdate();
    await element.updateComplete;
    expect(focused()).to.equal('first');
  });
});
