/**
 * A second place for what is stored. A browser holds what it was told to store in `localStorage` in memory for seconds before it
 * reaches the disk, so a browser that is killed loses it; a transaction of IndexedDB that has ended is on the disk. It is written
 * later, though, and not at all while a page is left, so it is no more than a mirror.
 */
export interface StorageMirror {
  /** Every text by its key; none where they cannot be had. */
  all(): Promise<ReadonlyMap<string, string>>;
  set(key: string, text: string): void;
  remove(key: string): void;
  /** Holds a connection until `close`. Without one, each call opens its own and closes it. */
  open(): void;
  close(): void;
}

/** Named as version 0.1.0 named them: what it stored is found there. */
const DATABASE = 'runnel';
const STORE = 'kept';

/** Longer than this a page does not wait for a plan. */
const LONGEST_WAIT_MS = 2000;

/** The mirror in IndexedDB. Whatever fails there fails in silence: `localStorage` counts. */
export function openStorageMirror(): StorageMirror {
  let opened: Promise<IDBDatabase> | undefined;
  let isHeld = false;
  const database = (): Promise<IDBDatabase> => {
    opened ??= openDatabase(() => {
      opened = undefined;
    });
    return opened;
  };
  /** Transactions that were begun end before the connection does. */
  const release = (): void => {
    if (isHeld) return;
    opened?.then((open) => open.close()).catch(() => undefined);
    opened = undefined;
  };
  const change = (act: (store: IDBObjectStore) => void): void => {
    database()
      .then((open) => act(open.transaction(STORE, 'readwrite', { durability: 'strict' }).objectStore(STORE)))
      .catch(() => undefined);
    release();
  };
  return {
    all: () => {
      const reading = database().then(readAll);
      release();
      return Promise.race([reading, nothingLater()]).catch(() => new Map<string, string>());
    },
    set: (key, text) => change((store) => store.put(text, key)),
    remove: (key) => change((store) => store.delete(key)),
    open: () => {
      isHeld = true;
    },
    close: () => {
      isHeld = false;
      release();
    },
  };
}

/** `onClosed`: called where the connection ends without `close`. */
async function openDatabase(onClosed: () => void): Promise<IDBDatabase> {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  const database = await resultOf(opening);
  database.onclose = onClosed;
  // Another tab may want to delete it.
  database.onversionchange = () => {
    database.close();
    onClosed();
  };
  return database;
}

async function readAll(database: IDBDatabase): Promise<ReadonlyMap<string, string>> {
  const store = database.transaction(STORE).objectStore(STORE);
  const [keys, texts] = await Promise.all([resultOf(store.getAllKeys()), resultOf(store.getAll())]);
  return new Map(keys.map((key, index) => [String(key), String(texts[index])]));
}

function resultOf<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function nothingLater(): Promise<ReadonlyMap<string, string>> {
  return new Promise((resolve) => setTimeout(resolve, LONGEST_WAIT_MS, new Map()));
}
