import regular from '../../../assets/fonts/RobotoCondensed-Regular.ttf?url'
import bold from '../../../assets/fonts/RobotoCondensed-Bold.ttf?url'

const places: Readonly<Record<string, string>> = {
  'RobotoCondensed-Regular.ttf': regular,
  'RobotoCondensed-Bold.ttf': bold,
}

/** The font files that a format asks for, from the program's own files. */
export const fontsNamed = async (names: readonly string[]): Promise<ReadonlyMap<string, Uint8Array>> =>
  new Map(
    await Promise.all(
      names.map(async (name): Promise<readonly [string, Uint8Array]> => {
        const place = places[name]
        if (place === undefined) throw new Error(`the window has no font ${name}`)
        const answer = await fetch(place)
        return [name, new Uint8Array(await answer.arrayBuffer())]
      }),
    ),
  )
