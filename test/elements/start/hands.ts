/** Presses, keys and touches in a page, each counted as the one action that it is to whoever does it. */
import type { Locator, Page } from 'playwright-core';

export type Way = 'mouse' | 'keyboard' | 'touch';

/** More stops than there are in a step. */
const MOST_TABS = 150;

export class Hands {
  readonly #page: Page;
  readonly #way: Way;
  actions = 0;

  constructor(page: Page, way: Way) {
    this.#page = page;
    this.#way = way;
  }

  named(name: string): Locator {
    return this.#page.locator(`runnel-start [name="${name}"], runnel-start [name^="laid-"][name$="-${name}"]`).first();
  }

  saying(words: string): Locator {
    return this.#page.locator('runnel-start').locator('button, summary', { hasText: words }).first();
  }

  async press(target: Locator): Promise<void> {
    this.actions += 1;
    await target.waitFor();
    if (this.#way === 'mouse') return target.click();
    if (this.#way === 'touch') return target.tap();
    await this.#reach(target);
    await this.#page.keyboard.press((await isInput(target)) ? 'Space' : 'Enter');
  }

  /** The first of what a field has found: with keys without leaving the field. */
  async take(option: Locator): Promise<void> {
    if (this.#way !== 'keyboard') return this.press(option);
    this.actions += 1;
    await this.#page.keyboard.press('Enter');
  }

  /** Of several, by its value: with keys the arrows go from one to the next. */
  async pick(value: string): Promise<void> {
    const radio = this.#page.locator(`runnel-start input[type=radio][value="${value}"]`).first();
    if (this.#way !== 'keyboard') return this.press(radio);
    this.actions += 1;
    await radio.waitFor();
    await this.#reach(this.#page.locator('runnel-start input[type=radio]:checked').first());
    for (let key = 0; key < 10 && !(await radio.evaluate((each) => each.matches(':focus'))); key++) {
      await this.#page.keyboard.press('ArrowDown');
      await this.#page.waitForTimeout(60);
    }
  }

  async type(name: string, text: string): Promise<void> {
    this.actions += 1;
    const field = this.named(name);
    await field.waitFor();
    if (this.#way === 'mouse') await field.click();
    else if (this.#way === 'touch') await field.tap();
    else await this.#reach(field);
    const isDate = (await field.getAttribute('type')) === 'date';
    // From the field's first part on: where it was pressed is any of them.
    if (isDate) {
      await field.blur();
      await field.focus();
    } else await this.#page.keyboard.press('ControlOrMeta+A');
    await this.#page.keyboard.type(text);
  }

  async choose(name: string, label: string): Promise<void> {
    this.actions += 1;
    const field = this.named(name);
    if (this.#way !== 'keyboard') return void (await field.selectOption({ label }));
    await this.#reach(field);
    await this.#page.keyboard.type(label);
  }

  async #reach(target: Locator): Promise<void> {
    await target.waitFor();
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      if (await target.evaluate((each) => each.matches(':focus'))) return;
      await this.#page.keyboard.press('Tab');
    }
    throw new Error(`no Tab comes to ${target}`);
  }
}

const isInput = (target: Locator): Promise<boolean> => target.evaluate((each) => each.localName === 'input');
