/**
 * A second place for what is kept. A browser holds what it was told to keep in `localStorage` in memory for seconds before it
 * reaches the disk, so a browser that is killed takes it along; a transaction of IndexedDB that has ended is there. It is written late,
 * though, and not at all while a page is left, so it is no more than a copy.
 */
export interface KeptCopy {
  /** Every text by its key; none where they cannot be had. */
  all(): Promise<ReadonlyMap<string, string>>;
  set(key: string, text: string): void;
  remove(key: string): void;
}

const DATABASE = 'runnel';
const STORE = 'kept';

/** Longer than this a page does not wait for a plan. */
const LONGEST_WAIT_MS = 2000;

/** The copy in IndexedDB. Whatever fails there fails in silence: the first place counts. */
export function openKeptCopy(): KeptCopy {
  const database = openDatabase();
  const change = (act: (store: IDBObjectStore) => void): void => {
    database
      .then((open) => act(open.transaction(STORE, 'readwrite', { durability: 'strict' }).objectStore(STORE)))
      .catch(() => undefined);
  };
  return {
    all: () => Promise.race([database.then(readAll), later()]).catch(() => new Map<string, string>()),
    set: (key, text) => change((store) => store.put(text, key)),
    remove: (key) => change((store) => store.delete(key)),
  };
}

async function openDatabase(): Promise<IDBDatabase> {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  const database = await resultOf(opening);
  // Another tab may want to delete it.
  database.onversionchange = () => database.close();
  return database;
}

async function readAll(database: IDBDatabase): Promise<ReadonlyMap<string, string>> {
  const store = database.transaction(STORE).objectStore(STORE);
  const [keys, texts] = await Promise.all([resultOf(store.getAllKeys()), resultOf(store.getAll())]);
  return new Map(keys.map((key, place) => [String(key), String(texts[place])]));
}

function resultOf<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function later(): Promise<ReadonlyMap<string, string>> {
  return new Promise((resolve) => setTimeout(resolve, LONGEST_WAIT_MS, new Map()));
}
