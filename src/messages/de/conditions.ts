import type { CONDITIONS as EN } from '../en/conditions';

export const CONDITIONS = {
  'conditions.rotor': 'Rotor',
  'conditions.conditions': 'Drehzahlen, Luft, Nabe',
  'conditions.counted': 'In Moment und Kraft mitgerechnet',
  'conditions.slider': 'Schieber',
  'conditions.servo': 'Umlenkhebel und Servo',
  'conditions.friction': 'Reibung',
  'conditions.air': 'Luft',
  'conditions.bladeBolt': 'Blatt am Bolzen',
  'conditions.clearance': 'Abstand',
  'conditions.tolerance': 'Toleranzen',
  'conditions.none': 'nicht angegeben',
  'control.sliderXMm.none': 'unter dem Kugelkopf',
  'control.sliderYMm.none': 'unter dem Kugelkopf',
  'control.lowestTravelMm.none': 'kein Anschlag',
  'control.highestTravelMm.none': 'kein Anschlag',
  'rotor.highestSpeedRpm.none': 'die Drehzahl',
  'rotor.temperatureC.none': 'Normwert',
  'conditions.drag': 'Reibung im Stand, gemessen',
  'conditions.dragNone': 'Weg  Kraft\n-5  0,4\n0  0,3\n5  0,4',
  'conditions.dragHelp':
    'Je Zeile: Schieberweg ab Flachstellung (mm) und die Kraft, die den Schieber eben bewegt (N), der ganze Kopf, im Stand. Zu den Wegenden hin größer. Leer: keine.',
  'conditions.dragUnread': 'Zeile {line} enthält nicht zwei Zahlen: Weg und Kraft.',
  'conditions.dragComma':
    'Zeile {line}: Das Komma kann ein Dezimalkomma sein oder zwei Zahlen trennen. Weg und Kraft durch ein Leerzeichen trennen.',
  'conditions.dragTravel': 'Zeile {line}: Der Weg muss zwischen {min} und {max} mm liegen.',
  'conditions.dragForce': 'Zeile {line}: Die Kraft muss zwischen 0 und {max} N liegen.',
  'conditions.dragTwice': 'Zeile {line}: {travel} mm steht zweimal da.',
  'conditions.dragMany': 'Höchstens {limit} Messwerte.',
  'conditions.polarNone':
    'Keine Tabelle. Eine Textdatei mit den Spalten alpha (Grad), cl, cd und cm; Zeilen „Re = 160000“ dürfen Blöcke eröffnen.',
  'conditions.polarHeld':
    '{name}: {rows} Zeilen, {from} bis {to} Grad; jenseits davon gilt die ebene Platte.',
  'conditions.polarReynolds': '{held} Reynolds-Zahlen {low} bis {high}.',
  'conditions.polarOpen': 'Tabelle öffnen…',
  'conditions.polarDrop': 'Wieder eingebautes Profil',
  'conditions.polarSave': 'Eingebautes als Tabelle sichern',
  'conditions.polarTooLong': 'Die Tabelle ist länger als {limit} kB.',
  'conditions.polarFailed': 'Die Datei konnte nicht gelesen oder geschrieben werden: {reason}',
  'conditions.polarTaken': 'Jetzt wird mit der Tabelle aus {file} gerechnet.',
  'conditions.polarUnread': '{name}, Zeile {line}: {reason}',
  'polar.tooLong': 'der Text ist zu lang (höchstens {limit} Zeichen).',
  'polar.tooManyRows': 'mehr als {limit} Zeilen.',
  'polar.tooManyBlocks': 'mehr als {limit} Blöcke.',
  'polar.lineTooLong': 'die Zeile ist zu lang (höchstens {limit} Zeichen).',
  'polar.noHeader': 'keine Zeile benennt die Spalten (alpha, cl, cd, cm).',
  'polar.columnMissing': 'es gibt keine Spalte {text}.',
  'polar.columnRepeated': 'die Spalte {text} steht zweimal da.',
  'polar.wrongColumns': '{value} Spalten, wo die Überschrift {limit} hat.',
  'polar.notANumber': '„{text}“ ist keine Zahl.',
  'polar.notFinite': '{text} ist keine endliche Zahl.',
  'polar.angleOutOfRange': 'der Winkel {value} liegt jenseits von {limit} Grad.',
  'polar.coefficientOutOfRange': '{text} ist {value}, jenseits von {limit}: falsche Einheit?',
  'polar.dragNegative': 'der Widerstand ist negativ ({value}).',
  'polar.notAscending': 'der Winkel {value} liegt nicht über dem vorigen ({limit}).',
  'polar.tooFewRows': 'zu wenige Zeilen: {value} von mindestens {limit}.',
  'polar.reynoldsNotPositive': 'die Reynolds-Zahl ist nicht positiv ({value}).',
  'polar.reynoldsMissing': 'Blöcke brauchen Reynolds-Zahlen zur Unterscheidung.',
  'polar.reynoldsRepeated': 'die Reynolds-Zahl {value} steht zweimal da.',
  'polar.notSymmetric':
    'eine Tabelle ab null gilt als symmetrisches Profil, aber {text} ist bei null {value}.',
  'notes.none': '–',
  'notes.density': 'Luftdichte {density} kg/m³.',
  'notes.noArm': 'Es ist kein Steuerhebel gezeichnet.',
  'notes.noReach': 'Die Steuerstange erreicht in Flachstellung den Schieber nicht.',
  'notes.travel': 'Weg {low} bis {high} {unit} für −{used}° bis +{used}°.',
  'notes.ratio': '{ratio} mm Schieberweg je Grad in Flachstellung.',
  'notes.parallel':
    'Keine Steuerstange gezeichnet: Sie gilt als gewichtslos und parallel zur Welle.',
  'notes.end.stop': 'Der Schieber trifft bei {angle} auf seinen Anschlag.',
  'notes.end.overCentre': 'Der Hebel geht bei {angle} über den Totpunkt.',
  'notes.end.unreachable': 'Die Stange reicht nur bis {angle}.',
  'notes.servoNone':
    'Alle drei Hebel angeben, dann ergibt sich das Moment, das der Servo halten muss.',
  'notes.servoTorque':
    'Braucht bis {torque} im genutzten Bereich bei Entwurfsdrehzahl, ohne Reibung.',
  'notes.servoTorqueHeld':
    'Braucht bis {torque} im genutzten Bereich bei Entwurfsdrehzahl, mit Reibung.',
  'notes.servoReach':
    'Seine Hebel schwenken nicht durch den ganzen genutzten Bereich; die Reserve wird nicht beurteilt.',
  'notes.servoUnrated': 'Nennmoment angeben, um die Reserve zu sehen.',
  'notes.servoEnough': 'Genug: Nennmoment {margin}-mal so groß wie nötig.',
  'notes.servoWeak':
    'Zu schwach: Nennmoment {margin}-mal so groß wie nötig, gewünscht {wanted}-mal.',
  'notes.notCounted': 'Nicht mitgerechnet: oben oder über dem Diagramm einschalten.',
  'notes.frictionUnknown':
    'Mitgerechnet, aber nichts gibt sie an: Messwerte eingeben oder Lager am Blatthalter hinzufügen. Bis dahin ist sie null.',
  'notes.friction': 'Hält an der Steuerstange {flat} in Flachstellung und {end} bei {used}°.',
  'notes.beyondTable':
    'Der genutzte Weg geht über die Messwerte hinaus: Dort gelten ihre Endwerte, nicht fortgesetzt.',
  'notes.air.off': 'Nicht mitgerechnet: oben oder über dem Diagramm einschalten.',
  'notes.air.notTurning': 'Der Rotor steht still: keine Luftkräfte.',
  'notes.air.noBlade': 'Mitgerechnet, aber kein sichtbares Teil ist ein Blatt.',
  'notes.air.badTable': 'Nach einer Tabelle gerechnet, aber es gibt keine brauchbare.',
  'notes.thrust':
    'Bei {used}° trägt der Rotor im Schwebeflug {thrust} und nimmt {torque} auf, {power} W.',
  'notes.estimate':
    'Eine Schätzung: ohne Drall, ohne Strahleinschnürung, ohne Kompressibilität, grob jenseits des Strömungsabrisses. Der Massenanteil ist exakt.',
  'notes.airGaps': '{count} Einstellwinkel haben eine Stelle ohne Lösung: Lücken in der Kurve.',
  'notes.camber': 'Das Blatt ist gewölbt, das eingebaute Profil nicht: Tabelle angeben.',
  'notes.noHinge': 'Kein Blatt hängt an einem Bolzen, oder es hat dort keinen stabilen Winkel.',
  'notes.lag.free':
    'Schwenkt um {flat} gegen die Zeichnung in Flachstellung, um {end} bei {used}°. Mitgerechnet.',
  'notes.lag.clamped':
    'Frei würde es um {flat} in Flachstellung schwenken, um {end} bei {used}°. Nicht mitgerechnet.',
  'notes.lagBand': 'Reibung am Bolzen hält es überall von {low} bis {high}.',
  'notes.lagAnywhere': 'Reibung am Bolzen hält es in jedem Winkel.',
  'notes.lagSlips':
    'Diese Klemmkraft hält es also nicht, wie es gezeichnet ist: fester klemmen oder frei schwenken lassen.',
  'notes.lagMoment': 'Der freie Winkel ändert das Moment bei {used}° um {moment}.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
