import { type Project, type RecentAbout, wallOf } from '../../../core/detail'
import { type Report, verdicts } from '../../../core/rules'

/** What the list of recent files shows of a project: its title, its wall and size, and its worst verdict. */
export const aboutProject = (project: Project, { findings }: Report): RecentAbout => {
  const { name, number } = project.title
  const [opening] = Object.values(project.openings)
  const verdict = verdicts.find(one => findings.some(it => it.verdict === one))
  return {
    title: titleOf(project),
    of: opening
      ? `${wallOf(project, opening.id).name} · ${opening.width_mm.value} × ${opening.height_mm.value}`
      : name || number,
    ...(verdict && { worst: { verdict, count: findings.filter(it => it.verdict === verdict).length } }),
  }
}

/** What a project is called: its name and its number, as far as it has them. */
export const titleOf = ({ title }: Project): string => [title.name, title.number].filter(Boolean).join(' · ')
