/** The words with a capital first letter, as they stand at the head of a row. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
