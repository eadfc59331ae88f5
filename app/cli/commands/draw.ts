import type { Problem } from '../../../core/units'
import { cutPlaces, cutsOption, openingOption } from '../cut-place'
import { readProject } from '../read-project'
import type { SheetAsked } from '../write-sheet'
import { problemsText } from '../text/problems'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Draws one cut of a project, or several together, on a sheet, to scale, in the format that the name of the file asks for. */
export const draw: Command = {
  name: 'draw',
  says: 'draw one cut of a project, or head, jamb and sill together, on a sheet, true to scale',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    {
      flags: '--to <file>',
      says: 'where to write; its ending names the format: .pdf, .svg or .dxf (a .png is saved in the window, which can paint); a second sheet of an SVG goes into jamb-2.svg',
    },
    {
      flags: '--scale <scale>',
      says: 'scale, as in 1:2, instead of the largest that fits on the smallest sheet',
    },
    openingOption,
    cutsOption,
    {
      flags: '--beside <opening>',
      says: 'another opening, drawn beside it at the same scale with the faults of both numbered',
    },
    {
      flags: '--beside-file <file>',
      says: 'the file of the opening beside; its first opening unless --beside names one',
    },
    {
      flags: '--paper <paper>',
      says: 'size of the sheet, instead of the smallest',
      choices: ['A4', 'A3'],
    },
    {
      flags: '--enlarged <scale>',
      says: 'the joint of one cut drawn once more beside it at this scale, or none; without it, where the cut is smaller than 1:2 and there is room',
      choices: ['2:1', '1:1', '1:2', 'none'],
    },
    {
      flags: '--lengths <unit>',
      says: 'what lengths are written in',
      choices: ['mm', 'inch'],
      usually: 'mm',
    },
    {
      flags: '--ink <ink>',
      says: 'black for copiers, or colour',
      choices: ['black', 'colour'],
      usually: 'black',
    },
    {
      flags: '--dxf <version>',
      says: 'version of a DXF; 2000 for programs that read nothing newer',
      choices: ['2007', '2000'],
      usually: '2007',
    },
    {
      flags: '--show <what>',
      says: 'heat: the temperature field of one cut over its outlines; vapour: the zone where water gathers in winter, drawn round',
      choices: ['heat', 'vapour'],
    },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const refuse = (of: string, problems: readonly Problem[]) => {
      io.err(problemsText(of, problems, language))
      return 2 as const
    }
    // Sheets and formats weigh more than all the rest: only drawing loads them.
    const { targetOf, writeSheet } = await import('../write-sheet')
    const target = targetOf(chosen['to'], chosen['dxf'])
    if (!target.ok) return refuse('--to', target.problems)
    const opened = await readProject(file)
    if (!opened.ok) return refuse(file, opened.problems)
    const { project } = opened.value
    const places = cutPlaces(project, chosen)
    if (!places.ok) return refuse('--opening', places.problems)
    const { isBeside, writeBeside } = await import('../write-beside')
    const palette = chosen['ink'] === 'colour' ? 'colour' : 'black'
    const asked: SheetAsked = {
      language,
      palette,
      unit: chosen['lengths'] === 'inch' ? 'inch' : 'mm',
      ...(chosen['paper'] === 'A4' || chosen['paper'] === 'A3' ? { paper: chosen['paper'] } : {}),
      ...(typeof chosen['scale'] === 'string' && { scale: chosen['scale'] }),
      ...(typeof chosen['enlarged'] === 'string' && { enlarged: chosen['enlarged'] }),
      shows: chosen['show'] === 'heat' || chosen['show'] === 'vapour' ? chosen['show'] : 'parts',
    }
    const written = isBeside(chosen)
      ? await writeBeside(project, places.value[0], target.value, { ...asked, chosen })
      : await writeSheet(project, places.value, target.value, asked)
    if (!written.ok) return refuse('', written.problems)
    io.out(`${written.value}\n`)
    return 0
  },
}
