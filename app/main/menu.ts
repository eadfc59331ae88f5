import type { MenuItemConstructorOptions } from 'electron'
import { type Language, type Words, words } from '../../core/words'
import type { MenuCommand, RecentFile } from '../bridge'

/** What the menu can ask for, and what it shows. */
export type MenuDesk = {
  readonly platform: string
  readonly language: Language
  readonly isSafe: boolean
  readonly recents: readonly RecentFile[]
  readonly give: (command: MenuCommand) => void
  readonly openRecent: (token: string) => void
  readonly forget: (token: string) => void
  readonly forgetAll: () => void
  readonly restart: (how: 'usual' | 'safe') => void
}

/**
 * The program's menu, with the platform's own words and places: macOS has the program's menu first, with settings and
 * quit in it; elsewhere both are under File. Text fields need the standard commands of Edit.
 */
export const menuTemplate = (desk: MenuDesk): readonly MenuItemConstructorOptions[] => {
  const isMac = desk.platform === 'darwin'
  const say = (it: Words): string => it[desk.language]
  const command = (name: Words, give: MenuCommand, accelerator?: string): MenuItemConstructorOptions => ({
    id: give,
    label: say(name),
    click: () => desk.give(give),
    ...(accelerator === undefined ? {} : { accelerator }),
  })
  const role = (
    name: Words,
    it: NonNullable<MenuItemConstructorOptions['role']>,
  ): MenuItemConstructorOptions => ({
    label: say(name),
    role: it,
  })
  const settings = command(desk.platform === 'linux' ? preferences : settingsName, 'settings', 'CmdOrCtrl+,')
  return [
    ...(isMac
      ? [
          {
            label: 'Jambwright',
            submenu: [
              command(about, 'about'),
              line,
              settings,
              line,
              role(services, 'services'),
              line,
              role(hide, 'hide'),
              role(hideOthers, 'hideOthers'),
              role(showAll, 'unhide'),
              line,
              role(quitMac, 'quit'),
            ],
          },
        ]
      : []),
    {
      label: say(file),
      submenu: [
        command(newJoint, 'new', 'CmdOrCtrl+N'),
        command(open, 'open', 'CmdOrCtrl+O'),
        { label: say(recent), submenu: recentItems(desk, say) },
        line,
        command(save, 'save', 'CmdOrCtrl+S'),
        command(saveAs, 'save-as', 'CmdOrCtrl+Shift+S'),
        line,
        command(print, 'print', 'CmdOrCtrl+P'),
        ...(isMac
          ? [line, role(closeWindow, 'close')]
          : [line, settings, line, role(desk.platform === 'win32' ? exit : quit, 'quit')]),
      ],
    },
    {
      label: say(edit),
      submenu: [
        command(undo, 'undo', 'CmdOrCtrl+Z'),
        command(redo, 'redo', isMac ? 'Shift+Cmd+Z' : 'Ctrl+Y'),
        line,
        role(cut, 'cut'),
        role(copy, 'copy'),
        role(paste, 'paste'),
        role(selectAll, 'selectAll'),
        line,
        command(findCommand, 'find-command', 'CmdOrCtrl+K'),
      ],
    },
    {
      label: say(view),
      submenu: [
        command(joint, 'show-joint', 'CmdOrCtrl+1'),
        command(sheet, 'show-sheet', 'CmdOrCtrl+2'),
        command(work, 'show-work', 'CmdOrCtrl+3'),
        command(teach, 'show-teach', 'CmdOrCtrl+4'),
        line,
        command(zoomIn, 'zoom-in', 'CmdOrCtrl+Plus'),
        command(zoomOut, 'zoom-out', 'CmdOrCtrl+-'),
        command(whole, 'fit', 'CmdOrCtrl+0'),
        line,
        role(fullScreen, 'togglefullscreen'),
      ],
    },
    ...(isMac ? [{ label: say(windowName), role: 'windowMenu' as const }] : []),
    {
      label: say(help),
      role: 'help',
      submenu: [
        ...(isMac ? [] : [command(about, 'about')]),
        {
          id: 'restart',
          label: say(desk.isSafe ? restartUsual : restartSafe),
          click: () => desk.restart(desk.isSafe ? 'usual' : 'safe'),
        },
      ],
    },
  ]
}

/** The last files: one that is gone stays in sight, off, with a way to take it from the list. */
const recentItems = (desk: MenuDesk, say: (it: Words) => string): MenuItemConstructorOptions[] => [
  ...desk.recents.flatMap(({ token, name, isThere }): readonly MenuItemConstructorOptions[] =>
    isThere
      ? [{ label: name, click: () => desk.openRecent(token) }]
      : [
          { label: `${name} – ${say(gone)}`, enabled: false },
          { label: `   ${say(takeOff)}`, click: () => desk.forget(token) },
        ],
  ),
  ...(desk.recents.length === 0 ? [{ label: say(none), enabled: false }] : [line]),
  { label: say(clear), enabled: desk.recents.length > 0, click: () => desk.forgetAll() },
]

const line: MenuItemConstructorOptions = { type: 'separator' }

const about = words('About Jambwright', 'Über Jambwright')
const settingsName = words('Settings …', 'Einstellungen …')
const preferences = words('Preferences …', 'Einstellungen …')
const services = words('Services', 'Dienste')
const hide = words('Hide Jambwright', 'Jambwright ausblenden')
const hideOthers = words('Hide Others', 'Andere ausblenden')
const showAll = words('Show All', 'Alle einblenden')
const quitMac = words('Quit Jambwright', 'Jambwright beenden')
const quit = words('Quit', 'Beenden')
const exit = words('Exit', 'Beenden')
const file = words('File', 'Datei')
const newJoint = words('New joint …', 'Neue Fuge …')
const open = words('Open …', 'Öffnen …')
const recent = words('Open recent', 'Zuletzt benutzt')
const save = words('Save', 'Sichern')
const saveAs = words('Save as a copy …', 'Als Kopie sichern …')
const print = words('Print the sheet …', 'Blatt drucken …')
const closeWindow = words('Close window', 'Fenster schließen')
const edit = words('Edit', 'Bearbeiten')
const undo = words('Undo', 'Rückgängig')
const redo = words('Redo', 'Wiederholen')
const cut = words('Cut', 'Ausschneiden')
const copy = words('Copy', 'Kopieren')
const paste = words('Paste', 'Einfügen')
const selectAll = words('Select all', 'Alles auswählen')
const findCommand = words('Find a command', 'Befehl suchen')
const view = words('View', 'Ansicht')
const joint = words('Joint', 'Fuge')
const sheet = words('Sheet', 'Blatt')
const work = words('Work', 'Ausführung')
const teach = words('Teach', 'Schulung')
const zoomIn = words('Zoom in', 'Größer')
const zoomOut = words('Zoom out', 'Kleiner')
const whole = words('Show the whole cut', 'Ganzen Schnitt zeigen')
const fullScreen = words('Full screen', 'Vollbild')
const windowName = words('Window', 'Fenster')
const help = words('Help', 'Hilfe')
const restartSafe = words('Restart without graphics card', 'Ohne Grafikkarte neu starten')
const restartUsual = words('Restart with graphics card', 'Mit Grafikkarte neu starten')
const gone = words('not found', 'nicht gefunden')
const takeOff = words('Remove from this list', 'Aus der Liste nehmen')
const clear = words('Clear this list', 'Liste leeren')
const none = words('nothing yet', 'noch nichts')
