import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { html, render } from 'lit';
import { unlessTyping } from '../../../src/elements/shared/unless-typing.ts';
import { clearPage, onPage } from './on-page.ts';

/** A field, and what draws it anew. */
function field(type: 'text' | 'date', value: string) {
  const place = onPage(html`<div></div>`);
  const draw = (text: string) =>
    render(html`<input type=${type} .value=${unlessTyping(text)} /><button></button>`, place);
  draw(value);
  return { input: place.querySelector('input') as HTMLInputElement, draw };
}

describe('a field that is drawn anew', () => {
  afterEach(clearPage);

  it('shows the text that it is given', () => {
    const { input, draw } = field('text', 'Beans');
    draw('Peas');
    expect(input.value).to.equal('Peas');
  });

  it('keeps what is being typed until it is entered, and shows what it is given from then on', async () => {
    const { input, draw } = field('text', '');
    input.focus();
    await sendKeys({ type: 'Leeks' });
    draw('Peas');
    expect(input.value).to.equal('Leeks');
    await sendKeys({ press: 'Enter' });
    draw('Peas');
    expect(input.value).to.equal('Peas');
  });

  it('shows what it is given once it is left', async () => {
    const { input, draw } = field('text', '');
    input.focus();
    await sendKeys({ type: 'Leeks' });
    input.blur();
    draw('Peas');
    expect(input.value).to.equal('Peas');
  });

  it('takes no digit of a date for its end', async () => {
    const { input, draw } = field('date', '2027-06-14');
    input.focus();
    await sendKeys({ press: 'ArrowUp' });
    const typed = input.value;
    expect(typed).not.to.equal('2027-06-14');
    draw('2027-06-14');
    expect(input.value).to.equal(typed);
  });
});
