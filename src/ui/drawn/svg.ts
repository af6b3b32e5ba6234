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

export function setValues(element: Element, values: Values): void {
  for (const [name, value] of Object.entries(values)) {
    const text = typeof value === 'number' ? String(Math.round(value * 1000) / 1000) : value;
    if (element.getAttribute(name) !== text) element.setAttribute(name, text);
  }
}

/** Shows or hides without touching the layout. */
export function setShown(element: SVGElement | HTMLElement, shown: boolean): void {
  const display = shown ? '' : 'none';
  if (element.style.display !== display) element.style.display = display;
}

export function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/**
 * As many elements of a kind as are asked for at the moment: missing ones are made, spare ones hidden and kept, so
 * that dragging makes no garbage.
 */
export class ElementPool<E extends SVGElement | HTMLElement> {
  private readonly elements: E[] = [];

  constructor(private readonly make: (index: number) => E) {}

  take(count: number): readonly E[] {
    while (this.elements.length < count) this.elements.push(this.make(this.elements.length));
    this.elements.forEach((element, i) => setShown(element, i < count));
    return this.elements;
  }
}
