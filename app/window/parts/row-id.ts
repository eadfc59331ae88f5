/** The id in the page of the row of a part. */
export const rowId = (part: string): string => `part-${part.replaceAll(/[^\w-]/g, '-')}`
