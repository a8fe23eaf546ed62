/** The store in memory. */
export { type MemoryPlace, memoryPlace, openMemoryStore } from './memory-store.ts';
