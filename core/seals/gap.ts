import { z } from 'zod'

/** What the schema of a kind says that may lie in the gap of a rebate, too. */
export const inGap = { gap: z.literal('rebate').exactOptional() }
