import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { units } from '../../core/units'
import { isSource, projectFiles, scriptOf } from './sources'

/** Units that names carry without being units of a stated value: of computation, paper, screen and clock. */
const further = [
  'mm2', 'mm3', 'm2', 'm3', 'cm', 'in', 'ft', 'F', 'mm_K', 'mm_px', 'px_mm', 'px', 'pt', 'ml', 'l', 'kg', 'kg_m3', 'g', 'MPa', 'kPa', 'kN', 'N_mm', 'N_m', 'Nm',
  'W', 'W_K', 'W_m2', 'J', 'J_kgK', 'K_m', 'ppm', 'ppm_K', 'mm_mK', 'dpi', 'ms', 's', 'min', 'h', 'd', 'bytes', 'rad', 'one_K', 'kg_m2s', 'kg_msPa', 'kg_ms', 'kg_s', 'W_m2K4', 'percent', 'WK_m',
] as const // prettier-ignore

/** Names of other people's making: members of their formats and settings. */
const foreign = new Set(['BLOCK_RECORD', 'FONTCONFIG_FILE'])

const known = new Set<string>([...units, ...further])

describe('an underscore in a name means that a unit follows', () => {
  it.each([
    ['width_mm', true],
    ['lambda_W_mK', true],
    ['inside_C', true],
    ['_', true],
    ['my_width', false],
    ['width_mm_old', false],
    ['W_mK', true],
    ['_hidden', false],
    ['MAX_WIDTH', false],
  ])('%s', (name, holds) => expect(isWellNamed(name)).toBe(holds))

  it('in every name that the project declares', () => {
    const odd = projectFiles()
      .filter(isSource)
      .flatMap(path =>
        declaredIn(path).flatMap(it =>
          isWellNamed(it.name, it.isParameter) ? [] : [`${path}:${it.line} ${it.name}`],
        ),
      )
    expect(odd).toEqual([])
  })
})

/** A name may also be the unit itself. A parameter that is not used may say so with an underscore in front. */
const isWellNamed = (name: string, isParameter = false): boolean => {
  const at = name.indexOf('_')
  if (at < 0 || name === '_' || known.has(name) || foreign.has(name)) return true
  return at === 0 ? isParameter && isWellNamed(name.slice(1)) : known.has(name.slice(at + 1))
}

type Declared = { readonly name: string; readonly line: number; readonly isParameter: boolean }

const declaredIn = (path: string): readonly Declared[] => {
  const file = ts.createSourceFile(path, scriptOf(path), ts.ScriptTarget.Latest, true)
  const found: Declared[] = []
  const look = (node: ts.Node): void => {
    const name = ts.isVariableDeclaration(node) || isNamed(node) ? node.name : undefined
    if (name && ts.isIdentifier(name))
      found.push({
        name: name.text,
        isParameter: ts.isParameter(node),
        line: file.getLineAndCharacterOfPosition(name.getStart(file)).line + 1,
      })
    ts.forEachChild(node, look)
  }
  look(file)
  return found
}

/** Declarations of our own: a name that is only repeated (imported, destructured by its key) is its maker's. */
const isNamed = (node: ts.Node): node is ts.NamedDeclaration =>
  ts.isFunctionDeclaration(node) ||
  ts.isParameter(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeParameterDeclaration(node) ||
  ts.isPropertySignature(node) ||
  ts.isPropertyAssignment(node) ||
  ts.isShorthandPropertyAssignment(node) ||
  (ts.isBindingElement(node) && node.propertyName === undefined)
