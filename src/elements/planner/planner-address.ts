import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { isPlannerView, type PlannerView } from './planner-views.ts';

/** In the query and not behind the `#`, where a link carries a plan. */
const NAME = 'view';

export interface AddressedHost extends ReactiveControllerHost, HTMLElement {
  readonly fullPage: boolean;
  /** The view that stands there where no address names one. */
  readonly firstView: PlannerView;
  /** Called where the address names another view. */
  followAddress(view: PlannerView): void;
}

/** The planner that the page's address belongs to: the first that is on the page and asks for it. */
let owner: PlannerAddress | undefined;

/** Keeps the view of a planner that has the page to itself in the page's address, and follows the browser's back and forward. */
export class PlannerAddress implements ReactiveController {
  readonly #host: AddressedHost;

  constructor(host: AddressedHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Whether the page's address is this planner's. */
  get isOwn(): boolean {
    return owner === this;
  }

  hostConnected(): void {
    addEventListener('popstate', this.#onPopState);
    this.hostUpdate();
  }

  hostUpdate(): void {
    if (!this.#host.fullPage) this.#letGo();
    else if (owner === undefined) owner = this;
  }

  hostDisconnected(): void {
    removeEventListener('popstate', this.#onPopState);
    this.#letGo();
  }

  /** The view that the address names. */
  read(): PlannerView | undefined {
    const named = this.isOwn ? new URLSearchParams(location.search).get(NAME) : undefined;
    return isPlannerView(named) ? named : undefined;
  }

  /** The address of a view; undefined where the address is not this planner's. */
  of(view: PlannerView): string | undefined {
    if (!this.isOwn) return undefined;
    const query = new URLSearchParams(location.search);
    query.set(NAME, view);
    return `${location.pathname}?${query}`;
  }

  /** Another view was chosen: a step that the browser's back button takes back. */
  go(view: PlannerView): void {
    const address = this.of(view);
    if (address === undefined || this.read() === view) return;
    history.pushState(history.state, '', address + location.hash);
  }

  readonly #onPopState = (): void => {
    if (this.isOwn) this.#host.followAddress(this.read() ?? this.#host.firstView);
  };

  #letGo(): void {
    if (owner === this) owner = undefined;
  }
}
