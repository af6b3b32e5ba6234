/** Entries: reading the gauge. */
export const HELP_BENCH = {
  'help.gaugeStep.name': 'Step of the gauge',
  'help.gaugeStep.what':
    'The smallest step that the force gauge shows. A reading that is rounded to it can lie anywhere within, which is a standard uncertainty of the step over the root of twelve.',
  'help.gaugeStep.sign': 'A size.',
  'help.hysteresis.name': 'Push and pull',
  'help.hysteresis.what':
    'Going up and going down the gauge reads differently: friction resists both ways. The mean of the two passes is the moment, half their difference the friction. Shown is what this head\u2019s friction would make at the push rod.',
  'help.hysteresis.sign': 'Positive: pulling reads more tension than pushing.',
  'help.loopWork.name': 'Work of a loop',
  'help.loopWork.what':
    'What friction takes on the way up and down through the pitches: the area between the two passes.',
  'help.loopWork.sign': 'Positive. A negative one means that push and pull were exchanged.',
  'help.residual.name': 'What is left over',
  'help.residual.what':
    'A reading less what the fitted curve says there, in standard uncertainties. Sound readings scatter about zero without a pattern; a pattern says that the curve lacks something.',
  'help.residual.sign': 'Positive: the reading lies above the curve.',
  'help.band95.name': '95 % band',
  'help.band95.what':
    'The range in which the true value lies nineteen times in twenty, if the readings scatter as assumed: about twice the standard uncertainty either way with many readings, more with few.',
  'help.band95.sign': 'Either way.',
  'help.zeroOfGauge.name': 'Zero of the gauge',
  'help.zeroOfGauge.what':
    'What the gauge shows with nothing on it. It shifts every reading alike and is fitted together with the moment.',
  'help.zeroOfGauge.sign': 'Positive: it reads too much tension.',
  'help.returningForce.name': 'Force that comes back',
  'help.returningForce.what':
    'Beyond some pitch readings can show more than mass and friction explain. If it goes with the square of the speed and has not the shape of mass, it looks aerodynamic.',
  'help.returningForce.sign': 'Toward flat or away from it, as the sentence says.',
} as const;
