import { setText, setValues } from '../../ui/drawn/svg';

/** What the rooms here write into the page outside React: only what has changed, and only where its place is there. */

export function write(element: Element | null, text: string): void {
  if (element) setText(element, text);
}

export function writeAttribute(element: Element | null, name: string, value: string): void {
  if (element) setValues(element, { [name]: value });
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
