/** Asks the plan around a view to read a file that a person chose. */
export class RunnelOpenEvent extends Event {
  static readonly type = 'runnel-open';

  readonly file: Blob;

  constructor(file: Blob) {
    super(RunnelOpenEvent.type, { bubbles: true, composed: true });
    this.file = file;
  }
}
