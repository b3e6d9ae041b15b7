import { LitElement } from 'lit';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { LatePart } from './late-part.ts';
import { PlanConsumer } from './plan-consumer.ts';

/** What an element shows, and the styles that go with it. */
export interface LateBody {
  render(): unknown;
}

/** An element all of whose content is fetched when it is first shown, so that a page does not wait for it. */
export abstract class LateElement<Body extends LateBody> extends LitElement {
  static override readonly styles = [tokens, controls];

  /** @internal */
  protected readonly plan = new PlanConsumer(this);

  readonly #body = new LatePart(this, this.plan, () => this.fetchBody());

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

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && isComplete;
  }

  protected override render(): unknown {
    return this.body?.render() ?? this.#body.waiting;
  }
}
