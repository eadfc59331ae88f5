import { describe, expect, it } from 'vitest'
import { type Pressed, commandFor, commands, commandsLike, writeChord } from '../../app/editor'
import { languages } from '../../core/words'

const press = (key: string, code: string, held = ''): Pressed => ({
  key,
  code,
  ctrlKey: held.includes('C'),
  metaKey: held.includes('M'),
  shiftKey: held.includes('S'),
  altKey: held.includes('A'),
})
const still = { isMac: false, isTyping: false }

describe('keys find their command on any layout', () => {
  const cases: readonly [says: string, pressed: Pressed, command: string | undefined][] = [
    ['Latin z', press('z', 'KeyZ', 'C'), 'undo'],
    ['caps lock', press('Z', 'KeyZ', 'C'), 'undo'],
    ['Russian layout, letter я on the place of z', press('я', 'KeyZ', 'C'), 'undo'],
    ['German layout, z lies where y is', press('z', 'KeyY', 'C'), 'undo'],
    ['German layout, y lies where z is', press('y', 'KeyZ', 'C'), 'redo'],
    ['shift with it', press('Z', 'KeyZ', 'CS'), 'redo'],
    ['the letter alone', press('z', 'KeyZ'), undefined],
    ['another key held as well', press('z', 'KeyZ', 'CA'), undefined],
    ['a letter no command has, on the place of one', press('q', 'KeyO', 'C'), undefined],
    ['plus behind shift', press('+', 'Equal', 'CS'), 'zoom-in'],
    ['plus of its own key', press('+', 'BracketRight', 'C'), 'zoom-in'],
    ['plus of the number pad', press('+', 'NumpadAdd', 'C'), 'zoom-in'],
    ['F8', press('F8', 'F8'), 'next-broken'],
    ['Shift F8', press('F8', 'F8', 'S'), 'previous-broken'],
    ['zero', press('0', 'Digit0', 'C'), 'fit'],
    ['zero on a French layout', press('à', 'Digit0', 'C'), 'fit'],
    ['true size', press('0', 'Digit0', 'CA'), 'true-size'],
  ]
  it.each(cases)('%s', (_, pressed, command) => expect(commandFor(commands, pressed, still)).toBe(command))

  it('on a Mac Cmd takes the place of Ctrl', () => {
    const mac = { isMac: true, isTyping: false }
    expect(commandFor(commands, press('z', 'KeyZ', 'M'), mac)).toBe('undo')
    expect(commandFor(commands, press('z', 'KeyZ', 'C'), mac)).toBeUndefined()
  })

  it('a key that edits text does not act while something is typed', () => {
    const typing = { isMac: false, isTyping: true }
    expect(commandFor(commands, press('Delete', 'Delete'), still)).toBe('remove')
    expect(commandFor(commands, press('Delete', 'Delete'), typing)).toBeUndefined()
    expect(commandFor(commands, press('s', 'KeyS', 'C'), typing)).toBe('save')
  })
})

describe('every command', () => {
  it('has a name in every language, and no other has it', () => {
    for (const language of languages) {
      const names = commands.map(it => it.name[language])
      expect(names.every(it => it !== '')).toBe(true)
      expect(new Set(names).size).toBe(names.length)
    }
    expect(new Set(commands.map(it => it.id)).size).toBe(commands.length)
  })

  it('has its keys for itself', () => {
    const chords = commands.flatMap(it =>
      it.chords.map(({ key, main, shift, alt }) => `${main} ${shift} ${alt} ${key}`),
    )
    // Two chords of one command may differ by the place of the key alone.
    const perCommand = new Set(
      commands.flatMap(it => it.chords.map(c => `${it.id} ${c.main} ${c.shift} ${c.alt} ${c.key}`)),
    )
    expect(new Set(chords).size).toBe(perCommand.size)
  })

  it('is what its own keys find', () => {
    for (const { id, chords } of commands)
      for (const { key, code, main, shift, alt } of chords) {
        const held = `${main ? 'C' : ''}${shift ? 'S' : ''}${alt ? 'A' : ''}`
        expect(commandFor(commands, press(key, code, held), still)).toBe(id)
      }
  })
})

it('keys are written as the machine and the language name them', () => {
  const redo = { key: 'z', code: 'KeyZ', main: true, shift: true } as const
  expect(writeChord(redo, 'en', false)).toBe('Ctrl Shift Z')
  expect(writeChord(redo, 'de', false)).toBe('Strg Umschalt Z')
  expect(writeChord(redo, 'en', true)).toBe('⇧⌘Z')
})

it('a command is found by words of its name', () => {
  expect(commandsLike(commands, 'whole cut', 'en').map(it => it.id)).toEqual(['fit'])
  expect(commandsLike(commands, 'Schnitt um vor', 'de').map(it => it.id)).toEqual(['previous-cut'])
  expect(commandsLike(commands, '', 'en')).toHaveLength(commands.length)
})
