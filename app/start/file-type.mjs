import { spawn } from 'node:child_process'
import { mkdir, rm, writeFile } from 'node:fs/promises'
import { homedir } from 'node:os'
import { dirname, join } from 'node:path'

/** What a project file is to a system: its extension, its media type, what it is called. An installer takes it from here. */
export const fileType = {
  extension: 'jamb',
  media: 'application/x-jambwright',
  identifier: 'org.jambwright.project',
  name: { en: 'Jambwright project', de: 'Jambwright-Projekt' },
}

/** The files that register the type for a user of Linux (shared-mime-info and desktop entries, freedesktop.org), by path. */
export const linuxFiles = (data, top) => ({
  [join(data, 'mime', 'packages', 'jambwright.xml')]: `<?xml version="1.0" encoding="UTF-8"?>
<mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">
  <mime-type type="${fileType.media}">
    <comment>${fileType.name.en}</comment>
    <comment xml:lang="de">${fileType.name.de}</comment>
    <sub-class-of type="application/json"/>
    <glob pattern="*.${fileType.extension}"/>
  </mime-type>
</mime-info>
`,
  [join(data, 'applications', 'jambwright.desktop')]: `[Desktop Entry]
Type=Application
Name=Jambwright
Comment=The joint between a window or door frame and the wall
Comment[de]=Die Fuge zwischen Fenster- oder Türrahmen und Wand
Exec=${quoted(process.execPath)} ${quoted(join(top, 'app', 'start', 'start.mjs'))} %f
Icon=${join(top, 'assets', 'icons', 'jambwright.svg')}
MimeType=${fileType.media};
Categories=Graphics;Engineering;
Terminal=false
`,
})

/** A word of a command in a desktop entry: in quotes, with what means something there escaped. */
const quoted = word => `"${word.replace(/[\\"`$]/g, it => `\\${it}`).replaceAll('%', '%%')}"`

/** What macOS reads from the bundle of a program (Info.plist), as the members to add. */
export const bundleEntries = () => ({
  UTExportedTypeDeclarations: [
    {
      UTTypeIdentifier: fileType.identifier,
      UTTypeDescription: fileType.name.en,
      UTTypeConformsTo: ['public.json'],
      UTTypeTagSpecification: {
        'public.filename-extension': [fileType.extension],
        'public.mime-type': fileType.media,
      },
    },
  ],
  CFBundleDocumentTypes: [
    {
      CFBundleTypeName: fileType.name.en,
      CFBundleTypeRole: 'Editor',
      LSHandlerRank: 'Owner',
      LSItemContentTypes: [fileType.identifier],
    },
  ],
})

/** What Windows keeps for a user, as keys under Software\\Classes and their default values. */
export const classKeys = program => ({
  [`.${fileType.extension}`]: 'Jambwright.Project',
  'Jambwright.Project': fileType.name.en,
  'Jambwright.Project\\shell\\open\\command': `"${program}" "%1"`,
})

/** Registers the type for this user, and says what was done. */
export const register = async top => {
  if (process.platform !== 'linux') return elsewhere
  const files = linuxFiles(dataFolder(), top)
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(path), { recursive: true })
    await writeFile(path, text)
  }
  await refresh()
  return `Project files now open with Jambwright. Written:\n${Object.keys(files).join('\n')}`
}

/** Takes the registration back. */
export const unregister = async () => {
  if (process.platform !== 'linux') return elsewhere
  const paths = Object.keys(linuxFiles(dataFolder(), ''))
  for (const path of paths) await rm(path, { force: true })
  await refresh()
  return `Project files do not open with Jambwright any more. Removed:\n${paths.join('\n')}`
}

const elsewhere = 'On this system an installer registers the file type; none is made here.'

const dataFolder = () => process.env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share')

/** Lets the system read its lists anew, where it has the programs for that. */
const refresh = async () => {
  for (const [program, folder] of [
    ['update-mime-database', 'mime'],
    ['update-desktop-database', 'applications'],
  ])
    await new Promise(done => {
      const child = spawn(program, [join(dataFolder(), folder)], { stdio: 'ignore' })
      child.on('error', done)
      child.on('close', done)
    })
}
