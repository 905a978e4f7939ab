/** Drives one text editor on the workbench page as a person would, and reads what it shows; asserts nothing. */

/** Text as the page shows it: its spaces are no-break ones, and it may be cut in lines anywhere. */
export const plain = (text) => text.replace(/\s+/g, ' ').trim();

export function editorPage(page) {
  const card = page.locator('.monaco-hover:visible').first();
  const suggestions = page.locator('.suggest-widget.visible');

  /** Once it stays: figures that come in above a line push it down under the pointer. */
  async function placeOf(text, line) {
    let before;
    for (let turn = 0; turn < 20; turn++) {
      const place = await page.evaluate(findText, [text, line]);
      if (place && JSON.stringify(place) === JSON.stringify(before)) return place;
      before = place;
      await page.waitForTimeout(300);
    }
    throw new Error(`The editor shows no "${text}" in a line with "${line}" that stays in its place`);
  }

  /** A key pressed before the workbench has bound it is lost; one pressed twice undoes itself, so each press gets its time. */
  async function pressUntil(key, locator, state) {
    for (let attempt = 0; attempt < 4; attempt++) {
      await page.keyboard.press(key);
      const done = await locator.waitFor({ state, timeout: 5000 }).then(
        () => true,
        () => false,
      );
      if (done) return;
    }
    throw new Error(`${key} does nothing`);
  }

  return {
    /** Waits until the file's text is there. */
    async opened(name) {
      await page.locator(`.tab.active[data-resource-name="${name}"]`).waitFor();
      await page.locator('.monaco-editor .view-line').first().waitFor();
    },

    placeOf,

    /** The texts underlined at this severity (error, warning, info), as they stand in the editor. */
    async underlined(severity) {
      await page.locator(`.monaco-editor .squiggly-${severity}`).first().waitFor();
      return page.evaluate(textUnder, severity);
    },

    /** The rows in sight, once one of them has these words. */
    async problems(words) {
      const panel = page.locator('.markers-panel');
      await pressUntil('Control+Shift+M', panel, 'visible');
      const rows = panel.locator('.monaco-list-row');
      await rows.filter({ hasText: words }).first().waitFor();
      return (await rows.allInnerTexts()).map(plain);
    },

    /** Follows an entry of the Problems panel to its place. */
    async goToProblem(words) {
      await page.locator('.markers-panel .monaco-list-row', { hasText: words }).dblclick();
    },

    /** Messages with these words, in a toast or in the notification centre. */
    async told(words) {
      const message = page.locator('.notification-list-item-message', { hasText: words });
      const toast = await message
        .first()
        .waitFor({ timeout: 3000 })
        .then(
          () => true,
          () => false,
        );
      if (!toast) {
        await page.keyboard.press('F1');
        const input = page.locator('.quick-input-widget input').first();
        await input.waitFor();
        await input.fill('>Notifications: Show Notifications');
        await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: 'Show Notifications' }).waitFor();
        await page.keyboard.press('Enter');
        await message.first().waitFor();
      }
      const texts = (await message.allInnerTexts()).map(plain);
      await page.keyboard.press('Escape');
      return texts;
    },

    /** Opens a file by name, as Ctrl+P does. */
    async open(name) {
      const input = page.locator('.quick-input-widget input').first();
      // A file still on its way takes the focus, and the list of files is gone.
      for (let attempt = 0; ; attempt++) {
        await pressUntil('Control+P', input, 'visible');
        const row = page.locator('.quick-input-list .monaco-list-row.focused', { hasText: name });
        const found = await input
          .fill(name, { timeout: 5000 })
          .then(() => row.waitFor({ timeout: 5000 }))
          .then(
            () => true,
            () => false,
          );
        if (found) break;
        if (attempt === 3) throw new Error('The list of files does not stay open');
        await page.keyboard.press('Escape');
      }
      await page.keyboard.press('Enter');
      await this.opened(name);
    },

    async closePanel() {
      await pressUntil('Control+J', page.locator('.markers-panel'), 'hidden');
    },

    /** The hover card over a text of the line that holds `line`. */
    async hoverCard(text, line = text) {
      for (let attempt = 0; ; attempt++) {
        const { x, y, width, height } = await placeOf(text, line);
        await page.mouse.move(x + width / 2, y + height / 2, { steps: 4 });
        const shown = await card.waitFor({ timeout: 5000 }).then(
          () => true,
          () => false,
        );
        if (shown) break;
        if (attempt === 3) throw new Error(`No card over "${text}"`);
        await page.mouse.move(0, 0);
      }
      await card.filter({ hasNotText: 'Loading...' }).waitFor();
      return plain((await card.allInnerTexts()).join(' '));
    },

    /** Scrolls the hover card until this text is really in sight, and gives the line it stands in. */
    async inCard(words) {
      const line = card.locator('li', { hasText: words }).first();
      const frame = await card.boundingBox();
      await page.mouse.move(frame.x + 40, frame.y + frame.height / 2);
      for (let turn = 0; turn < 30; turn++) {
        const box = await line.boundingBox();
        if (box.y >= frame.y && box.y + box.height <= frame.y + frame.height) return plain(await line.textContent());
        await page.mouse.wheel(0, box.y < frame.y ? -60 : 60);
        await page.waitForTimeout(50);
      }
      throw new Error(`"${words}" stays out of sight in the hover card`);
    },

    /** Empties the value after `key`, and gives the labels offered there and the explanation beside the one named. */
    async completion(key, label) {
      const { x, y, width, height } = await placeOf(`${key}:`, `${key}:`);
      await page.mouse.click(x + width - 1, y + height / 2);
      // From the first letter of the key over its colon and the space behind, which must stay.
      await page.keyboard.press('Home');
      for (let letter = 0; letter < key.length + 2; letter++) await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Shift+End');
      await page.keyboard.press('Delete');
      // A list that was asked for while the last edit was still on its way is put away again.
      await pressUntil('Control+Space', suggestions.locator('.monaco-list-row').first(), 'visible');
      const chosen = suggestions.locator('.monaco-list-row', { hasText: label }).first();
      await chosen.waitFor();
      const labels = (await suggestions.locator('.monaco-list-row .label-name').allInnerTexts()).map(plain);
      const details = page.locator('.suggest-details');
      const isFocused = () => chosen.evaluate((row) => row.classList.contains('focused'));
      for (let turn = 0; turn < 8; turn++) {
        for (let press = 0; press < 40 && !(await isFocused()); press++) await page.keyboard.press('ArrowDown');
        if (!(await details.isVisible())) await page.keyboard.press('Control+Space');
        await details.waitFor();
        // A list that is filled anew begins at its top again, and the panel follows the row a moment later.
        await page.waitForTimeout(400);
        if (await isFocused()) break;
      }
      return { labels, explanation: plain((await details.allInnerTexts()).join(' ')) };
    },
  };
}

