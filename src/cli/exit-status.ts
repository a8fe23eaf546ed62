/** What a command's exit status says to the program that called it. */
export const exitStatus = {
  done: 0,
  /** The answer is a warning that needs the keeper. */
  warning: 1,
  /** Bad input: nothing was written. */
  badInput: 2,
  fault: 3,
} as const;
export type ExitStatus = (typeof exitStatus)[keyof typeof exitStatus];
