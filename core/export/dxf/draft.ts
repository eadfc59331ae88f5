import type { Look } from '../../drawing'
import type { Id, Point } from '../../geometry'
import type { Version } from './lettering'
import type { Handle, Tag, Tags } from './tags'

/** An entity with its place in the order of painting: what comes later covers what came before. */
export type Entity = { readonly rank: number; readonly tags: Tags }

/** Model space, a sheet, or a block: where entities are. */
export type Space = {
  readonly record: Handle
  readonly name: string
  readonly kind: 'model' | 'paper' | 'block'
  readonly entities: Entity[]
}

/** A layer of the file: one a use and pen, so that everything can take weight, line type and colour from it. */
export type LayerRow = {
  readonly name: string
  readonly colour: string
  readonly weight: number
  readonly linetype: string
  /** length of one run of the dashes that the layer stands for, paper mm */
  readonly run_mm: number
  readonly plots: boolean
  readonly isOff: boolean
  /** a viewport names the layers that it does not show */
  readonly handle: Handle
}

/** A line type: dashes are positive, gaps negative, paper mm. */
export type Linetype = { readonly name: string; readonly dashes_mm: readonly number[] }

/** A file while it is being drawn. Its lists grow as entities ask for layers, line types, styles and blocks. */
export type Draft = {
  readonly version: Version
  readonly look: Look
  readonly materials: ReadonlyMap<Id, Id>
  /** the next handle; every object of the file takes one */
  readonly handle: () => Handle
  readonly layers: Map<string, LayerRow>
  readonly linetypes: Map<string, Linetype>
  readonly blocks: Space[]
  /** dimension styles by scale and end of leaders */
  readonly styles: Map<string, SizeStyle>
  /** the scale of what is drawn on paper over a viewport: pens follow it, and sizes measure the model */
  readonly enlarged?: number
}

/** How dimensions and leaders look at a scale; a style for each end that leaders have. `times` makes paper mm those of the model. */
export type SizeStyle = {
  readonly name: string
  readonly scale: number
  readonly end: 'dot' | 'arrow'
  readonly times?: number
}

/** Where marks in paper mm go: a space, its scale (paper mm per unit of the space), and the way into it. */
export type Place = {
  readonly draft: Draft
  readonly space: Space
  readonly scale: number
  readonly at: (paper: Point) => Point
}

/** Adds a block or a sheet to a file. */
export const addSpace = (draft: Draft, name: string, kind: Space['kind']): Space => {
  const space: Space = { record: draft.handle(), name, kind, entities: [] }
  draft.blocks.push(space)
  return space
}

/** What an entity is drawn with where that is not what its layer says. */
export type Own = {
  readonly colour?: Tags
  readonly weight?: number
  readonly linetype?: string
  readonly linetypeScale?: number
  readonly reactor?: Handle
  readonly handle?: Handle
  readonly part?: Id
}

/** Adds an entity to a space and gives its handle. `body` begins with its own subclass. */
export const add = (
  { draft, space }: Pick<Place, 'draft' | 'space'>,
  kind: string,
  on: { readonly layer: string; readonly rank: number; readonly own?: Own },
  body: Tags,
): Handle => {
  const { own = {} } = on
  const handle = own.handle ?? draft.handle()
  const some = (tag: Tag | false): Tags => (tag === false ? [] : [tag])
  const tags: Tags = [
    [0, kind],
    [5, handle],
    ...(own.reactor === undefined
      ? []
      : ([
          [102, '{ACAD_REACTORS'],
          [330, own.reactor],
          [102, '}'],
        ] as const)),
    [330, space.record],
    [100, 'AcDbEntity'],
    ...some(space.kind === 'paper' && [67, 1]),
    [8, on.layer],
    ...some(own.linetype !== undefined && [6, own.linetype]),
    ...(own.colour ?? []),
    ...some(own.linetypeScale !== undefined && [48, own.linetypeScale]),
    ...some(own.weight !== undefined && [370, own.weight]),
    ...body,
    ...partData(draft, own.part),
  ]
  space.entities.push({ rank: on.rank, tags })
  return handle
}

/** The name under which the program keeps what a part is and is made of. */
export const application = 'JAMBWRIGHT'

const partData = (draft: Draft, part: Id | undefined): Tags => {
  if (part === undefined) return []
  const material = draft.materials.get(part)
  return [
    [1001, application],
    [1000, `part=${part}`.slice(0, 200)],
    ...(material === undefined ? [] : ([[1000, `material=${material}`.slice(0, 200)]] as const)),
  ]
}
