/** What a plain browser keeps for the program beyond its settings: a table of things by their names. */
export type Store = {
  readonly get: (name: string) => Promise<unknown>
  readonly put: (name: string, thing: unknown) => Promise<void>
  readonly remove: (name: string) => Promise<void>
  /** every name that begins so */
  readonly names: (beginning: string) => Promise<readonly string[]>
}

const [base, table] = ['jambwright', 'things'] as const

/** The table in the browser's own data base. It is opened at the first use; each call fails where there is none. */
export const storeOf = (page: Window): Store => {
  let opened: Promise<IDBDatabase> | undefined
  const open = (): Promise<IDBDatabase> =>
    (opened ??= new Promise<IDBDatabase>((done, failed) => {
      const asked = page.indexedDB.open(base, 1)
      asked.onupgradeneeded = () => asked.result.createObjectStore(table)
      asked.onsuccess = () => done(asked.result)
      asked.onerror = () => failed(asked.error ?? new Error('no data base'))
      asked.onblocked = () => failed(new Error('the data base is held by an older window'))
    }))
  const ask = async <T>(
    mode: IDBTransactionMode,
    what: (things: IDBObjectStore) => IDBRequest<T>,
  ): Promise<T> => {
    const transaction = (await open()).transaction(table, mode, { durability: 'strict' })
    const asked = what(transaction.objectStore(table))
    // What was written counts when the transaction is through, not when it was taken.
    return new Promise<T>((done, failed) => {
      transaction.oncomplete = () => done(asked.result)
      transaction.onabort = () => failed(transaction.error ?? asked.error ?? new Error('called off'))
    })
  }
  return {
    get: name => ask<unknown>('readonly', it => it.get(name)),
    put: async (name, thing) => void (await ask('readwrite', it => it.put(thing, name))),
    remove: async name => void (await ask('readwrite', it => it.delete(name))),
    names: async beginning =>
      (await ask('readonly', it => it.getAllKeys(IDBKeyRange.bound(beginning, `${beginning}\uffff`)))).map(
        String,
      ),
  }
}
