// What is asked of every page, each as a function that returns what is wrong, in words: nothing when all is well.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import { execFileSync } from 'node:child_process';
import { chromium } from 'playwright-core';
import { HtmlValidate } from 'html-validate';

const require = createRequire(import.meta.url);
const paths = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

export function browse() {
  return chromium.launch({
    executablePath: paths.find((path) => fs.existsSync(path)),
    args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run', '--disable-background-networking'],
  });
}

// Opens a file in a fresh context; `seen` gathers all that a quiet page would not do.
export async function open(browser, file, options = {}) {
  const context = await browser.newContext({ bypassCSP: true, ...options });
  const page = await context.newPage();
  const seen = [];
  page.on('console', (message) => seen.push(`console: ${message.text()}`));
  page.on('pageerror', (error) => seen.push(`error: ${error}`));
  page.on('request', (request) => { if (!request.url().startsWith('file:')) seen.push(`request: ${request.url()}`); });
  page.on('dialog', (dialog) => { seen.push(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  await page.goto(`file://${file}`);
  return { context, page, seen };
}

export async function unfold(page) {
  await page.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });
}

// What axe-core tests for WCAG 2.0 to 2.2, levels A and AA.
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

export async function accessible(page) {
  await page.evaluate(fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
  const found = await page.evaluate((tags) => globalThis.axe.run(document, { runOnly: tags }), levels);
  return found.violations.map((v) => `${v.id} (${v.impact}), ${v.nodes.length} times, first ${v.nodes[0].target} `
    + v.nodes[0].failureSummary.replace(/\s+/g, ' '));
}

export async function fits(page) {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    const wide = [...document.querySelectorAll('body *')]
      .filter((e) => e.getBoundingClientRect().right > width + 0.5 && !e.closest('.wide'));
    return [`${document.documentElement.scrollWidth} px wide on ${width}`,
      ...wide.slice(0, 5).map((e) => `${e.tagName}.${e.className}: ${e.textContent.slice(0, 60)}`)];
  });
}

export async function anchors(page) {
  return page.evaluate(() => [...document.querySelectorAll('a[href^="#"]')]
    .filter((a) => !document.getElementById(a.getAttribute('href').slice(1))).map((a) => a.getAttribute('href')));
}

// Words in a drawing lie within it, and no two of them on each other.
export async function drawings(page) {
  return page.evaluate(() => {
    const problems = [];
    for (const svg of document.querySelectorAll('figure svg')) {
      const frame = svg.getBoundingClientRect();
      const said = svg.getAttribute('aria-label');
      const words = [...svg.querySelectorAll('text')].map((t) => ({ text: t.textContent, box: t.getBoundingClientRect() }));
      for (const { text, box } of words) {
        const across = box.left >= frame.left - 1 && box.right <= frame.right + 1;
        if (!across || box.top < frame.top - 3 || box.bottom > frame.bottom + 3) problems.push(`cut off: '${text}' in ${said}`);
        if (box.height < 11) problems.push(`${box.height} px high: '${text}' in ${said}`);
      }
      words.forEach((a, i) => words.slice(i + 1).forEach((b) => {
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        if (across > 1 && down > 4) problems.push(`'${a.text}' lies on '${b.text}' in ${said}`);
      }));
    }
    return problems;
  });
}

// Every weight, share, temperature and thing to load stands in a line, row or paragraph that leads to journal lines, to
// a lot or to a season. Left out are the lines themselves, headings, and limits and rules, which name their source.
export async function figures(page) {
  return page.evaluate(() => {
    const figure = /\d\s?(kg|lb|oz|g|%|°[CF])(?![a-z])|\d x |\d (escape boards?|jars?|tubs?)\b/;
    const leads = 'a[href^="#l"], a[href*="lots/"], a[href*="seasons/"], .ref a';
    const problems = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const parent = walk.currentNode.parentElement;
      if (!figure.test(walk.currentNode.data)) continue;
      if (parent.closest('.lines, h1, h2, h3, h4, title, style, .limits, footer')) continue;
      let part = parent.closest('li, tr, p, dd, figure, summary, caption');
      let found = false;
      while (part && !found) {
        found = part.querySelector(leads) !== null || (part.matches('figure') && part.parentElement.querySelector(leads) !== null);
        part = part.parentElement.closest('li, tr, dd, figure');
      }
      if (!found) problems.push(`${walk.currentNode.data.trim().slice(0, 80)} (in ${parent.tagName})`);
    }
    return problems;
  });
}

// No figure stands alone: a number in a drawing, a table or a sum has its unit.
export async function units(page) {
  return page.evaluate(() => [...document.querySelectorAll('td, dd')]
    .filter((e) => !e.closest('.lines') && /^\s*-?\d+\.\d+\s*$/.test(e.textContent)).map((e) => `no unit: ${e.textContent}`));
}

export async function valid(html) {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard'],
    rules: { 'no-inline-style': 'off', 'long-title': 'off', 'no-trailing-whitespace': 'off' },
  });
  const report = await validator.validateString(html);
  return report.results.flatMap((r) => r.messages.map((m) => `${m.line}:${m.column} ${m.ruleId} ${m.message}`));
}

const plain = (text) => text.replace(/\u2060/g, '').replace(/\s+/g, ' ').trim();

// Printed, each sheet begins a leaf of its own, every leaf of it carries its head, and what belongs to one hive stands on
// one leaf. `leaves` gets the number of leaves by sheet.
export async function sheets(page, format, file, leaves = []) {
  const wanted = await page.evaluate(() => [...document.querySelectorAll('.sheet')].map((sheet) => ({
    head: sheet.querySelector('.sheet-head').textContent,
    rows: [...sheet.querySelectorAll('.sheet-row')].map((row) => {
      const copy = row.cloneNode(true);
      for (const ref of copy.querySelectorAll('.ref')) ref.remove();
      return [...copy.querySelectorAll('strong, .due, .sub, li')].map((part) => part.textContent);
    }),
  })));
  fs.writeFileSync(file, await page.pdf({ format, preferCSSPageSize: false }));
  const pages = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }).split('\f').map(plain);
  const problems = [];
  for (const { head, rows } of wanted) {
    const its = pages.filter((text) => text.startsWith(plain(head)));
    leaves.push(its.length);
    for (const row of rows) {
      const on = its.filter((text) => text.includes(plain(row.join(' '))));
      if (on.length !== 1) problems.push(`${format}: on ${on.length} leaves of '${head}': ${plain(row.join(' ')).slice(0, 80)}`);
    }
    if (its.length === 0) problems.push(`${format}: no leaf begins with '${head}'`);
  }
  return problems;
}
