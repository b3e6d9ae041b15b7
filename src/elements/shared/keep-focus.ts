/** A button that goes, or can no longer be pressed, loses the focus: what stands next has it then. */
import type { LitElement, ReactiveController } from 'lit';

/** What Tab stops at; cells of a sheet look after themselves. */
const STOPS = ['button', 'a[href]', 'input', 'select', 'textarea', 'summary', '[tabindex="0"]'].join();

export class KeepFocus implements ReactiveController {
  readonly #host: LitElement;
  /** What has the focus before a drawing, then what stands after it, then what stands before it, from the nearest. */
  #stops: readonly HTMLElement[] = [];

  constructor(host: LitElement) {
    this.#host = host;
    host.addController(this);
  }

  hostUpdate(): void {
    const active = this.#active();
    if (active === undefined || !active.matches(STOPS)) {
      this.#stops = [];
      return;
    }
    const all = [...this.#host.renderRoot.querySelectorAll<HTMLElement>(STOPS)];
    const at = all.indexOf(active);
    this.#stops = [active, ...all.slice(at + 1), ...all.slice(0, at).toReversed()];
  }

  hostUpdated(): void {
    const [had, ...others] = this.#stops;
    this.#stops = [];
    if (had === undefined || (had.isConnected && !had.matches(':disabled'))) return;
    const now = this.#active();
    if (now !== undefined && now !== had) return;
    others.find((stop) => stop.isConnected && !stop.matches(':disabled') && stop.checkVisibility())?.focus();
  }

  /** Inside what the host draws itself. */
  #active(): HTMLElement | undefined {
    const { renderRoot } = this.#host;
    const active = (renderRoot.getRootNode() as Document | ShadowRoot).activeElement;
    return active instanceof HTMLElement && active !== this.#host && renderRoot.contains(active) ? active : undefined;
  }
}
