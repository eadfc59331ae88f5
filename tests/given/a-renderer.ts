import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { chromium } from 'playwright-core'
import { type Picture, pictureOf } from './a-reader-of-png'

/** Pixels per mm: 8 is about 203 dpi, enough for a line of 0.18 mm to be seen; 5 do where many sheets are looked at. */
const finePixels_mm = 8

/** Both renderers find the sheets' own fonts, whatever the machine has. */
const fontsFor = (folder: string): string => {
  const path = join(folder, 'fonts.conf')
  writeFileSync(
    path,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${resolve('assets/fonts')}</dir>` +
      `<dir>/usr/share/fonts</dir><cachedir>${folder}</cachedir></fontconfig>`,
  )
  return path
}

/** An SVG as librsvg paints it. */
export const paintedByRsvg = (svg: string, pixels_mm = finePixels_mm): Picture => {
  const folder = mkdtempSync(join(tmpdir(), 'rsvg-'))
  const [from, to] = [join(folder, 'in.svg'), join(folder, 'out.png')]
  writeFileSync(from, svg)
  const dpi = `${pixels_mm * 25.4}`
  execFileSync('rsvg-convert', ['-d', dpi, '-p', dpi, from, '-o', to], {
    env: { ...process.env, FONTCONFIG_FILE: fontsFor(folder) },
  })
  return pictureOf(readFileSync(to))
}

/** An SVG as Chromium paints it. */
export const paintedByChromium = async (
  svg: string,
  size_mm: readonly [number, number],
): Promise<Picture> => {
  const [picture] = await allPaintedByChromium([{ svg, size_mm }])
  if (picture === undefined) throw new Error('no picture')
  return picture
}

/** Some SVG as Chromium paints them, one after the other in one browser. */
export const allPaintedByChromium = async (
  all: readonly { readonly svg: string; readonly size_mm: readonly [number, number] }[],
  pixels_mm = finePixels_mm,
): Promise<readonly Picture[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'chromium-'))
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
      '--disable-component-update', '--disable-sync', '--font-render-hinting=none', '--disable-lcd-text'], // prettier-ignore
    env: { ...process.env, FONTCONFIG_FILE: fontsFor(folder) } as Record<string, string>, // process.env has undefined only for names that are not set
  })
  try {
    const page = await browser.newPage()
    const pictures: Picture[] = []
    for (const { svg, size_mm } of all) {
      const [width = 1, height = 1] = size_mm.map(it => Math.round(it * pixels_mm))
      await page.setViewportSize({ width, height })
      const sized = svg.replace(/width="[\d.]+mm" height="[\d.]+mm"/, `width="${width}" height="${height}"`)
      await page.setContent(
        `<style>*{margin:0}svg{display:block}</style>${sized.replace(/^<\?xml.*\?>\n/, '')}`,
      )
      pictures.push(pictureOf(await page.screenshot()))
    }
    return pictures
  } finally {
    await browser.close()
  }
}
