export type { Edit, EditKind, EditKinds, EditOf, Edits } from './edit'
export type { Field, FieldAt, Known, Origin, PartKind, Readable } from './field'
export type { Fixing, FormatTag, Frame, Joint, Layer, Opening, Project, Wall, Zone } from './model'
