/** The calls of the font engine that tests judge the metrics by. */
declare module 'fontkit' {
  export type Font = {
    readonly characterSet: readonly number[]
    readonly glyphForCodePoint: (code: number) => { readonly advanceWidth: number }
    readonly layout: (
      words: string,
      features: Readonly<Record<string, boolean>>,
    ) => { readonly advanceWidth: number }
  }
  export const create: (bytes: Uint8Array) => Font
}
