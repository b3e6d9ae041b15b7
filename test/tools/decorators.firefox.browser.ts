import { consume, createContext, provide } from '@lit/context';
import { expect } from 'chai';
import { html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fixture } from './fixture.ts';

const flow = createContext<number>(Symbol('flow'));

@customElement('test-supply')
class Supply extends LitElement {
  @provide({ context: flow }) @property({ type: Number }) litresPerMinute = 8;
}

@customElement('test-valve')
class Valve extends LitElement {
  @consume({ context: flow, subscribe: true }) @property({ attribute: false }) litresPerMinute = 0;

  protected override render(): unknown {
    return html`${this.litresPerMinute} L/min`;
  }
}

describe('decorators as they are compiled for a browser', () => {
  it('make a field reactive, not a plain property that hides the accessor', async () => {
    const supply = await fixture<Supply>(html`<test-supply><test-valve></test-valve></test-supply>`);
    const valve = supply.querySelector<Valve>('test-valve');
    await valve?.updateComplete;
    expect(valve?.shadowRoot?.textContent).to.equal('8 L/min');

    supply.setAttribute('litresPerMinute', '12');
    await supply.updateComplete;
    await valve?.updateComplete;
    expect(valve?.shadowRoot?.textContent).to.equal('12 L/min');
  });
});
