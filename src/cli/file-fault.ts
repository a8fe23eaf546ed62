/** Why the system would not give a file. */

/** What the system said when it would not give the file; any other fault is thrown on. */
export function fileFault(error: unknown): string {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  const known: Record<string, string> = {
    ENOENT: 'no such file',
    EISDIR: 'a folder',
    EACCES: 'a file that may not be read',
    EPERM: 'a file that may not be read',
  };
  const text = code === undefined ? undefined : known[code];
  if (text === undefined) throw error;
  return text;
}
