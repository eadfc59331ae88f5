import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { openProject } from '../../core/detail'
import { openSample, painted, valueOf, withWindow } from './window'

const open = withWindow()

/** A browser without file pickers: files come by an input and go as downloads. */
const noPickers = 'delete window.showOpenFilePicker; delete window.showSaveFilePicker'

describe('a whole session', () => {
  it('asks nothing of any other place, breaks no rule of its policy, and has no fault', async () => {
    const { page, faults, refusals, strangers } = await open({ before: noPickers })
    for (const sample of [1, 2, 0]) {
      await openSample(page, sample)
      await painted(page)
    }
    await page.keyboard.press('Control+k')
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Settings' }).click()
    await page.getByRole('menuitem', { name: 'dark' }).click()
    await page
      .getByRole('button', { name: /^Basis/ })
      .first()
      .click()
    await page.keyboard.press('Escape')
    await page.locator('#view-sheet').click()
    const buttons = page.locator('.act .btn')
    await buttons.first().waitFor()
    for (const button of await buttons.all()) {
      const download = page.waitForEvent('download')
      await button.click()
      expect((await readFile((await (await download).path()) ?? '')).length).toBeGreaterThan(1000)
    }
    expect(await refusals()).toEqual([])
    expect(strangers).toEqual([])
    expect(faults).toEqual([])
  })

  it('runs no script that is put into the page', async () => {
    const { page, refusals } = await open()
    await page.evaluate(`(() => {
      const script = document.createElement('script')
      script.textContent = 'window.wasRun = true'
      document.body.append(script)
    })()`)
    expect(await page.evaluate('window.wasRun')).toBeUndefined()
    expect((await refusals()).join()).toContain('script-src')
  })
})

describe('a file', () => {
  it('that is saved opens as what it was', async () => {
    const { page } = await open({ before: noPickers })
    await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1300')
    await page.keyboard.press('Enter')
    expect(await page.locator('.saved').innerText()).toBe('not saved')
    const download = page.waitForEvent('download')
    await page.keyboard.press('Control+s')
    const path = (await (await download).path()) ?? ''
    const read = openProject(await readFile(path, 'utf8'))
    expect(read.ok && Object.values(read.value.project.openings)[0]?.width_mm.value).toBe(1300)
    expect(await page.locator('.saved').innerText()).toMatch(/^saved /)

    await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1111')
    await page.keyboard.press('Enter')
    const chooser = page.waitForEvent('filechooser')
    await page.keyboard.press('Control+o')
    await (
      await chooser
    ).setFiles({ name: 'back.jamb', mimeType: 'application/json', buffer: await readFile(path) })
    const dialog = page.getByRole('alertdialog')
    await dialog.getByRole('button', { name: 'Don’t save' }).click()
    await dialog.waitFor({ state: 'detached' })
    expect(await valueOf(page, 'Frame width')).toBe('1300')
  })

  it.each([
    ['Cancel', '1300'],
    ['Don’t save', '1230'],
  ])('with unsaved work is asked about: %s', async (answer, width) => {
    const { page } = await open({ before: noPickers })
    await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1300')
    await page.keyboard.press('Enter')
    await openSample(page, 0)
    await page.getByRole('alertdialog').getByRole('button', { name: answer }).click()
    await page.getByRole('alertdialog').waitFor({ state: 'detached' })
    expect(await valueOf(page, 'Frame width')).toBe(width)
  })

  it.each([
    ['broken', '{"format":{"name":"jambwright"'],
    ['of another kind', '[1,2,3]'],
    ['deeply nested', '['.repeat(100_000)],
  ])('that is %s is refused with words, and the work stays', async (_, text) => {
    const { page, faults } = await open({ before: noPickers })
    const chooser = page.waitForEvent('filechooser')
    await page.keyboard.press('Control+o')
    await (
      await chooser
    ).setFiles({ name: 'bad.jamb', mimeType: 'application/json', buffer: Buffer.from(text) })
    await page.locator('.note.not-met').waitFor()
    expect(await page.locator('.note.not-met').innerText()).toContain('bad.jamb was not opened')
    expect(await valueOf(page, 'Frame width')).toBe('1230')
    expect(faults).toEqual([])
  })
})

describe('npm start', () => {
  it('prints the address of the window where no desktop can be used', async () => {
    const script = fileURLToPath(new URL('../../app/start/start.mjs', import.meta.url))
    const child = spawn(process.execPath, [script, '--browser', '--port', '0'])
    try {
      const said = await new Promise<string>((done, failed) => {
        let text = ''
        child.stdout.on('data', chunk => {
          text += String(chunk)
          if (/Jambwright is at \S+/.test(text)) done(text)
        })
        child.stderr.on('data', chunk => failed(new Error(String(chunk))))
        child.on('error', failed)
      })
      const address = /at (http:\/\/127\.0\.0\.1:\d+\/\?key=\S+)/.exec(said)?.[1] ?? ''
      const answer = await fetch(address, { redirect: 'manual' })
      expect(answer.status).toBe(303)
    } finally {
      child.kill()
    }
  })

  it('says in words that its port is taken', async () => {
    const { createServer } = await import('node:net')
    const taken = createServer()
    await new Promise<void>(done => taken.listen(0, '127.0.0.1', done))
    const address = taken.address()
    const port = typeof address === 'object' ? (address?.port ?? 0) : 0
    const script = fileURLToPath(new URL('../../app/start/start.mjs', import.meta.url))
    const child = spawn(process.execPath, [script, '--browser', '--port', `${port}`])
    let said = ''
    child.stderr.on('data', chunk => (said += String(chunk)))
    const code = await new Promise(done => child.on('close', done))
    taken.close()
    expect(code).toBe(1)
    expect(said).toContain(`Port ${port} is taken`)
    expect(said).not.toContain('    at ')
  })
})
