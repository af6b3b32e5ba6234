// First: uPlot reads the language when it is imported.
import './pageLanguage';
import 'uplot/dist/uPlot.min.css';
import uPlot from 'uplot';

export { uPlot };
