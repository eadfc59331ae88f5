export declare const contentPolicy: string
export declare const headersFor: (file: string) => Readonly<Record<string, string>>
export declare const servedFile: (
  folder: string,
  pathname: string,
) => Promise<{ readonly bytes: Uint8Array; readonly headers: Readonly<Record<string, string>> } | undefined>
