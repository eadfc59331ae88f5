/** The files of the lettering, by their names among the fonts that come with the program. */
export const fontFiles = {
  regular: 'RobotoCondensed-Regular.ttf',
  bold: 'RobotoCondensed-Bold.ttf',
} as const
