/** Entries: from the moment to the servo. */
export const HELP_CONTROL = {
  'help.pushRodForce.name': 'Push-rod force',
  'help.pushRodForce.what':
    'The force in the push rod of one grip that holds it at this pitch, the rod\u2019s own share included. It is the moment over the lever, so it is zero exactly where the grip rests or flees.',
  'help.pushRodForce.sign':
    'Tension is positive: the grip pulls on the rod. Compression is negative.',
  'help.sliderForce.name': 'Slider force',
  'help.sliderForce.what':
    'What the control must put on the slider to hold all grips together, along the shaft. e_Z is how steeply the rod stands.',
  'help.sliderForce.sign': 'Positive: the control must push the slider up, toward thrust.',
  'help.servoTorque.name': 'Servo torque',
  'help.servoTorque.what':
    'What the servo must hold through the bell crank, for all grips. Links are taken as long against their arms, so only the sines of the arms count.',
  'help.servoTorque.sign': 'Positive toward the way the servo turns when the slider goes up.',
  'help.pitchArm.name': 'Pitch arm and lever',
  'help.pitchArm.what':
    'The arm carries the ball of the push rod. Its length is the ball\u2019s distance from the feathering axis; what turns force into moment is the lever h, the distance at which the rod\u2019s line passes the axis, which changes with pitch. e_y and e_z are the rod\u2019s direction.',
  'help.pitchArm.sign': 'The lever changes sign where the arm goes over centre.',
  'help.sliderTravel.name': 'Slider travel',
  'help.sliderTravel.what':
    'How far the slider stands from its place at flat pitch, and how far it goes for a turn of the grip. A short travel for much pitch makes a heavy slider.',
  'help.sliderTravel.sign': 'Positive up the shaft, toward thrust.',
  'help.overCentre.name': 'Over centre',
  'help.overCentre.what':
    'The pitch at which rod and arm stand in one line: the lever is zero, no force of the rod turns the grip, and it jams. Shown are the nearest one and how far the pitch in use stays clear of it.',
  'help.overCentre.sign': 'A margin below zero: it goes over centre within the pitch in use.',
  'help.overCentre.formula': 'h(\u03b8_oc) = 0',
} as const;
