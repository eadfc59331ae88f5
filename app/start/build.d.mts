/** The folder of the built window. */
export declare const windowFolder: string
export declare const ensureBuilt: () => Promise<void>
