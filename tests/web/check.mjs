// Opens a report in a headless browser and reads its calendar: node check.mjs FOLDER [PICTURES]
// Prints one line a check and ends with `N passed, N failed`.
import fs from 'node:fs';
import path from 'node:path';
import { createRequire } from 'node:module';
import { chromium } from 'playwright-core';
import { HtmlValidate } from 'html-validate';
import ICAL from 'ical.js';

const require = createRequire(import.meta.url);
const [folder, pictures] = process.argv.slice(2);
const browserPath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((p) => fs.existsSync(p));
const pages = ['report.html', ...['lots', 'seasons'].flatMap((sub) => fs.readdirSync(path.join(folder, sub)).sort().map((name) => `${sub}/${name}`))];
let passed = 0;
let failed = 0;

function check(name, problems) {
  if (problems.length === 0) passed += 1;
  else failed += 1;
  console.log(`${problems.length === 0 ? 'ok' : 'FAILED'} ${name}`);
  for (const problem of problems.slice(0, 12)) console.log(`    ${problem}`);
}

async function open(browser, name, options) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const seen = [];
  page.on('console', (message) => seen.push(`console: ${message.text()}`));
  page.on('pageerror', (error) => seen.push(`error: ${error}`));
  page.on('request', (request) => { if (!request.url().startsWith('file:')) seen.push(`request: ${request.url()}`); });
  page.on('dialog', (dialog) => { seen.push(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  await page.goto(`file://${path.resolve(folder, name)}`);
  return { context, page, seen };
}

// What axe-core tests for WCAG 2.0 to 2.2, levels A and AA.
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function accessible(page) {
  await page.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });
  await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
  const found = await page.evaluate((tags) => globalThis.axe.run(document, { runOnly: tags }), levels);
  return found.violations.map((v) => `${v.id} (${v.impact}), ${v.nodes.length} times, first ${v.nodes[0].target} ${v.nodes[0].failureSummary.replace(/\s+/g, ' ')}`);
}

async function fits(page) {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    const wide = [...document.querySelectorAll('body *')].filter((e) => e.getBoundingClientRect().right > width + 0.5 && !e.closest('.wide'));
    return [`${document.documentElement.scrollWidth} px wide on ${width}`, ...wide.slice(0, 5).map((e) => `${e.tagName}.${e.className}: ${e.textContent.slice(0, 60)}`)];
  });
}

async function anchors(page) {
  return page.evaluate(() => [...document.querySelectorAll('a[href^="#"]')]
    .filter((a) => !document.getElementById(a.getAttribute('href').slice(1))).map((a) => a.getAttribute('href')));
}

const looks = [
  ['phone', { viewport: { width: 360, height: 780 }, colorScheme: 'light' }],
  ['phone, dark', { viewport: { width: 360, height: 780 }, colorScheme: 'dark' }],
  ['desktop', { viewport: { width: 1200, height: 900 }, colorScheme: 'light' }],
  ['desktop, dark, no script', { viewport: { width: 1200, height: 900 }, colorScheme: 'dark', javaScriptEnabled: false }],
];

async function look(browser, name) {
  for (const [words, options] of looks) {
    const { context, page, seen } = await open(browser, name, { bypassCSP: true, ...options });
    const file = pictures && path.join(pictures, `${name.replace(/\W+/g, '-')}-${words.replace(/\W+/g, '-')}.png`);
    if (file) await page.screenshot({ path: file, fullPage: true });
    check(`${name}, ${words}: silent, no network`, seen);
    if (options.javaScriptEnabled !== false) {
      check(`${name}, ${words}: no sideways scroll`, await fits(page));
      check(`${name}, ${words}: links lead somewhere`, await anchors(page));
      check(`${name}, ${words}: axe-core finds nothing`, await accessible(page));
      check(`${name}, ${words}: no sideways scroll, all unfolded`, await fits(page));
    }
    await context.close();
  }
}

async function print(browser, format) {
  const { context, page } = await open(browser, 'report.html', {});
  const pdf = await page.pdf({ format, path: pictures && path.join(pictures, `${format}.pdf`), preferCSSPageSize: false });
  const sheets = await page.locator('.sheet').count();
  const leaves = (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
  check(`prints on ${format}`, leaves > sheets ? [] : [`${leaves} pages for ${sheets} sheets`]);
  await context.close();
}

async function valid() {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard'],
    rules: { 'no-inline-style': 'off', 'long-title': 'off', 'no-trailing-whitespace': 'off' },
  });
  for (const name of pages) {
    const report = await validator.validateString(fs.readFileSync(path.join(folder, name), 'utf8'));
    check(`${name}: html-validate is content`, report.results.flatMap((r) => r.messages.map((m) => `${m.line}:${m.column} ${m.ruleId} ${m.message}`)));
  }
}

function calendar() {
  const text = fs.readFileSync(path.join(folder, 'visits.ics'), 'utf8');
  const root = new ICAL.Component(ICAL.parse(text));
  const events = root.getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
  const problems = [];
  if (events.length !== text.split('BEGIN:VEVENT').length - 1) problems.push(`${events.length} events read`);
  for (const event of events) {
    if (!event.uid || !event.summary || !event.startDate.isDate) problems.push(`odd event ${event.uid}`);
    if (event.endDate.compare(event.startDate) <= 0) problems.push(`ends before it begins: ${event.uid}`);
  }
  if (new Set(events.map((e) => e.uid)).size !== events.length) problems.push('a UID twice');
  for (const line of text.split('\r\n')) if (Buffer.byteLength(line) > 75) problems.push(`long line: ${line}`);
  if (/[^\r]\n/.test(text)) problems.push('a line end without CR');
  check('visits.ics: read by ical.js', problems);
  // The other reader prints the same, to be compared.
  fs.writeFileSync(path.join(folder, '..', 'events.json'), JSON.stringify(events.map((e) => [e.uid, e.startDate.toString(), e.endDate.toString(), e.summary, e.description ?? ''])));
}

calendar();
await valid();
const browser = await chromium.launch({
  executablePath: browserPath,
  args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run', '--disable-background-networking'],
});
for (const name of pages) await look(browser, name);
for (const format of ['A4', 'Letter']) await print(browser, format);
await browser.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
