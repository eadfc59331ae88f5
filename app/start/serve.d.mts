import type { Server } from 'node:http'

export declare const serve: (options: {
  readonly folder: string
  readonly port: number
  readonly token?: string
}) => Promise<{ readonly server: Server; readonly at: string; readonly address: string }>
