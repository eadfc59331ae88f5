export declare const fileType: {
  readonly extension: string
  readonly media: string
  readonly identifier: string
  readonly name: { readonly en: string; readonly de: string }
}
export declare const linuxFiles: (data: string, top: string) => Readonly<Record<string, string>>
export declare const bundleEntries: () => object
export declare const classKeys: (program: string) => Readonly<Record<string, string>>
export declare const register: (top: string) => Promise<string>
export declare const unregister: () => Promise<string>
