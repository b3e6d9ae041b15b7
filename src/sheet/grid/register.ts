/** Teaches a copy of Handsontable the season's cell type and plugin: the kit's own copy, or the one that a page has loaded. */
import type Handsontable from 'handsontable/base';
import type { CellTypeObject } from 'handsontable/cellTypes/registry';
import type { TextEditor } from 'handsontable/editors/textEditor';
import type { BasePlugin } from 'handsontable/plugins/base';
import { bindingOf, setBinding } from './bindings.ts';
import { bindCellKeys } from './cell-keys.ts';
import { clipboardHooks } from './clipboard-hooks.ts';
import { entryEditor } from './entry-editor.ts';
import { entryHooks } from './entry-hooks.ts';
import { WeekHeaders } from './header-hooks.ts';
import { bindHistoryKeys, letTabOut } from './keys.ts';
import { menuHooks } from './menu-hooks.ts';
import { foldOnClick, openOnSecondTap } from './pointer.ts';
import { SeasonBinding } from './season-binding.ts';
import { SEASON_CELL, SEASON_KEY, type SeasonSetting } from './season-setting.ts';
import { SheetSelection } from './selection-hooks.ts';

/** What is needed of the library; the full `Handsontable` has all of it, `BasePlugin` without saying so in its types. */
export interface GridLibrary {
  readonly plugins: {
    readonly registerPlugin: (plugin: typeof BasePlugin) => void;
    readonly [name: string]: unknown;
  };
  readonly cellTypes: { readonly registerCellType: (name: string, type: CellTypeObject) => void };
  readonly editors: { readonly TextEditor: typeof TextEditor };
}

/** The season's part of one grid, as `hot.getPlugin('runnelSeason')` gives it. */
export interface SeasonPlugin {
  /** Moves the selection to a place in the season; the focus stays where it is. */
  select: SheetSelection['moveTo'];
  /** Marks the week that another view points at. */
  point: WeekHeaders['point'];
  readonly binding: SeasonBinding;
}

const registered = new WeakSet<object>();

/** Does nothing where this copy of the library knows the season already. Throws where it is too old. */
export function registerSeason({ plugins, cellTypes, editors }: GridLibrary): void {
  const Base = plugins['BasePlugin'] as typeof BasePlugin | undefined;
  if (Base === undefined) throw new Error('this copy of Handsontable gives no BasePlugin: version 18 does');
  if (registered.has(Base)) return;
  registered.add(Base);
  cellTypes.registerCellType(SEASON_CELL, {
    CELL_TYPE: SEASON_CELL,
    editor: entryEditor(editors.TextEditor),
    renderer: (hot: Handsontable.Core, td: HTMLTableCellElement, row: number, ...rest: unknown[]) =>
      bindingOf(hot)?.render(td, row, rest[3] as Record<string, unknown>),
    // Keeps a refused entry in its editor.
    allowInvalid: false,
  });
  plugins.registerPlugin(seasonPlugin(Base));
}

function seasonPlugin(Base: typeof BasePlugin): typeof BasePlugin {
  return class RunnelSeason extends Base implements Partial<SeasonPlugin> {
    binding!: SeasonBinding;
    #selection: SheetSelection | undefined;
    #headers: WeekHeaders | undefined;

    static override get PLUGIN_KEY(): string {
      return SEASON_KEY;
    }

    override isEnabled(): boolean {
      return Boolean(this.#setting);
    }

    override enablePlugin(): void {
      const setting = this.#setting;
      if (this.enabled || setting === undefined) return;
      const binding = new SeasonBinding(this.hot, setting);
      this.binding = binding;
      setBinding(this.hot, binding);
      this.#selection = new SheetSelection(binding);
      this.#headers = new WeekHeaders(binding);
      for (const hooks of [entryHooks, clipboardHooks, menuHooks]) binding.addHooks(hooks(binding));
      binding.addHooks(this.#selection.hooks);
      binding.addHooks(this.#headers.hooks);
      bindHistoryKeys(binding);
      bindCellKeys(binding);
      letTabOut(binding);
      foldOnClick(binding);
      openOnSecondTap(binding);
      super.enablePlugin();
    }

    /** Another season, or none, in the grid's settings. */
    override updatePlugin(): void {
      if (this.binding.setting !== this.#setting) {
        this.disablePlugin();
        this.enablePlugin();
      }
      super.updatePlugin();
    }

    override disablePlugin(): void {
      this.#stop();
      super.disablePlugin();
    }

    override destroy(): void {
      this.#stop();
      super.destroy();
    }

    select(reference: Parameters<SheetSelection['moveTo']>[0]): void {
      this.#selection?.moveTo(reference);
    }

    point(week: number | undefined): void {
      this.#headers?.point(week);
    }

    #stop(): void {
      bindingOf(this.hot)?.stop();
      setBinding(this.hot, undefined);
    }

    get #setting(): SeasonSetting | undefined {
      return this.hot.getSettings()[SEASON_KEY] as SeasonSetting | undefined;
    }
  };
}
