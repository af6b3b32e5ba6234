/** Entries: words of the trade and of this page that are no numbers. */
export const HELP_WORDS = {
  'help.featheringAxis.name': 'Feathering axis',
  'help.featheringAxis.what':
    'The axis along the blade about which grip and blade turn to change pitch.',
  'help.bladeGrip.name': 'Blade grip',
  'help.bladeGrip.what':
    'The part that holds the blade by its bolt and turns on bearings about the feathering axis.',
  'help.pushRod.name': 'Push rod',
  'help.pushRod.what':
    'The rod from the slider\u2019s ball to the ball of the pitch arm; also called pitch link.',
  'help.ball.name': 'Ball',
  'help.ball.what': 'The ball joint at an end of the push rod: on the pitch arm, or on the slider.',
  'help.slider.name': 'Slider',
  'help.slider.what':
    'The sleeve that moves along the shaft and takes the push rods of all grips with it.',
  'help.bladeBolt.name': 'Blade bolt',
  'help.bladeBolt.what':
    'The bolt through the fork and the blade\u2019s root. It stands square to the chord, so its ends are where weight against the blade goes. Never use a bent one again.',
  'help.prevailingNut.name': 'Prevailing-torque nut',
  'help.prevailingNut.what':
    'A nut that grips its thread, with a nylon ring or a pinched collar, and stays without being tight. A used one does not hold as it did: take a new one.',
  'help.chord.name': 'Chord',
  'help.chord.what':
    'The line from leading to trailing edge of a blade\u2019s section, and its length.',
  'help.leadingEdge.name': 'Leading edge',
  'help.leadingEdge.what': 'The edge of the blade that meets the air first.',
  'help.span.name': 'Span',
  'help.span.what': 'The direction along the blade, from root to tip, and its length.',
  'help.station.name': 'Station',
  'help.station.what': 'A place along the feathering axis, told by its distance from the shaft.',
  'help.quarterChord.name': 'Quarter chord',
  'help.quarterChord.what':
    'The point a quarter of the chord behind the leading edge. A thin section that has not stalled lifts there.',
  'help.collective.name': 'Collective',
  'help.collective.what': 'Pitch that all blades take together.',
  'help.propellerMoment.name': 'Propeller moment',
  'help.propellerMoment.what':
    'The books\u2019 word for what the spin does to the spread of mass: it turns a blade flat. Also centrifugal twisting moment. The page calls the whole the feathering moment.',
  'help.racketEffect.name': 'Tennis-racket effect',
  'help.racketEffect.what':
    'A racket thrown spinning about its middle axis turns over in the air. One term of the same equations moves a grip, but the grip\u2019s shaft is driven and its axis is held: it turns about one axis only, has its rest angles there, and does not turn over and over.',
  'help.equilibrium.name': 'Equilibrium',
  'help.equilibrium.what':
    'A pitch at which nothing turns the grip. Stable: pushed away it comes back, a rest angle. Unstable: it runs off, a flee angle.',
  'help.neutral.name': 'Neutral',
  'help.neutral.what':
    'The spread of mass is round: J_yy equals J_zz and J_yz is zero, and the mass turns the grip at no pitch.',
  'help.leadLag.name': 'Lead and lag',
  'help.leadLag.what': 'A blade swinging on its bolt, ahead of or behind its place.',
  'help.flapwise.name': 'Flapwise',
  'help.flapwise.what': 'Up and down along the shaft, the way a wing flaps.',
  'help.thrustBearing.name': 'Thrust bearing',
  'help.thrustBearing.what': 'The bearing that carries the pull along the feathering axis.',
  'help.counterweight.name': 'Counterweight',
  'help.counterweight.what':
    'Weight out along the bolt, or on a stalk square to the chord, that cancels what the blade\u2019s chord does. Textbooks call it Chinese weight.',
  'help.pitchDial.name': 'Pitch dial',
  'help.pitchDial.what':
    'The head seen along the feathering axis from the tip, with rest and flee angles, holding bands and limits round it. Turn its pointer to set the pitch.',
  'help.forceFan.name': 'Force fan',
  'help.forceFan.what':
    'The force against pitch laid round the feathering axis on the stage: inward drives away, outward drives back to rest.',
  'help.neutralise.name': 'Neutralise',
  'help.neutralise.what':
    'To solve for the part that cancels: a length, a nut, a weight, from the bars and tables that can be had.',
  'help.letGo.name': 'Let go',
  'help.letGo.what': 'To release the grip at a pitch and watch what it does, slowed down.',
  'help.buildLadder.name': 'Build ladder',
  'help.buildLadder.what':
    'Bench runs with more and more parts on: bare grip, with bolt, with blade. What each step adds is that part\u2019s share.',
  'help.tryOut.name': 'Try-out',
  'help.tryOut.what': 'A variant of the head kept beside it, to compare.',
  'help.keepOut.name': 'Keep-out',
  'help.keepOut.what':
    'A shape that no turning part may enter: the case, a guard, the shaft\u2019s own parts. It weighs nothing.',
} as const;
