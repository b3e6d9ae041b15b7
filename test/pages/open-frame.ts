/** A document of this origin in a frame, in whatever mode: one of `srcdoc` has no quirks. */
export interface OpenFrame {
  readonly frame: HTMLIFrameElement;
  readonly view: Window & typeof globalThis;
  readonly page: Document;
  /** Errors and rejections that nobody caught, from its load on. */
  readonly complaints: readonly string[];
}

/** Opens it with all its text, once it has loaded. `style`: of the frame. */
export async function openFrame(text: string, style = ''): Promise<OpenFrame> {
  const frame = document.createElement('iframe');
  frame.style.cssText = style;
  frame.src = URL.createObjectURL(new Blob([text], { type: 'text/html' }));
  const loaded = new Promise((resolve) => frame.addEventListener('load', resolve, { once: true }));
  document.body.append(frame);
  await loaded;
  const { contentWindow: view, contentDocument: page } = frame;
  if (view === null || page === null) throw new Error('there is no page');
  const complaints: string[] = [];
  view.addEventListener('error', ({ message }) => complaints.push(message));
  view.addEventListener('unhandledrejection', ({ reason }) => complaints.push(String(reason)));
  return { frame, view: view as Window & typeof globalThis, page, complaints };
}
