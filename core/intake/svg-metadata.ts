/** The project that an SVG of this program carries, as its bytes in base64; nothing where there is none. */
export const metadataIn = (svg: string): string | undefined =>
  /<metadata\b[^<>]*\bid="model"[^<>]*>([A-Za-z0-9+/=\s]*)<\/metadata>/.exec(svg)?.[1]

/** Whether a text declares a document type: no drawing of ours does, and what it declares could grow without end. */
export const declaresTypes = (svg: string): boolean => /<!(?:DOCTYPE|ENTITY)/i.test(svg)
