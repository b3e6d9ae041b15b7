/** Empties both places where a browser saves plans. */
export async function clearStorage(): Promise<void> {
  localStorage.clear();
  const database = await openDatabase();
  const transaction = database.transaction('kept', 'readwrite');
  transaction.objectStore('kept').clear();
  await new Promise((resolve) => {
    transaction.oncomplete = resolve;
  });
  database.close();
}

/** What the mirror on the disk holds under a key. */
export async function mirrored(key: string): Promise<string | undefined> {
  const database = await openDatabase();
  const request = database.transaction('kept').objectStore('kept').get(key);
  await new Promise((resolve) => {
    request.onsuccess = resolve;
  });
  database.close();
  return request.result;
}

function openDatabase(): Promise<IDBDatabase> {
  const opening = indexedDB.open('runnel', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('kept');
  return new Promise((resolve, reject) => {
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
}
