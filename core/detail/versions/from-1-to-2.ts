import { type Plain, plainAt, type Upgrade } from './upgrade'

/**
 * Version 2 gives an opening several fixings instead of one, and room for mullions, blocks and parts that must stay.
 */
export const from1to2: Upgrade = {
  from: 1,
  apply: plain => ({
    ...plain,
    format: { ...plainAt(plain.format), version: 2, readableFrom: 2 },
    openings: Object.fromEntries(
      Object.entries(plainAt(plain.openings)).map(([id, it]) => [id, opening(plainAt(it))]),
    ),
  }),
}

const opening = ({ fixing, ...rest }: Plain): Plain => ({
  ...rest,
  mullions: [],
  fixings: fixing === undefined ? [] : [fixing],
  blocks: [],
  stays: [],
})
