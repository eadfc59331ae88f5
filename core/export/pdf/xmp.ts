import { escaped } from '../svg/escape'
import type { Information } from '../format'
import type { Language } from '../../words'

/** What a file says of itself in XML (XMP): the same as its short description, with every sign escaped. */
export const xmpOf = (
  { title, author, subject, keywords, dated }: Information,
  language: Language,
  program: string,
): string => {
  const words = (it: string) => escaped(it)
  const day = dated === '' ? '' : `<xmp:CreateDate>${words(dated)}T00:00:00Z</xmp:CreateDate>`
  return `
    <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
      ${day}<xmp:CreatorTool>${words(program)}</xmp:CreatorTool>
    </rdf:Description>
    <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
      <dc:format>application/pdf</dc:format>
      <dc:language><rdf:Bag><rdf:li>${language}</rdf:li></rdf:Bag></dc:language>
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">${words(title)}</rdf:li></rdf:Alt></dc:title>
      <dc:creator><rdf:Seq><rdf:li>${words(author)}</rdf:li></rdf:Seq></dc:creator>
      <dc:description><rdf:Alt><rdf:li xml:lang="x-default">${words(subject)}</rdf:li></rdf:Alt></dc:description>
    </rdf:Description>
    <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
      <pdf:Keywords>${words(keywords.join(', '))}</pdf:Keywords>
      <pdf:Producer>${words(program)}</pdf:Producer>
    </rdf:Description>`
}
