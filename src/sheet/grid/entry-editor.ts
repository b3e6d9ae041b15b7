/** The editor of a season's cell: what is typed goes to the plan as an edit, and stays on screen where it is refused. */
import type { TextEditor } from 'handsontable/editors/textEditor';
import { sheetWords } from '../../language/en/sheet.ts';
import { bindingOf } from './bindings.ts';
import { enterText, type TypedInto } from './entry-hooks.ts';

type TextEditorClass = typeof TextEditor;

/** Makes the editor on the text editor of the library at hand, which may be the page's own copy. */
export function entryEditor(Base: TextEditorClass): TextEditorClass {
  return class EntryEditor extends Base {
    #opened = '';
    /** What is typed into: rows may move, and another plan may be opened. */
    #typedInto: TypedInto | undefined;

    override beginEditing(newInitialValue?: unknown, event?: Event): void {
      const cell = this.#cell();
      const sheet = bindingOf(this.hot)?.setting.sheet;
      const text = cell === undefined ? '' : sheet?.entryText(cell);
      this.#typedInto = cell && sheet && { cell, documentId: sheet.state.documentId };
      this.#opened = this.isInFullEditMode() ? (text ?? '') : '';
      super.beginEditing(typeof newInitialValue === 'string' ? newInitialValue : text, event);
    }

    override createElements(type?: string): void {
      super.createElements(type);
      // It waits in the page, out of sight, before it is opened on a cell.
      const sheet = bindingOf(this.hot)?.setting.sheet;
      if (sheet !== undefined) this.TEXTAREA.setAttribute('aria-label', sheetWords(sheet.reader.language).entry);
      this.TEXTAREA.addEventListener('input', () => this.#hint());
    }

    override open(): void {
      super.open();
      const cell = this.#cell();
      const binding = bindingOf(this.hot);
      if (cell === undefined || binding === undefined) return;
      this.TEXTAREA.setAttribute('aria-label', binding.setting.sheet.entryLabel(cell));
      this.TEXTAREA.inputMode = cell.row.kind === 'zone' ? 'text' : 'decimal';
      this.#hint();
    }

    /** What was typed is entered or given up: whoever keeps unfinished texts hears of it. */
    override close(): void {
      super.close();
      bindingOf(this.hot)?.callout.hint(0, 0, undefined);
      this.TEXTAREA.dispatchEvent(new Event('change', { bubbles: true }));
    }

    override finishEditing(
      restoreOriginalValue?: boolean,
      ctrlDown?: boolean,
      callback?: (closed: boolean) => void,
    ): void {
      const text = String(this.getValue() ?? '');
      const isCommit = this.state === 'STATE_EDITING' && restoreOriginalValue !== true;
      if (!isCommit || text === this.#opened) {
        super.finishEditing(isCommit ? true : restoreOriginalValue, ctrlDown, callback);
        return;
      }
      const { row, col } = this;
      const why =
        row === null || col === null
          ? undefined
          : enterText(this.hot, { row, column: col }, { text, into: this.#typedInto, everywhere: ctrlDown === true });
      if (why === undefined) super.finishEditing(true, ctrlDown, callback);
      else this.#stayOpen(why, callback);
    }

    /**
     * What follows a commit, such as a step to the next cell, waits for an editor that is still busy; then this one says
     * no, and Handsontable brings the selection back to it.
     */
    #stayOpen(why: readonly string[], callback: ((closed: boolean) => void) | undefined): void {
      this.state = 'STATE_WAITING';
      if (callback !== undefined) super.finishEditing(false, false, callback);
      this.hot.rootWindow.setTimeout(() => {
        if (this.hot.isDestroyed) return;
        this.state = 'STATE_FINISHED';
        this.discardEditor(false);
        if (this.row !== null && this.col !== null) bindingOf(this.hot)?.callout.show(this.row, this.col, why);
      });
    }

    /** Says what the text would set, and for what. */
    #hint(): void {
      const { row, col } = this;
      const cell = this.#cell();
      const binding = bindingOf(this.hot);
      if (row === null || col === null || cell === undefined || binding === undefined) return;
      const words = binding.setting.sheet.entryHint(cell, this.TEXTAREA.value);
      this.TEXTAREA.setAttribute('aria-description', words);
      binding.callout.hint(row, col, words);
    }

    #cell() {
      const { row, col } = this;
      return row === null || col === null ? undefined : bindingOf(this.hot)?.cell(row, col);
    }
  };
}
