import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { openProject } from '../../core/detail'
import { numberIn, painted, valueOf, withWindow } from './window'

const open = withWindow()

const rows = (page: Page): Promise<readonly string[]> => page.getByRole('option').allInnerTexts()
const row = (page: Page, name: RegExp) => page.locator('[data-area="parts"]').getByRole('option', { name })
const undo = async (page: Page): Promise<void> => {
  await page.keyboard.press('Control+z')
  await painted(page)
}
const canUndo = async (page: Page): Promise<boolean> =>
  !(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled())

describe('the build-up', () => {
  it('is typed, dragged, added to and reordered, with the keyboard staying at the layer', async () => {
    const { page, faults } = await open()
    const wool = page.locator('[id^="thickness-"]').nth(1)
    await wool.click()
    await page.keyboard.type('12 cm')
    await page.keyboard.press('Enter')
    await painted(page)
    expect(await page.evaluate('document.activeElement.ariaLabel')).toBe('Mineral wool, 120 mm')

    // Insert adds before the layer, from the menu of materials; the new layer has the keyboard.
    await page.keyboard.press('Insert')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await painted(page)
    await painted(page)
    expect(await page.evaluate('document.activeElement.ariaLabel')).toMatch(/, 20 mm$/)
    await page.keyboard.press('Alt+ArrowRight')
    await painted(page)
    const order = await page.locator('.bu .nm').allInnerTexts()
    expect(order[1]).toContain('Mineral wool')
    expect(await page.evaluate('document.activeElement.ariaLabel')).toMatch(/, 20 mm$/)
    await page.keyboard.press('Delete')
    await painted(page)
    expect(await page.locator('.bu .lay').count()).toBe(4)

    // A fan line is dragged: sixty moves, one step.
    const before = await page.locator('[id^="thickness-"] span').nth(1).innerText()
    // The line begins upright, at the place that its path says first.
    const path = (await page.locator('[data-fan]').nth(1).getAttribute('d')) ?? ''
    const strip = await page.locator('.bu').boundingBox()
    const [, left = '', top = ''] = /^M([\d.]+) ([\d.]+)/.exec(path) ?? []
    const [x, y] = [(strip?.x ?? 0) + Number(left), (strip?.y ?? 0) + Number(top) + 20]
    await page.mouse.move(x, y)
    await page.mouse.down()
    for (let step = 1; step <= 60; step++) await page.mouse.move(x - step / 2, y)
    await page.mouse.up()
    await painted(page)
    const dragged = await page.locator('[id^="thickness-"] span').nth(1).innerText()
    expect(numberIn(dragged)).toBeGreaterThan(numberIn(before))
    await undo(page)
    expect(await page.locator('[id^="thickness-"] span').nth(1).innerText()).toBe(before)
    expect(faults).toEqual([])
  })

  it('shows eight layers in two rows, each name whole or in its tip', async () => {
    const { page } = await open()
    await page.locator('[id^="thickness-"]').nth(1).focus()
    for (let at = 0; at < 4; at++) {
      await page.keyboard.press('Control+d')
      await painted(page)
    }
    expect(await page.locator('.bu .lay').count()).toBe(4)
    await row(page, /Mineral wool/).click()
    for (let at = 0; at < 4; at++) {
      await page.keyboard.press('Control+d')
      await painted(page)
    }
    expect(await page.locator('.bu .lay').count()).toBe(8)
    const boxes = await page.locator('.bu .mm').evaluateAll(all => all.map(it => it.getBoundingClientRect()))
    const overlap = boxes.some((a, i) =>
      boxes.some(
        (b, j) =>
          i < j && a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height,
      ),
    )
    expect(overlap).toBe(false)
  })
})

