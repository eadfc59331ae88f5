/** Where a command writes to. Texts come whole, with their line ends. */
export type Io = { readonly out: (text: string) => void; readonly err: (text: string) => void }

/**
 * How a command ended. 0: all is met, or it did what was asked; 1: a rule is not met; 2: the input is at fault;
 * 3: nothing is broken, but something is referred or unknown; 70: the program is at fault.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 70
