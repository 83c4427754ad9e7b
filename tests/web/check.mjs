// Opens a report in a headless browser and reads its calendar: node check.mjs FOLDER [SAID]
// SAID is a file of words that must stand on the page as they are, one a line.
// Prints one line a check and ends with `N passed, N failed`.
import fs from 'node:fs';
import path from 'node:path';
import ICAL from 'ical.js';
import { accessible, anchors, browse, drawings, figures, fits, open, sheets, unfold, units, valid } from './checks.mjs';

const [folder, said] = process.argv.slice(2);
const below = (sub) => fs.readdirSync(path.join(folder, sub)).sort().map((name) => `${sub}/${name}`);
const pages = ['report.html', ...below('lots'), ...below('seasons')];
const at = (name) => path.resolve(folder, name);
let passed = 0;
let failed = 0;

function check(name, problems) {
  if (problems.length === 0) passed += 1;
  else failed += 1;
  console.log(`${problems.length === 0 ? 'ok' : 'FAILED'} ${name}`);
  for (const problem of problems.slice(0, 12)) console.log(`    ${problem}`);
}

const looks = [
  ['phone', { viewport: { width: 360, height: 780 }, colorScheme: 'light' }],
  ['phone, dark', { viewport: { width: 360, height: 780 }, colorScheme: 'dark' }],
  ['desktop', { viewport: { width: 1200, height: 900 }, colorScheme: 'light' }],
  ['desktop, dark, no script', { viewport: { width: 1200, height: 900 }, colorScheme: 'dark', javaScriptEnabled: false }],
];

async function look(browser, name) {
  for (const [words, options] of looks) {
    const { context, page, seen } = await open(browser, at(name), options);
    check(`${name}, ${words}: silent, no network`, seen);
    if (options.javaScriptEnabled !== false) {
      check(`${name}, ${words}: no sideways scroll`, await fits(page));
      check(`${name}, ${words}: links lead somewhere`, await anchors(page));
      await unfold(page);
      check(`${name}, ${words}: axe-core finds nothing`, await accessible(page));
      check(`${name}, ${words}: no sideways scroll, all unfolded`, await fits(page));
      check(`${name}, ${words}: words in drawings can be read`, await drawings(page));
    }
    await context.close();
  }
  const { context, page } = await open(browser, at(name));
  check(`${name}: every figure leads to its lines`, await figures(page));
  check(`${name}: every figure has its unit`, await units(page));
  await context.close();
}

// Words of the journal stand on the page as they were written, and nothing of them became markup.
async function asWritten(browser) {
  const { context, page } = await open(browser, at('report.html'));
  const text = await page.evaluate(() => document.body.textContent);
  const words = fs.readFileSync(said, 'utf8').split('\n').filter((line) => line !== '');
  const missing = words.filter((line) => !text.includes(line)).map((line) => `not there: ${line}`);
  check('words of the journal stand as they were written', missing);
  const made = await page.evaluate(() => document.querySelectorAll('script, img, iframe, object, u, i, b').length);
  check('nothing of the journal became markup', made === 0 ? [] : [`${made} elements`]);
  await context.close();
}

async function print(browser, format) {
  const { context, page } = await open(browser, at('report.html'));
  const leaves = [];
  const problems = await sheets(page, format, path.resolve(folder, '..', `${format}.pdf`), leaves);
  check(`the sheets print whole on ${format}, leaves by yard: ${leaves.join(', ')}`, problems);
  await context.close();
}

function calendar() {
  const text = fs.readFileSync(at('visits.ics'), 'utf8');
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
  const read = events.map((e) => [e.uid, e.startDate.toString(), e.endDate.toString(), e.summary, e.description ?? '']);
  fs.writeFileSync(path.resolve(folder, '..', 'events.json'), JSON.stringify(read));
}

calendar();
for (const name of pages) check(`${name}: html-validate is content`, await valid(fs.readFileSync(at(name), 'utf8')));
const browser = await browse();
for (const name of pages) await look(browser, name);
if (said) await asWritten(browser);
// Text turned right to left comes out of a PDF in another order, so that it cannot be looked for.
if (!said) for (const format of ['A4', 'Letter']) await print(browser, format);
await browser.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
