import { z } from 'zod'
import { type Words, words } from '../words'

/** How a value came to be known. */
export const bases = ['measured', 'specified', 'assumed'] as const
export type Basis = (typeof bases)[number]
export const basisName: Readonly<Record<Basis, Words>> = {
  measured: words('measured', 'gemessen'),
  specified: words('specified', 'vorgegeben'),
  assumed: words('assumed', 'angenommen'),
}

/** A value and how it came to be known. An absent value is not stated. */
export type Stated<T> = { readonly value: T; readonly basis: Basis; readonly note?: string }

/** The schema of a stated value in a file. */
export const stated = <S extends z.ZodType>(of: S) =>
  z.strictObject({ value: of, basis: z.enum(bases), note: z.string().max(500).exactOptional() })

export const measured = <T>(value: T): Stated<T> => ({ value, basis: 'measured' })
export const specified = <T>(value: T): Stated<T> => ({ value, basis: 'specified' })
export const assumed = <T>(value: T): Stated<T> => ({ value, basis: 'assumed' })