describe('seals', () => {
  it('are taken out by T, fail in their row, and are put back by the switch as they were', async () => {
    const { page } = await open()
    const names = () => page.locator('.row .n, .row .nm').allInnerTexts()
    const before = await names()
    await row(page, /Tape/).click()
    await page.keyboard.press('t')
    await painted(page)
    expect((await rows(page)).join()).toContain('taken out')
    expect(await page.locator('.count.not-met').count()).toBe(1)
    expect(await row(page, /^Joint/).innerText()).toContain('not met')
    await page.getByRole('switch', { name: 'Built in' }).click()
    await painted(page)
    expect(await names()).toEqual(before)
    // In a line of text T is just a letter.
    await page.getByRole('textbox', { name: 'Tape width' }).click()
    await page.keyboard.press('t')
    expect(await page.locator('.row.out').count()).toBe(0)
  })

  it('cold to hot shows how they stretch, and is no step of undo', async () => {
    const { page } = await open()
    await page.locator('[data-area="section"]').focus()
    for (let at = 0; at < 10; at++) await page.keyboard.press(',')
    await painted(page)
    expect(await page.locator('.js > .stretch').innerText()).toMatch(/at 17\.3, works 10–18/)
    expect(await canUndo(page)).toBe(false)
  })
})

describe('a part', () => {
  it('is renamed by F2 and copied into another file as text of our own', async () => {
    const { page, faults } = await open()
    await row(page, /Mineral wool/).click()
    await page.keyboard.press('F2')
    await page.keyboard.type('Facade insulation')
    await page.keyboard.press('Enter')
    await painted(page)
    expect(await row(page, /Facade insulation 140/).count()).toBe(1)

    const copied = await page.evaluate<string>(`(() => {
      const data = new DataTransfer()
      document.body.dispatchEvent(new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true }))
      return data.getData('text/plain')
    })()`)
    expect(JSON.parse(copied)).toMatchObject({
      format: { name: 'jambwright-piece', version: 1 },
      piece: { kind: 'layer' },
    })
    const other = await open({ sample: 2 })
    const paste = (text: string) =>
      other.page.evaluate(`(() => {
        const data = new DataTransfer()
        data.setData('text/plain', ${JSON.stringify(text)})
        document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }))
      })()`)
    const count = (await rows(other.page)).length
    await paste(copied)
    await painted(other.page)
    expect((await rows(other.page)).length).toBe(count + 1)
    await paste('{"format":{"name":"jambwright-piece","version":1},"piece":{"kind":"layer"}}')
    await painted(other.page)
    expect((await rows(other.page)).length).toBe(count + 1)
    expect(await other.page.locator('.note').last().innerText()).toContain('Not pasted')
    expect([...faults, ...other.faults]).toEqual([])
  })
})

describe('zones of a side', () => {
  it('are split, given a joint of their own, gone through by key and joined again', async () => {
    const { page } = await open()
    await page.locator('.fields .head', { hasText: 'Zones' }).click()
    await page.getByRole('button', { name: 'Split', exact: true }).click()
    await page.getByRole('button', { name: 'Joint of its own' }).click()
    const joint = page.getByRole('textbox', { name: 'Joint, this side', exact: true })
    await joint.fill('8-20')
    await joint.press('Enter')
    await painted(page)
    expect(await page.locator('.bar [role="radio"]').allInnerTexts()).toEqual(['8–20', '11–17'])
    expect(
      await page
        .locator('.ring .tag.on')
        .innerText()
        .catch(() => page.locator('.ring .tag.on').textContent()),
    ).toContain('8–20')
    await page.keyboard.press('Escape')
    await page.locator('[data-area="section"]').focus()
    await page.keyboard.press('Alt+PageDown')
    await painted(page)
    expect(await page.locator('.js svg text').last().textContent()).toBe('14 now')
    await page.keyboard.press('Alt+PageUp')
    await row(page, /^Joint/).click()
    await page.getByRole('button', { name: 'Join with the next' }).click()
    await painted(page)
    expect(await page.locator('.bar').count()).toBe(0)
  })
})

