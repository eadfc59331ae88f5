export { cite, trustName, trusts } from './citation'
export type { Citation, Trust } from './citation'
export { source, sourceIds, sourceKindName, sourceKinds, sources } from './register'
export type { Source, SourceId, SourceKind } from './register'
