/** Every command: what it is for in a few words, and its file, loaded only when it is called. */
import type { Command } from '../command.ts';

interface CommandEntry {
  summary: string;
  load: () => Promise<{ command: Command }>;
}

export const commandTable: Record<string, CommandEntry> = {};