describe('sizes', () => {
  it('of a wall that would clash name the layer that changes, or stay for reference', async () => {
    const { page } = await open()
    await row(page, /Calcium silicate/).click()
    const total = page.getByRole('textbox', { name: 'Whole wall' })
    expect(await total.inputValue()).toBe('338')
    await total.fill('380')
    await total.press('Enter')
    const dialog = page.getByRole('alertdialog')
    expect(await dialog.innerText()).toContain('add up to 338 mm')
    expect(await dialog.getByRole('radio').first().innerText()).toMatch(/175 → 217/)
    await dialog.getByRole('button', { name: 'Keep for reference' }).click()
    expect(await page.locator('.reference').innerText()).toContain('(380) for reference')
    expect(await canUndo(page)).toBe(false)
    await total.fill('380')
    await total.press('Enter')
    await dialog.getByRole('button', { name: /^Change/ }).click()
    await painted(page)
    expect(await valueOf(page, 'Thickness')).toBe('217')
    expect(await page.locator('.reference').count()).toBe(0)
  })

  it('measured on site give the opening, how far it is off, and the frame that fits', async () => {
    const { page } = await open()
    await page.locator('.fields .head', { hasText: 'Measured' }).click()
    for (const [name, typed] of [
      ['Opening width at the top', '1250'],
      ['Opening width at the bottom', '1259'],
      ['Opening height at the left', '1500'],
    ] as const) {
      const field = page.getByRole('textbox', { name, exact: true })
      await field.fill(typed)
      await field.press('Enter')
      await painted(page)
    }
    const sizes = page.locator('#group-sizes')
    expect(await sizes.innerText()).toContain('1250 × 1500')
    expect(await sizes.innerText()).toContain('Width 9')
    await sizes.getByRole('button', { name: 'Take it' }).click()
    await painted(page)
    expect(await valueOf(page, 'Frame width')).toBe('1222')
    const top = page.getByRole('textbox', { name: 'Opening width at the top', exact: true })
    await top.fill('')
    await top.press('Enter')
    await painted(page)
    expect(await sizes.innerText()).toContain('1259 × 1500')
  })
})

describe('numbers', () => {
  it.each(['en', 'de'] as const)(
    'are read with comma or point, with units, and asked about where they could be thousands, in %s',
    async language => {
      const { page } = await open({ language })
      const field = page.locator('[data-area="fields"] #group-sizes [data-field="opening.width"] input')
      const hint = async () =>
        (await page.locator('#group-sizes [data-field="opening.width"] .echo').innerText()).replaceAll(
          '\u00a0',
          ' ',
        )
      const cases: readonly (readonly [typed: string, says: RegExp])[] = [
        ['1200+2*15', /1230 mm/],
        ['46 7/16 in', /1179[.,]5/],
        ['1,18 m', /1180 mm/],
        ['1.18m', /1180 mm/],
        ['1 200', /1200 mm/],
        ['1.200', /1[.,]2 mm.*1200 mm\?/],
        ['118', /200.*12000.*1180 mm\?/],
        ['1e9', /12000|Bleibt|Kept/],
        ['1/0', /Kept|Bleibt/],
        ['=', /Kept|Bleibt/],
      ]
      for (const [typed, says] of cases) {
        await field.fill(typed)
        expect(await hint(), typed).toMatch(says)
      }
      await field.press('Escape')
      expect(await field.inputValue()).toBe('1230')
      expect(await canUndo(page).catch(() => false)).toBe(false)
    },
  )
})

