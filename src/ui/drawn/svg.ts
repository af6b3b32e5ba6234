/** Makes and changes SVG elements outside React: on the drag path only attributes change. */
const SVG = 'http://www.w3.org/2000/svg';

type Values = Readonly<Record<string, string | number>>;

export function svgElement<K extends keyof SVGElementTagNameMap>(
  name: K,
  parent: Element | null,
  values: Values = {},
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name);
  setValues(element, values);
  parent?.append(element);
  return element;
}

/**
 * What each element was last given, so that a frame neither asks the page nor makes a text where nothing changed. An element
 * whose attributes are written here is written nowhere else.
 */
const given = new WeakMap<Element, Record<string, string | number>>();

export function setValues(element: Element, values: Values): void {
  let before = given.get(element);
  if (!before) {
    before = {};
    given.set(element, before);
  }
  for (const name in values) {
    const value = values[name];
    if (before[name] === value) continue;
    before[name] = value;
    const text = typeof value === 'number' ? String(Math.round(value * 1000) / 1000) : value;
    if (element.getAttribute(name) !== text) element.setAttribute(name, text);
  }
}

/** Shows or hides without touching the layout. */
export function setShown(element: SVGElement | HTMLElement, shown: boolean): void {
  if (showing.get(element) === shown) return;
  showing.set(element, shown);
  element.style.display = shown ? '' : 'none';
}

const showing = new WeakMap<Element, boolean>();

const TEXT = 3;

/** Writes a text where it is another; into the text node that is there, so that the page need not make a new one. */
export function setText(element: Element, text: string): void {
  const node = element.firstChild;
  if (node?.nodeType === TEXT && node.nextSibling === null) {
    const words = node as Text;
    if (words.data !== text) words.data = text;
  } else if (element.textContent !== text) element.textContent = text;
}

/**
 * As many elements of a kind as are asked for at the moment: missing ones are made, spare ones hidden and kept, so
 * that dragging makes no garbage.
 */
export class ElementPool<E extends SVGElement | HTMLElement> {
  private readonly elements: E[] = [];
  private shown = 0;

  constructor(private readonly make: (index: number) => E) {}

  take(count: number): readonly E[] {
    while (this.elements.length < count) {
      const element = this.make(this.elements.length);
      setShown(element, this.elements.length < this.shown);
      this.elements.push(element);
    }
    for (; this.shown < count; this.shown++) setShown(this.elements[this.shown], true);
    for (; this.shown > count; this.shown--) setShown(this.elements[this.shown - 1], false);
    return this.elements;
  }
}
