import type { LateWordsPart } from '../../language/late-words.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { fetchLateWords } from './fetch-late-words.ts';
import { LatePart } from './late-part.ts';
import { PlanConsumer } from './plan-consumer.ts';
import { ViewElement } from './view-element.ts';

/** What an element shows, and the styles that go with it. */
export interface LateBody {
  render(): unknown;
}

/** An element all of whose content is fetched when it is first shown, so that a page does not wait for it. */
export abstract class LateElement<Body extends LateBody> extends ViewElement {
  static override readonly styles = [tokens, controls];

  /** @internal */
  protected readonly plan = new PlanConsumer(this);

  readonly #body = new LatePart(this, this.plan, () => this.#fetch());

  /**
   * Words that are fetched with the body, where its language keeps them apart.
   *
   * @internal
   */
  protected readonly lateWords: LateWordsPart | undefined;

  /**
   * Called once, when the element first renders.
   *
   * @internal
   */
  protected abstract fetchBody(): Promise<Body>;

  /**
   * Undefined until it is there.
   *
   * @internal
   */
  protected get body(): Body | undefined {
    return this.#body.part;
  }

  async #fetch(): Promise<Body> {
    if (this.lateWords === undefined) return this.fetchBody();
    const [body] = await Promise.all([this.fetchBody(), fetchLateWords(this.lateWords, this.plan.view.locale)]);
    return body;
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && isComplete;
  }

  protected override render(): unknown {
    return this.body?.render() ?? this.#body.waiting;
  }
}
