/** The store in a browser. */
export { deleteIndexedDbStore, openIndexedDbStore } from './indexeddb-store.ts';
