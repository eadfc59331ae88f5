import { readFileSync, readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** Where the project lies. */
export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '')

/** Every file of the project by its path from the root: not what is installed, built, or kept by git. */
export const projectFiles = (): readonly string[] =>
  readdirSync(root, { withFileTypes: true })
    .filter(it => !left.has(it.name))
    .flatMap(it => (it.isDirectory() ? under(it.name) : [it.name]))
    .toSorted()

/** A file's text, by its path from the root. */
export const textOf = (path: string): string => readFileSync(`${root}/${path}`, 'utf8')

/** What is written in our own languages: TypeScript, and the scripts of the window's components. */
export const isSource = (path: string): boolean => /\.(ts|mts|mjs|cjs|svelte)$/.test(path)

/** The TypeScript of a file: all of it, or what a component has between its script marks. */
export const scriptOf = (path: string): string =>
  path.endsWith('.svelte')
    ? [...textOf(path).matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(it => it[1]).join('\n')
    : textOf(path)

const left = new Set(['.git', 'node_modules', 'out', 'tmp'])

const under = (folder: string): readonly string[] =>
  readdirSync(`${root}/${folder}`, { recursive: true, withFileTypes: true })
    .filter(it => it.isFile())
    .map(it => `${it.parentPath}/${it.name}`.slice(root.length).replace(/^\//, ''))
