/** When work is done: after a while, or with the next frame. Each gives what takes it back. */
export type Clock = {
  readonly after: (ms: number, work: () => void) => () => void
  readonly inFrame: (work: () => void) => () => void
}

/** How followers are told of what moves. */
export type Following<T> = {
  /** it has moved: the followers show it a moment later, one a frame */
  readonly moved: (to: T) => void
  /** it rests: all followers show it at once */
  readonly rests: (at: T) => void
}

/**
 * Followers that show what moves a moment later, in turns: no frame pays for all of them. In one round all of them show
 * the very same, whatever has moved on meanwhile; the next round begins a while after the last one has ended.
 */
export const followInTurns = <T>(
  followers: readonly ((now: T) => void)[],
  { clock, behind_ms }: { readonly clock: Clock; readonly behind_ms: number },
): Following<T> => {
  let now: T | undefined
  let takeBack: (() => void) | undefined
  const wait = (): void => {
    takeBack = clock.after(behind_ms, () => {
      if (now !== undefined) turn(now, 0)
    })
  }
  const turn = (shown: T, at: number): void => {
    followers[at]?.(shown)
    if (at + 1 < followers.length) takeBack = clock.inFrame(() => turn(shown, at + 1))
    else if (shown === now) takeBack = undefined
    else wait()
  }
  return {
    moved: to => {
      now = to
      if (takeBack === undefined) wait()
    },
    rests: at => {
      takeBack?.()
      takeBack = undefined
      now = at
      for (const follower of followers) follower(at)
    },
  }
}
