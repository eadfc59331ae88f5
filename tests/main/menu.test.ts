import type { MenuItemConstructorOptions } from 'electron'
import { describe, expect, it, vi } from 'vitest'
import { menuCommands } from '../../app/bridge'
import { type MenuDesk, menuTemplate } from '../../app/main/menu'
import { languages } from '../../core/words'

const aMenu = (its: Partial<MenuDesk> = {}) => {
  const desk: MenuDesk = {
    platform: 'linux',
    language: 'en',
    isSafe: false,
    recents: [],
    give: vi.fn<MenuDesk['give']>(),
    openRecent: vi.fn<MenuDesk['openRecent']>(),
    forget: vi.fn<MenuDesk['forget']>(),
    forgetAll: vi.fn<MenuDesk['forgetAll']>(),
    restart: vi.fn<MenuDesk['restart']>(),
    ...its,
  }
  const template = menuTemplate(desk)
  const all = flat(template)
  const named = (label: string) => all.find(it => it.label === label)
  // An entry is clicked without the runtime's own arguments, which none looks at.
  const click = (it: MenuItemConstructorOptions | undefined) => (it?.click as (() => void) | undefined)?.()
  return { desk, template, all, named, click }
}
const flat = (items: readonly MenuItemConstructorOptions[]): readonly MenuItemConstructorOptions[] =>
  items.flatMap(it => [it, ...flat(Array.isArray(it.submenu) ? it.submenu : [])])

const platforms = ['darwin', 'win32', 'linux'] as const
const aFile = (name: string, isThere: boolean) => ({
  token: name,
  name: `${name}.jamb`,
  at: '2026-03-01T12:00:00.000Z',
  about: { title: '', of: '' },
  isThere,
})

describe.each(platforms)('the menu on %s', platform => {
  it('gives every command of the window, by its usual keys, once', () => {
    const { desk, all, click } = aMenu({ platform })
    for (const command of menuCommands) {
      const found = all.filter(it => it.id === command)
      expect(found, command).toHaveLength(1)
      click(found[0])
      expect(desk.give).toHaveBeenLastCalledWith(command)
    }
    const keys = all.flatMap(it => it.accelerator ?? [])
    expect(new Set(keys).size).toBe(keys.length)
    for (const key of ['N', 'O', 'S', 'Shift+S', 'P', 'Z']) expect(keys).toContain(`CmdOrCtrl+${key}`)
    expect(keys).toContain(platform === 'darwin' ? 'Shift+Cmd+Z' : 'Ctrl+Y')
  })
  it('has the standard commands that text fields need', () => {
    const roles = aMenu({ platform }).all.map(it => it.role)
    for (const role of ['cut', 'copy', 'paste', 'selectAll', 'quit', 'togglefullscreen'] as const)
      expect(roles).toContain(role)
  })
  it('has a name for every entry in every language, and none is the same nothing', () => {
    for (const language of languages)
      for (const it of aMenu({ platform, language }).all)
        if (it.type !== 'separator') expect(it.label?.trim()).toBeTruthy()
  })
})

it('quitting and settings stand where the system has them, under its own words', () => {
  const first = (platform: string, language: 'en' | 'de' = 'en') => {
    const { template } = aMenu({ platform, language })
    return flat(template.slice(0, 1)).flatMap(it => it.label ?? [])
  }
  expect(first('darwin')).toEqual(expect.arrayContaining(['Settings …', 'Quit Jambwright']))
  expect(first('win32')).toEqual(expect.arrayContaining(['Settings …', 'Exit']))
  expect(first('linux')).toEqual(expect.arrayContaining(['Preferences …', 'Quit']))
  expect(first('darwin', 'de')).toEqual(expect.arrayContaining(['Einstellungen …', 'Jambwright beenden']))
  expect(first('win32', 'de')).toEqual(expect.arrayContaining(['Einstellungen …', 'Beenden']))
})

it('recent files open; one that is gone is off and can be taken from the list', () => {
  const { desk, named, click } = aMenu({ recents: [aFile('house', true), aFile('quay', false)] })
  click(named('house.jamb'))
  expect(desk.openRecent).toHaveBeenCalledWith('house')
  expect(named('quay.jamb – not found')?.enabled).toBe(false)
  click(named('   Remove from this list'))
  expect(desk.forget).toHaveBeenCalledWith('quay')
  click(named('Clear this list'))
  expect(desk.forgetAll).toHaveBeenCalled()
  expect(aMenu().named('Clear this list')?.enabled).toBe(false)
})

it('help starts the program without the graphics card, and with it again', () => {
  const usual = aMenu()
  usual.click(usual.named('Restart without graphics card'))
  expect(usual.desk.restart).toHaveBeenCalledWith('safe')
  const safe = aMenu({ isSafe: true })
  safe.click(safe.named('Restart with graphics card'))
  expect(safe.desk.restart).toHaveBeenCalledWith('usual')
})
