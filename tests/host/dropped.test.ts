import { expect, it } from 'vitest'
import { droppedOne } from '../../app/host/dropped'

const anItem = (
  kind: 'file' | 'string',
  its: { readonly isDirectory?: boolean; readonly name?: string } = {},
) => ({
  kind,
  webkitGetAsEntry: () => ({ isDirectory: its.isDirectory === true }),
  getAsFile: () => (its.name === undefined ? null : { name: its.name }),
})
// Only the calls of a drop that are used.
const drop = (...items: readonly ReturnType<typeof anItem>[]) => ({ items }) as unknown as DataTransfer

it.each([
  ['a link', drop(anItem('string')), 'is no file'],
  ['nothing', drop(), 'is no file'],
  ['two files', drop(anItem('file', { name: 'a' }), anItem('file', { name: 'b' })), 'Several files'],
  ['a folder', drop(anItem('file', { isDirectory: true })), 'A folder'],
  ['a file that cannot be had', drop(anItem('file')), 'is no file'],
])('%s is not opened, and why is said', (_, what, words) => {
  const one = droppedOne(what)
  expect(one.kind === 'failed' && one.why.en).toContain(words)
})

it('one file is taken, whatever text comes with it', () => {
  const one = droppedOne(drop(anItem('string'), anItem('file', { name: 'house.jamb' })))
  expect(one.kind === 'file' && one.file.name).toBe('house.jamb')
})
