import { t } from './roomText';

/** "A4 lying": a format's name in words. */
export function formatText(name: string): string {
  const [size, way] = name.split(' ');
  if (way === 'landscape') return `${size} ${t('drawing.landscape')}`;
  return way === 'portrait' ? `${size} ${t('drawing.portrait')}` : size;
}
