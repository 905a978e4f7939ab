/** What is amiss with the words in the pictures of a page: cut off, or over one another. Each function runs inside the page by itself. */

/** Words of a picture that reach over its edge. */
export function clipped() {
  return [...document.querySelectorAll('svg.picture')].flatMap((svg) => {
    const edge = svg.getBoundingClientRect();
    return [...svg.querySelectorAll('text')].flatMap((text) => {
      const box = text.getBoundingClientRect();
      const inside =
        box.left >= edge.left - 1 &&
        box.right <= edge.right + 1 &&
        box.top >= edge.top - 1 &&
        box.bottom <= edge.bottom + 1;
      return inside ? [] : [`${svg.querySelector('title').textContent}: ${text.textContent}`];
    });
  });
}

/** Words of a picture that lie over one another. */
export function overlapping() {
  return [...document.querySelectorAll('svg.picture')].flatMap((svg) => {
    const texts = [...svg.querySelectorAll('text')].map((text) => ({
      words: text.textContent,
      box: text.getBoundingClientRect(),
    }));
    return texts.flatMap((one, i) =>
      texts.slice(i + 1).flatMap((other) => {
        // Boxes of letters have air above and below them.
        const air = Math.min(one.box.height, other.box.height) * 0.3;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const along = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        return across > 1 && along > air ? [`"${one.words}" over "${other.words}"`] : [];
      }),
    );
  });
}
