/** The measuring bench's rooms Fit, Correct and Practice. */
export const BENCH_FIT = {
  'benchRoom.fit': 'Fit',
  'benchRoom.fit.none':
    'No run can be fitted yet. Take readings at some pitches with the rotor turning.',
  'benchRoom.fit.rung': 'Step of the ladder',
  'benchRoom.fit.rungLine': '{name} ({count})',
  'benchRoom.fit.number': 'Number',
  'benchRoom.fit.measured': 'Measured, 95 %',
  'benchRoom.fit.modelled': 'Model',
  'benchRoom.fit.difference': 'Measured \u2212 model',
  'benchRoom.fit.undetermined': 'not told by these readings',
  'benchRoom.fit.place': 'The gauge pulls',
  'benchRoom.fit.place.rod': 'in the push rod of one grip',
  'benchRoom.fit.place.slider': 'at the slider, all grips',
  'benchRoom.fit.place.arm': 'at an arm, push rod off',
  'benchRoom.fit.pulls': 'A pull moves the slider',
  'benchRoom.fit.pulls.up': 'along +Z, with the thrust',
  'benchRoom.fit.pulls.down': 'along \u2212Z, against the thrust',
  'benchRoom.fit.friction': 'Friction beside drag at rest',
  'benchRoom.fit.friction.pull': 'grows with the pull',
  'benchRoom.fit.friction.moment': 'one moment everywhere',
  'benchRoom.fit.friction.force': 'one force everywhere',
  'benchRoom.fit.friction.none': 'none',
  'benchRoom.fit.zeros': 'Zero of the gauge',
  'benchRoom.fit.zeros.free': 'fitted, one for each run',
  'benchRoom.fit.zeros.none': 'taken off already',
  'benchRoom.fit.air': 'Air as modelled',
  'benchRoom.fit.air.known': 'taken off',
  'benchRoom.fit.air.fitted': 'fitted by a factor',
  'benchRoom.fit.air.left': 'left in the readings',
  'benchRoom.fit.step': 'Gauge step, where a run does not say',
  'benchRoom.fit.limit': 'Gauge range',
  'benchRoom.fit.noise': 'Noise of a reading',
  'benchRoom.fit.learn': 'learn it',
  'benchRoom.fit.pitchSigma': 'Pitch is set to',
  'benchRoom.fit.shared': 'What all runs have alike',
  'benchRoom.fit.sharedHelp':
    'Standard uncertainties of the gauge, the arm, the tachometer and the zero of the pitch scale. More readings do not make them smaller. Between two steps of the ladder they count once, not twice. The first values are common practice.',
  'benchRoom.fit.gainPercent': 'Force shown',
  'benchRoom.fit.leverPercent': 'Arm or linkage',
  'benchRoom.fit.speedPercent': 'Speed shown',
  'benchRoom.fit.pitchZeroDeg': 'Zero of the pitch',
  'benchRoom.fit.noFreedom':
    'There are no more readings than numbers: nothing is left to judge the fit by.',
  'benchRoom.fit.learnt':
    'What is left over looks like noise of {noise} beside the gauge\u2019s step. That was learnt from these same readings, so they cannot judge the model: give the noise of the gauge to have it judged. (Chi-square {chi} on {freedom} degrees of freedom.)',
  'benchRoom.fit.noisy':
    'That is {share} % of the highest reading, far more than a sound bench leaves over. Look for rows in the wrong order, push and pull or signs exchanged, or a wrong unit.',
  'benchRoom.fit.stepAlone':
    'Gauge step and pitch setting alone explain what is left over. (Chi-square {chi} on {freedom} degrees of freedom.)',
  'benchRoom.fit.good':
    'The fit is good: sound benches leave more over in {p} % of cases, and nothing speaks against the model. (Chi-square {chi} on {freedom} degrees of freedom.)',
  'benchRoom.fit.poor':
    'The fit is poor: sound benches leave more over in only {p} % of cases. Something is in the readings that is not in the model. (Chi-square {chi} on {freedom} degrees of freedom.)',
  'benchRoom.fit.apart': 'These readings tell all fitted numbers apart.',
  'benchRoom.fit.entangled':
    'These readings hardly tell {first} and {second} apart (correlation {correlation}): each alone is uncertain, together they are known better.',
  'benchRoom.fit.blind':
    'These readings do not tell these numbers apart at all: {names}. Other pitches, both ways of travel or another speed would.',
  'benchRoom.fit.runs': 'Runs that count ({count} of {all})',
  'benchRoom.fit.otherHead': 'measured on \u201c{name}\u201d',
  'benchRoom.fit.goneHead': 'measured on a try-out that is gone',
  'benchRoom.fit.coarse':
    'All readings lie within {steps} steps of the gauge: its step is too coarse for these uncertainties to be trusted.',
  'benchRoom.fit.negative': 'Friction comes out below zero: push and pull may be exchanged.',
  'benchRoom.fitFault.noReadings': 'There are no readings to fit.',
  'benchRoom.fitFault.badReading':
    'A reading has no force for a moment: it lies over centre or out of reach.',
  'benchRoom.key.spread': 'J_yy \u2212 J_zz',
  'benchRoom.key.product': 'J_yz',
  'benchRoom.key.friction': 'friction',
  'benchRoom.key.zero': 'zero of run {number}',
  'benchRoom.key.extra': 'air, times the model',
  'benchRoom.key.drag': 'drag at rest, row {number}',
  'benchRoom.key.shared': 'error of all runs, {number}',
  'benchRoom.runFault.unreadable': '{name}: its columns cannot be read.',
  'benchRoom.runFault.noRung':
    '{name}: \u201c{fitted}\u201d is no step of this head\u2019s ladder. Choose one under Readings.',
  'benchRoom.runFault.noArm': '{name}: it does not say how long the gauge\u2019s arm is.',
  'benchRoom.runFault.head': '{name}: the head has no push rod, or stands still.',
  'benchRoom.assumedRung': '{name}: does not say what was fitted; taken as the head as designed.',
  'benchRoom.leftOut.setAside': '{name}: readings set aside: {count}.',
  'benchRoom.apart.uncounted':
    '{name}: does not count; it is left out under \u201cRuns that count\u201d.',
  'benchRoom.apart.otherHead':
    '{name}: was measured on \u201c{head}\u201d, not on the head that is on the stage; it does not count here.',
  'benchRoom.apart.goneHead':
    '{name}: was measured on a try-out that is gone; it does not count here.',
  'benchRoom.leftOut.noPlace': '{name}: readings with neither pitch nor scale: {count}.',
  'benchRoom.leftOut.noCalibration':
    '{name}: scale readings that no calibration reaches: {count}. Give pairs under Readings, Scale to pitch.',
  'benchRoom.leftOut.noSpeed': '{name}: readings that do not say how fast it turned: {count}.',
  'benchRoom.leftOut.noLever': '{name}: readings over centre or out of reach: {count}.',
  'benchRoom.unsaid':
    '{name}: readings that say neither push nor pull, and count as held: {count}.',
  'benchRoom.beyond': '{name}: readings beyond what was calibrated: {count}.',
  'benchRoom.flag.farFromOthers':
    '{excess} standard uncertainties from what the others say ({limit} are allowed)',
  'benchRoom.flag.overRange': 'at or beyond the gauge\u2019s range of {limit}',
  'benchRoom.flag.unlikeRepeats': '{by} away from its repeats ({allowed} is allowed)',
  'benchRoom.flag.title': 'Doubted or set aside',
  'benchRoom.flag.more': 'and {count} more: see the plots.',
  'benchRoom.setAside': 'Set aside',
  'benchRoom.countAgain': 'Count again',
  'benchRoom.fit.noAir': 'The design does not count the air: there is no air term to fit.',
  'benchRoom.split': 'Push and pull, pitch by pitch',
  'benchRoom.split.none':
    'No pitch was read both pushing and pulling: moment and friction cannot be split by hand.',
  'benchRoom.split.pitch': 'Pitch',
  'benchRoom.split.speed': 'Speed',
  'benchRoom.split.moment': 'Mean: moment',
  'benchRoom.split.friction': 'Friction beside drag',
  'benchRoom.split.hysteresis': 'Pull less push',
  'benchRoom.split.grip': 'Moment of the grip',
  'benchRoom.split.reversed': '(exchanged?)',
  'benchRoom.split.loop': 'At {rpm} rpm a loop of push and pull loses {work}.',
  'benchRoom.split.unpaired': 'Readings without a partner in the other way of travel: {count}.',
  'benchRoom.plot.force': 'Force against pitch',
  'benchRoom.plot.speed': 'Speed of the plots of force and friction',
  'benchRoom.plot.forceSummary':
    '{count} readings at {rpm} rpm over the predicted and the fitted curve; {aside} of the run are set aside. The fitted zero of the gauge is taken off.',
  'benchRoom.plot.pitch': 'Pitch, \u00b0',
  'benchRoom.plot.forceAxis': 'Force at the gauge, {unit}',
  'benchRoom.plot.model': 'model',
  'benchRoom.plot.fit': 'fitted',
  'benchRoom.plot.measured': 'measured',
  'benchRoom.plot.left': 'Left over',
  'benchRoom.plot.leftAxis': 'Standard uncertainties over the fit',
  'benchRoom.plot.leftSummary':
    '{count} readings; the largest that counts lies {largest} standard uncertainties off.',
  'benchRoom.plot.leftKey': 'Sound readings lie within the band nineteen times in twenty.',
  'benchRoom.plot.friction': 'Friction: half of pull less push',
  'benchRoom.plot.frictionAxis': 'Friction at the gauge, {unit}',
  'benchRoom.plot.frictionSummary':
    '{count} pitches read both ways, over the modelled and the fitted friction with the drag at rest.',
  'benchRoom.plot.frictionKey':
    'Half the width of the loop between pulling and pushing, with its 95 % interval; drag at rest is in it.',
  'benchRoom.plot.frictionPoint': 'Friction at {pitch}: {said}.',
  'benchRoom.plot.point': '{name}, reading {number}: {force} at {pitch}, {travel}, {rpm} rpm.',
  'benchRoom.plot.withoutZero': '{read} ({less} without the gauge\u2019s zero)',
  'benchRoom.plot.over': '{many} standard uncertainties over the fit.',
  'benchRoom.plot.under': '{many} standard uncertainties under the fit.',
  'benchRoom.plot.doubted': 'Doubted: {why}.',
  'benchRoom.plot.aside': 'Set aside.',
  'benchRoom.plot.beyond': 'It lies beyond what the plot shows.',
  'benchRoom.plot.reader': 'Readings of the plot {title}',
  'benchRoom.plot.readerStart': 'Point at a reading, or step through them with the arrow keys.',
  'benchRoom.plot.keyDoubted': 'doubted',
  'benchRoom.plot.keyAside': 'set aside',
  'benchRoom.plot.band.friction': 'the model\u2019s friction',
  'benchRoom.plot.band.fit': '95 % of the fit',
  'benchRoom.ladder': 'What each step adds to J_yy \u2212 J_zz',
  'benchRoom.ladderKey':
    'Filled: measured, with its 95 % interval. Dashed: modelled, in brackets, {unit}. To the right centres, to the left flees.',
  'benchRoom.ladder.agrees': '{name}: {measured}, modelled {model}. They agree.',
  'benchRoom.ladder.differs':
    '{name}: {measured}, modelled {model}. They differ by more than their uncertainty (95 %).',
  'benchRoom.correct': 'Correct',
  'benchRoom.correct.none':
    'Nothing is measured yet that tells both J_yy \u2212 J_zz and J_yz. Take readings at some pitches under Readings.',
  'benchRoom.correct.spread': 'The model has {amount} of J_yy \u2212 J_zz too {way}.',
  'benchRoom.correct.product': 'Of J_yz it has {amount} too {way}.',
  'benchRoom.correct.spreadAgrees': 'J_yy \u2212 J_zz agrees to within {half}.',
  'benchRoom.correct.productAgrees': 'J_yz agrees to within {half}.',
  'benchRoom.correct.points':
    '{rung}: differs from the model by more than its uncertainty. New on it: {parts}.',
  'benchRoom.correct.little': 'little',
  'benchRoom.correct.much': 'much',
  'benchRoom.correct.from': 'From {count} readings, {rung}; 95 % either way.',
  'benchRoom.correct.agrees': 'Model and readings agree: there may be nothing to correct.',
  'benchRoom.correct.differs': 'Model and readings differ by more than their uncertainty (95 %).',
  'benchRoom.correct.notWhole':
    'This is measured on a step of the ladder ({rung}). Measure the head as designed to correct it.',
  'benchRoom.correct.model': 'What may be wrong in the model',
  'benchRoom.correct.mass':
    '{part} alone explains it at {grams}, {percent} % against the model. Weigh it to be sure.',
  'benchRoom.correct.massName': '{part} at {grams} g',
  'benchRoom.correct.noMass':
    'No part\u2019s mass alone explains both numbers at a sensible weight.',
  'benchRoom.correct.nothing':
    'The readings agree with the model within their uncertainty: there is nothing to correct in it.',
  'benchRoom.correct.refused': 'Not offered, with the reason ({count})',
  'benchRoom.correct.absurdMass':
    '{part} would have to weigh {grams} g. Past {limit} g its mass is not what is wrong.',
  'benchRoom.correct.weighed':
    '{part} would have to weigh {grams} g, but it was weighed to {step} g: something else is wrong.',
  'benchRoom.correct.absurdLump':
    'A weight here would have to be {grams} g, more than a quarter of all that turns with the grip ({limit} g): put it farther out.',
  'benchRoom.correct.tooFar':
    '{what} would have to be {value} mm, more than {reach} mm from what it is: no sensible length.',
  'benchRoom.correct.lumpName': 'Correction from the bench',
  'benchRoom.correct.addedName': 'Weight to neutral',
  'benchRoom.correct.lengthName': '{what} {value}',
  'benchRoom.correct.noLength': 'No turned length brings it to neutral within its limits.',
  'benchRoom.correct.try': 'Make it a try-out',
  'benchRoom.correct.lump':
    'A lump of {grams} at y = {y}, z = {z} {unit} stands for whatever is missing.',
  'benchRoom.correct.turn': 'What brings the measured head to neutral',
  'benchRoom.correct.modelFirst':
    'Put the model right first, above: what the gauge should read of the changed head can be said only then.',
  'benchRoom.correct.length':
    '{what}: {value} instead of {from} (made as {made}). J_yz is then {left}.',
  'benchRoom.correct.added': 'Or {grams} more at y = {y}, z = {z} {unit}.',
  'benchRoom.correct.place': 'Where the lump sits, and the weight to add',
  'benchRoom.correct.station': 'Station of lump or weight',
  'benchRoom.correct.radius': 'Its distance from the axis',
  'benchRoom.correct.made.model':
    '\u201c{name}\u201d is on the stage, with the readings so far; what was there is kept as a try-out.',
  'benchRoom.correct.made.head':
    '\u201c{name}\u201d is on the stage. It is another head: the readings so far stay with the try-out that was there. Make the part, and take the confirming run.',
  'benchRoom.correct.notMeasured':
    'The head on the stage has not been measured: the readings so far are of \u201c{name}\u201d. Take its confirming run.',
  'benchRoom.correct.anotherHead': 'another head',
  'benchRoom.correct.confirm': 'The confirming run of the head on the stage',
  'benchRoom.correct.confirmMake':
    'Make or weigh the part that was changed, and fit it. Use a new locking nut and no bent bolt.',
  'benchRoom.correct.confirmRun':
    'Print the safety sheet and the reading sheet. Guard on, eye protection, nobody in the plane of the disc; start slow.',
  'benchRoom.correct.confirmRead': 'Read the run in under Readings, and look at Fit again.',
  'benchRoom.correct.confirmHelp':
    'What the gauge should read with the head as it is on the stage now:',
  'benchRoom.correct.print': 'Print its sheets\u2026',
  'benchRoom.correct.toReadings': 'To Readings',
  'benchRoom.correct.note': 'From the bench',
  'benchRoom.practice': 'Practice',
  'benchRoom.practice.help':
    'A virtual gauge reads the head on the stage, with errors hidden in it: a mass that is off, a part that sits elsewhere, friction, a zero, noise. The same seed gives the same readings. All of it is invented.',
  'benchRoom.practice.seed': 'Seed',
  'benchRoom.practice.make': 'Make readings',
  'benchRoom.practice.take': 'Take them as runs',
  'benchRoom.practice.reveal': 'Reveal what was hidden',
  'benchRoom.practice.hide': 'Hide it again',
  'benchRoom.practice.made':
    'Seed {seed}: {count} runs are made. Take them, fit them, then reveal what was hidden.',
  'benchRoom.practice.other': 'Another seed',
  'benchRoom.practice.truth': 'What seed {seed} hid',
  'benchRoom.practice.run': '{rung}, practice {seed}',
  'benchRoom.practice.taken': '{count} runs are taken: look under Readings and Fit.',
  'benchRoom.practice.error': 'The hidden errors do not fit this head; try another seed.',
  'benchRoom.truth.heavier': '{part} is {percent} % heavier than the design says.',
  'benchRoom.truth.lighter': '{part} is {percent} % lighter than the design says.',
  'benchRoom.truth.seat': '{part} sits {shift} mm along its seat from where it is drawn.',
  'benchRoom.truth.friction':
    'Friction of the bearings is {friction} times the design\u2019s, drag at rest {drag} times.',
  'benchRoom.truth.gauge':
    'The gauge\u2019s zero is {zero}, its noise {noise}; pitch was set to within {pitch}\u00b0.',
  'benchRoom.truth.shared':
    'In all runs alike: force shown off by {gain} %, arm by {lever} % of what is drawn, tachometer by {speed} %, zero of the pitch by {pitch}\u00b0.',
  'benchRoom.truth.head': 'The true head has J_yy \u2212 J_zz of {spread} and J_yz of {product}.',
  'benchRoom.truth.found':
    'The runs that count say J_yy \u2212 J_zz of {spread} and J_yz of {product} (95 %).',
  'benchRoom.returns.tooFew':
    'Too few readings about flat pitch to tell whether force comes back beyond some pitch.',
  'benchRoom.returns.unexplained':
    'Even within {inner} mass and friction do not explain the readings: drag at rest, noise or calibration may not be as told.',
  'benchRoom.returns.none':
    'Mass and friction explain all readings up to {upTo}: no force comes back.',
  'benchRoom.returns.returns':
    'Mass and friction explain the readings within {inner}. Beyond, from {from} on, there is more than mass makes{way}.',
  'benchRoom.returns.restoring': ', and it drives the pitch back',
  'benchRoom.returns.aerodynamic':
    'It goes with the square of the speed and has not the shape of mass: it looks aerodynamic.',
  'benchRoom.returns.notWithSpeedSquared':
    'It does not go with the square of the speed: it does not look aerodynamic, rather like a spring, a stop or friction.',
  'benchRoom.returns.cannotTell':
    'Whether it is aerodynamic cannot be told: that takes the same pitches at two speeds.',
  'benchRoom.returns.and': '{low} and {high}',
} as const;
