/** An entry of a menu. `isOn` marks the chosen one of several; `hint` is its key. */
export type MenuItem = {
  readonly label: string
  readonly do: () => void
  readonly isOn?: boolean
  readonly hint?: string
  readonly off?: boolean
}

export type MenuGroup = { readonly title?: string; readonly items: readonly MenuItem[] }
