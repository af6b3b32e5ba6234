/** What the rooms here write into the page outside React: only what has changed. */

export function write(element: Element | null, text: string): void {
  if (element && element.textContent !== text) element.textContent = text;
}

export function writeAttribute(element: Element | null, name: string, value: string): void {
  if (element && element.getAttribute(name) !== value) element.setAttribute(name, value);
}

export function made<K extends keyof HTMLElementTagNameMap>(
  name: K,
  className: string,
  parent: Element,
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  if (className !== '') element.className = className;
  parent.append(element);
  return element;
}