describe('a limit of one’s own', () => {
  it('is stated with its source from the verdict, changes it, and is one step of undo', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: /Cover of the frame/ }).click()
    await page.locator('.vr.open').getByRole('button', { name: 'Change this limit' }).last().click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Change for this project' }).first().click()
    await dialog.getByRole('textbox', { name: /At least/ }).fill('35')
    await dialog.getByRole('button', { name: 'State it as our own' }).click()
    expect(await dialog.getByRole('alert').innerText()).toContain('source or reason')
    await dialog.getByRole('textbox', { name: 'Source or reason' }).fill('house rule')
    await dialog.getByRole('button', { name: 'State it as our own' }).click()
    await page.keyboard.press('Escape')
    await painted(page)
    const verdict = page.locator('.vr', { hasText: 'Cover of the frame' })
    expect(await verdict.getAttribute('class')).toMatch(/advice|not-met/)
    expect(await verdict.innerText()).toContain('house rule')
    await undo(page)
    expect(await verdict.getAttribute('class')).toContain('met')
    expect(await verdict.getAttribute('class')).not.toMatch(/advice|not-met/)
  })
})

describe('without a pointer', () => {
  it('a whole joint is built: frame, joint, three seals, a sill, and it is saved', async () => {
    const { page, faults } = await open({
      before: 'delete window.showOpenFilePicker; delete window.showSaveFilePicker',
      ready: async it => void (await it.route('**/*', route => route.continue())),
    })
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await page.keyboard.press(key)
      await painted(page)
    }
    const type = async (text: string) => {
      await page.keyboard.type(text)
      await press('Enter')
    }
    const inParts = () => page.locator('[data-area="parts"] [role="option"][tabindex="0"]').focus()
    const selectRow = async (name: RegExp) => {
      await inParts()
      await page.keyboard.press('Home')
      for (
        let at = 0;
        at < 30 && !name.test(await page.evaluate<string>('document.activeElement.innerText'));
        at++
      )
        await page.keyboard.press('ArrowDown')
      expect(await page.evaluate<string>('document.activeElement.innerText')).toMatch(name)
    }
    // F6 leads to the parts; from there everything is done.
    for (let at = 0; at < 3; at++) await press('F6')
    expect(await page.evaluate(`document.activeElement.closest('[data-area]').dataset.area`)).toBe('parts')
    // All three seals out of the list, then filled again from the menu.
    for (const name of [/Tape/, /Foam/, /Membrane/]) {
      await selectRow(name)
      await press('Delete')
    }
    expect(await page.locator('.pc .fill').count()).toBe(3)
    for (const plane of ['outer', 'middle', 'inner']) {
      await selectRow(/Joint/)
      await press('Insert')
      await press('ArrowDown', 'ArrowUp', 'Enter')
      expect((await page.getByTestId('polite').innerText()).length, plane).toBeGreaterThan(3)
    }
    expect(await page.locator('.pc .fill').count()).toBe(0)
    // Joint 15, typed.
    await selectRow(/Joint/)
    await press('Enter')
    await type('12-18')
    expect(await valueOf(page, 'Joint, this side')).toBe('12 to 18')
    // The frame, from its row to its field.
    await selectRow(/Frame\s+\d/)
    await press('Enter')
    await type('20')
    expect(await valueOf(page, 'From bearing layer')).toBe('20')
    // The sill, at its own cut.
    await page.keyboard.press('Control+k')
    await page.keyboard.type('next cut')
    await press('Enter')
    for (
      let at = 0;
      at < 3 && (await page.getByRole('region', { name: 'Section through the sill' }).count()) === 0;
      at++
    ) {
      await page.keyboard.press('Control+k')
      await page.keyboard.type('next cut')
      await press('Enter')
    }
    await inParts()
    await press('Insert')
    await page.keyboard.type('Outside')
    await press('Enter')
    expect((await rows(page)).join()).toContain('Outside sill')
    expect(await page.evaluate('document.activeElement.getAttribute("role")')).toBe('option')
    const download = page.waitForEvent('download')
    await press('Control+s')
    const path = (await (await download).path()) ?? ''
    const { readFile } = await import('node:fs/promises')
    const read = openProject(await readFile(path, 'utf8'))
    expect(read.ok && Object.values(read.value.project.openings)[0]?.sill).toBeTruthy()
    expect(faults).toEqual([])
  })
})