// The functions below run inside the page.

/** The box of `text` within the first shown line that holds `line`. */
function findText([text, line]) {
  const ordinary = (shown) => shown.replaceAll('\u00a0', ' ');
  for (const element of document.querySelectorAll('.monaco-editor .view-line')) {
    const whole = ordinary(element.textContent);
    const at = whole.includes(line) ? whole.indexOf(text) : -1;
    if (at < 0) continue;
    const nodes = [];
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    let length = 0;
    while (walker.nextNode()) {
      nodes.push({ node: walker.currentNode, from: length });
      length += walker.currentNode.length;
    }
    const pointAt = (offset) => nodes.findLast(({ from }) => from <= offset);
    const first = pointAt(at);
    const last = pointAt(at + text.length - 1);
    const range = document.createRange();
    range.setStart(first.node, at - first.from);
    range.setEnd(last.node, at + text.length - last.from);
    const { x, y, width, height } = range.getBoundingClientRect();
    return { x, y, width, height };
  }
  return null;
}

/** Measures letters against the underlines, as they are drawn in different layers of the page. */
function textUnder(severity) {
  const lines = [...document.querySelectorAll('.monaco-editor .view-line')];
  return [...document.querySelectorAll(`.monaco-editor .squiggly-${severity}`)].map((squiggle) => {
    const box = squiggle.getBoundingClientRect();
    const line = lines.find((element) => Math.abs(element.getBoundingClientRect().top - box.top) < box.height);
    if (!line) return '';
    let text = '';
    const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      for (let index = 0; index < node.length; index++) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + 1);
        const letter = range.getBoundingClientRect();
        const middle = letter.x + letter.width / 2;
        if (middle > box.left && middle < box.right) text += node.data[index];
      }
    }
    return text.replaceAll('\u00a0', ' ');
  });
}
