package io.faultwright.site;

/**
 * Finds texts with too little contrast in a page: relative luminance and the ratio of 4.5 to 1 of
 * WCAG 2.2, 1.4.3 (formula from memory; black on white gives 21).
 */
final class Contrast {
  static final String SCRIPT =
      """
      () => {
        const channels = colour => colour.match(/[\\d.]+/g).map(Number);
        const luminance = ([r, g, b]) => {
          const part = c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
          return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
        };
        const behind = element => {
          for (let e = element; e; e = e.parentElement) {
            const colour = channels(getComputedStyle(e).backgroundColor);
            if (colour.length < 4 || colour[3] > 0) return colour;
          }
          return [255, 255, 255];
        };
        const ratio = (a, b) => {
          const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p);
          return (x + 0.05) / (y + 0.05);
        };
        if (Math.abs(ratio([0, 0, 0], [255, 255, 255]) - 21) > 1e-9) return ['wrong formula'];
        const own = e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim());
        return [...document.querySelectorAll('body *')]
          .filter(e => !e.closest('svg') && own(e) && e.checkVisibility())
          .filter(e => ratio(channels(getComputedStyle(e).color), behind(e)) < 4.5)
          .map(e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 30));
      }
      """;

  private Contrast() {}
}
