import { config } from 'zod'

// The page's policy forbids to make code out of text, which schemas would try for speed as soon as one is made.
// So this comes before everything that has a schema.
config({ jitless: true })
