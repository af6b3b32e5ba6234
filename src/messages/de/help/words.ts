import type { HELP_WORDS as EN } from '../../en/help/words';

/** Entries: words of the trade and of this page that are no numbers. */
export const HELP_WORDS = {
  'help.featheringAxis.name': 'Verstellachse',
  'help.featheringAxis.what':
    'Die Achse längs des Blattes, um die Blatthalter und Blatt drehen, wenn der Einstellwinkel sich ändert.',
  'help.bladeGrip.name': 'Blatthalter',
  'help.bladeGrip.what':
    'Das Teil, das das Blatt mit dem Blattbolzen hält und in Lagern um die Verstellachse dreht.',
  'help.pushRod.name': 'Steuerstange',
  'help.pushRod.what': 'Die Stange vom Kugelkopf des Schiebers zum Kugelkopf des Steuerhebels.',
  'help.ball.name': 'Kugelkopf',
  'help.ball.what':
    'Das Kugelgelenk an einem Ende der Steuerstange: am Steuerhebel oder am Schieber.',
  'help.slider.name': 'Schieber',
  'help.slider.what':
    'Die Hülse, die längs der Welle verschoben wird und die Steuerstangen aller Blatthalter mitnimmt.',
  'help.bladeBolt.name': 'Blattbolzen',
  'help.bladeBolt.what':
    'Der Bolzen durch die Gabel und die Blattwurzel. Er steht quer zur Profilsehne; an seine Enden gehört darum das Gewicht gegen das Blatt. Einen verbogenen nie wieder verwenden.',
  'help.prevailingNut.name': 'Sicherungsmutter',
  'help.prevailingNut.what':
    'Eine Mutter, die mit einem Kunststoffring oder einem gequetschten Bund auf dem Gewinde klemmt und hält, ohne festgezogen zu sein. Eine gebrauchte hält nicht mehr wie zuvor: eine neue nehmen.',
  'help.chord.name': 'Profilsehne',
  'help.chord.what':
    'Die Linie von der Vorderkante zur Hinterkante eines Blattprofils, und ihre Länge.',
  'help.leadingEdge.name': 'Vorderkante',
  'help.leadingEdge.what': 'Die Kante des Blattes, die zuerst auf die Luft trifft.',
  'help.span.name': 'Blattlängsrichtung',
  'help.span.what': 'Die Richtung längs des Blattes, von der Wurzel zur Spitze, und seine Länge.',
  'help.station.name': 'Abstand von der Drehachse',
  'help.station.what':
    'Ein Ort auf der Verstellachse, angegeben durch seinen Abstand von der Welle.',
  'help.quarterChord.name': 'Viertelpunkt',
  'help.quarterChord.what':
    'Der Punkt ein Viertel der Profilsehne hinter der Vorderkante. Dort greift bei anliegender Strömung der Auftrieb eines dünnen Profils an.',
  'help.collective.name': 'Gemeinsame Verstellung',
  'help.collective.what': 'Der Einstellwinkel, den alle Blätter gemeinsam haben.',
  'help.propellerMoment.name': 'Propellermoment',
  'help.propellerMoment.what':
    'Das Wort der Bücher für das, was die Drehung mit der Streuung der Masse macht: Sie dreht ein Blatt flach. Auch Fliehkraft-Rückstellmoment. Diese Seite nennt das Ganze Verstellmoment.',
  'help.racketEffect.name': 'Tennisschläger-Effekt',
  'help.racketEffect.what':
    'Ein Schläger, der drehend um seine mittlere Achse geworfen wird, überschlägt sich in der Luft. Ein Glied derselben Gleichungen bewegt einen Blatthalter; aber dessen Welle ist angetrieben und seine Achse gehalten: Er dreht nur um eine Achse, hat dort seine Ruhelagen und überschlägt sich nicht.',
  'help.equilibrium.name': 'Gleichgewicht',
  'help.equilibrium.what':
    'Ein Einstellwinkel, bei dem nichts den Blatthalter dreht. Stabil: Weggedrückt kommt er zurück, eine Ruhelage. Instabil: Er läuft davon, eine Kipplage.',
  'help.neutral.name': 'Neutral',
  'help.neutral.what':
    'Die Streuung der Masse ist rund: J_yy gleich J_zz und J_yz null; bei keinem Einstellwinkel dreht die Masse den Blatthalter.',
  'help.leadLag.name': 'Schwenken',
  'help.leadLag.what':
    'Ein Blatt schwenkt auf seinem Bolzen, vor oder hinter seinen Platz (Vor- und Nacheilen).',
  'help.flapwise.name': 'Schlagrichtung',
  'help.flapwise.what': 'Auf und ab längs der Welle, so wie ein Flügel schlägt.',
  'help.thrustBearing.name': 'Axiallager',
  'help.thrustBearing.what': 'Das Lager, das den Zug längs der Verstellachse trägt.',
  'help.counterweight.name': 'Gegengewicht',
  'help.counterweight.what':
    'Gewicht weit außen am Bolzen oder auf einem Stiel quer zur Sehne, das aufhebt, was die Breite des Blattes macht. Lehrbücher nennen es chinesisches Gewicht.',
  'help.pitchDial.name': 'Winkelbild',
  'help.pitchDial.what':
    'Der Kopf von der Blattspitze längs der Verstellachse gesehen, ringsum Ruhe- und Kipplagen, Haltebereiche und Grenzen. Den Zeiger drehen stellt den Einstellwinkel.',
  'help.forceFan.name': 'Kraftfächer',
  'help.forceFan.what':
    'Die Kraft über dem Einstellwinkel, auf der Bühne rings um die Verstellachse gelegt: nach innen treibt sie weg, nach außen zurück in die Ruhelage.',
  'help.neutralise.name': 'Ausgleichen',
  'help.neutralise.what':
    'Nach dem Teil auflösen, das aufhebt: eine Länge, eine Mutter, ein Gewicht, aus den Stangen und Tabellen, die zu haben sind.',
  'help.letGo.name': 'Loslassen',
  'help.letGo.what':
    'Den Blatthalter bei einem Einstellwinkel freigeben und verlangsamt zusehen, was er macht.',
  'help.buildLadder.name': 'Aufbauleiter',
  'help.buildLadder.what':
    'Läufe am Prüfstand mit immer mehr Teilen: nackter Blatthalter, mit Bolzen, mit Blatt. Was jede Stufe hinzufügt, ist der Anteil dieses Teils.',
  'help.tryOut.name': 'Versuch',
  'help.tryOut.what': 'Eine Abwandlung des Kopfes, zum Vergleichen danebengestellt.',
  'help.keepOut.name': 'Sperrzone',
  'help.keepOut.what':
    'Ein Raum, in den kein drehendes Teil kommen darf: das Gehäuse, eine Schutzwand, die Teile der Welle. Sie wiegt nichts.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
