/**
 * Photos of cups, in a database of their own on this device. They are no entries: the logbook stays small
 * enough to be sent, copied and read by anyone.
 */
export interface Photo {
  id: string;
  /** The device's logbook and the cup: two households may both have an M1. */
  cup: string;
  on: string;
  picture: Blob;
}

const database = 'flylarder photos';

/** The cup's photos, oldest first. */
export async function photosOf(cup: string): Promise<Photo[]> {
  const photos = await inStore<Photo[]>('readonly', (store) => store.index('cup').getAll(cup));
  return photos.sort((a, b) => (a.on + a.id < b.on + b.id ? -1 : 1));
}

/** False when the device has no room; what was kept before stays. */
export async function keepPhoto(photo: Photo): Promise<boolean> {
  try {
    await inStore('readwrite', (store) => store.put(photo));
    return true;
  } catch {
    return false;
  }
}

export async function dropPhoto(id: string): Promise<void> {
  await inStore('readwrite', (store) => store.delete(id));
}

/** Resolves when the transaction is complete, not before. */
async function inStore<T>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest): Promise<T> {
  const db = await opened();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = db.transaction('photos', mode);
      const request = ask(transaction.objectStore('photos'));
      transaction.oncomplete = () => resolve(request.result as T);
      transaction.onabort = () => reject(transaction.error ?? request.error ?? new Error('aborted'));
    });
  } finally {
    db.close();
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(database, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('photos', { keyPath: 'id' }).createIndex('cup', 'cup');
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('the photos cannot be opened'));
  });
}
