/** The part of the second reader of drawings that the tests use; it has no types of its own. */
declare module 'dxf' {
  export class Helper {
    constructor(text: string)
    readonly parsed: {
      readonly entities: readonly {
        readonly type: string
        readonly layer: string
        readonly paperSpace?: unknown
        readonly vertices?: readonly { readonly x: number; readonly y: number }[]
      }[]
    }
  }
}
