import { samples } from '../../../core/detail'
import { practices } from '../../../core/practice'
import { filled, type Language, languages, same } from '../../../core/words'
import { type CommandId, commands, writeChord } from '../../editor'
import type { MenuGroup } from '../dialogs/menu'
import { isMac } from '../keys/machine'
import type { Desk } from '../state/desk'
import { themes } from '../state/settings.svelte'
import { say as words } from '../window-words'

/** The keys of a command as lists show them; none: empty. */
export const chordOf = (id: CommandId, language: Language): string => {
  const chord = commands.find(it => it.id === id)?.chords[0]
  return chord ? writeChord(chord, language, isMac) : ''
}

/** Each language by its own name: who cannot read the present one finds it. */
const languageName = { en: 'English', de: 'Deutsch' } as const

/** What can be done with files, and the samples. */
export const fileMenu = (desk: Desk, run: (id: CommandId) => void): readonly MenuGroup[] => {
  const { file, settings, say } = desk
  const isOpen = file.opened > 0
  const item = (id: CommandId, label: string, off = false) => ({
    label,
    hint: chordOf(id, settings.language),
    do: () => run(id),
    off,
  })
  return [
    {
      items: [
        item('new', say(words.newJointMenu)),
        item('open', say(words.open)),
        item('save', say(words.save), !isOpen),
        item('save-as', say(words.saveAs), !isOpen),
        item('print', say(words.print), !isOpen),
      ],
    },
    {
      title: say(words.samples),
      items: samples.map((it, at) => ({ label: say(it.name), do: () => void file.openSample(at) })),
    },
  ]
}

/** What the user likes of the window, and what it is. */
export const settingsMenu = ({ settings, look, say }: Desk): readonly MenuGroup[] => [
  {
    title: say(words.colours),
    items: themes.map(theme => ({
      label: say(theme === 'system' ? words.asSystem : words[theme]),
      isOn: settings.theme === theme,
      do: () => (settings.theme = theme),
    })),
  },
  {
    title: say(words.language),
    items: languages.map(language => ({
      label: languageName[language],
      isOn: settings.language === language,
      do: () => (settings.language = language),
    })),
  },
  {
    title: say(words.wheel),
    items: (['zoom', 'pan'] as const).map(wheel => ({
      label: say(wheel === 'zoom' ? words.wheelZooms : words.wheelPans),
      isOn: settings.wheel === wheel,
      do: () => (settings.wheel = wheel),
    })),
  },
  {
    items: [
      {
        label: say(words.aboutMenu),
        hint: chordOf('why', settings.language),
        do: () => (look.about = true),
      },
    ],
  },
]

/** The practices: of the project that is open, and of the next one that begins. */
export const practiceMenu = (desk: Desk, now: string | undefined): readonly MenuGroup[] => {
  const { board, file, editing, notes, settings, say } = desk
  const isOpen = file.opened > 0
  const choose = (id: string): void => {
    settings.practice = id
    if (!isOpen) return
    const problems = board.act({
      kind: 'edit',
      edits: [{ kind: 'choose-practice', practice: id }],
      says: filled(same('{0} {1}'), words.practice, id),
    })
    for (const problem of problems) notes.tell({ kind: 'advice', say: problem.say })
  }
  return [
    {
      items: practices.map(it => ({
        label: `${it.id} · ${say(it.name)}`,
        isOn: it.id === now,
        do: () => choose(it.id),
      })),
    },
    ...(isOpen
      ? [{ items: [{ label: say(words.editPractice), do: () => (editing.practice = { limit: '' }) }] }]
      : []),
  ]
}
