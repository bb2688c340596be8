// How far two colours lie apart, worked out in the page.

/** To be evaluated in a page: leaves `window.colours.contrast(one, other)`, of two colours given as [red, green, blue] from 0 to 255 (WCAG 2.2, contrast ratio). */
export function colours() {
  const luminance = (rgb) => {
    const [r, g, b] = rgb.slice(0, 3).map((part) => (part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  window.colours = {
    contrast: (one, other) => {
      const [a, b] = [luminance(one), luminance(other)].sort((a, b) => b - a);
      return (a + 0.05) / (b + 0.05);
    },
  };
}
