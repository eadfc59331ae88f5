import type { MenuItemConstructorOptions } from 'electron'
import type { HostNews } from '../bridge'

/**
 * The program's menu. macOS needs one for its standard commands to work in text fields;
 * elsewhere the window's own head bar and keys are the menu.
 */
export const menuTemplate = (
  platform: string,
  tell: (news: HostNews) => void,
): readonly MenuItemConstructorOptions[] | undefined => {
  if (platform !== 'darwin') return undefined
  const command = (
    label: string,
    accelerator: string,
    name: 'open' | 'save' | 'save-as',
  ): MenuItemConstructorOptions => ({
    label,
    accelerator,
    click: () => tell({ kind: 'command', command: name }),
  })
  return [
    { role: 'appMenu' },
    {
      role: 'fileMenu',
      submenu: [
        command('Open …', 'Cmd+O', 'open'),
        command('Save', 'Cmd+S', 'save'),
        command('Save As …', 'Cmd+Shift+S', 'save-as'),
        { role: 'close' },
      ],
    },
    { role: 'editMenu' },
    { role: 'windowMenu' },
  ]
}
