import { vi } from 'vitest'

/** Waits until something holds, as long as a busy machine may need. */
export const soon = <T>(holds: () => T | Promise<T>): Promise<T> => vi.waitFor(holds, 15_000)
