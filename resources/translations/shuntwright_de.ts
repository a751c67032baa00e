<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Bridge</name>
    <message>
        <source>Arm %1</source>
        <translation>Zw. %1</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>&quot;1,5&quot; is taken for one number with a decimal comma, not for two columns.</source>
        <translation>„1,5“ gilt als eine Zahl mit Dezimalkomma, nicht als zwei Spalten.</translation>
    </message>
    <message>
        <source>&apos;{1}&apos; has no number in the lines looked at</source>
        <translation>„{1}“ hat in den angesehenen Zeilen keine Zahl</translation>
    </message>
    <message>
        <source>&apos;{1}&apos; in &apos;{2}&apos; {3}</source>
        <translation>„{1}“ in „{2}“ {3}</translation>
    </message>
    <message>
        <source>&apos;{1}&apos; {2}</source>
        <translation>„{1}“ {2}</translation>
    </message>
    <message>
        <source>0 Ω is no shunt but a short circuit</source>
        <translation>0 Ω ist kein Shunt, sondern ein Kurzschluss</translation>
    </message>
    <message>
        <source>0, of an instrument zeroed with all shunts open</source>
        <translation>0, bei einem mit allen Shunts offen genullten Gerät</translation>
    </message>
    <message>
        <source>0: no zero step was read, readings are taken as shown</source>
        <translation>0: Keine Nullstufe wurde abgelesen, Messwerte gelten wie gezeigt</translation>
    </message>
    <message>
        <source>4 Δv / (F N), F and N as set</source>
        <translation>4 Δv / (F N), F und N wie eingestellt</translation>
    </message>
    <message>
        <source>A and B closed</source>
        <translation>A und B geschlossen</translation>
    </message>
    <message>
        <source>A bad contact</source>
        <translation>Ein schlechter Kontakt</translation>
    </message>
    <message>
        <source>A bad contact comes and goes and may have been worse in between than at either end: no factor and no interpolation is legitimate.</source>
        <translation>Ein schlechter Kontakt kommt und geht und kann dazwischen schlimmer gewesen sein als an beiden Enden: Kein Faktor und keine Interpolation ist zulässig.</translation>
    </message>
    <message>
        <source>A bridge between the neighbouring pins {1} and {2} would {3}</source>
        <translation>Eine Brücke zwischen den benachbarten Stiften {1} und {2} würde {3}</translation>
    </message>
    <message>
        <source>A cause is a suspicion until the measurement that would confirm it has been made. It changes no verdict.</source>
        <translation>Eine Ursache ist ein Verdacht, bis die Messung gemacht ist, die sie bestätigte. Sie ändert kein Urteil.</translation>
    </message>
    <message>
        <source>A check after that day needs it calibrated, or another one.</source>
        <translation>Eine Prüfung nach diesem Tag braucht ihn kalibriert, oder einen anderen.</translation>
    </message>
    <message>
        <source>A check by these shunts passes while every strain of the article is recorded with the wrong sign.</source>
        <translation>Eine Prüfung mit diesen Shunts besteht, während jede Dehnung des Prüflings mit falschem Vorzeichen aufgezeichnet wird.</translation>
    </message>
    <message>
        <source>A draft: not submitted for review.</source>
        <translation>Ein Entwurf: nicht zur Durchsicht vorgelegt.</translation>
    </message>
    <message>
        <source>A full bridge known by its rated output and capacity, such as a load cell.</source>
        <translation>Eine Vollbrücke mit bekanntem Nennkennwert und bekannter Nennlast, etwa eine Wägezelle.</translation>
    </message>
    <message>
        <source>A gauge that is too warm drifts. The range is a handbook&apos;s: its data sheet decides.</source>
        <translation>Ein zu warmer DMS driftet. Der Bereich stammt aus einem Handbuch: Maßgebend ist sein Datenblatt.</translation>
    </message>
    <message>
        <source>A lead broken</source>
        <translation>Eine unterbrochene Leitung</translation>
    </message>
    <message>
        <source>A lead bypassed</source>
        <translation>Eine überbrückte Leitung</translation>
    </message>
    <message>
        <source>A leak follows moisture and temperature and may have been larger in between than at either end: no factor and no interpolation is legitimate, and the greatest error is none beyond what both checks saw.</source>
        <translation>Ein Nebenschluss folgt Feuchte und Temperatur und kann dazwischen größer gewesen sein als an beiden Enden: Kein Faktor und keine Interpolation ist zulässig, und der größte Fehler gilt nur für das, was beide Prüfungen sahen.</translation>
    </message>
    <message>
        <source>A limit of the verdict is below zero.</source>
        <translation>Ein Grenzwert des Urteils ist kleiner als null.</translation>
    </message>
    <message>
        <source>A limit that nothing is held against looks as if it had been kept.</source>
        <translation>Ein Grenzwert, an dem nichts gemessen wird, sieht aus, als wäre er eingehalten.</translation>
    </message>
    <message>
        <source>A line says little of where it has no points.</source>
        <translation>Eine Gerade sagt wenig darüber, wo sie keine Punkte hat.</translation>
    </message>
    <message>
        <source>A mean over whole periods takes hum out, one over broken periods does not.</source>
        <translation>Ein Mittelwert über ganze Perioden nimmt das Brummen heraus, einer über angebrochene nicht.</translation>
    </message>
    <message>
        <source>A negative reading means that a voltage is there: switch the excitation off</source>
        <translation>Eine negative Anzeige heißt, dass Spannung da ist: Speisung abschalten</translation>
    </message>
    <message>
        <source>A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the article.</source>
        <translation>Eine bestandene Shuntprüfung sagt nichts über DMS-Klebung, k-Faktor, Ausrichtung oder die Festigkeit des Prüflings.</translation>
    </message>
    <message>
        <source>A precision resistor that is warm has another value.</source>
        <translation>Ein warmer Präzisionswiderstand hat einen anderen Wert.</translation>
    </message>
    <message>
        <source>A reading is no finite number.</source>
        <translation>Ein Messwert ist keine endliche Zahl.</translation>
    </message>
    <message>
        <source>A sense lead opened</source>
        <translation>Eine Fühlerleitung hat sich gelöst</translation>
    </message>
    <message>
        <source>A shorter mean hides drift and slow noise; at least a second a level is common practice.</source>
        <translation>Ein kürzerer Mittelwert verdeckt Drift und langsames Rauschen; mindestens eine Sekunde je Plateau ist allgemeine Praxis.</translation>
    </message>
    <message>
        <source>A shunt lowers what it lies over: over arm 1 or 3 the output falls, over arm 2 or 4 it rises, as long as signal and excitation are the right way round (Micro-Measurements TN-514).</source>
        <translation>Ein Shunt verringert, worüber er liegt: Über Zweig 1 oder 3 fällt das Signal, über Zweig 2 oder 4 steigt es, solange Signal und Speisung richtig herum liegen (Micro-Measurements TN-514).</translation>
    </message>
    <message>
        <source>A shunt of {1} is to make the output fall. At which of these places does it do so?</source>
        <translation>Ein Shunt von {1} soll das Signal fallen lassen. An welchem dieser Orte tut er das?</translation>
    </message>
    <message>
        <source>A shunt of {1} is to make the output rise. At which of these places does it do so?</source>
        <translation>Ein Shunt von {1} soll das Signal steigen lassen. An welchem dieser Orte tut er das?</translation>
    </message>
    <message>
        <source>A shunt of {1} lies right across one arm. When it closes, the instrument shows {2}. Which arm is it?</source>
        <translation>Ein Shunt von {1} liegt direkt über einem Zweig. Schließt er, zeigt das Gerät {2}. Welcher Zweig ist es?</translation>
    </message>
    <message>
        <source>A shunt or an ohmmeter moves the reading of a live channel. Take control and safety channels out of service first.</source>
        <translation>Ein Shunt oder ein Ohmmeter bewegt den Messwert eines laufenden Kanals. Regel- und Sicherheitskanäle zuerst außer Betrieb nehmen.</translation>
    </message>
    <message>
        <source>A switched shunt moves the reading of a live channel. Take control and safety channels out of service first.</source>
        <translation>Ein geschalteter Shunt bewegt den Messwert eines laufenden Kanals. Regel- und Sicherheitskanäle zuerst außer Betrieb nehmen.</translation>
    </message>
    <message>
        <source>A zero that moved with the first side is not told from an error of the second.</source>
        <translation>Ein Nullpunkt, der sich mit der ersten Seite verschob, lässt sich nicht von einem Fehler der zweiten unterscheiden.</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>About this report</source>
        <translation>Über diesen Bericht</translation>
    </message>
    <message>
        <source>Accepted by {1} on {2}.</source>
        <translation>Freigegeben von {1} am {2}.</translation>
    </message>
    <message>
        <source>Accepted by {1} on {2}; changed since: not valid any more.</source>
        <translation>Freigegeben von {1} am {2}; seither geändert: nicht mehr gültig.</translation>
    </message>
    <message>
        <source>Acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>Act</source>
        <translation>Handlung</translation>
    </message>
    <message>
        <source>Add a channel first</source>
        <translation>Zuerst einen Kanal anlegen</translation>
    </message>
    <message>
        <source>Add a point at another x</source>
        <translation>Einen Punkt bei einem anderen x hinzufügen</translation>
    </message>
    <message>
        <source>Add a shunt first</source>
        <translation>Zuerst einen Shunt anlegen</translation>
    </message>
    <message>
        <source>Add falling steps</source>
        <translation>Fallende Stufen anlegen</translation>
    </message>
    <message>
        <source>Add it in a text editor, or open a backup</source>
        <translation>In einem Texteditor hinzufügen oder eine Sicherung öffnen</translation>
    </message>
    <message>
        <source>Add points</source>
        <translation>Punkte hinzufügen</translation>
    </message>
    <message>
        <source>Add points at other x or lower the degree</source>
        <translation>Punkte bei anderen x hinzufügen oder den Grad senken</translation>
    </message>
    <message>
        <source>Add points over the whole range</source>
        <translation>Punkte über den ganzen Bereich hinzufügen</translation>
    </message>
    <message>
        <source>Add readings, or state the uncertainty as a tolerance</source>
        <translation>Messwerte hinzufügen oder die Unsicherheit als Toleranz angeben</translation>
    </message>
    <message>
        <source>Add resistors or a series to the stock, or widen the range of values</source>
        <translation>Widerstände oder eine Reihe in den Bestand aufnehmen oder den Wertebereich erweitern</translation>
    </message>
    <message>
        <source>Add steps that close a shunt, or mend the statement that is refused</source>
        <translation>Stufen anlegen, die einen Shunt schließen, oder die abgelehnte Angabe berichtigen</translation>
    </message>
    <message>
        <source>Add the values as “resistance”</source>
        <translation>Die Werte als „resistance“ hinzufügen</translation>
    </message>
    <message>
        <source>Add what stands on the labels as “id”</source>
        <translation>Was auf den Schildern steht, als „id“ hinzufügen</translation>
    </message>
    <message>
        <source>All leads gained resistance</source>
        <translation>Alle Leitungen gewannen Widerstand</translation>
    </message>
    <message>
        <source>All leads lost resistance</source>
        <translation>Alle Leitungen verloren Widerstand</translation>
    </message>
    <message>
        <source>All levels are {1}.</source>
        <translation>Alle Stufenwerte sind {1}.</translation>
    </message>
    <message>
        <source>All readings are {1}.</source>
        <translation>Alle Messwerte sind {1}.</translation>
    </message>
    <message>
        <source>All readings turn their sign</source>
        <translation>Alle Messwerte kehren ihr Vorzeichen um</translation>
    </message>
    <message>
        <source>All steps are within their limits all the same.</source>
        <translation>Trotzdem liegen alle Stufen innerhalb ihrer Grenzwerte.</translation>
    </message>
    <message>
        <source>All steps lie beyond the ±{1}.</source>
        <translation>Alle Stufen liegen jenseits der ±{1}.</translation>
    </message>
    <message>
        <source>All steps together, if nothing moved</source>
        <translation>Alle Stufen zusammen, wenn sich nichts bewegt hat</translation>
    </message>
    <message>
        <source>All steps together, if nothing moved: {1}; from 0.05 on no single step counts as changed.</source>
        <translation>Alle Stufen zusammen, wenn sich nichts bewegt hat: {1}; ab 0,05 gilt keine einzelne Stufe als geändert.</translation>
    </message>
    <message>
        <source>All {1} checks lie within the control limits.</source>
        <translation>Alle {1} Prüfungen liegen innerhalb der Eingriffsgrenzen.</translation>
    </message>
    <message numerus="yes">
        <source>All {n} steps have a level, in the planned order.</source>
        <extracomment>{n} is a count. In English for one: The step has a level, in the planned order.</extracomment>
        <translation>
            <numerusform>Die Stufe hat ein Plateau, in der geplanten Folge.</numerusform>
            <numerusform>Alle {n} Stufen haben ein Plateau, in der geplanten Folge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All {n} steps have a level.</source>
        <extracomment>{n} is a count. In English for one: The step has a level.</extracomment>
        <translation>
            <numerusform>Die Stufe hat ein Plateau.</numerusform>
            <numerusform>Alle {n} Stufen haben ein Plateau.</numerusform>
        </translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>An amplifier beyond its range shows its end, whatever the bridge does.</source>
        <translation>Ein Verstärker jenseits seines Bereichs zeigt dessen Ende, was immer die Brücke tut.</translation>
    </message>
    <message>
        <source>An arm changed</source>
        <translation>Ein geänderter Zweig</translation>
    </message>
    <message>
        <source>An input that hangs in the air shows anything.</source>
        <translation>Ein Eingang, der in der Luft hängt, zeigt irgendetwas.</translation>
    </message>
    <message>
        <source>Apply a small load of known direction, or press by hand so that gauge 1 is stretched: the reading must {1}.</source>
        <translation>Eine kleine Last bekannter Richtung aufbringen, oder von Hand drücken, sodass DMS 1 gedehnt wird: Der Messwert muss {1}.</translation>
    </message>
    <message>
        <source>Apply a small load of known direction: the reading must {1} with a load that counts as positive.</source>
        <translation>Eine kleine Last bekannter Richtung aufbringen: Der Messwert muss bei einer positiv gezählten Last {1}.</translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation>Genähert</translation>
    </message>
    <message>
        <source>Approximation</source>
        <translation>Näherung</translation>
    </message>
    <message>
        <source>Arm change as strain</source>
        <translation>Zweigänderung als Dehnung</translation>
    </message>
    <message>
        <source>Arm {1}</source>
        <translation>Zweig {1}</translation>
    </message>
    <message>
        <source>Arm {1} has {2}: no arm of a bridge has less than 1 Ω or more than 10 MΩ.</source>
        <translation>Zweig {1} hat {2}: Kein Zweig einer Brücke hat weniger als 1 Ω oder mehr als 10 MΩ.</translation>
    </message>
    <message>
        <source>Arm {1} turns {2} mW into heat, {3} kW/m², {4} the usual {5} to {6} kW/m² (heat sink {7}; {8}). {9} would reach the upper end. From a handbook: check your gauge&apos;s data sheet.</source>
        <translation>Zweig {1} setzt {2} mW in Wärme um, {3} kW/m², {4} den üblichen {5} bis {6} kW/m² (Wärmeableitung {7}; {8}). {9} erreichten das obere Ende. Aus einem Handbuch: das Datenblatt des DMS heranziehen.</translation>
    </message>
    <message>
        <source>Arm {1}, active</source>
        <translation>Zweig {1}, aktiv</translation>
    </message>
    <message>
        <source>Arm {1}, completion</source>
        <translation>Zweig {1}, Ergänzung</translation>
    </message>
    <message>
        <source>Arms</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>Arms 1 and 2 along and across on one face, arms 4 and 3 on the other.</source>
        <translation>Zweige 1 und 2 längs und quer auf einer Seite, Zweige 4 und 3 auf der anderen.</translation>
    </message>
    <message>
        <source>Arms 1 and 2 along the strain on opposite faces, arms 3 and 4 across it; exactly linear.</source>
        <translation>Zweige 1 und 2 längs der Dehnung auf gegenüberliegenden Seiten, Zweige 3 und 4 quer dazu; genau linear.</translation>
    </message>
    <message>
        <source>Arms 1 and 3 along the axial strain, arms 2 and 4 across it.</source>
        <translation>Zweige 1 und 3 längs der Axialdehnung, Zweige 2 und 4 quer dazu.</translation>
    </message>
    <message>
        <source>Article</source>
        <translation>Prüfling</translation>
    </message>
    <message>
        <source>As much would come of: {1}.</source>
        <translation>Ebenso viel käme von: {1}.</translation>
    </message>
    <message>
        <source>As planned, {1}:</source>
        <translation>Wie geplant, {1}:</translation>
    </message>
    <message>
        <source>Ask for at most {1}</source>
        <translation>Höchstens {1} verlangen</translation>
    </message>
    <message>
        <source>Ask for fewer</source>
        <translation>Weniger verlangen</translation>
    </message>
    <message>
        <source>Ask for more</source>
        <translation>Mehr verlangen</translation>
    </message>
    <message>
        <source>At best: {1}</source>
        <translation>Bestenfalls: {1}</translation>
    </message>
    <message>
        <source>At step</source>
        <translation>Bei Stufe</translation>
    </message>
    <message>
        <source>At the instrument lead {1} is</source>
        <translation>Am Gerät liegt Leitung {1}</translation>
    </message>
    <message numerus="yes">
        <source>At the time of {1} {n} other channels of the recording are at {2}: if all were switched together, this one has the opposite polarity, or its levels are given to the wrong steps.</source>
        <extracomment>{n} is a count. In English for one: At the time of {1} another channel of the recording is at {2}: if they were switched together, this one has the opposite polarity, or its levels are given to the wrong steps.</extracomment>
        <translation>
            <numerusform>Zur Zeit von {1} ist ein anderer Kanal der Aufzeichnung bei {2}: Wurden beide zusammen geschaltet, so hat dieser die umgekehrte Polarität, oder seine Niveaus sind den falschen Stufen zugeordnet.</numerusform>
            <numerusform>Zur Zeit von {1} sind {n} andere Kanäle der Aufzeichnung bei {2}: Wurden alle zusammen geschaltet, so hat dieser die umgekehrte Polarität, oder seine Niveaus sind den falschen Stufen zugeordnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>At {1}: {2}</source>
        <translation>Bei {1}: {2}</translation>
    </message>
    <message>
        <source>BIC behind best</source>
        <translation>BIC hinter der besten</translation>
    </message>
    <message>
        <source>Bad contact in lead {1}</source>
        <translation>Schlechter Kontakt in Leitung {1}</translation>
    </message>
    <message>
        <source>Bad contact of {1} in lead {2}</source>
        <translation>Schlechter Kontakt von {1} in Leitung {2}</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Vor dem Beginn</translation>
    </message>
    <message>
        <source>Begin with the greatest step</source>
        <translation>Mit der größten Schrittweite beginnen</translation>
    </message>
    <message>
        <source>Bench sheet</source>
        <translation>Werkbankblatt</translation>
    </message>
    <message>
        <source>Bessel of order {1}, {2}</source>
        <translation>Bessel der Ordnung {1}, {2}</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Zwischen</translation>
    </message>
    <message>
        <source>Beyond limits</source>
        <translation>Außerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>Both agree: nothing that the formula leaves out acts here.</source>
        <translation>Beide stimmen überein: Nichts, was die Formel weglässt, wirkt hier.</translation>
    </message>
    <message>
        <source>Both checks fail: see each of them.</source>
        <translation>Beide Prüfungen sind nicht bestanden: siehe jede für sich.</translation>
    </message>
    <message>
        <source>Both checks were judged by the same set-up.</source>
        <translation>Beide Prüfungen wurden nach derselben Einrichtung beurteilt.</translation>
    </message>
    <message>
        <source>Bridge</source>
        <translation>Brücke</translation>
    </message>
    <message>
        <source>Bridge factor set wrong</source>
        <translation>Brückenfaktor falsch eingestellt</translation>
    </message>
    <message>
        <source>Bridge factor setting was changed</source>
        <translation>Eingestellter Brückenfaktor wurde geändert</translation>
    </message>
    <message>
        <source>Bridge factor, as set</source>
        <translation>Brückenfaktor, wie eingestellt</translation>
    </message>
    <message>
        <source>Bridge of channel {1} with its leads and shunts, all shunts open</source>
        <translation>Brücke des Kanals {1} mit Leitungen und Shunts, alle Shunts offen</translation>
    </message>
    <message>
        <source>Bridge of channel {1} with its shunts</source>
        <translation>Brücke des Kanals {1} mit ihren Shunts</translation>
    </message>
    <message>
        <source>Bring them nearer to zero, or give all inputs of a group the same positive coefficient</source>
        <translation>Sie näher an null bringen oder allen Eingangsgrößen einer Gruppe denselben positiven Koeffizienten geben</translation>
    </message>
    <message>
        <source>Butterworth of order {1}, {2}</source>
        <translation>Butterworth der Ordnung {1}, {2}</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>Cannot be compared: no step was read in both checks.</source>
        <translation>Nicht vergleichbar: In beiden Prüfungen wurde keine gemeinsame Stufe abgelesen.</translation>
    </message>
    <message>
        <source>Cannot be compared: the bridges differ, {1} and {2}.</source>
        <translation>Nicht vergleichbar: Die Brücken unterscheiden sich, {1} und {2}.</translation>
    </message>
    <message>
        <source>Cannot be compared: the channel has no steps.</source>
        <translation>Nicht vergleichbar: Der Kanal hat keine Stufen.</translation>
    </message>
    <message>
        <source>Cannot be compared: the margin of a change is no number of 0 or more.</source>
        <translation>Nicht vergleichbar: Die Toleranz einer Änderung ist keine Zahl ab 0.</translation>
    </message>
    <message>
        <source>Cannot be compared: the readings are in different units, {1} and {2}.</source>
        <translation>Nicht vergleichbar: Die Messwerte haben verschiedene Einheiten, {1} und {2}.</translation>
    </message>
    <message>
        <source>Cannot be predicted: {1}</source>
        <translation>Nicht vorherzusagen: {1}</translation>
    </message>
    <message>
        <source>Cannot tell: it moved by {1}, but all steps together are as if nothing had changed.</source>
        <translation>Nicht entscheidbar: Sie änderte sich um {1}, aber alle Stufen zusammen sind, als hätte sich nichts geändert.</translation>
    </message>
    <message>
        <source>Cannot tell: its uncertainty is not known.</source>
        <translation>Nicht entscheidbar: Ihre Unsicherheit ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Cannot tell: not everything can be compared. What can is unchanged: {1}.</source>
        <translation>Nicht entscheidbar: Nicht alles lässt sich vergleichen. Was sich vergleichen lässt, ist unverändert: {1}.</translation>
    </message>
    <message>
        <source>Cannot tell: step {4} differs by {2}, which neither is within {3} nor differs from nothing.</source>
        <translation>Nicht entscheidbar: Stufe {4} unterscheidet sich um {2}, was weder innerhalb von {3} liegt noch von null verschieden ist.</translation>
    </message>
    <message>
        <source>Cannot tell: steps {4} neither are within their margins nor differ from nothing, most of all step {1}: {2} beside {3}.</source>
        <translation>Nicht entscheidbar: Die Stufen {4} liegen weder innerhalb ihrer Toleranzen noch sind sie von null verschieden, am meisten Stufe {1}: {2} neben {3}.</translation>
    </message>
    <message>
        <source>Cannot tell: the gain differs by {1}, which neither is within {2} nor differs from nothing.</source>
        <translation>Nicht entscheidbar: Die Verstärkung unterscheidet sich um {1}, was weder innerhalb von {2} liegt noch von null verschieden ist.</translation>
    </message>
    <message>
        <source>Cannot tell: the uncertainty of every step is too large for {1}.</source>
        <translation>Nicht entscheidbar: Die Unsicherheit jeder Stufe ist zu groß für die Regel „{1}“.</translation>
    </message>
    <message>
        <source>Cannot tell: the uncertainty of {1} is not known, and {2} needs it; all steps pass.</source>
        <translation>Nicht entscheidbar: Die Unsicherheit von {1} ist nicht bekannt, und die Regel „{2}“ braucht sie; alle Stufen bestehen.</translation>
    </message>
    <message>
        <source>Cannot tell: the uncertainty of {1} is too large for {2}; all steps pass.</source>
        <translation>Nicht entscheidbar: Die Unsicherheit von {1} ist zu groß für die Regel „{2}“; alle Stufen bestehen.</translation>
    </message>
    <message>
        <source>Cannot tell: the uncertainty of {1} of {2} steps and of {3} is too large for {4}; the others pass.</source>
        <translation>Nicht entscheidbar: Die Unsicherheit von {1} von {2} Stufen und von {3} ist zu groß für die Regel „{4}“; die übrigen bestehen.</translation>
    </message>
    <message>
        <source>Cannot tell: the uncertainty of {1} of {2} steps is too large for {3}; the others pass.</source>
        <translation>Nicht entscheidbar: Die Unsicherheit von {1} von {2} Stufen ist zu groß für die Regel „{3}“; die übrigen bestehen.</translation>
    </message>
    <message>
        <source>Cannot tell: the zero differs by {1}, which neither is within {2} nor differs from nothing.</source>
        <translation>Nicht entscheidbar: Der Nullpunkt unterscheidet sich um {1}, was weder innerhalb von {2} liegt noch von null verschieden ist.</translation>
    </message>
    <message>
        <source>Cannot tell: too few steps can be compared for a gain.</source>
        <translation>Nicht entscheidbar: Für eine Verstärkung lassen sich zu wenige Stufen vergleichen.</translation>
    </message>
    <message>
        <source>Cannot tell: {1} neither is within {2} nor differs from nothing.</source>
        <translation>Nicht entscheidbar: {1} liegt weder innerhalb von {2} noch ist es von null verschieden.</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>Caution.</source>
        <translation>Vorsicht.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Change between checks, share of expected</source>
        <translation>Änderung zwischen Prüfungen, Anteil des erwarteten Werts</translation>
    </message>
    <message>
        <source>Change from zero in {1} and {2}</source>
        <translation>Änderung ab null in {1} und {2}</translation>
    </message>
    <message>
        <source>Change it to constant voltage first</source>
        <translation>Zuerst auf Konstantspannung umstellen</translation>
    </message>
    <message>
        <source>Change of gain</source>
        <translation>Änderung der Verstärkung</translation>
    </message>
    <message>
        <source>Change of gain, share</source>
        <translation>Änderung der Verstärkung, Anteil</translation>
    </message>
    <message>
        <source>Change of output</source>
        <translation>Änderung des Signals</translation>
    </message>
    <message>
        <source>Change of output, {1}</source>
        <translation>Änderung des Signals, {1}</translation>
    </message>
    <message>
        <source>Change of zero</source>
        <translation>Änderung des Nullpunkts</translation>
    </message>
    <message>
        <source>Change of zero between checks, share of greatest</source>
        <translation>Nullpunktänderung zwischen Prüfungen, Anteil des größten</translation>
    </message>
    <message>
        <source>Changed by {1} (gain), where {2} would count as unchanged.</source>
        <translation>Geändert um {1} (Verstärkung), wo {2} als unverändert gälte.</translation>
    </message>
    <message>
        <source>Changed by {1} from zero where {2} is expected: opposite polarity. Look for swapped signal wires or a shunt on the neighbouring arm</source>
        <translation>Änderung um {1} ab null, wo {2} erwartet ist: umgekehrte Polarität. Nach vertauschten Signalleitungen oder einem Shunt am Nachbarzweig suchen</translation>
    </message>
    <message>
        <source>Changed by {1} from zero, {2} from expected, beyond the limit of {3}</source>
        <translation>Änderung um {1} ab null, {2} vom erwarteten Wert, außerhalb des Grenzwerts von {3}</translation>
    </message>
    <message>
        <source>Changed by {1} from zero, {2} from expected, within the limit of {3}</source>
        <translation>Änderung um {1} ab null, {2} vom erwarteten Wert, innerhalb des Grenzwerts von {3}</translation>
    </message>
    <message>
        <source>Changed: step {1} moved by {2}, where {3} would count as unchanged.</source>
        <translation>Geändert: Stufe {1} bewegte sich um {2}, wo {3} als unverändert gälte.</translation>
    </message>
    <message>
        <source>Changed: steps {4} moved, most of all step {1} by {2}, where {3} would count as unchanged.</source>
        <translation>Geändert: Die Stufen {4} bewegten sich, am meisten Stufe {1} um {2}, wo {3} als unverändert gälte.</translation>
    </message>
    <message>
        <source>Changed: the zero moved by {1}, where {2} would count as unchanged. Find out why.</source>
        <translation>Geändert: Der Nullpunkt bewegte sich um {1}, wo {2} als unverändert gälte. Den Grund herausfinden.</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Channel {1}</source>
        <translation>Kanal {1}</translation>
    </message>
    <message>
        <source>Channel {1} is not connected as its template says. {2}</source>
        <translation>Kanal {1} ist nicht angeschlossen, wie seine Vorlage es sagt. {2}</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>Channels left out: {1}.</source>
        <translation>Ausgelassene Kanäle: {1}.</translation>
    </message>
    <message>
        <source>Channels: {1}</source>
        <translation>Kanäle: {1}</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Check arms and shunts, or set no linearisation</source>
        <translation>Zweige und Shunts prüfen oder keine Linearisierung einstellen</translation>
    </message>
    <message>
        <source>Check both values and their units</source>
        <translation>Beide Werte und ihre Einheiten prüfen</translation>
    </message>
    <message>
        <source>Check its gauge factor, bridge factor, excitation and scaling</source>
        <translation>k-Faktor, Brückenfaktor, Speisung und Skalierung des Geräts prüfen</translation>
    </message>
    <message>
        <source>Check its spelling, or remove it</source>
        <translation>Schreibweise prüfen oder entfernen</translation>
    </message>
    <message>
        <source>Check number and unit</source>
        <translation>Zahl und Einheit prüfen</translation>
    </message>
    <message>
        <source>Check number and unit; a number without unit is in Ω</source>
        <translation>Zahl und Einheit prüfen; eine Zahl ohne Einheit gilt in Ω</translation>
    </message>
    <message>
        <source>Check of pins and jumpers</source>
        <translation>Prüfung der Stifte und Steckbrücken</translation>
    </message>
    <message>
        <source>Check resistance, gauge factor and rated output</source>
        <translation>Widerstand, k-Faktor und Nennkennwert prüfen</translation>
    </message>
    <message>
        <source>Check that the arms with gauges take part in the bridge</source>
        <translation>Prüfen, dass die Zweige mit DMS an der Brücke teilnehmen</translation>
    </message>
    <message>
        <source>Check the layout</source>
        <translation>Aufbau prüfen</translation>
    </message>
    <message>
        <source>Check the leads of the excitation</source>
        <translation>Die Leitungen der Speisung prüfen</translation>
    </message>
    <message>
        <source>Check the name and the access rights</source>
        <translation>Name und Zugriffsrechte prüfen</translation>
    </message>
    <message>
        <source>Check the number and its decimal mark; up to {1} is taken</source>
        <translation>Zahl und Dezimalzeichen prüfen; bis {1} wird angenommen</translation>
    </message>
    <message>
        <source>Check the sense leads</source>
        <translation>Die Fühlerleitungen prüfen</translation>
    </message>
    <message>
        <source>Check the steps and their units</source>
        <translation>Die Schrittweiten und ihre Einheiten prüfen</translation>
    </message>
    <message>
        <source>Check their unit</source>
        <translation>Ihre Einheit prüfen</translation>
    </message>
    <message>
        <source>Check their units</source>
        <translation>Ihre Einheiten prüfen</translation>
    </message>
    <message>
        <source>Check whether the export ended early, or choose another file</source>
        <translation>Prüfen, ob der Export vorzeitig endete, oder eine andere Datei wählen</translation>
    </message>
    <message>
        <source>Check {1}</source>
        <translation>Prüfung {1}</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Chi-square, {1}</source>
        <translation>Chi-Quadrat, {1}</translation>
    </message>
    <message>
        <source>Choose a degree from 0 to {1}</source>
        <translation>Einen Grad von 0 bis {1} wählen</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Eine Datei wählen</translation>
    </message>
    <message>
        <source>Choose a file with the format {1}</source>
        <translation>Eine Datei im Format {1} wählen</translation>
    </message>
    <message>
        <source>Choose a line above it, or {1}=none</source>
        <translation>Eine Zeile darüber wählen oder {1}=none</translation>
    </message>
    <message>
        <source>Choose a line above it, {1}=none, or another first-row</source>
        <translation>Eine Zeile darüber wählen, {1}=none oder ein anderes first-row</translation>
    </message>
    <message>
        <source>Choose a line that holds values</source>
        <translation>Eine Zeile wählen, die Werte enthält</translation>
    </message>
    <message>
        <source>Choose a list of channels</source>
        <translation>Eine Kanalliste wählen</translation>
    </message>
    <message>
        <source>Choose a list of resistors</source>
        <translation>Eine Liste von Widerständen wählen</translation>
    </message>
    <message>
        <source>Choose a pin of the list, or add this one to it</source>
        <translation>Einen Stift der Liste wählen oder diesen hinzufügen</translation>
    </message>
    <message>
        <source>Choose a pin with a place of the bridge or an end of a resistor</source>
        <translation>Einen Stift mit einem Ort der Brücke oder einem Ende eines Widerstands wählen</translation>
    </message>
    <message>
        <source>Choose a smaller level</source>
        <translation>Einen kleineren Stufenwert wählen</translation>
    </message>
    <message>
        <source>Choose a smaller level or another place</source>
        <translation>Einen kleineren Stufenwert oder einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>Choose a step of the sequence</source>
        <translation>Eine Stufe des Ablaufs wählen</translation>
    </message>
    <message>
        <source>Choose a text file with columns of numbers</source>
        <translation>Eine Textdatei mit Spalten von Zahlen wählen</translation>
    </message>
    <message>
        <source>Choose another arm, or the opposite sign</source>
        <translation>Einen anderen Zweig oder das umgekehrte Vorzeichen wählen</translation>
    </message>
    <message>
        <source>Choose another column or record for longer</source>
        <translation>Eine andere Spalte wählen oder länger aufzeichnen</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Eine andere Datei wählen</translation>
    </message>
    <message>
        <source>Choose another folder</source>
        <translation>Einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>Choose another lead as the second one</source>
        <translation>Eine andere Leitung als zweite wählen</translation>
    </message>
    <message>
        <source>Choose another name</source>
        <translation>Einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>Choose another node</source>
        <translation>Einen anderen Knoten wählen</translation>
    </message>
    <message>
        <source>Choose another place, such as arm {1} end to end</source>
        <translation>Einen anderen Ort wählen, etwa Zweig {1} von Ende zu Ende</translation>
    </message>
    <message>
        <source>Choose another separator or decimal=point</source>
        <translation>Ein anderes Trennzeichen oder decimal=point wählen</translation>
    </message>
    <message>
        <source>Choose another unit</source>
        <translation>Eine andere Einheit wählen</translation>
    </message>
    <message>
        <source>Choose below how to read it</source>
        <translation>Unten wählen, wie sie zu lesen ist</translation>
    </message>
    <message>
        <source>Choose cells of columns that can be edited</source>
        <translation>Zellen von Spalten wählen, die sich bearbeiten lassen</translation>
    </message>
    <message>
        <source>Choose first-row=1 or more</source>
        <translation>first-row=1 oder mehr wählen</translation>
    </message>
    <message>
        <source>Choose from 1 to {1}</source>
        <translation>Zwischen 1 und {1} wählen</translation>
    </message>
    <message>
        <source>Choose leads of two points</source>
        <translation>Leitungen zweier Punkte wählen</translation>
    </message>
    <message>
        <source>Choose names=none or units=none, or another line</source>
        <translation>names=none oder units=none oder eine andere Zeile wählen</translation>
    </message>
    <message>
        <source>Choose one from the list of pins, or add it there first</source>
        <translation>Einen aus der Liste der Stifte wählen oder ihn dort zuerst hinzufügen</translation>
    </message>
    <message>
        <source>Choose one of the two</source>
        <translation>Eines von beiden wählen</translation>
    </message>
    <message>
        <source>Choose one of the {1} columns</source>
        <translation>Eine der {1} Spalten wählen</translation>
    </message>
    <message>
        <source>Choose one of them</source>
        <translation>Eines davon wählen</translation>
    </message>
    <message>
        <source>Choose one of: {1}</source>
        <translation>Wählbar: {1}</translation>
    </message>
    <message>
        <source>Choose other units</source>
        <translation>Andere Einheiten wählen</translation>
    </message>
    <message>
        <source>Choose seconds or another unit of time</source>
        <translation>Sekunden oder eine andere Zeiteinheit wählen</translation>
    </message>
    <message>
        <source>Choose smaller levels</source>
        <translation>Kleinere Stufenwerte wählen</translation>
    </message>
    <message>
        <source>Choose the channel that it is meant for and type it again</source>
        <translation>Den Kanal wählen, für den es bestimmt ist, und es noch einmal eingeben</translation>
    </message>
    <message>
        <source>Choose the column of the time, or give the sample rate</source>
        <translation>Die Zeitspalte wählen oder die Abtastrate angeben</translation>
    </message>
    <message>
        <source>Choose the column that holds the time</source>
        <translation>Die Spalte mit der Zeit wählen</translation>
    </message>
    <message>
        <source>Choose the time column or give a sample rate; or name the column &apos;Time [s]&apos;, or write &apos;Sample rate: 50 Hz&apos; above the names</source>
        <translation>Die Zeitspalte wählen oder eine Abtastrate angeben; oder die Spalte „Time [s]“ nennen oder „Sample rate: 50 Hz“ über die Namen schreiben</translation>
    </message>
    <message>
        <source>Choose the two nodes of the place, or leave these levels out</source>
        <translation>Die beiden Knoten des Orts wählen oder diese Stufenwerte weglassen</translation>
    </message>
    <message>
        <source>Choose time=1 to time={1}</source>
        <translation>time=1 bis time={1} wählen</translation>
    </message>
    <message>
        <source>Choose two nodes with a gauge or a completion resistor between them</source>
        <translation>Zwei Knoten wählen, zwischen denen ein DMS oder ein Ergänzungswiderstand liegt</translation>
    </message>
    <message>
        <source>Choose two others</source>
        <translation>Zwei andere wählen</translation>
    </message>
    <message>
        <source>Choose unit.1 to unit.{1}</source>
        <translation>unit.1 bis unit.{1} wählen</translation>
    </message>
    <message>
        <source>Close it, or double it where it belongs to the text</source>
        <translation>Schließen, oder verdoppeln, wo es zum Text gehört</translation>
    </message>
    <message>
        <source>Close its checks first</source>
        <translation>Zuerst seine Prüfungen abschließen</translation>
    </message>
    <message>
        <source>Close its checks, or hand over unit and limits together</source>
        <translation>Die Prüfungen abschließen oder Einheit und Grenzwerte zusammen übergeben</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Closing {1} changes nothing.</source>
        <translation>Das Schließen von {1} ändert nichts.</translation>
    </message>
    <message>
        <source>Columns count from 1, such as unit.2=kN</source>
        <translation>Spalten zählen ab 1, wie unit.2=kN</translation>
    </message>
    <message>
        <source>Combined standard uncertainty, {1}</source>
        <translation>Kombinierte Standardunsicherheit, {1}</translation>
    </message>
    <message>
        <source>Conformity</source>
        <translation>Konformität</translation>
    </message>
    <message>
        <source>Conformity at least</source>
        <translation>Konformität mindestens</translation>
    </message>
    <message>
        <source>Conformity, %</source>
        <translation>Konformität, %</translation>
    </message>
    <message>
        <source>Connect it, or close the lead or arm that is open</source>
        <translation>Verbinden, oder die offene Leitung oder den offenen Zweig schließen</translation>
    </message>
    <message>
        <source>Connect the excitation as the template says</source>
        <translation>Speisung anschließen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Connect the gauges as the template says</source>
        <translation>DMS anschließen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Connect the leads as the template says</source>
        <translation>Leitungen anschließen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Connect the signal wires as the template says</source>
        <translation>Signalleitungen anschließen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Connect the wires as the template says</source>
        <translation>Leitungen anschließen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Connection</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>Constant current</source>
        <translation>Konstantstrom</translation>
    </message>
    <message>
        <source>Contact in lead {1} went bad</source>
        <translation>Kontakt in Leitung {1} wurde schlecht</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Contribution</source>
        <translation>Beitrag</translation>
    </message>
    <message>
        <source>Control limits</source>
        <translation>Eingriffsgrenzen</translation>
    </message>
    <message>
        <source>Control limits take three checks with a gain or a zero reading.</source>
        <translation>Eingriffsgrenzen brauchen drei Prüfungen mit Verstärkung oder Nullwert.</translation>
    </message>
    <message>
        <source>Control limits take three checks with a line; there are {1}.</source>
        <translation>Eingriffsgrenzen brauchen drei Prüfungen mit einer Geraden; es gibt {1}.</translation>
    </message>
    <message>
        <source>Correct all labels</source>
        <translation>Alle Bezeichnungen berichtigen</translation>
    </message>
    <message>
        <source>Correct it or take it out</source>
        <translation>Ihn berichtigen oder weglassen</translation>
    </message>
    <message>
        <source>Correct it, or press Escape in the field to have the last value back</source>
        <translation>Berichtigen, oder im Feld Escape drücken, um den letzten Wert zurückzubekommen</translation>
    </message>
    <message>
        <source>Correct nothing before the measurement has confirmed the cause; the responsible person decides, and the report states it.</source>
        <translation>Nichts korrigieren, bevor die Messung die Ursache bestätigt hat; die verantwortliche Person entscheidet, und der Bericht nennt es.</translation>
    </message>
    <message>
        <source>Correct one of the two values</source>
        <translation>Einen der beiden Werte berichtigen</translation>
    </message>
    <message>
        <source>Correct the covariance or the uncertainties</source>
        <translation>Die Kovarianz oder die Unsicherheiten berichtigen</translation>
    </message>
    <message>
        <source>Correct the matrix; covariances may not be larger than the variances admit</source>
        <translation>Die Matrix berichtigen; Kovarianzen dürfen nicht größer sein, als die Varianzen es zulassen</translation>
    </message>
    <message>
        <source>Correct the uncertainty or leave the point out</source>
        <translation>Die Unsicherheit berichtigen oder den Punkt weglassen</translation>
    </message>
    <message>
        <source>Correct the value</source>
        <translation>Den Wert berichtigen</translation>
    </message>
    <message>
        <source>Correct the value or leave the point out</source>
        <translation>Den Wert berichtigen oder den Punkt weglassen</translation>
    </message>
    <message>
        <source>Correct the {1}</source>
        <translation>{1} berichtigen</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>Correlation between any two inputs of a group: {1}.</source>
        <translation>Korrelation zwischen je zwei Eingangsgrößen einer Gruppe: {1}.</translation>
    </message>
    <message>
        <source>Correlation of the steps ({1})</source>
        <translation>Korrelation der Stufen ({1})</translation>
    </message>
    <message>
        <source>Covariance of the steps ({1}), ({2})²</source>
        <translation>Kovarianz der Stufen ({1}), ({2})²</translation>
    </message>
    <message>
        <source>Data taken in between: {1}</source>
        <translation>Zwischenzeitlich aufgenommene Daten: {1}</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Decision by {1}</source>
        <translation>Entscheidung nach der Regel „{1}“</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>Decision rule: {1}.</source>
        <translation>Entscheidungsregel: {1}.</translation>
    </message>
    <message>
        <source>Decisions stay with the responsible licensed or authorised person.</source>
        <translation>Entscheidungen bleiben bei der verantwortlichen befugten Person.</translation>
    </message>
    <message>
        <source>Degrees of freedom are not used where correlated inputs contribute: k is that of a normal distribution.</source>
        <translation>Freiheitsgrade werden nicht verwendet, wo korrelierte Eingangsgrößen beitragen: k ist das einer Normalverteilung.</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Deviation, share of expected</source>
        <translation>Abweichung, Anteil des erwarteten Werts</translation>
    </message>
    <message>
        <source>Diagnosis: {1}</source>
        <translation>Diagnose: {1}</translation>
    </message>
    <message>
        <source>Difference, {1}</source>
        <translation>Differenz, {1}</translation>
    </message>
    <message>
        <source>Disconnect the instrument where the sheet says that it is unplugged: then only are its readings right, and the ohmmeter&apos;s own voltage cannot harm the input.</source>
        <translation>Das Gerät abklemmen, wo das Blatt es abgesteckt nennt: Nur dann stimmen die Messwerte, und die Spannung des Ohmmeters kann dem Eingang nicht schaden.</translation>
    </message>
    <message>
        <source>Do not correct test data by it.</source>
        <translation>Messdaten nicht danach korrigieren.</translation>
    </message>
    <message>
        <source>Done by, date</source>
        <translation>Durchgeführt von, Datum</translation>
    </message>
    <message>
        <source>Double the quotation marks that belong to the text</source>
        <translation>Anführungszeichen verdoppeln, die zum Text gehören</translation>
    </message>
    <message>
        <source>E_n</source>
        <translation>E_n</translation>
    </message>
    <message>
        <source>E_n = {1} with U = {2}</source>
        <translation>E_n = {1} mit U = {2}</translation>
    </message>
    <message>
        <source>E_n of the change of gain</source>
        <translation>E_n der Änderung der Verstärkung</translation>
    </message>
    <message>
        <source>Each shunt closes alone. Which gives the larger reading, sign aside?</source>
        <translation>Jeder Shunt schließt allein. Welcher ergibt den größeren Messwert, ohne Vorzeichen?</translation>
    </message>
    <message>
        <source>Earlier checks are left out.</source>
        <translation>Frühere Prüfungen sind weggelassen.</translation>
    </message>
    <message>
        <source>Effects in the circuit</source>
        <translation>Effekte in der Schaltung</translation>
    </message>
    <message>
        <source>Either the shunt lies on the wrong arm, the signal or excitation wires are reversed, or the label is wrong.</source>
        <translation>Entweder liegt der Shunt am falschen Zweig, Signal- oder Speiseleitungen sind vertauscht, oder die Bezeichnung ist falsch.</translation>
    </message>
    <message>
        <source>Either {1} and should not be, the shunt lies on the wrong arm, or the label is wrong.</source>
        <translation>Entweder {1}, obwohl es nicht so sein sollte, oder der Shunt liegt am falschen Zweig, oder die Bezeichnung ist falsch.</translation>
    </message>
    <message>
        <source>Empty some of the others</source>
        <translation>Einige der anderen leeren</translation>
    </message>
    <message>
        <source>Empty the cell</source>
        <translation>Die Zelle leeren</translation>
    </message>
    <message>
        <source>Empty this cell or decades</source>
        <translation>Diese Zelle oder decades leeren</translation>
    </message>
    <message>
        <source>En number</source>
        <translation>E_n-Zahl</translation>
    </message>
    <message>
        <source>Enter 0 or more</source>
        <translation>0 oder mehr eingeben</translation>
    </message>
    <message>
        <source>Enter 0 when its value is exact</source>
        <translation>0 eintragen, wenn der Wert genau ist</translation>
    </message>
    <message>
        <source>Enter 0 Ω or more</source>
        <translation>0 Ω oder mehr eingeben</translation>
    </message>
    <message>
        <source>Enter 0.333 for a third of the limit</source>
        <translation>0,333 für ein Drittel des Grenzwerts eintragen</translation>
    </message>
    <message>
        <source>Enter 0.5 for the middle</source>
        <translation>0,5 für die Mitte eintragen</translation>
    </message>
    <message>
        <source>Enter 0.95, or the probability that your procedure asks for</source>
        <translation>0,95 eintragen, oder die Wahrscheinlichkeit, die das eigene Verfahren verlangt</translation>
    </message>
    <message>
        <source>Enter 0.95, say</source>
        <translation>Etwa 0,95 eintragen</translation>
    </message>
    <message>
        <source>Enter 0.9545 for k = 2, or the probability that your procedure asks for</source>
        <translation>0,9545 für k = 2 eintragen, oder die Wahrscheinlichkeit, die das eigene Verfahren verlangt</translation>
    </message>
    <message>
        <source>Enter 1 for a guard band of U, or 0 for none</source>
        <translation>1 für einen Schutzabstand von U eintragen, 0 für keinen</translation>
    </message>
    <message>
        <source>Enter 1 for inputs that move together, 0 for independent ones</source>
        <translation>1 für gemeinsam abweichende Eingangsgrößen eingeben, 0 für unabhängige</translation>
    </message>
    <message>
        <source>Enter 1 to {1}</source>
        <translation>1 bis {1} eintragen</translation>
    </message>
    <message>
        <source>Enter 1 to {1}; most dials have 10</source>
        <translation>1 bis {1} eintragen; die meisten Drehschalter haben 10</translation>
    </message>
    <message>
        <source>Enter U as the certificate states it, such as 0.6 Ω</source>
        <translation>U laut Kalibrierschein eintragen, etwa 0,6 Ω</translation>
    </message>
    <message>
        <source>Enter a coefficient from {1} to 1</source>
        <translation>Einen Koeffizienten von {1} bis 1 eintragen</translation>
    </message>
    <message>
        <source>Enter a frequency such as 100 Hz or 2.5 kHz</source>
        <translation>Eine Frequenz eintragen, etwa 100 Hz oder 2,5 kHz</translation>
    </message>
    <message>
        <source>Enter a greater level</source>
        <translation>Einen größeren Stufenwert eintragen</translation>
    </message>
    <message>
        <source>Enter a length such as 12.5 m or 40 ft</source>
        <translation>Eine Länge eintragen, etwa 12,5 m oder 40 ft</translation>
    </message>
    <message>
        <source>Enter a level above or below zero</source>
        <translation>Einen Stufenwert über oder unter null eintragen</translation>
    </message>
    <message>
        <source>Enter a limit, or count misses as shares of the level</source>
        <translation>Einen Grenzwert eintragen oder Abstände als Anteile des Stufenwerts zählen</translation>
    </message>
    <message>
        <source>Enter a name such as R1 on arm 2</source>
        <translation>Einen Namen wie R1 an Zweig 2 eingeben</translation>
    </message>
    <message>
        <source>Enter a number</source>
        <translation>Eine Zahl eintragen</translation>
    </message>
    <message>
        <source>Enter a number above zero</source>
        <translation>Eine Zahl über null eintragen</translation>
    </message>
    <message>
        <source>Enter a number such as 12.5</source>
        <translation>Eine Zahl eintragen, etwa 12,5</translation>
    </message>
    <message>
        <source>Enter a number such as 2.05</source>
        <translation>Eine Zahl eintragen, etwa 2,05</translation>
    </message>
    <message>
        <source>Enter a number such as {1}</source>
        <translation>Eine Zahl wie {1} eingeben</translation>
    </message>
    <message>
        <source>Enter a power such as 250 mW or 0.5 W</source>
        <translation>Eine Leistung eintragen, etwa 250 mW oder 0,5 W</translation>
    </message>
    <message>
        <source>Enter a resistance in ohm</source>
        <translation>Einen Widerstand in Ohm eintragen</translation>
    </message>
    <message>
        <source>Enter a resistance such as 349.8 or 174.65k, or open when the ohmmeter shows no reading</source>
        <translation>Einen Widerstand wie 349,8 oder 174.65k eingeben, oder open, wenn das Ohmmeter nichts anzeigt</translation>
    </message>
    <message>
        <source>Enter a resistance such as 350 Ω, 174.65k or 59k9</source>
        <translation>Einen Widerstand eintragen, etwa 350 Ω, 174,65k oder 59k9</translation>
    </message>
    <message>
        <source>Enter a section such as 0.14 mm² or AWG 26 (0 to 40)</source>
        <translation>Einen Querschnitt eintragen, etwa 0,14 mm² oder AWG 26 (0 bis 40)</translation>
    </message>
    <message>
        <source>Enter a share from 0 to 100 %</source>
        <translation>Einen Anteil von 0 bis 100 % eintragen</translation>
    </message>
    <message>
        <source>Enter a share such as 0.5 % or 100 ppm</source>
        <translation>Einen Anteil wie 0,5 % oder 100 ppm eingeben</translation>
    </message>
    <message>
        <source>Enter a strain such as -1000 µm/m or 0.1 %</source>
        <translation>Eine Dehnung eintragen, etwa -1000 µm/m oder 0,1 %</translation>
    </message>
    <message>
        <source>Enter a temperature in degrees Celsius such as 20 °C</source>
        <translation>Eine Temperatur in Grad Celsius eintragen, etwa 20 °C</translation>
    </message>
    <message>
        <source>Enter a terminal such as P+, an end of an arm such as arm 1 begin, an end of a shunt&apos;s resistor such as R1 end 1, or unused</source>
        <translation>Einen Anschluss wie P+, ein Zweigende wie arm 1 begin, ein Ende des Widerstands eines Shunts wie R1 end 1 oder unused eingeben</translation>
    </message>
    <message>
        <source>Enter a time such as 2 s, 500 ms or 1 min 30 s</source>
        <translation>Eine Zeit wie 2 s, 500 ms oder 1 min 30 s eingeben</translation>
    </message>
    <message>
        <source>Enter a voltage such as 5 V or 500 mV</source>
        <translation>Eine Spannung eintragen, etwa 5 V oder 500 mV</translation>
    </message>
    <message>
        <source>Enter a whole number such as 12</source>
        <translation>Eine ganze Zahl wie 12 eingeben</translation>
    </message>
    <message>
        <source>Enter about 0.3 for metals</source>
        <translation>Für Metalle etwa 0,3 eintragen</translation>
    </message>
    <message>
        <source>Enter an output such as 1.5 mV/V or 500 µV/V</source>
        <translation>Ein Signal eintragen, etwa 1,5 mV/V oder 500 µV/V</translation>
    </message>
    <message>
        <source>Enter another one</source>
        <translation>Einen anderen eingeben</translation>
    </message>
    <message>
        <source>Enter at least one</source>
        <translation>Mindestens einen eintragen</translation>
    </message>
    <message>
        <source>Enter at least one second</source>
        <translation>Mindestens eine Sekunde eingeben</translation>
    </message>
    <message>
        <source>Enter how many kelvin the leads are above the temperature that they are stated for</source>
        <translation>Eintragen, um wie viele Kelvin die Leitungen wärmer sind als die Temperatur, für die sie angegeben sind</translation>
    </message>
    <message>
        <source>Enter it as in {1}</source>
        <translation>Schreiben wie in {1}</translation>
    </message>
    <message>
        <source>Enter it in the set-up</source>
        <translation>In der Einrichtung eintragen</translation>
    </message>
    <message>
        <source>Enter it in °C, such as 21</source>
        <translation>In °C eingeben, wie 21</translation>
    </message>
    <message>
        <source>Enter it such as 45 %</source>
        <translation>Wie 45 % eingeben</translation>
    </message>
    <message>
        <source>Enter its letter or number</source>
        <translation>Seinen Buchstaben oder seine Nummer eingeben</translation>
    </message>
    <message>
        <source>Enter its resistance</source>
        <translation>Seinen Widerstand eintragen</translation>
    </message>
    <message>
        <source>Enter its resistance, such as 59k9 or 174.65 kΩ</source>
        <translation>Seinen Widerstand eingeben, wie 59k9 oder 174,65 kΩ</translation>
    </message>
    <message>
        <source>Enter its tolerance</source>
        <translation>Seine Toleranz eintragen</translation>
    </message>
    <message>
        <source>Enter its uncertainty with the unit {1}</source>
        <translation>Seine Unsicherheit mit der Einheit {1} eingeben</translation>
    </message>
    <message>
        <source>Enter k as the certificate states it, such as 2</source>
        <translation>k laut Kalibrierschein eintragen, etwa 2</translation>
    </message>
    <message>
        <source>Enter one</source>
        <translation>Einen eingeben</translation>
    </message>
    <message>
        <source>Enter shares such as 20; 40; 60; 80; 100</source>
        <translation>Anteile wie 20; 40; 60; 80; 100 eingeben</translation>
    </message>
    <message>
        <source>Enter such as 59k9</source>
        <translation>Wie 59k9 eingeben</translation>
    </message>
    <message>
        <source>Enter the half width, such as 0.01 %</source>
        <translation>Die halbe Breite eintragen, etwa 0,01 %</translation>
    </message>
    <message>
        <source>Enter the k that the certificate states, usually 2</source>
        <translation>Das k laut Kalibrierschein eintragen, meist 2</translation>
    </message>
    <message>
        <source>Enter the lead&apos;s resistance, or its uncertainty as a share</source>
        <translation>Den Leitungswiderstand oder seine Unsicherheit als Anteil eintragen</translation>
    </message>
    <message>
        <source>Enter the length of one wire, one way</source>
        <translation>Die Länge einer Ader eintragen, einfach</translation>
    </message>
    <message>
        <source>Enter the lower value as its begin</source>
        <translation>Den kleineren Wert als Anfang eintragen</translation>
    </message>
    <message>
        <source>Enter the resistance of one wire</source>
        <translation>Den Widerstand einer Ader eintragen</translation>
    </message>
    <message>
        <source>Enter the value from the data sheet or a measurement</source>
        <translation>Den Wert aus Datenblatt oder Messung eintragen</translation>
    </message>
    <message>
        <source>Enter units per mV/V</source>
        <translation>Einheiten je mV/V eintragen</translation>
    </message>
    <message>
        <source>Enter value and U together, such as 59.906k ± 0.6, or paste both</source>
        <translation>Wert und U zusammen eingeben, wie 59.906k ± 0.6, oder beide einfügen</translation>
    </message>
    <message>
        <source>Enter what is measured with all dials at 0, such as 0.05 Ω</source>
        <translation>Eintragen, was mit allen Drehschaltern auf 0 gemessen wird, etwa 0,05 Ω</translation>
    </message>
    <message>
        <source>Enter what is to be changed</source>
        <translation>Eintragen, was zu ändern ist</translation>
    </message>
    <message>
        <source>Enter what it may turn into heat, such as 250 mW</source>
        <translation>Eintragen, was er in Wärme umsetzen darf, etwa 250 mW</translation>
    </message>
    <message>
        <source>Enter what stands on its label, such as AF-0104</source>
        <translation>Eintragen, was auf seinem Etikett steht, etwa AF-0104</translation>
    </message>
    <message>
        <source>Enter what the instrument shows</source>
        <translation>Eingeben, was das Gerät anzeigt</translation>
    </message>
    <message>
        <source>Enter what the ohmmeter showed</source>
        <translation>Eintragen, was das Ohmmeter zeigte</translation>
    </message>
    <message>
        <source>Enter your name</source>
        <translation>Den eigenen Namen eintragen</translation>
    </message>
    <message>
        <source>Enter zero (joined) or a positive resistance</source>
        <translation>Null (verbunden) oder einen positiven Widerstand eintragen</translation>
    </message>
    <message>
        <source>Enter zero where there is no lead</source>
        <translation>Null eintragen, wo keine Leitung ist</translation>
    </message>
    <message>
        <source>Every label that says a polarity says the other one, in {1}: {2} {3}.</source>
        <translation>Jede Bezeichnung, die eine Polarität nennt, nennt die andere, in {1}: {2} {3}.</translation>
    </message>
    <message>
        <source>Everything, for the archive and for whoever signs.</source>
        <translation>Alles, für das Archiv und für den, der unterschreibt.</translation>
    </message>
    <message>
        <source>Exact</source>
        <translation>Genau</translation>
    </message>
    <message>
        <source>Exact and approximate</source>
        <translation>Genau und genähert</translation>
    </message>
    <message>
        <source>Excitation</source>
        <translation>Speisung</translation>
    </message>
    <message>
        <source>Excitation put right</source>
        <translation>Speisung berichtigt</translation>
    </message>
    <message>
        <source>Excitation reversed</source>
        <translation>Speisung vertauscht</translation>
    </message>
    <message>
        <source>Excitation sensed</source>
        <translation>Speisung gefühlt</translation>
    </message>
    <message>
        <source>Excitation sensed at the instrument</source>
        <translation>Speisung am Gerät gefühlt</translation>
    </message>
    <message>
        <source>Expanded uncertainty of the deviation, {1}</source>
        <translation>Erweiterte Unsicherheit der Abweichung, {1}</translation>
    </message>
    <message>
        <source>Expanded uncertainty, {1}, {2}, {3}</source>
        <translation>Erweiterte Unsicherheit, {1}, {2}, {3}</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Expected reading</source>
        <translation>Erwarteter Messwert</translation>
    </message>
    <message>
        <source>Expected reading against the {1}</source>
        <translation>Erwarteter Messwert gegen die {1}</translation>
    </message>
    <message>
        <source>Expected reading against the {1}, of opposite sign</source>
        <translation>Erwarteter Messwert gegen die {1}, mit umgekehrtem Vorzeichen</translation>
    </message>
    <message>
        <source>Expected reading, each output corrected for the bridge&apos;s nonlinearity, then zeroed</source>
        <translation>Erwarteter Messwert, jedes Signal um die Nichtlinearität der Brücke korrigiert, dann genullt</translation>
    </message>
    <message>
        <source>Expected reading, zeroed, then corrected for the bridge&apos;s nonlinearity</source>
        <translation>Erwarteter Messwert, genullt, dann um die Nichtlinearität der Brücke korrigiert</translation>
    </message>
    <message>
        <source>Expected, {1}</source>
        <translation>Erwartet, {1}</translation>
    </message>
    <message>
        <source>Explains</source>
        <translation>Erklärt</translation>
    </message>
    <message>
        <source>Explains all readings</source>
        <translation>Erklärt alle Messwerte</translation>
    </message>
    <message>
        <source>Explains, %</source>
        <translation>Erklärt, %</translation>
    </message>
    <message>
        <source>Export a shorter recording or fewer channels</source>
        <translation>Eine kürzere Aufzeichnung oder weniger Kanäle exportieren</translation>
    </message>
    <message>
        <source>Export at least one channel</source>
        <translation>Mindestens einen Kanal exportieren</translation>
    </message>
    <message>
        <source>Export fewer channels</source>
        <translation>Weniger Kanäle exportieren</translation>
    </message>
    <message>
        <source>Export fewer channels at a time</source>
        <translation>Weniger Kanäle auf einmal exportieren</translation>
    </message>
    <message>
        <source>Export it again</source>
        <translation>Noch einmal exportieren</translation>
    </message>
    <message>
        <source>Export it as PCM of 16, 24 or 32 bits</source>
        <translation>Als PCM mit 16, 24 oder 32 Bit exportieren</translation>
    </message>
    <message>
        <source>Export it as PCM or float</source>
        <translation>Als PCM oder Gleitkomma exportieren</translation>
    </message>
    <message>
        <source>Export it as text or WAV</source>
        <translation>Als Text oder WAV exportieren</translation>
    </message>
    <message>
        <source>Export it with decimal points, or with semicolons or tabs between the cells</source>
        <translation>Mit Dezimalpunkten exportieren, oder mit Semikolons oder Tabulatoren zwischen den Zellen</translation>
    </message>
    <message>
        <source>Export the recording again</source>
        <translation>Die Aufzeichnung noch einmal exportieren</translation>
    </message>
    <message>
        <source>Export the recording as text (UTF-8)</source>
        <translation>Die Aufzeichnung als Text (UTF-8) exportieren</translation>
    </message>
    <message>
        <source>Export time histories as data set 58</source>
        <translation>Zeitverläufe als Datensatz 58 exportieren</translation>
    </message>
    <message>
        <source>Fail: {1}.</source>
        <translation>Nicht bestanden: {1}.</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Figures compared</source>
        <translation>Verglichene Kennwerte</translation>
    </message>
    <message>
        <source>Figures of each check</source>
        <translation>Kennwerte jeder Prüfung</translation>
    </message>
    <message>
        <source>Figures of merit of {1}</source>
        <translation>Kennwerte von {1}</translation>
    </message>
    <message>
        <source>Figures of the line and zero</source>
        <translation>Kennwerte der Geraden und des Nullpunkts</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Find it, or put it back there</source>
        <translation>Suchen oder dorthin zurücklegen</translation>
    </message>
    <message>
        <source>Find the recording</source>
        <translation>Die Aufzeichnung suchen</translation>
    </message>
    <message>
        <source>Fingerprint</source>
        <translation>Fingerabdruck</translation>
    </message>
    <message>
        <source>Fingerprint in full</source>
        <translation>Vollständiger Fingerabdruck</translation>
    </message>
    <message>
        <source>Fit the line to points that rise or fall</source>
        <translation>Die Gerade an steigende oder fallende Punkte anpassen</translation>
    </message>
    <message>
        <source>Fitted line</source>
        <translation>Angepasste Gerade</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>Four gauges of equal strain, arms 2 and 4 opposite in sign.</source>
        <translation>Vier DMS gleicher Dehnung, Zweige 2 und 4 mit umgekehrtem Vorzeichen.</translation>
    </message>
    <message>
        <source>Four-arm transducer</source>
        <translation>Vierarmiger Aufnehmer</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From wire</source>
        <translation>Leitung von</translation>
    </message>
    <message>
        <source>From {1} checks the limits are known to about {2} % only; 20 make them reliable.</source>
        <translation>Aus {1} Prüfungen sind die Grenzen nur auf etwa {2} % bekannt; mit 20 werden sie verlässlich.</translation>
    </message>
    <message>
        <source>Full bridge, Poisson, bending, along and across apart</source>
        <translation>Vollbrücke, Querdehnung, Biegung, längs und quer getrennt</translation>
    </message>
    <message>
        <source>Full bridge, Poisson, bending, along and across paired</source>
        <translation>Vollbrücke, Querdehnung, Biegung, längs und quer gepaart</translation>
    </message>
    <message>
        <source>Full bridge, Poisson, column</source>
        <translation>Vollbrücke, Querdehnung, Stab</translation>
    </message>
    <message>
        <source>Full bridge, bending</source>
        <translation>Vollbrücke, Biegung</translation>
    </message>
    <message>
        <source>Full bridge, torsion</source>
        <translation>Vollbrücke, Torsion</translation>
    </message>
    <message>
        <source>Full record</source>
        <translation>Vollständiges Protokoll</translation>
    </message>
    <message>
        <source>Gain</source>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>Gain and steps are unchanged: gain {1}.</source>
        <translation>Verstärkung und Stufen sind unverändert: Verstärkung {1}.</translation>
    </message>
    <message>
        <source>Gain and zero of every check</source>
        <translation>Verstärkung und Nullpunkt jeder Prüfung</translation>
    </message>
    <message>
        <source>Gain of the chain</source>
        <translation>Verstärkung der Messkette</translation>
    </message>
    <message>
        <source>Gain, excitation or scale fell</source>
        <translation>Verstärkung, Speisung oder Skalierung fiel</translation>
    </message>
    <message>
        <source>Gain, excitation or scale rose</source>
        <translation>Verstärkung, Speisung oder Skalierung stieg</translation>
    </message>
    <message>
        <source>Gain, excitation or scale setting wrong</source>
        <translation>Verstärkung, Speisung oder Skalierung falsch eingestellt</translation>
    </message>
    <message>
        <source>Gauge along the strain in arm 1, gauge across it in arm 2.</source>
        <translation>DMS längs der Dehnung in Zweig 1, DMS quer dazu in Zweig 2.</translation>
    </message>
    <message>
        <source>Gauge factor at {1}</source>
        <translation>k-Faktor bei {1}</translation>
    </message>
    <message>
        <source>Gauge factor of the gauge</source>
        <translation>k-Faktor des DMS</translation>
    </message>
    <message>
        <source>Gauge factor, as set</source>
        <translation>k-Faktor, wie eingestellt</translation>
    </message>
    <message>
        <source>Gauge resistance, nominal</source>
        <translation>DMS-Widerstand, Nennwert</translation>
    </message>
    <message>
        <source>Gauges at plus and minus 45 degrees; the shear strain is twice the strain of gauge 1.</source>
        <translation>DMS unter plus und minus 45 Grad; die Schubverzerrung ist das Doppelte der Dehnung von DMS 1.</translation>
    </message>
    <message>
        <source>Gauges of equal and opposite strain in the adjacent arms 1 and 2.</source>
        <translation>DMS gleicher und entgegengesetzter Dehnung in den benachbarten Zweigen 1 und 2.</translation>
    </message>
    <message>
        <source>Gauges of equal strain in the opposite arms 1 and 3; bending cancels.</source>
        <translation>DMS gleicher Dehnung in den gegenüberliegenden Zweigen 1 und 3; Biegung hebt sich auf.</translation>
    </message>
    <message>
        <source>Gauges put right</source>
        <translation>DMS berichtigt</translation>
    </message>
    <message>
        <source>Gauges reversed</source>
        <translation>DMS vertauscht</translation>
    </message>
    <message>
        <source>Gauges warmer by</source>
        <translation>DMS wärmer um</translation>
    </message>
    <message>
        <source>Gauges warmer or colder</source>
        <translation>DMS wärmer oder kälter</translation>
    </message>
    <message>
        <source>Gauges {1}</source>
        <translation>DMS {1}</translation>
    </message>
    <message>
        <source>Give a level to a step</source>
        <translation>Einer Stufe ein Plateau geben</translation>
    </message>
    <message>
        <source>Give a row and a column for every value</source>
        <translation>Für jeden Wert eine Zeile und eine Spalte angeben</translation>
    </message>
    <message>
        <source>Give another rate</source>
        <translation>Eine andere Rate angeben</translation>
    </message>
    <message>
        <source>Give at least one reading</source>
        <translation>Mindestens einen Messwert angeben</translation>
    </message>
    <message>
        <source>Give both, or the resistance of a lead</source>
        <translation>Beides angeben, oder den Widerstand einer Leitung</translation>
    </message>
    <message>
        <source>Give each function a pin of its own</source>
        <translation>Jeder Funktion einen eigenen Stift geben</translation>
    </message>
    <message>
        <source>Give each its own id</source>
        <translation>Jedem eine eigene Kennung geben</translation>
    </message>
    <message>
        <source>Give each its own id, or take one line out</source>
        <translation>Jedem eine eigene Kennung geben oder eine Zeile herausnehmen</translation>
    </message>
    <message>
        <source>Give each its own id, or take one out</source>
        <translation>Jedem eine eigene Kennung geben oder einen herausnehmen</translation>
    </message>
    <message>
        <source>Give each reading a variance of its own, or leave one of the readings out</source>
        <translation>Jedem Messwert eine eigene Varianz geben oder einen der Messwerte weglassen</translation>
    </message>
    <message>
        <source>Give each {1} a name of its own</source>
        <translation>Jedem Eintrag ({1}) einen eigenen Namen geben</translation>
    </message>
    <message>
        <source>Give every point a covariance, or none</source>
        <translation>Jedem Punkt eine Kovarianz geben oder keinem</translation>
    </message>
    <message>
        <source>Give every point an uncertainty</source>
        <translation>Jedem Punkt eine Unsicherheit geben</translation>
    </message>
    <message>
        <source>Give every point an x and a y</source>
        <translation>Jedem Punkt ein x und ein y geben</translation>
    </message>
    <message>
        <source>Give every value its time</source>
        <translation>Jedem Wert seine Zeit geben</translation>
    </message>
    <message>
        <source>Give it a begin_s and an end_s</source>
        <translation>begin_s und end_s angeben</translation>
    </message>
    <message>
        <source>Give it a group first, the same as the inputs it moves with</source>
        <translation>Zuerst eine Gruppe geben, dieselbe wie den Eingangsgrößen, mit denen sie sich bewegt</translation>
    </message>
    <message>
        <source>Give it a pin in the list</source>
        <translation>Ihm einen Stift in der Liste geben</translation>
    </message>
    <message>
        <source>Give it a positive variance</source>
        <translation>Eine positive Varianz angeben</translation>
    </message>
    <message>
        <source>Give it a variance, or leave its row and column zero</source>
        <translation>Eine Varianz angeben oder Zeile und Spalte auf null lassen</translation>
    </message>
    <message>
        <source>Give it another value</source>
        <translation>Einen anderen Wert angeben</translation>
    </message>
    <message>
        <source>Give it once</source>
        <translation>Einmal angeben</translation>
    </message>
    <message>
        <source>Give it one</source>
        <translation>Einen geben</translation>
    </message>
    <message>
        <source>Give one of the resistances between them a value above zero</source>
        <translation>Einem der Widerstände dazwischen einen Wert über null geben</translation>
    </message>
    <message>
        <source>Give one point per x, in rising order</source>
        <translation>Je x einen Punkt angeben, in steigender Folge</translation>
    </message>
    <message>
        <source>Give samples per second, such as rate=50</source>
        <translation>Abtastwerte je Sekunde angeben, wie rate=50</translation>
    </message>
    <message>
        <source>Give that part a smaller uncertainty</source>
        <translation>Diesem Teil eine kleinere Unsicherheit geben</translation>
    </message>
    <message>
        <source>Give the sample rate instead</source>
        <translation>Stattdessen die Abtastrate angeben</translation>
    </message>
    <message>
        <source>Give the samples per second, such as rate=50</source>
        <translation>Die Abtastwerte je Sekunde angeben, wie rate=50</translation>
    </message>
    <message>
        <source>Give them one first</source>
        <translation>Zuerst einen angeben</translation>
    </message>
    <message>
        <source>Go on in a copy of the document</source>
        <translation>In einer Kopie des Dokuments weiterarbeiten</translation>
    </message>
    <message>
        <source>Greatest expected, {1}</source>
        <translation>Größter erwarteter Wert, {1}</translation>
    </message>
    <message>
        <source>Grid of a gauge</source>
        <translation>Gitter eines DMS</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Guard band</source>
        <translation>Schutzabstand</translation>
    </message>
    <message>
        <source>Guard factor</source>
        <translation>Schutzfaktor</translation>
    </message>
    <message>
        <source>Half bridge at {1} from its arms alone</source>
        <translation>Halbbrücke bei {1} aus ihren Zweigen allein</translation>
    </message>
    <message>
        <source>Half bridge, Poisson gauge</source>
        <translation>Halbbrücke, Querdehnungs-DMS</translation>
    </message>
    <message>
        <source>Half bridge, bending</source>
        <translation>Halbbrücke, Biegung</translation>
    </message>
    <message>
        <source>Half bridge, diagonal</source>
        <translation>Halbbrücke, diagonal</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Hold, s</source>
        <translation>Halten, s</translation>
    </message>
    <message>
        <source>ISO/TS 28037:2010</source>
        <translation>ISO/TS 28037:2010</translation>
    </message>
    <message>
        <source>If &quot;{1}&quot; is the cause, data do not feel it.</source>
        <translation>Wenn „{1}“ die Ursache ist, spüren Daten nichts davon.</translation>
    </message>
    <message>
        <source>If &quot;{1}&quot; is the cause, data taken in between do not feel it: factor {2} at both ends. It is the check that is to be put right and made again; only then does it say that nothing else changed.</source>
        <translation>Wenn „{1}“ die Ursache ist, spüren dazwischen aufgenommene Daten nichts davon: Faktor {2} an beiden Enden. Die Prüfung ist zu berichtigen und neu durchzuführen; erst dann sagt sie, dass sich sonst nichts geändert hat.</translation>
    </message>
    <message>
        <source>If &quot;{1}&quot; is the cause, data taken in between keep their scale: factor {2} at both ends. Their zero may have moved as well, by more than the checks show: zero readings without load in the recording tell, and where there are none nobody knows.</source>
        <translation>Ist „{1}“ die Ursache, behalten die dazwischen aufgenommenen Daten ihren Maßstab: Faktor {2} an beiden Enden. Ihr Nullpunkt kann sich ebenfalls verschoben haben, um mehr, als die Prüfungen zeigen: Nullwerte ohne Last in der Aufzeichnung geben Auskunft, und wo es keine gibt, weiß es niemand.</translation>
    </message>
    <message>
        <source>If &quot;{1}&quot; is the cause: factor {2} at {3}, {4} at {5}. Uncorrected {6} is off by {7} at most, whenever in between it came</source>
        <translation>Wenn „{1}“ die Ursache ist: Faktor {2} bei {3}, {4} bei {5}. Unkorrigiert weicht {6} um höchstens {7} ab, wann immer dazwischen es kam</translation>
    </message>
    <message>
        <source>If the cause is: {1}</source>
        <translation>Wenn dies die Ursache ist: {1}</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Folge</translation>
    </message>
    <message>
        <source>In the check {1}, {2} and {3} are read from the same time of the recording.</source>
        <translation>In der Prüfung {1} sind {2} und {3} zur selben Zeit der Aufzeichnung abgelesen.</translation>
    </message>
    <message>
        <source>In the check {1}, {2} is read from {3} to {4}: it ends before it begins.</source>
        <translation>In der Prüfung {1} ist {2} von {3} bis {4} abgelesen: Das Ende liegt vor dem Beginn.</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>In {1} the channel was off already ({2}): what is told is the change from there, to first order about the channel as entered.</source>
        <translation>In {1} wich der Kanal bereits ab ({2}): genannt ist die Änderung von dort aus, in erster Ordnung um den Kanal, wie er eingegeben ist.</translation>
    </message>
    <message>
        <source>In {1}: {2}</source>
        <translation>In {1}: {2}</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingangsgröße</translation>
    </message>
    <message>
        <source>Input resistance</source>
        <translation>Eingangswiderstand</translation>
    </message>
    <message>
        <source>Inputs and what is known of them</source>
        <translation>Eingangsgrößen und was von ihnen bekannt ist</translation>
    </message>
    <message>
        <source>Insert a zero step</source>
        <translation>Nullstufe einfügen</translation>
    </message>
    <message>
        <source>Insert {1}</source>
        <translation>{1} einfügen</translation>
    </message>
    <message>
        <source>Insert {1} ({2})</source>
        <translation>{1} einfügen ({2})</translation>
    </message>
    <message>
        <source>Insert {1} and {2}</source>
        <translation>{1} und {2} einfügen</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Instrument connected and switched off; its switched-off source counts as open.</source>
        <translation>Gerät angeschlossen und ausgeschaltet; seine ausgeschaltete Quelle zählt als offen.</translation>
    </message>
    <message>
        <source>Instrument settings</source>
        <translation>Einstellungen des Geräts</translation>
    </message>
    <message>
        <source>Instrument unplugged: what lies inside it is away.</source>
        <translation>Gerät abgesteckt: Was darin liegt, ist weg.</translation>
    </message>
    <message>
        <source>Instrument: {1}.</source>
        <translation>Gerät: {1}.</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Intercept</source>
        <translation>Achsenabschnitt</translation>
    </message>
    <message>
        <source>Intercept, {1}</source>
        <translation>Achsenabschnitt, {1}</translation>
    </message>
    <message>
        <source>Interpolating between both ends is legitimate only where a further check or a recorded reference shows that it went steadily; a setting that was changed acts from one moment on.</source>
        <translation>Zwischen beiden Enden zu interpolieren ist nur zulässig, wo eine weitere Prüfung oder eine aufgezeichnete Referenz einen stetigen Verlauf zeigt; eine geänderte Einstellung wirkt von einem Augenblick an.</translation>
    </message>
    <message>
        <source>Is it on purpose?</source>
        <translation>Ist das beabsichtigt?</translation>
    </message>
    <message>
        <source>It came at one moment, and no value in between ever held: do not interpolate. Correct only what was recorded after that moment, where the recording or the log shows it.</source>
        <translation>Es kam in einem Augenblick, und kein Zwischenwert galt je: nicht interpolieren. Nur korrigieren, was nach diesem Augenblick aufgezeichnet wurde, wo Aufzeichnung oder Protokoll ihn zeigen.</translation>
    </message>
    <message>
        <source>It can no longer be measured. Look in the log what was mended, connected or set anew between {1} and {2}.</source>
        <translation>Es lässt sich nicht mehr messen. Im Protokoll nachsehen, was zwischen {1} und {2} instand gesetzt, angeschlossen oder neu eingestellt wurde.</translation>
    </message>
    <message>
        <source>It cannot be predicted.</source>
        <translation>Nicht vorherzusagen.</translation>
    </message>
    <message>
        <source>It cannot be predicted: {1}</source>
        <translation>Nicht vorherzusagen: {1}</translation>
    </message>
    <message>
        <source>It cannot be told how long a step must last: {1}</source>
        <translation>Wie lange eine Stufe dauern muss, ist nicht zu sagen: {1}</translation>
    </message>
    <message>
        <source>It changes for good, or burns.</source>
        <translation>Er ändert sich dauerhaft oder brennt durch.</translation>
    </message>
    <message>
        <source>It closes the same shunts as the step before.</source>
        <translation>Sie schließt dieselben Shunts wie die Stufe davor.</translation>
    </message>
    <message>
        <source>It explains {1} % of chi-square {2} and {3}, more than the uncertainties explain.</source>
        <translation>Sie erklärt {1} % von Chi-Quadrat {2} und {3}, mehr, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>It explains {1} % of chi-square {2} and {3}.</source>
        <translation>Sie erklärt {1} % von Chi-Quadrat {2} und {3}.</translation>
    </message>
    <message>
        <source>It falls: negative</source>
        <translation>Es fällt: negativ</translation>
    </message>
    <message>
        <source>It has no uncertainty: {1}</source>
        <translation>Sie hat keine Unsicherheit: {1}</translation>
    </message>
    <message>
        <source>It is held for no time.</source>
        <translation>Sie wird keine Zeit lang gehalten.</translation>
    </message>
    <message>
        <source>It is held for {1}, less than one second.</source>
        <translation>Sie wird {1} gehalten, weniger als eine Sekunde.</translation>
    </message>
    <message>
        <source>It is held for {1}, longer than a day&apos;s work of 8 h.</source>
        <translation>Sie wird {1} gehalten, länger als ein Arbeitstag von 8 h.</translation>
    </message>
    <message>
        <source>It is read when you ask for it</source>
        <translation>Sie wird auf Verlangen gelesen</translation>
    </message>
    <message>
        <source>It is {1} apart from {2}, within the uncertainty of their difference, {3}.</source>
        <translation>Sie ist {1} von {2} entfernt, innerhalb der Unsicherheit ihrer Differenz, {3}.</translation>
    </message>
    <message>
        <source>It may be one of: {1}</source>
        <translation>Möglich ist: {1}</translation>
    </message>
    <message>
        <source>It rises: positive</source>
        <translation>Es steigt: positiv</translation>
    </message>
    <message>
        <source>It settles in less than no time.</source>
        <translation>Sie schwingt in weniger als keiner Zeit ein.</translation>
    </message>
    <message>
        <source>It settles {1}, longer than a day&apos;s work of 8 h.</source>
        <translation>Sie schwingt {1} ein, länger als ein Arbeitstag von 8 h.</translation>
    </message>
    <message>
        <source>It settles {1}, {2}, and one sample more.</source>
        <translation>Sie schwingt {1} ein, {2}, und ein Abtastwert mehr.</translation>
    </message>
    <message>
        <source>It settles {1}, {2}.</source>
        <translation>Sie schwingt {1} ein, {2}.</translation>
    </message>
    <message>
        <source>It stays as it is</source>
        <translation>Es bleibt, wie es ist</translation>
    </message>
    <message>
        <source>It would move the zero by {1} {2}; it moved by {3} {2}.</source>
        <translation>Sie verschöbe den Nullpunkt um {1} {2}; verschoben hat er sich um {3} {2}.</translation>
    </message>
    <message>
        <source>It would move the zero by {1} {2}; it shows next to nothing, so that it was zeroed anew or this is not the cause.</source>
        <translation>Sie verschöbe den Nullpunkt um {1} {2}; er zeigt fast nichts, also wurde neu genullt oder dies ist nicht die Ursache.</translation>
    </message>
    <message>
        <source>Its hold of {1} has {2} samples, fewer than 20.</source>
        <translation>Ihr Halten von {1} hat {2} Abtastwerte, weniger als 20.</translation>
    </message>
    <message>
        <source>Its hold of {1} is {2} periods of the {3} Hz mains: up to {4} of a hum stays in the mean.</source>
        <translation>Ihr Halten von {1} ist {2} Perioden des {3}-Hz-Netzes: Bis zu {4} eines Brummens bleiben im Mittelwert.</translation>
    </message>
    <message>
        <source>Its label {1}</source>
        <translation>Ihre Bezeichnung {1}</translation>
    </message>
    <message>
        <source>Its power rating is not above 0 W.</source>
        <translation>Seine Belastbarkeit ist nicht über 0 W.</translation>
    </message>
    <message>
        <source>Its resistance is not above 0 Ω.</source>
        <translation>Sein Widerstand ist nicht über 0 Ω.</translation>
    </message>
    <message>
        <source>Its shunt&apos;s name {1}</source>
        <translation>Der Name ihres Shunts {1}</translation>
    </message>
    <message>
        <source>Its temperature coefficient</source>
        <translation>Sein Temperaturkoeffizient</translation>
    </message>
    <message>
        <source>Its uncertainty</source>
        <translation>Ihre Unsicherheit</translation>
    </message>
    <message>
        <source>Its wires or its switch have less than 0 Ω.</source>
        <translation>Seine Leitungen oder sein Schalter haben weniger als 0 Ω.</translation>
    </message>
    <message>
        <source>JCGM 100:2008, 5.1 and 5.2</source>
        <translation>JCGM 100:2008, 5.1 und 5.2</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Beurteilt nach</translation>
    </message>
    <message>
        <source>Jumper</source>
        <translation>Steckbrücke</translation>
    </message>
    <message>
        <source>Jumpers</source>
        <translation>Steckbrücken</translation>
    </message>
    <message>
        <source>Keep either node, or resistor and end</source>
        <translation>Entweder node oder resistor und end behalten</translation>
    </message>
    <message>
        <source>Keep either ohm, or length_m, section_m2 and temperature_degC</source>
        <translation>Entweder ohm oder length_m, section_m2 und temperature_degC behalten</translation>
    </message>
    <message>
        <source>Keep one of the two</source>
        <translation>Eines von beiden behalten</translation>
    </message>
    <message>
        <source>Keep one reading a step, null where there is none</source>
        <translation>Einen Messwert je Stufe behalten, null, wo keiner ist</translation>
    </message>
    <message>
        <source>Keep these two apart: leave a pin between them unused, and check for a short before you switch the excitation on</source>
        <translation>Diese beiden auseinanderhalten: einen Stift dazwischen frei lassen und vor dem Einschalten der Speisung auf Kurzschluss prüfen</translation>
    </message>
    <message>
        <source>Keep those that are used</source>
        <translation>Die verwendeten behalten</translation>
    </message>
    <message>
        <source>Keep {1} alone</source>
        <translation>Nur {1} behalten</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Known are {n}, {name}, {group} and {column}</source>
        <translation>Bekannt sind {n}, {name}, {group} und {column}</translation>
    </message>
    <message>
        <source>Known shunts: {1}</source>
        <translation>Bekannte Shunts: {1}</translation>
    </message>
    <message>
        <source>L = C R / ((4 Rs + 2 R) S), C capacity, S rated output</source>
        <translation>L = C R / ((4 Rs + 2 R) S), C Nennlast, S Nennkennwert</translation>
    </message>
    <message>
        <source>L = C Δv / S, C capacity, S rated output</source>
        <translation>L = C Δv / S, C Nennlast, S Nennkennwert</translation>
    </message>
    <message>
        <source>L = {1}</source>
        <translation>L = {1}</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Gelegt</translation>
    </message>
    <message>
        <source>Laid together, the jumpers of {1}</source>
        <translation>Gemeinsam gelegt würden die Steckbrücken von {1}</translation>
    </message>
    <message>
        <source>Lay a jumper from each end of the resistor to its place</source>
        <translation>Von jedem Ende des Widerstands eine Steckbrücke zu seinem Ort legen</translation>
    </message>
    <message>
        <source>Lay {1}</source>
        <translation>Zu legen: {1}</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Lead each jumper from an end of the resistor to one place of the bridge</source>
        <translation>Jede Steckbrücke von einem Ende des Widerstands zu einem Ort der Brücke führen</translation>
    </message>
    <message>
        <source>Lead it to another pin or take it out</source>
        <translation>Zu einem anderen Stift führen oder herausnehmen</translation>
    </message>
    <message>
        <source>Lead {1} broken</source>
        <translation>Leitung {1} unterbrochen</translation>
    </message>
    <message>
        <source>Lead {1} bypassed</source>
        <translation>Leitung {1} überbrückt</translation>
    </message>
    <message>
        <source>Lead {1} is broken.</source>
        <translation>Leitung {1} ist unterbrochen.</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Leads longer or shorter</source>
        <translation>Leitungen länger oder kürzer</translation>
    </message>
    <message>
        <source>Leads longer than entered</source>
        <translation>Leitungen länger als eingetragen</translation>
    </message>
    <message>
        <source>Leads not entered</source>
        <translation>Leitungen nicht eingetragen</translation>
    </message>
    <message>
        <source>Leads of another resistance</source>
        <translation>Leitungen anderen Widerstands</translation>
    </message>
    <message>
        <source>Leads shorter than entered</source>
        <translation>Leitungen kürzer als eingetragen</translation>
    </message>
    <message>
        <source>Leads so many times as long</source>
        <translation>Leitungen so viele Male so lang</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation>Führt zu</translation>
    </message>
    <message>
        <source>Leads warmer by</source>
        <translation>Leitungen wärmer um</translation>
    </message>
    <message>
        <source>Leads warmer or colder</source>
        <translation>Leitungen wärmer oder kälter</translation>
    </message>
    <message>
        <source>Leads warmer than stated</source>
        <translation>Leitungen wärmer als angegeben</translation>
    </message>
    <message>
        <source>Leads {1}</source>
        <translation>Leitungen {1}</translation>
    </message>
    <message>
        <source>Leads {1} and {2}</source>
        <translation>Leitungen {1} und {2}</translation>
    </message>
    <message>
        <source>Leads {1} are exchanged at the instrument.</source>
        <translation>Die Leitungen {1} sind am Gerät vertauscht.</translation>
    </message>
    <message>
        <source>Leads {1} times as long</source>
        <translation>Leitungen {1}-mal so lang</translation>
    </message>
    <message>
        <source>Leads {1} touch at their gauge ends.</source>
        <translation>Die Leitungen {1} berühren sich an ihren DMS-Enden.</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>Nebenschluss</translation>
    </message>
    <message>
        <source>Leak from the {1} to the structure</source>
        <translation>Nebenschluss zur Struktur: {1}</translation>
    </message>
    <message>
        <source>Leak of {1} from the {2} to the structure</source>
        <translation>Nebenschluss {1} von {2} zur Struktur</translation>
    </message>
    <message>
        <source>Leak of {1} over the {2}</source>
        <translation>Nebenschluss {1} über {2}</translation>
    </message>
    <message>
        <source>Leak over arm {1}</source>
        <translation>Nebenschluss über Zweig {1}</translation>
    </message>
    <message>
        <source>Leak over the {1}</source>
        <translation>Nebenschluss über {1}</translation>
    </message>
    <message>
        <source>Leak over {1}</source>
        <translation>Nebenschluss über {1}</translation>
    </message>
    <message>
        <source>Leak over {1} grew</source>
        <translation>Nebenschluss über {1} wuchs</translation>
    </message>
    <message>
        <source>Leak to structure of arm {1}</source>
        <translation>Nebenschluss zur Struktur von Zweig {1}</translation>
    </message>
    <message>
        <source>Leave a pin between them unused, or check with the ohmmeter that they are apart</source>
        <translation>Einen Stift dazwischen frei lassen oder mit dem Ohmmeter prüfen, dass sie getrennt sind</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Leave one of them empty</source>
        <translation>Eines davon leer lassen</translation>
    </message>
    <message>
        <source>Leave one out</source>
        <translation>Eines weglassen</translation>
    </message>
    <message>
        <source>Leave out pins that nothing of it uses</source>
        <translation>Stifte weglassen, die nichts davon verwendet</translation>
    </message>
    <message>
        <source>Leave out those that join nothing</source>
        <translation>Die weglassen, die nichts verbinden</translation>
    </message>
    <message>
        <source>Leave out those that undo each other</source>
        <translation>Die weglassen, die einander aufheben</translation>
    </message>
    <message>
        <source>Leave the two independent</source>
        <translation>Die beiden unabhängig lassen</translation>
    </message>
    <message>
        <source>Leave them empty when the uncertainty is known for certain</source>
        <translation>Leer lassen, wenn die Unsicherheit sicher bekannt ist</translation>
    </message>
    <message>
        <source>Left out of the line</source>
        <translation>Nicht in der Geraden</translation>
    </message>
    <message>
        <source>Left out of this report: {1}.</source>
        <translation>In diesem Bericht weggelassen: {1}.</translation>
    </message>
    <message>
        <source>Legitimate only for data recorded after the shift and before the next zeroing, where a reading without load shows the same offset and an electrical cause of it was found.</source>
        <translation>Zulässig nur für Daten, die nach der Verschiebung und vor dem nächsten Nullen aufgezeichnet wurden, wo ein Messwert ohne Last dieselbe Verschiebung zeigt und eine elektrische Ursache dafür gefunden wurde.</translation>
    </message>
    <message>
        <source>Legitimate only where the measurement confirms this cause, and it was there, the same, during the whole test.</source>
        <translation>Zulässig nur, wo die Messung diese Ursache bestätigt und sie während des ganzen Versuchs unverändert da war.</translation>
    </message>
    <message>
        <source>Legitimate only where the same resistor was in the bridge during the whole test, and its value is measured.</source>
        <translation>Zulässig nur, wo während des ganzen Versuchs derselbe Widerstand in der Brücke war und sein Wert gemessen ist.</translation>
    </message>
    <message>
        <source>Legitimate only where the sense lead was open during the whole test as well, which its recording or a check before and after must show, and the measurement confirms it.</source>
        <translation>Zulässig nur, wo die Fühlerleitung auch während des ganzen Versuchs offen war, was seine Aufzeichnung oder eine Prüfung davor und danach zeigen muss, und die Messung es bestätigt.</translation>
    </message>
    <message>
        <source>Legitimate only where zero readings without load in between show when it moved, and an electrical cause was found; a strain that stayed is no error.</source>
        <translation>Zulässig nur, wo Nullwerte ohne Last dazwischen zeigen, wann er sich verschob, und eine elektrische Ursache gefunden wurde; eine gebliebene Dehnung ist kein Fehler.</translation>
    </message>
    <message>
        <source>Less likely: {1}.</source>
        <translation>Weniger wahrscheinlich: {1}.</translation>
    </message>
    <message>
        <source>Let it be submitted again</source>
        <translation>Neu vorlegen lassen</translation>
    </message>
    <message>
        <source>Let somebody else review it</source>
        <translation>Jemand anderen durchsehen lassen</translation>
    </message>
    <message>
        <source>Let whoever prepared it submit it first</source>
        <translation>Zuerst den vorlegen lassen, der es erstellt hat</translation>
    </message>
    <message>
        <source>Let {1} withdraw it, or return it with a remark</source>
        <translation>Von {1} zurückziehen lassen oder mit einer Anmerkung zurückgeben</translation>
    </message>
    <message>
        <source>Levels of one sign do not tell whether the other sign reads right.</source>
        <translation>Stufenwerte eines Vorzeichens sagen nicht, ob das andere richtig gelesen wird.</translation>
    </message>
    <message>
        <source>Like the step before it has all shunts open.</source>
        <translation>Wie bei der Stufe davor sind alle Shunts offen.</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limit at least, {1}</source>
        <translation>Grenzwert mindestens, {1}</translation>
    </message>
    <message>
        <source>Limit of the return to zero</source>
        <translation>Grenzwert der Nullpunktrückkehr</translation>
    </message>
    <message>
        <source>Limit or U, %</source>
        <translation>Grenzwert oder U, %</translation>
    </message>
    <message>
        <source>Limit, %</source>
        <translation>Grenzwert, %</translation>
    </message>
    <message>
        <source>Limit, share of expected</source>
        <translation>Grenzwert, Anteil des erwarteten Werts</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Line from</source>
        <translation>Gerade von</translation>
    </message>
    <message>
        <source>Line to</source>
        <translation>Gerade bis</translation>
    </message>
    <message>
        <source>Line {1} has {2} cells and the rows of numbers have {3}: {4}</source>
        <translation>Zeile {1} hat {2} Zellen, und die Zeilen der Zahlen haben {3}: {4}</translation>
    </message>
    <message>
        <source>Linearisation</source>
        <translation>Linearisierung</translation>
    </message>
    <message>
        <source>List their leaks in the order of arms 1 to 4, null where there is none</source>
        <translation>Ihre Nebenschlüsse in der Folge der Zweige 1 bis 4 aufführen, null, wo keiner ist</translation>
    </message>
    <message>
        <source>List their resistances in the order of arms 1 to 4</source>
        <translation>Ihre Widerstände in der Folge der Zweige 1 bis 4 aufführen</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Look at that line: what is misread needs another layout, most often another time column or decimal mark; a file without numbers has to be exported anew</source>
        <translation>Diese Zeile ansehen: Was falsch gelesen wird, braucht eine andere Anordnung, meist eine andere Zeitspalte oder ein anderes Dezimalzeichen; eine Datei ohne Zahlen ist neu zu exportieren</translation>
    </message>
    <message>
        <source>Look for a value of the plan that is far out of range</source>
        <translation>Nach einem Wert des Plans suchen, der weit außerhalb des Üblichen liegt</translation>
    </message>
    <message>
        <source>Look for points or uncertainties that are wrong, or add points farther apart</source>
        <translation>Nach falschen Punkten oder Unsicherheiten suchen oder weiter entfernte Punkte hinzufügen</translation>
    </message>
    <message>
        <source>Look for readings that stop at one value without any noise, then set a wider range and take the greatest step again.</source>
        <translation>Nach Messwerten suchen, die ganz ohne Rauschen bei einem Wert stehen bleiben, dann einen größeren Bereich einstellen und die größte Stufe wiederholen.</translation>
    </message>
    <message>
        <source>Look for resistances that differ by very many powers of ten</source>
        <translation>Nach Widerständen suchen, die um sehr viele Zehnerpotenzen auseinanderliegen</translation>
    </message>
    <message>
        <source>Look in the log for a zeroing, a load that stayed on, and the temperature of both days; without load, look whether the zero stays while cable and connectors are moved.</source>
        <translation>Im Protokoll nach einem Nullen, einer gebliebenen Last und der Temperatur beider Tage suchen; ohne Last nachsehen, ob der Nullpunkt bleibt, während Kabel und Stecker bewegt werden.</translation>
    </message>
    <message>
        <source>Look in the switch log or the recording which shunt was closed when, or take {1} again.</source>
        <translation>Im Schaltprotokoll oder in der Aufzeichnung nachsehen, welcher Shunt wann geschlossen war, oder {1} wiederholen.</translation>
    </message>
    <message>
        <source>Look in the switch log or the recording which side was taken first, or take one positive step again.</source>
        <translation>Im Schaltprotokoll oder in der Aufzeichnung nachsehen, welche Seite zuerst aufgenommen wurde, oder eine positive Stufe wiederholen.</translation>
    </message>
    <message>
        <source>Look whether it may be written to</source>
        <translation>Nachsehen, ob dort geschrieben werden darf</translation>
    </message>
    <message>
        <source>Look whether its folder may be written to</source>
        <translation>Nachsehen, ob in ihrem Ordner geschrieben werden darf</translation>
    </message>
    <message>
        <source>Look whether the disk is full, and whether its folder may be written to</source>
        <translation>Prüfen, ob die Platte voll ist und ob in den Ordner geschrieben werden darf</translation>
    </message>
    <message>
        <source>Look whether the excitation is on, the signal wires and the shunts are connected, and the right channel is recorded; then close one shunt by hand and see the reading move.</source>
        <translation>Nachsehen, ob die Speisung eingeschaltet ist, Signalleitungen und Shunts angeschlossen sind und der richtige Kanal aufgezeichnet wird; dann einen Shunt von Hand schließen und den Messwert sich bewegen sehen.</translation>
    </message>
    <message>
        <source>Look whether the recording is of this channel</source>
        <translation>Nachsehen, ob die Aufzeichnung von diesem Kanal ist</translation>
    </message>
    <message>
        <source>Look whether the recording is of this plan and channel</source>
        <translation>Nachsehen, ob die Aufzeichnung von diesem Plan und Kanal ist</translation>
    </message>
    <message>
        <source>Lower the excitation to {1}</source>
        <translation>Speisung auf {1} senken</translation>
    </message>
    <message>
        <source>M. J. Bower, Modern Strain Gage Technology, eq. 27.4 to 27.11</source>
        <translation>M. J. Bower, Modern Strain Gage Technology, Gl. 27.4 bis 27.11</translation>
    </message>
    <message>
        <source>M. J. Bower, Modern Strain Gage Technology, eq. 29.4</source>
        <translation>M. J. Bower, Modern Strain Gage Technology, Gl. 29.4</translation>
    </message>
    <message>
        <source>MATLAB and HDF5 files are read by the program shuntwright-reader, which is not here</source>
        <translation>MATLAB- und HDF5-Dateien liest das Programm shuntwright-reader, und das ist nicht da</translation>
    </message>
    <message>
        <source>Mains hum averaged out</source>
        <translation>Netzbrummen ausgemittelt</translation>
    </message>
    <message>
        <source>Make a check first</source>
        <translation>Zuerst eine Prüfung durchführen</translation>
    </message>
    <message>
        <source>Make room in the folder for temporary files</source>
        <translation>Im Ordner für temporäre Dateien Platz schaffen</translation>
    </message>
    <message>
        <source>Make room there, or let TMPDIR name another folder</source>
        <translation>Dort Platz schaffen oder in TMPDIR einen anderen Ordner nennen</translation>
    </message>
    <message>
        <source>Many samples stand at the same time, since the clock in &apos;{1}&apos; is coarse: a sample rate would tell more.</source>
        <translation>Viele Abtastwerte stehen bei derselben Zeit, da die Uhr in „{1}“ grob ist: Eine Abtastrate sagte mehr.</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>Margin, {1}</source>
        <translation>Toleranz, {1}</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured change against simulated value, and deviation from expected with the limits as a band, check {1}</source>
        <translation>Gemessene Änderung über dem simulierten Wert und Abweichung vom erwarteten mit den Grenzwerten als Band, Prüfung {1}</translation>
    </message>
    <message>
        <source>Measured, Ω</source>
        <translation>Gemessen, Ω</translation>
    </message>
    <message>
        <source>Mend it first</source>
        <translation>Zuerst diese instand setzen</translation>
    </message>
    <message>
        <source>Mend the broken lead</source>
        <translation>Die unterbrochene Leitung instand setzen</translation>
    </message>
    <message>
        <source>Mend the lead that is broken</source>
        <translation>Die unterbrochene Leitung instand setzen</translation>
    </message>
    <message>
        <source>Mend the statement that the Uncertainties table marks</source>
        <translation>Die Angabe berichtigen, die die Tabelle der Unsicherheiten markiert</translation>
    </message>
    <message>
        <source>Micro-Measurements TN-507</source>
        <translation>Micro-Measurements TN-507</translation>
    </message>
    <message>
        <source>Micro-Measurements TN-514</source>
        <translation>Micro-Measurements TN-514</translation>
    </message>
    <message>
        <source>Micro-Measurements, article on leadwire resistance</source>
        <translation>Micro-Measurements, Aufsatz über Leitungswiderstände</translation>
    </message>
    <message>
        <source>Misfit</source>
        <translation>Restabweichung</translation>
    </message>
    <message>
        <source>Misfit is the mean square of deviations in tolerances, each cut off at 10. Single faults only; two at once may look like a third.</source>
        <translation>Die Restabweichung ist das mittlere Quadrat der Abweichungen in Toleranzen, jede bei 10 gekappt. Nur einzelne Fehler; zwei zugleich können wie ein dritter aussehen.</translation>
    </message>
    <message>
        <source>Moisture over a gauge</source>
        <translation>Feuchte über einem DMS</translation>
    </message>
    <message>
        <source>Moisture to the structure</source>
        <translation>Feuchte zur Struktur</translation>
    </message>
    <message>
        <source>Move it there, or remove it</source>
        <translation>Dorthin versetzen oder entfernen</translation>
    </message>
    <message>
        <source>Move one end to another node</source>
        <translation>Ein Ende an einen anderen Knoten legen</translation>
    </message>
    <message>
        <source>Move the shunt to another node, or choose the six-wire connection</source>
        <translation>Den Shunt an einen anderen Knoten legen oder die Sechsleiterschaltung wählen</translation>
    </message>
    <message>
        <source>Move {1} to the ends of arm {2}</source>
        <translation>{1} an die Enden von Zweig {2} legen</translation>
    </message>
    <message>
        <source>Move {1} to the neighbouring arm</source>
        <translation>{1} an den Nachbarzweig legen</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>Moved by {1}, not within {2}.</source>
        <translation>Bewegt um {1}, nicht innerhalb von {2}.</translation>
    </message>
    <message>
        <source>Moved by {1}, within {2}.</source>
        <translation>Bewegt um {1}, innerhalb von {2}.</translation>
    </message>
    <message>
        <source>Moved, {1}</source>
        <translation>Bewegt, {1}</translation>
    </message>
    <message>
        <source>Moved: by how much the deviation from expected changed. U at a coverage of {1}, without what both checks share. Unchanged: p beyond margin is below 0.05; changed: p of nothing moved is below 0.05, and that beyond margin is not.</source>
        <translation>Bewegt: um wie viel sich die Abweichung vom erwarteten Wert geändert hat. U mit einer Überdeckung von {1}, ohne das, was beide Prüfungen gemeinsam haben. Unverändert: p jenseits der Toleranz ist kleiner als 0,05; geändert: p für keine Bewegung ist kleiner als 0,05, das jenseits der Toleranz nicht.</translation>
    </message>
    <message>
        <source>Must read, Ω</source>
        <translation>Soll zeigen, Ω</translation>
    </message>
    <message>
        <source>N = {1} is set, this bridge has {2}</source>
        <translation>N = {1} ist eingestellt, diese Brücke hat {2}</translation>
    </message>
    <message>
        <source>N = {1} set where {2} belongs</source>
        <translation>N = {1} eingestellt, wo {2} hingehört</translation>
    </message>
    <message>
        <source>N = {1} set where {2}, of “{3}”, belongs</source>
        <translation>N = {1} eingestellt, wo {2}, von „{3}“, hingehört</translation>
    </message>
    <message>
        <source>N = {1}, of “{2}”, set where {3}, of “{4}”, belongs</source>
        <translation>N = {1}, von „{2}“, eingestellt, wo {3}, von „{4}“, hingehört</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name a channel that was there before the list, or empty the cell</source>
        <translation>Einen Kanal nennen, der vor der Liste da war, oder die Zelle leeren</translation>
    </message>
    <message>
        <source>Name it once</source>
        <translation>Einmal nennen</translation>
    </message>
    <message>
        <source>Name it, such as kN</source>
        <translation>Sie benennen, etwa kN</translation>
    </message>
    <message>
        <source>Name the channel, or empty the line</source>
        <translation>Den Kanal benennen oder die Zeile leeren</translation>
    </message>
    <message>
        <source>Name them once</source>
        <translation>Sie einmal nennen</translation>
    </message>
    <message>
        <source>Name two different leads</source>
        <translation>Zwei verschiedene Leitungen nennen</translation>
    </message>
    <message>
        <source>Name two of them</source>
        <translation>Zwei davon nennen</translation>
    </message>
    <message>
        <source>Narrow the range of resistances, or leave out fine dials and series</source>
        <translation>Den Widerstandsbereich verkleinern oder feine Drehschalter und Reihen weglassen</translation>
    </message>
    <message>
        <source>Nearest to one would be: {1}; chance alone makes as much of it in some healthy checks.</source>
        <translation>Am nächsten käme: {1}; so viel davon macht bei manchen fehlerfreien Prüfungen auch der Zufall.</translation>
    </message>
    <message>
        <source>Negative steps taken before the positive ones</source>
        <translation>Negative Stufen vor den positiven aufgenommen</translation>
    </message>
    <message>
        <source>Never narrower than</source>
        <translation>Nie schmaler als</translation>
    </message>
    <message>
        <source>No channel has been checked.</source>
        <translation>Kein Kanal wurde geprüft.</translation>
    </message>
    <message>
        <source>No channel is in this report.</source>
        <translation>In diesem Bericht ist kein Kanal.</translation>
    </message>
    <message>
        <source>No check has a line, so there is no trend.</source>
        <translation>Keine Prüfung hat eine Gerade, daher gibt es keinen Trend.</translation>
    </message>
    <message>
        <source>No column is known to be the time: choose it or give a sample rate.</source>
        <translation>Keine Spalte ist als Zeit bekannt: eine wählen oder eine Abtastrate angeben.</translation>
    </message>
    <message>
        <source>No diagnosis: cancelled.</source>
        <translation>Keine Diagnose: abgebrochen.</translation>
    </message>
    <message>
        <source>No diagnosis: it takes at least three readings, one of them with a shunt closed, and their uncertainties.</source>
        <translation>Keine Diagnose: Sie braucht mindestens drei Messwerte, einen davon mit geschlossenem Shunt, und deren Unsicherheiten.</translation>
    </message>
    <message>
        <source>No diagnosis: it takes three readings at least, of steps whose uncertainty is known.</source>
        <translation>Keine Diagnose: Sie braucht mindestens drei Messwerte von Stufen, deren Unsicherheit bekannt ist.</translation>
    </message>
    <message>
        <source>No diagnosis: {1}</source>
        <translation>Keine Diagnose: {1}</translation>
    </message>
    <message>
        <source>No fault was found: every shunt lies where the plan says once its jumpers are laid.</source>
        <translation>Kein Fehler gefunden: Mit gelegten Steckbrücken liegt jeder Shunt dort, wo der Plan es sagt.</translation>
    </message>
    <message>
        <source>No further step would tell {1} apart; measurements do. For the first: {2} For the second: {3}</source>
        <translation>Keine weitere Stufe würde {1} unterscheiden; Messungen tun es. Für die erste: {2} Für die zweite: {3}</translation>
    </message>
    <message>
        <source>No further step would; a measurement does: {1}</source>
        <translation>Keine weitere Stufe würde es; eine Messung tut es: {1}</translation>
    </message>
    <message>
        <source>No longer there in {1}: {2}</source>
        <translation>Nicht mehr da in {1}: {2}</translation>
    </message>
    <message>
        <source>No number of repeats would tell: what repeating does not average is too large.</source>
        <translation>Keine Zahl von Wiederholungen entschiede es: Was Wiederholen nicht mittelt, ist zu groß.</translation>
    </message>
    <message>
        <source>No pins are entered: shunts are switched inside the instrument, or wired as the drawing shows.</source>
        <translation>Keine Stifte sind eingetragen: Shunts werden im Gerät geschaltet oder wie gezeichnet verdrahtet.</translation>
    </message>
    <message>
        <source>No reading changes and no zero</source>
        <translation>Kein Messwert ändert sich und kein Nullpunkt</translation>
    </message>
    <message>
        <source>No reading has an uncertainty, and there are too few for their scatter about a line.</source>
        <translation>Kein Messwert hat eine Unsicherheit, und für ihre Streuung um eine Gerade sind es zu wenige.</translation>
    </message>
    <message>
        <source>No reading has an uncertainty: their scatter about the lines of both checks is taken, {1} with {2} degrees of freedom.</source>
        <translation>Kein Messwert hat eine Unsicherheit: Genommen wird ihre Streuung um die Geraden beider Prüfungen, {1} mit {2} Freiheitsgraden.</translation>
    </message>
    <message>
        <source>No reading in {1}.</source>
        <translation>Kein Messwert in {1}.</translation>
    </message>
    <message>
        <source>No samples lie there, so the recording strip cannot show what the reading was taken from. Read the step again, or correct its times in the file.</source>
        <translation>Dort liegen keine Abtastwerte, daher kann der Aufzeichnungsstreifen nicht zeigen, woraus der Messwert stammt. Die Stufe neu ablesen oder ihre Zeiten in der Datei berichtigen.</translation>
    </message>
    <message>
        <source>No shunt is closed, so nothing moves.</source>
        <translation>Kein Shunt ist geschlossen, daher bewegt sich nichts.</translation>
    </message>
    <message>
        <source>No single cause explains the readings: {1} if nothing is wrong</source>
        <translation>Keine einzelne Ursache erklärt die Messwerte: {1}, wenn nichts falsch ist</translation>
    </message>
    <message>
        <source>No size of it helps: {1}</source>
        <translation>Keine Größe davon hilft: {1}</translation>
    </message>
    <message>
        <source>No step can be read any more ({1}: {2}).</source>
        <translation>Keine Stufe ist mehr zu lesen ({1}: {2}).</translation>
    </message>
    <message>
        <source>No step closes a shunt.</source>
        <translation>Keine Stufe schließt einen Shunt.</translation>
    </message>
    <message>
        <source>No step depends on {1}.</source>
        <translation>Keine Stufe hängt von {1} ab.</translation>
    </message>
    <message>
        <source>No step moves the reading any more.</source>
        <translation>Keine Stufe bewegt den Messwert mehr.</translation>
    </message>
    <message>
        <source>No step of the sequence closes a shunt.</source>
        <translation>Keine Stufe des Ablaufs schließt einen Shunt.</translation>
    </message>
    <message>
        <source>No uncertainty of the readings is stated: each is taken as good to {1} {2}, one unit of its last digit.</source>
        <translation>Keine Unsicherheit der Messwerte ist angegeben: Jeder gilt auf {1} {2} genau, eine Einheit seiner letzten Stelle.</translation>
    </message>
    <message>
        <source>No uncertainty of the readings is stated: each is taken as good to {1} {2}, the scatter about the line of measured against expected.</source>
        <translation>Für die Messwerte ist keine Unsicherheit angegeben: jeder gilt als auf {1} {2} genau, die Streuung um die Gerade des Gemessenen über dem Erwarteten.</translation>
    </message>
    <message>
        <source>No visible change of the readings.</source>
        <translation>Keine sichtbare Änderung der Messwerte.</translation>
    </message>
    <message>
        <source>No visible change of the readings: step {1} changes most, by {2}{3}.</source>
        <translation>Keine sichtbare Änderung der Messwerte: Stufe {1} ändert sich am meisten, um {2}{3}.</translation>
    </message>
    <message>
        <source>Nobody knows whether the levels are settled.</source>
        <translation>Niemand weiß, ob die Plateaus eingeschwungen sind.</translation>
    </message>
    <message>
        <source>Nobody tells when it is due or was measured anew.</source>
        <translation>Niemand sagt, wann er fällig ist oder neu gemessen wurde.</translation>
    </message>
    <message>
        <source>None, if the step reads as expected when it is taken again.</source>
        <translation>Keine, wenn die Stufe bei Wiederholung den erwarteten Wert zeigt.</translation>
    </message>
    <message>
        <source>None: load recorded between both checks does not feel it.</source>
        <translation>Keine: Zwischen beiden Prüfungen aufgezeichnete Last spürt es nicht.</translation>
    </message>
    <message>
        <source>None: strain recorded between both checks does not feel it.</source>
        <translation>Keine: Zwischen beiden Prüfungen aufgezeichnete Dehnung spürt es nicht.</translation>
    </message>
    <message>
        <source>None: the check alone is affected, {1} is recorded as it should be.</source>
        <translation>Keine: Nur die Prüfung ist betroffen, {1} wird aufgezeichnet, wie es sein soll.</translation>
    </message>
    <message>
        <source>Nonlinearity measured from</source>
        <translation>Linearitätsabweichung gemessen von</translation>
    </message>
    <message>
        <source>Not as the template says</source>
        <translation>Nicht, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Not compared.</source>
        <translation>Nicht verglichen.</translation>
    </message>
    <message>
        <source>Not connected as the template says</source>
        <translation>Nicht angeschlossen, wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>Not connected as the template says, and predicted and judged so: {1}</source>
        <translation>Nicht angeschlossen, wie die Vorlage es sagt, und so vorhergesagt und beurteilt: {1}</translation>
    </message>
    <message>
        <source>Not connected as the template says: {1} All values are those of this connection.</source>
        <translation>Nicht angeschlossen, wie die Vorlage es sagt: {1} Alle Werte gelten für diesen Anschluss.</translation>
    </message>
    <message>
        <source>Not judged: a limit is negative or not a number.</source>
        <translation>Nicht beurteilt: Ein Grenzwert ist negativ oder keine Zahl.</translation>
    </message>
    <message>
        <source>Not judged: its uncertainty is not a number, or too large to reckon with.</source>
        <translation>Nicht beurteilt: Die Unsicherheit ist keine Zahl oder zu groß zum Rechnen.</translation>
    </message>
    <message>
        <source>Not judged: no reading.</source>
        <translation>Nicht beurteilt: kein Messwert.</translation>
    </message>
    <message>
        <source>Not judged: no step has a reading that can be judged.</source>
        <translation>Nicht beurteilt: Keine Stufe hat einen Messwert, der sich beurteilen lässt.</translation>
    </message>
    <message>
        <source>Not judged: the channel has no steps.</source>
        <translation>Nicht beurteilt: Der Kanal hat keine Stufen.</translation>
    </message>
    <message>
        <source>Not judged: {1}</source>
        <translation>Nicht beurteilt: {1}</translation>
    </message>
    <message>
        <source>Not judged: {1}.</source>
        <translation>Nicht beurteilt: {1}.</translation>
    </message>
    <message>
        <source>Not known: {1}.</source>
        <translation>Nicht bekannt: {1}.</translation>
    </message>
    <message>
        <source>Not legitimate.</source>
        <translation>Nicht zulässig.</translation>
    </message>
    <message>
        <source>Not legitimate: a bad contact comes and goes. Mend it and repeat.</source>
        <translation>Nicht zulässig: Ein schlechter Kontakt kommt und geht. Instand setzen und wiederholen.</translation>
    </message>
    <message>
        <source>Not legitimate: a leak changes with moisture and temperature, so that no one factor or offset holds for the test. Mend the insulation and repeat.</source>
        <translation>Nicht zulässig: Ein Nebenschluss ändert sich mit Feuchte und Temperatur, sodass kein einzelner Faktor oder Versatz für den Versuch gilt. Die Isolation instand setzen und wiederholen.</translation>
    </message>
    <message>
        <source>Not legitimate: nobody knows the drift&apos;s course during the test. Zero readings in the test&apos;s own recording may tell it.</source>
        <translation>Nicht zulässig: Niemand kennt den Verlauf der Drift während des Versuchs. Nullwerte in der Aufzeichnung des Versuchs können ihn verraten.</translation>
    </message>
    <message>
        <source>Not legitimate: what changed the resistance may have changed the gauge factor or the bond as well. Replace the gauge, or calibrate it with a known load.</source>
        <translation>Nicht zulässig: Was den Widerstand änderte, kann auch k-Faktor oder Klebung geändert haben. Den DMS ersetzen oder mit bekannter Last kalibrieren.</translation>
    </message>
    <message>
        <source>Not legitimate: what lay beyond the limit was not recorded. Data below it stand as they are.</source>
        <translation>Nicht zulässig: Was jenseits der Grenze lag, wurde nicht aufgezeichnet. Daten darunter gelten, wie sie sind.</translation>
    </message>
    <message>
        <source>Not possible: nothing was recorded that could be corrected.</source>
        <translation>Nicht möglich: Es wurde nichts aufgezeichnet, was sich korrigieren ließe.</translation>
    </message>
    <message>
        <source>Not possible: the bridge with this fault cannot be solved for strain.</source>
        <translation>Nicht möglich: Die Brücke mit diesem Fehler lässt sich nicht nach der Dehnung lösen.</translation>
    </message>
    <message>
        <source>Not ratiometric</source>
        <translation>Nicht ratiometrisch</translation>
    </message>
    <message>
        <source>Not told by the checks: data in between have it too if it was there before {1}. Zero readings without load in the recording tell.</source>
        <translation>Sagen die Prüfungen nicht: Daten dazwischen haben es auch, wenn es schon vor {1} da war. Nullwerte ohne Last in der Aufzeichnung geben Auskunft.</translation>
    </message>
    <message>
        <source>Not traceable: no instrument is named for these channels: {1}.</source>
        <translation>Nicht rückführbar: Für diese Kanäle ist kein Gerät genannt: {1}.</translation>
    </message>
    <message>
        <source>Not traceable: no resistor of the stock is named for these shunts: {1}.</source>
        <translation>Nicht rückführbar: Für diese Shunts ist kein Widerstand des Bestands genannt: {1}.</translation>
    </message>
    <message>
        <source>Nothing calls for a cause: {1}.</source>
        <translation>Nichts verlangt nach einer Ursache: {1}.</translation>
    </message>
    <message>
        <source>Nothing calls for a correction: factor 1 at {1} and at {2}, and the gain is the same within {3} (interval of probability 0.90). Data in between are as good as that, unless something came and went.</source>
        <translation>Nichts verlangt eine Korrektur: Faktor 1 bei {1} und bei {2}, und die Verstärkung ist innerhalb von {3} dieselbe (Intervall der Wahrscheinlichkeit 0,90). Daten dazwischen sind so gut, außer wenn etwas kam und ging.</translation>
    </message>
    <message>
        <source>Nothing can be judged that has no expected reading with its uncertainty.</source>
        <translation>Was keinen erwarteten Messwert mit Unsicherheit hat, lässt sich nicht beurteilen.</translation>
    </message>
    <message>
        <source>Nothing changed that calls for a cause. If &quot;{1}&quot; is what is wrong in {2} already, data in between have it throughout: factor {3} at both ends, and the gain is the same within {4} (interval of probability 0.90). {5}</source>
        <translation>Nichts hat sich geändert, das nach einer Ursache verlangt. Ist „{1}“ das, was in {2} bereits falsch ist, haben es die Daten dazwischen durchgehend: Faktor {3} an beiden Enden, und die Verstärkung ist gleich innerhalb von {4} (Intervall der Wahrscheinlichkeit 0,90). {5}</translation>
    </message>
    <message>
        <source>Nothing is said about the zero: it was not read in both checks.</source>
        <translation>Über den Nullpunkt wird nichts gesagt: Er wurde nicht in beiden Prüfungen abgelesen.</translation>
    </message>
    <message>
        <source>Nothing lies between {1} and {2}; half of the levels are {3} or less apart.</source>
        <translation>Zwischen {1} und {2} liegt nichts; die Hälfte der Stufenwerte liegt {3} oder weniger auseinander.</translation>
    </message>
    <message>
        <source>Nothing of the record is left out.</source>
        <translation>Vom Protokoll ist nichts weggelassen.</translation>
    </message>
    <message>
        <source>Nothing switches between the two, so that a recording shows one level for both.</source>
        <translation>Dazwischen schaltet nichts, sodass eine Aufzeichnung für beide ein Plateau zeigt.</translation>
    </message>
    <message>
        <source>Nothing to correct: strain data do not feel it. It is the check that is to be put right and judged again.</source>
        <translation>Nichts zu korrigieren: Dehnungsdaten spüren es nicht. Die Prüfung ist zu berichtigen und neu zu beurteilen.</translation>
    </message>
    <message>
        <source>Nothing was wrong at {1} that data would feel.</source>
        <translation>Bei {1} war nichts falsch, was Daten spürten.</translation>
    </message>
    <message>
        <source>Of check {1}.</source>
        <translation>Von Prüfung {1}.</translation>
    </message>
    <message>
        <source>Of the others step {1} changes most: it reads {2} instead of {3}, {4}.</source>
        <translation>Von den übrigen ändert sich Stufe {1} am meisten: Sie zeigt {2} statt {3}, {4}.</translation>
    </message>
    <message numerus="yes">
        <source>Of {n} more the rule cannot tell.</source>
        <extracomment>{n} is a count. In English for one: Of {n} more the rule cannot tell.</extracomment>
        <translation>
            <numerusform>Über {n} weitere kann die Regel nicht entscheiden.</numerusform>
            <numerusform>Über {n} weitere kann die Regel nicht entscheiden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Ohmmeter sheet</source>
        <translation>Ohmmeterblatt</translation>
    </message>
    <message>
        <source>Ohmmeter within {1} of the reading and {2}, no reading above {3}. The tolerance adds the uncertainty of arms, leads and shunts at the coverage of the decision rule.</source>
        <translation>Ohmmeter auf {1} des Messwerts und {2}, kein Messwert über {3}. Die Toleranz enthält auch die Unsicherheit von Zweigen, Leitungen und Shunts mit der Überdeckung der Entscheidungsregel.</translation>
    </message>
    <message>
        <source>One gauge in arm 1 on three wires; one current-carrying wire each in arms 1 and 2.</source>
        <translation>Ein DMS in Zweig 1 an drei Leitungen; je eine stromführende Leitung in Zweig 1 und 2.</translation>
    </message>
    <message>
        <source>One gauge in arm 1 on two wires; both wires lie in its arm.</source>
        <translation>Ein DMS in Zweig 1 an zwei Leitungen; beide Leitungen liegen in seinem Zweig.</translation>
    </message>
    <message>
        <source>One more step would tell {1} apart, by {2} standard uncertainties: {3}.</source>
        <translation>Eine weitere Stufe würde {1} unterscheiden, um {2} Standardunsicherheiten: {3}.</translation>
    </message>
    <message>
        <source>Only for {1}</source>
        <translation>Nur für {1}</translation>
    </message>
    <message>
        <source>Only one step is held at a time, so one of the two readings is wrong.</source>
        <translation>Zu jeder Zeit wird nur eine Stufe gehalten, also ist eine der beiden Ablesungen falsch.</translation>
    </message>
    <message>
        <source>Open a Shuntwright document</source>
        <translation>Ein Shuntwright-Dokument öffnen</translation>
    </message>
    <message>
        <source>Open a Shuntwright document; recordings are imported</source>
        <translation>Ein Shuntwright-Dokument öffnen; Aufzeichnungen werden eingelesen</translation>
    </message>
    <message>
        <source>Open a backup of this document</source>
        <translation>Eine Sicherung dieses Dokuments öffnen</translation>
    </message>
    <message>
        <source>Open a file that ends in .bridgecal</source>
        <translation>Eine Datei öffnen, die auf .bridgecal endet</translation>
    </message>
    <message>
        <source>Open it with a Shuntwright that reads file version {1}</source>
        <translation>Mit einem Shuntwright öffnen, das Dateifassung {1} liest</translation>
    </message>
    <message>
        <source>Open the original or a backup of this document</source>
        <translation>Das Original oder eine Sicherung dieses Dokuments öffnen</translation>
    </message>
    <message>
        <source>Open {1} instead</source>
        <translation>Stattdessen {1} öffnen</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>Output with all shunts open</source>
        <translation>Signal mit allen Shunts offen</translation>
    </message>
    <message>
        <source>Output, all shunts open</source>
        <translation>Signal, alle Shunts offen</translation>
    </message>
    <message>
        <source>Output, mV/V</source>
        <translation>Signal, mV/V</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Overdue for calibration on {1}: {2}.</source>
        <translation>Am {1} war die Kalibrierung überfällig: {2}.</translation>
    </message>
    <message>
        <source>Own wires</source>
        <translation>Eigene Leitungen</translation>
    </message>
    <message>
        <source>P not known</source>
        <translation>P nicht bekannt</translation>
    </message>
    <message>
        <source>P(|true d| ≤ L) ≥ {1} passes, ≤ {2} fails</source>
        <translation>P(|wahre d| ≤ L) ≥ {1} besteht, ≤ {2} besteht nicht</translation>
    </message>
    <message>
        <source>Page {1}</source>
        <translation>Seite {1}</translation>
    </message>
    <message>
        <source>Page {1} of {2}</source>
        <translation>Seite {1} von {2}</translation>
    </message>
    <message>
        <source>Pair each reading of one with the reading of the other taken at the same time</source>
        <translation>Jeden Messwert der einen mit dem gleichzeitigen der anderen paaren</translation>
    </message>
    <message>
        <source>Part the leads that touch</source>
        <translation>Die sich berührenden Leitungen trennen</translation>
    </message>
    <message>
        <source>Pass: {1}.</source>
        <translation>Bestanden: {1}.</translation>
    </message>
    <message>
        <source>Paste fewer numbers, or their mean</source>
        <translation>Weniger Zahlen einfügen oder ihren Mittelwert</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>Pin {1} stands in the list twice, as {2} and as {3}</source>
        <translation>Stift {1} steht zweimal in der Liste, als {2} und als {3}</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>Pins and jumpers have no fault.</source>
        <translation>Stifte und Steckbrücken haben keinen Fehler.</translation>
    </message>
    <message>
        <source>Pins of one connector that follow each other are neighbours.</source>
        <translation>Aufeinanderfolgende Stifte eines Steckers sind Nachbarn.</translation>
    </message>
    <message>
        <source>Pins with the jumpers of {1}</source>
        <translation>Stifte mit den Steckbrücken von {1}</translation>
    </message>
    <message>
        <source>Plan and wiring, to be taken to the article before the check.</source>
        <translation>Plan und Verdrahtung, vor der Prüfung zum Prüfling mitzunehmen.</translation>
    </message>
    <message>
        <source>Plan: steps and what they should show</source>
        <translation>Plan: Stufen und was sie zeigen sollen</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio</source>
        <translation>Querdehnzahl</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio must lie between 0 and 0.5</source>
        <translation>Die Querdehnzahl muss zwischen 0 und 0,5 liegen</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio of a metal within 0.01</source>
        <translation>Querdehnzahl eines Metalls auf 0,01</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Polarity is the sign of the change of the output while the shunt alone is closed.</source>
        <translation>Die Polarität ist das Vorzeichen der Signaländerung, während nur dieser Shunt geschlossen ist.</translation>
    </message>
    <message>
        <source>Polarity reversed</source>
        <translation>Polarität umgekehrt</translation>
    </message>
    <message>
        <source>Polarity was reversed</source>
        <translation>Polarität wurde umgekehrt</translation>
    </message>
    <message>
        <source>Possible causes are looked for in checks that do not pass, and in those whose readings are off their line by more than their uncertainties explain (probability below 5 %). The others were not diagnosed.</source>
        <translation>Mögliche Ursachen werden bei Prüfungen gesucht, die nicht bestehen, und bei solchen, deren Messwerte weiter von ihrer Geraden abweichen, als ihre Unsicherheiten erklären (Wahrscheinlichkeit unter 5 %). Die übrigen wurden nicht diagnostiziert.</translation>
    </message>
    <message>
        <source>Possible causes, the likeliest first</source>
        <translation>Mögliche Ursachen, die wahrscheinlichste zuerst</translation>
    </message>
    <message>
        <source>Potential of S+, whole network {1}</source>
        <translation>Potential von S+, ganzes Netzwerk {1}</translation>
    </message>
    <message>
        <source>Potential of S-, the same network</source>
        <translation>Potential von S-, dasselbe Netzwerk</translation>
    </message>
    <message>
        <source>Pre-test against post-test</source>
        <translation>Vorprüfung gegen Nachprüfung</translation>
    </message>
    <message>
        <source>Prepared</source>
        <translation>Erstellt</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>Erstellt von</translation>
    </message>
    <message>
        <source>Printed on</source>
        <translation>Gedruckt am</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programm</translation>
    </message>
    <message>
        <source>Put a cell that holds the separator in quotation marks</source>
        <translation>Eine Zelle, die das Trennzeichen enthält, in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>Put a cell that holds the separator in quotation marks, and leave no cell out</source>
        <translation>Eine Zelle, die das Trennzeichen enthält, in Anführungszeichen setzen und keine Zelle auslassen</translation>
    </message>
    <message>
        <source>Put it beside the program, or export the recording as text</source>
        <translation>Neben das Programm legen oder die Aufzeichnung als Text exportieren</translation>
    </message>
    <message>
        <source>Put something else into the pattern</source>
        <translation>Etwas anderes in das Muster setzen</translation>
    </message>
    <message>
        <source>Put the exchanged leads where they belong</source>
        <translation>Die vertauschten Leitungen dorthin legen, wo sie hingehören</translation>
    </message>
    <message>
        <source>Put {1} there in a text editor</source>
        <translation>Dort in einem Texteditor einsetzen: {1}</translation>
    </message>
    <message>
        <source>Put {n} into the pattern, or begin with another number</source>
        <translation>{n} in das Muster setzen oder mit einer anderen Zahl beginnen</translation>
    </message>
    <message>
        <source>Quarter bridge, three-wire</source>
        <translation>Viertelbrücke, Dreileiter</translation>
    </message>
    <message>
        <source>Quarter bridge, two-wire</source>
        <translation>Viertelbrücke, Zweileiter</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Rated output</source>
        <translation>Nennkennwert</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Noch einmal lesen</translation>
    </message>
    <message>
        <source>Read the bridge factor N or the kind of bridge from the instrument itself.</source>
        <translation>Den Brückenfaktor N oder die Brückenart am Gerät selbst ablesen.</translation>
    </message>
    <message>
        <source>Read unit and scale of the channel from the instrument itself, and the unit at the head of its recording.</source>
        <translation>Einheit und Skalierung des Kanals am Gerät selbst ablesen, und die Einheit im Kopf seiner Aufzeichnung.</translation>
    </message>
    <message>
        <source>Read {1} from the instrument itself. Where they are as entered, connect a bridge simulator of known mV/V in place of the bridge: it is the gain or the excitation if that reads off by the same share.</source>
        <translation>{1} am Gerät selbst ablesen. Stimmen sie mit dem Eingetragenen überein, anstelle der Brücke einen Brückensimulator mit bekannten mV/V anschließen: Weicht auch dieser um denselben Anteil ab, ist es die Verstärkung oder die Speisung.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Reading of step {1} is off</source>
        <translation>Messwert der Stufe {1} weicht ab</translation>
    </message>
    <message>
        <source>Reading: {1}</source>
        <translation>Messwert: {1}</translation>
    </message>
    <message>
        <source>Readings are taken as changes from the first zero; what the zero moves before it is not seen.</source>
        <translation>Messwerte gelten als Änderungen ab der ersten Null; was der Nullpunkt sich vorher bewegt, wird nicht gesehen.</translation>
    </message>
    <message>
        <source>Readings depend on it</source>
        <translation>Messwerte hängen davon ab</translation>
    </message>
    <message>
        <source>Readings do not follow the shunts</source>
        <translation>Messwerte folgen den Shunts nicht</translation>
    </message>
    <message>
        <source>Readings in</source>
        <translation>Zeigt in</translation>
    </message>
    <message>
        <source>Readings of {1} do not follow the shunts</source>
        <translation>Messwerte von {1} folgen den Shunts nicht</translation>
    </message>
    <message>
        <source>Readings stop at a lower limit</source>
        <translation>Messwerte enden an einer unteren Grenze</translation>
    </message>
    <message>
        <source>Readings stop at an upper limit</source>
        <translation>Messwerte enden an einer oberen Grenze</translation>
    </message>
    <message>
        <source>Readings stop at the range</source>
        <translation>Messwerte enden am Bereich</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Begründung</translation>
    </message>
    <message>
        <source>Record for longer</source>
        <translation>Länger aufzeichnen</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Recording SHA-256</source>
        <translation>SHA-256 der Aufzeichnung</translation>
    </message>
    <message>
        <source>Relative change of {1}</source>
        <translation>Relative Änderung von {1}</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Remarks on {1}</source>
        <translation>Anmerkungen zu {1}</translation>
    </message>
    <message>
        <source>Remove columns and rows that are not used</source>
        <translation>Spalten und Zeilen entfernen, die nicht gebraucht werden</translation>
    </message>
    <message>
        <source>Remove one first</source>
        <translation>Zuerst eines entfernen</translation>
    </message>
    <message>
        <source>Remove one of the two in a text editor</source>
        <translation>In einem Texteditor eines von beiden entfernen</translation>
    </message>
    <message>
        <source>Remove the key “at”</source>
        <translation>Den Schlüssel „at“ entfernen</translation>
    </message>
    <message>
        <source>Reopen the check, or choose another</source>
        <translation>Die Prüfung wieder öffnen oder eine andere wählen</translation>
    </message>
    <message>
        <source>Repeats of both checks that would tell</source>
        <translation>Wiederholungen beider Prüfungen, die es entschieden</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>Residual deviation</source>
        <translation>Reststreuung</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Resistance of each lead</source>
        <translation>Widerstand jeder Leitung</translation>
    </message>
    <message>
        <source>Resistance, Ω</source>
        <translation>Widerstand, Ω</translation>
    </message>
    <message>
        <source>Resistor</source>
        <translation>Bauteil</translation>
    </message>
    <message>
        <source>Resistor {1} changed or was replaced</source>
        <translation>Widerstand {1} hat sich geändert oder wurde ersetzt</translation>
    </message>
    <message>
        <source>Resistor {1} is needed as {2} and as {3} at once.</source>
        <translation>Widerstand {1} wird als {2} und als {3} zugleich gebraucht.</translation>
    </message>
    <message>
        <source>Resistor {1} never closed</source>
        <translation>Widerstand {1} nie geschlossen</translation>
    </message>
    <message>
        <source>Resistor {1} off its value</source>
        <translation>Widerstand {1} weicht von seinem Wert ab</translation>
    </message>
    <message>
        <source>Resistors</source>
        <translation>Widerstände</translation>
    </message>
    <message>
        <source>Resistors {1} exchanged</source>
        <translation>Widerstände {1} vertauscht</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Returned by {1} on {2}: {3}</source>
        <translation>Zurückgegeben von {1} am {2}: {3}</translation>
    </message>
    <message>
        <source>Reversed signal or excitation wires turn every sign round, both together leave them as they are.</source>
        <translation>Vertauschte Signal- oder Speiseleitungen kehren jedes Vorzeichen um, beide zusammen lassen sie, wie sie sind.</translation>
    </message>
    <message>
        <source>Reviewed</source>
        <translation>Durchgesehen</translation>
    </message>
    <message>
        <source>Reviewer&apos;s summary</source>
        <translation>Zusammenfassung zur Durchsicht</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Round it to whole micro-ohms</source>
        <translation>Auf ganze Mikroohm runden</translation>
    </message>
    <message>
        <source>Run by</source>
        <translation>Durchgeführt von</translation>
    </message>
    <message>
        <source>Run through it twice</source>
        <translation>Ihn zweimal durchlaufen</translation>
    </message>
    <message>
        <source>Run {1} of the {2} in the recording.</source>
        <translation>Durchlauf {1} von {2} in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>Sample rate</source>
        <translation>Abtastrate</translation>
    </message>
    <message>
        <source>Save a shorter recording or fewer channels</source>
        <translation>Eine kürzere Aufzeichnung oder weniger Kanäle speichern</translation>
    </message>
    <message>
        <source>Save a vector of records</source>
        <translation>Einen Vektor von Datensätzen speichern</translation>
    </message>
    <message>
        <source>Save a vector or a matrix</source>
        <translation>Einen Vektor oder eine Matrix speichern</translation>
    </message>
    <message>
        <source>Save an array of numbers</source>
        <translation>Ein Feld von Zahlen speichern</translation>
    </message>
    <message>
        <source>Save fewer columns</source>
        <translation>Weniger Spalten speichern</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation>Noch einmal speichern</translation>
    </message>
    <message>
        <source>Save it again, or export the recording as text</source>
        <translation>Noch einmal speichern oder die Aufzeichnung als Text exportieren</translation>
    </message>
    <message>
        <source>Save it anew with this program</source>
        <translation>Mit diesem Programm neu speichern</translation>
    </message>
    <message>
        <source>Save it as UTF-8 in a text editor, or open a backup</source>
        <translation>In einem Texteditor als UTF-8 speichern oder eine Sicherung öffnen</translation>
    </message>
    <message>
        <source>Save it in another place as well</source>
        <translation>Auch an einem anderen Ort speichern</translation>
    </message>
    <message>
        <source>Save it in another place, or mend the cause and save again</source>
        <translation>An einem anderen Ort speichern, oder die Ursache beheben und noch einmal speichern</translation>
    </message>
    <message>
        <source>Save its sheet as CSV and choose that file</source>
        <translation>Das Blatt als CSV speichern und diese Datei wählen</translation>
    </message>
    <message>
        <source>Save the array again</source>
        <translation>Das Feld noch einmal speichern</translation>
    </message>
    <message>
        <source>Save the channels as vectors of one length</source>
        <translation>Die Kanäle als Vektoren einer Länge speichern</translation>
    </message>
    <message>
        <source>Save the file as CSV in UTF-8</source>
        <translation>Die Datei als CSV in UTF-8 speichern</translation>
    </message>
    <message>
        <source>Say which column it is</source>
        <translation>Angeben, welche Spalte es ist</translation>
    </message>
    <message>
        <source>Say which of them is ignored</source>
        <translation>Angeben, welche davon nicht gilt</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skalierung</translation>
    </message>
    <message>
        <source>Scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Scatter of the residuals, {1}</source>
        <translation>Streuung der Residuen, {1}</translation>
    </message>
    <message>
        <source>Scope chain is the uncertainty of the expected reading: arms, leads, shunts and instrument. It decides pass or fail. Scope load is the uncertainty of the load that a step simulates, as read: it adds the rated output. Neither covers gauge bond or alignment.</source>
        <translation>Bereich Messkette ist die Unsicherheit des erwarteten Messwerts: Zweige, Leitungen, Shunts und Gerät. Er entscheidet über bestanden oder nicht. Bereich Last ist die Unsicherheit der Last, die eine Stufe simuliert, wie abgelesen: Hinzu kommt der Nennkennwert. Keiner umfasst DMS-Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>Scope chain is the uncertainty of the expected reading: arms, leads, shunts and instrument. It decides pass or fail. The gauge factor plays no part in it. Scope strain is the uncertainty of the strain that a step simulates, as read: it adds gauge factor and temperature. Neither covers gauge bond or alignment.</source>
        <translation>Bereich Messkette ist die Unsicherheit des erwarteten Messwerts: Zweige, Leitungen, Shunts und Gerät. Er entscheidet über bestanden oder nicht. Der k-Faktor spielt darin keine Rolle. Bereich Dehnung ist die Unsicherheit der Dehnung, die eine Stufe simuliert, wie abgelesen: Hinzu kommen k-Faktor und Temperatur. Keiner umfasst DMS-Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>Scope {1}</source>
        <translation>Bereich {1}</translation>
    </message>
    <message numerus="yes">
        <source>Seed {1}, {n} questions, {2}</source>
        <extracomment>{n} is a count. In English for one: Seed {1}, {n} question, {2}</extracomment>
        <translation>
            <numerusform>Startzahl {1}, {n} Aufgabe, {2}</numerusform>
            <numerusform>Startzahl {1}, {n} Aufgaben, {2}</numerusform>
        </translation>
    </message>
    <message>
        <source>Self-heating: {1}</source>
        <translation>Eigenerwärmung: {1}</translation>
    </message>
    <message>
        <source>Sense lead open</source>
        <translation>Fühlerleitung offen</translation>
    </message>
    <message>
        <source>Sense leads not used</source>
        <translation>Fühlerleitungen nicht benutzt</translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Set its least limit to zero first</source>
        <translation>Zuerst seinen Mindestgrenzwert auf null setzen</translation>
    </message>
    <message>
        <source>Set the bridge factor to {1}</source>
        <translation>Den Brückenfaktor auf {1} einstellen</translation>
    </message>
    <message>
        <source>Set the channel&apos;s reading unit to that of the recording, or export the recording in {1}</source>
        <translation>Die Anzeigeeinheit des Kanals auf die der Aufzeichnung setzen oder die Aufzeichnung in {1} exportieren</translation>
    </message>
    <message>
        <source>Set the clock of this machine</source>
        <translation>Die Uhr dieses Rechners stellen</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Settle them, or return the record</source>
        <translation>Sie erledigen oder das Protokoll zurückgeben</translation>
    </message>
    <message>
        <source>Settle, s</source>
        <translation>Einschwingen, s</translation>
    </message>
    <message>
        <source>Settled to</source>
        <translation>Eingeschwungen auf</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Share ({1}), %</source>
        <translation>Anteil ({1}), %</translation>
    </message>
    <message>
        <source>Share, %</source>
        <translation>Anteil, %</translation>
    </message>
    <message>
        <source>Shear strain</source>
        <translation>Schubverzerrung</translation>
    </message>
    <message>
        <source>Shorten it</source>
        <translation>Kürzen</translation>
    </message>
    <message>
        <source>Shorten it in a text editor</source>
        <translation>In einem Texteditor kürzen</translation>
    </message>
    <message>
        <source>Shorten it to {1} bytes</source>
        <translation>Auf {1} Bytes kürzen</translation>
    </message>
    <message>
        <source>Shown, {1}</source>
        <translation>Gezeigt, {1}</translation>
    </message>
    <message>
        <source>Shunt</source>
        <translation>Shunt</translation>
    </message>
    <message>
        <source>Shunt A closes.</source>
        <translation>Shunt A schließt.</translation>
    </message>
    <message>
        <source>Shunt A closes. Which way does the output go?</source>
        <translation>Shunt A schließt. In welche Richtung geht das Signal?</translation>
    </message>
    <message>
        <source>Shunt calibration report</source>
        <translation>Bericht zur Shuntkalibrierung</translation>
    </message>
    <message>
        <source>Shunt practice: answers</source>
        <translation>Shuntübung: Lösungen</translation>
    </message>
    <message>
        <source>Shunt practice: questions</source>
        <translation>Shuntübung: Aufgaben</translation>
    </message>
    <message>
        <source>Shunt {1}</source>
        <translation>Shunt {1}</translation>
    </message>
    <message>
        <source>Shunt {1} lies {2}</source>
        <translation>Shunt {1} liegt {2}</translation>
    </message>
    <message>
        <source>Shunt {1} makes the instrument show {2}.</source>
        <translation>Shunt {1} lässt das Gerät {2} zeigen.</translation>
    </message>
    <message>
        <source>Shunt {1}, {2}</source>
        <translation>Shunt {1}, {2}</translation>
    </message>
    <message>
        <source>Shunt {1}: in the whole network {2}; the formula is off by {3}. {4}</source>
        <translation>Shunt {1}: im ganzen Netzwerk {2}; die Formel weicht um {3} ab. {4}</translation>
    </message>
    <message>
        <source>Shunt {1}: v = R3/(R3 + R4) − R2/(R1 + R2) keeps its four arms; the shunt lies over none.</source>
        <translation>Shunt {1}: v = R3/(R3 + R4) − R2/(R1 + R2) behält seine vier Zweige; der Shunt liegt über keinem.</translation>
    </message>
    <message>
        <source>Shunt {1}: {2}</source>
        <translation>Shunt {1}: {2}</translation>
    </message>
    <message>
        <source>Shunts</source>
        <translation>Shunts</translation>
    </message>
    <message>
        <source>Shunts A and B close together.</source>
        <translation>Die Shunts A und B schließen gemeinsam.</translation>
    </message>
    <message>
        <source>Shunts A and B close together. Which way does the output go?</source>
        <translation>Die Shunts A und B schließen gemeinsam. In welche Richtung geht das Signal?</translation>
    </message>
    <message>
        <source>Shunts at the gauge instead of at the instrument</source>
        <translation>Shunts am DMS statt am Gerät</translation>
    </message>
    <message>
        <source>Shunts at the instrument instead of at the gauge</source>
        <translation>Shunts am Gerät statt am DMS</translation>
    </message>
    <message>
        <source>Shunts closed</source>
        <translation>Geschlossene Shunts</translation>
    </message>
    <message>
        <source>Shunts on the neighbouring arm (1 for 2, 3 for 4)</source>
        <translation>Shunts am Nachbarzweig (1 für 2, 3 für 4)</translation>
    </message>
    <message>
        <source>Shunts on the neighbouring arm (1 for 4, 2 for 3)</source>
        <translation>Shunts am Nachbarzweig (1 für 4, 2 für 3)</translation>
    </message>
    <message>
        <source>Shunts {1} never closed</source>
        <translation>Shunts {1} nie geschlossen</translation>
    </message>
    <message>
        <source>Signal wires put right</source>
        <translation>Signalleitungen berichtigt</translation>
    </message>
    <message>
        <source>Signal wires reversed</source>
        <translation>Signalleitungen vertauscht</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Signed so far</source>
        <translation>Bisher unterschrieben</translation>
    </message>
    <message>
        <source>Signs and sizes of all readings follow from it, and shunts at the terminals lie elsewhere than they look.</source>
        <translation>Vorzeichen und Größen aller Messwerte folgen daraus, und Shunts an den Anschlüssen liegen anders, als es aussieht.</translation>
    </message>
    <message>
        <source>Simulated</source>
        <translation>Simuliert</translation>
    </message>
    <message>
        <source>Simulated is the strain that would change the output by as much.</source>
        <translation>Simuliert ist die Dehnung, die das Signal um ebenso viel änderte.</translation>
    </message>
    <message>
        <source>Simulated load</source>
        <translation>Simulierte Last</translation>
    </message>
    <message>
        <source>Simulated strain</source>
        <translation>Simulierte Dehnung</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Slope as judged</source>
        <translation>Steigung wie beurteilt</translation>
    </message>
    <message>
        <source>Slope, least squares</source>
        <translation>Steigung, kleinste Quadrate</translation>
    </message>
    <message>
        <source>Slope, {1}</source>
        <translation>Steigung, {1}</translation>
    </message>
    <message>
        <source>So does the zero: {1} beside {2}.</source>
        <translation>Ebenso der Nullpunkt: {1} neben {2}.</translation>
    </message>
    <message numerus="yes">
        <source>So it is in {n} steps.</source>
        <extracomment>{n} is a count. In English for one: So it is in {n} step.</extracomment>
        <translation>
            <numerusform>So ist es bei {n} Stufe.</numerusform>
            <numerusform>So ist es bei {n} Stufen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Solved as it is connected: Δv = {1}</source>
        <translation>Gelöst, wie sie angeschlossen ist: Δv = {1}</translation>
    </message>
    <message>
        <source>Sort the levels by time</source>
        <translation>Die Plateaus nach der Zeit sortieren</translation>
    </message>
    <message>
        <source>Split the document into several</source>
        <translation>Das Dokument in mehrere teilen</translation>
    </message>
    <message>
        <source>Split the file</source>
        <translation>Die Datei teilen</translation>
    </message>
    <message>
        <source>Split the list over several documents</source>
        <translation>Die Liste auf mehrere Dokumente verteilen</translation>
    </message>
    <message>
        <source>Standard uncertainty of the deviation, chain: expected, reading, zero reading</source>
        <translation>Standardunsicherheit der Abweichung, Messkette: erwarteter Wert, Messwert, Nullwert</translation>
    </message>
    <message>
        <source>Standardised residual</source>
        <translation>Standardisiertes Residuum</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State an uncertainty above zero, or leave the column out when none are known</source>
        <translation>Eine Unsicherheit über null angeben, oder die Spalte weglassen, wenn keine bekannt sind</translation>
    </message>
    <message>
        <source>State it as a tolerance to choose its distribution</source>
        <translation>Als Toleranz angeben, um die Verteilung zu wählen</translation>
    </message>
    <message>
        <source>State it as expanded, or as a tolerance with normal distribution</source>
        <translation>Als erweiterte Unsicherheit angeben oder als Toleranz mit Normalverteilung</translation>
    </message>
    <message>
        <source>State the rounding of a reading in the last rows of the Uncertainties page</source>
        <translation>Die Auflösung eines Messwerts in den letzten Zeilen der Seite Unsicherheiten angeben</translation>
    </message>
    <message>
        <source>State the uncertainty of the mean</source>
        <translation>Die Unsicherheit des Mittelwerts angeben</translation>
    </message>
    <message>
        <source>Stated or assumed</source>
        <translation>Angegeben oder angenommen</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Status: {1}.</source>
        <translation>Stand: {1}.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Step {1}</source>
        <translation>Stufe {1}</translation>
    </message>
    <message>
        <source>Step {1} ({2})</source>
        <translation>Stufe {1} ({2})</translation>
    </message>
    <message>
        <source>Step {1} cannot be decided. {2}</source>
        <translation>Stufe {1} ist nicht entscheidbar. {2}</translation>
    </message>
    <message>
        <source>Step {1} cannot be predicted: {2}</source>
        <translation>Stufe {1} ist nicht vorherzusagen: {2}</translation>
    </message>
    <message>
        <source>Step {1} changes most: it reads {2} instead of {3}, {4}.</source>
        <translation>Stufe {1} ändert sich am meisten: Sie zeigt {2} statt {3}, {4}.</translation>
    </message>
    <message>
        <source>Step {1} fails. {2}</source>
        <translation>Stufe {1} besteht nicht. {2}</translation>
    </message>
    <message>
        <source>Step {1} is compared with step {2} of {3}, which closes the same.</source>
        <translation>Stufe {1} wird mit Stufe {2} von {3} verglichen, die dasselbe schließt.</translation>
    </message>
    <message>
        <source>Step {1} moved by {2}, where {3} would count as unchanged.</source>
        <translation>Stufe {1} bewegte sich um {2}, wo {3} als unverändert gälte.</translation>
    </message>
    <message>
        <source>Step {1} of {2} has nothing to be compared with.</source>
        <translation>Stufe {1} von {2} hat nichts zum Vergleich.</translation>
    </message>
    <message>
        <source>Step {1}, note: {2}</source>
        <translation>Stufe {1}, Notiz: {2}</translation>
    </message>
    <message>
        <source>Step {1}. {2}</source>
        <translation>Stufe {1}. {2}</translation>
    </message>
    <message>
        <source>Step {4} is open as well: {2} beside {3}.</source>
        <translation>Auch Stufe {4} ist offen: {2} neben {3}.</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Steps judged</source>
        <translation>Beurteilte Stufen</translation>
    </message>
    <message>
        <source>Steps of {1}</source>
        <translation>Stufen von {1}</translation>
    </message>
    <message>
        <source>Steps that share inputs err together; whoever combines steps needs these coefficients.</source>
        <translation>Stufen mit gemeinsamen Eingangsgrößen irren gemeinsam; wer Stufen verknüpft, braucht diese Koeffizienten.</translation>
    </message>
    <message>
        <source>Steps {1} and {2} taken for one another</source>
        <translation>Stufen {1} und {2} miteinander verwechselt</translation>
    </message>
    <message>
        <source>Steps {1} and {2} taken for one another, one of them a zero</source>
        <translation>Stufen {1} und {2} miteinander verwechselt, eine davon eine Nullstufe</translation>
    </message>
    <message>
        <source>Steps {1} and {2} taken in the wrong order</source>
        <translation>Stufen {1} und {2} in falscher Reihenfolge aufgenommen</translation>
    </message>
    <message>
        <source>Steps {1} and {2} taken in the wrong order, one of them a zero</source>
        <translation>Stufen {1} und {2} in falscher Reihenfolge aufgenommen, eine davon eine Nullstufe</translation>
    </message>
    <message>
        <source>Steps {1} are held without a break: each has the level {2}.</source>
        <translation>Die Stufen {1} werden ohne Unterbrechung gehalten: Jede hat das Plateau {2}.</translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} are missing.</source>
        <extracomment>{n} is a count. In English for one: Step {1} is missing.</extracomment>
        <translation>
            <numerusform>Stufe {1} fehlt.</numerusform>
            <numerusform>Die Stufen {1} fehlen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} are not compared: {2}</source>
        <extracomment>{n} is a count. In English for one: Step {1} is not compared: {2}</extracomment>
        <translation>
            <numerusform>Stufe {1} wird nicht verglichen: {2}</numerusform>
            <numerusform>Die Stufen {1} werden nicht verglichen: {2}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} are then off by {2}.</source>
        <extracomment>{n} is a count. In English for one: Step {1} is then off by {2}.</extracomment>
        <translation>
            <numerusform>Stufe {1} weicht dann um {2} ab.</numerusform>
            <numerusform>Die Stufen {1} weichen dann um {2} ab.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} cannot be read any more ({2}: {3}).</source>
        <extracomment>{n} is a count. In English for one: Step {1} cannot be read any more ({2}: {3}).</extracomment>
        <translation>
            <numerusform>Stufe {1} ist nicht mehr zu lesen ({2}: {3}).</numerusform>
            <numerusform>Die Stufen {1} sind nicht mehr zu lesen ({2}: {3}).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} do not move the reading any more.</source>
        <extracomment>{n} is a count. In English for one: Step {1} does not move the reading any more.</extracomment>
        <translation>
            <numerusform>Stufe {1} bewegt den Messwert nicht mehr.</numerusform>
            <numerusform>Die Stufen {1} bewegen den Messwert nicht mehr.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} have no uncertainty in scope {2}: {3}</source>
        <extracomment>{n} is a count. In English for one: Step {1} has no uncertainty in scope {2}: {3}</extracomment>
        <translation>
            <numerusform>Stufe {1} hat im Bereich {2} keine Unsicherheit: {3}</numerusform>
            <numerusform>Die Stufen {1} haben im Bereich {2} keine Unsicherheit: {3}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} have no uncertainty: {2}</source>
        <extracomment>{n} is a count. In English for one: Step {1} has no uncertainty: {2}</extracomment>
        <translation>
            <numerusform>Stufe {1} hat keine Unsicherheit: {2}</numerusform>
            <numerusform>Die Stufen {1} haben keine Unsicherheit: {2}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} lie beyond the ±{2}.</source>
        <extracomment>{n} is a count. In English for one: Step {1} lies beyond the ±{2}.</extracomment>
        <translation>
            <numerusform>Stufe {1} liegt jenseits der ±{2}.</numerusform>
            <numerusform>Die Stufen {1} liegen jenseits der ±{2}.</numerusform>
        </translation>
    </message>
    <message>
        <source>Steps {1} of {2} have nothing to be compared with.</source>
        <translation>Die Stufen {1} von {2} haben nichts zum Vergleich.</translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} turn their sign</source>
        <extracomment>{n} is a count. In English for one: Step {1} turns its sign</extracomment>
        <translation>
            <numerusform>Stufe {1} kehrt ihr Vorzeichen um</numerusform>
            <numerusform>Die Stufen {1} kehren ihr Vorzeichen um</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} were done again; the last levels are taken, not {2}.</source>
        <extracomment>{n} is a count. In English for one: Step {1} was done again; the last level is taken, not {2}.</extracomment>
        <translation>
            <numerusform>Stufe {1} wurde wiederholt; das letzte Plateau gilt, nicht {2}.</numerusform>
            <numerusform>Die Stufen {1} wurden wiederholt; die letzten Plateaus gelten, nicht {2}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Steps {1} were done in another order than planned, or their shunts are exchanged.</source>
        <extracomment>{n} is a count. In English for one: Step {1} was done in another place than planned, or its shunt is another&apos;s.</extracomment>
        <translation>
            <numerusform>Stufe {1} wurde an anderer Stelle als geplant durchgeführt, oder ihr Shunt gehört zu einer anderen.</numerusform>
            <numerusform>Die Stufen {1} wurden in anderer Folge als geplant durchgeführt, oder ihre Shunts sind vertauscht.</numerusform>
        </translation>
    </message>
    <message>
        <source>Steps {1}, all {3} ones among them, are not compared: {2}</source>
        <translation>Die Stufen {1}, darunter alle {3}, werden nicht verglichen: {2}</translation>
    </message>
    <message>
        <source>Steps {4} are open as well, most of all step {1}: {2} beside {3}.</source>
        <translation>Auch die Stufen {4} sind offen, am meisten Stufe {1}: {2} neben {3}.</translation>
    </message>
    <message>
        <source>Steps {4} moved, most of all step {1} by {2}, where {3} would count as unchanged.</source>
        <translation>Die Stufen {4} bewegten sich, am meisten Stufe {1} um {2}, wo {3} als unverändert gälte.</translation>
    </message>
    <message>
        <source>Strain</source>
        <translation>Dehnung</translation>
    </message>
    <message>
        <source>Strain data</source>
        <translation>Dehnungsdaten</translation>
    </message>
    <message>
        <source>Strain of gauge 1</source>
        <translation>Dehnung von DMS 1</translation>
    </message>
    <message>
        <source>Structure</source>
        <translation>Struktur</translation>
    </message>
    <message>
        <source>Structure connected to P+</source>
        <translation>Struktur mit P+ verbunden</translation>
    </message>
    <message>
        <source>Structure connected to P-</source>
        <translation>Struktur mit P- verbunden</translation>
    </message>
    <message>
        <source>Structure connected to nothing</source>
        <translation>Struktur mit nichts verbunden</translation>
    </message>
    <message>
        <source>Submit it again when something has changed</source>
        <translation>Neu vorlegen, wenn sich etwas geändert hat</translation>
    </message>
    <message>
        <source>Submitted by {1} on {2}; changed since, so that it has to be submitted again.</source>
        <translation>Vorgelegt von {1} am {2}; seither geändert, daher neu vorzulegen.</translation>
    </message>
    <message>
        <source>Submitted for review by {1} on {2}.</source>
        <translation>Zur Durchsicht vorgelegt von {1} am {2}.</translation>
    </message>
    <message>
        <source>Such a fault is</source>
        <translation>Ein solcher Fehler ist</translation>
    </message>
    <message>
        <source>Such a step cannot tell a sound chain from a dead one.</source>
        <translation>Eine solche Stufe kann eine intakte Messkette nicht von einer toten unterscheiden.</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Zusammenfassung</translation>
    </message>
    <message>
        <source>Suspected cause: {1}. {2} A suspicion until a measurement confirms it: {3}</source>
        <translation>Vermutete Ursache: {1}. {2} Ein Verdacht, bis eine Messung ihn bestätigt: {3}</translation>
    </message>
    <message>
        <source>Suspected causes that this plan cannot tell apart: {1}. {2} Until then each is a suspicion.</source>
        <translation>Vermutete Ursachen, die dieser Plan nicht unterscheiden kann: {1}. {2} Bis dahin ist jede ein Verdacht.</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring a shunt or measuring with an ohmmeter.</source>
        <translation>Vor dem Verdrahten eines Shunts oder Messen mit dem Ohmmeter die Speisung abschalten.</translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring or ohmmeter work.</source>
        <translation>Vor Arbeiten an der Verdrahtung oder mit dem Ohmmeter die Speisung abschalten.</translation>
    </message>
    <message>
        <source>Switch the excitation off before you wire or hold an ohmmeter to anything, see that it cannot be switched on meanwhile, and wait until cables and filters have discharged.</source>
        <translation>Die Speisung abschalten, bevor etwas verdrahtet oder ein Ohmmeter angehalten wird, gegen Wiedereinschalten sichern und warten, bis Kabel und Filter entladen sind.</translation>
    </message>
    <message>
        <source>Take a fitted resistor out, or raise the number of positions</source>
        <translation>Einen eingebauten Widerstand herausnehmen oder die Zahl der Plätze erhöhen</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Take lead {1} as whole</source>
        <translation>Leitung {1} als heil annehmen</translation>
    </message>
    <message>
        <source>Take leads {1} as apart</source>
        <translation>Leitungen {1} als getrennt annehmen</translation>
    </message>
    <message>
        <source>Take one out</source>
        <translation>Eine herausnehmen</translation>
    </message>
    <message>
        <source>Take out the jumper that joins them before you switch the excitation on</source>
        <translation>Vor dem Einschalten der Speisung die Steckbrücke herausnehmen, die sie verbindet</translation>
    </message>
    <message>
        <source>Take the least times for all steps</source>
        <translation>Bei allen Stufen die kürzesten Zeiten nehmen</translation>
    </message>
    <message>
        <source>Take the least times for {1}</source>
        <translation>Für {1} die kürzesten Zeiten nehmen</translation>
    </message>
    <message>
        <source>Take the line out of the file, or replace the stock</source>
        <translation>Die Zeile aus der Datei nehmen oder den Bestand ersetzen</translation>
    </message>
    <message>
        <source>Take the ohmmeter off and every jumper out that the next step does not need before you switch the excitation on again, and let the bridge warm up before you read.</source>
        <translation>Vor dem Wiedereinschalten der Speisung das Ohmmeter und jede Steckbrücke entfernen, die die nächste Stufe nicht braucht, und die Brücke vor dem Ablesen warm werden lassen.</translation>
    </message>
    <message>
        <source>Take the pin out first, or start from another channel</source>
        <translation>Zuerst den Stift herausnehmen oder von einem anderen Kanal ausgehen</translation>
    </message>
    <message>
        <source>Take the readings of the whole sequence</source>
        <translation>Die Messwerte des ganzen Ablaufs aufnehmen</translation>
    </message>
    <message>
        <source>Take the shunt out first, or start from another channel</source>
        <translation>Zuerst den Shunt herausnehmen oder von einem anderen Kanal ausgehen</translation>
    </message>
    <message>
        <source>Take the space out</source>
        <translation>Das Leerzeichen herausnehmen</translation>
    </message>
    <message>
        <source>Take the stock&apos;s values</source>
        <translation>Die Werte des Bestands übernehmen</translation>
    </message>
    <message>
        <source>Take {1} again: it reads as expected.</source>
        <translation>{1} wiederholen: Sie zeigt den erwarteten Wert.</translation>
    </message>
    <message>
        <source>Take {1} out</source>
        <translation>{1} herausnehmen</translation>
    </message>
    <message>
        <source>Test data may be corrected by it once it is confirmed.</source>
        <translation>Nach Bestätigung dürfen Messdaten danach korrigiert werden.</translation>
    </message>
    <message>
        <source>Textbook formulas</source>
        <translation>Formeln des Lehrbuchs</translation>
    </message>
    <message>
        <source>That is</source>
        <translation>Das ist</translation>
    </message>
    <message>
        <source>That is far beyond what an instrument for strain gauges takes.</source>
        <translation>Das ist weit jenseits dessen, was ein Gerät für DMS aufnimmt.</translation>
    </message>
    <message>
        <source>That the gauges are reversed changes what a strain does, not what a shunt does.</source>
        <translation>Dass die DMS umgekehrt sind, ändert, was eine Dehnung bewirkt, nicht, was ein Shunt bewirkt.</translation>
    </message>
    <message>
        <source>The article&apos;s strain</source>
        <translation>Die Dehnung des Prüflings</translation>
    </message>
    <message>
        <source>The bridge cannot be worked out: {1}</source>
        <translation>Die Brücke lässt sich nicht berechnen: {1}</translation>
    </message>
    <message>
        <source>The bridge gives {1}, the instrument takes {2}.</source>
        <translation>Die Brücke gibt {1}, das Gerät nimmt {2} auf.</translation>
    </message>
    <message>
        <source>The bridge is not the one that the plan is for, and readings through it tell nothing of the article.</source>
        <translation>Die Brücke ist nicht die, für die der Plan gilt, und Messwerte über sie sagen nichts über den Prüfling.</translation>
    </message>
    <message>
        <source>The calibration of {1} is due {2}.</source>
        <translation>Die Kalibrierung von {1} ist fällig {2}.</translation>
    </message>
    <message>
        <source>The calibration of {1} was due {2}.</source>
        <translation>Die Kalibrierung von {1} war fällig {2}.</translation>
    </message>
    <message>
        <source>The changes are {1} times what is expected.</source>
        <translation>Die Änderungen sind das {1}-Fache des Erwarteten.</translation>
    </message>
    <message>
        <source>The changes are {1} times what is expected; zero reads {2}.</source>
        <translation>Die Änderungen sind das {1}-Fache des Erwarteten; der Nullwert ist {2}.</translation>
    </message>
    <message>
        <source>The channel has no shunts.</source>
        <translation>Der Kanal hat keine Shunts.</translation>
    </message>
    <message>
        <source>The channel has no steps.</source>
        <translation>Der Kanal hat keine Stufen.</translation>
    </message>
    <message>
        <source>The channel has not been checked.</source>
        <translation>Der Kanal wurde nicht geprüft.</translation>
    </message>
    <message>
        <source>The column &apos;{1}&apos; gives no unit of time: seconds are taken.</source>
        <translation>Die Spalte „{1}“ nennt keine Zeiteinheit: Sekunden sind angenommen.</translation>
    </message>
    <message>
        <source>The column &apos;{1}&apos; is taken for dates as spreadsheets count them, in days.</source>
        <translation>Die Spalte „{1}“ gilt als Tage, wie Tabellenkalkulationen sie zählen.</translation>
    </message>
    <message>
        <source>The column &apos;{1}&apos; rises throughout and is taken for the time in seconds.</source>
        <translation>Die Spalte „{1}“ steigt durchweg und gilt als Zeit in Sekunden.</translation>
    </message>
    <message>
        <source>The date {1} is no day: what was overdue for calibration then cannot be told.</source>
        <translation>Das Datum {1} ist kein Tag: Was an ihm zur Kalibrierung überfällig war, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>The date {1} may be day-first or month-first: {2} is taken.</source>
        <translation>Das Datum {1} kann mit dem Tag oder mit dem Monat beginnen: {2} ist angenommen.</translation>
    </message>
    <message>
        <source>The difference comes from the bridge&apos;s nonlinearity, which the instrument corrects.</source>
        <translation>Der Unterschied kommt von der Nichtlinearität der Brücke, die das Gerät korrigiert.</translation>
    </message>
    <message>
        <source>The difference comes from {1}.</source>
        <translation>Der Unterschied kommt von {1}.</translation>
    </message>
    <message>
        <source>The document has no channels.</source>
        <translation>Das Dokument hat keine Kanäle.</translation>
    </message>
    <message>
        <source>The document holds no history.</source>
        <translation>Das Dokument enthält keinen Verlauf.</translation>
    </message>
    <message>
        <source>The excitation is reversed: the source&apos;s plus side is on P-, and the sense pair with it.</source>
        <translation>Die Speisung ist vertauscht: Die Plusseite der Quelle liegt an P-, und das Fühlerpaar mit ihr.</translation>
    </message>
    <message>
        <source>The excitation is reversed: the source&apos;s plus side is on P-.</source>
        <translation>Die Speisung ist vertauscht: Die Plusseite der Quelle liegt an P-.</translation>
    </message>
    <message>
        <source>The expected {1} is no greater than its uncertainty of {2}.</source>
        <translation>Der erwartete Wert {1} ist nicht größer als seine Unsicherheit von {2}.</translation>
    </message>
    <message>
        <source>The file announces {1} samples and ends after {2}.</source>
        <translation>Die Datei kündigt {1} Abtastwerte an und endet nach {2}.</translation>
    </message>
    <message>
        <source>The file is as it was saved: its content has the fingerprint {1} that it states.</source>
        <translation>Die Datei ist, wie sie gespeichert wurde: Ihr Inhalt hat den Fingerabdruck {1}, den sie nennt.</translation>
    </message>
    <message>
        <source>The file states no fingerprint, so that it cannot be told whether it is as it was saved. Its content has the fingerprint {1}.</source>
        <translation>Die Datei nennt keinen Fingerabdruck, sodass nicht zu sagen ist, ob sie ist, wie sie gespeichert wurde. Ihr Inhalt hat den Fingerabdruck {1}.</translation>
    </message>
    <message>
        <source>The file was altered outside of the program: its content has the fingerprint {1}, and it states {2}.</source>
        <translation>Die Datei wurde außerhalb des Programms verändert: Ihr Inhalt hat den Fingerabdruck {1}, und sie nennt {2}.</translation>
    </message>
    <message>
        <source>The first column rises from sample to sample and is taken as the time in seconds.</source>
        <translation>Die erste Spalte steigt von Abtastwert zu Abtastwert und gilt als Zeit in Sekunden.</translation>
    </message>
    <message>
        <source>The first line names the columns; known are {1}</source>
        <translation>Die erste Zeile nennt die Spalten; bekannt sind {1}</translation>
    </message>
    <message>
        <source>The first {1} cannot be told apart by the readings of this plan.</source>
        <translation>Die ersten {1} lassen sich durch die Messwerte dieses Plans nicht unterscheiden.</translation>
    </message>
    <message>
        <source>The gain is unchanged: {1}.</source>
        <translation>Die Verstärkung ist unverändert: {1}.</translation>
    </message>
    <message>
        <source>The gain left its control limits: {1}.</source>
        <translation>Die Verstärkung verließ ihre Eingriffsgrenzen: {1}.</translation>
    </message>
    <message>
        <source>The gauge factor is {1}: no strain gauge has less than {2} or more than {3}.</source>
        <translation>Der k-Faktor ist {1}: Kein DMS hat weniger als {2} oder mehr als {3}.</translation>
    </message>
    <message>
        <source>The gauge factor set at the instrument is {1}: even with a bridge factor in it, no strain gauge asks for less than {2} or more than {3}.</source>
        <translation>Der am Gerät eingestellte k-Faktor ist {1}: Selbst mit einem Brückenfaktor darin verlangt kein DMS weniger als {2} oder mehr als {3}.</translation>
    </message>
    <message>
        <source>The gauges are reversed: each feels the opposite of what the template says.</source>
        <translation>Die DMS sind vertauscht: Jeder erfährt das Gegenteil dessen, was die Vorlage sagt.</translation>
    </message>
    <message>
        <source>The grid in arm {1} turns {2} into heat, {3} kW/m²; the usual range ends at {4} kW/m² (heat sink {5}; {6}).</source>
        <translation>Das Gitter in Zweig {1} setzt {2} in Wärme um, {3} kW/m²; der übliche Bereich endet bei {4} kW/m² (Wärmeableitung {5}; {6}).</translation>
    </message>
    <message>
        <source>The history does not hold together: entry {1} does not follow from those before it. An entry was altered, lost or put in.</source>
        <translation>Der Verlauf ist nicht schlüssig: Eintrag {1} folgt nicht aus denen davor. Ein Eintrag wurde geändert, ging verloren oder wurde eingefügt.</translation>
    </message>
    <message>
        <source>The instrument measures S- against S+, which turns the sign round.</source>
        <translation>Das Gerät misst S- gegen S+, was das Vorzeichen umkehrt.</translation>
    </message>
    <message>
        <source>The instrument multiplies the change of output in mV/V with its scale.</source>
        <translation>Das Gerät multipliziert die Änderung des Signals in mV/V mit seiner Skalierung.</translation>
    </message>
    <message>
        <source>The instrument reckons 4 times the change of output over gauge factor and bridge factor as set.</source>
        <translation>Das Gerät rechnet 4-mal die Änderung des Signals durch k-Faktor und Brückenfaktor wie eingestellt.</translation>
    </message>
    <message>
        <source>The instrument shows the change of output itself.</source>
        <translation>Das Gerät zeigt die Änderung des Signals selbst.</translation>
    </message>
    <message>
        <source>The instrument shows the signal itself: the change of output times the excitation.</source>
        <translation>Das Gerät zeigt die Spannung selbst: die Änderung des Signals mal die Speisung.</translation>
    </message>
    <message>
        <source>The instrument shows {1}: it reckons with the gauge factor and bridge factor as set and knows neither leads nor that a bridge is not linear.</source>
        <translation>Das Gerät zeigt {1}: Es rechnet mit k-Faktor und Brückenfaktor wie eingestellt und kennt weder Leitungen noch die Nichtlinearität einer Brücke.</translation>
    </message>
    <message>
        <source>The instrument shows {1}: it reckons with the gauge factor and bridge factor as set and knows nothing of reversed gauges.</source>
        <translation>Das Gerät zeigt {1}: Es rechnet mit k-Faktor und Brückenfaktor wie eingestellt und weiß nichts von umgekehrten DMS.</translation>
    </message>
    <message>
        <source>The instrument shows {1}: it reckons with the gauge factor and bridge factor as set and knows nothing of reversed wires.</source>
        <translation>Das Gerät zeigt {1}: Es rechnet mit k-Faktor und Brückenfaktor wie eingestellt und weiß nichts von umgekehrten Leitungen.</translation>
    </message>
    <message>
        <source>The instrument&apos;s range is not above 0 mV/V.</source>
        <translation>Der Bereich des Geräts ist nicht über 0 mV/V.</translation>
    </message>
    <message>
        <source>The jumpers of {1}</source>
        <translation>Die Steckbrücken von {1}</translation>
    </message>
    <message>
        <source>The largest change: step {1} reads {2} instead of {3}, {4}.</source>
        <translation>Die größte Änderung: Stufe {1} zeigt {2} statt {3}, {4}.</translation>
    </message>
    <message numerus="yes">
        <source>The levels can be read in {n} other ways that are about as likely.</source>
        <extracomment>{n} is a count. In English for one: The levels can be read in another way that is about as likely.</extracomment>
        <translation>
            <numerusform>Die Plateaus lassen sich noch auf eine andere, etwa gleich wahrscheinliche Art lesen.</numerusform>
            <numerusform>Die Plateaus lassen sich noch auf {n} andere, etwa gleich wahrscheinliche Arten lesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The levels {1} belong to no step.</source>
        <extracomment>{n} is a count. In English for one: The level {1} belongs to no step.</extracomment>
        <translation>
            <numerusform>Das Plateau {1} gehört zu keiner Stufe.</numerusform>
            <numerusform>Die Plateaus {1} gehören zu keiner Stufe.</numerusform>
        </translation>
    </message>
    <message>
        <source>The limit of {1} is below zero.</source>
        <translation>Der Grenzwert von {1} ist kleiner als null.</translation>
    </message>
    <message>
        <source>The limit of {1} is {2}: nothing can fail it.</source>
        <translation>Der Grenzwert von {1} ist {2}: Nichts kann ihn verfehlen.</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Die Gerade</translation>
    </message>
    <message>
        <source>The load</source>
        <translation>Die Last</translation>
    </message>
    <message>
        <source>The plan cannot be worked out as it is: {1}</source>
        <translation>Der Plan lässt sich so, wie er ist, nicht berechnen: {1}</translation>
    </message>
    <message>
        <source>The plan cannot show {1}: {2}</source>
        <translation>Der Plan kann {1} nicht zeigen: {2}</translation>
    </message>
    <message>
        <source>The plan expects what the resistor was, not what it is.</source>
        <translation>Der Plan erwartet, was der Widerstand war, nicht, was er ist.</translation>
    </message>
    <message>
        <source>The prediction reckons with the leads, so that it is as good as their resistances; a formula without leads is off by this.</source>
        <translation>Die Vorhersage rechnet mit den Leitungen und ist so gut wie deren Widerstände; eine Formel ohne Leitungen weicht um so viel ab.</translation>
    </message>
    <message>
        <source>The reading</source>
        <translation>Der Messwert</translation>
    </message>
    <message>
        <source>The reading is no finite number.</source>
        <translation>Der Messwert ist keine endliche Zahl.</translation>
    </message>
    <message>
        <source>The reading with all shunts open does not change.</source>
        <translation>Der Messwert mit allen Shunts offen ändert sich nicht.</translation>
    </message>
    <message>
        <source>The readings of {1} are held against those of {2}, which are as expected: what was there is gone.</source>
        <translation>Die Messwerte von {1} werden denen von {2} gegenübergestellt, die wie erwartet sind: was dort vorlag, ist weg.</translation>
    </message>
    <message numerus="yes">
        <source>The recording begins after {1}; steps {2} have no level.</source>
        <extracomment>{n} is a count. In English for one: The recording begins after {1}; it has no level.</extracomment>
        <translation>
            <numerusform>Die Aufzeichnung beginnt nach {1}; sie hat kein Plateau.</numerusform>
            <numerusform>Die Aufzeichnung beginnt nach {1}; die Stufen {2} haben kein Plateau.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The recording ends before {1}; steps {2} have no level.</source>
        <extracomment>{n} is a count. In English for one: The recording ends before {1}; it has no level.</extracomment>
        <translation>
            <numerusform>Die Aufzeichnung endet vor {1}; sie hat kein Plateau.</numerusform>
            <numerusform>Die Aufzeichnung endet vor {1}; die Stufen {2} haben kein Plateau.</numerusform>
        </translation>
    </message>
    <message>
        <source>The responsible person decides, and the report states the correction.</source>
        <translation>Die verantwortliche Person entscheidet, und der Bericht nennt die Korrektur.</translation>
    </message>
    <message>
        <source>The return to zero is not judged without it.</source>
        <translation>Ohne sie wird die Nullpunktrückkehr nicht beurteilt.</translation>
    </message>
    <message>
        <source>The scale of data in between stays as it is within {1}, and their zero is off by {2} at most, whenever in between it moved and unless it was taken anew. Zero readings without load in the recording tell when. What may be a strain that stayed is not to be taken out; the responsible person decides.</source>
        <translation>Der Maßstab der Daten dazwischen bleibt innerhalb von {1} derselbe, und ihr Nullpunkt weicht um höchstens {2} ab, wann immer dazwischen er sich verschob, außer wenn neu genullt wurde. Nullwerte ohne Last in der Aufzeichnung sagen, wann. Was eine gebliebene Dehnung sein kann, darf nicht herausgenommen werden; die verantwortliche Person entscheidet.</translation>
    </message>
    <message>
        <source>The scatter of so few says little of how good their mean is.</source>
        <translation>Die Streuung so weniger sagt wenig darüber, wie gut ihr Mittelwert ist.</translation>
    </message>
    <message>
        <source>The sequence does not begin with a zero step.</source>
        <translation>Der Ablauf beginnt nicht mit einer Nullstufe.</translation>
    </message>
    <message>
        <source>The sequence does not end with a zero step.</source>
        <translation>Der Ablauf endet nicht mit einer Nullstufe.</translation>
    </message>
    <message>
        <source>The sequence has no steps.</source>
        <translation>Der Ablauf hat keine Stufen.</translation>
    </message>
    <message>
        <source>The sequence of {1} has no such step.</source>
        <translation>Der Ablauf von {1} hat keine solche Stufe.</translation>
    </message>
    <message>
        <source>The sequence was run, and the readings are not as expected. One thing is wrong: what?</source>
        <translation>Der Ablauf wurde durchgeführt, und die Messwerte sind nicht wie erwartet. Eines ist falsch: Was?</translation>
    </message>
    <message>
        <source>The set-ups differ: {1}.</source>
        <translation>Die Einrichtungen unterscheiden sich: {1}.</translation>
    </message>
    <message>
        <source>The set-ups differ: {1}; and in {2} more.</source>
        <translation>Die Einrichtungen unterscheiden sich: {1}; und in {2} weiteren.</translation>
    </message>
    <message>
        <source>The shortcut R/(F N (R + Rs)) is {1} high here: {2}.</source>
        <translation>Die Kurzformel R/(F N (R + Rs)) liegt hier {1} zu hoch: {2}.</translation>
    </message>
    <message>
        <source>The shortcut R/(F N (R + Rs)) is {1} low here: {2}.</source>
        <translation>Die Kurzformel R/(F N (R + Rs)) liegt hier {1} zu niedrig: {2}.</translation>
    </message>
    <message>
        <source>The signal wires are reversed: the instrument measures S- against S+.</source>
        <translation>Die Signalleitungen sind vertauscht: Das Gerät misst S- gegen S+.</translation>
    </message>
    <message>
        <source>The source&apos;s plus side is on P-, which turns the sign of the signal round.</source>
        <translation>Die Plusseite der Quelle liegt an P-, was das Vorzeichen des Signals umkehrt.</translation>
    </message>
    <message>
        <source>The spans may lie elsewhere in it</source>
        <translation>Die Abschnitte können darin anderswo liegen</translation>
    </message>
    <message>
        <source>The step</source>
        <translation>Die Stufe</translation>
    </message>
    <message>
        <source>The steps call for no cause; the zero alone moved, by {1}. {2}</source>
        <translation>Die Stufen verlangen keine Ursache; nur der Nullpunkt verschob sich, um {1}. {2}</translation>
    </message>
    <message>
        <source>The steps did not move along a line, so that the uncertainty of the gain is widened.</source>
        <translation>Die Stufen bewegten sich nicht entlang einer Geraden, daher ist die Unsicherheit der Verstärkung vergrößert.</translation>
    </message>
    <message>
        <source>The stock holds no resistor {1}.</source>
        <translation>Der Bestand enthält keinen Widerstand {1}.</translation>
    </message>
    <message>
        <source>The stock says otherwise of {1}: {2}.</source>
        <translation>Der Bestand sagt über {1} anderes: {2}.</translation>
    </message>
    <message>
        <source>The structure connected</source>
        <translation>Die Struktur angeschlossen</translation>
    </message>
    <message>
        <source>The structure is connected to nothing else, so no current leaks to it.</source>
        <translation>Die Struktur ist mit nichts sonst verbunden, daher fließt kein Strom zu ihr.</translation>
    </message>
    <message>
        <source>The uncertainty of {1} is as great as its value or greater: {2}.</source>
        <translation>Die Unsicherheit von {1} ist so groß wie der Wert oder größer: {2}.</translation>
    </message>
    <message>
        <source>The verdict</source>
        <translation>Das Urteil</translation>
    </message>
    <message>
        <source>The verdict permits {1} of the expected reading: an instrument that shows nothing passes.</source>
        <translation>Das Urteil erlaubt {1} des erwarteten Messwerts: Ein Gerät, das nichts anzeigt, besteht.</translation>
    </message>
    <message>
        <source>The whole sequence has the opposite polarity.</source>
        <translation>Der ganze Ablauf hat die umgekehrte Polarität.</translation>
    </message>
    <message>
        <source>The wiring has errors. Mend them before you lay a jumper.</source>
        <translation>Die Verdrahtung hat Fehler. Vor dem Legen einer Steckbrücke beheben.</translation>
    </message>
    <message>
        <source>The zero is the same within {1}.</source>
        <translation>Der Nullpunkt ist innerhalb von {1} derselbe.</translation>
    </message>
    <message>
        <source>The zero jumps by {1}</source>
        <translation>Der Nullpunkt springt um {1}</translation>
    </message>
    <message>
        <source>The zero jumps by {1}, which is in every reading</source>
        <translation>Der Nullpunkt springt um {1}, was in jedem Messwert steckt</translation>
    </message>
    <message>
        <source>The zero jumps by {1}, which zeroing takes away</source>
        <translation>Der Nullpunkt springt um {1}, was das Nullen wegnimmt</translation>
    </message>
    <message>
        <source>The zero left its control limits: {1}.</source>
        <translation>Der Nullpunkt verließ seine Eingriffsgrenzen: {1}.</translation>
    </message>
    <message>
        <source>The zero moved by {1}, where {2} would count as unchanged: find out why.</source>
        <translation>Der Nullpunkt bewegte sich um {1}, wo {2} als unverändert gälte: den Grund herausfinden.</translation>
    </message>
    <message>
        <source>The zero reading that others are counted from.</source>
        <translation>Der Nullwert, von dem aus die anderen zählen.</translation>
    </message>
    <message>
        <source>The {1} and the {2} are one resistor at the same place.</source>
        <translation>{1} und {2} sind ein und derselbe Widerstand am selben Ort.</translation>
    </message>
    <message>
        <source>The {1} and the {2} have the same resistance at the same place.</source>
        <translation>{1} und {2} haben denselben Widerstand am selben Ort.</translation>
    </message>
    <message>
        <source>There are encoding=, separator=, decimal=, first-row=, names=, units=, time=, time-form=, date-order=, rate= and unit.N=</source>
        <translation>Es gibt encoding=, separator=, decimal=, first-row=, names=, units=, time=, time-form=, date-order=, rate= und unit.N=</translation>
    </message>
    <message>
        <source>There are {1}</source>
        <translation>Es gibt {1}</translation>
    </message>
    <message numerus="yes">
        <source>There are {n} such pairs; the wiring lists them.</source>
        <extracomment>{n} is a count. In English for one: There is {n} such pair; the wiring lists it.</extracomment>
        <translation>
            <numerusform>Es gibt {n} solches Paar; die Verdrahtung führt es auf.</numerusform>
            <numerusform>Es gibt {n} solche Paare; die Verdrahtung führt sie auf.</numerusform>
        </translation>
    </message>
    <message>
        <source>There is a time column and nothing else.</source>
        <translation>Es gibt eine Zeitspalte und sonst nichts.</translation>
    </message>
    <message>
        <source>There is no zero between the two sides.</source>
        <translation>Zwischen den beiden Seiten ist keine Null.</translation>
    </message>
    <message>
        <source>There is nothing to check the channel by.</source>
        <translation>Es gibt nichts, womit der Kanal zu prüfen wäre.</translation>
    </message>
    <message>
        <source>There is nothing to return</source>
        <translation>Es gibt nichts zurückzugeben</translation>
    </message>
    <message>
        <source>There is nothing to withdraw</source>
        <translation>Es gibt nichts zurückzuziehen</translation>
    </message>
    <message>
        <source>There is only one of it.</source>
        <translation>Es gibt ihn nur einmal.</translation>
    </message>
    <message>
        <source>They count from 1</source>
        <translation>Sie zählen ab 1</translation>
    </message>
    <message>
        <source>They count from 1; none means that there is none</source>
        <translation>Sie zählen ab 1; none heißt, dass es keine gibt</translation>
    </message>
    <message>
        <source>This connection has {1}</source>
        <translation>Diese Anschlussart hat {1}</translation>
    </message>
    <message>
        <source>This is not the content that was saved last: it was changed since, in the window or outside of the program, and the history does not tell how.</source>
        <translation>Dies ist nicht der zuletzt gespeicherte Inhalt: Er wurde seitdem geändert, im Fenster oder außerhalb des Programms, und der Verlauf sagt nicht, wie.</translation>
    </message>
    <message>
        <source>This sheet does not replace local codes. What may be done, and by whom, is decided by the responsible licensed or authorised person.</source>
        <translation>Dieses Blatt ersetzt keine örtlichen Vorschriften. Was getan werden darf und von wem, entscheidet die verantwortliche befugte Person.</translation>
    </message>
    <message>
        <source>This step</source>
        <translation>Diese Stufe</translation>
    </message>
    <message>
        <source>Tick the stock, or choose a series</source>
        <translation>Den Bestand anhaken oder eine Reihe wählen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>To confirm</source>
        <translation>Zur Bestätigung</translation>
    </message>
    <message>
        <source>To make sure: {1}</source>
        <translation>Zur Sicherheit: {1}</translation>
    </message>
    <message>
        <source>To tell them apart, one more step: {1}.</source>
        <translation>Zur Unterscheidung eine weitere Stufe: {1}.</translation>
    </message>
    <message>
        <source>Together they change no reading and no zero</source>
        <translation>Zusammen ändern sie keinen Messwert und keinen Nullpunkt</translation>
    </message>
    <message>
        <source>Together they change nothing: the bridge is as it was.</source>
        <translation>Zusammen ändern sie nichts: Die Brücke ist wie vorher.</translation>
    </message>
    <message>
        <source>Tolerance, Ω</source>
        <translation>Toleranz, Ω</translation>
    </message>
    <message>
        <source>Traceability</source>
        <translation>Rückführbarkeit</translation>
    </message>
    <message>
        <source>Turned twice, the sign is what it was.</source>
        <translation>Zweimal umgekehrt ist das Vorzeichen wieder das alte.</translation>
    </message>
    <message>
        <source>Two leads exchanged</source>
        <translation>Zwei vertauschte Leitungen</translation>
    </message>
    <message>
        <source>Two leads touching</source>
        <translation>Zwei sich berührende Leitungen</translation>
    </message>
    <message>
        <source>Two levels that cannot be told apart say no more than one.</source>
        <translation>Zwei Stufenwerte, die sich nicht unterscheiden lassen, sagen nicht mehr als einer.</translation>
    </message>
    <message>
        <source>Type it again</source>
        <translation>Noch einmal eintippen</translation>
    </message>
    <message>
        <source>U at most, share of limit</source>
        <translation>U höchstens, Anteil des Grenzwerts</translation>
    </message>
    <message>
        <source>U is the expanded uncertainty: coverage probability {1}, k = {2} to {3} by the degrees of freedom of each step.</source>
        <translation>U ist die erweiterte Unsicherheit: Überdeckungswahrscheinlichkeit {1}, k = {2} bis {3} nach den Freiheitsgraden jeder Stufe.</translation>
    </message>
    <message>
        <source>U is the expanded uncertainty: coverage probability {1}, k = {2}.</source>
        <translation>U ist die erweiterte Unsicherheit: Überdeckungswahrscheinlichkeit {1}, k = {2}.</translation>
    </message>
    <message>
        <source>U of deviation</source>
        <translation>U der Abweichung</translation>
    </message>
    <message>
        <source>U of expected</source>
        <translation>U des erwarteten Werts</translation>
    </message>
    <message>
        <source>U of expected ({1})</source>
        <translation>U des erwarteten Werts ({1})</translation>
    </message>
    <message>
        <source>U of simulated ({1})</source>
        <translation>U des simulierten Werts ({1})</translation>
    </message>
    <message>
        <source>U of {1} is more than half the value</source>
        <translation>U von {1} ist mehr als der halbe Wert</translation>
    </message>
    <message>
        <source>U {1}</source>
        <translation>U {1}</translation>
    </message>
    <message>
        <source>Uncertainties marked as assumed are usual tolerances of such parts, not those of your own. State the figures of your certificates and data sheets before you rely on an uncertainty.</source>
        <translation>Als angenommen markierte Unsicherheiten sind übliche Toleranzen solcher Teile, nicht die eigenen. Vor dem Verlass auf eine Unsicherheit die Zahlen der eigenen Kalibrierscheine und Datenblätter angeben.</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Uncertainty of the steps</source>
        <translation>Unsicherheit der Stufen</translation>
    </message>
    <message>
        <source>Unchanged within {1}.</source>
        <translation>Unverändert innerhalb von {1}.</translation>
    </message>
    <message>
        <source>Unchanged within {1}: {2}.</source>
        <translation>Unverändert innerhalb von {1}: {2}.</translation>
    </message>
    <message>
        <source>Undo the last change made to it in a text editor, or open a backup</source>
        <translation>Die letzte Änderung in einem Texteditor zurücknehmen oder eine Sicherung öffnen</translation>
    </message>
    <message>
        <source>Unit or factor of the readings mixed up</source>
        <translation>Einheit oder Faktor der Messwerte verwechselt</translation>
    </message>
    <message>
        <source>Unit or factor of the readings was changed</source>
        <translation>Einheit oder Faktor der Messwerte wurde geändert</translation>
    </message>
    <message>
        <source>Use P+, P-, S+, S-, sense+, sense- or return</source>
        <translation>P+, P-, S+, S-, sense+, sense- oder return verwenden</translation>
    </message>
    <message>
        <source>Use a calibrated load or a traceable calibration where a standard, a contract or local rules ask for it.</source>
        <translation>Eine kalibrierte Last oder rückführbare Kalibrierung verwenden, wo eine Norm, ein Vertrag oder örtliche Regeln sie verlangen.</translation>
    </message>
    <message>
        <source>Use a part of the points</source>
        <translation>Einen Teil der Punkte verwenden</translation>
    </message>
    <message>
        <source>Use a terminal such as P+ or S-, or an arm&apos;s end such as arm 1 begin</source>
        <translation>Einen Anschluss wie P+ oder S- oder ein Zweigende wie arm 1 begin verwenden</translation>
    </message>
    <message>
        <source>Use a terminal such as P+, an arm&apos;s end such as arm 1 begin, or a resistor&apos;s such as R1 end 1</source>
        <translation>Einen Anschluss wie P+, ein Zweigende wie arm 1 begin oder ein Widerstandsende wie R1 end 1 verwenden</translation>
    </message>
    <message>
        <source>Use one decimal mark and no thousands separators</source>
        <translation>Ein Dezimalzeichen und keine Tausendertrennzeichen verwenden</translation>
    </message>
    <message>
        <source>Use one such as quarter_three_wire</source>
        <translation>Einen wie quarter_three_wire verwenden</translation>
    </message>
    <message>
        <source>Use the name of a shunt of this channel</source>
        <translation>Den Namen eines Shunts dieses Kanals verwenden</translation>
    </message>
    <message>
        <source>Use zero or step</source>
        <translation>zero oder step verwenden</translation>
    </message>
    <message>
        <source>Use {1}</source>
        <translation>{1} verwenden</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Verwendet von</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value on the line at this step</source>
        <translation>Wert der Geraden bei dieser Stufe</translation>
    </message>
    <message>
        <source>Value, {1}</source>
        <translation>Wert, {1}</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Verdicts cover the electrical chain only: leads, arms, excitation, amplifier and scaling. They say nothing about gauge factor, gauge bond or alignment.</source>
        <translation>Urteile umfassen nur die elektrische Messkette: Leitungen, Zweige, Speisung, Verstärker und Skalierung. Sie sagen nichts über k-Faktor, DMS-Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>Wait for the review, or withdraw it</source>
        <translation>Die Durchsicht abwarten oder zurückziehen</translation>
    </message>
    <message>
        <source>Weight, %</source>
        <translation>Gewicht, %</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What changed cannot be told: {1}</source>
        <translation>Was sich geändert hat, ist nicht zu sagen: {1}</translation>
    </message>
    <message>
        <source>What changed the resistance may have changed the gauge factor or the bond as well, which no check by shunts sees: do not correct.</source>
        <translation>Was den Widerstand änderte, kann auch k-Faktor oder Klebung geändert haben, was keine Prüfung mit Shunts sieht: nicht korrigieren.</translation>
    </message>
    <message>
        <source>What changed: {1}</source>
        <translation>Was sich geändert hat: {1}</translation>
    </message>
    <message>
        <source>What comes after the first {1} variables</source>
        <translation>Was nach den ersten {1} Variablen kommt</translation>
    </message>
    <message>
        <source>What counts is the arm&apos;s resistance over the shunt&apos;s: {1} for both. The leads decide: a shunt at the terminals spans leads too and sends its current through them, which makes {2} larger by {3} %.</source>
        <translation>Es zählt der Zweigwiderstand durch den des Shunts: {1} bei beiden. Die Leitungen entscheiden: Ein Shunt an den Anschlüssen überspannt auch Leitungen und schickt seinen Strom durch sie, was {2} um {3} % größer macht.</translation>
    </message>
    <message>
        <source>What counts is the arm&apos;s resistance over the shunt&apos;s: {1} for {2} and {3} for {4}.</source>
        <translation>Es zählt der Zweigwiderstand durch den des Shunts: {1} bei {2} und {3} bei {4}.</translation>
    </message>
    <message>
        <source>What counts is the arm&apos;s resistance over the shunt&apos;s: {1} for {2} and {3} for {4}; a shunt at the terminals spans leads too and sends its current through them.</source>
        <translation>Es zählt der Zweigwiderstand durch den des Shunts: {1} bei {2} und {3} bei {4}; ein Shunt an den Anschlüssen überspannt auch Leitungen und schickt seinen Strom durch sie.</translation>
    </message>
    <message>
        <source>What differs in the set-ups</source>
        <translation>Was sich in den Einrichtungen unterscheidet</translation>
    </message>
    <message>
        <source>What fits the readings, best first</source>
        <translation>Was zu den Messwerten passt, das Beste zuerst</translation>
    </message>
    <message>
        <source>What is reckoned with it means nothing.</source>
        <translation>Was damit gerechnet wird, bedeutet nichts.</translation>
    </message>
    <message>
        <source>What is still on its way is averaged into the reading.</source>
        <translation>Was noch unterwegs ist, wird in den Messwert gemittelt.</translation>
    </message>
    <message>
        <source>What its value is now, nobody vouches for.</source>
        <translation>Für seinen jetzigen Wert steht niemand ein.</translation>
    </message>
    <message>
        <source>What lay beyond the limit was not recorded; data within it stand as they are.</source>
        <translation>Was jenseits der Grenze lag, wurde nicht aufgezeichnet; Daten innerhalb gelten, wie sie sind.</translation>
    </message>
    <message>
        <source>What mends it</source>
        <translation>Was es behebt</translation>
    </message>
    <message>
        <source>What moved between the last two checks, and what that means for the data in between.</source>
        <translation>Was sich zwischen den letzten beiden Prüfungen bewegt hat und was das für die Daten dazwischen bedeutet.</translation>
    </message>
    <message>
        <source>What the article feels then reads with the other sign and the shunts as before: a shunt check cannot see it, so the plan should say that it is meant.</source>
        <translation>Was der Prüfling erfährt, wird dann mit dem anderen Vorzeichen gelesen und die Shunts wie bisher: Eine Shuntprüfung kann es nicht sehen, daher sollte der Plan sagen, dass es gewollt ist.</translation>
    </message>
    <message>
        <source>What the check found</source>
        <translation>Was die Prüfung fand</translation>
    </message>
    <message>
        <source>What was found, worst first, without plan and budget.</source>
        <translation>Was gefunden wurde, das Schlimmste zuerst, ohne Plan und Budget.</translation>
    </message>
    <message>
        <source>Whatever was taken after that moment was not recorded, and nothing brings it back.</source>
        <translation>Was nach diesem Augenblick aufgenommen wurde, wurde nicht aufgezeichnet, und nichts bringt es zurück.</translation>
    </message>
    <message>
        <source>Who saved what</source>
        <translation>Wer was gespeichert hat</translation>
    </message>
    <message>
        <source>Whoever changes one of them forgets the other.</source>
        <translation>Wer eine davon ändert, vergisst die andere.</translation>
    </message>
    <message>
        <source>Whoever checks the plan by that formula finds another value than the whole network gives.</source>
        <translation>Wer den Plan mit dieser Formel prüft, findet einen anderen Wert, als das ganze Netzwerk ergibt.</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>Wiring and ohmmeter sheet, channel {1}</source>
        <translation>Verdrahtungs- und Ohmmeterblatt, Kanal {1}</translation>
    </message>
    <message>
        <source>With all shunts open and no load, record the zero for as long as the check took, some {1} s: it drifts at the same rate. Where it does, measure the insulation of the gauge with the excitation off: moisture drifts.</source>
        <translation>Mit allen Shunts offen und ohne Last den Nullpunkt so lange aufzeichnen, wie die Prüfung dauerte, etwa {1} s: Er driftet mit derselben Rate. Tut er das, bei abgeschalteter Speisung die Isolation des DMS messen: Feuchte driftet.</translation>
    </message>
    <message>
        <source>With all shunts open and no load, watch the zero while you move the connectors and the cable: it jumps at a bad contact. Look for the jump before {1}.</source>
        <translation>Mit allen Shunts offen und ohne Last den Nullpunkt beobachten und dabei Stecker und Kabel bewegen: An einem schlechten Kontakt springt er. Den Sprung vor {1} suchen.</translation>
    </message>
    <message>
        <source>With all shunts open the bridge gives {1}, the instrument takes {2}.</source>
        <translation>Mit allen Shunts offen gibt die Brücke {1}, das Gerät nimmt {2} auf.</translation>
    </message>
    <message>
        <source>With numbers</source>
        <translation>Mit Zahlen</translation>
    </message>
    <message>
        <source>With the excitation off and no load, watch the ohmmeter on lead {1} from end to end while its connectors and joints are moved: it reads {2}.</source>
        <translation>Bei abgeschalteter Speisung und ohne Last das Ohmmeter an Leitung {1} von Ende zu Ende beobachten und dabei Stecker und Verbindungen bewegen: Es zeigt {2}.</translation>
    </message>
    <message>
        <source>With the excitation off and the cable unplugged at the instrument, measure from lead P+ to lead sense+ and from lead P- to lead sense-: {1} and {2} as entered, an open loop is the cause.</source>
        <translation>Bei abgeschalteter Speisung und am Gerät abgestecktem Kabel von Leitung P+ zu Leitung sense+ und von Leitung P- zu Leitung sense- messen: {1} und {2} wie eingetragen, eine offene Schleife ist die Ursache.</translation>
    </message>
    <message>
        <source>With the excitation off and the cable unplugged at the instrument, measure from {1}.</source>
        <translation>Bei abgeschalteter Speisung und am Gerät abgestecktem Kabel messen von {1}.</translation>
    </message>
    <message>
        <source>With the excitation off and the cable unplugged at the instrument, measure from {1}: {2}.</source>
        <translation>Bei abgeschalteter Speisung und am Gerät abgestecktem Kabel messen von {1}: {2}.</translation>
    </message>
    <message>
        <source>With the excitation off, close {1} and measure across each arm with it closed and open: the reading falls most at the arm that it lies on.</source>
        <translation>Bei abgeschalteter Speisung {1} schließen und über jedem Zweig geschlossen und offen messen: Der Messwert fällt am meisten an dem Zweig, an dem er liegt.</translation>
    </message>
    <message>
        <source>With the excitation off, measure between the two places of shunt {1} with its switch open and closed: nothing changes if it does not close.</source>
        <translation>Bei abgeschalteter Speisung zwischen den beiden Orten von Shunt {1} mit offenem und geschlossenem Schalter messen: Schließt er nicht, ändert sich nichts.</translation>
    </message>
    <message>
        <source>With the excitation off, measure from each end of the shunt&apos;s wires to the {1}&apos;s end of the lead: more than the wire&apos;s own few milliohms there means that a lead lies between.</source>
        <translation>Bei abgeschalteter Speisung von jedem Ende der Shuntleitungen zum {1}-Ende der Leitung messen: Mehr als die wenigen Milliohm der eigenen Leitung heißt dort, dass eine Leitung dazwischenliegt.</translation>
    </message>
    <message>
        <source>With the excitation off, take resistor {1} out of the circuit and measure it: {2}.</source>
        <translation>Bei abgeschalteter Speisung Widerstand {1} aus der Schaltung nehmen und messen: {2}.</translation>
    </message>
    <message>
        <source>With the excitation off, take the resistors {1} and {2} out of the circuit and measure both: {3} and {4} are stated, the other way round if this is the cause.</source>
        <translation>Bei abgeschalteter Speisung die Widerstände {1} und {2} aus der Schaltung nehmen und beide messen: Angegeben sind {3} und {4}, umgekehrt, wenn dies die Ursache ist.</translation>
    </message>
    <message>
        <source>With the fault, step {1}: expected + drift × time = {2}{3}</source>
        <translation>Mit dem Fehler, Stufe {1}: erwartet + Drift × Zeit = {2}{3}</translation>
    </message>
    <message>
        <source>With the fault, step {1}: expected + error = {2}{3}</source>
        <translation>Mit dem Fehler, Stufe {1}: erwartet + Fehler = {2}{3}</translation>
    </message>
    <message>
        <source>With the fault, step {1}: expected + shift = {2}{3}</source>
        <translation>Mit dem Fehler, Stufe {1}: erwartet + Verschiebung = {2}{3}</translation>
    </message>
    <message>
        <source>With the fault, step {1}: expected {2}{3}, stopped at the limit{4}</source>
        <translation>Mit dem Fehler, Stufe {1}: erwartet {2}{3}, an der Grenze angehalten{4}</translation>
    </message>
    <message>
        <source>With the fault, step {1}: expected × factor = {2} × {3}{4}</source>
        <translation>Mit dem Fehler, Stufe {1}: erwartet × Faktor = {2} × {3}{4}</translation>
    </message>
    <message>
        <source>With the fault, {1}:</source>
        <translation>Mit dem Fehler, {1}:</translation>
    </message>
    <message>
        <source>With the fault, {1}: no shunt closes, and the reading stays at zero.</source>
        <translation>Mit dem Fehler, {1}: Kein Shunt schließt, und der Messwert bleibt bei null.</translation>
    </message>
    <message>
        <source>With {1}, {2}, so {3}: {4}</source>
        <translation>Mit {1}, {2}. Folge: {3}; {4}</translation>
    </message>
    <message>
        <source>Withdrawn by {1} on {2}: a draft again.</source>
        <translation>Zurückgezogen von {1} am {2}: wieder ein Entwurf.</translation>
    </message>
    <message>
        <source>Within the margin of {1}; what did change is harmless: {2}.</source>
        <translation>Innerhalb der Toleranz von {1}; was sich änderte, ist harmlos: {2}.</translation>
    </message>
    <message>
        <source>Without a counterpart of the other sign within {1}: {2}.</source>
        <translation>Ohne Gegenstück des anderen Vorzeichens innerhalb von {1}: {2}.</translation>
    </message>
    <message>
        <source>Work out the jumpers of {1}</source>
        <translation>Die Steckbrücken von {1} berechnen</translation>
    </message>
    <message>
        <source>Worked out from the circuit as it is entered. It says nothing about the real article: a reading that fits does not prove the fault, and a fault that is not tried out is not ruled out.</source>
        <translation>Aus der Schaltung berechnet, wie sie eingetragen ist. Über den wirklichen Prüfling sagt es nichts: Ein passender Messwert beweist den Fehler nicht, und ein nicht ausprobierter Fehler ist nicht ausgeschlossen.</translation>
    </message>
    <message>
        <source>Worst deviation, % of limit</source>
        <translation>Größte Abweichung, % des Grenzwerts</translation>
    </message>
    <message>
        <source>Worst deviation, share of limit</source>
        <translation>Größte Abweichung, Anteil des Grenzwerts</translation>
    </message>
    <message>
        <source>Write &quot;{1}&quot;</source>
        <translation>„{1}“ schreiben</translation>
    </message>
    <message>
        <source>Write &quot;{1}&quot; with P+, P-, S+, S-, sense+, sense- or return</source>
        <translation>„{1}“ schreiben mit P+, P-, S+, S-, sense+, sense- oder return</translation>
    </message>
    <message>
        <source>Write -5, not - 5</source>
        <translation>-5 schreiben, nicht - 5</translation>
    </message>
    <message>
        <source>Write 0 or a number above 1e-300</source>
        <translation>0 oder eine Zahl über 1e-300 schreiben</translation>
    </message>
    <message>
        <source>Write 1 for the first step</source>
        <translation>Für die erste Stufe 1 schreiben</translation>
    </message>
    <message>
        <source>Write 1, 2, 3 or 4 in quotation marks</source>
        <translation>1, 2, 3 oder 4 in Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>Write 4L7 or 4.7 mΩ, or else 4M7</source>
        <translation>4L7 oder 4,7 mΩ schreiben, sonst 4M7</translation>
    </message>
    <message>
        <source>Write 64 digits from 0 to 9 and a to f</source>
        <translation>64 Ziffern von 0 bis 9 und a bis f schreiben</translation>
    </message>
    <message>
        <source>Write 64 digits from 0 to 9 and a to f, or open a backup</source>
        <translation>64 Ziffern von 0 bis 9 und a bis f schreiben oder eine Sicherung öffnen</translation>
    </message>
    <message>
        <source>Write a decimal number such as 0.5</source>
        <translation>Eine Dezimalzahl wie 0,5 schreiben</translation>
    </message>
    <message>
        <source>Write a number below 1e300</source>
        <translation>Eine Zahl unter 1e300 schreiben</translation>
    </message>
    <message>
        <source>Write a percent sign as %25</source>
        <translation>Ein Prozentzeichen als %25 schreiben</translation>
    </message>
    <message>
        <source>Write a point in a number, or a semicolon between two</source>
        <translation>In einer Zahl einen Punkt schreiben, zwischen zweien ein Semikolon</translation>
    </message>
    <message>
        <source>Write a smaller whole number</source>
        <translation>Eine kleinere ganze Zahl schreiben</translation>
    </message>
    <message>
        <source>Write as in name=Channel; fields are {1}</source>
        <translation>Wie in name=Channel schreiben; Felder sind {1}</translation>
    </message>
    <message>
        <source>Write both or none</source>
        <translation>Beide oder keines schreiben</translation>
    </message>
    <message>
        <source>Write it as ISO 639 does: &quot;en&quot;, &quot;de&quot;</source>
        <translation>Wie in ISO 639 schreiben: „en“, „de“</translation>
    </message>
    <message>
        <source>Write it as in 250 mW or 0.5 W</source>
        <translation>Wie 250 mW oder 0,5 W schreiben</translation>
    </message>
    <message>
        <source>Write it as in 59k9 or 174.65 kOhm, or take the line out</source>
        <translation>Wie 59k9 oder 174,65 kOhm schreiben oder die Zeile herausnehmen</translation>
    </message>
    <message>
        <source>Write it as year-month-day, such as 2026-11-25</source>
        <translation>Als Jahr-Monat-Tag schreiben, wie 2026-11-25</translation>
    </message>
    <message>
        <source>Write it in UTC, such as 2026-11-25T14:05:00Z</source>
        <translation>In UTC schreiben, wie 2026-11-25T14:05:00Z</translation>
    </message>
    <message>
        <source>Write it on one line</source>
        <translation>In einer Zeile schreiben</translation>
    </message>
    <message>
        <source>Write it with a percent sign or ppm, such as 0.01 % or 100 ppm</source>
        <translation>Mit Prozentzeichen oder ppm schreiben, wie 0,01 % oder 100 ppm</translation>
    </message>
    <message>
        <source>Write it without sign, point and exponent</source>
        <translation>Ohne Vorzeichen, Punkt und Exponent schreiben</translation>
    </message>
    <message>
        <source>Write mΩ or MΩ</source>
        <translation>mΩ oder MΩ schreiben</translation>
    </message>
    <message>
        <source>Write one number</source>
        <translation>Eine einzige Zahl schreiben</translation>
    </message>
    <message>
        <source>Write one of {1}</source>
        <translation>Eines von {1} schreiben</translation>
    </message>
    <message>
        <source>Write positions times step of each dial, such as 10x10k 10x1k 10x100</source>
        <translation>Stellungen mal Schrittweite jedes Drehschalters schreiben, etwa 10x10k 10x1k 10x100</translation>
    </message>
    <message>
        <source>Write powers of ten with e, such as 5e3 for 5000</source>
        <translation>Zehnerpotenzen mit e schreiben, wie 5e3 für 5000</translation>
    </message>
    <message>
        <source>Write the day as in 2026-11-25</source>
        <translation>Den Tag wie in 2026-11-25 schreiben</translation>
    </message>
    <message>
        <source>Write the number alone</source>
        <translation>Nur die Zahl schreiben</translation>
    </message>
    <message>
        <source>Write the tolerance, such as 0.01 % or 100 ppm</source>
        <translation>Die Toleranz schreiben, wie 0,01 % oder 100 ppm</translation>
    </message>
    <message>
        <source>Write times with their units, such as 1 min 30 s</source>
        <translation>Zeiten mit ihren Einheiten schreiben, wie 1 min 30 s</translation>
    </message>
    <message>
        <source>Write two, such as [&quot;P+&quot;, &quot;S-&quot;]</source>
        <translation>Zwei schreiben, wie [&quot;P+&quot;, &quot;S-&quot;]</translation>
    </message>
    <message>
        <source>Write {1} alone: this field takes the resistance</source>
        <translation>Nur {1} schreiben: Dieses Feld nimmt den Widerstand</translation>
    </message>
    <message>
        <source>Write {1}, with nothing between the thousands</source>
        <translation>{1} schreiben, mit nichts zwischen den Tausendern</translation>
    </message>
    <message>
        <source>Write µm/m, mV/V or mV, or copy a channel that reads in that unit</source>
        <translation>µm/m, mV/V oder mV schreiben oder einen Kanal kopieren, der in dieser Einheit zeigt</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>Zero drifts (moisture, temperature)</source>
        <translation>Nullpunkt driftet (Feuchte, Temperatur)</translation>
    </message>
    <message>
        <source>Zero moved between {1} and {2}</source>
        <translation>Nullpunkt verschob sich zwischen {1} und {2}</translation>
    </message>
    <message>
        <source>Zero reading, {1}</source>
        <translation>Nullwert, {1}</translation>
    </message>
    <message>
        <source>Zero reads {1}.</source>
        <translation>Der Nullwert ist {1}.</translation>
    </message>
    <message>
        <source>Zero reference</source>
        <translation>Nullreferenz</translation>
    </message>
    <message>
        <source>Zero reference of this check.</source>
        <translation>Nullreferenz dieser Prüfung.</translation>
    </message>
    <message>
        <source>Zero reference, the reading of step {1}</source>
        <translation>Nullreferenz, der Messwert der Stufe {1}</translation>
    </message>
    <message>
        <source>Zero reference, this step&apos;s own reading</source>
        <translation>Nullreferenz, der eigene Messwert dieser Stufe</translation>
    </message>
    <message>
        <source>Zero return, share</source>
        <translation>Nullpunktrückkehr, Anteil</translation>
    </message>
    <message>
        <source>Zero return, share of greatest</source>
        <translation>Nullpunktrückkehr, Anteil des größten</translation>
    </message>
    <message>
        <source>Zero return, {1}</source>
        <translation>Nullpunktrückkehr, {1}</translation>
    </message>
    <message>
        <source>Zero shifted before step {1}</source>
        <translation>Nullpunkt vor Stufe {1} verschoben</translation>
    </message>
    <message>
        <source>a % must be followed by two hexadecimal digits</source>
        <translation>auf ein % müssen zwei Hexadezimalziffern folgen</translation>
    </message>
    <message>
        <source>a box has 1 to {1} dials</source>
        <translation>eine Dekade hat 1 bis {1} Drehschalter</translation>
    </message>
    <message>
        <source>a bridge has four arms</source>
        <translation>eine Brücke hat vier Zweige</translation>
    </message>
    <message>
        <source>a channel holds no more pins</source>
        <translation>ein Kanal fasst nicht mehr Stifte</translation>
    </message>
    <message>
        <source>a channel holds no more readings of the ohmmeter</source>
        <translation>ein Kanal fasst nicht mehr Ohmmeterwerte</translation>
    </message>
    <message>
        <source>a check needs a name</source>
        <translation>eine Prüfung braucht einen Namen</translation>
    </message>
    <message>
        <source>a closed switch cannot have a negative resistance</source>
        <translation>ein geschlossener Schalter kann keinen negativen Widerstand haben</translation>
    </message>
    <message>
        <source>a closed switch or relay contact within 50 mΩ</source>
        <translation>ein geschlossener Schalter- oder Relaiskontakt auf 50 mΩ</translation>
    </message>
    <message>
        <source>a correlation coefficient must lie between -1 and 1</source>
        <translation>ein Korrelationskoeffizient muss zwischen -1 und 1 liegen</translation>
    </message>
    <message>
        <source>a correlation of {1} between each two of {2} inputs cannot exist</source>
        <translation>eine Korrelation von {1} zwischen je zweien von {2} Eingangsgrößen kann es nicht geben</translation>
    </message>
    <message>
        <source>a decade box has dials and no resistance</source>
        <translation>eine Widerstandsdekade hat Stellungen und keinen Widerstand</translation>
    </message>
    <message>
        <source>a decade box has no certificate of one value</source>
        <translation>eine Widerstandsdekade hat keinen Kalibrierschein eines Werts</translation>
    </message>
    <message>
        <source>a decade box is fitted in no instrument</source>
        <translation>eine Widerstandsdekade ist in kein Gerät eingebaut</translation>
    </message>
    <message>
        <source>a dial has {1} positions above 0</source>
        <translation>ein Drehschalter hat {1} Stellungen über 0</translation>
    </message>
    <message>
        <source>a dial&apos;s step of {1} cannot be</source>
        <translation>eine Schrittweite von {1} kann es nicht geben</translation>
    </message>
    <message>
        <source>a dial&apos;s step of {1} is finer than 1 µΩ</source>
        <translation>eine Schrittweite von {1} ist feiner als 1 µΩ</translation>
    </message>
    <message>
        <source>a factor of 2, such as shear strain for strain, or one gauge for two</source>
        <translation>ein Faktor 2, etwa Schubverzerrung für Dehnung oder ein DMS für zwei</translation>
    </message>
    <message>
        <source>a factor of 4, such as one gauge for four, or bridge factor left out</source>
        <translation>ein Faktor 4, etwa ein DMS für vier oder ausgelassener Brückenfaktor</translation>
    </message>
    <message>
        <source>a fit to stated uncertainties does not tell how new readings scatter</source>
        <translation>eine Anpassung an angegebene Unsicherheiten sagt nicht, wie neue Messwerte streuen</translation>
    </message>
    <message>
        <source>a folder has that name</source>
        <translation>ein Ordner hat diesen Namen</translation>
    </message>
    <message>
        <source>a gain of {1} where 1 belongs</source>
        <translation>eine Verstärkung von {1}, wo 1 hingehört</translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation>eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>a hold must be longer than zero</source>
        <translation>eine Haltezeit muss länger als null sein</translation>
    </message>
    <message>
        <source>a lead cannot be exchanged with itself</source>
        <translation>eine Leitung lässt sich nicht mit sich selbst tauschen</translation>
    </message>
    <message>
        <source>a lead cannot touch itself</source>
        <translation>eine Leitung kann sich nicht selbst berühren</translation>
    </message>
    <message>
        <source>a lead of zero ohm joins its two ends, so an uncertainty in ohm has nothing to act on</source>
        <translation>eine Leitung von null Ohm verbindet ihre Enden, eine Unsicherheit in Ohm hat also nichts zu bewirken</translation>
    </message>
    <message>
        <source>a level settles to between 0.0001 % and 20 % of a step</source>
        <translation>ein Wert schwingt auf 0,0001 % bis 20 % einer Stufe ein</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number is too large</source>
        <translation>eine Zahl ist zu groß</translation>
    </message>
    <message>
        <source>a pin needs a name</source>
        <translation>ein Stift braucht einen Namen</translation>
    </message>
    <message>
        <source>a prefix off by a factor of 1000, such as milli for micro</source>
        <translation>ein um den Faktor 1000 falscher Vorsatz, etwa Milli für Mikro</translation>
    </message>
    <message>
        <source>a prefix off by a factor of a million, such as µm/m for m/m</source>
        <translation>ein um den Faktor eine Million falscher Vorsatz, etwa µm/m für m/m</translation>
    </message>
    <message>
        <source>a quotation mark opens here and never closes</source>
        <translation>ein Anführungszeichen öffnet hier und schließt nie</translation>
    </message>
    <message>
        <source>a reading is as old as {1}</source>
        <translation>ein Messwert ist so alt wie {1}</translation>
    </message>
    <message>
        <source>a relative humidity is between 0 % and 100 %</source>
        <translation>eine relative Luftfeuchte liegt zwischen 0 % und 100 %</translation>
    </message>
    <message>
        <source>a resistance is not a positive finite number</source>
        <translation>ein Widerstand ist keine positive endliche Zahl</translation>
    </message>
    <message>
        <source>a resistor has two ends</source>
        <translation>ein Widerstand hat zwei Enden</translation>
    </message>
    <message>
        <source>a resistor must have a finite resistance above zero</source>
        <translation>ein Widerstand muss endlich und über null sein</translation>
    </message>
    <message>
        <source>a resistor must have more than 0 Ω</source>
        <translation>ein Widerstand muss mehr als 0 Ω haben</translation>
    </message>
    <message>
        <source>a robust line through more than 10000 points would take too long</source>
        <translation>eine robuste Gerade durch mehr als 10000 Punkte dauerte zu lange</translation>
    </message>
    <message>
        <source>a share of this input says nothing</source>
        <translation>ein Anteil dieser Eingangsgröße sagt nichts</translation>
    </message>
    <message>
        <source>a shunt</source>
        <translation>ein Shunt</translation>
    </message>
    <message>
        <source>a shunt at this place moves the output the other way</source>
        <translation>ein Shunt an diesem Ort bewegt das Signal in die andere Richtung</translation>
    </message>
    <message>
        <source>a shunt from {1} to {2} does not change the output</source>
        <translation>ein Shunt von {1} nach {2} ändert das Signal nicht</translation>
    </message>
    <message>
        <source>a shunt from {1} to {2} gives negative levels, and positive ones are wanted there</source>
        <translation>ein Shunt von {1} nach {2} ergibt negative Stufenwerte, und gewünscht sind dort positive</translation>
    </message>
    <message>
        <source>a shunt from {1} to {2} gives positive levels, and negative ones are wanted there</source>
        <translation>ein Shunt von {1} nach {2} ergibt positive Stufenwerte, und gewünscht sind dort negative</translation>
    </message>
    <message>
        <source>a shunt holds no more jumpers</source>
        <translation>ein Shunt fasst nicht mehr Steckbrücken</translation>
    </message>
    <message>
        <source>a shunt is named twice in one step</source>
        <translation>ein Shunt ist in einer Stufe zweimal genannt</translation>
    </message>
    <message>
        <source>a shunt must have a finite resistance above zero</source>
        <translation>ein Shunt muss einen endlichen Widerstand über null haben</translation>
    </message>
    <message>
        <source>a shunt must have more than 0 Ω</source>
        <translation>ein Shunt muss mehr als 0 Ω haben</translation>
    </message>
    <message>
        <source>a shunt needs a name without commas</source>
        <translation>ein Shunt braucht einen Namen ohne Kommas</translation>
    </message>
    <message>
        <source>a span of no step</source>
        <translation>ein Abschnitt ohne Stufe</translation>
    </message>
    <message>
        <source>a standard deviation needs two readings at least</source>
        <translation>eine Standardabweichung braucht mindestens zwei Messwerte</translation>
    </message>
    <message>
        <source>a standard or expanded uncertainty counts as normal</source>
        <translation>eine Standard- oder erweiterte Unsicherheit gilt als normalverteilt</translation>
    </message>
    <message>
        <source>a step cannot settle for less than no time</source>
        <translation>eine Stufe kann nicht kürzer als gar nicht einschwingen</translation>
    </message>
    <message>
        <source>a step has no uncertainty, so nothing tells large from small</source>
        <translation>eine Stufe hat keine Unsicherheit, daher unterscheidet nichts groß von klein</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a text is longer than 1 MB</source>
        <translation>ein Text ist länger als 1 MB</translation>
    </message>
    <message>
        <source>a tolerance of 0 is no tolerance</source>
        <translation>eine Toleranz von 0 ist keine Toleranz</translation>
    </message>
    <message>
        <source>a transducer is known by its rated output, not by a gauge factor</source>
        <translation>ein Aufnehmer ist durch seinen Nennkennwert bekannt, nicht durch einen k-Faktor</translation>
    </message>
    <message>
        <source>a variance cannot be negative</source>
        <translation>eine Varianz kann nicht negativ sein</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a wire needs both its length and its cross-section</source>
        <translation>eine Ader braucht Länge und Querschnitt</translation>
    </message>
    <message>
        <source>a yes or no</source>
        <translation>ein Ja oder Nein</translation>
    </message>
    <message>
        <source>a zero byte stands here, as no text has</source>
        <translation>hier steht ein Nullbyte, das kein Text hat</translation>
    </message>
    <message>
        <source>a zero step at the end</source>
        <translation>eine Nullstufe am Ende</translation>
    </message>
    <message>
        <source>a {1} may stand above the wrong column.</source>
        <translation>eine Zeile mit „{1}“ kann über der falschen Spalte stehen.</translation>
    </message>
    <message>
        <source>above</source>
        <translation>über</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>across arm {1}</source>
        <translation>über Zweig {1}</translation>
    </message>
    <message>
        <source>across {1} and leads, {2}</source>
        <translation>über {1} und Leitungen, {2}</translation>
    </message>
    <message>
        <source>acts of review</source>
        <translation>Freigabeschritte</translation>
    </message>
    <message>
        <source>all open</source>
        <translation>alle offen</translation>
    </message>
    <message>
        <source>all open: a zero step</source>
        <translation>alle offen: eine Nullstufe</translation>
    </message>
    <message>
        <source>all samples are equal: the resolution of the recording bounds what can be told</source>
        <translation>alle Abtastwerte sind gleich: Die Auflösung der Aufzeichnung begrenzt, was sich sagen lässt</translation>
    </message>
    <message>
        <source>all samples are equal: they do not tell their uncertainty</source>
        <translation>alle Abtastwerte sind gleich: Sie verraten ihre Unsicherheit nicht</translation>
    </message>
    <message>
        <source>all shunts</source>
        <translation>alle Shunts</translation>
    </message>
    <message>
        <source>all shunts open</source>
        <translation>alle Shunts offen</translation>
    </message>
    <message>
        <source>all times are equal</source>
        <translation>alle Zeiten sind gleich</translation>
    </message>
    <message>
        <source>all x are equal, so no line is fixed</source>
        <translation>alle x sind gleich, daher liegt keine Gerade fest</translation>
    </message>
    <message>
        <source>all x are equal, so there is no range</source>
        <translation>alle x sind gleich, daher gibt es keinen Bereich</translation>
    </message>
    <message>
        <source>all x are zero, so no line through zero is fixed</source>
        <translation>alle x sind null, daher liegt keine Gerade durch null fest</translation>
    </message>
    <message>
        <source>all {1}</source>
        <translation>alle {1}</translation>
    </message>
    <message numerus="yes">
        <source>all {n} steps are within limits</source>
        <extracomment>{n} is a count. In English for one: all {n} steps are within limits</extracomment>
        <translation>
            <numerusform>die eine Stufe liegt innerhalb der Grenzwerte</numerusform>
            <numerusform>alle {n} Stufen liegen innerhalb der Grenzwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all {n} steps within limits</source>
        <extracomment>{n} is a count. In English for one: all {n} steps within limits</extracomment>
        <translation>
            <numerusform>die eine Stufe innerhalb der Grenzwerte</numerusform>
            <numerusform>alle {n} Stufen innerhalb der Grenzwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all {n} steps within limits by {1}</source>
        <extracomment>{n} is a count. In English for one: all {n} steps within limits by {1}</extracomment>
        <translation>
            <numerusform>die eine Stufe innerhalb der Grenzwerte nach der Regel „{1}“</numerusform>
            <numerusform>alle {n} Stufen innerhalb der Grenzwerte nach der Regel „{1}“</numerusform>
        </translation>
    </message>
    <message>
        <source>an error of the excitation is an error of the reading</source>
        <translation>ein Fehler der Speisung ist ein Fehler des Messwerts</translation>
    </message>
    <message>
        <source>an ohmmeter reads no less than 0 Ω</source>
        <translation>ein Ohmmeter zeigt nicht weniger als 0 Ω</translation>
    </message>
    <message>
        <source>an order of {1} is not known here</source>
        <translation>eine Ordnung von {1} ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>an x without a variance cannot have covariances</source>
        <translation>ein x ohne Varianz kann keine Kovarianzen haben</translation>
    </message>
    <message>
        <source>and {1} more</source>
        <translation>und {1} weitere</translation>
    </message>
    <message>
        <source>announces {1} numbers, more than can be read</source>
        <translation>kündigt {1} Zahlen an, mehr, als sich lesen lassen</translation>
    </message>
    <message>
        <source>another certificate</source>
        <translation>ein anderer Kalibrierschein</translation>
    </message>
    <message>
        <source>another channel was chosen while this was typed</source>
        <translation>ein anderer Kanal wurde gewählt, während dies eingegeben wurde</translation>
    </message>
    <message>
        <source>another check of this channel has that name</source>
        <translation>eine andere Prüfung dieses Kanals heißt schon so</translation>
    </message>
    <message>
        <source>another content</source>
        <translation>ein anderer Inhalt</translation>
    </message>
    <message>
        <source>another power rating</source>
        <translation>eine andere Belastbarkeit</translation>
    </message>
    <message>
        <source>another {1} has the name {2}</source>
        <translation>ein anderer Eintrag ({1}) hat den Namen {2}</translation>
    </message>
    <message>
        <source>any reading</source>
        <translation>irgendeines Messwerts</translation>
    </message>
    <message>
        <source>arm 1 begin</source>
        <translation>Anfang von Zweig 1</translation>
    </message>
    <message>
        <source>arm 1 end</source>
        <translation>Ende von Zweig 1</translation>
    </message>
    <message>
        <source>arm 2 begin</source>
        <translation>Anfang von Zweig 2</translation>
    </message>
    <message>
        <source>arm 2 end</source>
        <translation>Ende von Zweig 2</translation>
    </message>
    <message>
        <source>arm 3 begin</source>
        <translation>Anfang von Zweig 3</translation>
    </message>
    <message>
        <source>arm 3 end</source>
        <translation>Ende von Zweig 3</translation>
    </message>
    <message>
        <source>arm 4 begin</source>
        <translation>Anfang von Zweig 4</translation>
    </message>
    <message>
        <source>arm 4 end</source>
        <translation>Ende von Zweig 4</translation>
    </message>
    <message>
        <source>arm {1}</source>
        <translation>Zweig {1}</translation>
    </message>
    <message>
        <source>arm {1} would have no resistance left</source>
        <translation>Zweig {1} hätte keinen Widerstand mehr</translation>
    </message>
    <message>
        <source>arms 1 and 2 {1}, arms 3 and 4 {2}</source>
        <translation>Zweige 1 und 2 {1}, Zweige 3 und 4 {2}</translation>
    </message>
    <message>
        <source>arms of a transducer as stated, within 0.3 %</source>
        <translation>Zweige eines Aufnehmers wie angegeben, auf 0,3 %</translation>
    </message>
    <message numerus="yes">
        <source>arms {1}</source>
        <extracomment>{n} is a count. In English for one: arm {1}</extracomment>
        <translation>
            <numerusform>Zweig {1}</numerusform>
            <numerusform>Zweige {1}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>arms {1} leaking</source>
        <extracomment>{n} is a count. In English for one: arm {1} leaking</extracomment>
        <translation>
            <numerusform>Nebenschluss an Zweig {1}</numerusform>
            <numerusform>Nebenschluss an den Zweigen {1}</numerusform>
        </translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>as the earlier set-up has it</source>
        <translation>wie in der früheren Einrichtung</translation>
    </message>
    <message>
        <source>as the later set-up has it</source>
        <translation>wie in der späteren Einrichtung</translation>
    </message>
    <message>
        <source>as the template says</source>
        <translation>wie die Vorlage es sagt</translation>
    </message>
    <message>
        <source>assumed: {1}</source>
        <translation>angenommen: {1}</translation>
    </message>
    <message>
        <source>at +{1}</source>
        <translation>bei +{1}</translation>
    </message>
    <message>
        <source>at -{1}</source>
        <translation>bei -{1}</translation>
    </message>
    <message>
        <source>at least {1} over {2}</source>
        <translation>mindestens {1} über {2}</translation>
    </message>
    <message>
        <source>at step {1}</source>
        <translation>bei Stufe {1}</translation>
    </message>
    <message>
        <source>at that temperature lead {1} would have no resistance left</source>
        <translation>bei dieser Temperatur hätte Leitung {1} keinen Widerstand mehr</translation>
    </message>
    <message>
        <source>at the bridge</source>
        <translation>an der Brücke</translation>
    </message>
    <message>
        <source>at the instrument</source>
        <translation>am Gerät</translation>
    </message>
    <message>
        <source>at {1}, both signs</source>
        <translation>bei {1}, beide Vorzeichen</translation>
    </message>
    <message>
        <source>backing and cooling of a gauge</source>
        <translation>Träger und Wärmeabfuhr eines DMS</translation>
    </message>
    <message>
        <source>balance</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>balance end of arm 3</source>
        <translation>Abgleichende von Zweig 3</translation>
    </message>
    <message>
        <source>balance end of arm 4</source>
        <translation>Abgleichende von Zweig 4</translation>
    </message>
    <message>
        <source>balance network</source>
        <translation>Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>balance potentiometer</source>
        <translation>Abgleichpotentiometer</translation>
    </message>
    <message>
        <source>balance potentiometer, part in arm 3</source>
        <translation>Abgleichpotentiometer, Teil in Zweig 3</translation>
    </message>
    <message>
        <source>balance potentiometer, part in arm 4</source>
        <translation>Abgleichpotentiometer, Teil in Zweig 4</translation>
    </message>
    <message>
        <source>balance potentiometer, part to P+</source>
        <translation>Abgleichpotentiometer, Teil zu P+</translation>
    </message>
    <message>
        <source>balance potentiometer, part to P-</source>
        <translation>Abgleichpotentiometer, Teil zu P-</translation>
    </message>
    <message>
        <source>balance resistor</source>
        <translation>Abgleichwiderstand</translation>
    </message>
    <message>
        <source>balance wiper</source>
        <translation>Abgleichschleifer</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>below 0.001</source>
        <translation>unter 0,001</translation>
    </message>
    <message>
        <source>below {1}</source>
        <translation>unter {1}</translation>
    </message>
    <message>
        <source>between {1} and {2}</source>
        <translation>zwischen {1} und {2}</translation>
    </message>
    <message>
        <source>between {1} and {2} over {3}</source>
        <translation>zwischen {1} und {2} über {3}</translation>
    </message>
    <message>
        <source>beyond the limit of {1}</source>
        <translation>außerhalb des Grenzwerts von {1}</translation>
    </message>
    <message>
        <source>both ends are on one node ({1}), so it does nothing</source>
        <translation>beide Enden liegen an einem Knoten ({1}), daher bewirkt er nichts</translation>
    </message>
    <message>
        <source>both ends at {1}</source>
        <translation>beide Enden an {1}</translation>
    </message>
    <message>
        <source>both ends of shunt {1} would be at one point, the {2}</source>
        <translation>beide Enden von Shunt {1} wären an einem Punkt, {2}</translation>
    </message>
    <message>
        <source>both ends would be on one node ({1})</source>
        <translation>beide Enden lägen an einem Knoten ({1})</translation>
    </message>
    <message>
        <source>both excitation wires</source>
        <translation>beide Speiseleitungen</translation>
    </message>
    <message>
        <source>both leads end at one point of the gauge</source>
        <translation>beide Leitungen enden an einem Punkt des DMS</translation>
    </message>
    <message>
        <source>both wires of each gauge</source>
        <translation>beide Leitungen jedes DMS</translation>
    </message>
    <message>
        <source>both wires of the gauge</source>
        <translation>beide Leitungen des DMS</translation>
    </message>
    <message>
        <source>box {1} at {2}</source>
        <translation>Dekade {1} bei {2}</translation>
    </message>
    <message>
        <source>bridge factor set on the instrument</source>
        <translation>am Gerät eingestellter Brückenfaktor</translation>
    </message>
    <message>
        <source>bridge template</source>
        <translation>Brückenvorlage</translation>
    </message>
    <message>
        <source>bridges a lead</source>
        <translation>überbrückt eine Leitung</translation>
    </message>
    <message>
        <source>by {1}</source>
        <translation>um {1}</translation>
    </message>
    <message>
        <source>calibration due {1}</source>
        <translation>Kalibrierung fällig am {1}</translation>
    </message>
    <message>
        <source>calibration of the instrument due</source>
        <translation>Kalibrierung des Geräts fällig</translation>
    </message>
    <message>
        <source>calibration of the resistor of shunt {1} due</source>
        <translation>Kalibrierung des Widerstands von Shunt {1} fällig</translation>
    </message>
    <message>
        <source>calibration resistors of ±0.01 % are usual</source>
        <translation>Kalibrierwiderstände von ±0,01 % sind üblich</translation>
    </message>
    <message>
        <source>came to grief on it (signal {1})</source>
        <translation>ist daran gescheitert (Signal {1})</translation>
    </message>
    <message>
        <source>cannot be predicted</source>
        <translation>nicht vorherzusagen</translation>
    </message>
    <message>
        <source>cannot be predicted and is not in the line</source>
        <translation>ist nicht vorherzusagen und nicht in der Geraden</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht zu lesen</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht entscheidbar</translation>
    </message>
    <message>
        <source>cannot tell: {1}</source>
        <translation>nicht entscheidbar: {1}</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>certificate of the instrument</source>
        <translation>Kalibrierschein des Geräts</translation>
    </message>
    <message>
        <source>certificate of the resistor of shunt {1}</source>
        <translation>Kalibrierschein des Widerstands von Shunt {1}</translation>
    </message>
    <message>
        <source>certificate {1}</source>
        <translation>Kalibrierschein {1}</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>Messkette</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>changed since the check before: {1}</source>
        <translation>geändert seit der Prüfung davor: {1}</translation>
    </message>
    <message>
        <source>changed within margin</source>
        <translation>geändert, in Toleranz</translation>
    </message>
    <message>
        <source>changed within the margin</source>
        <translation>geändert, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>check {1}</source>
        <translation>Prüfung {1}</translation>
    </message>
    <message>
        <source>check {1} has no reading</source>
        <translation>Prüfung {1} hat keinen Messwert</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>chi-square {1}</source>
        <translation>Chi-Quadrat {1}</translation>
    </message>
    <message>
        <source>chi-square {1}, probability {2}</source>
        <translation>Chi-Quadrat {1}, Wahrscheinlichkeit {2}</translation>
    </message>
    <message>
        <source>choice of channels</source>
        <translation>Wahl der Kanäle</translation>
    </message>
    <message>
        <source>chosen from</source>
        <translation>gewählt aus</translation>
    </message>
    <message>
        <source>closed: kept with the check, the same as that of the channel now</source>
        <translation>abgeschlossen: mit der Prüfung festgehalten, gleich der jetzigen des Kanals</translation>
    </message>
    <message>
        <source>closed: kept with the check; that of the channel was changed since</source>
        <translation>abgeschlossen: mit der Prüfung festgehalten; die des Kanals wurde seither geändert</translation>
    </message>
    <message>
        <source>closer to the limit than the guard band of {1}</source>
        <translation>näher am Grenzwert als der Schutzabstand von {1}</translation>
    </message>
    <message>
        <source>column {1}</source>
        <translation>Spalte {1}</translation>
    </message>
    <message>
        <source>combined error</source>
        <translation>zusammengesetzter Fehler</translation>
    </message>
    <message>
        <source>combined u</source>
        <translation>kombinierte u</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>allgemeine Praxis</translation>
    </message>
    <message>
        <source>comparison of checks</source>
        <translation>Vergleich der Prüfungen</translation>
    </message>
    <message>
        <source>completion resistor in {1}</source>
        <translation>Ergänzungswiderstand in {1}</translation>
    </message>
    <message>
        <source>completion resistor of arm {1}</source>
        <translation>Ergänzungswiderstand von Zweig {1}</translation>
    </message>
    <message>
        <source>completion resistors of ±0.05 % are usual</source>
        <translation>Ergänzungswiderstände von ±0,05 % sind üblich</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>Stauchung</translation>
    </message>
    <message>
        <source>conformity probability</source>
        <translation>Konformitätswahrscheinlichkeit</translation>
    </message>
    <message>
        <source>connected to {1}</source>
        <translation>verbunden mit {1}</translation>
    </message>
    <message>
        <source>constant</source>
        <translation>konstant</translation>
    </message>
    <message>
        <source>constant current</source>
        <translation>Konstantstrom</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>contact of shunt {1}</source>
        <translation>Kontakt von Shunt {1}</translation>
    </message>
    <message>
        <source>contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>copper, {1} of {2} at {3}</source>
        <translation>Kupfer, {1} von {2} bei {3}</translation>
    </message>
    <message>
        <source>corrected = {1}</source>
        <translation>korrigiert = {1}</translation>
    </message>
    <message>
        <source>corrected = {1} × {2}</source>
        <translation>korrigiert = {1} × {2}</translation>
    </message>
    <message>
        <source>correlation group</source>
        <translation>Korrelationsgruppe</translation>
    </message>
    <message>
        <source>correlation of group {1}</source>
        <translation>Korrelation der Gruppe {1}</translation>
    </message>
    <message>
        <source>counts the rows</source>
        <translation>zählt die Zeilen</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Deckblatt</translation>
    </message>
    <message>
        <source>coverage</source>
        <translation>Überdeckung</translation>
    </message>
    <message>
        <source>d = y − expected</source>
        <translation>d = y − erwartet</translation>
    </message>
    <message>
        <source>decade box</source>
        <translation>Widerstandsdekade</translation>
    </message>
    <message>
        <source>decided with a guard band of {1}</source>
        <translation>entschieden mit einem Schutzabstand von {1}</translation>
    </message>
    <message>
        <source>decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>degree {1} cannot be fitted</source>
        <translation>Grad {1} lässt sich nicht anpassen</translation>
    </message>
    <message>
        <source>degrees of freedom not used, since inputs are correlated</source>
        <translation>Freiheitsgrade nicht verwendet, da Eingangsgrößen korreliert sind</translation>
    </message>
    <message>
        <source>derived as in Micro-Measurements TN-507</source>
        <translation>hergeleitet wie in Micro-Measurements TN-507</translation>
    </message>
    <message>
        <source>derived from the output of the ideal bridge</source>
        <translation>hergeleitet aus dem Signal der idealen Brücke</translation>
    </message>
    <message>
        <source>diagnosis</source>
        <translation>Diagnose</translation>
    </message>
    <message>
        <source>did not come to an end</source>
        <translation>kam zu keinem Ende</translation>
    </message>
    <message>
        <source>divides by the measured excitation</source>
        <translation>teilt durch die gemessene Speisung</translation>
    </message>
    <message>
        <source>does not know it as a MATLAB or HDF5 file</source>
        <translation>kennt sie nicht als MATLAB- oder HDF5-Datei</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>drifts by {1} times its uncertainty within the level</source>
        <translation>driftet innerhalb des Plateaus um das {1}-Fache seiner Unsicherheit</translation>
    </message>
    <message>
        <source>drifts within the level</source>
        <translation>driftet innerhalb des Plateaus</translation>
    </message>
    <message>
        <source>due {1} instead of {2}</source>
        <translation>fällig {1} statt {2}</translation>
    </message>
    <message>
        <source>dummy gauge in arm {1}</source>
        <translation>Kompensations-DMS in Zweig {1}</translation>
    </message>
    <message>
        <source>dynamic, high accuracy</source>
        <translation>dynamisch, hohe Genauigkeit</translation>
    </message>
    <message>
        <source>dynamic, low accuracy</source>
        <translation>dynamisch, geringe Genauigkeit</translation>
    </message>
    <message>
        <source>dynamic, moderate accuracy</source>
        <translation>dynamisch, mäßige Genauigkeit</translation>
    </message>
    <message>
        <source>each lead {1} less than entered</source>
        <translation>jede Leitung {1} weniger als eingetragen</translation>
    </message>
    <message>
        <source>each lead {1} more than entered</source>
        <translation>jede Leitung {1} mehr als eingetragen</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>end the name with .svg, .png or .pdf</source>
        <translation>den Namen auf .svg, .png oder .pdf enden lassen</translation>
    </message>
    <message>
        <source>end {1} of resistor {2}</source>
        <translation>Ende {1} von Widerstand {2}</translation>
    </message>
    <message>
        <source>end-point line</source>
        <translation>Festpunktgerade</translation>
    </message>
    <message>
        <source>equal arms without leads, any size of strain</source>
        <translation>gleiche Zweige ohne Leitungen, Dehnung beliebiger Größe</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>excellent: heavy aluminium or copper part</source>
        <translation>ausgezeichnet: dickes Teil aus Aluminium oder Kupfer</translation>
    </message>
    <message>
        <source>exchanged pairs</source>
        <translation>vertauschte Paare</translation>
    </message>
    <message>
        <source>excitation</source>
        <translation>Speisung</translation>
    </message>
    <message>
        <source>excitation current</source>
        <translation>Speisestrom</translation>
    </message>
    <message>
        <source>excitation sensed at the bridge</source>
        <translation>Speisung an der Brücke gefühlt</translation>
    </message>
    <message>
        <source>excitation shorted</source>
        <translation>Speisung kurzgeschlossen</translation>
    </message>
    <message>
        <source>excitation within 0.1 %</source>
        <translation>Speisung auf 0,1 %</translation>
    </message>
    <message>
        <source>expanded U</source>
        <translation>erweiterte U</translation>
    </message>
    <message>
        <source>explains {1} %</source>
        <translation>erklärt {1} %</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>failing: {1}</source>
        <translation>nicht bestanden: {1}</translation>
    </message>
    <message>
        <source>fails</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>fair: thin stainless steel or titanium</source>
        <translation>mäßig: dünner nichtrostender Stahl oder Titan</translation>
    </message>
    <message>
        <source>fall</source>
        <translation>fallen</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>fallende</translation>
    </message>
    <message>
        <source>falling less rising {1}</source>
        <translation>fallend minus steigend {1}</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>fällt</translation>
    </message>
    <message>
        <source>far-fetched</source>
        <translation>weit hergeholt</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>fewer than three steps with a reading, or none with a shunt closed, say too little about causes</source>
        <translation>weniger als drei Stufen mit Messwert, oder keine mit geschlossenem Shunt, sagen zu wenig über Ursachen</translation>
    </message>
    <message>
        <source>figures of merit</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>filter cutoff</source>
        <translation>Grenzfrequenz des Filters</translation>
    </message>
    <message>
        <source>filter order</source>
        <translation>Ordnung des Filters</translation>
    </message>
    <message>
        <source>filter window</source>
        <translation>Fenster des Filters</translation>
    </message>
    <message>
        <source>fingerprint {1}</source>
        <translation>Fingerabdruck {1}</translation>
    </message>
    <message>
        <source>first-row=0: lines count from 1</source>
        <translation>first-row=0: Zeilen zählen ab 1</translation>
    </message>
    <message>
        <source>first-row={1}: the file has {2} lines</source>
        <translation>first-row={1}: die Datei hat {2} Zeilen</translation>
    </message>
    <message>
        <source>fitted, by value</source>
        <translation>eingebaut, nach Wert</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>potentialfrei</translation>
    </message>
    <message>
        <source>found it damaged</source>
        <translation>fand sie beschädigt</translation>
    </message>
    <message>
        <source>from the output by the rated output</source>
        <translation>aus dem Signal mit dem Nennkennwert</translation>
    </message>
    <message>
        <source>from {1}</source>
        <translation>von {1}</translation>
    </message>
    <message>
        <source>from {1} to between {2} and {3}</source>
        <translation>von {1} auf zwischen {2} und {3}</translation>
    </message>
    <message>
        <source>from {1} to none</source>
        <translation>von {1} auf keinen</translation>
    </message>
    <message>
        <source>from {1} to {2}</source>
        <translation>von {1} zu {2}</translation>
    </message>
    <message>
        <source>from {1} to {2} or more</source>
        <translation>von {1} auf {2} oder mehr</translation>
    </message>
    <message>
        <source>from {1} to {2} s ({3})</source>
        <translation>von {1} bis {2} s ({3})</translation>
    </message>
    <message>
        <source>from {1}{3} to {2}{3}</source>
        <translation>von {1}{3} auf {2}{3}</translation>
    </message>
    <message>
        <source>full bridge</source>
        <translation>Vollbrücke</translation>
    </message>
    <message>
        <source>full bridge with Poisson gauges</source>
        <translation>Vollbrücke mit Querdehnungs-DMS</translation>
    </message>
    <message>
        <source>gain</source>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>gain and zero</source>
        <translation>Verstärkung und Nullpunkt</translation>
    </message>
    <message>
        <source>gain of a strain amplifier within 0.05 %</source>
        <translation>Verstärkung eines DMS-Verstärkers auf 0,05 %</translation>
    </message>
    <message>
        <source>gain of the instrument</source>
        <translation>Verstärkung des Geräts</translation>
    </message>
    <message>
        <source>gain {1}</source>
        <translation>Verstärkung {1}</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>DMS</translation>
    </message>
    <message>
        <source>gauge end of lead {1}</source>
        <translation>DMS-Ende der Leitung {1}</translation>
    </message>
    <message>
        <source>gauge factor</source>
        <translation>k-Faktor</translation>
    </message>
    <message>
        <source>gauge factor and bridge factor</source>
        <translation>k-Faktor und Brückenfaktor</translation>
    </message>
    <message>
        <source>gauge factor as set</source>
        <translation>k-Faktor wie eingestellt</translation>
    </message>
    <message>
        <source>gauge factor set on the instrument</source>
        <translation>am Gerät eingestellter k-Faktor</translation>
    </message>
    <message>
        <source>gauge factors of a lot are usually stated within 1 %, k = 2</source>
        <translation>k-Faktoren eines Loses sind meist auf 1 % angegeben, k = 2</translation>
    </message>
    <message>
        <source>gauge in {1}</source>
        <translation>DMS in {1}</translation>
    </message>
    <message>
        <source>gauge resistance</source>
        <translation>DMS-Widerstand</translation>
    </message>
    <message>
        <source>gauge resistance by its package, within 0.3 %, not measured installed</source>
        <translation>DMS-Widerstand laut Packung, auf 0,3 %, eingebaut nicht gemessen</translation>
    </message>
    <message>
        <source>gauge {1}</source>
        <translation>DMS {1}</translation>
    </message>
    <message>
        <source>gauges within 2 K of the temperature stated</source>
        <translation>DMS auf 2 K der angegebenen Temperatur</translation>
    </message>
    <message>
        <source>gave up ({1})</source>
        <translation>gab auf ({1})</translation>
    </message>
    <message>
        <source>generalised distance regression</source>
        <translation>verallgemeinerte Abstandsregression</translation>
    </message>
    <message>
        <source>generalised least squares</source>
        <translation>verallgemeinerte kleinste Quadrate</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>good: thick steel</source>
        <translation>gut: dicker Stahl</translation>
    </message>
    <message>
        <source>greatest deviation of {1} from the {2} through measured against expected reading (rising and falling averaged); measured less line, of the measured span</source>
        <translation>größte Abweichung {1} von der Geraden „{2}“ durch gemessene über erwarteten Messwerten (steigend und fallend gemittelt); gemessen minus Gerade, von der gemessenen Spanne</translation>
    </message>
    <message>
        <source>greatest difference of falling and rising readings at one expected value other than zero; falling less rising (of several, their means), of the measured span</source>
        <translation>größte Differenz fallender und steigender Messwerte bei einem erwarteten Wert außer null; fallend minus steigend (von mehreren ihre Mittelwerte), von der gemessenen Spanne</translation>
    </message>
    <message>
        <source>greatest power of the resistor of shunt {1}</source>
        <translation>größte Leistung des Widerstands von Shunt {1}</translation>
    </message>
    <message>
        <source>greatest share of U in the limit</source>
        <translation>größter Anteil von U am Grenzwert</translation>
    </message>
    <message>
        <source>greatest spread of readings at one expected value other than zero, reached from the same side; largest less smallest, of the measured span</source>
        <translation>größte Streuung der Messwerte bei einem erwarteten Wert außer null, von derselben Seite erreicht; größter minus kleinster, von der gemessenen Spanne</translation>
    </message>
    <message>
        <source>grid of a gauge</source>
        <translation>Gitter eines DMS</translation>
    </message>
    <message>
        <source>grid of {1}</source>
        <translation>Gitter von {1}</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>group {1}</source>
        <translation>Gruppe {1}</translation>
    </message>
    <message>
        <source>groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <source>guard band in units of U</source>
        <translation>Schutzabstand in Einheiten von U</translation>
    </message>
    <message>
        <source>guarded acceptance</source>
        <translation>Annahme mit Schutzabstand</translation>
    </message>
    <message>
        <source>half bridge</source>
        <translation>Halbbrücke</translation>
    </message>
    <message>
        <source>half bridge with Poisson gauge</source>
        <translation>Halbbrücke mit Querdehnungs-DMS</translation>
    </message>
    <message>
        <source>hanging end</source>
        <translation>hängendes Ende</translation>
    </message>
    <message>
        <source>has a spacing of its samples that is not above zero</source>
        <translation>hat einen Abstand der Abtastwerte, der nicht über null liegt</translation>
    </message>
    <message>
        <source>has more than 4096 columns</source>
        <translation>hat mehr als 4096 Spalten</translation>
    </message>
    <message>
        <source>has no numbers: the file ends before them</source>
        <translation>hat keine Zahlen: Die Datei endet davor</translation>
    </message>
    <message>
        <source>has no reading and is not in the line</source>
        <translation>hat keinen Messwert und ist nicht in der Geraden</translation>
    </message>
    <message>
        <source>has {1} of {2} samples</source>
        <translation>hat {1} von {2} Abtastwerten</translation>
    </message>
    <message>
        <source>heat sink</source>
        <translation>Wärmeableitung</translation>
    </message>
    <message>
        <source>high</source>
        <translation>zu hoch</translation>
    </message>
    <message>
        <source>history</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>hold of step {1}</source>
        <translation>Haltezeit von Stufe {1}</translation>
    </message>
    <message>
        <source>holds Python objects, which are not opened</source>
        <translation>enthält Python-Objekte, die nicht geöffnet werden</translation>
    </message>
    <message>
        <source>holds complex numbers</source>
        <translation>enthält komplexe Zahlen</translation>
    </message>
    <message>
        <source>holds dates or times of day that are not needed</source>
        <translation>enthält Daten oder Uhrzeiten, die nicht gebraucht werden</translation>
    </message>
    <message>
        <source>holds elements of type {1} and no plain numbers</source>
        <translation>enthält Elemente vom Typ {1} und keine einfachen Zahlen</translation>
    </message>
    <message>
        <source>holds no samples</source>
        <translation>enthält keine Abtastwerte</translation>
    </message>
    <message>
        <source>holds numbers in a binary form that is not IEEE 754</source>
        <translation>enthält Zahlen in einer Binärform, die nicht IEEE 754 ist</translation>
    </message>
    <message>
        <source>holds numbers of an unknown type</source>
        <translation>enthält Zahlen unbekannten Typs</translation>
    </message>
    <message>
        <source>holds words</source>
        <translation>enthält Wörter</translation>
    </message>
    <message>
        <source>how the bridge is connected</source>
        <translation>wie die Brücke angeschlossen ist</translation>
    </message>
    <message>
        <source>hysteresis</source>
        <translation>Umkehrspanne</translation>
    </message>
    <message>
        <source>ignored</source>
        <translation>nicht beachtet</translation>
    </message>
    <message>
        <source>in another order</source>
        <translation>in anderer Folge</translation>
    </message>
    <message>
        <source>indication corrected for the bridge&apos;s nonlinearity</source>
        <translation>um die Nichtlinearität der Brücke korrigierte Anzeige</translation>
    </message>
    <message>
        <source>infinite</source>
        <translation>unendlich</translation>
    </message>
    <message>
        <source>infinite degrees of freedom</source>
        <translation>unendlich viele Freiheitsgrade</translation>
    </message>
    <message>
        <source>input resistance</source>
        <translation>Eingangswiderstand</translation>
    </message>
    <message>
        <source>input resistance by its data sheet, within 20 %</source>
        <translation>Eingangswiderstand laut Datenblatt, auf 20 %</translation>
    </message>
    <message>
        <source>input {1}</source>
        <translation>Eingangsgröße {1}</translation>
    </message>
    <message>
        <source>inside the instrument</source>
        <translation>im Gerät</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>instrument end of lead {1}</source>
        <translation>Geräteende der Leitung {1}</translation>
    </message>
    <message>
        <source>instrument input</source>
        <translation>Geräteeingang</translation>
    </message>
    <message>
        <source>insulation is known to its order only, within 50 %</source>
        <translation>Isolation ist nur der Größenordnung nach bekannt, auf 50 %</translation>
    </message>
    <message>
        <source>is &apos;infinity&apos; of SCPI (9.9E37), mostly an overload</source>
        <translation>ist „infinity“ von SCPI (9.9E37), meist eine Übersteuerung</translation>
    </message>
    <message>
        <source>is &apos;not a number&apos; of SCPI (9.91E37)</source>
        <translation>ist „not a number“ von SCPI (9.91E37)</translation>
    </message>
    <message>
        <source>is a single number</source>
        <translation>ist eine einzelne Zahl</translation>
    </message>
    <message>
        <source>is a time that is not needed</source>
        <translation>ist eine Zeit, die nicht gebraucht wird</translation>
    </message>
    <message>
        <source>is beyond 4096 columns</source>
        <translation>liegt jenseits von 4096 Spalten</translation>
    </message>
    <message>
        <source>is beyond the range of numbers</source>
        <translation>liegt außerhalb des Bereichs von Zahlen</translation>
    </message>
    <message>
        <source>is beyond the range of numbers in seconds</source>
        <translation>liegt in Sekunden außerhalb des Bereichs von Zahlen</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>ist leer</translation>
    </message>
    <message>
        <source>is no column of numbers</source>
        <translation>ist keine Spalte von Zahlen</translation>
    </message>
    <message>
        <source>is not a date</source>
        <translation>ist kein Datum</translation>
    </message>
    <message>
        <source>is not a date and time</source>
        <translation>ist kein Datum mit Uhrzeit</translation>
    </message>
    <message>
        <source>is not a finite number</source>
        <translation>ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>is not a number</source>
        <translation>ist keine Zahl</translation>
    </message>
    <message>
        <source>is not a number of seconds since 1970</source>
        <translation>ist keine Zahl von Sekunden seit 1970</translation>
    </message>
    <message>
        <source>is not a time of day</source>
        <translation>ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>is not over time</source>
        <translation>ist nicht über der Zeit</translation>
    </message>
    <message>
        <source>is sampled at other times</source>
        <translation>ist zu anderen Zeiten abgetastet</translation>
    </message>
    <message>
        <source>it</source>
        <translation>ihn</translation>
    </message>
    <message>
        <source>it announces a sample rate of 0</source>
        <translation>sie kündigt eine Abtastrate von 0 an</translation>
    </message>
    <message>
        <source>it announces samples of {1} bits in frames of {2} bytes</source>
        <translation>sie kündigt Abtastwerte von {1} Bit in Rahmen von {2} Byte an</translation>
    </message>
    <message>
        <source>it announces {1} channels</source>
        <translation>sie kündigt {1} Kanäle an</translation>
    </message>
    <message>
        <source>it cannot be read, {1}</source>
        <translation>sie lässt sich nicht lesen, {1}</translation>
    </message>
    <message>
        <source>it cannot be written</source>
        <translation>sie lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>it cannot be written, {1}</source>
        <translation>sie kann nicht geschrieben werden, {1}</translation>
    </message>
    <message>
        <source>it does not lie behind the level above, or ends before it begins</source>
        <translation>es liegt nicht hinter dem Plateau darüber oder endet, bevor es beginnt</translation>
    </message>
    <message>
        <source>it does not name two leads</source>
        <translation>es nennt keine zwei Leitungen</translation>
    </message>
    <message>
        <source>it does not say where</source>
        <translation>der Ort fehlt</translation>
    </message>
    <message>
        <source>it does not say where it lies in the recording</source>
        <translation>es sagt nicht, wo in der Aufzeichnung es liegt</translation>
    </message>
    <message>
        <source>it does not say why it is returned</source>
        <translation>es sagt nicht, warum es zurückgegeben wird</translation>
    </message>
    <message>
        <source>it has changed since it was submitted</source>
        <translation>es hat sich geändert, seit es vorgelegt wurde</translation>
    </message>
    <message>
        <source>it has fewer than three numbers</source>
        <translation>sie hat weniger als drei Zahlen</translation>
    </message>
    <message>
        <source>it has fewer than three samples</source>
        <translation>sie hat weniger als drei Abtastwerte</translation>
    </message>
    <message>
        <source>it has no certificate_value beside it</source>
        <translation>daneben steht kein certificate_value</translation>
    </message>
    <message>
        <source>it has no check {1}</source>
        <translation>er hat keine Prüfung {1}</translation>
    </message>
    <message>
        <source>it has no id</source>
        <translation>er hat keine Kennung</translation>
    </message>
    <message>
        <source>it has no number in any column</source>
        <translation>sie hat in keiner Spalte eine Zahl</translation>
    </message>
    <message>
        <source>it has no sense leads for {1}</source>
        <translation>er hat keine Fühlerleitungen für {1}</translation>
    </message>
    <message>
        <source>it has no {1} for pin {2}</source>
        <translation>er hat kein {1} für Stift {2}</translation>
    </message>
    <message>
        <source>it has no {1} for shunt {2}</source>
        <translation>er hat kein {1} für Shunt {2}</translation>
    </message>
    <message>
        <source>it has no {1} for {2}</source>
        <translation>er hat kein {1} für {2}</translation>
    </message>
    <message>
        <source>it has readings in {1} in an open check, and would read in {2}</source>
        <translation>er hat in einer offenen Prüfung Messwerte in {1} und zeigte dann in {2}</translation>
    </message>
    <message>
        <source>it has {1} bytes and had {2} when the readings were taken</source>
        <translation>sie hat {1} Byte und hatte {2}, als die Messwerte entstanden</translation>
    </message>
    <message>
        <source>it has {1} cells under {2} names: commas between cells and decimal commas cannot be told apart</source>
        <translation>sie hat {1} Zellen unter {2} Namen: Kommas zwischen Zellen und Dezimalkommas sind nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>it has {1} numbers, the points need {2} rows of {3}</source>
        <translation>sie hat {1} Zahlen, die Punkte brauchen {2} Zeilen zu {3}</translation>
    </message>
    <message>
        <source>it has {1} of {2} cells</source>
        <translation>sie hat {1} von {2} Zellen</translation>
    </message>
    <message>
        <source>it holds more than {1} functions</source>
        <translation>sie enthält mehr als {1} Funktionen</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>it is a link that leads in a circle</source>
        <translation>das ist ein Verweis, der im Kreis führt</translation>
    </message>
    <message>
        <source>it is a pipe or a device</source>
        <translation>das ist eine Pipe oder ein Gerät</translation>
    </message>
    <message>
        <source>it is accepted already</source>
        <translation>es ist schon freigegeben</translation>
    </message>
    <message>
        <source>it is below zero</source>
        <translation>sie ist kleiner als null</translation>
    </message>
    <message>
        <source>it is connected to P-, to P+ or to nothing</source>
        <translation>sie liegt an P-, an P+ oder an nichts</translation>
    </message>
    <message>
        <source>it is empty</source>
        <translation>sie ist leer</translation>
    </message>
    <message>
        <source>it is fed with a constant current</source>
        <translation>sie wird mit Konstantstrom gespeist</translation>
    </message>
    <message>
        <source>it is larger than 64 MB</source>
        <translation>sie ist größer als 64 MB</translation>
    </message>
    <message>
        <source>it is larger than {1} MB</source>
        <translation>sie ist größer als {1} MB</translation>
    </message>
    <message>
        <source>it is longer than {1} bytes</source>
        <translation>sie ist länger als {1} Byte</translation>
    </message>
    <message>
        <source>it is longer than {1} characters</source>
        <translation>es ist länger als {1} Zeichen</translation>
    </message>
    <message>
        <source>it is more than {1}</source>
        <translation>es ist mehr als {1}</translation>
    </message>
    <message>
        <source>it is no regular file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it is not a SHA-256 sum</source>
        <translation>das ist keine SHA-256-Summe</translation>
    </message>
    <message>
        <source>it is not a Shuntwright document</source>
        <translation>das ist kein Shuntwright-Dokument</translation>
    </message>
    <message>
        <source>it is not a finite number</source>
        <translation>es ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>it is not a number</source>
        <translation>das ist keine Zahl</translation>
    </message>
    <message>
        <source>it is not a report template</source>
        <translation>das ist keine Berichtsvorlage</translation>
    </message>
    <message>
        <source>it is not a whole number from 0 to 2^64 - 1</source>
        <translation>das ist keine ganze Zahl von 0 bis 2^64 - 1</translation>
    </message>
    <message>
        <source>it is not in the folder of the document</source>
        <translation>sie liegt nicht im Ordner des Dokuments</translation>
    </message>
    <message>
        <source>it is not known what time it is</source>
        <translation>die Uhrzeit ist nicht bekannt</translation>
    </message>
    <message>
        <source>it is not submitted</source>
        <translation>es ist nicht vorgelegt</translation>
    </message>
    <message>
        <source>it is put together in a temporary file, and that cannot be written: {1}, {2}</source>
        <translation>sie wird in einer temporären Datei zusammengestellt, und die lässt sich nicht schreiben: {1}, {2}</translation>
    </message>
    <message>
        <source>it is submitted already</source>
        <translation>es ist schon vorgelegt</translation>
    </message>
    <message>
        <source>it is taken for the {1}, and so is {2}</source>
        <translation>sie gilt als {1}, und {2} ebenso</translation>
    </message>
    <message>
        <source>it is written, but the disk did not confirm its folder, {1}</source>
        <translation>es ist geschrieben, aber die Platte hat seinen Ordner nicht bestätigt, {1}</translation>
    </message>
    <message>
        <source>it is {1} where {2} belongs</source>
        <translation>es ist {1}, wo {2} hingehört</translation>
    </message>
    <message>
        <source>it names the lead {1} twice</source>
        <translation>es nennt die Leitung {1} zweimal</translation>
    </message>
    <message>
        <source>it needs a value</source>
        <translation>es braucht einen Wert</translation>
    </message>
    <message>
        <source>it needs readings at three expected values</source>
        <translation>dazu braucht es Messwerte bei drei erwarteten Werten</translation>
    </message>
    <message>
        <source>it needs readings at two expected values</source>
        <translation>dazu braucht es Messwerte bei zwei erwarteten Werten</translation>
    </message>
    <message>
        <source>it needs readings at two expected values (zero counts) on either side of zero</source>
        <translation>dazu braucht es Messwerte bei zwei erwarteten Werten (null zählt) auf jeder Seite von null</translation>
    </message>
    <message>
        <source>it needs two zero readings</source>
        <translation>dazu braucht es zwei Nullwerte</translation>
    </message>
    <message>
        <source>it reads {1} if this is the cause, {2} as entered</source>
        <translation>es zeigt {1}, wenn dies die Ursache ist, {2} wie eingetragen</translation>
    </message>
    <message>
        <source>it takes no value</source>
        <translation>es nimmt keinen Wert</translation>
    </message>
    <message>
        <source>it was saved by a newer Shuntwright as file version {1}, and this one reads up to version {2}</source>
        <translation>ein neueres Shuntwright hat es in Dateifassung {1} gespeichert, und dieses liest bis Fassung {2}</translation>
    </message>
    <message>
        <source>its U of {1} is at most {2}, so the risk is shared</source>
        <translation>seine U von {1} ist höchstens {2}, daher wird das Risiko geteilt</translation>
    </message>
    <message>
        <source>its U of {1} is more than {2}, and yet it is beyond the limit with all of it</source>
        <translation>seine U von {1} ist mehr als {2}, und doch liegt er mit der ganzen U jenseits des Grenzwerts</translation>
    </message>
    <message>
        <source>its U of {1} is more than {2}, too much for the risk to be shared</source>
        <translation>seine U von {1} ist mehr als {2}, zu viel, um das Risiko zu teilen</translation>
    </message>
    <message>
        <source>its covariance of x and y is not a finite number</source>
        <translation>seine Kovarianz von x und y ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>its covariance of x and y is not smaller than ux times uy</source>
        <translation>seine Kovarianz von x und y ist nicht kleiner als ux mal uy</translation>
    </message>
    <message>
        <source>its ending names no kind of picture</source>
        <translation>seine Endung nennt keine Bildart</translation>
    </message>
    <message>
        <source>its least limit would be {1} {2} where {3} was meant</source>
        <translation>sein Mindestgrenzwert wäre {1} {2}, wo {3} gemeint war</translation>
    </message>
    <message>
        <source>its levels are being looked for</source>
        <translation>seine Plateaus werden gesucht</translation>
    </message>
    <message>
        <source>its lines are longer than {1} bytes</source>
        <translation>ihre Zeilen sind länger als {1} Byte</translation>
    </message>
    <message>
        <source>its name must have 1 to {1} characters</source>
        <translation>sein Name muss 1 bis {1} Zeichen haben</translation>
    </message>
    <message>
        <source>its name would be empty</source>
        <translation>sein Name wäre leer</translation>
    </message>
    <message>
        <source>its name would be {1}, which another channel has</source>
        <translation>sein Name wäre {1}, den ein anderer Kanal hat</translation>
    </message>
    <message>
        <source>its reading is no finite number and is not in the line</source>
        <translation>ihr Messwert ist keine endliche Zahl und nicht in der Geraden</translation>
    </message>
    <message>
        <source>its samples are compressed (WAV format {1})</source>
        <translation>ihre Abtastwerte sind komprimiert (WAV-Format {1})</translation>
    </message>
    <message>
        <source>its slope is zero, so no x belongs to a y</source>
        <translation>ihre Steigung ist null, daher gehört kein x zu einem y</translation>
    </message>
    <message>
        <source>its time is not a finite number</source>
        <translation>ihre Zeit ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>its time lies before that of the one above</source>
        <translation>ihre Zeit liegt vor der darüber</translation>
    </message>
    <message>
        <source>its uncertainty is beyond any number</source>
        <translation>ihre Unsicherheit ist größer als jede Zahl</translation>
    </message>
    <message>
        <source>its uncertainty is not known</source>
        <translation>seine Unsicherheit ist nicht bekannt</translation>
    </message>
    <message>
        <source>its uncertainty is not known, and without it there is no E_n</source>
        <translation>seine Unsicherheit ist nicht bekannt, und ohne sie gibt es kein E_n</translation>
    </message>
    <message>
        <source>its uncertainty must be a finite number that is not negative</source>
        <translation>ihre Unsicherheit muss eine endliche, nicht negative Zahl sein</translation>
    </message>
    <message>
        <source>its value is no finite number</source>
        <translation>ihr Wert ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>its value must be from {1} to {2}</source>
        <translation>der Wert muss von {1} bis {2} reichen</translation>
    </message>
    <message>
        <source>its variance is not positive</source>
        <translation>ihre Varianz ist nicht positiv</translation>
    </message>
    <message>
        <source>its words are not taken for names.</source>
        <translation>ihre Wörter gelten nicht als Namen.</translation>
    </message>
    <message>
        <source>jumper {1}</source>
        <translation>Steckbrücke {1}</translation>
    </message>
    <message>
        <source>jumpers of shunt {1}</source>
        <translation>Steckbrücken von Shunt {1}</translation>
    </message>
    <message>
        <source>jumpers {1} and {2} of {3} are swapped</source>
        <translation>die Steckbrücken {1} und {2} von {3} sind vertauscht</translation>
    </message>
    <message>
        <source>k plays no part in this statement</source>
        <translation>k spielt in dieser Angabe keine Rolle</translation>
    </message>
    <message>
        <source>keep {1} closed</source>
        <translation>{1} geschlossen halten</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>label of step {1}</source>
        <translation>Name von Stufe {1}</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>größer</translation>
    </message>
    <message>
        <source>last less first zero reading {1}</source>
        <translation>letzter minus erster Nullwert {1}</translation>
    </message>
    <message>
        <source>last zero reading less the first, of the greatest expected reading</source>
        <translation>letzter Nullwert minus erster, vom größten erwarteten Messwert</translation>
    </message>
    <message>
        <source>lead cross-section</source>
        <translation>Leitungsquerschnitt</translation>
    </message>
    <message>
        <source>lead length</source>
        <translation>Leitungslänge</translation>
    </message>
    <message>
        <source>lead resistance</source>
        <translation>Leitungswiderstand</translation>
    </message>
    <message>
        <source>lead {1}</source>
        <translation>Leitung {1}</translation>
    </message>
    <message>
        <source>leads</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>leads are entered as exchanged</source>
        <translation>Leitungen als vertauscht eingetragen sind</translation>
    </message>
    <message>
        <source>leads warmer by</source>
        <translation>Leitungen wärmer um</translation>
    </message>
    <message>
        <source>leads warmer than stated</source>
        <translation>Leitungen wärmer als angegeben</translation>
    </message>
    <message>
        <source>leads within 5 K of the temperature stated</source>
        <translation>Leitungen auf 5 K der angegebenen Temperatur</translation>
    </message>
    <message numerus="yes">
        <source>leads {1}</source>
        <extracomment>{n} is a count. In English for one: lead {1}</extracomment>
        <translation>
            <numerusform>Leitung {1}</numerusform>
            <numerusform>Leitungen {1}</numerusform>
        </translation>
    </message>
    <message>
        <source>leads {1} and {2} are swapped at the instrument</source>
        <translation>die Leitungen {1} und {2} sind am Gerät vertauscht</translation>
    </message>
    <message>
        <source>leak over arm {1}</source>
        <translation>Nebenschluss über Zweig {1}</translation>
    </message>
    <message>
        <source>leak over {1}</source>
        <translation>Nebenschluss über {1}</translation>
    </message>
    <message>
        <source>leak to structure of arm {1}</source>
        <translation>Nebenschluss zur Struktur von Zweig {1}</translation>
    </message>
    <message>
        <source>leak to structure of {1}</source>
        <translation>Nebenschluss zur Struktur von {1}</translation>
    </message>
    <message>
        <source>leaks</source>
        <translation>Nebenschlüssen</translation>
    </message>
    <message>
        <source>least limit</source>
        <translation>Mindestgrenzwert</translation>
    </message>
    <message>
        <source>least squares with correlated readings</source>
        <translation>kleinste Quadrate mit korrelierten Messwerten</translation>
    </message>
    <message>
        <source>least squares with correlated x and y</source>
        <translation>kleinste Quadrate mit korrelierten x und y</translation>
    </message>
    <message>
        <source>least-squares line</source>
        <translation>Ausgleichsgerade</translation>
    </message>
    <message>
        <source>leaves {1}</source>
        <translation>lässt {1} übrig</translation>
    </message>
    <message>
        <source>less leak over {1} than entered</source>
        <translation>weniger Nebenschluss über {1} als eingetragen</translation>
    </message>
    <message>
        <source>less than 0.01 %</source>
        <translation>weniger als 0,01 %</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Stufenwert</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>Stufenwerte</translation>
    </message>
    <message>
        <source>like</source>
        <translation>wie</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>limit of a deviation</source>
        <translation>Grenzwert einer Abweichung</translation>
    </message>
    <message>
        <source>limit of zero return</source>
        <translation>Grenzwert der Nullpunktrückkehr</translation>
    </message>
    <message>
        <source>limit of {1}</source>
        <translation>Grenzwert von {1}</translation>
    </message>
    <message>
        <source>limit {1}</source>
        <translation>Grenzwert {1}</translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>line through zero by least squares</source>
        <translation>Ausgleichsgerade durch null</translation>
    </message>
    <message>
        <source>line {1}</source>
        <translation>Zeile {1}</translation>
    </message>
    <message>
        <source>line {1}, column {2}</source>
        <translation>Zeile {1}, Spalte {2}</translation>
    </message>
    <message>
        <source>line {1}, {2}</source>
        <translation>Zeile {1}, {2}</translation>
    </message>
    <message>
        <source>linear indication, F and N as set</source>
        <translation>lineare Anzeige, F und N wie eingestellt</translation>
    </message>
    <message>
        <source>linear indication, F of the gauge, N of the bridge</source>
        <translation>lineare Anzeige, F des DMS, N der Brücke</translation>
    </message>
    <message>
        <source>linearisation</source>
        <translation>Linearisierung</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>low</source>
        <translation>zu niedrig</translation>
    </message>
    <message>
        <source>mains frequency</source>
        <translation>Netzfrequenz</translation>
    </message>
    <message>
        <source>mains hum averaged out</source>
        <translation>Netzbrummen ausgemittelt</translation>
    </message>
    <message>
        <source>margin of a change</source>
        <translation>Toleranz einer Änderung</translation>
    </message>
    <message>
        <source>margin of a change of zero</source>
        <translation>Toleranz einer Nullpunktänderung</translation>
    </message>
    <message>
        <source>margin of change</source>
        <translation>Änderungstoleranz</translation>
    </message>
    <message>
        <source>margin of the zero</source>
        <translation>Nullpunkttoleranz</translation>
    </message>
    <message>
        <source>max({1}, least)</source>
        <translation>max({1}, Mindestwert)</translation>
    </message>
    <message>
        <source>max({1}, {2})</source>
        <translation>max({1}, {2})</translation>
    </message>
    <message>
        <source>mean and robust mean differ by {1} times the uncertainty</source>
        <translation>Mittelwert und robuster Mittelwert unterscheiden sich um das {1}-Fache der Unsicherheit</translation>
    </message>
    <message>
        <source>measured against simulated, not fitted: {1}</source>
        <translation>gemessen über simuliert, nicht angepasst: {1}</translation>
    </message>
    <message>
        <source>measured against simulated, {1}</source>
        <translation>gemessen über simuliert, {1}</translation>
    </message>
    <message>
        <source>minimax line</source>
        <translation>Minimax-Gerade</translation>
    </message>
    <message>
        <source>minimax line through zero</source>
        <translation>Minimax-Gerade durch null</translation>
    </message>
    <message>
        <source>missing pin</source>
        <translation>fehlender Stift</translation>
    </message>
    <message>
        <source>more than 100</source>
        <translation>mehr als 100</translation>
    </message>
    <message>
        <source>moving average over {1}</source>
        <translation>gleitender Mittelwert über {1}</translation>
    </message>
    <message>
        <source>must be from 1 to {1}</source>
        <translation>muss von 1 bis {1} sein</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>names= and units= name the same line</source>
        <translation>names= und units= nennen dieselbe Zeile</translation>
    </message>
    <message>
        <source>negative</source>
        <translation>negativ</translation>
    </message>
    <message>
        <source>negative side only</source>
        <translation>nur negative Seite</translation>
    </message>
    <message>
        <source>neighbouring pins</source>
        <translation>benachbarte Stifte</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no check has a reading, so that there is nothing to review</source>
        <translation>keine Prüfung hat einen Messwert, es gibt also nichts durchzusehen</translation>
    </message>
    <message>
        <source>no column holds a number</source>
        <translation>keine Spalte enthält eine Zahl</translation>
    </message>
    <message>
        <source>no column is chosen</source>
        <translation>keine Spalte ist gewählt</translation>
    </message>
    <message>
        <source>no column is known to be the time</source>
        <translation>keine Spalte ist als Zeit bekannt</translation>
    </message>
    <message>
        <source>no column is the name of the channels</source>
        <translation>keine Spalte ist der Name der Kanäle</translation>
    </message>
    <message>
        <source>no current can flow from P+ to P-</source>
        <translation>von P+ nach P- kann kein Strom fließen</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>kein Tag</translation>
    </message>
    <message>
        <source>no level is reached both on the way up and on the way down.</source>
        <translation>kein Stufenwert wird sowohl aufwärts als auch abwärts erreicht.</translation>
    </message>
    <message>
        <source>no level is reached twice from the same side.</source>
        <translation>kein Stufenwert wird zweimal von derselben Seite erreicht.</translation>
    </message>
    <message>
        <source>no level is wanted</source>
        <translation>kein Stufenwert ist gewünscht</translation>
    </message>
    <message>
        <source>no level was found in the column {1}</source>
        <translation>in der Spalte {1} wurde kein Plateau gefunden</translation>
    </message>
    <message>
        <source>no level was read both on the way up and on the way down</source>
        <translation>kein Stufenwert wurde sowohl aufwärts als auch abwärts abgelesen</translation>
    </message>
    <message>
        <source>no level was read twice in the same direction</source>
        <translation>kein Stufenwert wurde zweimal in derselben Richtung abgelesen</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>kein Grenzwert</translation>
    </message>
    <message>
        <source>no limit is set</source>
        <translation>kein Grenzwert gesetzt</translation>
    </message>
    <message>
        <source>no line holds only numbers</source>
        <translation>keine Zeile enthält nur Zahlen</translation>
    </message>
    <message>
        <source>no more than {1} exchanges are reckoned with</source>
        <translation>mit mehr als {1} Vertauschungen wird nicht gerechnet</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>no pin</source>
        <translation>kein Stift</translation>
    </message>
    <message>
        <source>no position is free: {1} of {2} have a resistor already</source>
        <translation>kein Platz ist frei: {1} von {2} haben schon einen Widerstand</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>no resistance gives this level at this place</source>
        <translation>kein Widerstand ergibt diesen Stufenwert an diesem Ort</translation>
    </message>
    <message>
        <source>no resistance gives this level at this place, the nearest that it can is {1}</source>
        <translation>kein Widerstand ergibt diesen Stufenwert an diesem Ort, der nächste erreichbare ist {1}</translation>
    </message>
    <message>
        <source>no resistor connects this to the excitation, so its potential is undefined</source>
        <translation>kein Widerstand verbindet dies mit der Speisung, daher ist sein Potential unbestimmt</translation>
    </message>
    <message>
        <source>no row has a time and a number{1}</source>
        <translation>keine Zeile hat eine Zeit und eine Zahl{1}</translation>
    </message>
    <message>
        <source>no shunt is called {1}</source>
        <translation>kein Shunt heißt {1}</translation>
    </message>
    <message>
        <source>no step expects a reading</source>
        <translation>keine Stufe erwartet einen Messwert</translation>
    </message>
    <message>
        <source>no step fails</source>
        <translation>keine Stufe überschreitet ihren Grenzwert</translation>
    </message>
    <message>
        <source>no step has a level</source>
        <translation>keine Stufe hat ein Plateau</translation>
    </message>
    <message>
        <source>no step has an uncertainty that could be drawn</source>
        <translation>keine Stufe hat eine Unsicherheit, die sich ziehen ließe</translation>
    </message>
    <message>
        <source>no steps</source>
        <translation>keine Stufen</translation>
    </message>
    <message>
        <source>no strain of the gauges gives this output</source>
        <translation>keine Dehnung der DMS ergibt dieses Signal</translation>
    </message>
    <message>
        <source>no temperature coefficient of the gauge factor is entered, so nothing would change</source>
        <translation>kein Temperaturkoeffizient des k-Faktors ist eingetragen, daher änderte sich nichts</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>no voltage between the reference terminals</source>
        <translation>keine Spannung zwischen den Bezugsanschlüssen</translation>
    </message>
    <message>
        <source>no zero step was read, so readings were taken as shown</source>
        <translation>keine Nullstufe wurde abgelesen, daher gelten die Messwerte wie gezeigt</translation>
    </message>
    <message>
        <source>nobody is named</source>
        <translation>niemand ist genannt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none instead of {1}</source>
        <translation>keine statt {1}</translation>
    </message>
    <message>
        <source>none is given</source>
        <translation>keiner ist angegeben</translation>
    </message>
    <message>
        <source>none listed</source>
        <translation>keine aufgeführt</translation>
    </message>
    <message>
        <source>none of its samples is a number</source>
        <translation>keiner seiner Abtastwerte ist eine Zahl</translation>
    </message>
    <message>
        <source>none: fewer than three checks with a line</source>
        <translation>keine: weniger als drei Prüfungen mit einer Geraden</translation>
    </message>
    <message>
        <source>none: no shunt is closed</source>
        <translation>keine: Kein Shunt ist geschlossen</translation>
    </message>
    <message>
        <source>none: readings typed or pasted</source>
        <translation>keine: Messwerte getippt oder eingefügt</translation>
    </message>
    <message>
        <source>none: the closed shunts do not move the output</source>
        <translation>keine: Die geschlossenen Shunts bewegen das Signal nicht</translation>
    </message>
    <message>
        <source>none: they are for bridges whose leads are in order</source>
        <translation>keine: Sie gelten für Brücken, deren Leitungen in Ordnung sind</translation>
    </message>
    <message>
        <source>nonlinearity</source>
        <translation>Linearitätsabweichung</translation>
    </message>
    <message>
        <source>nonlinearity measured from</source>
        <translation>Linearitätsabweichung gemessen von</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not checked: {1}</source>
        <translation>nicht geprüft: {1}</translation>
    </message>
    <message>
        <source>not compared</source>
        <translation>nicht verglichen</translation>
    </message>
    <message>
        <source>not compared: a reading has no stated uncertainty</source>
        <translation>nicht verglichen: ein Messwert hat keine angegebene Unsicherheit</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>nicht angepasst</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not in the list</source>
        <translation>nicht in der Liste</translation>
    </message>
    <message>
        <source>not in this bridge</source>
        <translation>nicht in dieser Brücke</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>not judged, a limit is negative or not a number</source>
        <translation>nicht beurteilt, ein Grenzwert ist negativ oder keine Zahl</translation>
    </message>
    <message>
        <source>not judged, {1}</source>
        <translation>nicht beurteilt, {1}</translation>
    </message>
    <message>
        <source>not judged: {1}</source>
        <translation>nicht beurteilt: {1}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not known: all readings alike</source>
        <translation>nicht bekannt: alle Messwerte gleich</translation>
    </message>
    <message>
        <source>not known: fewer than two zero readings</source>
        <translation>nicht bekannt: weniger als zwei Nullwerte</translation>
    </message>
    <message>
        <source>not known: too few points</source>
        <translation>nicht bekannt: zu wenige Punkte</translation>
    </message>
    <message>
        <source>not known: two points only</source>
        <translation>nicht bekannt: nur zwei Punkte</translation>
    </message>
    <message>
        <source>not known: {1}</source>
        <translation>nicht bekannt: {1}</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing (null)</source>
        <translation>nichts (null)</translation>
    </message>
    <message>
        <source>nothing is connected there, so the output is undefined</source>
        <translation>dort ist nichts angeschlossen, daher ist das Signal unbestimmt</translation>
    </message>
    <message>
        <source>nothing is wrong</source>
        <translation>nichts ist falsch</translation>
    </message>
    <message>
        <source>nothing to change</source>
        <translation>nichts zu ändern</translation>
    </message>
    <message>
        <source>now {1}</source>
        <translation>jetzt {1}</translation>
    </message>
    <message>
        <source>number of questions</source>
        <translation>Anzahl der Aufgaben</translation>
    </message>
    <message>
        <source>of arms and shunts</source>
        <translation>von Zweigen und Shunts</translation>
    </message>
    <message>
        <source>of each output, before the zero is subtracted</source>
        <translation>jedes Signals, bevor die Null abgezogen wird</translation>
    </message>
    <message>
        <source>of that name</source>
        <translation>dieses Namens</translation>
    </message>
    <message>
        <source>of the change from zero</source>
        <translation>der Änderung ab null</translation>
    </message>
    <message>
        <source>of the expected reading: shunts, arms, leads, instrument. It decides pass or fail</source>
        <translation>vom erwarteten Messwert: Shunts, Zweige, Leitungen, Gerät. Entscheidet über bestanden oder nicht</translation>
    </message>
    <message>
        <source>of the load that the step simulates, as read</source>
        <translation>von der Last, die die Stufe simuliert, wie abgelesen</translation>
    </message>
    <message>
        <source>of the strain that the step simulates, as read: gauge factor and temperature are in it too</source>
        <translation>von der Dehnung, die die Stufe simuliert, wie abgelesen: Auch k-Faktor und Temperatur stecken darin</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>ohmmeter readings</source>
        <translation>Ohmmeterwerte</translation>
    </message>
    <message>
        <source>on the day of printing</source>
        <translation>am Tag des Drucks</translation>
    </message>
    <message>
        <source>one end</source>
        <translation>ein Ende</translation>
    </message>
    <message>
        <source>one is no finite number</source>
        <translation>einer ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>one more zero step at the end</source>
        <translation>eine weitere Nullstufe am Ende</translation>
    </message>
    <message>
        <source>one of the readings is no finite number</source>
        <translation>einer der Messwerte ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>one of the two series does not vary, so that it has no correlation</source>
        <translation>eine der beiden Reihen ändert sich nicht, sodass sie keine Korrelation hat</translation>
    </message>
    <message>
        <source>one wire in each arm</source>
        <translation>eine Leitung in jedem Zweig</translation>
    </message>
    <message>
        <source>one wire of a three-wire connection</source>
        <translation>eine Leitung einer Dreileiterschaltung</translation>
    </message>
    <message>
        <source>only a decade box has a residual</source>
        <translation>nur eine Widerstandsdekade hat einen Restwert</translation>
    </message>
    <message numerus="yes">
        <source>only {n} samples</source>
        <extracomment>{n} is a count. In English for one: only {n} sample</extracomment>
        <translation>
            <numerusform>nur {n} Abtastwert</numerusform>
            <numerusform>nur {n} Abtastwerte</numerusform>
        </translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>open remarks: {1}</source>
        <translation>offene Anmerkungen: {1}</translation>
    </message>
    <message>
        <source>open: the set-up of the channel as it is now</source>
        <translation>offen: die jetzige Einrichtung des Kanals</translation>
    </message>
    <message>
        <source>or a current of {1} mA where {2} mA is entered</source>
        <translation>oder ein Strom von {1} mA, wo {2} mA eingetragen ist</translation>
    </message>
    <message>
        <source>or an excitation of</source>
        <translation>oder eine Speisung von</translation>
    </message>
    <message>
        <source>ordinary</source>
        <translation>gewöhnlich</translation>
    </message>
    <message>
        <source>ordinary least squares</source>
        <translation>gewöhnliche kleinste Quadrate</translation>
    </message>
    <message>
        <source>others ({1})</source>
        <translation>andere ({1})</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>over arm {1}</source>
        <translation>über Zweig {1}</translation>
    </message>
    <message>
        <source>over {1}</source>
        <translation>über {1}</translation>
    </message>
    <message>
        <source>p of beyond the margin</source>
        <translation>p jenseits der Toleranz</translation>
    </message>
    <message>
        <source>p of no difference</source>
        <translation>p ohne Unterschied</translation>
    </message>
    <message>
        <source>p, beyond margin</source>
        <translation>p, jenseits der Toleranz</translation>
    </message>
    <message>
        <source>p, nothing moved</source>
        <translation>p, nichts bewegt</translation>
    </message>
    <message>
        <source>part of the stock</source>
        <translation>Teil des Bestands</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>passing: {1}</source>
        <translation>bestanden: {1}</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>pin used twice</source>
        <translation>doppelt belegter Stift</translation>
    </message>
    <message>
        <source>pin {1}</source>
        <translation>Stift {1}</translation>
    </message>
    <message>
        <source>pin {1}, which is not in the list</source>
        <translation>Stift {1}, der nicht in der Liste steht</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>place of shunt {1}</source>
        <translation>Ort von Shunt {1}</translation>
    </message>
    <message>
        <source>place of the leak of arm {1}</source>
        <translation>Ort des Nebenschlusses von Zweig {1}</translation>
    </message>
    <message>
        <source>places joined</source>
        <translation>verbundene Orte</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>plus/minus asymmetry</source>
        <translation>Asymmetrie plus/minus</translation>
    </message>
    <message>
        <source>point {1}</source>
        <translation>Punkt {1}</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>poor: filled plastic such as glass fibre in epoxy</source>
        <translation>schlecht: gefüllter Kunststoff, etwa Glasfaser in Epoxidharz</translation>
    </message>
    <message>
        <source>positions</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>positive</source>
        <translation>positiv</translation>
    </message>
    <message>
        <source>positive side only</source>
        <translation>nur positive Seite</translation>
    </message>
    <message>
        <source>post-test</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>potentiometers of ±5 % are usual</source>
        <translation>Potentiometer von ±5 % sind üblich</translation>
    </message>
    <message>
        <source>pre-test</source>
        <translation>Vorprüfung</translation>
    </message>
    <message>
        <source>probability of conformity</source>
        <translation>Wahrscheinlichkeit der Konformität</translation>
    </message>
    <message>
        <source>quarter bridge</source>
        <translation>Viertelbrücke</translation>
    </message>
    <message>
        <source>r = y − ŷ</source>
        <translation>r = y − ŷ</translation>
    </message>
    <message>
        <source>ran longer than is allowed</source>
        <translation>lief länger als erlaubt</translation>
    </message>
    <message>
        <source>ran out of memory</source>
        <translation>hatte zu wenig Speicher</translation>
    </message>
    <message>
        <source>random order</source>
        <translation>zufällige Folge</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>rare</source>
        <translation>selten</translation>
    </message>
    <message>
        <source>rate= must be a number above 0</source>
        <translation>rate= muss eine Zahl über 0 sein</translation>
    </message>
    <message>
        <source>rated output</source>
        <translation>Nennkennwert</translation>
    </message>
    <message>
        <source>rated output of a transducer within 0.1 %</source>
        <translation>Nennkennwert eines Aufnehmers auf 0,1 %</translation>
    </message>
    <message>
        <source>rating</source>
        <translation>Nennwerte</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>reading / simulated − 1</source>
        <translation>Messwert / simuliert − 1</translation>
    </message>
    <message>
        <source>reading was cancelled</source>
        <translation>das Lesen wurde abgebrochen</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>readings are {1} larger than they were</source>
        <translation>Messwerte sind {1} größer als vorher</translation>
    </message>
    <message>
        <source>readings are {1} smaller than they were</source>
        <translation>Messwerte sind {1} kleiner als vorher</translation>
    </message>
    <message>
        <source>readings are {1} times what they should be</source>
        <translation>Messwerte sind das {1}-Fache dessen, was sie sein sollten</translation>
    </message>
    <message>
        <source>readings are {1} times what they were</source>
        <translation>Messwerte sind das {1}-Fache der früheren</translation>
    </message>
    <message>
        <source>readings are {1} too large</source>
        <translation>Messwerte sind {1} zu groß</translation>
    </message>
    <message>
        <source>readings are {1} too small</source>
        <translation>Messwerte sind {1} zu klein</translation>
    </message>
    <message>
        <source>readings in mV taken for {1}</source>
        <translation>Messwerte in mV als {1} genommen</translation>
    </message>
    <message>
        <source>readings in mV/V taken for {1}</source>
        <translation>Messwerte in mV/V als {1} genommen</translation>
    </message>
    <message>
        <source>readings in µm/m taken for {1}</source>
        <translation>Messwerte in µm/m als {1} genommen</translation>
    </message>
    <message>
        <source>readings without any uncertainty of their own cannot be weighed</source>
        <translation>Messwerte ohne jede eigene Unsicherheit lassen sich nicht gewichten</translation>
    </message>
    <message>
        <source>reads {1}</source>
        <translation>zeigt {1}</translation>
    </message>
    <message>
        <source>recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>recording column</source>
        <translation>Spalte der Aufzeichnung</translation>
    </message>
    <message>
        <source>reference line</source>
        <translation>Bezugsgerade</translation>
    </message>
    <message>
        <source>refused: {1}</source>
        <translation>abgelehnt: {1}</translation>
    </message>
    <message>
        <source>remarks</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>resistance given</source>
        <translation>Widerstand angegeben</translation>
    </message>
    <message>
        <source>resistance of leads as entered, within 10 %</source>
        <translation>Leitungswiderstand wie eingetragen, auf 10 %</translation>
    </message>
    <message>
        <source>resistance worked out from length and section, within 5 %</source>
        <translation>Widerstand aus Länge und Querschnitt, auf 5 %</translation>
    </message>
    <message>
        <source>resistor of shunt {1}</source>
        <translation>Widerstand von Shunt {1}</translation>
    </message>
    <message>
        <source>resistors of ±1 % are usual</source>
        <translation>Widerstände von ±1 % sind üblich</translation>
    </message>
    <message>
        <source>resolution not stated, taken as fine enough</source>
        <translation>Auflösung nicht angegeben, als fein genug angenommen</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rück</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>reversed, now {1}</source>
        <translation>umgekehrt, jetzt {1}</translation>
    </message>
    <message>
        <source>right across arm {1}</source>
        <translation>direkt über Zweig {1}</translation>
    </message>
    <message>
        <source>right across {1}</source>
        <translation>direkt über {1}</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>steigen</translation>
    </message>
    <message>
        <source>rises</source>
        <translation>steigt</translation>
    </message>
    <message>
        <source>rising</source>
        <translation>steigende</translation>
    </message>
    <message>
        <source>rounding of the reading</source>
        <translation>Auflösung des Messwerts</translation>
    </message>
    <message>
        <source>rounding of the zero reading</source>
        <translation>Auflösung des Nullwerts</translation>
    </message>
    <message>
        <source>row {1} of {2}</source>
        <translation>Zeile {1} von {2}</translation>
    </message>
    <message>
        <source>row {1}, column {2} of {3}</source>
        <translation>Zeile {1}, Spalte {2} von {3}</translation>
    </message>
    <message>
        <source>s = √(Σr² / dof)</source>
        <translation>s = √(Σr² / dof)</translation>
    </message>
    <message>
        <source>said nothing for too long</source>
        <translation>schwieg zu lange</translation>
    </message>
    <message>
        <source>sample number and the sample rate given</source>
        <translation>Nummer des Abtastwerts und angegebene Abtastrate</translation>
    </message>
    <message>
        <source>sample number and the sample rate of the preamble</source>
        <translation>Nummer des Abtastwerts und Abtastrate des Vorspanns</translation>
    </message>
    <message>
        <source>sample rate</source>
        <translation>Abtastrate</translation>
    </message>
    <message>
        <source>sample rate in the file, {1} Hz</source>
        <translation>Abtastrate in der Datei, {1} Hz</translation>
    </message>
    <message>
        <source>sample spacing in the file</source>
        <translation>Abstand der Abtastwerte in der Datei</translation>
    </message>
    <message>
        <source>sample {1}</source>
        <translation>Abtastwert {1}</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Skalierung</translation>
    </message>
    <message>
        <source>scale and range</source>
        <translation>Skalierung und Bereich</translation>
    </message>
    <message>
        <source>schematics</source>
        <translation>Schaltbilder</translation>
    </message>
    <message>
        <source>separator=comma and decimal=comma cannot both be</source>
        <translation>separator=comma und decimal=comma kann nicht beides sein</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>serial number of the instrument</source>
        <translation>Seriennummer des Geräts</translation>
    </message>
    <message>
        <source>serial {1}</source>
        <translation>Seriennummer {1}</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>Einrichtung</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>eingeschwungen</translation>
    </message>
    <message>
        <source>settled to</source>
        <translation>eingeschwungen auf</translation>
    </message>
    <message>
        <source>settling of step {1}</source>
        <translation>Einschwingzeit von Stufe {1}</translation>
    </message>
    <message>
        <source>share × greatest |expected|</source>
        <translation>Anteil × größter |erwartet|</translation>
    </message>
    <message>
        <source>share × |expected|</source>
        <translation>Anteil × |erwartet|</translation>
    </message>
    <message>
        <source>shared risk</source>
        <translation>geteiltes Risiko</translation>
    </message>
    <message>
        <source>short S+ and S-</source>
        <translation>S+ und S- kurzschließen</translation>
    </message>
    <message>
        <source>short the excitation</source>
        <translation>die Speisung kurzschließen</translation>
    </message>
    <message>
        <source>short {1}</source>
        <translation>{1} kurzschließen</translation>
    </message>
    <message>
        <source>shorts the excitation</source>
        <translation>schließt die Speisung kurz</translation>
    </message>
    <message>
        <source>shorts the signal</source>
        <translation>schließt das Signal kurz</translation>
    </message>
    <message>
        <source>shorts {1}</source>
        <translation>schließt {1} kurz</translation>
    </message>
    <message>
        <source>shunt formula for small strain</source>
        <translation>Shuntformel für kleine Dehnung</translation>
    </message>
    <message>
        <source>shunt formula for small strain, summed over the shunts</source>
        <translation>Shuntformel für kleine Dehnung, summiert über die Shunts</translation>
    </message>
    <message>
        <source>shunt over one of four equal arms</source>
        <translation>Shunt über einem von vier gleichen Zweigen</translation>
    </message>
    <message>
        <source>shunt place</source>
        <translation>Ort des Shunts</translation>
    </message>
    <message>
        <source>shunt {1}</source>
        <translation>Shunt {1}</translation>
    </message>
    <message>
        <source>shunts</source>
        <translation>Shunts</translation>
    </message>
    <message>
        <source>shunts closed at step {1}</source>
        <translation>bei Stufe {1} geschlossene Shunts</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>simple acceptance</source>
        <translation>einfache Annahme</translation>
    </message>
    <message>
        <source>simulated load</source>
        <translation>simulierte Last</translation>
    </message>
    <message>
        <source>simulated strain</source>
        <translation>simulierte Dehnung</translation>
    </message>
    <message>
        <source>simulated {1} instead of {2} {3} at step {4}{5}</source>
        <translation>simuliert {1} statt {2} {3} bei Stufe {4}{5}</translation>
    </message>
    <message>
        <source>slope of the positive half, zero steps included, less that of the negative half; measured against expected reading by {1}, of the expected slope</source>
        <translation>Steigung der positiven Hälfte einschließlich der Nullstufen minus die der negativen Hälfte; gemessene über erwarteten Messwerten (Verfahren: {1}), von der erwarteten Steigung</translation>
    </message>
    <message>
        <source>slope {1} of the positive and {2} of the negative half</source>
        <translation>Steigung {1} der positiven und {2} der negativen Hälfte</translation>
    </message>
    <message>
        <source>slope {1} of the positive and {2} of the negative half, standard uncertainty of the difference {3} %</source>
        <translation>Steigung {1} der positiven und {2} der negativen Hälfte, Standardunsicherheit der Differenz {3} %</translation>
    </message>
    <message>
        <source>small strain, from the simulated strain</source>
        <translation>kleine Dehnung, aus der simulierten Dehnung</translation>
    </message>
    <message>
        <source>smaller</source>
        <translation>kleiner</translation>
    </message>
    <message>
        <source>span error</source>
        <translation>Spannenfehler</translation>
    </message>
    <message>
        <source>span of the mean readings between the extreme steps that were read, less the expected span, of the expected span</source>
        <translation>Spanne der mittleren Messwerte zwischen den äußersten abgelesenen Stufen minus die erwartete Spanne, von der erwarteten Spanne</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>static, high accuracy</source>
        <translation>statisch, hohe Genauigkeit</translation>
    </message>
    <message>
        <source>static, low accuracy</source>
        <translation>statisch, geringe Genauigkeit</translation>
    </message>
    <message>
        <source>static, moderate accuracy</source>
        <translation>statisch, mäßige Genauigkeit</translation>
    </message>
    <message>
        <source>step {1}</source>
        <translation>Stufe {1}</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>steps are counted from 1</source>
        <translation>Stufen zählen ab 1</translation>
    </message>
    <message>
        <source>steps at most {1} at step {2}</source>
        <translation>Stufen höchstens {1} bei Stufe {2}</translation>
    </message>
    <message numerus="yes">
        <source>steps {1}: no finite reading</source>
        <extracomment>{n} is a count. In English for one: step {1}: no finite reading</extracomment>
        <translation>
            <numerusform>Stufe {1}: kein endlicher Messwert</numerusform>
            <numerusform>Stufen {1}: kein endlicher Messwert</numerusform>
        </translation>
    </message>
    <message>
        <source>still settling at its beginning</source>
        <translation>schwingt an seinem Anfang noch ein</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>strain</source>
        <translation>Dehnung</translation>
    </message>
    <message>
        <source>structure connected to</source>
        <translation>Struktur verbunden mit</translation>
    </message>
    <message>
        <source>structure to {1}</source>
        <translation>Struktur zu {1}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>vorgelegt</translation>
    </message>
    <message>
        <source>submitted for review</source>
        <translation>zur Durchsicht vorgelegt</translation>
    </message>
    <message>
        <source>summary</source>
        <translation>Zusammenfassung</translation>
    </message>
    <message>
        <source>switch of shunt {1}</source>
        <translation>Schalter von Shunt {1}</translation>
    </message>
    <message>
        <source>switches of all shunts</source>
        <translation>Schalter aller Shunts</translation>
    </message>
    <message>
        <source>temperature coefficient by its data sheet, within 20 %</source>
        <translation>Temperaturkoeffizient laut Datenblatt, auf 20 %</translation>
    </message>
    <message>
        <source>temperature coefficient of the gauge factor</source>
        <translation>Temperaturkoeffizient des k-Faktors</translation>
    </message>
    <message>
        <source>temperature of the gauges</source>
        <translation>Temperatur der DMS</translation>
    </message>
    <message>
        <source>temperature of the leads</source>
        <translation>Temperatur der Leitungen</translation>
    </message>
    <message>
        <source>temperature that the gauge factor is stated for</source>
        <translation>Temperatur, für die der k-Faktor angegeben ist</translation>
    </message>
    <message>
        <source>template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>tension</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>terminal {1}</source>
        <translation>Anschluss {1}</translation>
    </message>
    <message>
        <source>that is no temperature of the air</source>
        <translation>das ist keine Lufttemperatur</translation>
    </message>
    <message>
        <source>that is one lead twice</source>
        <translation>das ist zweimal dieselbe Leitung</translation>
    </message>
    <message>
        <source>that lead is broken already</source>
        <translation>diese Leitung ist schon unterbrochen</translation>
    </message>
    <message>
        <source>that says nothing that can be tried out</source>
        <translation>das sagt nichts, was sich ausprobieren ließe</translation>
    </message>
    <message>
        <source>the WAV file has no description of its samples</source>
        <translation>die WAV-Datei beschreibt ihre Abtastwerte nicht</translation>
    </message>
    <message>
        <source>the WAV file has no samples</source>
        <translation>die WAV-Datei hat keine Abtastwerte</translation>
    </message>
    <message>
        <source>the arms are not all {1}</source>
        <translation>die Zweige haben nicht alle {1}</translation>
    </message>
    <message>
        <source>the array announces {1} numbers, more than there can be</source>
        <translation>das Feld kündigt {1} Zahlen an, mehr, als es geben kann</translation>
    </message>
    <message>
        <source>the array has records in rows and columns</source>
        <translation>das Feld hat Datensätze in Zeilen und Spalten</translation>
    </message>
    <message>
        <source>the array has {1} dimensions</source>
        <translation>das Feld hat {1} Dimensionen</translation>
    </message>
    <message>
        <source>the array has {1} numbers, more than 4096 columns</source>
        <translation>das Feld hat {1} Zahlen, mehr als 4096 Spalten</translation>
    </message>
    <message>
        <source>the array holds no numbers: the file ends before them</source>
        <translation>das Feld enthält keine Zahlen: Die Datei endet davor</translation>
    </message>
    <message>
        <source>the array is empty</source>
        <translation>das Feld ist leer</translation>
    </message>
    <message>
        <source>the array {1}</source>
        <translation>das Feld {1}</translation>
    </message>
    <message>
        <source>the balance network</source>
        <translation>dem Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>the best one, {1}, {2}</source>
        <translation>die beste, {1}, {2}</translation>
    </message>
    <message>
        <source>the box goes up to {1}, which is not between {2} and {3}</source>
        <translation>die Dekade reicht bis {1}, was nicht zwischen {2} und {3} liegt</translation>
    </message>
    <message>
        <source>the bridge cannot be worked out with it: {1}</source>
        <translation>die Brücke lässt sich damit nicht berechnen: {1}</translation>
    </message>
    <message>
        <source>the bridge factor as set</source>
        <translation>dem eingestellten Brückenfaktor</translation>
    </message>
    <message>
        <source>the bridge factor set</source>
        <translation>der eingestellte Brückenfaktor</translation>
    </message>
    <message>
        <source>the bridge&apos;s nonlinearity</source>
        <translation>der Nichtlinearität der Brücke</translation>
    </message>
    <message>
        <source>the capacity</source>
        <translation>die Nennlast</translation>
    </message>
    <message>
        <source>the certificate needs its expanded uncertainty U, above 0 Ω</source>
        <translation>der Kalibrierschein braucht seine erweiterte Unsicherheit U, über 0 Ω</translation>
    </message>
    <message>
        <source>the certificate&apos;s {1} is far from the nominal {2}</source>
        <translation>die {1} des Kalibrierscheins liegen weit vom Nennwert {2}</translation>
    </message>
    <message>
        <source>the channel has no such point</source>
        <translation>der Kanal hat keinen solchen Punkt</translation>
    </message>
    <message>
        <source>the channel has no such shunt or not as many jumpers</source>
        <translation>der Kanal hat keinen solchen Shunt oder nicht so viele Steckbrücken</translation>
    </message>
    <message>
        <source>the channel was changed since the recording was read</source>
        <translation>der Kanal wurde geändert, seit die Aufzeichnung gelesen wurde</translation>
    </message>
    <message>
        <source>the coefficients between the inputs contradict each other</source>
        <translation>die Koeffizienten zwischen den Eingangsgrößen widersprechen einander</translation>
    </message>
    <message>
        <source>the connection has no lead {1}</source>
        <translation>die Anschlussart hat keine Leitung {1}</translation>
    </message>
    <message>
        <source>the connection has no sense leads</source>
        <translation>die Anschlussart hat keine Fühlerleitungen</translation>
    </message>
    <message>
        <source>the constant current</source>
        <translation>dem Konstantstrom</translation>
    </message>
    <message>
        <source>the covariance</source>
        <translation>die Kovarianz</translation>
    </message>
    <message>
        <source>the covariance of the difference</source>
        <translation>die Kovarianz der Differenz</translation>
    </message>
    <message>
        <source>the covariance of x and y</source>
        <translation>die Kovarianz von x und y</translation>
    </message>
    <message>
        <source>the covariance of y</source>
        <translation>die Kovarianz von y</translation>
    </message>
    <message>
        <source>the coverage factor is not between 1 and 10</source>
        <translation>der Erweiterungsfaktor liegt nicht zwischen 1 und 10</translation>
    </message>
    <message>
        <source>the coverage factor k of its uncertainty must be a number above zero</source>
        <translation>der Erweiterungsfaktor k ihrer Unsicherheit muss eine Zahl über null sein</translation>
    </message>
    <message>
        <source>the coverage probability must lie between 0 and 1</source>
        <translation>die Überdeckungswahrscheinlichkeit muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>the current</source>
        <translation>der Strom</translation>
    </message>
    <message>
        <source>the cutoff frequency must be greater than zero</source>
        <translation>die Grenzfrequenz muss größer als null sein</translation>
    </message>
    <message>
        <source>the data end before it</source>
        <translation>die Daten enden davor</translation>
    </message>
    <message>
        <source>the data end before its time</source>
        <translation>die Daten enden vor ihrer Zeit</translation>
    </message>
    <message>
        <source>the degrees of freedom of its uncertainty must be a number above zero</source>
        <translation>die Freiheitsgrade ihrer Unsicherheit müssen eine Zahl über null sein</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>die Platte ist voll</translation>
    </message>
    <message>
        <source>the disk is read-only</source>
        <translation>die Platte ist nur lesbar</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation>die Platte meldet einen Fehler</translation>
    </message>
    <message>
        <source>the document would have {1} channels, and it can hold {2}</source>
        <translation>das Dokument hätte {1} Kanäle, fassen kann es {2}</translation>
    </message>
    <message>
        <source>the elements of the NumPy array are no plain numbers</source>
        <translation>die Elemente des NumPy-Felds sind keine einfachen Zahlen</translation>
    </message>
    <message>
        <source>the elements of the array are too large</source>
        <translation>die Elemente des Felds sind zu groß</translation>
    </message>
    <message>
        <source>the excitation</source>
        <translation>die Speisung</translation>
    </message>
    <message>
        <source>the excitation is entered as reversed</source>
        <translation>die Speisung als vertauscht eingetragen ist</translation>
    </message>
    <message>
        <source>the excitation reversed</source>
        <translation>vertauschter Speisung</translation>
    </message>
    <message>
        <source>the expected slope</source>
        <translation>der erwarteten Steigung</translation>
    </message>
    <message>
        <source>the expected span</source>
        <translation>der erwarteten Spanne</translation>
    </message>
    <message>
        <source>the figure is not known</source>
        <translation>der Kennwert ist nicht bekannt</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>die Datei</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the file cannot be removed</source>
        <translation>die Datei lässt sich nicht entfernen</translation>
    </message>
    <message>
        <source>the file could not be read: the reading process gave an answer that makes no sense</source>
        <translation>die Datei konnte nicht gelesen werden: Der Leseprozess gab eine Antwort, die keinen Sinn ergibt</translation>
    </message>
    <message>
        <source>the file could not be read: the reading process {1}</source>
        <translation>die Datei konnte nicht gelesen werden: Der Leseprozess {1}</translation>
    </message>
    <message>
        <source>the file does not say when its samples were taken</source>
        <translation>die Datei sagt nicht, wann ihre Abtastwerte aufgenommen wurden</translation>
    </message>
    <message>
        <source>the file does not say which version it has</source>
        <translation>die Datei sagt nicht, welche Fassung sie hat</translation>
    </message>
    <message>
        <source>the file ends too early, the rest of it is missing</source>
        <translation>die Datei endet zu früh, der Rest fehlt</translation>
    </message>
    <message numerus="yes">
        <source>the file has {n} columns</source>
        <extracomment>{n} is a count. In English for one: the file has {n} column</extracomment>
        <translation>
            <numerusform>die Datei hat {n} Spalte</numerusform>
            <numerusform>die Datei hat {n} Spalten</numerusform>
        </translation>
    </message>
    <message>
        <source>the file holds NUL bytes, so it is binary data and not plain text</source>
        <translation>die Datei enthält NUL-Bytes, ist also binär und kein Text</translation>
    </message>
    <message>
        <source>the file holds more than {1} numbers</source>
        <translation>die Datei enthält mehr als {1} Zahlen</translation>
    </message>
    <message>
        <source>the file holds more than {1} values</source>
        <translation>die Datei enthält mehr als {1} Werte</translation>
    </message>
    <message>
        <source>the file holds no samples</source>
        <translation>die Datei enthält keine Abtastwerte</translation>
    </message>
    <message>
        <source>the file holds no values beside the time</source>
        <translation>die Datei enthält keine Werte neben der Zeit</translation>
    </message>
    <message>
        <source>the file holds no vectors or matrices of real numbers{1}</source>
        <translation>die Datei enthält keine Vektoren oder Matrizen reeller Zahlen{1}</translation>
    </message>
    <message>
        <source>the file holds nothing but blank lines</source>
        <translation>die Datei enthält nur leere Zeilen</translation>
    </message>
    <message>
        <source>the file holds too many set-ups or steps</source>
        <translation>die Datei enthält zu viele Einrichtungen oder Stufen</translation>
    </message>
    <message>
        <source>the file holds {1} numbers, more than can be read at once</source>
        <translation>die Datei enthält {1} Zahlen, mehr, als sich auf einmal lesen lassen</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>the file is larger than {1} MiB</source>
        <translation>die Datei ist größer als {1} MiB</translation>
    </message>
    <message>
        <source>the file is nested deeper than {1} levels</source>
        <translation>die Datei ist tiefer als {1} Ebenen verschachtelt</translation>
    </message>
    <message>
        <source>the file is of no kind that can be read here</source>
        <translation>die Datei ist von keiner Art, die sich hier lesen lässt</translation>
    </message>
    <message>
        <source>the file was changed since it was read</source>
        <translation>die Datei wurde geändert, seit sie gelesen wurde</translation>
    </message>
    <message>
        <source>the file would be larger than the system allows</source>
        <translation>die Datei wäre größer, als das System erlaubt</translation>
    </message>
    <message>
        <source>the filter needs {1} to come within {2} %</source>
        <translation>der Filter braucht {1}, um auf {2} % heranzukommen</translation>
    </message>
    <message>
        <source>the first two</source>
        <translation>die ersten beiden</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the form for short wires</source>
        <translation>der Form für kurze Leitungen</translation>
    </message>
    <message>
        <source>the form for small changes</source>
        <translation>der Form für kleine Änderungen</translation>
    </message>
    <message>
        <source>the gauge factor</source>
        <translation>der k-Faktor</translation>
    </message>
    <message>
        <source>the gauge factor as set</source>
        <translation>dem eingestellten k-Faktor</translation>
    </message>
    <message>
        <source>the gauge factor at the gauge&apos;s temperature</source>
        <translation>der k-Faktor bei der Temperatur des DMS</translation>
    </message>
    <message>
        <source>the gauge factor set</source>
        <translation>der eingestellte k-Faktor</translation>
    </message>
    <message>
        <source>the gauges are entered as reversed</source>
        <translation>die DMS als vertauscht eingetragen sind</translation>
    </message>
    <message>
        <source>the gauges do not act on the output</source>
        <translation>die DMS wirken nicht auf das Signal</translation>
    </message>
    <message>
        <source>the greatest expected reading</source>
        <translation>dem größten erwarteten Messwert</translation>
    </message>
    <message>
        <source>the greatest share of the uncertainty in the limit must be above 0 and at most 1</source>
        <translation>der größte Anteil der Unsicherheit am Grenzwert muss über 0 und höchstens 1 sein</translation>
    </message>
    <message>
        <source>the guard band of {1} is wider than the limit, so nothing can pass</source>
        <translation>der Schutzabstand von {1} ist breiter als der Grenzwert, daher kann nichts bestehen</translation>
    </message>
    <message>
        <source>the guard factor must be a number that is not negative</source>
        <translation>der Schutzfaktor muss eine nicht negative Zahl sein</translation>
    </message>
    <message>
        <source>the heading of the NumPy array cannot be read</source>
        <translation>der Kopf des NumPy-Felds lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the heading of the NumPy array is not whole</source>
        <translation>der Kopf des NumPy-Felds ist nicht vollständig</translation>
    </message>
    <message>
        <source>the input resistance</source>
        <translation>der Eingangswiderstand</translation>
    </message>
    <message>
        <source>the input resistance of the instrument</source>
        <translation>dem Eingangswiderstand des Geräts</translation>
    </message>
    <message>
        <source>the instrument reckons with {1} from a bridge of {2}</source>
        <translation>das Gerät rechnet mit {1} bei einer Brücke von {2}</translation>
    </message>
    <message>
        <source>the instrument&apos;s input</source>
        <translation>der Eingang des Geräts</translation>
    </message>
    <message>
        <source>the iteration does not settle: the points fix no line within their uncertainties</source>
        <translation>die Iteration beruhigt sich nicht: Die Punkte legen innerhalb ihrer Unsicherheiten keine Gerade fest</translation>
    </message>
    <message>
        <source>the key {1} is missing</source>
        <translation>der Schlüssel {1} fehlt</translation>
    </message>
    <message>
        <source>the key {1} is not known here</source>
        <translation>der Schlüssel {1} ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>the key {1} is not known in a file of version {2}</source>
        <translation>der Schlüssel {1} ist in einer Datei der Fassung {2} nicht bekannt</translation>
    </message>
    <message>
        <source>the key {1} stands here twice</source>
        <translation>der Schlüssel {1} steht hier zweimal</translation>
    </message>
    <message>
        <source>the last zero reading is no finite number</source>
        <translation>der letzte Nullwert ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>the latest of each channel</source>
        <translation>die letzte jedes Kanals</translation>
    </message>
    <message>
        <source>the lead has a resistance and a wire</source>
        <translation>die Leitung hat einen Widerstand und einen Draht</translation>
    </message>
    <message>
        <source>the lead {1} is broken already</source>
        <translation>die Leitung {1} ist schon unterbrochen</translation>
    </message>
    <message>
        <source>the leads</source>
        <translation>den Leitungen</translation>
    </message>
    <message>
        <source>the leads have no resistance, so nothing would change</source>
        <translation>die Leitungen haben keinen Widerstand, daher änderte sich nichts</translation>
    </message>
    <message>
        <source>the leads on average {1} less than entered</source>
        <translation>die Leitungen im Mittel {1} weniger als eingetragen</translation>
    </message>
    <message>
        <source>the leads on average {1} more than entered</source>
        <translation>die Leitungen im Mittel {1} mehr als eingetragen</translation>
    </message>
    <message>
        <source>the leaks</source>
        <translation>den Nebenschlüssen</translation>
    </message>
    <message>
        <source>the least probability of conformity must be above 0.5 and below 1</source>
        <translation>die Mindestwahrscheinlichkeit der Konformität muss über 0,5 und unter 1 liegen</translation>
    </message>
    <message>
        <source>the length</source>
        <translation>die Länge</translation>
    </message>
    <message>
        <source>the levels do not fit the plan: {1} found, for {2}: {3}</source>
        <translation>die Plateaus passen nicht zum Plan: gefunden {1}, für {2}: {3}</translation>
    </message>
    <message>
        <source>the levels do not fit the plan: {1} found, {2}, for {3}: {4}</source>
        <translation>die Plateaus passen nicht zum Plan: gefunden {1}, {2}, für {3}: {4}</translation>
    </message>
    <message numerus="yes">
        <source>the levels {1}</source>
        <extracomment>{n} is a count. In English for one: the level {1}</extracomment>
        <translation>
            <numerusform>das Plateau {1}</numerusform>
            <numerusform>die Plateaus {1}</numerusform>
        </translation>
    </message>
    <message>
        <source>the limit of zero return does not stand among the merits: it is the “zero_return” of the limits</source>
        <translation>der Grenzwert der Nullpunktrückkehr steht nicht bei den Kennwerten: Er ist „zero_return“ der Grenzwerte</translation>
    </message>
    <message>
        <source>the line does not describe these readings</source>
        <translation>die Gerade beschreibt diese Messwerte nicht</translation>
    </message>
    <message>
        <source>the m in {1} may be milliohm or megohm</source>
        <translation>das m in {1} kann Milliohm oder Megohm heißen</translation>
    </message>
    <message>
        <source>the mains frequency must be greater than zero</source>
        <translation>die Netzfrequenz muss größer als null sein</translation>
    </message>
    <message>
        <source>the matrix is no covariance: it gives a sum of readings a negative variance</source>
        <translation>die Matrix ist keine Kovarianz: Sie gibt einer Summe von Messwerten eine negative Varianz</translation>
    </message>
    <message>
        <source>the matrix is not symmetric: row and column exchanged give another value</source>
        <translation>die Matrix ist nicht symmetrisch: Zeile und Spalte vertauscht ergeben einen anderen Wert</translation>
    </message>
    <message>
        <source>the matrix is singular: this row follows from those before it</source>
        <translation>die Matrix ist singulär: Diese Zeile folgt aus den Zeilen davor</translation>
    </message>
    <message>
        <source>the mean readings</source>
        <translation>der mittleren Messwerte</translation>
    </message>
    <message>
        <source>the measured span</source>
        <translation>der gemessenen Spanne</translation>
    </message>
    <message>
        <source>the name is longer than 200 bytes</source>
        <translation>der Name ist länger als 200 Byte</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>der Name ist zu lang</translation>
    </message>
    <message>
        <source>the noise is so slow that {1} samples count as {2}</source>
        <translation>das Rauschen ist so langsam, dass {1} Abtastwerte als {2} zählen</translation>
    </message>
    <message>
        <source>the nominal bridge resistance</source>
        <translation>der Nennwiderstand der Brücke</translation>
    </message>
    <message>
        <source>the number {1} is too small</source>
        <translation>die Zahl {1} ist zu klein</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to draw a line through</source>
        <translation>die Zahlen sind zu groß oder zu klein, um eine Gerade hindurchzulegen</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to fit a line to</source>
        <translation>die Zahlen sind zu groß oder zu klein, um eine Gerade anzupassen</translation>
    </message>
    <message>
        <source>the numbers are too large or too small to fit a polynomial to</source>
        <translation>die Zahlen sind zu groß oder zu klein, um ein Polynom anzupassen</translation>
    </message>
    <message>
        <source>the only column is taken as the time, so nothing is left to read</source>
        <translation>die einzige Spalte gilt als Zeit, sodass nichts zu lesen bleibt</translation>
    </message>
    <message>
        <source>the output</source>
        <translation>das Signal</translation>
    </message>
    <message>
        <source>the output cannot be reckoned there to enough digits</source>
        <translation>das Signal lässt sich dort nicht auf genügend Stellen berechnen</translation>
    </message>
    <message>
        <source>the output is beyond what its linearisation can correct</source>
        <translation>das Signal liegt jenseits dessen, was seine Linearisierung korrigieren kann</translation>
    </message>
    <message>
        <source>the output {1} does not change</source>
        <translation>das Signal {1} ändert sich nicht</translation>
    </message>
    <message>
        <source>the output {1} falls by {2} mV/V, {3}</source>
        <translation>das Signal {1} fällt um {2} mV/V, {3}</translation>
    </message>
    <message>
        <source>the output {1} rises by {2} mV/V, {3}</source>
        <translation>das Signal {1} steigt um {2} mV/V, {3}</translation>
    </message>
    <message>
        <source>the outputs at both ends of the range are equal, so there is no full scale</source>
        <translation>die Signale an beiden Enden des Bereichs sind gleich, daher gibt es keinen Endwert</translation>
    </message>
    <message>
        <source>the pages could not be painted</source>
        <translation>die Seiten ließen sich nicht zeichnen</translation>
    </message>
    <message>
        <source>the part {1} is named twice</source>
        <translation>der Teil {1} ist zweimal genannt</translation>
    </message>
    <message>
        <source>the pin leads to a place and to a resistor</source>
        <translation>der Stift führt zu einem Ort und zu einem Widerstand</translation>
    </message>
    <message>
        <source>the place along the arm</source>
        <translation>der Ort entlang des Zweigs</translation>
    </message>
    <message>
        <source>the plan has no steps that come back down</source>
        <translation>der Plan hat keine Stufen, die zurück nach unten führen</translation>
    </message>
    <message>
        <source>the potentiometer</source>
        <translation>das Potentiometer</translation>
    </message>
    <message>
        <source>the range ends at {1} before it begins at {2}</source>
        <translation>der Bereich endet bei {1}, bevor er bei {2} beginnt</translation>
    </message>
    <message>
        <source>the rate is no number above 0</source>
        <translation>die Rate ist keine Zahl über 0</translation>
    </message>
    <message>
        <source>the rated output</source>
        <translation>der Nennkennwert</translation>
    </message>
    <message>
        <source>the reading process cannot be started: {1}</source>
        <translation>der Leseprozess lässt sich nicht starten: {1}</translation>
    </message>
    <message>
        <source>the readings are too large to average</source>
        <translation>die Messwerte sind zu groß zum Mitteln</translation>
    </message>
    <message>
        <source>the readings are too large to reckon with</source>
        <translation>die Messwerte sind zu groß zum Rechnen</translation>
    </message>
    <message>
        <source>the readings at both ends of the range are equal</source>
        <translation>die Messwerte an beiden Enden des Bereichs sind gleich</translation>
    </message>
    <message>
        <source>the recording can be read in several ways</source>
        <translation>die Aufzeichnung lässt sich auf mehrere Arten lesen</translation>
    </message>
    <message>
        <source>the recording is in {1} and the channel reads in {2}</source>
        <translation>die Aufzeichnung ist in {1}, und der Kanal zeigt in {2}</translation>
    </message>
    <message>
        <source>the reference line is not known</source>
        <translation>die Bezugsgerade ist nicht bekannt</translation>
    </message>
    <message>
        <source>the resistance</source>
        <translation>der Widerstand</translation>
    </message>
    <message>
        <source>the resistance and the size of the wire are both given</source>
        <translation>Widerstand und Querschnitt der Ader sind beide angegeben</translation>
    </message>
    <message>
        <source>the resistance is negative</source>
        <translation>der Widerstand ist negativ</translation>
    </message>
    <message>
        <source>the resistance is not a finite number</source>
        <translation>der Widerstand ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>the resistance must be zero or a positive number</source>
        <translation>der Widerstand muss null oder positiv sein</translation>
    </message>
    <message>
        <source>the resistor to S+</source>
        <translation>der Widerstand zu S+</translation>
    </message>
    <message>
        <source>the resolution of the recording bounds what can be told</source>
        <translation>die Auflösung der Aufzeichnung begrenzt, was sich sagen lässt</translation>
    </message>
    <message>
        <source>the review</source>
        <translation>die Durchsicht</translation>
    </message>
    <message>
        <source>the same, first order in each shunt</source>
        <translation>dasselbe, erster Ordnung in jedem Shunt</translation>
    </message>
    <message>
        <source>the sample rate is not a number above zero</source>
        <translation>die Abtastrate ist keine Zahl über null</translation>
    </message>
    <message>
        <source>the sample rate must be greater than zero</source>
        <translation>die Abtastrate muss größer als null sein</translation>
    </message>
    <message>
        <source>the sample rate that was given</source>
        <translation>die angegebene Abtastrate</translation>
    </message>
    <message>
        <source>the scale must be a finite number other than zero</source>
        <translation>die Skalierung muss eine endliche Zahl außer null sein</translation>
    </message>
    <message>
        <source>the scaled unit has no name</source>
        <translation>die skalierte Einheit hat keinen Namen</translation>
    </message>
    <message>
        <source>the section</source>
        <translation>der Querschnitt</translation>
    </message>
    <message>
        <source>the shape of the NumPy array cannot be read</source>
        <translation>die Form des NumPy-Felds lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the shunt</source>
        <translation>der Shunt</translation>
    </message>
    <message>
        <source>the shunts</source>
        <translation>die Shunts</translation>
    </message>
    <message>
        <source>the signal reversed</source>
        <translation>vertauschtem Signal</translation>
    </message>
    <message>
        <source>the signal wires are entered as reversed</source>
        <translation>die Signalleitungen als vertauscht eingetragen sind</translation>
    </message>
    <message>
        <source>the steps of the dials do not fall</source>
        <translation>die Schrittweiten der Drehschalter fallen nicht</translation>
    </message>
    <message>
        <source>the stock has a part of the id “{1}” already</source>
        <translation>der Bestand hat schon ein Teil mit der Kennung „{1}“</translation>
    </message>
    <message>
        <source>the table has more than {1} columns</source>
        <translation>die Tabelle hat mehr als {1} Spalten</translation>
    </message>
    <message>
        <source>the template has no name</source>
        <translation>die Vorlage hat keinen Namen</translation>
    </message>
    <message>
        <source>the temporary file that it is printed into first was cut short</source>
        <translation>die temporäre Datei, in die zuerst gedruckt wird, ist unvollständig</translation>
    </message>
    <message>
        <source>the text does not follow the rules of JSON</source>
        <translation>der Text folgt nicht den Regeln von JSON</translation>
    </message>
    <message>
        <source>the text ends within a character</source>
        <translation>der Text endet in einem Zeichen</translation>
    </message>
    <message>
        <source>the text is neither UTF-8 nor Windows-1252</source>
        <translation>der Text ist weder UTF-8 noch Windows-1252</translation>
    </message>
    <message>
        <source>the text is not UTF-8</source>
        <translation>der Text ist nicht UTF-8</translation>
    </message>
    <message>
        <source>the text is not valid UTF-8</source>
        <translation>der Text ist kein gültiges UTF-8</translation>
    </message>
    <message>
        <source>the times of this file are plain numbers and no clock times or dates</source>
        <translation>die Zeiten dieser Datei sind einfache Zahlen und keine Uhrzeiten oder Daten</translation>
    </message>
    <message>
        <source>the tolerance must be from 0 % to less than 100 %</source>
        <translation>die Toleranz muss von 0 % bis unter 100 % reichen</translation>
    </message>
    <message>
        <source>the two series have different numbers of readings</source>
        <translation>die beiden Reihen haben verschieden viele Messwerte</translation>
    </message>
    <message>
        <source>the uncertainty of the readings is not known</source>
        <translation>die Unsicherheit der Messwerte ist nicht bekannt</translation>
    </message>
    <message>
        <source>the uncertainty of this input is stated twice</source>
        <translation>die Unsicherheit dieser Eingangsgröße ist zweimal angegeben</translation>
    </message>
    <message>
        <source>the unequal arms</source>
        <translation>den ungleichen Zweigen</translation>
    </message>
    <message>
        <source>the universal file holds no function over time</source>
        <translation>die Universaldatei enthält keine Funktion über der Zeit</translation>
    </message>
    <message>
        <source>the universal file holds no function over time: {1}</source>
        <translation>die Universaldatei enthält keine Funktion über der Zeit: {1}</translation>
    </message>
    <message>
        <source>the value is not a finite number</source>
        <translation>der Wert ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>the value is too large</source>
        <translation>der Wert ist zu groß</translation>
    </message>
    <message>
        <source>the window of the moving average must be longer than zero</source>
        <translation>das Fenster des gleitenden Mittelwerts muss länger als null sein</translation>
    </message>
    <message>
        <source>the wiper&apos;s place</source>
        <translation>der Ort des Schleifers</translation>
    </message>
    <message>
        <source>the workbook</source>
        <translation>die Arbeitsmappe</translation>
    </message>
    <message>
        <source>the worst of the causes that cannot be told apart counts</source>
        <translation>es zählt die schlimmste der nicht unterscheidbaren Ursachen</translation>
    </message>
    <message>
        <source>the {1}</source>
        <translation>{1}</translation>
    </message>
    <message>
        <source>the {1} with it</source>
        <translation>{1} mit ihm</translation>
    </message>
    <message>
        <source>them</source>
        <translation>sie</translation>
    </message>
    <message>
        <source>there are arms 1 to 4</source>
        <translation>es gibt die Zweige 1 bis 4</translation>
    </message>
    <message>
        <source>there are more than {1} cells</source>
        <translation>es gibt mehr als {1} Zellen</translation>
    </message>
    <message>
        <source>there are more than {1} rows</source>
        <translation>es gibt mehr als {1} Zeilen</translation>
    </message>
    <message>
        <source>there are more than {1} values from {2} to {3}</source>
        <translation>von {2} bis {3} gibt es mehr als {1} Werte</translation>
    </message>
    <message>
        <source>there are no dials</source>
        <translation>es gibt keine Stellungen</translation>
    </message>
    <message>
        <source>there are none to take the mean of</source>
        <translation>es gibt keine zum Mitteln</translation>
    </message>
    <message>
        <source>there are two columns {1}</source>
        <translation>es gibt zwei Spalten {1}</translation>
    </message>
    <message>
        <source>there are two of the id {1}</source>
        <translation>die Kennung {1} gibt es zweimal</translation>
    </message>
    <message>
        <source>there are two readings between these points in this state</source>
        <translation>es gibt in diesem Zustand zwei Messwerte zwischen diesen Punkten</translation>
    </message>
    <message>
        <source>there are {1} cells under {2} columns</source>
        <translation>es gibt {1} Zellen unter {2} Spalten</translation>
    </message>
    <message>
        <source>there are {1} cells under {2} headings</source>
        <translation>es gibt {1} Zellen unter {2} Überschriften</translation>
    </message>
    <message>
        <source>there are {1} of them</source>
        <translation>es gibt {1} davon</translation>
    </message>
    <message>
        <source>there are {1} of them for {2} points</source>
        <translation>es gibt {1} davon für {2} Punkte</translation>
    </message>
    <message>
        <source>there are {1} patterns of your own already</source>
        <translation>es gibt schon {1} eigene Muster</translation>
    </message>
    <message>
        <source>there are {1} readings for {2} steps</source>
        <translation>es gibt {1} Messwerte für {2} Stufen</translation>
    </message>
    <message>
        <source>there are {1} {2}, more than {3}</source>
        <translation>es gibt {1} {2}, mehr als {3}</translation>
    </message>
    <message>
        <source>there are {1}, the fit needs at least {2}</source>
        <translation>es gibt {1}, die Anpassung braucht mindestens {2}</translation>
    </message>
    <message>
        <source>there have been {1} acts of review</source>
        <translation>es gab {1} Handlungen der Durchsicht</translation>
    </message>
    <message>
        <source>there is a character that is no text</source>
        <translation>es gibt ein Zeichen, das kein Text ist</translation>
    </message>
    <message>
        <source>there is a heading and no row of numbers below it</source>
        <translation>es gibt eine Überschrift und darunter keine Zeile mit Zahlen</translation>
    </message>
    <message>
        <source>there is a limit for {1}, which cannot be judged</source>
        <translation>es gibt einen Grenzwert für {1}, nicht zu beurteilen</translation>
    </message>
    <message>
        <source>there is a line break in it</source>
        <translation>es enthält einen Zeilenumbruch</translation>
    </message>
    <message>
        <source>there is a line break, a tab or the like in it</source>
        <translation>es enthält einen Zeilenumbruch, Tabulator oder Ähnliches</translation>
    </message>
    <message>
        <source>there is a time column and nothing else</source>
        <translation>es gibt eine Zeitspalte und sonst nichts</translation>
    </message>
    <message>
        <source>there is neither a tolerance nor a certificate</source>
        <translation>es gibt weder eine Toleranz noch einen Kalibrierschein</translation>
    </message>
    <message>
        <source>there is no arm {1}</source>
        <translation>es gibt keinen Zweig {1}</translation>
    </message>
    <message>
        <source>there is no bridge type {1}</source>
        <translation>es gibt keine Brückenart {1}</translation>
    </message>
    <message>
        <source>there is no certificate value yet</source>
        <translation>es gibt noch keinen Wert aus einem Kalibrierschein</translation>
    </message>
    <message>
        <source>there is no channel to edit</source>
        <translation>es gibt keinen Kanal zu bearbeiten</translation>
    </message>
    <message>
        <source>there is no channel {1} in the document</source>
        <translation>im Dokument gibt es keinen Kanal {1}</translation>
    </message>
    <message>
        <source>there is no column {1}</source>
        <translation>es gibt keine Spalte {1}</translation>
    </message>
    <message>
        <source>there is no column {1} to take the time from</source>
        <translation>es gibt keine Spalte {1}, aus der die Zeit käme</translation>
    </message>
    <message>
        <source>there is no column “id”</source>
        <translation>es gibt keine Spalte „id“</translation>
    </message>
    <message>
        <source>there is no column “resistance”</source>
        <translation>es gibt keine Spalte „resistance“</translation>
    </message>
    <message>
        <source>there is no folder {1}</source>
        <translation>es gibt keinen Ordner {1}</translation>
    </message>
    <message>
        <source>there is no lead {1}</source>
        <translation>es gibt keine Leitung {1}</translation>
    </message>
    <message>
        <source>there is no name</source>
        <translation>es gibt keinen Namen</translation>
    </message>
    <message>
        <source>there is no number</source>
        <translation>es gibt keine Zahl</translation>
    </message>
    <message>
        <source>there is no place for negative levels</source>
        <translation>es gibt keinen Ort für negative Stufenwerte</translation>
    </message>
    <message>
        <source>there is no place for positive levels</source>
        <translation>es gibt keinen Ort für positive Stufenwerte</translation>
    </message>
    <message>
        <source>there is no place named {1}</source>
        <translation>es gibt keinen Ort namens {1}</translation>
    </message>
    <message>
        <source>there is no point named {1}</source>
        <translation>es gibt keinen Punkt namens {1}</translation>
    </message>
    <message>
        <source>there is no reading between points that the channel has</source>
        <translation>zwischen Punkten, die der Kanal hat, gibt es keinen Messwert</translation>
    </message>
    <message>
        <source>there is no reading {1}</source>
        <translation>es gibt keinen Messwert {1}</translation>
    </message>
    <message>
        <source>there is no resistance</source>
        <translation>es gibt keinen Widerstand</translation>
    </message>
    <message>
        <source>there is no resistor to choose from</source>
        <translation>es gibt keinen Widerstand zur Auswahl</translation>
    </message>
    <message>
        <source>there is no shunt named {1}</source>
        <translation>es gibt keinen Shunt namens {1}</translation>
    </message>
    <message>
        <source>there is no such day</source>
        <translation>diesen Tag gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>there is no such recording in the folder of the document</source>
        <translation>im Ordner des Dokuments gibt es keine solche Aufzeichnung</translation>
    </message>
    <message>
        <source>there is no such step, the sequence has {1}</source>
        <translation>diese Stufe gibt es nicht, der Ablauf hat {1}</translation>
    </message>
    <message>
        <source>there is no {1} {2}</source>
        <translation>{1}: {2} gibt es nicht</translation>
    </message>
    <message>
        <source>there is not enough memory for its numbers</source>
        <translation>es gibt nicht genug Speicher für ihre Zahlen</translation>
    </message>
    <message>
        <source>there is not enough memory for {1} trials</source>
        <translation>für {1} Versuche reicht der Speicher nicht</translation>
    </message>
    <message>
        <source>there is not memory enough for so many samples</source>
        <translation>es gibt nicht genug Speicher für so viele Abtastwerte</translation>
    </message>
    <message>
        <source>there is nothing in the file</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>there is nothing to choose from</source>
        <translation>es gibt nichts, woraus zu wählen wäre</translation>
    </message>
    <message>
        <source>there is only one {1} in a channel</source>
        <translation>es gibt in einem Kanal nur einmal: {1}</translation>
    </message>
    <message>
        <source>there is text after a closing quotation mark</source>
        <translation>hinter einem schließenden Anführungszeichen steht Text</translation>
    </message>
    <message>
        <source>there is text after the end of the document</source>
        <translation>hinter dem Ende des Dokuments steht Text</translation>
    </message>
    <message>
        <source>these two leads touch already</source>
        <translation>diese beiden Leitungen berühren sich schon</translation>
    </message>
    <message>
        <source>they permit no deviation at {1}</source>
        <translation>sie lassen bei {1} keine Abweichung zu</translation>
    </message>
    <message>
        <source>they touch already</source>
        <translation>sie berühren sich schon</translation>
    </message>
    <message>
        <source>this cell is worked out and takes no text</source>
        <translation>diese Zelle ist berechnet und nimmt keinen Text</translation>
    </message>
    <message>
        <source>this check is closed and shows the set-up it was judged by</source>
        <translation>diese Prüfung ist abgeschlossen und zeigt die Einrichtung, nach der sie beurteilt wurde</translation>
    </message>
    <message>
        <source>this choice is not known</source>
        <translation>diese Wahl ist nicht bekannt</translation>
    </message>
    <message>
        <source>this content</source>
        <translation>dieser Inhalt</translation>
    </message>
    <message>
        <source>this input is in no group</source>
        <translation>diese Eingangsgröße ist in keiner Gruppe</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>this is a pipe or device and not a file</source>
        <translation>das ist eine Pipe oder ein Gerät und keine Datei</translation>
    </message>
    <message>
        <source>this is a workbook and no list</source>
        <translation>dies ist eine Arbeitsmappe und keine Liste</translation>
    </message>
    <message>
        <source>this is given twice</source>
        <translation>das ist zweimal angegeben</translation>
    </message>
    <message>
        <source>this is more text than a reading takes</source>
        <translation>das ist mehr Text, als ein Messwert nimmt</translation>
    </message>
    <message>
        <source>this is no number of a column</source>
        <translation>das ist keine Nummer einer Spalte</translation>
    </message>
    <message>
        <source>this is no number of a line or column</source>
        <translation>das ist keine Nummer einer Zeile oder Spalte</translation>
    </message>
    <message>
        <source>this value is not known</source>
        <translation>dieser Wert ist nicht bekannt</translation>
    </message>
    <message>
        <source>this version of report templates is not known</source>
        <translation>diese Fassung von Berichtsvorlagen ist nicht bekannt</translation>
    </message>
    <message>
        <source>three times</source>
        <translation>dreimal</translation>
    </message>
    <message>
        <source>through {1} readings; {2}</source>
        <translation>durch {1} Messwerte; {2}</translation>
    </message>
    <message>
        <source>time={1} and rate= contradict each other</source>
        <translation>time={1} und rate= widersprechen einander</translation>
    </message>
    <message>
        <source>too many keys in one place</source>
        <translation>zu viele Schlüssel an einer Stelle</translation>
    </message>
    <message>
        <source>too small to be told from zero</source>
        <translation>zu klein, um von null unterschieden zu werden</translation>
    </message>
    <message>
        <source>touching leads</source>
        <translation>sich berührende Leitungen</translation>
    </message>
    <message>
        <source>traceability</source>
        <translation>Rückführbarkeit</translation>
    </message>
    <message>
        <source>trend over time</source>
        <translation>Trend über die Zeit</translation>
    </message>
    <message>
        <source>trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>two-sided</source>
        <translation>zweiseitig</translation>
    </message>
    <message>
        <source>u = 0 {1}: no input acts on this step</source>
        <translation>u = 0 {1}: Keine Eingangsgröße wirkt auf diese Stufe</translation>
    </message>
    <message>
        <source>u = √(ΣΣ r cᵢuᵢ cⱼuⱼ)</source>
        <translation>u = √(ΣΣ r cᵢuᵢ cⱼuⱼ)</translation>
    </message>
    <message>
        <source>u = √Σ(c u)²</source>
        <translation>u = √Σ(c u)²</translation>
    </message>
    <message>
        <source>u is the combined standard uncertainty, ν_eff its effective degrees of freedom, U = k u the expanded uncertainty.</source>
        <translation>u ist die kombinierte Standardunsicherheit, ν_eff ihre effektiven Freiheitsgrade, U = k u die erweiterte Unsicherheit.</translation>
    </message>
    <message>
        <source>u of gain</source>
        <translation>u der Verstärkung</translation>
    </message>
    <message>
        <source>u of share, %</source>
        <translation>u des Anteils, %</translation>
    </message>
    <message>
        <source>u of slope</source>
        <translation>u der Steigung</translation>
    </message>
    <message>
        <source>u of zero</source>
        <translation>u des Nullpunkts</translation>
    </message>
    <message>
        <source>u(d) = √(u²(expected) + u²(m) + u²(m₀))</source>
        <translation>u(d) = √(u²(erwartet) + u²(m) + u²(m₀))</translation>
    </message>
    <message>
        <source>u, {1}</source>
        <translation>u, {1}</translation>
    </message>
    <message>
        <source>uncertainties follow from the scatter of the residuals</source>
        <translation>Unsicherheiten folgen aus der Streuung der Residuen</translation>
    </message>
    <message>
        <source>uncertainties follow from those of readings and predictions</source>
        <translation>Unsicherheiten folgen aus denen der Messwerte und Vorhersagen</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>uncertainty budget</source>
        <translation>Unsicherheitsbudget</translation>
    </message>
    <message>
        <source>uncertainty of {1}</source>
        <translation>Unsicherheit von {1}</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>uncommon</source>
        <translation>ungewöhnlich</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unit of readings</source>
        <translation>Einheit der Messwerte</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unknown pin</source>
        <translation>unbekannter Stift</translation>
    </message>
    <message>
        <source>unknown shunt</source>
        <translation>unbekannter Shunt</translation>
    </message>
    <message>
        <source>unused</source>
        <translation>unbenutzt</translation>
    </message>
    <message>
        <source>unused pin</source>
        <translation>unbenutzter Stift</translation>
    </message>
    <message>
        <source>up and down</source>
        <translation>auf und ab</translation>
    </message>
    <message>
        <source>v({1}) = v, solved for {2}</source>
        <translation>v({1}) = v, nach {2} gelöst</translation>
    </message>
    <message>
        <source>very poor: unfilled plastic such as acrylic</source>
        <translation>sehr schlecht: ungefüllter Kunststoff, etwa Acrylglas</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>was killed, perhaps for want of memory</source>
        <translation>wurde beendet, vielleicht aus Mangel an Speicher</translation>
    </message>
    <message>
        <source>was stopped before it was finished</source>
        <translation>wurde abgebrochen, bevor er fertig war</translation>
    </message>
    <message>
        <source>weighted least squares</source>
        <translation>gewichtete kleinste Quadrate</translation>
    </message>
    <message>
        <source>were stopped before they were finished</source>
        <translation>wurden abgebrochen, bevor sie fertig waren</translation>
    </message>
    <message>
        <source>what it would show is too large to reckon with</source>
        <translation>was es anzeigen würde, ist zu groß zum Rechnen</translation>
    </message>
    <message>
        <source>what shunts simulate up to there cannot be followed closely</source>
        <translation>was Shunts bis dorthin simulieren, lässt sich nicht eng verfolgen</translation>
    </message>
    <message>
        <source>what strain or load does to its resistance is too large to reckon with</source>
        <translation>was Dehnung oder Last an seinem Widerstand ändert, ist zu groß zum Rechnen</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>widened, the points scatter more than stated</source>
        <translation>vergrößert, die Punkte streuen mehr als angegeben</translation>
    </message>
    <message>
        <source>will read {1}</source>
        <translation>wird {1} zeigen</translation>
    </message>
    <message>
        <source>will simulate {1} {2}</source>
        <translation>wird {1} {2} simulieren</translation>
    </message>
    <message>
        <source>wiper set within 1 % of its travel</source>
        <translation>Schleifer auf 1 % seines Wegs eingestellt</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>wires cannot have a negative resistance</source>
        <translation>Adern können keinen negativen Widerstand haben</translation>
    </message>
    <message>
        <source>wires of all shunts</source>
        <translation>Leitungen aller Shunts</translation>
    </message>
    <message>
        <source>wires of shunt {1}</source>
        <translation>Leitungen von Shunt {1}</translation>
    </message>
    <message>
        <source>wires of the shunt as entered, within 10 %</source>
        <translation>Leitungen des Shunts wie eingetragen, auf 10 %</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>with this sample rate, filter and mains a step would last longer than a day</source>
        <translation>mit dieser Abtastrate, diesem Filter und Netz dauerte eine Stufe länger als einen Tag</translation>
    </message>
    <message>
        <source>with {1}</source>
        <translation>mit {1}</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>within it with a probability of {1} %, {2} % is asked</source>
        <translation>innerhalb mit einer Wahrscheinlichkeit von {1} %, verlangt sind {2} %</translation>
    </message>
    <message>
        <source>within the limit of {1}</source>
        <translation>innerhalb des Grenzwerts von {1}</translation>
    </message>
    <message>
        <source>without resistance</source>
        <translation>ohne Widerstand</translation>
    </message>
    <message>
        <source>without the instrument&apos;s linearisation</source>
        <translation>ohne die Linearisierung des Geräts</translation>
    </message>
    <message>
        <source>working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>wrong place</source>
        <translation>falscher Ort</translation>
    </message>
    <message>
        <source>x does not rise from point to point</source>
        <translation>x steigt nicht von Punkt zu Punkt</translation>
    </message>
    <message>
        <source>y = a + b x, by {1}</source>
        <translation>y = a + b x, Verfahren: {1}</translation>
    </message>
    <message>
        <source>y = m − m₀</source>
        <translation>y = m − m₀</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>you do not have the right to do that here</source>
        <translation>das ist hier nicht erlaubt</translation>
    </message>
    <message>
        <source>your share of the disk is used up</source>
        <translation>der eigene Anteil an der Platte ist aufgebraucht</translation>
    </message>
    <message>
        <source>zero</source>
        <translation>null</translation>
    </message>
    <message>
        <source>zero between steps</source>
        <translation>Null zwischen den Stufen</translation>
    </message>
    <message>
        <source>zero drift of the instrument</source>
        <translation>Nullpunktdrift des Geräts</translation>
    </message>
    <message>
        <source>zero needs no resistor</source>
        <translation>null braucht keinen Widerstand</translation>
    </message>
    <message>
        <source>zero needs no shunt</source>
        <translation>null braucht keinen Shunt</translation>
    </message>
    <message>
        <source>zero of the instrument within 0.5 µV/V during a check</source>
        <translation>Nullpunkt des Geräts auf 0,5 µV/V während einer Prüfung</translation>
    </message>
    <message>
        <source>zero reading farthest from the first one, less the first, of the greatest expected reading</source>
        <translation>Nullwert, der vom ersten am weitesten entfernt ist, minus diesem, vom größten erwarteten Messwert</translation>
    </message>
    <message>
        <source>zero return</source>
        <translation>Nullpunktrückkehr</translation>
    </message>
    <message>
        <source>zero returned to {1} {2}</source>
        <translation>der Nullpunkt kehrte auf {1} {2} zurück</translation>
    </message>
    <message>
        <source>zero shift</source>
        <translation>Nullpunktverschiebung</translation>
    </message>
    <message>
        <source>zero {1}</source>
        <translation>Nullpunkt {1}</translation>
    </message>
    <message>
        <source>{1}</source>
        <translation>{1}</translation>
    </message>
    <message>
        <source>{1} % larger</source>
        <translation>{1} % größer</translation>
    </message>
    <message>
        <source>{1} % of the limit</source>
        <translation>{1} % des Grenzwerts</translation>
    </message>
    <message>
        <source>{1} % of u²</source>
        <translation>{1} % von u²</translation>
    </message>
    <message>
        <source>{1} % of what is off; such a fault is {2}</source>
        <translation>{1} % dessen, was abweicht; ein solcher Fehler ist {2}</translation>
    </message>
    <message>
        <source>{1} % smaller</source>
        <translation>{1} % kleiner</translation>
    </message>
    <message>
        <source>{1} (due {2})</source>
        <translation>{1} (fällig {2})</translation>
    </message>
    <message>
        <source>{1} (margin {2}): {3}</source>
        <translation>{1} (Toleranz {2}): {3}</translation>
    </message>
    <message>
        <source>{1} (shunt {2}, due {3})</source>
        <translation>{1} (Shunt {2}, fällig {3})</translation>
    </message>
    <message>
        <source>{1} (step {2})</source>
        <translation>{1} (Stufe {2})</translation>
    </message>
    <message>
        <source>{1} ({2} of {3} copper at {4})</source>
        <translation>{1} ({2} Kupfer von {3} bei {4})</translation>
    </message>
    <message>
        <source>{1} ({2})</source>
        <translation>{1} ({2})</translation>
    </message>
    <message>
        <source>{1} N₁ / (F N), x = ΔR/R of gauge 1 in the ideal bridge, N₁ its bridge factor; F and N as set</source>
        <translation>{1} N₁ / (F N), x = ΔR/R von DMS 1 in der idealen Brücke, N₁ deren Brückenfaktor; F und N wie eingestellt</translation>
    </message>
    <message>
        <source>{1} Then dry it and measure again.</source>
        <translation>{1} Dann trocknen und nochmals messen.</translation>
    </message>
    <message>
        <source>{1} What does the instrument show, in {2}?</source>
        <translation>{1} Was zeigt das Gerät, in {2}?</translation>
    </message>
    <message>
        <source>{1} acts as {2}</source>
        <translation>{1} wirkt wie {2}</translation>
    </message>
    <message>
        <source>{1} against {2}</source>
        <translation>{1} gegen {2}</translation>
    </message>
    <message>
        <source>{1} against {2}, U = {3}</source>
        <translation>{1} gegen {2}, U = {3}</translation>
    </message>
    <message>
        <source>{1} against {2}, g = {3}</source>
        <translation>{1} gegen {2}, g = {3}</translation>
    </message>
    <message>
        <source>{1} alone</source>
        <translation>{1} allein</translation>
    </message>
    <message>
        <source>{1} alone: the bridge keeps its voltage</source>
        <translation>{1} allein: Die Brücke behält ihre Spannung</translation>
    </message>
    <message>
        <source>{1} and lowers it {2}</source>
        <translation>{1} und verringert ihn {2}</translation>
    </message>
    <message>
        <source>{1} and on</source>
        <translation>{1} und folgende</translation>
    </message>
    <message>
        <source>{1} and pulls the output down.</source>
        <translation>{1} und zieht das Signal nach unten.</translation>
    </message>
    <message>
        <source>{1} and pulls the output up.</source>
        <translation>{1} und zieht das Signal nach oben.</translation>
    </message>
    <message>
        <source>{1} and what follows: the file ends before it</source>
        <translation>{1} und was folgt: Die Datei endet davor</translation>
    </message>
    <message>
        <source>{1} and {2}</source>
        <translation>{1} und {2}</translation>
    </message>
    <message>
        <source>{1} and {2} are fitted in each other&apos;s place</source>
        <translation>{1} und {2} sind an der Stelle des jeweils anderen eingebaut</translation>
    </message>
    <message>
        <source>{1} and {2} are joined by zero ohm: the excitation is shorted</source>
        <translation>{1} und {2} sind durch null Ohm verbunden: Die Speisung ist kurzgeschlossen</translation>
    </message>
    <message>
        <source>{1} and {2} are shorted at the terminals</source>
        <translation>{1} und {2} sind an den Anschlüssen kurzgeschlossen</translation>
    </message>
    <message>
        <source>{1} and {2} both fall by {3}</source>
        <translation>{1} und {2} fallen beide um {3}</translation>
    </message>
    <message>
        <source>{1} and {2} both rise by {3}</source>
        <translation>{1} und {2} steigen beide um {3}</translation>
    </message>
    <message>
        <source>{1} and {2} compared</source>
        <translation>{1} und {2} verglichen</translation>
    </message>
    <message>
        <source>{1} and {2} go to each other&apos;s place</source>
        <translation>{1} und {2} gehen zum Ort des jeweils anderen</translation>
    </message>
    <message>
        <source>{1} and {2} more</source>
        <translation>{1} und {2} weitere</translation>
    </message>
    <message>
        <source>{1} and {2} only by {3}</source>
        <translation>{1} und {2} nur um {3}</translation>
    </message>
    <message>
        <source>{1} and {2} stay</source>
        <translation>{1} und {2} bleiben</translation>
    </message>
    <message numerus="yes">
        <source>{1} and {n} more</source>
        <extracomment>{n} is a count. In English for one: {1} and {n} more</extracomment>
        <translation>
            <numerusform>{1} und {n} weitere</numerusform>
            <numerusform>{1} und {n} weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} and {n} others do not lie right across {2}: leads between make it simulate {3} than at the ends of {2}.</source>
        <extracomment>{n} is a count. In English for one: {1} and {n} other do not lie right across {2}: leads between make it simulate {3} than at the ends of {2}.</extracomment>
        <translation>
            <numerusform>{1} und {n} weiterer liegen nicht direkt über {2}: Leitungen dazwischen lassen {3} simulieren als an den Enden von {2}.</numerusform>
            <numerusform>{1} und {n} weitere liegen nicht direkt über {2}: Leitungen dazwischen lassen {3} simulieren als an den Enden von {2}.</numerusform>
        </translation>
    </message>
    <message>
        <source>{1} at step {2}</source>
        <translation>{1} bei Stufe {2}</translation>
    </message>
    <message>
        <source>{1} at the bridge</source>
        <translation>{1} an der Brücke</translation>
    </message>
    <message>
        <source>{1} at {2}</source>
        <translation>{1} bei {2}</translation>
    </message>
    <message>
        <source>{1} at {2} (step {3})</source>
        <translation>{1} bei {2} (Stufe {3})</translation>
    </message>
    <message>
        <source>{1} at {2} of the grid</source>
        <translation>{1} bei {2} des Gitters</translation>
    </message>
    <message>
        <source>{1} begins or ends with a space</source>
        <translation>{1} beginnt oder endet mit einem Leerzeichen</translation>
    </message>
    <message>
        <source>{1} begins with a plus-minus sign</source>
        <translation>{1} beginnt mit einem Plusminuszeichen</translation>
    </message>
    <message>
        <source>{1} between arms 3 and 4, wiper to S+, {2} in arm 3</source>
        <translation>{1} zwischen den Zweigen 3 und 4, Schleifer an S+, {2} in Zweig 3</translation>
    </message>
    <message>
        <source>{1} beyond the limit is lost; readings within it are right.</source>
        <translation>{1} jenseits der Grenze ist verloren; Messwerte darunter sind richtig.</translation>
    </message>
    <message>
        <source>{1} broken</source>
        <translation>unterbrochener {1}</translation>
    </message>
    <message>
        <source>{1} by any resistance at this place; the nearest is {2}, with {3}</source>
        <translation>{1} mit irgendeinem Widerstand an diesem Ort; der nächste ist {2}, mit {3}</translation>
    </message>
    <message>
        <source>{1} can be read as one number and as two</source>
        <translation>{1} lässt sich als eine Zahl und als zwei lesen</translation>
    </message>
    <message>
        <source>{1} cannot be reached</source>
        <translation>{1} ist nicht erreichbar</translation>
    </message>
    <message>
        <source>{1} cannot be reached within the limits</source>
        <translation>{1} ist nicht erreichbar innerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>{1} cannot remain with all dials at 0</source>
        <translation>{1} können nicht bleiben, wenn alle Drehschalter auf 0 stehen</translation>
    </message>
    <message>
        <source>{1} cannot tell by itself.</source>
        <translation>{1} kann es allein nicht entscheiden.</translation>
    </message>
    <message>
        <source>{1} carries the drift since it was last zeroed, some {2} {3} in a minute at this rate.</source>
        <translation>{1} enthält die Drift seit dem letzten Nullen, bei dieser Rate etwa {2} {3} in einer Minute.</translation>
    </message>
    <message>
        <source>{1} changed its resistance</source>
        <translation>{1} hat seinen Widerstand geändert</translation>
    </message>
    <message>
        <source>{1} closed</source>
        <translation>{1} geschlossen</translation>
    </message>
    <message>
        <source>{1} closed together</source>
        <translation>{1} gemeinsam geschlossen</translation>
    </message>
    <message>
        <source>{1} closes other shunts there.</source>
        <translation>{1} schließt dort andere Shunts.</translation>
    </message>
    <message>
        <source>{1} colder</source>
        <translation>{1} kälter</translation>
    </message>
    <message>
        <source>{1} different x do not fix a polynomial of degree {2}</source>
        <translation>{1} verschiedene x legen kein Polynom vom Grad {2} fest</translation>
    </message>
    <message>
        <source>{1} does not exist in this connection</source>
        <translation>{1} gibt es bei dieser Anschlussart nicht</translation>
    </message>
    <message>
        <source>{1} does not lie right across {2}: leads between make it simulate {3} than at the ends of {2}.</source>
        <translation>{1} liegt nicht direkt über {2}: Leitungen dazwischen lassen {3} simulieren als an den Enden von {2}.</translation>
    </message>
    <message>
        <source>{1} each</source>
        <translation>je {1}</translation>
    </message>
    <message>
        <source>{1} effective degrees of freedom</source>
        <translation>{1} effektive Freiheitsgrade</translation>
    </message>
    <message>
        <source>{1} end {2}</source>
        <translation>{1} Ende {2}</translation>
    </message>
    <message>
        <source>{1} ends in the letter of a tolerance, ± {2} %</source>
        <translation>{1} endet mit dem Buchstaben einer Toleranz, ± {2} %</translation>
    </message>
    <message>
        <source>{1} exchanged</source>
        <translation>vertauschten {1}</translation>
    </message>
    <message>
        <source>{1} exchanged at the instrument</source>
        <translation>{1} am Gerät vertauscht</translation>
    </message>
    <message>
        <source>{1} fails.</source>
        <translation>{1} besteht nicht.</translation>
    </message>
    <message>
        <source>{1} from the first zero reading</source>
        <translation>{1} vom ersten Nullwert</translation>
    </message>
    <message>
        <source>{1} from the terminals</source>
        <translation>{1} ab den Anschlüssen</translation>
    </message>
    <message>
        <source>{1} from the {2} of measured against expected</source>
        <translation>{1} von der Geraden „{2}“ gemessen über erwartet</translation>
    </message>
    <message>
        <source>{1} goes to {2}</source>
        <translation>{1} geht zu {2}</translation>
    </message>
    <message>
        <source>{1} has a colon in it</source>
        <translation>{1} enthält einen Doppelpunkt</translation>
    </message>
    <message>
        <source>{1} has a plus-minus sign in it</source>
        <translation>{1} enthält ein Plusminuszeichen</translation>
    </message>
    <message>
        <source>{1} has a space behind its sign</source>
        <translation>{1} hat ein Leerzeichen hinter dem Vorzeichen</translation>
    </message>
    <message>
        <source>{1} has both a point and a comma</source>
        <translation>{1} hat Punkt und Komma</translation>
    </message>
    <message>
        <source>{1} has more than one decimal mark</source>
        <translation>{1} hat mehr als ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>{1} has no pin</source>
        <translation>{1} hat keinen Stift</translation>
    </message>
    <message>
        <source>{1} has no unit of a power</source>
        <translation>{1} hat keine Einheit einer Leistung</translation>
    </message>
    <message>
        <source>{1} has no unit that fits here</source>
        <translation>{1} hat keine Einheit, die hierher passt</translation>
    </message>
    <message>
        <source>{1} has no zero reading to count from.</source>
        <translation>{1} hat keinen Nullwert, von dem aus zu zählen wäre.</translation>
    </message>
    <message>
        <source>{1} has something behind the resistance</source>
        <translation>{1} hat noch etwas hinter dem Widerstand</translation>
    </message>
    <message>
        <source>{1} has something between its digits</source>
        <translation>{1} hat etwas zwischen seinen Ziffern</translation>
    </message>
    <message>
        <source>{1} has text after the number</source>
        <translation>{1} hat Text hinter der Zahl</translation>
    </message>
    <message>
        <source>{1} has the unit of a frequency</source>
        <translation>{1} hat die Einheit einer Frequenz</translation>
    </message>
    <message>
        <source>{1} has the unit of a length</source>
        <translation>{1} hat die Einheit einer Länge</translation>
    </message>
    <message>
        <source>{1} has the unit of a power</source>
        <translation>{1} hat die Einheit einer Leistung</translation>
    </message>
    <message>
        <source>{1} has the unit of a resistance</source>
        <translation>{1} hat die Einheit eines Widerstands</translation>
    </message>
    <message>
        <source>{1} has the unit of a section</source>
        <translation>{1} hat die Einheit eines Querschnitts</translation>
    </message>
    <message>
        <source>{1} has the unit of a share</source>
        <translation>{1} hat die Einheit eines Anteils</translation>
    </message>
    <message>
        <source>{1} has the unit of a strain</source>
        <translation>{1} hat die Einheit einer Dehnung</translation>
    </message>
    <message>
        <source>{1} has the unit of a temperature</source>
        <translation>{1} hat die Einheit einer Temperatur</translation>
    </message>
    <message>
        <source>{1} has the unit of a time</source>
        <translation>{1} hat die Einheit einer Zeit</translation>
    </message>
    <message>
        <source>{1} has the unit of a voltage</source>
        <translation>{1} hat die Einheit einer Spannung</translation>
    </message>
    <message>
        <source>{1} has the unit of an output</source>
        <translation>{1} hat die Einheit eines Brückensignals</translation>
    </message>
    <message>
        <source>{1} has {2}</source>
        <translation>{1} hat {2}</translation>
    </message>
    <message>
        <source>{1} higher</source>
        <translation>{1} höher</translation>
    </message>
    <message>
        <source>{1} higher from then on</source>
        <translation>{1} höher von da an</translation>
    </message>
    <message>
        <source>{1} if this is the cause, {2} as entered</source>
        <translation>{1}, wenn dies die Ursache ist, {2} wie eingetragen</translation>
    </message>
    <message>
        <source>{1} in each lead</source>
        <translation>{1} in jeder Leitung</translation>
    </message>
    <message>
        <source>{1} in group {2}</source>
        <translation>{1} in Gruppe {2}</translation>
    </message>
    <message>
        <source>{1} in the file</source>
        <translation>{1} in der Datei</translation>
    </message>
    <message>
        <source>{1} in {2}</source>
        <translation>{1} in {2}</translation>
    </message>
    <message>
        <source>{1} instead of {2}</source>
        <translation>{1} statt {2}</translation>
    </message>
    <message>
        <source>{1} into {2}</source>
        <translation>{1} in {2}</translation>
    </message>
    <message>
        <source>{1} is a calculation</source>
        <translation>{1} ist eine Rechnung</translation>
    </message>
    <message>
        <source>{1} is a fraction</source>
        <translation>{1} ist ein Bruch</translation>
    </message>
    <message>
        <source>{1} is about {2} instead of {3}</source>
        <translation>{1} hat etwa {2} statt {3}</translation>
    </message>
    <message>
        <source>{1} is closed all the time</source>
        <translation>{1} ist ständig geschlossen</translation>
    </message>
    <message>
        <source>{1} is in line {2} too</source>
        <translation>{1} steht auch in Zeile {2}</translation>
    </message>
    <message>
        <source>{1} is in the stock already</source>
        <translation>{1} ist schon im Bestand</translation>
    </message>
    <message>
        <source>{1} is left out: its heading cannot be read.</source>
        <translation>{1} ist weggelassen: Sein Kopf lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>{1} is left out: the file ends in its heading.</source>
        <translation>{1} ist weggelassen: Die Datei endet in seinem Kopf.</translation>
    </message>
    <message>
        <source>{1} is more than any instrument shows</source>
        <translation>{1} ist mehr, als ein Gerät anzeigt</translation>
    </message>
    <message>
        <source>{1} is more than one number</source>
        <translation>{1} ist mehr als eine Zahl</translation>
    </message>
    <message>
        <source>{1} is negative</source>
        <translation>{1} ist negativ</translation>
    </message>
    <message>
        <source>{1} is no code of a language</source>
        <translation>{1} ist kein Code einer Sprache</translation>
    </message>
    <message>
        <source>{1} is no column of a list of resistors</source>
        <translation>{1} ist keine Spalte einer Liste von Widerständen</translation>
    </message>
    <message>
        <source>{1} is no day</source>
        <translation>{1} ist kein Tag</translation>
    </message>
    <message>
        <source>{1} is no dial</source>
        <translation>{1} ist keine Stellung</translation>
    </message>
    <message>
        <source>{1} is no field with its column</source>
        <translation>{1} ist kein Feld mit seiner Spalte</translation>
    </message>
    <message>
        <source>{1} is no limit</source>
        <translation>{1} ist kein Grenzwert</translation>
    </message>
    <message>
        <source>{1} is no node of this bridge</source>
        <translation>{1} ist kein Knoten dieser Brücke</translation>
    </message>
    <message>
        <source>{1} is no pin of this channel</source>
        <translation>{1} ist kein Stift dieses Kanals</translation>
    </message>
    <message>
        <source>{1} is no place of this channel</source>
        <translation>{1} ist kein Ort dieses Kanals</translation>
    </message>
    <message>
        <source>{1} is no power of a resistor</source>
        <translation>{1} ist keine Belastbarkeit eines Widerstands</translation>
    </message>
    <message>
        <source>{1} is no series of preferred values</source>
        <translation>{1} ist keine Normwertreihe</translation>
    </message>
    <message>
        <source>{1} is no share</source>
        <translation>{1} ist kein Anteil</translation>
    </message>
    <message>
        <source>{1} is no temperature in degrees Celsius</source>
        <translation>{1} ist keine Temperatur in Grad Celsius</translation>
    </message>
    <message>
        <source>{1} is no template</source>
        <translation>{1} ist keine Vorlage</translation>
    </message>
    <message>
        <source>{1} is no unit that it can read in</source>
        <translation>{1} ist keine Einheit, in der er zeigen kann</translation>
    </message>
    <message>
        <source>{1} is no value for this field</source>
        <translation>{1} ist kein Wert für dieses Feld</translation>
    </message>
    <message>
        <source>{1} is not a day</source>
        <translation>{1} ist kein Tag</translation>
    </message>
    <message>
        <source>{1} is not a finite number</source>
        <translation>{1} ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>{1} is not a number</source>
        <translation>{1} ist keine Zahl</translation>
    </message>
    <message>
        <source>{1} is not a time</source>
        <translation>{1} ist keine Zeit</translation>
    </message>
    <message>
        <source>{1} is not a whole number from 0 on</source>
        <translation>{1} ist keine ganze Zahl ab 0</translation>
    </message>
    <message>
        <source>{1} is not above 0 and at most {2}</source>
        <translation>{1} ist nicht über 0 und höchstens {2}</translation>
    </message>
    <message>
        <source>{1} is not above zero</source>
        <translation>{1} ist nicht über null</translation>
    </message>
    <message>
        <source>{1} is not between {2} and {3}</source>
        <translation>{1} liegt nicht zwischen {2} und {3}</translation>
    </message>
    <message>
        <source>{1} is not judged.</source>
        <translation>{1} ist nicht beurteilt.</translation>
    </message>
    <message>
        <source>{1} is not known here</source>
        <translation>{1} ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>{1} is not known: {2}.</source>
        <translation>{1} ist nicht bekannt: {2}.</translation>
    </message>
    <message>
        <source>{1} is not recorded: what the bridge does is not seen.</source>
        <translation>{1} wird nicht aufgezeichnet: Was die Brücke tut, wird nicht gesehen.</translation>
    </message>
    <message>
        <source>{1} is one of the usual patterns</source>
        <translation>{1} ist eines der üblichen Muster</translation>
    </message>
    <message>
        <source>{1} is open</source>
        <translation>{1} ist offen</translation>
    </message>
    <message>
        <source>{1} is sampled at other times</source>
        <translation>{1} ist zu anderen Zeiten abgetastet</translation>
    </message>
    <message>
        <source>{1} is shorted</source>
        <translation>{1} ist kurzgeschlossen</translation>
    </message>
    <message>
        <source>{1} is there twice</source>
        <translation>{1} ist zweimal da</translation>
    </message>
    <message>
        <source>{1} is too large</source>
        <translation>{1} ist zu groß</translation>
    </message>
    <message>
        <source>{1} is too large or too small</source>
        <translation>{1} ist zu groß oder zu klein</translation>
    </message>
    <message>
        <source>{1} is too long</source>
        <translation>{1} ist zu lang</translation>
    </message>
    <message>
        <source>{1} is zero, which needs no shunt</source>
        <translation>{1} ist null, wofür kein Shunt nötig ist</translation>
    </message>
    <message>
        <source>{1} is zero, which would give the point infinite weight</source>
        <translation>{1} ist null, was dem Punkt unendliches Gewicht gäbe</translation>
    </message>
    <message>
        <source>{1} is {2} now</source>
        <translation>{1} ist jetzt {2}</translation>
    </message>
    <message>
        <source>{1} join {2}, which {3}</source>
        <translation>{1} verbinden {2}; das {3}</translation>
    </message>
    <message>
        <source>{1} keeps its scale</source>
        <translation>{1} behält den Maßstab</translation>
    </message>
    <message>
        <source>{1} leads from {2} back to itself</source>
        <translation>{1} führt von {2} zu sich selbst zurück</translation>
    </message>
    <message>
        <source>{1} less</source>
        <translation>{1} weniger</translation>
    </message>
    <message>
        <source>{1} less in each lead than before</source>
        <translation>{1} weniger in jeder Leitung als vorher</translation>
    </message>
    <message numerus="yes">
        <source>{1} lie over arm {2} without voltage</source>
        <extracomment>{n} is a count. In English for one: {1} lies over arm {2} without voltage</extracomment>
        <translation>
            <numerusform>{1} liegt über Zweig {2} ohne Spannung</numerusform>
            <numerusform>{1} liegen über Zweig {2} ohne Spannung</numerusform>
        </translation>
    </message>
    <message>
        <source>{1} lies between the signal corners and draws them together</source>
        <translation>{1} liegt zwischen den Signalecken und zieht sie zusammen</translation>
    </message>
    <message>
        <source>{1} lies between the signal corners, which have the same potential</source>
        <translation>{1} liegt zwischen den Signalecken, die dasselbe Potential haben</translation>
    </message>
    <message>
        <source>{1} lies between {2} and {3}</source>
        <translation>{1} liegt zwischen {2} und {3}</translation>
    </message>
    <message>
        <source>{1} lies over both halves and loads the excitation</source>
        <translation>{1} liegt über beiden Hälften und belastet die Speisung</translation>
    </message>
    <message>
        <source>{1} lies over {2} alone</source>
        <translation>{1} liegt nur über {2}</translation>
    </message>
    <message>
        <source>{1} lower</source>
        <translation>{1} niedriger</translation>
    </message>
    <message>
        <source>{1} lower from then on</source>
        <translation>{1} niedriger von da an</translation>
    </message>
    <message>
        <source>{1} means nothing</source>
        <translation>{1} bedeutet nichts</translation>
    </message>
    <message>
        <source>{1} more</source>
        <translation>{1} mehr</translation>
    </message>
    <message>
        <source>{1} more in each lead than before</source>
        <translation>{1} mehr in jeder Leitung als vorher</translation>
    </message>
    <message>
        <source>{1} more than before</source>
        <translation>{1} mehr als vorher</translation>
    </message>
    <message>
        <source>{1} more than entered</source>
        <translation>{1} mehr als eingetragen</translation>
    </message>
    <message>
        <source>{1} must be a finite number above zero</source>
        <translation>{1} muss eine endliche Zahl über null sein</translation>
    </message>
    <message>
        <source>{1} must lie between 0 and 1</source>
        <translation>{1} muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>{1} never closes</source>
        <translation>{1} schließt nie</translation>
    </message>
    <message>
        <source>{1} of a step</source>
        <translation>{1} einer Stufe</translation>
    </message>
    <message>
        <source>{1} of its samples are missing</source>
        <translation>{1} seiner Abtastwerte fehlen</translation>
    </message>
    <message>
        <source>{1} of its samples are outliers</source>
        <translation>{1} seiner Abtastwerte sind Ausreißer</translation>
    </message>
    <message>
        <source>{1} of {2}</source>
        <translation>{1} von {2}</translation>
    </message>
    <message>
        <source>{1} of {2} is beyond its limit of {3}</source>
        <translation>{1} von {2} überschreitet den Grenzwert von {3}</translation>
    </message>
    <message>
        <source>{1} of {2} steps have a level.</source>
        <translation>{1} von {2} Stufen haben ein Plateau.</translation>
    </message>
    <message>
        <source>{1} of {2} steps out of limits</source>
        <translation>{1} von {2} Stufen außerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>{1} of {2} trials have no result, because an input can come to a value that cannot be</source>
        <translation>{1} von {2} Versuchen haben kein Ergebnis, weil eine Eingangsgröße auf einen unmöglichen Wert kommen kann</translation>
    </message>
    <message>
        <source>{1} of {2}: chosen by hand</source>
        <translation>{1} von {2}: von Hand gewählt</translation>
    </message>
    <message>
        <source>{1} of {2}: those that do not pass or have changed</source>
        <translation>{1} von {2}: die nicht bestandenen oder geänderten</translation>
    </message>
    <message>
        <source>{1} off its value</source>
        <translation>{1} weicht von seinem Wert ab</translation>
    </message>
    <message>
        <source>{1} on {2}</source>
        <translation>{1} an {2}</translation>
    </message>
    <message>
        <source>{1} once more</source>
        <translation>{1} noch einmal</translation>
    </message>
    <message>
        <source>{1} or {2}</source>
        <translation>{1} oder {2}</translation>
    </message>
    <message>
        <source>{1} others</source>
        <translation>{1} weitere</translation>
    </message>
    <message>
        <source>{1} over its reading, for the leads</source>
        <translation>{1} durch ihren Messwert, für die Leitungen</translation>
    </message>
    <message>
        <source>{1} over the excitation, wiper at {2} from P- through {3} to S+</source>
        <translation>{1} über der Speisung, Schleifer bei {2} ab P- über {3} an S+</translation>
    </message>
    <message>
        <source>{1} over {2}</source>
        <translation>{1} über {2}</translation>
    </message>
    <message>
        <source>{1} per K</source>
        <translation>{1} je K</translation>
    </message>
    <message>
        <source>{1} per mV/V</source>
        <translation>{1} je mV/V</translation>
    </message>
    <message>
        <source>{1} per {2}</source>
        <translation>{1} je {2}</translation>
    </message>
    <message>
        <source>{1} positions cannot be searched</source>
        <translation>{1} Plätze lassen sich nicht durchsuchen</translation>
    </message>
    <message>
        <source>{1} reads with the wrong sign, and {2} times as large</source>
        <translation>{1} hat das falsche Vorzeichen und ist {2}-mal so groß</translation>
    </message>
    <message>
        <source>{1} reads with the wrong sign; its magnitude is right</source>
        <translation>{1} hat das falsche Vorzeichen; der Betrag ist richtig</translation>
    </message>
    <message>
        <source>{1} reads {2} % {3}</source>
        <translation>{1} liegt {2} % {3}</translation>
    </message>
    <message>
        <source>{1} reads {2} ({3}).</source>
        <translation>{1} zeigt {2} ({3}).</translation>
    </message>
    <message>
        <source>{1} reads {2} times too large</source>
        <translation>{1} ist {2}-mal zu groß</translation>
    </message>
    <message>
        <source>{1} reads {2} times too small</source>
        <translation>{1} ist {2}-mal zu klein</translation>
    </message>
    <message>
        <source>{1} recorded after the shift and before the next zeroing reads {2} {3} high; its scale is right.</source>
        <translation>{1}, nach der Verschiebung und vor dem nächsten Nullen aufgezeichnet, liegt um {2} {3} zu hoch; der Maßstab ist richtig.</translation>
    </message>
    <message>
        <source>{1} recorded after the shift and before the next zeroing reads {2} {3} low; its scale is right.</source>
        <translation>{1}, nach der Verschiebung und vor dem nächsten Nullen aufgezeichnet, liegt um {2} {3} zu niedrig; der Maßstab ist richtig.</translation>
    </message>
    <message>
        <source>{1} recorded after the zero had moved, and not zeroed since, is off by {2}; its scale is right.</source>
        <translation>{1}, nach der Verschiebung des Nullpunkts aufgezeichnet und seither nicht genullt, weicht um {2} ab; der Maßstab ist richtig.</translation>
    </message>
    <message>
        <source>{1} relative humidity</source>
        <translation>{1} relative Feuchte</translation>
    </message>
    <message>
        <source>{1} repeats of both checks would tell, if the differences stay what they are.</source>
        <translation>{1} Wiederholungen beider Prüfungen entschieden es, wenn die Unterschiede bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>{1} says {2}, it {3}.</source>
        <translation>{1} sagt {2}, sie {3}.</translation>
    </message>
    <message>
        <source>{1} short the excitation: they join {2}</source>
        <translation>{1} schließen die Speisung kurz: sie verbinden {2}</translation>
    </message>
    <message>
        <source>{1} submitted it</source>
        <translation>{1} hat es vorgelegt</translation>
    </message>
    <message>
        <source>{1} submitted it and cannot review it too</source>
        <translation>{1} hat es vorgelegt und kann es nicht auch durchsehen</translation>
    </message>
    <message>
        <source>{1} that gives the same output with all shunts open, whole network</source>
        <translation>{1}, die mit allen Shunts offen dasselbe Signal ergibt, ganzes Netzwerk</translation>
    </message>
    <message>
        <source>{1} that the instrument takes</source>
        <translation>{1}, die das Gerät aufnimmt</translation>
    </message>
    <message>
        <source>{1} the instrument would show {2}.</source>
        <translation>{1} zeigte das Gerät {2}.</translation>
    </message>
    <message>
        <source>{1} then keeps its sign ({2})</source>
        <translation>{1} behält dann das Vorzeichen ({2})</translation>
    </message>
    <message>
        <source>{1} then keeps its sign, {2} ({3})</source>
        <translation>{1} behält dann das Vorzeichen, {2} ({3})</translation>
    </message>
    <message>
        <source>{1} then reads with the other sign ({2})</source>
        <translation>{1} wird dann mit dem anderen Vorzeichen gelesen ({2})</translation>
    </message>
    <message>
        <source>{1} then reads with the other sign, {2} ({3})</source>
        <translation>{1} wird dann mit dem anderen Vorzeichen gelesen, {2} ({3})</translation>
    </message>
    <message>
        <source>{1} then reads {2} ({3}), which a shunt check does not see.</source>
        <translation>{1} wird dann {2} gelesen{3}, was eine Shuntprüfung nicht sieht.</translation>
    </message>
    <message>
        <source>{1} times as large</source>
        <translation>{1}-mal so groß</translation>
    </message>
    <message>
        <source>{1} times do not pair with {2} values</source>
        <translation>{1} Zeiten passen nicht zu {2} Werten</translation>
    </message>
    <message>
        <source>{1} times its size</source>
        <translation>das {1}-Fache der Größe</translation>
    </message>
    <message>
        <source>{1} to {2}</source>
        <translation>{1} nach {2}</translation>
    </message>
    <message numerus="yes">
        <source>{1} together lower arm {2} {3}</source>
        <extracomment>{n} is a count. In English for one: {1} lowers arm {2} {3}</extracomment>
        <translation>
            <numerusform>{1} verringert Zweig {2} {3}</numerusform>
            <numerusform>{1} verringern gemeinsam Zweig {2} {3}</numerusform>
        </translation>
    </message>
    <message>
        <source>{1} together with {2}</source>
        <translation>{1} zusammen mit {2}</translation>
    </message>
    <message>
        <source>{1} too high</source>
        <translation>{1} zu hoch</translation>
    </message>
    <message>
        <source>{1} too low</source>
        <translation>{1} zu niedrig</translation>
    </message>
    <message>
        <source>{1} touching</source>
        <translation>sich berührenden {1}</translation>
    </message>
    <message>
        <source>{1} touching at the gauge</source>
        <translation>{1} berühren sich am DMS</translation>
    </message>
    <message>
        <source>{1} trials are too few for an interval of this coverage</source>
        <translation>{1} Versuche sind für ein Intervall dieser Überdeckung zu wenige</translation>
    </message>
    <message>
        <source>{1} turn into heat in {2}, rated {3}.</source>
        <translation>{1} werden in {2} zu Wärme, Belastbarkeit {3}.</translation>
    </message>
    <message>
        <source>{1} turn into heat in {2}; its rating is not known, 100 mW are usual for small resistors.</source>
        <translation>{1} werden in {2} zu Wärme; seine Belastbarkeit ist nicht bekannt, bei kleinen Widerständen sind 100 mW üblich.</translation>
    </message>
    <message>
        <source>{1} warmer</source>
        <translation>{1} wärmer</translation>
    </message>
    <message>
        <source>{1} when jumper {2} of it is pulled</source>
        <translation>{1}, wenn ihre Steckbrücke {2} gezogen wird</translation>
    </message>
    <message>
        <source>{1} where it was {2}, {3} %</source>
        <translation>{1}, wo es {2} war, {3} %</translation>
    </message>
    <message>
        <source>{1} where nothing is stated</source>
        <translation>{1}, wo nichts angegeben ist</translation>
    </message>
    <message>
        <source>{1} where {2} belongs</source>
        <translation>{1}, wo {2} hingehört</translation>
    </message>
    <message>
        <source>{1} where {2} is stated, {3} %</source>
        <translation>{1}, wo {2} angegeben ist, {3} %</translation>
    </message>
    <message>
        <source>{1} while the shunts of step {2} are laid</source>
        <translation>{1}, während die Shunts der Stufe {2} gelegt sind</translation>
    </message>
    <message>
        <source>{1} while {2} hardly moves (it {3} by {4})</source>
        <translation>{1}, während sich {2} kaum bewegt ({3} um {4})</translation>
    </message>
    <message>
        <source>{1} while {2} is laid</source>
        <translation>{1}, während {2} gelegt ist</translation>
    </message>
    <message>
        <source>{1} while {2} stays</source>
        <translation>{1}, während {2} bleibt</translation>
    </message>
    <message>
        <source>{1} while {2} {3} by {4}</source>
        <translation>{1}, während {2} um {4} {3}</translation>
    </message>
    <message>
        <source>{1} with its shunts</source>
        <translation>{1} mit seinen Shunts</translation>
    </message>
    <message>
        <source>{1} with the shunt</source>
        <translation>{1} mit dem Shunt</translation>
    </message>
    <message>
        <source>{1} with these resistors: they reach nothing between zero and {2}, with {3}, so that no resistor is nearer than none</source>
        <translation>{1} mit diesen Widerständen: Zwischen null und {2}, mit {3}, erreichen sie nichts, sodass kein Widerstand näher ist als keiner</translation>
    </message>
    <message>
        <source>{1} with these resistors; the nearest is {2}, with {3}</source>
        <translation>{1} mit diesen Widerständen; der nächste ist {2}, mit {3}</translation>
    </message>
    <message numerus="yes">
        <source>{1} with {n} degrees of freedom</source>
        <extracomment>{n} is a count. In English for one: {1} with {n} degree of freedom</extracomment>
        <translation>
            <numerusform>{1} mit {n} Freiheitsgrad</numerusform>
            <numerusform>{1} mit {n} Freiheitsgraden</numerusform>
        </translation>
    </message>
    <message>
        <source>{1} within limits too</source>
        <translation>auch innerhalb der Grenzwerte: {1}</translation>
    </message>
    <message>
        <source>{1} x values do not pair with {2} y values</source>
        <translation>{1} x-Werte passen nicht zu {2} y-Werten</translation>
    </message>
    <message>
        <source>{1} {2} before, {3} after</source>
        <translation>{1} {2} vorher, {3} nachher</translation>
    </message>
    <message>
        <source>{1} {2} by {3}</source>
        <translation>{1} {2} um {3}</translation>
    </message>
    <message>
        <source>{1} {2} measured, {3} {4} expected</source>
        <translation>{1} {2} gemessen, {3} {4} erwartet</translation>
    </message>
    <message>
        <source>{1} {2} of {3}, {4}: {5}.</source>
        <translation>{1} {2} von {3}, {4}: {5}.</translation>
    </message>
    <message>
        <source>{1} {2} per mV/V</source>
        <translation>{1} {2} je mV/V</translation>
    </message>
    <message>
        <source>{1} {2} per second, {3} {4} in the {5} s of the check</source>
        <translation>{1} {2} je Sekunde, {3} {4} in den {5} s der Prüfung</translation>
    </message>
    <message>
        <source>{1} {2} per {3}</source>
        <translation>{1} {2} je {3}</translation>
    </message>
    <message>
        <source>{1} {2} readings spread over {3}</source>
        <translation>{1} {2} Messwerte streuen über {3}</translation>
    </message>
    <message>
        <source>{1} {2} set where {3} belongs</source>
        <translation>{1} {2} eingestellt, wo {3} hingehört</translation>
    </message>
    <message>
        <source>{1} {2} to {3}</source>
        <translation>{1} {2} nach {3}</translation>
    </message>
    <message>
        <source>{1} {2} where {3} is entered</source>
        <translation>{1} {2}, wo {3} eingetragen ist</translation>
    </message>
    <message>
        <source>{1} µV</source>
        <translation>{1} µV</translation>
    </message>
    <message>
        <source>{1}, U at most {2} of the limit, coverage {3}</source>
        <translation>{1}, U höchstens {2} des Grenzwerts, Überdeckung {3}</translation>
    </message>
    <message>
        <source>{1}, U plays no part</source>
        <translation>{1}, U spielt keine Rolle</translation>
    </message>
    <message>
        <source>{1}, a size up to 1 passes, coverage {2}</source>
        <translation>{1}, ein Betrag bis 1 besteht, Überdeckung {2}</translation>
    </message>
    <message>
        <source>{1}, across no single arm</source>
        <translation>{1}, über keinem einzelnen Zweig</translation>
    </message>
    <message>
        <source>{1}, all kinds</source>
        <translation>{1}, alle Arten</translation>
    </message>
    <message>
        <source>{1}, and by {2} besides where the zero was not taken anew</source>
        <translation>{1}, und zusätzlich um {2}, wo nicht neu genullt wurde</translation>
    </message>
    <message>
        <source>{1}, and the zero moves by {2}{3} {4}</source>
        <translation>{1}, und der Nullpunkt verschiebt sich um {2}{3} {4}</translation>
    </message>
    <message>
        <source>{1}, and {2}</source>
        <translation>{1}, und {2}</translation>
    </message>
    <message>
        <source>{1}, assumed</source>
        <translation>{1}, angenommen</translation>
    </message>
    <message>
        <source>{1}, check {2}</source>
        <translation>{1}, Prüfung {2}</translation>
    </message>
    <message>
        <source>{1}, column {2}, {3} bytes</source>
        <translation>{1}, Spalte {2}, {3} Bytes</translation>
    </message>
    <message>
        <source>{1}, from {2} to {3}</source>
        <translation>{1}, von {2} nach {3}</translation>
    </message>
    <message>
        <source>{1}, gauge factor {2} and bridge factor {3} as set</source>
        <translation>{1}, k-Faktor {2} und Brückenfaktor {3} eingestellt</translation>
    </message>
    <message>
        <source>{1}, group {2}</source>
        <translation>{1}, Gruppe {2}</translation>
    </message>
    <message>
        <source>{1}, guard band {2} × U, coverage {3}</source>
        <translation>{1}, Schutzabstand {2} × U, Überdeckung {3}</translation>
    </message>
    <message>
        <source>{1}, if the gauge&apos;s change of resistance by strain stays as it was.</source>
        <translation>{1}, wenn die Widerstandsänderung des DMS durch Dehnung blieb, wie sie war.</translation>
    </message>
    <message>
        <source>{1}, limit {2}</source>
        <translation>{1}, Grenzwert {2}</translation>
    </message>
    <message>
        <source>{1}, of {2} the rule cannot tell</source>
        <translation>{1}, bei {2} kann die Regel nicht entscheiden</translation>
    </message>
    <message numerus="yes">
        <source>{1}, or one of {n} others</source>
        <extracomment>{n} is a count. In English for one: {1}, or {n} other</extracomment>
        <translation>
            <numerusform>{1}, oder {n} weiterer</numerusform>
            <numerusform>{1}, oder einer von {n} weiteren</numerusform>
        </translation>
    </message>
    <message>
        <source>{1}, or {2}</source>
        <translation>{1}, oder {2}</translation>
    </message>
    <message>
        <source>{1}, over arm {2} and leads, and pulls the output down.</source>
        <translation>{1}, über Zweig {2} und Leitungen, und zieht das Signal nach unten.</translation>
    </message>
    <message>
        <source>{1}, over arm {2} and leads, and pulls the output up.</source>
        <translation>{1}, über Zweig {2} und Leitungen, und zieht das Signal nach oben.</translation>
    </message>
    <message>
        <source>{1}, over the excitation and both half bridges alike: neither divides it otherwise.</source>
        <translation>{1}, über der Speisung und beiden Halbbrücken gleich: Keine teilt sie anders.</translation>
    </message>
    <message>
        <source>{1}, over the output: it loads the signal and unbalances neither half bridge.</source>
        <translation>{1}, über dem Signal: Er belastet es und verstimmt keine Halbbrücke.</translation>
    </message>
    <message>
        <source>{1}, reads the article as before</source>
        <translation>{1}, liest den Prüfling wie bisher</translation>
    </message>
    <message>
        <source>{1}, reads the article reversed</source>
        <translation>{1}, liest den Prüfling umgekehrt</translation>
    </message>
    <message>
        <source>{1}, slope of measured against expected</source>
        <translation>{1}, Steigung gemessen über erwartet</translation>
    </message>
    <message>
        <source>{1}, so {2}: {3}</source>
        <translation>{1}. Folge: {2}; {3}</translation>
    </message>
    <message>
        <source>{1}, trend</source>
        <translation>{1}, Trend</translation>
    </message>
    <message>
        <source>{1}, uncertainty</source>
        <translation>{1}, Unsicherheit</translation>
    </message>
    <message>
        <source>{1}, uncertainty not known</source>
        <translation>{1}, Unsicherheit nicht bekannt</translation>
    </message>
    <message>
        <source>{1}, which a shunt check does not see.</source>
        <translation>{1}, was eine Shuntprüfung nicht sieht.</translation>
    </message>
    <message>
        <source>{1}, which has no reading</source>
        <translation>{1}, die keinen Messwert hat</translation>
    </message>
    <message>
        <source>{1}, which leads nowhere</source>
        <translation>{1}, der nirgendwohin führt</translation>
    </message>
    <message>
        <source>{1}, which not all steps of a shunt check show.</source>
        <translation>{1}, was nicht alle Stufen einer Shuntprüfung zeigen.</translation>
    </message>
    <message>
        <source>{1}, which simulates a load of {2}</source>
        <translation>{1}, was eine Last von {2} simuliert</translation>
    </message>
    <message>
        <source>{1}, which simulates {2} of gauge 1, {3}</source>
        <translation>{1}, was {2} am DMS 1 simuliert, {3}</translation>
    </message>
    <message>
        <source>{1}, which simulates {2}, {3}, the gauges being reversed</source>
        <translation>{1}, was {2} simuliert, {3}, da die DMS umgekehrt sind</translation>
    </message>
    <message>
        <source>{1}, wiring</source>
        <translation>{1}, Verdrahtung</translation>
    </message>
    <message numerus="yes">
        <source>{1}, with {2} inside their loop</source>
        <extracomment>{n} is a count. In English for one: {1}, with {2} inside its loop</extracomment>
        <translation>
            <numerusform>{1}, mit {2} in seiner Schleife</numerusform>
            <numerusform>{1}, mit {2} in ihrer Schleife</numerusform>
        </translation>
    </message>
    <message>
        <source>{1}, within 5 %</source>
        <translation>{1}, auf 5 % genau</translation>
    </message>
    <message>
        <source>{1}, working of step {2}</source>
        <translation>{1}, Rechenweg der Stufe {2}</translation>
    </message>
    <message>
        <source>{1}, worst step {2}: no finite reading</source>
        <translation>{1}, am schlechtesten Stufe {2}: kein endlicher Messwert</translation>
    </message>
    <message>
        <source>{1}, worst step {2}: {3} {4} from expected</source>
        <translation>{1}, am schlechtesten Stufe {2}: {3} {4} vom erwarteten Wert</translation>
    </message>
    <message>
        <source>{1}, {2}</source>
        <translation>{1}, {2}</translation>
    </message>
    <message>
        <source>{1}, {2} % of u²</source>
        <translation>{1}, {2} % von u²</translation>
    </message>
    <message>
        <source>{1}, {2} and {3} compared</source>
        <translation>{1}, {2} und {3} verglichen</translation>
    </message>
    <message>
        <source>{1}, {2} degrees of freedom</source>
        <translation>{1}, {2} Freiheitsgrade</translation>
    </message>
    <message>
        <source>{1}, {2} in size</source>
        <translation>{1}, dem Betrag nach {2}</translation>
    </message>
    <message>
        <source>{1}, {2} m of {3} copper</source>
        <translation>{1}, {2} m Kupfer von {3}</translation>
    </message>
    <message>
        <source>{1}, {2} passes, {3} fails</source>
        <translation>{1}, {2} besteht, {3} besteht nicht</translation>
    </message>
    <message>
        <source>{1}, {2} {3} per mV/V</source>
        <translation>{1}, {2} {3} je mV/V</translation>
    </message>
    <message>
        <source>{1}.</source>
        <translation>{1}.</translation>
    </message>
    <message>
        <source>{1}. More than one thing may be wrong, or a reading is of another step.</source>
        <translation>{1}. Es kann mehr als eines falsch sein, oder ein Messwert gehört zu einer anderen Stufe.</translation>
    </message>
    <message>
        <source>{1}: a shunt check does not see this.</source>
        <translation>{1}: Eine Shuntprüfung sieht das nicht.</translation>
    </message>
    <message>
        <source>{1}: after jumper {2} of {3} ({4})</source>
        <translation>{1}: nach Steckbrücke {2} von {3} ({4})</translation>
    </message>
    <message>
        <source>{1}: before the first jumper</source>
        <translation>{1}: vor der ersten Steckbrücke</translation>
    </message>
    <message>
        <source>{1}: exact {2}; {3} {4} ({5})</source>
        <translation>{1}: genau {2}; {3} {4} ({5})</translation>
    </message>
    <message>
        <source>{1}: it gives all readings to the last digit shown.</source>
        <translation>{1}: Es ergibt alle Messwerte bis zur letzten gezeigten Stelle.</translation>
    </message>
    <message>
        <source>{1}: no jumper leads from {2}{3} to the bridge, so the shunt hangs on {4}</source>
        <translation>{1}: Keine Steckbrücke führt von {2}{3} zur Brücke, der Shunt hängt also an {4}</translation>
    </message>
    <message>
        <source>{1}: only the shunts read the other way round.</source>
        <translation>{1}: Nur die Shunts werden umgekehrt gelesen.</translation>
    </message>
    <message>
        <source>{1}: removed</source>
        <translation>{1}: entfernt</translation>
    </message>
    <message numerus="yes">
        <source>{1}: removed with its {n} checks</source>
        <extracomment>{n} is a count. In English for one: {1}: removed with its check</extracomment>
        <translation>
            <numerusform>{1}: mit seiner Prüfung entfernt</numerusform>
            <numerusform>{1}: mit seinen {n} Prüfungen entfernt</numerusform>
        </translation>
    </message>
    <message>
        <source>{1}: step {2} would show {3} {4} where {5} stands.</source>
        <translation>{1}: Stufe {2} zeigte {3} {4}, wo {5} steht.</translation>
    </message>
    <message>
        <source>{1}: the bridge is left with {2} V of {3} V</source>
        <translation>{1}: Der Brücke bleiben {2} V von {3} V</translation>
    </message>
    <message>
        <source>{1}: the bridge&apos;s own curvature is larger than the uncertainties</source>
        <translation>{1}: Die eigene Krümmung der Brücke ist größer als die Unsicherheiten</translation>
    </message>
    <message>
        <source>{1}: there is a channel {2} already, named {3}</source>
        <translation>{1}: Es gibt schon einen Kanal {2}, namens {3}</translation>
    </message>
    <message>
        <source>{1}: what its uncertainty is made of</source>
        <translation>{1}: woraus seine Unsicherheit besteht</translation>
    </message>
    <message>
        <source>{1}: {2}</source>
        <translation>{1}: {2}</translation>
    </message>
    <message>
        <source>{1}: {2} comes to lie between {3} and {4}; the plan wants it between {5} and {6}{7}</source>
        <translation>{1}: {2} kommt zwischen {3} und {4} zu liegen; der Plan will ihn zwischen {5} und {6}{7}</translation>
    </message>
    <message>
        <source>{1}: {2} has no pin</source>
        <translation>{1}: {2} hat keinen Stift</translation>
    </message>
    <message>
        <source>{1}: {2} instead of {3}</source>
        <translation>{1}: {2} statt {3}</translation>
    </message>
    <message>
        <source>{1}: {2}.</source>
        <translation>{1}: {2}.</translation>
    </message>
    <message>
        <source>{1}: {2}: {3}</source>
        <translation>{1}: {2}: {3}</translation>
    </message>
    <message>
        <source>{1}; as much or more has a probability of {2}</source>
        <translation>{1}; so viel oder mehr hat eine Wahrscheinlichkeit von {2}</translation>
    </message>
    <message>
        <source>{1}; cannot tell whether it changed since {2}</source>
        <translation>{1}; nicht entscheidbar, ob es sich seit {2} geändert hat</translation>
    </message>
    <message>
        <source>{1}; changed since {2}</source>
        <translation>{1}; geändert seit {2}</translation>
    </message>
    <message>
        <source>{1}; changed within the margin since {2}</source>
        <translation>{1}; seit {2} innerhalb der Toleranz geändert</translation>
    </message>
    <message>
        <source>{1}; every shunted step reads with the opposite polarity. Look for swapped signal wires or shunts on the neighbouring arm</source>
        <translation>{1}; jede Stufe mit Shunt zeigt die umgekehrte Polarität. Nach vertauschten Signalleitungen oder Shunts am Nachbarzweig suchen</translation>
    </message>
    <message>
        <source>{1}; or of: {2}</source>
        <translation>{1}; oder von: {2}</translation>
    </message>
    <message>
        <source>{1}; or {2}</source>
        <translation>{1}; oder {2}</translation>
    </message>
    <message numerus="yes">
        <source>{1}; or {n} more</source>
        <extracomment>{n} is a count. In English for one: {1}; or {n} more</extracomment>
        <translation>
            <numerusform>{1}; oder {n} weitere</numerusform>
            <numerusform>{1}; oder {n} weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>{1}; six-wire</source>
        <translation>{1}; Sechsleiter</translation>
    </message>
    <message>
        <source>{1}; the sizes stay.</source>
        <translation>{1}; die Beträge bleiben.</translation>
    </message>
    <message>
        <source>{1}; the zero is then beyond the ±{2}.</source>
        <translation>{1}; der Nullpunkt liegt dann jenseits der ±{2}.</translation>
    </message>
    <message>
        <source>{1}; unchanged since {2}</source>
        <translation>{1}; unverändert seit {2}</translation>
    </message>
    <message>
        <source>{1}; zeroed with all shunts open</source>
        <translation>{1}; mit allen Shunts offen genullt</translation>
    </message>
    <message>
        <source>{1}; {2}</source>
        <translation>{1}; {2}</translation>
    </message>
    <message>
        <source>{1}={2}: it must stand above the first row, line {3}</source>
        <translation>{1}={2}: muss über der ersten Zeile stehen, Zeile {3}</translation>
    </message>
    <message>
        <source>{1}={2}: the values begin in line {3}</source>
        <translation>{1}={2}: die Werte beginnen in Zeile {3}</translation>
    </message>
    <message>
        <source>{1}Right: {2}
</source>
        <translation>{1}Richtig: {2}
</translation>
    </message>
    <message>
        <source>{1}′ = 1 / (1/{2} + Σ 1/Rs)</source>
        <translation>{1}′ = 1 / (1/{2} + Σ 1/Rs)</translation>
    </message>
    <message>
        <source>{1}′ = {2} Rs / ({3} + Rs)</source>
        <translation>{1}′ = {2} Rs / ({3} + Rs)</translation>
    </message>
    <message numerus="yes">
        <source>{n} channels fail: {1}.</source>
        <extracomment>{n} is a count. In English for one: {n} channel fails: {1}.</extracomment>
        <translation>
            <numerusform>{n} Kanal besteht nicht: {1}.</numerusform>
            <numerusform>{n} Kanäle bestehen nicht: {1}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} data sets of another kind than 58</source>
        <extracomment>{n} is a count. In English for one: {n} data set of another kind than 58</extracomment>
        <translation>
            <numerusform>{n} Datensatz anderer Art als 58</numerusform>
            <numerusform>{n} Datensätze anderer Art als 58</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} degrees of freedom</source>
        <extracomment>{n} is a count. In English for one: {n} degree of freedom</extracomment>
        <translation>
            <numerusform>{n} Freiheitsgrad</numerusform>
            <numerusform>{n} Freiheitsgrade</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} levels</source>
        <extracomment>{n} is a count. In English for one: {n} level</extracomment>
        <translation>
            <numerusform>{n} Plateau</numerusform>
            <numerusform>{n} Plateaus</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} more readings are between points that the sheet does not list, or that are gone.</source>
        <extracomment>{n} is a count. In English for one: One more reading is between points that the sheet does not list, or that are gone.</extracomment>
        <translation>
            <numerusform>Ein weiterer Messwert liegt zwischen Punkten, die das Blatt nicht aufführt oder die es nicht mehr gibt.</numerusform>
            <numerusform>{n} weitere Messwerte liegen zwischen Punkten, die das Blatt nicht aufführt oder die es nicht mehr gibt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} of {1} steps are not judged; of the others none fails</source>
        <extracomment>{n} is a count. In English for one: {n} of {1} steps is not judged; of the others none fails</extracomment>
        <translation>
            <numerusform>{n} von {1} Stufen ist nicht beurteilt; von den übrigen überschreitet keine ihren Grenzwert</numerusform>
            <numerusform>{n} von {1} Stufen sind nicht beurteilt; von den übrigen überschreitet keine ihren Grenzwert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} of {1} steps are not judged; the others pass</source>
        <extracomment>{n} is a count. In English for one: {n} of {1} steps is not judged; the others pass</extracomment>
        <translation>
            <numerusform>{n} von {1} Stufen ist nicht beurteilt; die übrigen bestehen</numerusform>
            <numerusform>{n} von {1} Stufen sind nicht beurteilt; die übrigen bestehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} remarks are not settled</source>
        <extracomment>{n} is a count. In English for one: one remark is not settled</extracomment>
        <translation>
            <numerusform>eine Anmerkung ist nicht erledigt</numerusform>
            <numerusform>{n} Anmerkungen sind nicht erledigt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} shunts</source>
        <extracomment>{n} is a count. In English for one: {n} shunt</extracomment>
        <translation>
            <numerusform>{n} Shunt</numerusform>
            <numerusform>{n} Shunts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} steps</source>
        <extracomment>{n} is a count. In English for one: {n} step</extracomment>
        <translation>
            <numerusform>{n} Stufe</numerusform>
            <numerusform>{n} Stufen</numerusform>
        </translation>
    </message>
    <message>
        <source>|Eₙ| ≤ 1 passes, Eₙ = d / U</source>
        <translation>|Eₙ| ≤ 1 besteht, Eₙ = d / U</translation>
    </message>
    <message>
        <source>|d| ≤ L passes</source>
        <translation>|d| ≤ L besteht</translation>
    </message>
    <message>
        <source>|d| ≤ L passes if U ≤ {1} of L</source>
        <translation>|d| ≤ L besteht, wenn U ≤ {1} von L</translation>
    </message>
    <message>
        <source>|d| ≤ L − g passes, &gt; L + g fails, g = {1} U</source>
        <translation>|d| ≤ L − g besteht, &gt; L + g besteht nicht, g = {1} U</translation>
    </message>
    <message>
        <source>ŷ = a + b x</source>
        <translation>ŷ = a + b x</translation>
    </message>
    <message>
        <source>ΔR/R = ({1}′ − {2}) / {3}</source>
        <translation>ΔR/R = ({1}′ − {2}) / {3}</translation>
    </message>
    <message>
        <source>Δv = R / (4 Rs + 2 R)</source>
        <translation>Δv = R / (4 Rs + 2 R)</translation>
    </message>
    <message>
        <source>Δv = v − v₀</source>
        <translation>Δv = v − v₀</translation>
    </message>
    <message>
        <source>Δv I R, as set</source>
        <translation>Δv I R, wie eingestellt</translation>
    </message>
    <message>
        <source>Δv × excitation as set</source>
        <translation>Δv × Speisung wie eingestellt</translation>
    </message>
    <message>
        <source>Δv × scale</source>
        <translation>Δv × Skalierung</translation>
    </message>
    <message>
        <source>Δv ≈ F N ε / 4</source>
        <translation>Δv ≈ F N ε / 4</translation>
    </message>
    <message>
        <source>γ = 2 ε</source>
        <translation>γ = 2 ε</translation>
    </message>
    <message>
        <source>ε ≈ 4 Δv / (F N)</source>
        <translation>ε ≈ 4 Δv / (F N)</translation>
    </message>
    <message>
        <source>ε ≈ R / (F N (R + Rs))</source>
        <translation>ε ≈ R / (F N (R + Rs))</translation>
    </message>
    <message>
        <source>ε ≈ Σ ± R / (F N (R + Rs))</source>
        <translation>ε ≈ Σ ± R / (F N (R + Rs))</translation>
    </message>
    <message>
        <source>χ² = {1} with {2} degrees of freedom, as the stated uncertainties allow</source>
        <translation>χ² = {1} mit {2} Freiheitsgraden, wie die angegebenen Unsicherheiten es zulassen</translation>
    </message>
    <message>
        <source>χ² = {1} with {2} degrees of freedom, probability {3} %: scatter about the line is larger than the stated uncertainties</source>
        <translation>χ² = {1} mit {2} Freiheitsgraden, Wahrscheinlichkeit {3} %: Die Streuung um die Gerade ist größer als die angegebenen Unsicherheiten</translation>
    </message>
    <message>
        <source>−reading / simulated − 1</source>
        <translation>−Messwert / simuliert − 1</translation>
    </message>
</context>
<context>
    <name>ui</name>
    <message>
        <source>&quot;Close check&quot; above the sequence keeps the set-up that this check is judged by, so that later edits never change its verdict. A shunt check says nothing about gauge factor, bond or alignment.</source>
        <translation>„Prüfung abschließen“ über dem Ablauf hält die Einrichtung fest, nach der diese Prüfung beurteilt wird, sodass spätere Änderungen ihr Urteil nie verändern. Eine Shuntprüfung sagt nichts über k-Faktor, Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>#</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>% of expected reading</source>
        <translation>% des erwarteten Messwerts</translation>
    </message>
    <message>
        <source>% of expected span</source>
        <translation>% der erwarteten Spanne</translation>
    </message>
    <message>
        <source>% of reading</source>
        <translation>% des Messwerts</translation>
    </message>
    <message>
        <source>% of span</source>
        <translation>% der Spanne</translation>
    </message>
    <message>
        <source>%1
File not found.
Please verify the correct file name was given.</source>
        <translation>%1
Datei nicht gefunden.
Bitte den Dateinamen prüfen.</translation>
    </message>
    <message>
        <source>%1  (no reading)</source>
        <translation>%1  (kein Messwert)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 % of the strain, and %2 %3 besides</source>
        <translation>%1 % der Dehnung und zusätzlich %2 %3</translation>
    </message>
    <message>
        <source>%1 %2 per %3</source>
        <translation>%1 %2 je %3</translation>
    </message>
    <message>
        <source>%1 %2 – %3</source>
        <translation>%1 %2 – %3</translation>
    </message>
    <message>
        <source>%1 (%2 readings)</source>
        <translation>%1 (%2 Messwerte)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (1 reading)</source>
        <translation>%1 (1 Messwert)</translation>
    </message>
    <message>
        <source>%1 (built in)</source>
        <translation>%1 (mitgeliefert)</translation>
    </message>
    <message>
        <source>%1 (closed)</source>
        <translation>%1 (abgeschl.)</translation>
    </message>
    <message>
        <source>%1 (left out)</source>
        <translation>%1 (weggelassen)</translation>
    </message>
    <message>
        <source>%1 (open)</source>
        <translation>%1 (offen)</translation>
    </message>
    <message>
        <source>%1 (overdue)</source>
        <translation>%1 (überfällig)</translation>
    </message>
    <message>
        <source>%1 (read-only)</source>
        <translation>%1 (nur lesen)</translation>
    </message>
    <message>
        <source>%1 (time)</source>
        <translation>%1 (Zeit)</translation>
    </message>
    <message>
        <source>%1 GiB</source>
        <translation>%1 GiB</translation>
    </message>
    <message>
        <source>%1 KiB</source>
        <translation>%1 KiB</translation>
    </message>
    <message>
        <source>%1 MiB</source>
        <translation>%1 MiB</translation>
    </message>
    <message>
        <source>%1 Nothing was changed.</source>
        <translation>%1 Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 Still %2.</source>
        <translation>%1 Weiterhin %2.</translation>
    </message>
    <message>
        <source>%1 alone is for typing and walking. Hold Ctrl or Alt with it, or take one of F1 to F35.</source>
        <translation>%1 allein dient zum Schreiben und Gehen. Strg oder Alt dazu halten oder eine von F1 bis F35 nehmen.</translation>
    </message>
    <message>
        <source>%1 already exists.
Do you want to replace it?</source>
        <translation>%1 ist schon vorhanden.
Soll die Datei ersetzt werden?</translation>
    </message>
    <message>
        <source>%1 already has a check called %2: the checks will be called %3.</source>
        <translation>%1 hat schon eine Prüfung namens %2: Die Prüfungen werden %3 heißen.</translation>
    </message>
    <message>
        <source>%1 already have a check called %2: the checks will be called %3.</source>
        <translation>%1 haben schon eine Prüfung namens %2: Die Prüfungen werden %3 heißen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 as guessed</source>
        <translation>%1 wie erkannt</translation>
    </message>
    <message>
        <source>%1 being worked out</source>
        <translation>%1 in Arbeit</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Bytes</translation>
    </message>
    <message>
        <source>%1 cannot be looked at: it is gone, or it may not be read. Watching goes on for when it comes back.</source>
        <translation>%1 ist nicht einzusehen: verschwunden oder nicht lesbar. Es wird weiter gewartet, bis es wieder da ist.</translation>
    </message>
    <message>
        <source>%1 cannot be saved under its name. %2 Save it under another.</source>
        <translation>%1 lässt sich nicht unter seinem Namen speichern. %2 Unter einem anderen speichern.</translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation>%1 gewählt</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>%1 columns</source>
        <translation>%1 Spalten</translation>
    </message>
    <message>
        <source>%1 copy</source>
        <translation>Kopie von %1</translation>
    </message>
    <message>
        <source>%1 entered</source>
        <translation>%1 eingetragen</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 gefunden</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 nach %3</translation>
    </message>
    <message>
        <source>%1 from node</source>
        <translation>%1 Knoten von</translation>
    </message>
    <message>
        <source>%1 gauge</source>
        <translation>%1 DMS</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 has %2 bytes now and had %3 when the readings were taken from it.</source>
        <translation>%1 hat jetzt %2 Bytes und hatte %3, als die Messwerte daraus übernommen wurden.</translation>
    </message>
    <message>
        <source>%1 has %2 steps.</source>
        <translation>%1 hat %2 Stufen.</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved. Save them?</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind. Speichern?</translation>
    </message>
    <message>
        <source>%1 has no steps yet: lay out its sequence first.</source>
        <translation>%1 hat noch keine Stufen: zuerst den Ablauf anlegen.</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %Ln channel(s)</source>
        <translation>
            <numerusform>%1 in %Ln Kanal</numerusform>
            <numerusform>%1 in %Ln Kanälen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is already for: %2. Taken over, that command has them no more.</source>
        <translation>%1 ist bereits für: %2. Übernommen, hat jener Befehl sie nicht mehr.</translation>
    </message>
    <message>
        <source>%1 is fixed for: %2. Press other keys.</source>
        <translation>%1 ist fest für: %2. Andere Tasten drücken.</translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1 ist ausgenommen: %2</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk. What is shown was read before.</source>
        <translation>%1 ist nicht mehr auf dem Datenträger. Gezeigt wird, was vorher gelesen wurde.</translation>
    </message>
    <message>
        <source>%1 is no longer there: it was deleted, renamed or moved. Its content is still open in this window.</source>
        <translation>%1 ist nicht mehr da: gelöscht, umbenannt oder verschoben. Der Inhalt ist in diesem Fenster noch offen.</translation>
    </message>
    <message>
        <source>%1 is not from %2 to %3</source>
        <translation>%1 ist nicht von %2 bis %3</translation>
    </message>
    <message>
        <source>%1 is not in the list of pins</source>
        <translation>%1 steht nicht in der Liste der Stifte</translation>
    </message>
    <message>
        <source>%1 is open for writing: %2.

You can read it, change it in the window and save it under another name.</source>
        <translation>%1 ist zum Schreiben offen: %2.

Lesen, im Fenster ändern und unter anderem Namen speichern geht.</translation>
    </message>
    <message>
        <source>%1 is overdue: its calibration was due on %2.</source>
        <translation>%1 ist überfällig: Die Kalibrierung war am %2 fällig.</translation>
    </message>
    <message>
        <source>%1 is there already. Write the answers over it?</source>
        <translation>%1 ist schon vorhanden. Mit den Lösungen überschreiben?</translation>
    </message>
    <message>
        <source>%1 is too large</source>
        <translation>%1 ist zu groß</translation>
    </message>
    <message>
        <source>%1 is too small</source>
        <translation>%1 ist zu klein</translation>
    </message>
    <message>
        <source>%1 is unused</source>
        <translation>%1 ist unbenutzt</translation>
    </message>
    <message>
        <source>%1 is watched now, and %2 no longer.</source>
        <translation>Jetzt wird %1 beobachtet, nicht mehr %2.</translation>
    </message>
    <message>
        <source>%1 leads to %2</source>
        <translation>%1 führt zu %2</translation>
    </message>
    <message>
        <source>%1 left alone. %2.</source>
        <translation>%1 unverändert gelassen. %2.</translation>
    </message>
    <message>
        <source>%1 min %2 s</source>
        <translation>%1 min %2 s</translation>
    </message>
    <message>
        <source>%1 now has the keys %2.</source>
        <translation>%1 hat jetzt die Tasten %2.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 judged</source>
        <translation>%1 von %2 beurteilt</translation>
    </message>
    <message>
        <source>%1 of %2 readings are in the document; save it.</source>
        <translation>%1 von %2 Messwerten stehen im Dokument; jetzt speichern.</translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 von %2 richtig</translation>
    </message>
    <message>
        <source>%1 of %2 rows are left out.</source>
        <translation>%1 von %2 Zeilen sind weggelassen.</translation>
    </message>
    <message>
        <source>%1 of %2 shunts cannot be laid. %3</source>
        <translation>%1 von %2 Shunts lassen sich nicht stecken. %3</translation>
    </message>
    <message>
        <source>%1 of %2 steps</source>
        <translation>%1 von %2 Stufen</translation>
    </message>
    <message>
        <source>%1 of %2 steps have a level</source>
        <translation>%1 von %2 Stufen haben ein Plateau</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation>%1 am %2, seit %3</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 s to %2 s</source>
        <translation>%1 s bis %2 s</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation>%1 gezeigt</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>bisher %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3, %4 samples</source>
        <translation>%1 bis %2 %3, %4 Abtastwerte</translation>
    </message>
    <message>
        <source>%1 to %2 for %3</source>
        <translation>%1 bis %2 für %3</translation>
    </message>
    <message>
        <source>%1 to look at again.</source>
        <translation>%1 nochmals anzusehen.</translation>
    </message>
    <message>
        <source>%1 to node</source>
        <translation>%1 Knoten nach</translation>
    </message>
    <message>
        <source>%1 to tick before the run begins.</source>
        <translation>%1 vor Beginn des Durchgangs abzuhaken.</translation>
    </message>
    <message>
        <source>%1 typed in the table</source>
        <translation>%1, in die Tabelle eingetippt</translation>
    </message>
    <message>
        <source>%1 was changed on the disk after it was read. What is shown is what was read then.</source>
        <translation>%1 wurde nach dem Lesen auf dem Datenträger geändert. Gezeigt wird, was damals gelesen wurde.</translation>
    </message>
    <message>
        <source>%1 was not taken.</source>
        <translation>%1 wurde nicht genommen.</translation>
    </message>
    <message>
        <source>%1 was not taken: still %2.</source>
        <translation>%1 wurde nicht genommen: weiterhin %2.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>%1 wrote that remark: add one of your own instead.</source>
        <translation>Diese Anmerkung ist von %1: stattdessen eine eigene hinzufügen.</translation>
    </message>
    <message>
        <source>%1 wrote that remark: settle it instead.</source>
        <translation>Diese Anmerkung ist von %1: stattdessen als erledigt markieren.</translation>
    </message>
    <message>
        <source>%1 · seed %2.</source>
        <translation>%1 · Startzahl %2.</translation>
    </message>
    <message>
        <source>%1 – manual</source>
        <translation>%1 – Handbuch</translation>
    </message>
    <message>
        <source>%1,  %2 to %3</source>
        <translation>%1,  %2 bis %3</translation>
    </message>
    <message>
        <source>%1, %2, step %3</source>
        <translation>%1, %2, Stufe %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 steps</source>
        <translation>%1, %2: %3 Stufen</translation>
    </message>
    <message>
        <source>%1, active, %2</source>
        <translation>%1, aktiv, %2</translation>
    </message>
    <message>
        <source>%1, beyond the axis</source>
        <translation>%1, jenseits der Achse</translation>
    </message>
    <message>
        <source>%1, beyond the control limits.</source>
        <translation>%1, jenseits der Eingriffsgrenzen.</translation>
    </message>
    <message>
        <source>%1, beyond the range</source>
        <translation>%1, außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>%1, but it can be read in more than one way</source>
        <translation>%1, lässt sich aber auf mehr als eine Art lesen</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, geändert</translation>
    </message>
    <message>
        <source>%1, check %2</source>
        <translation>%1, Prüfung %2</translation>
    </message>
    <message>
        <source>%1, closed switch</source>
        <translation>%1, geschlossener Schalter</translation>
    </message>
    <message>
        <source>%1, date from column %2</source>
        <translation>%1, Datum aus Spalte %2</translation>
    </message>
    <message>
        <source>%1, deviation %2, limit ± %3</source>
        <translation>%1, Abweichung %2, Grenzwert ± %3</translation>
    </message>
    <message>
        <source>%1, end at %2</source>
        <translation>%1, Ende an %2</translation>
    </message>
    <message>
        <source>%1, excitation %2 constant current, %3 at this step.</source>
        <translation>%1, Speisung %2 Konstantstrom, %3 bei dieser Stufe.</translation>
    </message>
    <message>
        <source>%1, excitation %2 constant current.</source>
        <translation>%1, Speisung %2 Konstantstrom.</translation>
    </message>
    <message>
        <source>%1, excitation %2.</source>
        <translation>%1, Speisung %2.</translation>
    </message>
    <message>
        <source>%1, four-wire</source>
        <translation>%1, Vierleiter</translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <translation>%1, von %2 nach %3</translation>
    </message>
    <message>
        <source>%1, jumper to %2</source>
        <translation>%1, Steckbrücke nach %2</translation>
    </message>
    <message>
        <source>%1, kept on %2, %3.</source>
        <translation>%1, aufbewahrt am %2, %3.</translation>
    </message>
    <message>
        <source>%1, not as in stock</source>
        <translation>%1, anders als im Bestand</translation>
    </message>
    <message>
        <source>%1, not settled to two digits</source>
        <translation>%1, nicht auf zwei Stellen beruhigt</translation>
    </message>
    <message>
        <source>%1, pin %2</source>
        <translation>%1, Stift %2</translation>
    </message>
    <message>
        <source>%1, remark</source>
        <translation>%1, Anmerkung</translation>
    </message>
    <message>
        <source>%1, settled to two digits</source>
        <translation>%1, auf zwei Stellen beruhigt</translation>
    </message>
    <message>
        <source>%1, shunt %2</source>
        <translation>%1, Shunt %2</translation>
    </message>
    <message>
        <source>%1, six-wire</source>
        <translation>%1, Sechsleiter</translation>
    </message>
    <message>
        <source>%1, step %2</source>
        <translation>%1, Stufe %2</translation>
    </message>
    <message>
        <source>%1, tied</source>
        <translation>%1, gleichauf</translation>
    </message>
    <message>
        <source>%1, what if</source>
        <translation>%1, Was wäre, wenn</translation>
    </message>
    <message>
        <source>%1, which was open last, is open elsewhere.</source>
        <translation>%1, das zuletzt offen war, ist anderswo offen.</translation>
    </message>
    <message>
        <source>%1, wires</source>
        <translation>%1, Leitungen</translation>
    </message>
    <message>
        <source>%1, within %2 %</source>
        <translation>%1, auf %2 % genau</translation>
    </message>
    <message>
        <source>%1, written as %2</source>
        <translation>%1, geschrieben als %2</translation>
    </message>
    <message>
        <source>%1. Fits best: %2.</source>
        <translation>%1. Am besten passt: %2.</translation>
    </message>
    <message>
        <source>%1. No single fault explains them all</source>
        <translation>%1. Kein einzelner Fehler erklärt alle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 of %3 steps</source>
        <translation>%1: %2 von %3 Stufen</translation>
    </message>
    <message>
        <source>%1: %2 s to %3 s</source>
        <translation>%1: %2 s bis %3 s</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2.
%3.</source>
        <translation>%1: %2.
%3.</translation>
    </message>
    <message>
        <source>%1: U = %2 %3 with k = %4 for %5; %6.</source>
        <translation>%1: U = %2 %3 mit k = %4 für %5; %6.</translation>
    </message>
    <message>
        <source>%1: best set %2 of %3 right, seed %4.</source>
        <translation>%1: beste Reihe %2 von %3 richtig, Startzahl %4.</translation>
    </message>
    <message>
        <source>%1: box up to %2</source>
        <translation>%1: Dekade bis %2</translation>
    </message>
    <message>
        <source>%1: its contents are not those that the readings were taken from (SHA-256 differs).</source>
        <translation>%1: Der Inhalt ist nicht der, aus dem die Messwerte stammen (SHA-256 weicht ab).</translation>
    </message>
    <message>
        <source>%1: measure again, and look for two faults.</source>
        <translation>%1: nochmals messen und nach zwei Fehlern suchen.</translation>
    </message>
    <message>
        <source>%1: no step</source>
        <translation>%1: keine Stufe</translation>
    </message>
    <message>
        <source>%1: standard uncertainty %2.</source>
        <translation>%1: Standardunsicherheit %2.</translation>
    </message>
    <message>
        <source>%1: step %2</source>
        <translation>%1: Stufe %2</translation>
    </message>
    <message numerus="yes">
        <source>%1; and %n more</source>
        <translation>
            <numerusform>%1; und %n weitere</numerusform>
            <numerusform>%1; und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; budget %2</source>
        <translation>%1; Budget %2</translation>
    </message>
    <message>
        <source>%1; error</source>
        <translation>%1; Fehler</translation>
    </message>
    <message>
        <source>%1; nearest comes: %2.</source>
        <translation>%1; am nächsten kommt: %2.</translation>
    </message>
    <message>
        <source>%1; the first %2 of %3 points</source>
        <translation>%1; die ersten %2 von %3 Punkten</translation>
    </message>
    <message>
        <source>%1; warning</source>
        <translation>%1; Warnung</translation>
    </message>
    <message numerus="yes">
        <source>%Ln are left alone.</source>
        <translation>
            <numerusform>%Ln bleibt unverändert.</numerusform>
            <numerusform>%Ln bleiben unverändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln cannot tell</source>
        <translation>
            <numerusform>%Ln nicht entscheidbar</numerusform>
            <numerusform>%Ln nicht entscheidbar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln changed beyond the margin</source>
        <translation>
            <numerusform>%Ln über die Toleranz hinaus geändert</numerusform>
            <numerusform>%Ln über die Toleranz hinaus geändert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s)</source>
        <translation>
            <numerusform>%Ln Kanal</numerusform>
            <numerusform>%Ln Kanäle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s) are added.</source>
        <translation>
            <numerusform>%Ln Kanal wird hinzugefügt.</numerusform>
            <numerusform>%Ln Kanäle werden hinzugefügt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln channel(s) change.</source>
        <translation>
            <numerusform>%Ln Kanal ändert sich.</numerusform>
            <numerusform>%Ln Kanäle ändern sich.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln fail</source>
        <translation>
            <numerusform>%Ln nicht bestanden</numerusform>
            <numerusform>%Ln nicht bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln not checked</source>
        <translation>
            <numerusform>%Ln nicht geprüft</numerusform>
            <numerusform>%Ln nicht geprüft</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln not judged</source>
        <translation>
            <numerusform>%Ln nicht beurteilt</numerusform>
            <numerusform>%Ln nicht beurteilt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln pass</source>
        <translation>
            <numerusform>%Ln bestanden</numerusform>
            <numerusform>%Ln bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) of open checks are dropped.</source>
        <translation>
            <numerusform>%Ln Messwert einer offenen Prüfung entfällt.</numerusform>
            <numerusform>%Ln Messwerte offener Prüfungen entfallen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln refuse.</source>
        <translation>
            <numerusform>%Ln lehnt ab.</numerusform>
            <numerusform>%Ln lehnen ab.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln refused.</source>
        <translation>
            <numerusform>%Ln abgelehnt.</numerusform>
            <numerusform>%Ln abgelehnt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) are refused.</source>
        <translation>
            <numerusform>%Ln Zeile wird abgelehnt.</numerusform>
            <numerusform>%Ln Zeilen werden abgelehnt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) were refused.</source>
        <translation>
            <numerusform>%Ln Zeile wurde abgelehnt.</numerusform>
            <numerusform>%Ln Zeilen wurden abgelehnt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln stay as they are.</source>
        <translation>
            <numerusform>%Ln bleibt, wie er ist.</numerusform>
            <numerusform>%Ln bleiben, wie sie sind.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln with open remarks</source>
        <translation>
            <numerusform>%Ln mit offenen Anmerkungen</numerusform>
            <numerusform>%Ln mit offenen Anmerkungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) that the file has not: %1</source>
        <translation>
            <numerusform>%n Änderung, die die Datei nicht hat: %1</numerusform>
            <numerusform>%n Änderungen, die die Datei nicht hat: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n channel(s)</source>
        <translation>
            <numerusform>%n Kanal</numerusform>
            <numerusform>%n Kanäle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n error(s)</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s)</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s) of this plan are known</source>
        <translation>
            <numerusform>Ein Fehler dieses Plans ist bekannt</numerusform>
            <numerusform>%n Fehler dieses Plans sind bekannt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n faults explain every reading: more readings tell them apart.</source>
        <translation>
            <numerusform>%n Fehler erklären alle Messwerte: Weitere Messwerte unterscheiden sie.</numerusform>
            <numerusform>%n Fehler erklären alle Messwerte: Weitere Messwerte unterscheiden sie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n leak(s)</source>
        <translation>
            <numerusform>ein Nebenschluss</numerusform>
            <numerusform>%n Nebenschlüsse</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n level(s), which do not fit the plan</source>
        <translation>
            <numerusform>%n Plateau, das nicht zum Plan passt</numerusform>
            <numerusform>%n Plateaus, die nicht zum Plan passen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation>
            <numerusform>%n Hinweis</numerusform>
            <numerusform>%n Hinweise</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) found</source>
        <translation>
            <numerusform>%n Stelle gefunden</numerusform>
            <numerusform>%n Stellen gefunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n Messwert</numerusform>
            <numerusform>%n Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings: mean %1, standard uncertainty of the mean %2 %3</source>
        <translation>
            <numerusform>%n Messwerte: Mittelwert %1, Standardunsicherheit des Mittelwerts %2 %3</numerusform>
            <numerusform>%n Messwerte: Mittelwert %1, Standardunsicherheit des Mittelwerts %2 %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs of the sequence</source>
        <translation>
            <numerusform>%n Durchläufe des Ablaufs</numerusform>
            <numerusform>%n Durchläufe des Ablaufs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shunt(s)</source>
        <translation>
            <numerusform>%n Shunt</numerusform>
            <numerusform>%n Shunts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n span(s) of no step</source>
        <translation>
            <numerusform>%n Abschnitt ohne Stufe</numerusform>
            <numerusform>%n Abschnitte ohne Stufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n span(s) of steps</source>
        <translation>
            <numerusform>%n Abschnitt einer Stufe</numerusform>
            <numerusform>%n Abschnitte von Stufen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s), %1 in all</source>
        <translation>
            <numerusform>%n Stufe, insgesamt %1</numerusform>
            <numerusform>%n Stufen, insgesamt %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n Warnung</numerusform>
            <numerusform>%n Warnungen</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;About Shuntwright</source>
        <translation>&amp;Über Shuntwright</translation>
    </message>
    <message>
        <source>&amp;Accept…</source>
        <translation>&amp;Freigeben…</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Add channel</source>
        <translation>Kanal &amp;anlegen</translation>
    </message>
    <message>
        <source>&amp;All views</source>
        <translation>&amp;Alle Ansichten</translation>
    </message>
    <message>
        <source>&amp;Another seed</source>
        <translation>A&amp;ndere Startzahl</translation>
    </message>
    <message>
        <source>&amp;Another set</source>
        <translation>Ne&amp;ue Aufgaben</translation>
    </message>
    <message>
        <source>&amp;Answer</source>
        <translation>An&amp;tworten</translation>
    </message>
    <message>
        <source>&amp;Answers…</source>
        <translation>&amp;Lösungen…</translation>
    </message>
    <message>
        <source>&amp;Apply to channels…</source>
        <translation>Auf Kanäle &amp;anwenden…</translation>
    </message>
    <message>
        <source>&amp;Both, in two files…</source>
        <translation>&amp;Beides, in zwei Dateien…</translation>
    </message>
    <message>
        <source>&amp;Bridge</source>
        <translation>Brück&amp;e</translation>
    </message>
    <message>
        <source>&amp;Cancel search</source>
        <translation>Suche a&amp;bbrechen</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>&amp;Channel</source>
        <translation>&amp;Kanal</translation>
    </message>
    <message>
        <source>&amp;Choose</source>
        <translation>&amp;Wählen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Close or reopen check</source>
        <translation>Prüfung ab&amp;schließen oder öffnen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy as picture</source>
        <translation>Als Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy cells</source>
        <translation>Zellen &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy the list</source>
        <translation>Liste &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>&amp;Details of the check…</source>
        <translation>An&amp;gaben zur Prüfung…</translation>
    </message>
    <message>
        <source>&amp;Details of the document…</source>
        <translation>&amp;Angaben zum Dokument…</translation>
    </message>
    <message>
        <source>&amp;Do it</source>
        <translation>&amp;Ausführen</translation>
    </message>
    <message>
        <source>&amp;Drawing</source>
        <translation>&amp;Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>&amp;Duplicate channel</source>
        <translation>Kanal &amp;verdoppeln</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Edit the value</source>
        <translation>Wert b&amp;earbeiten</translation>
    </message>
    <message>
        <source>&amp;Export picture of the outcome…</source>
        <translation>Bild des Ergebnisses e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Export picture…</source>
        <translation>Bild e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Export to file…</source>
        <translation>In Datei e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Suchen…</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>&amp;Einpassen</translation>
    </message>
    <message>
        <source>&amp;Fit the columns to what they hold</source>
        <translation>&amp;Spalten an ihren Inhalt anpassen</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Go on with the run</source>
        <translation>Durchgang &amp;fortsetzen</translation>
    </message>
    <message>
        <source>&amp;Guided run</source>
        <translation>&amp;Geführter Durchgang</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Help on this place</source>
        <translation>&amp;Hilfe zu dieser Stelle</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Wie viele</translation>
    </message>
    <message>
        <source>&amp;IEC 60617: rectangles</source>
        <translation>&amp;IEC 60617: Rechtecke</translation>
    </message>
    <message>
        <source>&amp;Import a channel list…</source>
        <translation>Kanalliste e&amp;inlesen…</translation>
    </message>
    <message>
        <source>&amp;Import from file…</source>
        <translation>Aus Datei e&amp;inlesen…</translation>
    </message>
    <message>
        <source>&amp;Keep as own template</source>
        <translation>Als eigene Vorlage &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Keep changes</source>
        <translation>Änderungen &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Keys of the recording strip</source>
        <translation>&amp;Tasten des Aufzeichnungsstreifens</translation>
    </message>
    <message>
        <source>&amp;Leave it for now</source>
        <translation>&amp;Jetzt nicht</translation>
    </message>
    <message>
        <source>&amp;Leave the run</source>
        <translation>Durchgang ver&amp;lassen</translation>
    </message>
    <message>
        <source>&amp;Libraries</source>
        <translation>&amp;Bibliotheken</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Look at it again</source>
        <translation>&amp;Nochmals ansehen</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>Hand&amp;buch</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;New Folder</source>
        <translation>&amp;Neuer Ordner</translation>
    </message>
    <message>
        <source>&amp;New check</source>
        <translation>&amp;Neue Prüfung</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Next, without a reading</source>
        <translation>&amp;Weiter ohne Messwert</translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation>&amp;Nein</translation>
    </message>
    <message>
        <source>&amp;No keys</source>
        <translation>K&amp;eine Tasten</translation>
    </message>
    <message>
        <source>&amp;Not shown</source>
        <translation>&amp;Nicht gezeigt</translation>
    </message>
    <message>
        <source>&amp;OK</source>
        <translation>&amp;OK</translation>
    </message>
    <message>
        <source>&amp;Ohmmeter</source>
        <translation>&amp;Ohmmeter</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Overview of all channels</source>
        <translation>Ü&amp;bersicht aller Kanäle</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Paste cells</source>
        <translation>Zellen &amp;einfügen</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>&amp;Bild</translation>
    </message>
    <message>
        <source>&amp;Pictures as tables…</source>
        <translation>Bilder als Tabe&amp;llen…</translation>
    </message>
    <message>
        <source>&amp;Polarity map</source>
        <translation>&amp;Polaritätskarte</translation>
    </message>
    <message>
        <source>&amp;Practice</source>
        <translation>Ü&amp;ben</translation>
    </message>
    <message>
        <source>&amp;Prepare</source>
        <translation>&amp;Vorbereiten</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Drucken</translation>
    </message>
    <message>
        <source>&amp;Print the list…</source>
        <translation>Liste &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programm</translation>
    </message>
    <message>
        <source>&amp;Questions</source>
        <translation>Au&amp;fgaben</translation>
    </message>
    <message>
        <source>&amp;Questions…</source>
        <translation>&amp;Aufgaben…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>&amp;Remark</source>
        <translation>&amp;Anmerkung</translation>
    </message>
    <message>
        <source>&amp;Remark (may be empty)</source>
        <translation>&amp;Anmerkung (darf leer sein)</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove channel</source>
        <translation>Kanal &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove step</source>
        <translation>Stufe &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>&amp;Rename…</source>
        <translation>&amp;Umbenennen…</translation>
    </message>
    <message>
        <source>&amp;Replace</source>
        <translation>&amp;Ersetzen</translation>
    </message>
    <message>
        <source>&amp;Rising and falling readings</source>
        <translation>Steigende und &amp;fallende Messwerte</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>&amp;Save as…</source>
        <translation>&amp;Speichern unter…</translation>
    </message>
    <message>
        <source>&amp;Save over it</source>
        <translation>Darüber &amp;speichern</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Sequence</source>
        <translation>&amp;Ablauf</translation>
    </message>
    <message>
        <source>&amp;Show the field in the set-up</source>
        <translation>Feld in der Einrichtung &amp;zeigen</translation>
    </message>
    <message>
        <source>&amp;State, remarks and history</source>
        <translation>&amp;Stand, Anmerkungen und Verlauf</translation>
    </message>
    <message>
        <source>&amp;Step up</source>
        <translation>Schritt nach &amp;oben</translation>
    </message>
    <message>
        <source>&amp;Stop reading</source>
        <translation>Lesen &amp;abbrechen</translation>
    </message>
    <message>
        <source>&amp;Take readings</source>
        <translation>Messwerte ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Take the lock over</source>
        <translation>Sperre ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Take them over</source>
        <translation>Tasten ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Teach</source>
        <translation>S&amp;chulung</translation>
    </message>
    <message>
        <source>&amp;Tour</source>
        <translation>&amp;Rundgang</translation>
    </message>
    <message>
        <source>&amp;Uncertainty of each point</source>
        <translation>&amp;Unsicherheit jedes Punkts</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Use this set</source>
        <translation>Diesen Satz &amp;verwenden</translation>
    </message>
    <message>
        <source>&amp;Usual keys</source>
        <translation>Ü&amp;bliche Tasten</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>An&amp;sicht</translation>
    </message>
    <message>
        <source>&amp;Watch for recordings</source>
        <translation>Auf Aufzeichnungen &amp;warten</translation>
    </message>
    <message>
        <source>&amp;What if</source>
        <translation>&amp;Was wäre, wenn</translation>
    </message>
    <message>
        <source>&amp;Wiring</source>
        <translation>&amp;Verdrahtung</translation>
    </message>
    <message>
        <source>&amp;Yes</source>
        <translation>&amp;Ja</translation>
    </message>
    <message>
        <source>(the comma is the decimal mark)</source>
        <translation>(das Komma ist das Dezimalzeichen)</translation>
    </message>
    <message>
        <source>(the point is the decimal mark)</source>
        <translation>(der Punkt ist das Dezimalzeichen)</translation>
    </message>
    <message>
        <source>+ positive</source>
        <translation>+ positiv</translation>
    </message>
    <message>
        <source>0.25 mm² or AWG 26</source>
        <translation>0,25 mm² oder AWG 26</translation>
    </message>
    <message>
        <source>2026-05-31</source>
        <translation>2026-05-31</translation>
    </message>
    <message>
        <source>21 °C; empty: not noted</source>
        <translation>21 °C; leer: nicht notiert</translation>
    </message>
    <message>
        <source>45 %; empty: not noted</source>
        <translation>45 %; leer: nicht notiert</translation>
    </message>
    <message>
        <source>90 %</source>
        <translation>90 %</translation>
    </message>
    <message>
        <source>90 % interval</source>
        <translation>90-%-Intervall</translation>
    </message>
    <message>
        <source>90 % interval ±</source>
        <translation>90-%-Intervall ±</translation>
    </message>
    <message>
        <source>95 %</source>
        <translation>95 %</translation>
    </message>
    <message>
        <source>95 % &amp;confidence band of the line</source>
        <translation>95-%-Vertrauens&amp;band der Geraden</translation>
    </message>
    <message>
        <source>95 % &amp;prediction band of a new reading</source>
        <translation>95-%-Vorhersageband eines neuen &amp;Messwerts</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % Vertrauen</translation>
    </message>
    <message>
        <source>95 % interval ±</source>
        <translation>95-%-Intervall ±</translation>
    </message>
    <message>
        <source>95 % prediction</source>
        <translation>95 % Vorhersage</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>A channel has at most %1 pins.</source>
        <translation>Ein Kanal hat höchstens %1 Stifte.</translation>
    </message>
    <message>
        <source>A copy of unsaved changes is kept beside, and offered after a crash. The document itself changes only when it is saved.</source>
        <translation>Eine Kopie ungespeicherter Änderungen wird daneben aufbewahrt und nach einem Absturz angeboten. Das Dokument selbst ändert sich nur beim Speichern.</translation>
    </message>
    <message>
        <source>A deviation up to its own U passes, a larger one fails. The limit plays no part.</source>
        <translation>Eine Abweichung bis zu ihrer eigenen U besteht, eine größere nicht. Der Grenzwert spielt keine Rolle.</translation>
    </message>
    <message>
        <source>A jumper joins two pins: add pins first.</source>
        <translation>Eine Steckbrücke verbindet zwei Stifte: zuerst Stifte anlegen.</translation>
    </message>
    <message>
        <source>A notice when a report, a search, an import or trials have taken more than some seconds and another window is in front.</source>
        <translation>Ein Hinweis, wenn Bericht, Suche, Import oder Versuche mehr als einige Sekunden gedauert haben und ein anderes Fenster vorn ist.</translation>
    </message>
    <message>
        <source>A pattern of the names is needed</source>
        <translation>Ein Muster der Namen ist nötig</translation>
    </message>
    <message>
        <source>A potentiometer between arms 3 and 4, its wiper is S+. The wiper&apos;s number is the share that lies in arm 3.</source>
        <translation>Ein Potentiometer zwischen den Zweigen 3 und 4, der Schleifer ist S+. Die Zahl des Schleifers ist der Anteil, der in Zweig 3 liegt.</translation>
    </message>
    <message>
        <source>A potentiometer over the excitation, its wiper through a resistor to S+. The wiper is at P- with 0, at P+ with 1.</source>
        <translation>Ein Potentiometer über der Speisung, der Schleifer über einen Widerstand an S+. Der Schleifer steht bei 0 an P-, bei 1 an P+.</translation>
    </message>
    <message>
        <source>A recording that is complete is read as it arrives. It becomes a check of each channel that it has a column for, when each of them has a level for every step; a recording that leaves a choice waits in the list. Taking up can be undone.</source>
        <translation>Eine vollständige Aufzeichnung wird gelesen, sobald sie eintrifft. Sie wird zu einer Prüfung jedes Kanals, für den sie eine Spalte hat, wenn jeder davon für jede Stufe ein Plateau hat; eine Aufzeichnung, die eine Wahl lässt, wartet in der Liste. Das Übernehmen lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>A remark belongs to a check: choose one first.</source>
        <translation>Eine Anmerkung gehört zu einer Prüfung: zuerst eine wählen.</translation>
    </message>
    <message>
        <source>A report is not written as “%1”. Let the name end in .pdf, .xlsx, .html, .csv or .json.</source>
        <translation>Ein Bericht wird nicht als „%1“ geschrieben. Der Name muss auf .pdf, .xlsx, .html, .csv oder .json enden.</translation>
    </message>
    <message>
        <source>A resistor or the instrument is past its due date today</source>
        <translation>Ein Widerstand oder das Gerät ist heute überfällig</translation>
    </message>
    <message>
        <source>A row for each step: what it closes, what the instrument should show and how sure that is. Beside it stand the shunts, the uncertainties, the budget and the review of the plan.</source>
        <translation>Eine Zeile je Stufe: was sie schließt, was das Gerät zeigen soll und wie sicher das ist. Daneben stehen Shunts, Unsicherheiten, Budget und Durchsicht des Plans.</translation>
    </message>
    <message>
        <source>A sentence and the first step, where there is nothing to show yet.</source>
        <translation>Ein Satz und der erste Schritt, wo noch nichts zu zeigen ist.</translation>
    </message>
    <message>
        <source>A shunt check verifies the electrical chain, never gauge factor, bond or alignment. Decisions stay with the responsible licensed or authorised person.</source>
        <translation>Eine Shuntprüfung prüft die elektrische Kette, nie k-Faktor, Klebung oder Ausrichtung. Entscheidungen bleiben bei der verantwortlichen zugelassenen oder befugten Person.</translation>
    </message>
    <message>
        <source>A shunt has at most %1 jumpers.</source>
        <translation>Ein Shunt hat höchstens %1 Steckbrücken.</translation>
    </message>
    <message>
        <source>A span where a level is held at the cursor; Shift and drag draws one</source>
        <translation>Ein Abschnitt, wo am Cursor ein Plateau gehalten wird; Umschalt und Ziehen zeichnet einen</translation>
    </message>
    <message>
        <source>A template needs a name.</source>
        <translation>Eine Vorlage braucht einen Namen.</translation>
    </message>
    <message>
        <source>A value is needed</source>
        <translation>Ein Wert ist nötig</translation>
    </message>
    <message>
        <source>A what-if says nothing about the real article.</source>
        <translation>Ein „Was wäre, wenn“ sagt nichts über den wirklichen Prüfling.</translation>
    </message>
    <message>
        <source>A zero step has no trials: what it shares with the zero reading cancels.</source>
        <translation>Eine Nullstufe hat keine Versuche: Was sie mit dem Nullwert gemeinsam hat, hebt sich auf.</translation>
    </message>
    <message>
        <source>A&amp;lign to template</source>
        <translation>An &amp;Vorlage angleichen</translation>
    </message>
    <message>
        <source>Abort</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>About Shuntwright</source>
        <translation>Über Shuntwright</translation>
    </message>
    <message>
        <source>Above this the ohmmeter shows no reading</source>
        <translation>Oberhalb davon zeigt das Ohmmeter keinen Messwert</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Accept the record</source>
        <translation>Protokoll freigeben</translation>
    </message>
    <message>
        <source>Accept…</source>
        <translation>Freigeben…</translation>
    </message>
    <message>
        <source>Acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>Active area of a gauge&apos;s grid</source>
        <translation>Aktive Fläche eines Messgitters</translation>
    </message>
    <message>
        <source>Acts only there; its keys are fixed.</source>
        <translation>Wirkt nur dort; die Tasten sind fest.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message numerus="yes">
        <source>Add %Ln channel(s)</source>
        <translation>
            <numerusform>%Ln Kanal hinzufügen</numerusform>
            <numerusform>%Ln Kanäle hinzufügen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %Ln copies</source>
        <translation>
            <numerusform>%Ln Kopie hinzufügen</numerusform>
            <numerusform>%Ln Kopien hinzufügen</numerusform>
        </translation>
    </message>
    <message>
        <source>Add &amp;remark to the step…</source>
        <translation>Anmerkung zur Stufe &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Add &amp;step</source>
        <translation>&amp;Stufe anlegen</translation>
    </message>
    <message>
        <source>Add a channel first. Its readings can then be taken from a recording.</source>
        <translation>Zuerst einen Kanal anlegen. Danach lassen sich seine Messwerte aus einer Aufzeichnung übernehmen.</translation>
    </message>
    <message>
        <source>Add a decade box</source>
        <translation>Eine Widerstandsdekade hinzufügen</translation>
    </message>
    <message>
        <source>Add a jumper for this shunt</source>
        <translation>Eine Steckbrücke für diesen Shunt anlegen</translation>
    </message>
    <message>
        <source>Add a pin below the chosen one</source>
        <translation>Einen Stift unter dem gewählten anlegen</translation>
    </message>
    <message>
        <source>Add a range of a series of preferred values</source>
        <translation>Einen Bereich einer Normwertreihe hinzufügen</translation>
    </message>
    <message>
        <source>Add a resistor across arm 2</source>
        <translation>Einen Widerstand über Zweig 2 anlegen</translation>
    </message>
    <message>
        <source>Add a resistor like the chosen one, with the next id; a pasted list adds its own rows</source>
        <translation>Einen Widerstand wie den gewählten mit der nächsten Kennung anlegen; eine eingefügte Liste legt ihre Zeilen selbst an</translation>
    </message>
    <message>
        <source>Add a step below the chosen one</source>
        <translation>Eine Stufe unter der gewählten anlegen</translation>
    </message>
    <message>
        <source>Add balance network</source>
        <translation>Abgleichnetzwerk anlegen</translation>
    </message>
    <message>
        <source>Add box</source>
        <translation>Dekade anlegen</translation>
    </message>
    <message>
        <source>Add channel</source>
        <translation>Kanal anlegen</translation>
    </message>
    <message>
        <source>Add channels from the list %1</source>
        <translation>Kanäle aus der Liste %1 hinzufügen</translation>
    </message>
    <message>
        <source>Add check</source>
        <translation>Prüfung anlegen</translation>
    </message>
    <message>
        <source>Add decade box</source>
        <translation>Widerstandsdekade anlegen</translation>
    </message>
    <message>
        <source>Add input resistance</source>
        <translation>Eingangswiderstand anlegen</translation>
    </message>
    <message>
        <source>Add jumper</source>
        <translation>Steckbrücke anlegen</translation>
    </message>
    <message>
        <source>Add leak</source>
        <translation>Nebenschluss anlegen</translation>
    </message>
    <message>
        <source>Add pin</source>
        <translation>Stift anlegen</translation>
    </message>
    <message>
        <source>Add preferred values</source>
        <translation>Normwerte hinzufügen</translation>
    </message>
    <message>
        <source>Add range</source>
        <translation>Bereich anlegen</translation>
    </message>
    <message>
        <source>Add remark</source>
        <translation>Anmerkung hinzufügen</translation>
    </message>
    <message>
        <source>Add resistor</source>
        <translation>Widerstand anlegen</translation>
    </message>
    <message>
        <source>Add rows first, or choose a cell further up</source>
        <translation>Zuerst Zeilen hinzufügen oder eine Zelle weiter oben wählen</translation>
    </message>
    <message>
        <source>Add s&amp;hunt</source>
        <translation>S&amp;hunt anlegen</translation>
    </message>
    <message>
        <source>Add sense leads</source>
        <translation>Fühlerleitungen anlegen</translation>
    </message>
    <message>
        <source>Add shunt</source>
        <translation>Shunt anlegen</translation>
    </message>
    <message>
        <source>Add span</source>
        <translation>Abschnitt anlegen</translation>
    </message>
    <message>
        <source>Add span for step %1</source>
        <translation>Abschnitt für Stufe %1 anlegen</translation>
    </message>
    <message>
        <source>Add step</source>
        <translation>Stufe anlegen</translation>
    </message>
    <message>
        <source>Add to the chosen step…</source>
        <translation>Zur gewählten Stufe hinzufügen…</translation>
    </message>
    <message>
        <source>Added %1, in no step yet.</source>
        <translation>%1 angelegt, noch in keiner Stufe.</translation>
    </message>
    <message>
        <source>Added %1.</source>
        <translation>%1 angelegt.</translation>
    </message>
    <message numerus="yes">
        <source>Added %Ln channel(s), %1 to %2.</source>
        <translation>
            <numerusform>%Ln Kanal hinzugefügt, %1 bis %2.</numerusform>
            <numerusform>%Ln Kanäle hinzugefügt, %1 bis %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Added %Ln channel(s).</source>
        <translation>
            <numerusform>%Ln Kanal hinzugefügt.</numerusform>
            <numerusform>%Ln Kanäle hinzugefügt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Adds a fault or a change that is tried out</source>
        <translation>Fügt einen Fehler oder eine Änderung zum Ausprobieren hinzu</translation>
    </message>
    <message>
        <source>Add…</source>
        <translation>Hinzufügen…</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Align to template</source>
        <translation>An Vorlage angleichen</translation>
    </message>
    <message numerus="yes">
        <source>All %Ln row(s) are shown.</source>
        <translation>
            <numerusform>Die eine Zeile wird gezeigt.</numerusform>
            <numerusform>Alle %Ln Zeilen werden gezeigt.</numerusform>
        </translation>
    </message>
    <message>
        <source>All Files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>All changes of the chosen entry</source>
        <translation>Alle Änderungen des gewählten Eintrags</translation>
    </message>
    <message>
        <source>All channels</source>
        <translation>Alle Kanäle</translation>
    </message>
    <message>
        <source>All channels of this recording</source>
        <translation>Alle Kanäle dieser Aufzeichnung</translation>
    </message>
    <message>
        <source>All checks over time</source>
        <translation>Alle Prüfungen über der Zeit</translation>
    </message>
    <message>
        <source>All checks over time as a table</source>
        <translation>Alle Prüfungen über der Zeit als Tabelle</translation>
    </message>
    <message>
        <source>All commands have their usual keys again.</source>
        <translation>Alle Befehle haben wieder ihre üblichen Tasten.</translation>
    </message>
    <message>
        <source>All figures in words</source>
        <translation>Alle Kennwerte in Worten</translation>
    </message>
    <message>
        <source>All gauges feel the opposite of what the template says</source>
        <translation>Alle DMS erfahren das Gegenteil dessen, was die Vorlage sagt</translation>
    </message>
    <message>
        <source>All is seen to.</source>
        <translation>Alles ist erledigt.</translation>
    </message>
    <message>
        <source>All keys as &amp;usual</source>
        <translation>Alle Tasten wie ü&amp;blich</translation>
    </message>
    <message>
        <source>All pairs of points as a matrix</source>
        <translation>Alle Punktepaare als Matrix</translation>
    </message>
    <message>
        <source>All pairs of points on the bridge</source>
        <translation>Alle Punktepaare an der Brücke</translation>
    </message>
    <message>
        <source>All shown</source>
        <translation>Alle gezeigt</translation>
    </message>
    <message>
        <source>All shunts are open at this step.</source>
        <translation>Bei dieser Stufe sind alle Shunts offen.</translation>
    </message>
    <message>
        <source>All shunts open.</source>
        <translation>Alle Shunts offen.</translation>
    </message>
    <message>
        <source>All steps are read.</source>
        <translation>Alle Stufen sind abgelesen.</translation>
    </message>
    <message>
        <source>All steps are within limits all the same.</source>
        <translation>Trotzdem liegen alle Stufen innerhalb der Grenzwerte.</translation>
    </message>
    <message>
        <source>All steps together: readings so far apart would have a probability of %1 if nothing but the zero had changed.</source>
        <translation>Alle Stufen zusammen: So weit auseinanderliegende Messwerte hätten eine Wahrscheinlichkeit von %1, wenn sich nur der Nullpunkt geändert hätte.</translation>
    </message>
    <message>
        <source>All text of the window, against the size that the desktop has chosen. Drawings fill their room and have a zoom of their own.</source>
        <translation>Aller Text des Fensters, gegen die Größe, die die Arbeitsumgebung gewählt hat. Zeichnungen füllen ihren Platz und haben ein eigenes Zoom.</translation>
    </message>
    <message>
        <source>Alt+0</source>
        <translation>Alt+0</translation>
    </message>
    <message>
        <source>Alt+1</source>
        <translation>Alt+1</translation>
    </message>
    <message>
        <source>Alt+2</source>
        <translation>Alt+2</translation>
    </message>
    <message>
        <source>Alt+3</source>
        <translation>Alt+3</translation>
    </message>
    <message>
        <source>Alt+4</source>
        <translation>Alt+4</translation>
    </message>
    <message>
        <source>Alt+5</source>
        <translation>Alt+5</translation>
    </message>
    <message>
        <source>Alt+6</source>
        <translation>Alt+6</translation>
    </message>
    <message>
        <source>Alt+7</source>
        <translation>Alt+7</translation>
    </message>
    <message>
        <source>Alt+8</source>
        <translation>Alt+8</translation>
    </message>
    <message>
        <source>Alt+9</source>
        <translation>Alt+9</translation>
    </message>
    <message>
        <source>Alt+R</source>
        <translation>Alt+R</translation>
    </message>
    <message>
        <source>An arm cannot be removed: a bridge has four. Choose another bridge in the set-up.</source>
        <translation>Ein Zweig lässt sich nicht entfernen: Eine Brücke hat vier. In der Einrichtung eine andere Brücke wählen.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more doubt(s).</source>
        <translation>
            <numerusform>Und %n weiterer Zweifel.</numerusform>
            <numerusform>Und %n weitere Zweifel.</numerusform>
        </translation>
    </message>
    <message>
        <source>Another check…</source>
        <translation>Andere Prüfung…</translation>
    </message>
    <message>
        <source>Another program changed %1 since it was opened here.</source>
        <translation>Ein anderes Programm hat %1 geändert, seit es hier geöffnet wurde.</translation>
    </message>
    <message>
        <source>Another program changed %1 since it was opened or saved here. Saving replaces what was written there.</source>
        <translation>Ein anderes Programm hat %1 geändert, seit es hier geöffnet oder gespeichert wurde. Speichern ersetzt, was dort geschrieben wurde.</translation>
    </message>
    <message>
        <source>Another program changed %1, and this window has unsaved changes too.</source>
        <translation>Ein anderes Programm hat %1 geändert, und auch dieses Fenster hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>Answers to repeated questions do not count for the score.</source>
        <translation>Antworten auf wiederholte Aufgaben zählen nicht.</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>Apply %1 to %2</source>
        <translation>%1 auf %2 anwenden</translation>
    </message>
    <message>
        <source>Apply to channels</source>
        <translation>Auf Kanäle anwenden</translation>
    </message>
    <message>
        <source>Arm %1</source>
        <translation>Zweig %1</translation>
    </message>
    <message>
        <source>Arm %1 turns %2 mW into heat. With the active area of its grid this is compared with the usual power densities.</source>
        <translation>Zweig %1 setzt %2 mW in Wärme um. Mit der aktiven Fläche seines Gitters wird das mit den üblichen Leistungsdichten verglichen.</translation>
    </message>
    <message>
        <source>Arm %1, %2</source>
        <translation>Zweig %1, %2</translation>
    </message>
    <message>
        <source>Arm %1: %2, at the article</source>
        <translation>Zweig %1: %2, am Prüfling</translation>
    </message>
    <message>
        <source>Arm %1: %2, completion resistor in the instrument</source>
        <translation>Zweig %1: %2, Ergänzungswiderstand im Gerät</translation>
    </message>
    <message>
        <source>Arms as installed, without load</source>
        <translation>Zweige wie eingebaut, unbelastet</translation>
    </message>
    <message>
        <source>Arms at the old nominal value follow, others stay.</source>
        <translation>Zweige mit dem alten Nennwert folgen, andere bleiben.</translation>
    </message>
    <message>
        <source>Arrow keys move the leak from arm to arm, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten versetzen den Nebenschluss von Zweig zu Zweig, Eingabe behält ihn dort, Esc nimmt ihn zurück.</translation>
    </message>
    <message>
        <source>Arrow keys move the wiper, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten bewegen den Schleifer, Eingabe behält ihn dort, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys move this end from point to point, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten versetzen dieses Ende von Punkt zu Punkt, Eingabe behält es dort, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys take this lead&apos;s end to another lead&apos;s terminal, Enter exchanges the two, Escape takes it back.</source>
        <translation>Pfeiltasten führen das Ende dieser Leitung zum Anschluss einer anderen, Eingabe tauscht die beiden, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys take this resistor to another arm, Enter exchanges the two, Escape takes it back.</source>
        <translation>Pfeiltasten führen diesen Widerstand zu einem anderen Zweig, Eingabe tauscht die beiden, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Article under test</source>
        <translation>Prüfling</translation>
    </message>
    <message>
        <source>As for the last recording: %1.</source>
        <translation>Wie bei der letzten Aufzeichnung: %1.</translation>
    </message>
    <message>
        <source>As given here</source>
        <translation>Wie hier angegeben</translation>
    </message>
    <message>
        <source>As guessed instead</source>
        <translation>Stattdessen wie erkannt</translation>
    </message>
    <message>
        <source>As little as can be</source>
        <translation>So wenig wie möglich</translation>
    </message>
    <message>
        <source>As on the sheet: what is worth measuring in this state; only terminals: each two of them; all points: also ends of arms and of resistors</source>
        <translation>Wie auf dem Blatt: was in diesem Zustand messenswert ist; nur Anschlüsse: je zwei davon; alle Punkte: auch Enden von Zweigen und Widerständen</translation>
    </message>
    <message>
        <source>As text the report is written as HTML, CSV or JSON</source>
        <translation>Als Text wird der Bericht als HTML, CSV oder JSON geschrieben</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Wie die Arbeits&amp;umgebung</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie die Arbeitsumgebung</translation>
    </message>
    <message>
        <source>As the filter and sample rate ask</source>
        <translation>Wie Filter und Abtastrate es verlangen</translation>
    </message>
    <message>
        <source>As year-month-day; empty takes it away.</source>
        <translation>Als Jahr-Monat-Tag; leer entfernt es.</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gestellt</translation>
    </message>
    <message>
        <source>Assume again</source>
        <translation>Wieder annehmen</translation>
    </message>
    <message>
        <source>Assume uncertainty again</source>
        <translation>Unsicherheit wieder annehmen</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Bei %1</translation>
    </message>
    <message>
        <source>At %1 the gauge factor is %2.</source>
        <translation>Bei %1 ist der k-Faktor %2.</translation>
    </message>
    <message>
        <source>At %1.</source>
        <translation>Bei %1.</translation>
    </message>
    <message>
        <source>At the article</source>
        <translation>Am Prüfling</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation>Am Ende</translation>
    </message>
    <message>
        <source>At the front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Am Anfang</translation>
    </message>
    <message>
        <source>At work: drawing all inputs and solving the network for each step.</source>
        <translation>In Arbeit: Alle Eingangsgrößen werden gezogen, und das Netzwerk wird für jede Stufe gelöst.</translation>
    </message>
    <message>
        <source>B&amp;ack</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>B&amp;ack to the steps</source>
        <translation>&amp;Zurück zu den Stufen</translation>
    </message>
    <message>
        <source>B, E</source>
        <translation>B, E</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Back to the views</source>
        <translation>Zurück zu den Ansichten</translation>
    </message>
    <message>
        <source>Balance network</source>
        <translation>Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>Balance network, parallel</source>
        <translation>Abgleichnetzwerk, parallel</translation>
    </message>
    <message>
        <source>Balance network, series</source>
        <translation>Abgleich, in Reihe</translation>
    </message>
    <message>
        <source>Balance: %1 between arms 3 and 4, wiper to S+, %2 % of it in arm 3.</source>
        <translation>Abgleich: %1 zwischen den Zweigen 3 und 4, Schleifer an S+, %2 % davon in Zweig 3.</translation>
    </message>
    <message>
        <source>Balance: %1 over the excitation, wiper at %2 % from P- through %3 to S+.</source>
        <translation>Abgleich: %1 über der Speisung, Schleifer bei %2 % ab P- über %3 an S+.</translation>
    </message>
    <message>
        <source>Be led through the check step by step, in large type</source>
        <translation>Schritt für Schritt durch die Prüfung geführt werden, in großer Schrift</translation>
    </message>
    <message>
        <source>Because:</source>
        <translation>Begründung:</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Before going on</source>
        <translation>Bevor es weitergeht</translation>
    </message>
    <message>
        <source>Before the first step</source>
        <translation>Vor der ersten Stufe</translation>
    </message>
    <message>
        <source>Beg&amp;in</source>
        <translation>Be&amp;ginnen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Begin at the cursor</source>
        <translation>Am Cursor beginnen</translation>
    </message>
    <message>
        <source>Begin with two numbers of one unit, or with two names that end in numbers</source>
        <translation>Mit zwei Zahlen einer Einheit beginnen oder mit zwei Namen, die auf Zahlen enden</translation>
    </message>
    <message>
        <source>Begins, s</source>
        <translation>Beginn, s</translation>
    </message>
    <message>
        <source>Behind
(AIC)</source>
        <translation>Rückstand
(AIC)</translation>
    </message>
    <message>
        <source>Behind
(BIC)</source>
        <translation>Rückstand
(BIC)</translation>
    </message>
    <message>
        <source>Being compared …</source>
        <translation>Wird verglichen …</translation>
    </message>
    <message>
        <source>Being worked out again. Before the edit: %1</source>
        <translation>Wird neu gerechnet. Vor der Änderung: %1</translation>
    </message>
    <message>
        <source>Bessel low-pass</source>
        <translation>Bessel-Tiefpass</translation>
    </message>
    <message>
        <source>Best sets of resistors</source>
        <translation>Beste Widerstandssätze</translation>
    </message>
    <message>
        <source>Between cells</source>
        <translation>Zwischen Zellen</translation>
    </message>
    <message>
        <source>Between two checks; to be fixed before the test.</source>
        <translation>Zwischen zwei Prüfungen; vor dem Versuch festzulegen.</translation>
    </message>
    <message>
        <source>Border between %1 and %2</source>
        <translation>Grenze zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Both checks</source>
        <translation>Beide Prüfungen</translation>
    </message>
    <message>
        <source>Bridge</source>
        <translation>Brücke</translation>
    </message>
    <message>
        <source>Bridge factor set</source>
        <translation>Brückenfaktor</translation>
    </message>
    <message>
        <source>Bridge of the question</source>
        <translation>Brücke der Aufgabe</translation>
    </message>
    <message>
        <source>Bridge template</source>
        <translation>Brückenvorlage</translation>
    </message>
    <message>
        <source>Bridge with its shunts</source>
        <translation>Brücke mit ihren Shunts</translation>
    </message>
    <message>
        <source>Bridge, Outcome and Sequence again (Alt+0)</source>
        <translation>Wieder Brücke, Ergebnis und Ablauf (Alt+0)</translation>
    </message>
    <message>
        <source>Bridge, leads, instrument, limits and decision rule of the chosen channel. Everything is worked out anew as soon as a field is left. Fields take 174.65k, 59k9 or 1.5 mV/V.</source>
        <translation>Brücke, Leitungen, Gerät, Grenzwerte und Entscheidungsregel des gewählten Kanals. Alles wird neu berechnet, sobald ein Feld verlassen wird. Felder nehmen 174.65k, 59k9 oder 1,5 mV/V.</translation>
    </message>
    <message>
        <source>Bridge, nominal</source>
        <translation>Brücke, Nennwert</translation>
    </message>
    <message>
        <source>Bridge, polarity map, sequence, outcome</source>
        <translation>Brücke, Polaritätskarte, Ablauf, Ergebnis</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Budget of the step</source>
        <translation>Budget der Stufe</translation>
    </message>
    <message>
        <source>Budget, %1</source>
        <translation>Budget, %1</translation>
    </message>
    <message>
        <source>Butterworth low-pass</source>
        <translation>Butterworth-Tiefpass</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>By &amp;width</source>
        <translation>Nach &amp;Breite</translation>
    </message>
    <message>
        <source>By how much the gain changed since the check before</source>
        <translation>Um wie viel sich die Verstärkung seit der Prüfung davor geändert hat</translation>
    </message>
    <message>
        <source>By moving &amp;dots</source>
        <translation>Durch wandernde &amp;Punkte</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>C&amp;lear</source>
        <translation>&amp;Leeren</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>Zellen &amp;leeren</translation>
    </message>
    <message>
        <source>C&amp;lear it</source>
        <translation>&amp;Leeren</translation>
    </message>
    <message>
        <source>C&amp;urrents</source>
        <translation>S&amp;tröme</translation>
    </message>
    <message>
        <source>C&amp;ut</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Ca&amp;ncel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cancelled before anything was found.</source>
        <translation>Abgebrochen, bevor etwas gefunden war.</translation>
    </message>
    <message>
        <source>Cancelled.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>Cancelled: nothing was kept of the run.</source>
        <translation>Abgebrochen: Vom Durchgang wurde nichts behalten.</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Abgebrochen: Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Cancelled: the best found so far, %1; a better set may exist.</source>
        <translation>Abgebrochen: das bisher Beste, %1; es kann einen besseren Satz geben.</translation>
    </message>
    <message>
        <source>Cannot be predicted. %1</source>
        <translation>Nicht vorherzusagen. %1</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht entscheidbar</translation>
    </message>
    <message>
        <source>Cannot tell: %1 against a margin of ± %2; how far it may be wrong is not known.</source>
        <translation>Nicht entscheidbar: %1 gegen eine Toleranz von ± %2; wie falsch es sein kann, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Cannot tell: %2 ± %3 %4 (95 %) is too uncertain for the margin of ± %1.</source>
        <translation>Nicht entscheidbar: %2 ± %3 %4 (95 %) ist für die Toleranz von ± %1 zu unsicher.</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>Cause and its size</source>
        <translation>Ursache und ihre Größe</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>Certificate of the instrument</source>
        <translation>Kalibrierschein des Geräts</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Change
[%1]</source>
        <translation>Änderung
[%1]</translation>
    </message>
    <message>
        <source>Change
[%]</source>
        <translation>Änderung
[%]</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Änderung %1</translation>
    </message>
    <message>
        <source>Change Poisson&apos;s ratio</source>
        <translation>Querdehnzahl ändern</translation>
    </message>
    <message>
        <source>Change arm</source>
        <translation>Zweig ändern</translation>
    </message>
    <message>
        <source>Change balance network</source>
        <translation>Abgleichnetzwerk ändern</translation>
    </message>
    <message>
        <source>Change between checks</source>
        <translation>Zwischen zwei Prüfungen</translation>
    </message>
    <message>
        <source>Change between two checks</source>
        <translation>Änderung zwischen zwei Prüfungen</translation>
    </message>
    <message>
        <source>Change bridge factor set</source>
        <translation>Eingestellten Brückenfaktor ändern</translation>
    </message>
    <message>
        <source>Change bridge template</source>
        <translation>Brückenvorlage ändern</translation>
    </message>
    <message>
        <source>Change capacity</source>
        <translation>Nennlast ändern</translation>
    </message>
    <message>
        <source>Change check details</source>
        <translation>Angaben zur Prüfung ändern</translation>
    </message>
    <message>
        <source>Change closed shunts</source>
        <translation>Geschlossene Shunts ändern</translation>
    </message>
    <message>
        <source>Change connection</source>
        <translation>Anschlussart ändern</translation>
    </message>
    <message>
        <source>Change connection of structure</source>
        <translation>Anschluss der Struktur ändern</translation>
    </message>
    <message>
        <source>Change correlation</source>
        <translation>Korrelation ändern</translation>
    </message>
    <message>
        <source>Change decade box</source>
        <translation>Widerstandsdekade ändern</translation>
    </message>
    <message>
        <source>Change decision rule</source>
        <translation>Entscheidungsregel ändern</translation>
    </message>
    <message>
        <source>Change document details</source>
        <translation>Angaben zum Dokument ändern</translation>
    </message>
    <message>
        <source>Change due date of shunt</source>
        <translation>Fälligkeit des Shunts ändern</translation>
    </message>
    <message>
        <source>Change excitation</source>
        <translation>Speisung ändern</translation>
    </message>
    <message>
        <source>Change filter</source>
        <translation>Filter ändern</translation>
    </message>
    <message>
        <source>Change gauge factor</source>
        <translation>k-Faktor ändern</translation>
    </message>
    <message>
        <source>Change gauge factor set</source>
        <translation>Eingestellten k-Faktor ändern</translation>
    </message>
    <message>
        <source>Change gauge factor&apos;s coefficient</source>
        <translation>Temperaturkoeffizient des k-Faktors ändern</translation>
    </message>
    <message>
        <source>Change gauge factor&apos;s temperature</source>
        <translation>Bezugstemperatur des k-Faktors ändern</translation>
    </message>
    <message>
        <source>Change gauge resistance</source>
        <translation>DMS-Widerstand ändern</translation>
    </message>
    <message>
        <source>Change gauge temperature</source>
        <translation>DMS-Temperatur ändern</translation>
    </message>
    <message>
        <source>Change grid area</source>
        <translation>Gitterfläche ändern</translation>
    </message>
    <message>
        <source>Change group</source>
        <translation>Gruppe ändern</translation>
    </message>
    <message>
        <source>Change heat sink</source>
        <translation>Wärmeableitung ändern</translation>
    </message>
    <message>
        <source>Change hold</source>
        <translation>Haltezeit ändern</translation>
    </message>
    <message>
        <source>Change input resistance</source>
        <translation>Eingangswiderstand ändern</translation>
    </message>
    <message>
        <source>Change lead</source>
        <translation>Leitung ändern</translation>
    </message>
    <message>
        <source>Change lead temperature</source>
        <translation>Leitungstemperatur ändern</translation>
    </message>
    <message>
        <source>Change leak</source>
        <translation>Nebenschluss ändern</translation>
    </message>
    <message>
        <source>Change limit</source>
        <translation>Grenzwert ändern</translation>
    </message>
    <message>
        <source>Change linearisation</source>
        <translation>Linearisierung ändern</translation>
    </message>
    <message>
        <source>Change mains</source>
        <translation>Netzfrequenz ändern</translation>
    </message>
    <message>
        <source>Change measurement</source>
        <translation>Messung ändern</translation>
    </message>
    <message>
        <source>Change name</source>
        <translation>Namen ändern</translation>
    </message>
    <message>
        <source>Change nominal resistance</source>
        <translation>Nennwiderstand ändern</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>Notiz ändern</translation>
    </message>
    <message>
        <source>Change nothing: all stays as it is</source>
        <translation>Nichts ändern: Alles bleibt, wie es ist</translation>
    </message>
    <message>
        <source>Change of each step</source>
        <translation>Änderung jeder Stufe</translation>
    </message>
    <message>
        <source>Change of each step as a table</source>
        <translation>Änderung jeder Stufe als Tabelle</translation>
    </message>
    <message>
        <source>Change of each step, %1</source>
        <translation>Änderung jeder Stufe, %1</translation>
    </message>
    <message>
        <source>Change of zero, of greatest</source>
        <translation>Nulländerung, vom größten</translation>
    </message>
    <message>
        <source>Change over its expanded uncertainty; beyond 1 either way it is more than uncertainty explains</source>
        <translation>Änderung durch ihre erweiterte Unsicherheit; jenseits von 1 in einer der Richtungen ist es mehr, als die Unsicherheit erklärt</translation>
    </message>
    <message>
        <source>Change place of leak</source>
        <translation>Ort des Nebenschlusses ändern</translation>
    </message>
    <message>
        <source>Change preferred values</source>
        <translation>Normwerte ändern</translation>
    </message>
    <message>
        <source>Change range</source>
        <translation>Bereich ändern</translation>
    </message>
    <message>
        <source>Change rated output</source>
        <translation>Nennkennwert ändern</translation>
    </message>
    <message>
        <source>Change ratiometric</source>
        <translation>Ratiometrisch ändern</translation>
    </message>
    <message>
        <source>Change reading unit</source>
        <translation>Anzeigeeinheit ändern</translation>
    </message>
    <message>
        <source>Change reference line</source>
        <translation>Bezugsgerade ändern</translation>
    </message>
    <message>
        <source>Change resistor of the stock</source>
        <translation>Widerstand des Bestands ändern</translation>
    </message>
    <message>
        <source>Change sample rate</source>
        <translation>Abtastrate ändern</translation>
    </message>
    <message>
        <source>Change scale</source>
        <translation>Skalierung ändern</translation>
    </message>
    <message>
        <source>Change scaled unit</source>
        <translation>Skalierte Einheit ändern</translation>
    </message>
    <message>
        <source>Change settling</source>
        <translation>Einschwingzeit ändern</translation>
    </message>
    <message>
        <source>Change shunt</source>
        <translation>Shunt ändern</translation>
    </message>
    <message>
        <source>Change shunt wires</source>
        <translation>Shuntleitungen ändern</translation>
    </message>
    <message>
        <source>Change switch of shunt</source>
        <translation>Schalter des Shunts ändern</translation>
    </message>
    <message>
        <source>Change uncertainty</source>
        <translation>Unsicherheit ändern</translation>
    </message>
    <message>
        <source>Change what a pin leads to</source>
        <translation>Ziel eines Stifts ändern</translation>
    </message>
    <message>
        <source>Change which instrument it is</source>
        <translation>Angaben zum Gerät ändern</translation>
    </message>
    <message>
        <source>Change, %1</source>
        <translation>Änderung, %1</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message numerus="yes">
        <source>Changed %Ln channel(s).</source>
        <translation>
            <numerusform>%Ln Kanal geändert.</numerusform>
            <numerusform>%Ln Kanäle geändert.</numerusform>
        </translation>
    </message>
    <message>
        <source>Changed below.</source>
        <translation>Unten geändert.</translation>
    </message>
    <message>
        <source>Changed by %2 ± %3 %4 (95 %), not within the margin of ± %1.</source>
        <translation>Geändert um %2 ± %3 %4 (95 %), nicht innerhalb der Toleranz von ± %1.</translation>
    </message>
    <message>
        <source>Changed by you: %1.</source>
        <translation>Von Hand geändert: %1.</translation>
    </message>
    <message>
        <source>Changed by you; back to what is guessed from the file</source>
        <translation>Von Hand geändert; zurück zu dem, was aus der Datei erkannt wurde</translation>
    </message>
    <message>
        <source>Changed on the disk</source>
        <translation>Auf der Platte geändert</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Channel %1, %2</source>
        <translation>Kanal %1, %2</translation>
    </message>
    <message>
        <source>Channel %1, from %2 to %3</source>
        <translation>Kanal %1, von %2 bis %3</translation>
    </message>
    <message>
        <source>Channel set-up</source>
        <translation>Einrichtung des Kanals</translation>
    </message>
    <message>
        <source>Channel that each row is a copy of</source>
        <translation>Kanal, dessen Kopie jede Zeile ist</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>Channels and their columns</source>
        <translation>Kanäle und ihre Spalten</translation>
    </message>
    <message>
        <source>Channels from a list kept in a spreadsheet</source>
        <translation>Kanäle aus einer Liste einer Tabellenkalkulation</translation>
    </message>
    <message>
        <source>Channels of the report</source>
        <translation>Kanäle des Berichts</translation>
    </message>
    <message>
        <source>Channels to review</source>
        <translation>Kanäle zur Durchsicht</translation>
    </message>
    <message>
        <source>Channels with a column: %1, ticked: %2.</source>
        <translation>Kanäle mit Spalte: %1, angehakt: %2.</translation>
    </message>
    <message>
        <source>Channels, to be imported again (*.csv)</source>
        <translation>Kanäle, wieder einlesbar (*.csv)</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Charts of the outcome</source>
        <translation>Diagramme des Ergebnisses</translation>
    </message>
    <message>
        <source>Chec&amp;k</source>
        <translation>&amp;Prüfung</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Check of the wiring</source>
        <translation>Prüfung der Verdrahtung</translation>
    </message>
    <message>
        <source>Check of the wiring: %1</source>
        <translation>Prüfung der Verdrahtung: %1</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Checks are called</source>
        <translation>Prüfungen heißen</translation>
    </message>
    <message>
        <source>Choices</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <source>Choose &amp;file…</source>
        <translation>&amp;Datei wählen…</translation>
    </message>
    <message>
        <source>Choose &amp;resistors…</source>
        <translation>&amp;Widerstände wählen…</translation>
    </message>
    <message>
        <source>Choose a cell further left</source>
        <translation>Eine Zelle weiter links wählen</translation>
    </message>
    <message>
        <source>Choose a recording first.</source>
        <translation>Zuerst eine Aufzeichnung wählen.</translation>
    </message>
    <message>
        <source>Choose a recording: how it is read is guessed from the file and said here.</source>
        <translation>Eine Aufzeichnung wählen: Wie sie gelesen wird, wird aus der Datei erkannt und hier gesagt.</translation>
    </message>
    <message>
        <source>Choose a step, above or in the sequence.</source>
        <translation>Eine Stufe wählen, oben oder im Ablauf.</translation>
    </message>
    <message>
        <source>Choose all cells</source>
        <translation>Alle Zellen wählen</translation>
    </message>
    <message>
        <source>Choose all text</source>
        <translation>Allen Text wählen</translation>
    </message>
    <message>
        <source>Choose an answer</source>
        <translation>Eine Antwort wählen</translation>
    </message>
    <message>
        <source>Choose an answer first: keys 1 to %1.</source>
        <translation>Zuerst eine Antwort wählen: Tasten 1 bis %1.</translation>
    </message>
    <message>
        <source>Choose an entry to see all its changes.</source>
        <translation>Einen Eintrag wählen, um alle seine Änderungen zu sehen.</translation>
    </message>
    <message>
        <source>Choose at least one kind of question.</source>
        <translation>Mindestens eine Aufgabenart wählen.</translation>
    </message>
    <message>
        <source>Choose at least one part.</source>
        <translation>Mindestens einen Teil wählen.</translation>
    </message>
    <message>
        <source>Choose channels.</source>
        <translation>Kanäle wählen.</translation>
    </message>
    <message>
        <source>Choose one part more, or one less</source>
        <translation>Einen Teil mehr oder weniger wählen</translation>
    </message>
    <message>
        <source>Choose part of shunt</source>
        <translation>Widerstand des Shunts wählen</translation>
    </message>
    <message>
        <source>Choose resistors</source>
        <translation>Widerstände wählen</translation>
    </message>
    <message>
        <source>Choose resistors…</source>
        <translation>Widerstände wählen…</translation>
    </message>
    <message>
        <source>Choose rows whose uncertainty is stated.</source>
        <translation>Zeilen wählen, deren Unsicherheit angegeben ist.</translation>
    </message>
    <message>
        <source>Choose the cell for the upper left corner</source>
        <translation>Die Zelle für die linke obere Ecke wählen</translation>
    </message>
    <message>
        <source>Choose the column of this channel in the table above.</source>
        <translation>Die Spalte dieses Kanals in der Tabelle oben wählen.</translation>
    </message>
    <message>
        <source>Choose the first of the two spans to join.</source>
        <translation>Den ersten der beiden zu verbindenden Abschnitte wählen.</translation>
    </message>
    <message>
        <source>Choose the jumper to remove.</source>
        <translation>Die zu entfernende Steckbrücke wählen.</translation>
    </message>
    <message>
        <source>Choose the pin to move.</source>
        <translation>Den zu verschiebenden Stift wählen.</translation>
    </message>
    <message>
        <source>Choose the pin to remove.</source>
        <translation>Den zu entfernenden Stift wählen.</translation>
    </message>
    <message>
        <source>Choose the row to remove.</source>
        <translation>Die zu entfernende Zeile wählen.</translation>
    </message>
    <message>
        <source>Choose the shunt to remove.</source>
        <translation>Den zu entfernenden Shunt wählen.</translation>
    </message>
    <message>
        <source>Choose the step first.</source>
        <translation>Zuerst die Stufe wählen.</translation>
    </message>
    <message>
        <source>Choose the step that closes the shunt</source>
        <translation>Die Stufe wählen, die den Shunt schließt</translation>
    </message>
    <message>
        <source>Choose the step that the chosen span is the reading of</source>
        <translation>Die Stufe wählen, deren Messwert der gewählte Abschnitt ist</translation>
    </message>
    <message>
        <source>Choose the step to remove.</source>
        <translation>Die zu entfernende Stufe wählen.</translation>
    </message>
    <message>
        <source>Chosen from</source>
        <translation>Gewählt aus</translation>
    </message>
    <message>
        <source>Chosen step</source>
        <translation>Gewählte Stufe</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Gewählt: %1.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Clear cells</source>
        <translation>Zellen leeren</translation>
    </message>
    <message>
        <source>Clear ohmmeter readings</source>
        <translation>Ohmmeterwerte leeren</translation>
    </message>
    <message>
        <source>Clear readings</source>
        <translation>Messwerte leeren</translation>
    </message>
    <message>
        <source>Clear the chosen cells</source>
        <translation>Gewählte Zellen leeren</translation>
    </message>
    <message>
        <source>Clear the list</source>
        <translation>Liste leeren</translation>
    </message>
    <message>
        <source>Clear the score</source>
        <translation>Punktestand löschen</translation>
    </message>
    <message>
        <source>Clear the score…</source>
        <translation>Punktestand löschen…</translation>
    </message>
    <message>
        <source>Click a mark or a row, or walk the steps with ← and →, to read what is said of it.</source>
        <translation>Eine Marke oder Zeile anklicken oder mit ← und → durch die Stufen gehen, um das Gesagte zu lesen.</translation>
    </message>
    <message>
        <source>Click, Shift ← →</source>
        <translation>Klick, Umschalt ← →</translation>
    </message>
    <message>
        <source>Click, double click</source>
        <translation>Klick, Doppelklick</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>%1 schließen</translation>
    </message>
    <message>
        <source>Close (Escape)</source>
        <translation>Schließen (Escape)</translation>
    </message>
    <message>
        <source>Close a check</source>
        <translation>Eine Prüfung abschließen</translation>
    </message>
    <message>
        <source>Close check</source>
        <translation>Prüfung abschließen</translation>
    </message>
    <message>
        <source>Close checks</source>
        <translation>Prüfungen abschließen</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <source>Close this group</source>
        <translation>Diese Gruppe zuklappen</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Closed at this step, and nothing else: %1.</source>
        <translation>Bei dieser Stufe geschlossen, und sonst nichts: %1.</translation>
    </message>
    <message>
        <source>Closed check, not to be changed.</source>
        <translation>Abgeschlossene Prüfung, nicht zu ändern.</translation>
    </message>
    <message>
        <source>Closed: %1</source>
        <translation>Geschlossen: %1</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Column of the recording</source>
        <translation>Spalte der Aufzeichnung</translation>
    </message>
    <message>
        <source>Columns left out: %1.</source>
        <translation>Ausgelassene Spalten: %1.</translation>
    </message>
    <message>
        <source>Combined error</source>
        <translation>Zusammengesetzter Fehler</translation>
    </message>
    <message>
        <source>Combined standard uncertainty u = %1 %2; %3.</source>
        <translation>Kombinierte Standardunsicherheit u = %1 %2; %3.</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>Commands and help</source>
        <translation>Befehle und Hilfe</translation>
    </message>
    <message>
        <source>Commands and keys</source>
        <translation>Befehle und Tasten</translation>
    </message>
    <message>
        <source>Commands and keys…</source>
        <translation>Befehle und Tasten…</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Befehle und ihre Tasten</translation>
    </message>
    <message>
        <source>Commands and their keys…</source>
        <translation>Befehle und ihre Tasten…</translation>
    </message>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Compare with the &amp;other check</source>
        <translation>Mit der anderen Prüfung &amp;vergleichen</translation>
    </message>
    <message>
        <source>Complete after no change for</source>
        <translation>Vollständig ohne Änderung seit</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Computer</translation>
    </message>
    <message>
        <source>Confidence band</source>
        <translation>Vertrauensband</translation>
    </message>
    <message>
        <source>Connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>Constant current</source>
        <translation>Konstantstrom</translation>
    </message>
    <message>
        <source>Constant voltage</source>
        <translation>Konstantspannung</translation>
    </message>
    <message>
        <source>Contents and page</source>
        <translation>Inhalt und Seite</translation>
    </message>
    <message>
        <source>Contents of the manual</source>
        <translation>Inhalt des Handbuchs</translation>
    </message>
    <message>
        <source>Contribution
[%1]</source>
        <translation>Beitrag
[%1]</translation>
    </message>
    <message>
        <source>Control and safety channels fed by this bridge are out of service</source>
        <translation>Von dieser Brücke gespeiste Regel- und Sicherheitskanäle sind außer Betrieb</translation>
    </message>
    <message numerus="yes">
        <source>Copied %Ln row(s) of data.</source>
        <translation>
            <numerusform>%Ln Datenzeile kopiert.</numerusform>
            <numerusform>%Ln Datenzeilen kopiert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copied %Ln row(s).</source>
        <translation>
            <numerusform>%Ln Zeile kopiert.</numerusform>
            <numerusform>%Ln Zeilen kopiert.</numerusform>
        </translation>
    </message>
    <message>
        <source>Copied the bridge as a picture.</source>
        <translation>Brücke als Bild kopiert.</translation>
    </message>
    <message>
        <source>Copied the outcome as a picture.</source>
        <translation>Ergebnis als Bild kopiert.</translation>
    </message>
    <message>
        <source>Copied: versions, system, screen and language</source>
        <translation>Kopiert: Versionen, System, Bildschirm und Sprache</translation>
    </message>
    <message>
        <source>Copies of %1 are put behind it: bridge, plan, limits and group, without checks. Names, recording columns and pins are counted up.</source>
        <translation>Kopien von %1 werden dahinter angelegt: Brücke, Plan, Grenzwerte und Gruppe, ohne Prüfungen. Namen, Spalten der Aufzeichnung und Stifte werden hochgezählt.</translation>
    </message>
    <message>
        <source>Copies the sentence, all causes and the chosen one in full</source>
        <translation>Kopiert den Satz, alle Ursachen und die gewählte in voller Länge</translation>
    </message>
    <message>
        <source>Copies the whole working of this step</source>
        <translation>Kopiert den ganzen Rechenweg dieser Stufe</translation>
    </message>
    <message>
        <source>Copies what is tried out, the sentence and the table</source>
        <translation>Kopiert, was ausprobiert wird, den Satz und die Tabelle</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;table</source>
        <translation>&amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>Copy as &amp;data</source>
        <translation>Als &amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Copy as &amp;picture</source>
        <translation>Als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Copy cells first</source>
        <translation>Zuerst Zellen kopieren</translation>
    </message>
    <message>
        <source>Copy cells with &amp;headings</source>
        <translation>Zellen mit &amp;Überschriften kopieren</translation>
    </message>
    <message>
        <source>Copy channel</source>
        <translation>Kanal kopieren</translation>
    </message>
    <message>
        <source>Copy for a &amp;fault report</source>
        <translation>Für eine &amp;Fehlermeldung kopieren</translation>
    </message>
    <message>
        <source>Copy in full</source>
        <translation>Ganz kopieren</translation>
    </message>
    <message>
        <source>Copy or export what is shown</source>
        <translation>Kopieren oder exportieren, was gezeigt wird</translation>
    </message>
    <message>
        <source>Copy outcome as &amp;picture</source>
        <translation>Ergebnis als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy outcome as da&amp;ta</source>
        <translation>Ergebnis als &amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Copy the &amp;whole table with headings</source>
        <translation>&amp;Ganze Tabelle mit Überschriften kopieren</translation>
    </message>
    <message>
        <source>Copy the chosen cells</source>
        <translation>Gewählte Zellen kopieren</translation>
    </message>
    <message>
        <source>Copy with &amp;headings</source>
        <translation>Mit &amp;Überschriften kopieren</translation>
    </message>
    <message>
        <source>Correct the wiring first: the jumpers would short the excitation.</source>
        <translation>Zuerst die Verdrahtung berichtigen: Die Steckbrücken würden die Speisung kurzschließen.</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>Correction of the bridge&apos;s nonlinearity</source>
        <translation>Korrektur der Nichtlinearität der Brücke</translation>
    </message>
    <message>
        <source>Correlation
in group</source>
        <translation>Korrelation
in Gruppe</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Coverage of all U</source>
        <translation>Überdeckung aller U</translation>
    </message>
    <message>
        <source>Coverage probability of expanded uncertainties</source>
        <translation>Überdeckungswahrscheinlichkeit erweiterter Unsicherheiten</translation>
    </message>
    <message>
        <source>Covers the electrical chain only, not gauge factor, bond or alignment.</source>
        <translation>Umfasst nur die elektrische Messkette, nicht k-Faktor, Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>Create New Folder</source>
        <translation>Neuen Ordner anlegen</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Ctrl ← →</source>
        <translation>Strg ← →</translation>
    </message>
    <message>
        <source>Ctrl++</source>
        <translation>Ctrl++</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>Ctrl+-</source>
        <translation>Ctrl+-</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation>Ctrl+3</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation>Ctrl+4</translation>
    </message>
    <message>
        <source>Ctrl+5</source>
        <translation>Ctrl+5</translation>
    </message>
    <message>
        <source>Ctrl+6</source>
        <translation>Ctrl+6</translation>
    </message>
    <message>
        <source>Ctrl+7</source>
        <translation>Ctrl+7</translation>
    </message>
    <message>
        <source>Ctrl+8</source>
        <translation>Ctrl+8</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>Ctrl+=</source>
        <translation>Ctrl+=</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+Down</source>
        <translation>Ctrl+Down</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>Ctrl+F1</source>
        <translation>Ctrl+F1</translation>
    </message>
    <message>
        <source>Ctrl+F8</source>
        <translation>Ctrl+F8</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>Ctrl+Shift+H</source>
        <translation>Ctrl+Shift+H</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Ctrl+Shift+V</source>
        <translation>Ctrl+Shift+V</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Ctrl+Up</source>
        <translation>Ctrl+Up</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Cu&amp;t cells</source>
        <translation>Zellen &amp;ausschneiden</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschneiden</translation>
    </message>
    <message>
        <source>Cutoff (-3 dB)</source>
        <translation>Grenzfrequenz (-3 dB)</translation>
    </message>
    <message>
        <source>Cutoff frequency of the filter</source>
        <translation>Grenzfrequenz des Filters</translation>
    </message>
    <message>
        <source>D&amp;one</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>Da&amp;rk</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Dark letters on a light ground, or light ones on a dark ground. The desktop&apos;s choice is followed when it changes.</source>
        <translation>Dunkle Buchstaben auf hellem Grund oder helle auf dunklem. Der Wahl der Arbeitsumgebung wird gefolgt, wenn sie sich ändert.</translation>
    </message>
    <message>
        <source>Dashed: the check %1.</source>
        <translation>Gestrichelt: die Prüfung %1.</translation>
    </message>
    <message>
        <source>Data for programs (JSON)</source>
        <translation>Daten für Programme (JSON)</translation>
    </message>
    <message>
        <source>Data taken in between</source>
        <translation>Dazwischen aufgenommene Daten</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Date Modified</source>
        <translation>Änderungsdatum</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day of the instrument&apos;s next calibration, as year-month-day</source>
        <translation>Tag der nächsten Kalibrierung des Geräts, als Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>De&amp;lete…</source>
        <translation>&amp;Löschen…</translation>
    </message>
    <message>
        <source>Decade boxes</source>
        <translation>Widerstandsdekaden</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Entschieden nach</translation>
    </message>
    <message>
        <source>Decide…</source>
        <translation>Entscheiden…</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>Degrees of
freedom</source>
        <translation>Freiheits-
grade</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Delete remark</source>
        <translation>Anmerkung löschen</translation>
    </message>
    <message>
        <source>Delete span</source>
        <translation>Abschnitt löschen</translation>
    </message>
    <message>
        <source>Delete template</source>
        <translation>Vorlage löschen</translation>
    </message>
    <message>
        <source>Delete the template “%1”? This cannot be undone.</source>
        <translation>Die Vorlage „%1“ löschen? Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>Demo (invented data)</source>
        <translation>Demo (erfundene Daten)</translation>
    </message>
    <message>
        <source>Detail View</source>
        <translation>Detailansicht</translation>
    </message>
    <message>
        <source>Details of the check</source>
        <translation>Angaben zur Prüfung</translation>
    </message>
    <message>
        <source>Details of the document</source>
        <translation>Angaben zum Dokument</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Deviation
[%1]</source>
        <translation>Abw.
[%1]</translation>
    </message>
    <message>
        <source>Deviation from expected</source>
        <translation>Abweichung vom erwarteten Wert</translation>
    </message>
    <message>
        <source>Deviation from the expected reading over its own standard uncertainty. Beyond 2 either way it is seldom chance.</source>
        <translation>Abweichung vom erwarteten Messwert durch ihre eigene Standardunsicherheit. Jenseits von 2 in einer der Richtungen ist es selten Zufall.</translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation>Diagnose</translation>
    </message>
    <message>
        <source>Dials</source>
        <translation>Drehschalter</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Differenz</translation>
    </message>
    <message>
        <source>Difference of the checks</source>
        <translation>Differenz der Prüfungen</translation>
    </message>
    <message>
        <source>Difference over the reading without; −200 % where the sign turns and the size stays</source>
        <translation>Differenz durch den Messwert ohne; −200 %, wo sich das Vorzeichen umkehrt und der Betrag bleibt</translation>
    </message>
    <message>
        <source>Differs by %2 ± %3 %4 (95 %), which is shown to lie within the margin of ± %1.</source>
        <translation>Unterscheidet sich um %2 ± %3 %4 (95 %), was nachweislich innerhalb der Toleranz von ± %1 liegt.</translation>
    </message>
    <message>
        <source>Difficulty</source>
        <translation>Schwierigkeit</translation>
    </message>
    <message>
        <source>Directory:</source>
        <translation>Ordner:</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Discard kept work</source>
        <translation>Aufbewahrte Arbeit verwerfen</translation>
    </message>
    <message>
        <source>Discard…</source>
        <translation>Verwerfen…</translation>
    </message>
    <message>
        <source>Distribution</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>Distributions</source>
        <translation>Verteilungen</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Don&apos;t Save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Drag an edge</source>
        <translation>Eine Kante ziehen</translation>
    </message>
    <message>
        <source>Drag background, ← →</source>
        <translation>Hintergrund ziehen, ← →</translation>
    </message>
    <message>
        <source>Drag the chosen span</source>
        <translation>Gewählten Abschnitt ziehen</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Drawing of the bridge</source>
        <translation>Zeichnung der Brücke</translation>
    </message>
    <message>
        <source>Drawing of the wiring</source>
        <translation>Zeichnung der Verdrahtung</translation>
    </message>
    <message>
        <source>Drawing: jumpers of %1</source>
        <translation>Zeichnung: Steckbrücken von %1</translation>
    </message>
    <message>
        <source>Draws every input from its distribution and solves the whole network each time, nothing linearised, until the result has settled</source>
        <translation>Zieht jede Eingangsgröße aus ihrer Verteilung und löst jedes Mal das ganze Netzwerk, ohne Linearisierung, bis sich das Ergebnis beruhigt hat</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Laufwerk</translation>
    </message>
    <message>
        <source>Drop the end on a node; elsewhere nothing changes.</source>
        <translation>Das Ende auf einem Knoten ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the lead on another lead&apos;s terminal; elsewhere nothing changes.</source>
        <translation>Die Leitung auf dem Anschluss einer anderen ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the leak on another arm; elsewhere nothing changes.</source>
        <translation>Den Nebenschluss auf einem anderen Zweig ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the resistor on another arm; elsewhere nothing changes.</source>
        <translation>Den Widerstand auf einem anderen Zweig ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop what is stated in the chosen rows and take the usual values of their class</source>
        <translation>Angaben der gewählten Zeilen verwerfen und die üblichen Werte ihrer Klasse nehmen</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Due date of the instrument</source>
        <translation>Fälligkeit des Geräts</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate channel</source>
        <translation>Kanal verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate s&amp;hunt</source>
        <translation>Shunt &amp;verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate shunt</source>
        <translation>Shunt verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate shunts</source>
        <translation>Shunts verdoppeln</translation>
    </message>
    <message>
        <source>E&amp;nd the run safely…</source>
        <translation>Durchgang s&amp;icher beenden…</translation>
    </message>
    <message>
        <source>E&amp;xport picture…</source>
        <translation>Bild e&amp;xportieren…</translation>
    </message>
    <message>
        <source>Each row is a channel &amp;like</source>
        <translation>Jede Zeile ist ein Kanal &amp;wie</translation>
    </message>
    <message>
        <source>Each shunt alone</source>
        <translation>Jeder Shunt allein</translation>
    </message>
    <message>
        <source>Earlier check</source>
        <translation>Frühere Prüfung</translation>
    </message>
    <message numerus="yes">
        <source>Edit %Ln channel(s)</source>
        <translation>
            <numerusform>%Ln Kanal bearbeiten</numerusform>
            <numerusform>%Ln Kanäle bearbeiten</numerusform>
        </translation>
    </message>
    <message>
        <source>Edit &amp;many channels…</source>
        <translation>&amp;Mehrere Kanäle ändern…</translation>
    </message>
    <message>
        <source>Edit chosen channels…</source>
        <translation>Gewählte Kanäle ändern…</translation>
    </message>
    <message>
        <source>Edit chosen…</source>
        <translation>Gewählte ändern…</translation>
    </message>
    <message>
        <source>Edit remark</source>
        <translation>Anmerkung bearbeiten</translation>
    </message>
    <message>
        <source>Edit the cell</source>
        <translation>Zelle bearbeiten</translation>
    </message>
    <message>
        <source>Edit, show, export</source>
        <translation>Bearbeiten, zeigen, exportieren</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>Else the chosen channel alone</source>
        <translation>Sonst nur der gewählte Kanal</translation>
    </message>
    <message>
        <source>Else the program starts with an empty document, unless it is started with one.</source>
        <translation>Sonst beginnt das Programm mit einem leeren Dokument, wenn es nicht mit einem gestartet wird.</translation>
    </message>
    <message>
        <source>Else to all values of the recording</source>
        <translation>Sonst alle Werte der Aufzeichnung</translation>
    </message>
    <message>
        <source>Else with a decimal point and days as 2026-11-26</source>
        <translation>Sonst mit Dezimalpunkt und Tagen wie 2026-11-26</translation>
    </message>
    <message>
        <source>Empty document. Add a channel to begin.</source>
        <translation>Leeres Dokument. Zum Beginnen einen Kanal anlegen.</translation>
    </message>
    <message>
        <source>Empty places</source>
        <translation>Leere Stellen</translation>
    </message>
    <message>
        <source>Empty the readings of all states</source>
        <translation>Die Messwerte aller Zustände leeren</translation>
    </message>
    <message>
        <source>En</source>
        <translation>En</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Zeichensatz</translation>
    </message>
    <message>
        <source>End at the cursor</source>
        <translation>Am Cursor enden</translation>
    </message>
    <message>
        <source>End the presentation</source>
        <translation>Vorführung beenden</translation>
    </message>
    <message>
        <source>Ends of the scale</source>
        <translation>Enden der Skala</translation>
    </message>
    <message>
        <source>Ends, s</source>
        <translation>Ende, s</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Enter at least %1</source>
        <translation>Mindestens %1 eingeben</translation>
    </message>
    <message>
        <source>Enter at most %1</source>
        <translation>Höchstens %1 eingeben</translation>
    </message>
    <message>
        <source>Enter less than %1</source>
        <translation>Weniger als %1 eingeben</translation>
    </message>
    <message>
        <source>Enter more than %1</source>
        <translation>Mehr als %1 eingeben</translation>
    </message>
    <message>
        <source>Enter ohmmeter reading</source>
        <translation>Ohmmeterwert eintragen</translation>
    </message>
    <message>
        <source>Enter reading</source>
        <translation>Messwert eintragen</translation>
    </message>
    <message>
        <source>Enter reading of step %1</source>
        <translation>Messwert der Stufe %1 eintragen</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Error of the ohmmeter and its leads whatever the reading</source>
        <translation>Fehler des Ohmmeters und seiner Leitungen, unabhängig vom Messwert</translation>
    </message>
    <message>
        <source>Error of the ohmmeter as a share of the reading</source>
        <translation>Fehler des Ohmmeters als Anteil des Messwerts</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Every command with its keys, to be searched, changed and printed.</source>
        <translation>Jeder Befehl mit seinen Tasten, zum Suchen, Ändern und Drucken.</translation>
    </message>
    <message>
        <source>Every shunt whose part is in the stock takes value, due date and uncertainty anew</source>
        <translation>Jeder Shunt, dessen Widerstand im Bestand ist, übernimmt Wert, Fälligkeit und Unsicherheit neu</translation>
    </message>
    <message>
        <source>Everything is as usual again.</source>
        <translation>Alles ist wieder wie üblich.</translation>
    </message>
    <message>
        <source>Everything on this page and the keys of all commands become as they usually are. Documents, stock and templates stay as they are.</source>
        <translation>Alles auf dieser Seite und die Tasten aller Befehle werden, wie sie üblich sind. Dokumente, Bestand und Vorlagen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Exact</source>
        <translation>Genau</translation>
    </message>
    <message>
        <source>Exchange arms</source>
        <translation>Zweige tauschen</translation>
    </message>
    <message>
        <source>Exchange leads</source>
        <translation>Leitungen tauschen</translation>
    </message>
    <message>
        <source>Excitation</source>
        <translation>Speisung</translation>
    </message>
    <message>
        <source>Excitation current</source>
        <translation>Speisestrom</translation>
    </message>
    <message>
        <source>Excitation swapped</source>
        <translation>Speisung vertauscht</translation>
    </message>
    <message>
        <source>Excited by</source>
        <translation>Gespeist mit</translation>
    </message>
    <message>
        <source>Expanded uncertainty of the change at the coverage of the decision rule; what both checks share is taken out</source>
        <translation>Erweiterte Unsicherheit der Änderung mit der Überdeckung der Entscheidungsregel; was beide Prüfungen gemeinsam haben, ist herausgenommen</translation>
    </message>
    <message>
        <source>Expanded uncertainty on the certificate, in ohm or as a share of the value</source>
        <translation>Erweiterte Unsicherheit laut Kalibrierschein, in Ohm oder als Anteil des Werts</translation>
    </message>
    <message>
        <source>Expanded uncertainty. %1 The scope is chosen on the page Budget.</source>
        <translation>Erweiterte Unsicherheit. %1 Der Bereich wird auf der Seite Budget gewählt.</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Expected
[%1]</source>
        <translation>Erwartet
[%1]</translation>
    </message>
    <message>
        <source>Expected reading</source>
        <translation>Erwarteter Messwert</translation>
    </message>
    <message>
        <source>Expected reading of the plan as it is</source>
        <translation>Erwarteter Messwert des Plans, wie er ist</translation>
    </message>
    <message>
        <source>Explains every reading</source>
        <translation>Erklärt jeden Messwert</translation>
    </message>
    <message>
        <source>Explains,
%</source>
        <translation>Erklärt,
%</translation>
    </message>
    <message>
        <source>Export resistors</source>
        <translation>Widerstände exportieren</translation>
    </message>
    <message>
        <source>Export template</source>
        <translation>Vorlage exportieren</translation>
    </message>
    <message>
        <source>Export the bridge</source>
        <translation>Brücke exportieren</translation>
    </message>
    <message>
        <source>Export the outcome</source>
        <translation>Ergebnis exportieren</translation>
    </message>
    <message>
        <source>Export the overview</source>
        <translation>Übersicht exportieren</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>F&amp;ilter rows…</source>
        <translation>Zeilen &amp;filtern…</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>F3</source>
        <translation>F3</translation>
    </message>
    <message>
        <source>F5</source>
        <translation>F5</translation>
    </message>
    <message>
        <source>F8</source>
        <translation>F8</translation>
    </message>
    <message>
        <source>Factor changes by</source>
        <translation>Faktoränderung</translation>
    </message>
    <message>
        <source>Factor stated at</source>
        <translation>Faktor gilt bei</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Fallend</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Fault: the check cannot succeed, or something can be damaged. Warning: the check is weaker for it. Note: worth knowing</source>
        <translation>Fehler: Die Prüfung kann nicht gelingen, oder etwas kann Schaden nehmen. Warnung: Die Prüfung ist dadurch schwächer. Hinweis: wissenswert</translation>
    </message>
    <message>
        <source>Faults in the order in which they fit</source>
        <translation>Fehler in der Reihenfolge, in der sie passen</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>Figures in words</source>
        <translation>Kennwerte in Worten</translation>
    </message>
    <message>
        <source>Figures of merit</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>File &amp;name:</source>
        <translation>Datei&amp;name:</translation>
    </message>
    <message>
        <source>File Folder</source>
        <translation>Dateiordner</translation>
    </message>
    <message>
        <source>File and check</source>
        <translation>Datei und Prüfung</translation>
    </message>
    <message>
        <source>File names</source>
        <translation>Dateinamen</translation>
    </message>
    <message>
        <source>Files of type:</source>
        <translation>Dateien vom Typ:</translation>
    </message>
    <message>
        <source>Fill &amp;down</source>
        <translation>Nach &amp;unten füllen</translation>
    </message>
    <message>
        <source>Fill &amp;right</source>
        <translation>Nach &amp;rechts füllen</translation>
    </message>
    <message>
        <source>Fill &amp;series</source>
        <translation>Re&amp;ihe füllen</translation>
    </message>
    <message>
        <source>Fill cells</source>
        <translation>Zellen füllen</translation>
    </message>
    <message>
        <source>Fill ri&amp;ght</source>
        <translation>Na&amp;ch rechts füllen</translation>
    </message>
    <message>
        <source>Fill series</source>
        <translation>Reihe füllen</translation>
    </message>
    <message>
        <source>Filter before the readings</source>
        <translation>Filter vor den Messwerten</translation>
    </message>
    <message>
        <source>Filter rows</source>
        <translation>Zeilen filtern</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Find &amp;next</source>
        <translation>Wei&amp;tersuchen</translation>
    </message>
    <message>
        <source>Find a command</source>
        <translation>Einen Befehl suchen</translation>
    </message>
    <message>
        <source>Find pre&amp;vious</source>
        <translation>Rückw&amp;ärts suchen</translation>
    </message>
    <message>
        <source>Find recording</source>
        <translation>Aufzeichnung suchen</translation>
    </message>
    <message>
        <source>Find recordings from the new folder</source>
        <translation>Aufzeichnungen des neuen Ordners suchen</translation>
    </message>
    <message>
        <source>Find the held levels in a recording</source>
        <translation>Die gehaltenen Plateaus einer Aufzeichnung finden</translation>
    </message>
    <message>
        <source>Find the recording</source>
        <translation>Die Aufzeichnung suchen</translation>
    </message>
    <message>
        <source>Find the recording…</source>
        <translation>Aufzeichnung suchen…</translation>
    </message>
    <message>
        <source>Find the resistors that come nearest to the levels wanted</source>
        <translation>Die Widerstände finden, die den gewünschten Stufenwerten am nächsten kommen</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Fingerprint</source>
        <translation>Fingerabdruck</translation>
    </message>
    <message>
        <source>Fingerprint %1</source>
        <translation>Fingerabdruck %1</translation>
    </message>
    <message>
        <source>Fingerprint in full</source>
        <translation>Vollständiger Fingerabdruck</translation>
    </message>
    <message>
        <source>First lines</source>
        <translation>Erste Zeilen</translation>
    </message>
    <message>
        <source>First lines of the file</source>
        <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
        <source>First number</source>
        <translation>Erste Nummer</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <source>Fit axis to &amp;bars</source>
        <translation>Achse an &amp;Balken anpassen</translation>
    </message>
    <message>
        <source>Fit axis to li&amp;mits</source>
        <translation>Achse an &amp;Grenzwerte anpassen</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Fitted &amp;line</source>
        <translation>Angepasste &amp;Gerade</translation>
    </message>
    <message>
        <source>Fitted already</source>
        <translation>Schon eingebaut</translation>
    </message>
    <message>
        <source>Fitted in</source>
        <translation>Eingebaut bei</translation>
    </message>
    <message>
        <source>Fitted line</source>
        <translation>Angepasste Gerade</translation>
    </message>
    <message>
        <source>Fitted line less expected</source>
        <translation>Angepasste Gerade minus erwartet</translation>
    </message>
    <message>
        <source>Fitted, by value</source>
        <translation>Eingebaut, nach Wert</translation>
    </message>
    <message>
        <source>Fixed beforehand: a change that is shown to be smaller counts as unchanged</source>
        <translation>Im Voraus festgelegt: Eine nachweislich kleinere Änderung zählt als unverändert</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Zu beobachtender Ordner</translation>
    </message>
    <message>
        <source>For %1: say what is wanted and press Search. Every set of resistors is looked at, or ruled out.</source>
        <translation>Für %1: angeben, was gewünscht ist, und „Suchen“ drücken. Jeder Widerstandssatz wird betrachtet oder ausgeschlossen.</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Für das Protokoll</translation>
    </message>
    <message>
        <source>Forget what is done with</source>
        <translation>Erledigtes vergessen</translation>
    </message>
    <message>
        <source>Forget what is watched; the list stays</source>
        <translation>Vergessen, was beobachtet wird; die Liste bleibt</translation>
    </message>
    <message>
        <source>Format of the file</source>
        <translation>Format der Datei</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>Formula gives</source>
        <translation>Formel ergibt</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vorwärts</translation>
    </message>
    <message>
        <source>Four arms in a square, one of them with a resistor in parallel.</source>
        <translation>Vier Arme im Quadrat, einer davon mit einem parallelen Widerstand.</translation>
    </message>
    <message>
        <source>Free software: you may use, change and pass it on under the GNU General Public License, version 3 or any later one. It comes without any warranty, to the extent permitted by law.</source>
        <translation>Freie Software: nutzen, ändern und weitergeben unter der GNU General Public License, Version 3 oder jeder späteren. Sie kommt ohne jede Gewährleistung, soweit das Gesetz es zulässt.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From &amp;recording…</source>
        <translation>Aus &amp;Aufzeichnung…</translation>
    </message>
    <message>
        <source>From [s]</source>
        <translation>Von [s]</translation>
    </message>
    <message>
        <source>From length and size of a wire</source>
        <translation>Aus Länge und Querschnitt einer Leitung</translation>
    </message>
    <message>
        <source>From node</source>
        <translation>Knoten von</translation>
    </message>
    <message>
        <source>From page to page of tabs</source>
        <translation>Von Seite zu Seite der Reiter</translation>
    </message>
    <message>
        <source>From part to part, or move the chosen end</source>
        <translation>Von Teil zu Teil, oder das gewählte Ende versetzen</translation>
    </message>
    <message>
        <source>From pattern…</source>
        <translation>Nach Muster…</translation>
    </message>
    <message>
        <source>From pin</source>
        <translation>Stift von</translation>
    </message>
    <message>
        <source>From pin to pin</source>
        <translation>Von Stift zu Stift</translation>
    </message>
    <message>
        <source>From recording…</source>
        <translation>Aus Aufzeichnung…</translation>
    </message>
    <message>
        <source>From step to step</source>
        <translation>Von Stufe zu Stufe</translation>
    </message>
    <message>
        <source>From what is open in this window to %1 on the disk:</source>
        <translation>Von dem, was in diesem Fenster offen ist, zu %1 auf der Platte:</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Further channels</source>
        <translation>Weitere Kanäle</translation>
    </message>
    <message>
        <source>G</source>
        <translation>G</translation>
    </message>
    <message>
        <source>GNU General Public License, version 3</source>
        <translation>GNU General Public License, Version 3</translation>
    </message>
    <message>
        <source>Gain</source>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>Gain change, %</source>
        <translation>Änderung der Verstärkung, %</translation>
    </message>
    <message>
        <source>Gain, measured over expected</source>
        <translation>Verstärkung, gemessen durch erwartet</translation>
    </message>
    <message>
        <source>Gauge factor</source>
        <translation>k-Faktor</translation>
    </message>
    <message>
        <source>Gauge factor of the instrument</source>
        <translation>k-Faktor des Geräts</translation>
    </message>
    <message>
        <source>Gauge factor set</source>
        <translation>k-Faktor am Gerät</translation>
    </message>
    <message>
        <source>Gauge resistance</source>
        <translation>DMS-Widerstand</translation>
    </message>
    <message>
        <source>Gauge signs reversed</source>
        <translation>DMS-Vorzeichen umgekehrt</translation>
    </message>
    <message>
        <source>Gauge, nominal</source>
        <translation>DMS, Nennwert</translation>
    </message>
    <message>
        <source>Gauges are at</source>
        <translation>DMS haben</translation>
    </message>
    <message>
        <source>Give all chosen channels another value</source>
        <translation>Allen gewählten Kanälen einen anderen Wert geben</translation>
    </message>
    <message>
        <source>Give all spans to the steps that they fit</source>
        <translation>Alle Abschnitte den Stufen geben, zu denen sie passen</translation>
    </message>
    <message>
        <source>Give span to step %1</source>
        <translation>Abschnitt der Stufe %1 geben</translation>
    </message>
    <message>
        <source>Give the chosen span to a step (G), or take it from its step (N)</source>
        <translation>Den gewählten Abschnitt einer Stufe geben (G) oder seiner Stufe nehmen (N)</translation>
    </message>
    <message>
        <source>Give to a step…</source>
        <translation>Einer Stufe geben…</translation>
    </message>
    <message>
        <source>Give to step</source>
        <translation>Einer Stufe geben</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Angegeben als</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Go on with %1 at step %2</source>
        <translation>Mit %1 bei Stufe %2 weiter</translation>
    </message>
    <message>
        <source>Goes on beyond the axis</source>
        <translation>Geht jenseits der Achse weiter</translation>
    </message>
    <message>
        <source>Goes on with what is in this window; nothing is written until you save</source>
        <translation>Geht weiter mit dem, was in diesem Fenster ist; bis zum Speichern wird nichts geschrieben</translation>
    </message>
    <message>
        <source>Greatest bridge output that the instrument takes</source>
        <translation>Größtes Brückensignal, das das Gerät aufnimmt</translation>
    </message>
    <message>
        <source>Greatest change between two checks, of the expected reading</source>
        <translation>Größte Änderung zwischen zwei Prüfungen, vom erwarteten Messwert</translation>
    </message>
    <message>
        <source>Greatest change of the zero reading between two checks, of the greatest expected</source>
        <translation>Größte Änderung des Nullwerts zwischen zwei Prüfungen, vom größten erwarteten</translation>
    </message>
    <message>
        <source>Greatest deviation of any reading from the line below, as a share of the measured span.</source>
        <translation>Größte Abweichung irgendeines Messwerts von der Geraden unten, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest deviation of the mean readings, rising and falling averaged, from the line below, as a share of the measured span.</source>
        <translation>Größte Abweichung der mittleren Messwerte, steigend und fallend gemittelt, von der Geraden unten, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest difference of the falling and the rising reading of one level, as a share of the measured span.</source>
        <translation>Größte Differenz des fallenden und des steigenden Messwerts eines Stufenwerts, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest error</source>
        <translation>Größter Fehler</translation>
    </message>
    <message>
        <source>Greatest level</source>
        <translation>Größter Stufenwert</translation>
    </message>
    <message>
        <source>Greatest miss</source>
        <translation>Größter Abstand</translation>
    </message>
    <message>
        <source>Greatest miss, %1</source>
        <translation>Größter Fehlbetrag, %1</translation>
    </message>
    <message>
        <source>Greatest power</source>
        <translation>Größte Leistung</translation>
    </message>
    <message>
        <source>Greatest share of U in the limit</source>
        <translation>Größter Anteil von U am Grenzwert</translation>
    </message>
    <message>
        <source>Greatest spread of the readings of one level reached from the same side, as a share of the measured span.</source>
        <translation>Größte Streuung der Messwerte eines Stufenwerts, der von derselben Seite erreicht wird, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Grid, active area</source>
        <translation>Gitter, aktive Fläche</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Guard band as a multiple of U</source>
        <translation>Schutzabstand als Vielfaches von U</translation>
    </message>
    <message>
        <source>Guard band, times U</source>
        <translation>Schutzabstand, mal U</translation>
    </message>
    <message>
        <source>Guided run</source>
        <translation>Geführter Durchgang</translation>
    </message>
    <message>
        <source>HDF5 file</source>
        <translation>HDF5-Datei</translation>
    </message>
    <message>
        <source>Heat sink</source>
        <translation>Wärmeableitung</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Hide Details...</source>
        <translation>Details ausblenden...</translation>
    </message>
    <message>
        <source>Histogram of the trials</source>
        <translation>Histogramm der Versuche</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Hold
[s]</source>
        <translation>Halten
[s]</translation>
    </message>
    <message>
        <source>Holding: watch the reading</source>
        <translation>Halten: Messwert beobachten</translation>
    </message>
    <message>
        <source>Home, Return</source>
        <translation>Pos1, Eingabe</translation>
    </message>
    <message>
        <source>How arms, leads and shunts are drawn in the bridge, on the screen and in reports.</source>
        <translation>Wie Zweige, Leitungen und Shunts in der Brücke gezeichnet werden, auf dem Bildschirm und in Berichten.</translation>
    </message>
    <message>
        <source>How far the evidence falls behind that of the best cause by the Bayesian information criterion (BIC): chi-square of what is left, and a charge for each fitted size. 0 is the best; below 2 hardly a difference, from 6 on a strong one</source>
        <translation>Um wie viel die Evidenz hinter der der besten Ursache liegt, nach dem Bayesschen Informationskriterium (BIC): Chi-Quadrat dessen, was übrig bleibt, und ein Aufschlag für jede angepasste Größe. 0 ist am besten; unter 2 kaum ein Unterschied, ab 6 ein deutlicher</translation>
    </message>
    <message>
        <source>How far the input may be from its value, as stated or assumed</source>
        <translation>Wie weit die Eingangsgröße von ihrem Wert entfernt sein kann, angegeben oder angenommen</translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation>Wie es aussieht</translation>
    </message>
    <message>
        <source>How its possible values are spread</source>
        <translation>Wie ihre möglichen Werte verteilt sind</translation>
    </message>
    <message>
        <source>How many copies</source>
        <translation>Wie viele Kopien</translation>
    </message>
    <message>
        <source>How many resistors can be switched, the fitted ones included</source>
        <translation>Wie viele Widerstände sich schalten lassen, die eingebauten mitgezählt</translation>
    </message>
    <message>
        <source>How many values of the series lie in between</source>
        <translation>Wie viele Werte der Reihe dazwischenliegen</translation>
    </message>
    <message>
        <source>How much the result changes when the input does, all else as it is</source>
        <translation>Um wie viel sich das Ergebnis mit der Eingangsgröße ändert, alles andere unverändert</translation>
    </message>
    <message>
        <source>How one works</source>
        <translation>Wie man arbeitet</translation>
    </message>
    <message>
        <source>How ordinary such a fault of such a size is, by common practice</source>
        <translation>Wie gewöhnlich ein solcher Fehler dieser Größe ist, nach allgemeiner Praxis</translation>
    </message>
    <message>
        <source>How probable so large a change would be if nothing had changed; below 0.05 it differs</source>
        <translation>Wie wahrscheinlich eine so große Änderung wäre, wenn sich nichts geändert hätte; unter 0,05 ist sie ein Unterschied</translation>
    </message>
    <message>
        <source>How probable so small a change would be if it were at the margin; below 0.05 it is shown to lie within</source>
        <translation>Wie wahrscheinlich eine so kleine Änderung wäre, wenn sie an der Toleranz läge; unter 0,05 liegt sie nachweislich innerhalb</translation>
    </message>
    <message>
        <source>How probable the cause is among those that were tried, in percent: how well it explains the readings, by the Bayesian criterion, times how ordinary such a fault is. All causes sum to 100 % at most, and one that nobody thought of is not among them</source>
        <translation>Wie wahrscheinlich die Ursache unter den versuchten ist, in Prozent: wie gut sie die Messwerte erklärt, nach dem Bayesschen Kriterium, mal wie gewöhnlich ein solcher Fehler ist. Alle Ursachen zusammen ergeben höchstens 100 %, und eine, an die niemand gedacht hat, ist nicht darunter</translation>
    </message>
    <message>
        <source>How the file is read</source>
        <translation>Wie die Datei gelesen wird</translation>
    </message>
    <message>
        <source>How the levels match the plan</source>
        <translation>Wie die Plateaus zum Plan passen</translation>
    </message>
    <message>
        <source>How the numbers of the step come about</source>
        <translation>Wie die Zahlen der Stufe zustande kommen</translation>
    </message>
    <message>
        <source>Hysteresis</source>
        <translation>Umkehrspanne</translation>
    </message>
    <message>
        <source>I&amp;EEE 315: zigzags</source>
        <translation>I&amp;EEE 315: Zickzacklinien</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Ignore</source>
        <translation>Ignorieren</translation>
    </message>
    <message numerus="yes">
        <source>Import %Ln channel(s)</source>
        <translation>
            <numerusform>%Ln Kanal importieren</numerusform>
            <numerusform>%Ln Kanäle importieren</numerusform>
        </translation>
    </message>
    <message>
        <source>Import a channel list</source>
        <translation>Eine Kanalliste einlesen</translation>
    </message>
    <message>
        <source>Import list…</source>
        <translation>Liste einlesen…</translation>
    </message>
    <message>
        <source>Import resistors</source>
        <translation>Widerstände einlesen</translation>
    </message>
    <message>
        <source>Import template</source>
        <translation>Vorlage einlesen</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>In stock is %1. Choose it again to take it as it is there.</source>
        <translation>Im Bestand ist %1. Nochmals wählen, um ihn von dort zu übernehmen.</translation>
    </message>
    <message>
        <source>In the first set the levels %1 are served by the same resistors closed, and so are one level only.</source>
        <translation>Im ersten Satz werden die Stufenwerte %1 mit denselben geschlossenen Widerständen erreicht und sind so nur ein Stufenwert.</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Input resistance</source>
        <translation>Eingangswiderstand</translation>
    </message>
    <message>
        <source>Inputs</source>
        <translation>Eingangsgrößen</translation>
    </message>
    <message>
        <source>Instead of them: readings of open checks go too, since they were taken with other shunts. Undo brings all of it back.</source>
        <translation>Statt ihrer: Auch Messwerte offener Prüfungen entfallen, da sie mit anderen Shunts aufgenommen wurden. „Rückgängig“ bringt alles zurück.</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Instrument: %1</source>
        <translation>Gerät: %1</translation>
    </message>
    <message>
        <source>Interval of the budget</source>
        <translation>Intervall des Budgets</translation>
    </message>
    <message>
        <source>Invented data, to be tried out: no file changes unless you save it under a name.</source>
        <translation>Erfundene Daten zum Ausprobieren: Keine Datei ändert sich, außer beim Speichern unter einem Namen.</translation>
    </message>
    <message>
        <source>It cannot be compared with its file.</source>
        <translation>Es lässt sich nicht mit seiner Datei vergleichen.</translation>
    </message>
    <message>
        <source>It cannot be compared: %1</source>
        <translation>Es lässt sich nicht vergleichen: %1</translation>
    </message>
    <message>
        <source>It is as the template has it already.</source>
        <translation>Es ist schon so, wie die Vorlage es hat.</translation>
    </message>
    <message>
        <source>It is open for writing elsewhere: %1.</source>
        <translation>Es ist anderswo zum Schreiben offen: %1.</translation>
    </message>
    <message>
        <source>It keeps the present set-up from now on. Refused where it has no reading.</source>
        <translation>Sie behält von jetzt an die jetzige Einrichtung. Abgelehnt, wo sie keinen Messwert hat.</translation>
    </message>
    <message>
        <source>It lies %1 now.</source>
        <translation>Er liegt jetzt %1.</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translation>Es wurde nie gespeichert.</translation>
    </message>
    <message>
        <source>Its fields and tables</source>
        <translation>Seine Felder und Tabellen</translation>
    </message>
    <message>
        <source>Its file %1 is no longer there.</source>
        <translation>Seine Datei %1 ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Its folder is not there any longer.</source>
        <translation>Sein Ordner ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Its value</source>
        <translation>Sein Wert</translation>
    </message>
    <message>
        <source>J</source>
        <translation>J</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Join spans</source>
        <translation>Abschnitte verbinden</translation>
    </message>
    <message>
        <source>Joins</source>
        <translation>Verbindet</translation>
    </message>
    <message>
        <source>Jumper to</source>
        <translation>Steckbrücke nach</translation>
    </message>
    <message>
        <source>Jumpers</source>
        <translation>Steckbrücken</translation>
    </message>
    <message>
        <source>Jumpers are laid in the table of jumpers below, for one shunt at a time.</source>
        <translation>Steckbrücken werden in der Tabelle der Steckbrücken unten gelegt, für je einen Shunt.</translation>
    </message>
    <message>
        <source>Jumpers of</source>
        <translation>Steckbrücken von</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>Keep for later</source>
        <translation>Für später aufbewahren</translation>
    </message>
    <message>
        <source>Keep it safe while it is done</source>
        <translation>Sicher aufbewahren, während sie entsteht</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meines behalten</translation>
    </message>
    <message>
        <source>Keep running after edits</source>
        <translation>Nach Änderungen weiterrechnen</translation>
    </message>
    <message>
        <source>Keep the set-up that this check is judged by</source>
        <translation>Die Einrichtung festhalten, nach der diese Prüfung beurteilt wird</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Keys of the command: press the new ones</source>
        <translation>Tasten des Befehls: die neuen drücken</translation>
    </message>
    <message>
        <source>Keys…</source>
        <translation>Tasten…</translation>
    </message>
    <message>
        <source>Kinds of question</source>
        <translation>Aufgabenarten</translation>
    </message>
    <message>
        <source>L&amp;icence</source>
        <translation>L&amp;izenz</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of the &amp;system</source>
        <translation>&amp;Sprache des Systems</translation>
    </message>
    <message>
        <source>Language of the report</source>
        <translation>Sprache des Berichts</translation>
    </message>
    <message>
        <source>Language of the system</source>
        <translation>Sprache des Systems</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Größere Buchstaben</translation>
    </message>
    <message>
        <source>Larger, smaller, all of it</source>
        <translation>Größer, kleiner, alles davon</translation>
    </message>
    <message>
        <source>Largest deviation as a share of its limit; above 100 % something is off</source>
        <translation>Größte Abweichung als Anteil ihres Grenzwerts; über 100 % stimmt etwas nicht</translation>
    </message>
    <message>
        <source>Later check</source>
        <translation>Spätere Prüfung</translation>
    </message>
    <message>
        <source>Later less earlier, of the deviations from what each set-up makes one expect: what differs on purpose drops out</source>
        <translation>Spätere minus frühere Abweichung von dem, was jede Einrichtung erwarten lässt: Was sich mit Absicht unterscheidet, fällt heraus</translation>
    </message>
    <message>
        <source>Latest check</source>
        <translation>Letzte Prüfung</translation>
    </message>
    <message>
        <source>Latin-1</source>
        <translation>Latin-1</translation>
    </message>
    <message>
        <source>Lay %1</source>
        <translation>%1 legen</translation>
    </message>
    <message>
        <source>Lay out</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Lay out &amp;two-sided sequence</source>
        <translation>&amp;Zweiseitigen Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out from a &amp;pattern…</source>
        <translation>Nach &amp;Muster anlegen…</translation>
    </message>
    <message>
        <source>Lay out sequence</source>
        <translation>Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out two-sided sequence</source>
        <translation>Zweiseitigen Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out up and down, repeats, random order and other patterns</source>
        <translation>Auf und ab, Wiederholungen, zufällige Folge und andere Muster anlegen</translation>
    </message>
    <message>
        <source>Lay out zero, positive shunts rising, zero, negative shunts rising, zero</source>
        <translation>Null, positive Shunts steigend, Null, negative Shunts steigend, Null anlegen</translation>
    </message>
    <message>
        <source>Laying out the pages</source>
        <translation>Seiten werden angelegt</translation>
    </message>
    <message>
        <source>Lead %1</source>
        <translation>Leitung %1</translation>
    </message>
    <message>
        <source>Lead %1 cannot be removed: without it the bridge is not connected. Enter 0 Ω to leave its resistance out, or break it on the page What if.</source>
        <translation>Leitung %1 lässt sich nicht entfernen: Ohne sie ist die Brücke nicht angeschlossen. 0 Ω eintragen, um ihren Widerstand wegzulassen, oder sie auf der Seite „Was wäre, wenn“ unterbrechen.</translation>
    </message>
    <message>
        <source>Lead %1 from length and size</source>
        <translation>Leitung %1 aus Länge und Querschnitt</translation>
    </message>
    <message>
        <source>Lead %1, %2</source>
        <translation>Leitung %1, %2</translation>
    </message>
    <message>
        <source>Lead from copper wire</source>
        <translation>Leitung aus Kupferdraht</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation>Führt zu</translation>
    </message>
    <message>
        <source>Leads warmer by</source>
        <translation>Leitungen wärmer um</translation>
    </message>
    <message>
        <source>Leads warmer than their resistance is stated for, by</source>
        <translation>Leitungen wärmer, als ihr Widerstand angegeben ist, um</translation>
    </message>
    <message>
        <source>Leads, each one way</source>
        <translation>Leitungen, je Richtung</translation>
    </message>
    <message>
        <source>Leads: %1.</source>
        <translation>Leitungen: %1.</translation>
    </message>
    <message>
        <source>Leak %1 over arm %2</source>
        <translation>Nebenschluss %1 über Zweig %2</translation>
    </message>
    <message>
        <source>Leak %1 to the structure from arm %2, %3</source>
        <translation>Nebenschluss %1 zur Struktur von Zweig %2, %3</translation>
    </message>
    <message>
        <source>Leak from %1 to the structure</source>
        <translation>Nebenschluss zur Struktur: %1</translation>
    </message>
    <message>
        <source>Leak from arm %1 to the structure</source>
        <translation>Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>Leak over %1</source>
        <translation>Nebenschluss über %1</translation>
    </message>
    <message>
        <source>Leak over arm</source>
        <translation>Nebenschluss über Zweig</translation>
    </message>
    <message>
        <source>Leak over arm %1</source>
        <translation>Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>Leak to structure of arm %1</source>
        <translation>Nebenschluss zur Struktur von Zweig %1</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Nebenschlüsse</translation>
    </message>
    <message>
        <source>Leaks at, 0 to 1 along arm %1</source>
        <translation>Nebenschluss bei, 0 bis 1 entlang Zweig %1</translation>
    </message>
    <message>
        <source>Least probability</source>
        <translation>Mindestwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Least probability of conformity</source>
        <translation>Mindestwahrscheinlichkeit der Konformität</translation>
    </message>
    <message>
        <source>Leave recordings alone until watching goes on</source>
        <translation>Aufzeichnungen liegen lassen, bis weiter beobachtet wird</translation>
    </message>
    <message>
        <source>Left out, since the output does not move or cannot be predicted: %1.</source>
        <translation>Ausgelassen, da sich das Signal nicht ändert oder nicht vorherzusagen ist: %1.</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Länge, einfach</translation>
    </message>
    <message>
        <source>Letters of the usual size</source>
        <translation>Buchstaben üblicher Größe</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Stufenwerte</translation>
    </message>
    <message>
        <source>Levels a side</source>
        <translation>Stufenwerte je Seite</translation>
    </message>
    <message>
        <source>Levels for %1; the step of a level can be changed by hand</source>
        <translation>Plateaus für %1; die Stufe eines Plateaus lässt sich von Hand ändern</translation>
    </message>
    <message>
        <source>Levels found</source>
        <translation>Gefundene Plateaus</translation>
    </message>
    <message>
        <source>Levels of the chosen set</source>
        <translation>Stufenwerte des gewählten Satzes</translation>
    </message>
    <message>
        <source>Levels wanted</source>
        <translation>Gewünschte Stufenwerte</translation>
    </message>
    <message>
        <source>Levels, %1</source>
        <translation>Stufenwerte, %1</translation>
    </message>
    <message>
        <source>Libraries the program is made with</source>
        <translation>Bibliotheken, mit denen das Programm gemacht ist</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>Licences are named as the SPDX list names them. Qt Charts makes the program as a whole one under version 3 of the General Public License.</source>
        <translation>Lizenzen heißen, wie die SPDX-Liste sie nennt. Qt Charts macht das Programm als Ganzes zu einem unter Version 3 der General Public License.</translation>
    </message>
    <message>
        <source>Lies between</source>
        <translation>Liegt zwischen</translation>
    </message>
    <message>
        <source>Lies there already: %1</source>
        <translation>Liegt schon dort: %1</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limit of %1</source>
        <translation>Grenzwert von %1</translation>
    </message>
    <message>
        <source>Limit of zero return</source>
        <translation>Grenzwert der Nullpunktrückkehr</translation>
    </message>
    <message>
        <source>Limit ±
[%1]</source>
        <translation>Grenze ±
[%1]</translation>
    </message>
    <message>
        <source>Limit, of expected reading</source>
        <translation>Grenzwert, vom erwarteten Messwert</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>Limits (electrical chain)</source>
        <translation>Grenzwerte (elektrische Messkette)</translation>
    </message>
    <message>
        <source>Limits, of figures of merit too, and decision rule</source>
        <translation>Grenzwerte, auch der Kennwerte, und Entscheidungsregel</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Line that nonlinearity and combined error are measured from</source>
        <translation>Gerade, von der Linearitätsabweichung und zusammengesetzter Fehler gemessen werden</translation>
    </message>
    <message>
        <source>Linear interval confirmed to one digit of u: %1, at most %2 is allowed.</source>
        <translation>Lineares Intervall auf eine Stelle von u bestätigt: %1, höchstens %2 ist zulässig.</translation>
    </message>
    <message>
        <source>Linear interval not confirmed to one digit of u: %1, more than %2. Use the trials&apos; interval.</source>
        <translation>Lineares Intervall nicht auf eine Stelle von u bestätigt: %1, mehr als %2. Das Intervall der Versuche verwenden.</translation>
    </message>
    <message>
        <source>Linearised, then zero subtracted</source>
        <translation>Linearisiert, dann Null abgezogen</translation>
    </message>
    <message>
        <source>List View</source>
        <translation>Listenansicht</translation>
    </message>
    <message>
        <source>Lists of resistors (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Widerstandslisten (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Load the file on disk</source>
        <translation>Datei auf der Platte laden</translation>
    </message>
    <message>
        <source>Load the one on disk</source>
        <translation>Die auf der Platte laden</translation>
    </message>
    <message>
        <source>Loaded %1 as it is on the disk. Undo brings back what was here.</source>
        <translation>%1 geladen, wie es auf der Platte ist. Rückgängig bringt zurück, was hier war.</translation>
    </message>
    <message>
        <source>Long work</source>
        <translation>Lange Arbeit</translation>
    </message>
    <message>
        <source>Longest row of right answers: %1.</source>
        <translation>Längste Folge richtiger Antworten: %1.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Nochmals ansehen</translation>
    </message>
    <message>
        <source>Look at %1, all steps are read</source>
        <translation>%1 ansehen, alle Stufen sind abgelesen</translation>
    </message>
    <message>
        <source>Look in:</source>
        <translation>Suchen in:</translation>
    </message>
    <message>
        <source>Looking for what changed …</source>
        <translation>Es wird gesucht, was sich geändert hat …</translation>
    </message>
    <message>
        <source>Looking for what may be wrong …</source>
        <translation>Es wird gesucht, was nicht stimmen könnte …</translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>MATLAB file</source>
        <translation>MATLAB-Datei</translation>
    </message>
    <message>
        <source>Made by</source>
        <translation>Durchgeführt von</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>Mains frequency</source>
        <translation>Netzfrequenz</translation>
    </message>
    <message>
        <source>Maker and type</source>
        <translation>Hersteller und Typ</translation>
    </message>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>Margin of change</source>
        <translation>Änderungstoleranz</translation>
    </message>
    <message>
        <source>Margin of the zero</source>
        <translation>Nullpunkttoleranz</translation>
    </message>
    <message>
        <source>Margin ±</source>
        <translation>Toleranz ±</translation>
    </message>
    <message>
        <source>Mark before</source>
        <translation>Marke davor</translation>
    </message>
    <message>
        <source>Match again</source>
        <translation>Neu zuordnen</translation>
    </message>
    <message>
        <source>Match spans again</source>
        <translation>Abschnitte neu zuordnen</translation>
    </message>
    <message>
        <source>Match with the plan</source>
        <translation>Abgleich mit dem Plan</translation>
    </message>
    <message>
        <source>Matrices</source>
        <translation>Matrizen</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source>Mean miss, %1</source>
        <translation>Mittlerer Fehlbetrag, %1</translation>
    </message>
    <message>
        <source>Mean square of the deviations, each as a share of its tolerance</source>
        <translation>Mittleres Quadrat der Abweichungen, jede als Anteil ihrer Toleranz</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured against simulated, and what is off</source>
        <translation>Gemessen über simuliert, und was abweicht</translation>
    </message>
    <message>
        <source>Measured change</source>
        <translation>Gemessene Änderung</translation>
    </message>
    <message>
        <source>Measured less expected change, both from the zero step</source>
        <translation>Gemessene minus erwartete Änderung, beide ab der Nullstufe</translation>
    </message>
    <message>
        <source>Measured over expected, of the latest check, with its standard uncertainty where readings scatter more than stated; &quot;no line&quot; when they lie along none</source>
        <translation>Gemessen durch erwartet, der letzten Prüfung, mit der Standardunsicherheit, wo die Messwerte mehr streuen als angegeben; „keine Gerade“, wenn sie auf keiner liegen</translation>
    </message>
    <message>
        <source>Measured span less the expected one, as a share of the expected span.</source>
        <translation>Gemessene Spanne minus erwartete, als Anteil der erwarteten Spanne.</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Measuring input</source>
        <translation>Messeingang</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menüs</translation>
    </message>
    <message>
        <source>Misfit</source>
        <translation>Restabw.</translation>
    </message>
    <message>
        <source>Miss, %1</source>
        <translation>Fehlbetrag, %1</translation>
    </message>
    <message>
        <source>More than %1 steps are not laid out: choose fewer repeats.</source>
        <translation>Mehr als %1 Stufen werden nicht angelegt: weniger Wiederholungen wählen.</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Move jumper</source>
        <translation>Steckbrücke verschieben</translation>
    </message>
    <message>
        <source>Move leak</source>
        <translation>Nebenschluss versetzen</translation>
    </message>
    <message>
        <source>Move pin</source>
        <translation>Stift verschieben</translation>
    </message>
    <message>
        <source>Move shunt</source>
        <translation>Shunt versetzen</translation>
    </message>
    <message>
        <source>Move span</source>
        <translation>Abschnitt verschieben</translation>
    </message>
    <message>
        <source>Move step</source>
        <translation>Stufe verschieben</translation>
    </message>
    <message>
        <source>Move step &amp;down</source>
        <translation>Stufe nach &amp;unten</translation>
    </message>
    <message>
        <source>Move step &amp;up</source>
        <translation>Stufe nach &amp;oben</translation>
    </message>
    <message>
        <source>Move the cursor</source>
        <translation>Schreibmarke bewegen</translation>
    </message>
    <message>
        <source>Move the enlarged drawing</source>
        <translation>Vergrößerte Zeichnung bewegen</translation>
    </message>
    <message>
        <source>Move the pin down</source>
        <translation>Stift nach unten</translation>
    </message>
    <message>
        <source>Move the pin up</source>
        <translation>Stift nach oben</translation>
    </message>
    <message>
        <source>Move the step down</source>
        <translation>Stufe nach unten</translation>
    </message>
    <message>
        <source>Move the step up</source>
        <translation>Stufe nach oben</translation>
    </message>
    <message>
        <source>Move wiper</source>
        <translation>Schleifer bewegen</translation>
    </message>
    <message>
        <source>Moved: %1</source>
        <translation>Verschoben: %1</translation>
    </message>
    <message>
        <source>Moving %1</source>
        <translation>%1 wird versetzt</translation>
    </message>
    <message>
        <source>Moving %1 to %2</source>
        <translation>%1 wird versetzt nach %2</translation>
    </message>
    <message>
        <source>Moving average</source>
        <translation>Gleitender Mittelwert</translation>
    </message>
    <message>
        <source>Must read</source>
        <translation>Soll zeigen</translation>
    </message>
    <message>
        <source>My Computer</source>
        <translation>Computer</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>NPY array</source>
        <translation>NPY-Feld</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the check</source>
        <translation>Name der Prüfung</translation>
    </message>
    <message>
        <source>Name of the instrument</source>
        <translation>Name des Geräts</translation>
    </message>
    <message>
        <source>Name or group holds…</source>
        <translation>Name oder Gruppe enthält…</translation>
    </message>
    <message>
        <source>Name, date</source>
        <translation>Name, Datum</translation>
    </message>
    <message>
        <source>Names by a pattern</source>
        <translation>Namen nach Muster</translation>
    </message>
    <message>
        <source>Names in line</source>
        <translation>Namen in Zeile</translation>
    </message>
    <message>
        <source>Negative first</source>
        <translation>Zuerst negativ</translation>
    </message>
    <message>
        <source>Negative only</source>
        <translation>Nur negativ</translation>
    </message>
    <message>
        <source>Neither filter nor sample rate is stated: see Acquisition in the set-up.</source>
        <translation>Weder Filter noch Abtastrate ist angegeben: siehe Erfassung in der Einrichtung.</translation>
    </message>
    <message>
        <source>Never narrower than</source>
        <translation>Nie schmaler als</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New channels: %1</source>
        <translation>Neue Kanäle: %1</translation>
    </message>
    <message>
        <source>New parts</source>
        <translation>Neue Teile</translation>
    </message>
    <message>
        <source>New shunt: %1</source>
        <translation>Neuer Shunt: %1</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Nächste Marke</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>No balance network</source>
        <translation>Kein Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>No channel has levels that can be taken.</source>
        <translation>Kein Kanal hat Plateaus, die sich übernehmen lassen.</translation>
    </message>
    <message>
        <source>No channel in this document.</source>
        <translation>Kein Kanal in diesem Dokument.</translation>
    </message>
    <message>
        <source>No channel yet.</source>
        <translation>Noch kein Kanal.</translation>
    </message>
    <message>
        <source>No channel yet.
Add a channel, and its bridge, leads and shunts are drawn here.</source>
        <translation>Noch kein Kanal.
Nach dem Anlegen eines Kanals werden hier Brücke, Leitungen und Shunts gezeichnet.</translation>
    </message>
    <message>
        <source>No channel yet. A channel is one bridge on one amplifier input.</source>
        <translation>Noch kein Kanal. Ein Kanal ist eine Brücke an einem Verstärkereingang.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to have its plan reviewed.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um seinen Plan durchzusehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to plan its wiring here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier seine Verdrahtung zu planen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its budget here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier sein Budget zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its outcome here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier sein Ergebnis zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its working here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier seinen Rechenweg zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see what an ohmmeter must read at its wiring.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um zu sehen, was ein Ohmmeter an seiner Verdrahtung zeigen muss.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to try faults out on it.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um Fehler an ihm auszuprobieren.</translation>
    </message>
    <message>
        <source>No channel yet. What its readings depend on is listed here.</source>
        <translation>Noch kein Kanal. Wovon seine Messwerte abhängen, steht hier.</translation>
    </message>
    <message>
        <source>No check is chosen. Ctrl+R takes readings from a recording.</source>
        <translation>Keine Prüfung gewählt. Strg+R übernimmt Messwerte aus einer Aufzeichnung.</translation>
    </message>
    <message>
        <source>No check yet. Add a check and enter its readings to see what may be wrong.</source>
        <translation>Noch keine Prüfung. Eine Prüfung anlegen und ihre Messwerte eintragen, um zu sehen, was nicht stimmen könnte.</translation>
    </message>
    <message>
        <source>No check yet. Add a check and enter its readings; the plan is drawn meanwhile.</source>
        <translation>Noch keine Prüfung. Eine Prüfung anlegen und ihre Messwerte eintragen; bis dahin wird der Plan gezeichnet.</translation>
    </message>
    <message>
        <source>No check yet. It takes two checks of the channel to see what changed.</source>
        <translation>Noch keine Prüfung. Um zu sehen, was sich geändert hat, braucht es zwei Prüfungen des Kanals.</translation>
    </message>
    <message>
        <source>No column is named like a channel: choose a channel&apos;s column in the table.</source>
        <translation>Keine Spalte heißt wie ein Kanal: die Spalte eines Kanals in der Tabelle wählen.</translation>
    </message>
    <message>
        <source>No command has all these words.</source>
        <translation>Kein Befehl hat alle diese Wörter.</translation>
    </message>
    <message>
        <source>No filter</source>
        <translation>Kein Filter</translation>
    </message>
    <message>
        <source>No held level was found at the cursor. Shift and drag draws a span by hand.</source>
        <translation>Am Cursor wurde kein gehaltenes Plateau gefunden. Umschalt und Ziehen zeichnet einen Abschnitt von Hand.</translation>
    </message>
    <message>
        <source>No history yet: it begins with the next saving.</source>
        <translation>Noch kein Verlauf: Er beginnt mit dem nächsten Speichern.</translation>
    </message>
    <message>
        <source>No jumpers yet.</source>
        <translation>Noch keine Steckbrücken.</translation>
    </message>
    <message>
        <source>No linearisation</source>
        <translation>Keine Linearisierung</translation>
    </message>
    <message>
        <source>No netlist: %1</source>
        <translation>Keine Netzliste: %1</translation>
    </message>
    <message>
        <source>No pins yet.
Add the pins of your connectors and say what each of them leads to,
or take the usual pins as a start and rename them.</source>
        <translation>Noch keine Stifte.
Die Stifte der Stecker anlegen und angeben, wohin jeder führt,
oder mit den üblichen Stiften beginnen und sie umbenennen.</translation>
    </message>
    <message>
        <source>No readings yet. Type what the ohmmeter shows into Measured; the faults that fit are ranked here.</source>
        <translation>Noch keine Messwerte. Eintippen, was das Ohmmeter bei „Gemessen“ zeigt; die passenden Fehler werden hier gereiht.</translation>
    </message>
    <message>
        <source>No remarks. Choose a step of a check and add one to it.</source>
        <translation>Keine Anmerkungen. Eine Stufe einer Prüfung wählen und eine hinzufügen.</translation>
    </message>
    <message>
        <source>No report: %1</source>
        <translation>Kein Bericht: %1</translation>
    </message>
    <message>
        <source>No sheet: %1</source>
        <translation>Kein Blatt: %1</translation>
    </message>
    <message>
        <source>No shunt is made of a part of the stock with another value or due date.</source>
        <translation>Kein Shunt ist aus einem Widerstand des Bestands mit anderem Wert oder anderer Fälligkeit.</translation>
    </message>
    <message>
        <source>No shunts yet. A shunt is a resistor and the place that it is switched to.</source>
        <translation>Noch keine Shunts. Ein Shunt ist ein Widerstand und der Ort, an den er geschaltet wird.</translation>
    </message>
    <message>
        <source>No spans yet</source>
        <translation>Noch keine Abschnitte</translation>
    </message>
    <message>
        <source>No step</source>
        <translation>Keine Stufe</translation>
    </message>
    <message>
        <source>No step chosen</source>
        <translation>Keine Stufe gewählt</translation>
    </message>
    <message>
        <source>No step chosen: all shunts open</source>
        <translation>Keine Stufe gewählt: alle Shunts offen</translation>
    </message>
    <message>
        <source>No step closes %1 yet: add it to a step of the sequence.</source>
        <translation>Noch keine Stufe schließt %1: in eine Stufe des Ablaufs aufnehmen.</translation>
    </message>
    <message>
        <source>No step is chosen. Choose one in the Sequence, or with the buttons above, to see how its numbers come about.</source>
        <translation>Keine Stufe gewählt. Eine im Ablauf oder mit den Tasten oben wählen, um zu sehen, wie ihre Zahlen zustande kommen.</translation>
    </message>
    <message>
        <source>No steps yet. A sequence of steps says which shunts are closed, and how long.</source>
        <translation>Noch keine Stufen. Ein Ablauf von Stufen sagt, welche Shunts geschlossen sind und wie lange.</translation>
    </message>
    <message>
        <source>No template: %1</source>
        <translation>Keine Vorlage: %1</translation>
    </message>
    <message>
        <source>No trials yet: only the normal curve of the budget is drawn. One run serves all steps in this scope.</source>
        <translation>Noch keine Versuche: Nur die Normalkurve des Budgets ist gezeichnet. Ein Lauf dient allen Stufen dieses Bereichs.</translation>
    </message>
    <message>
        <source>No trials: %1</source>
        <translation>Keine Versuche: %1</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Nobody relies on this reading while shunts are switched</source>
        <translation>Niemand verlässt sich auf diesen Messwert, während Shunts geschaltet werden</translation>
    </message>
    <message>
        <source>Nominal resistance of the bridge, as set</source>
        <translation>Nennwiderstand der Brücke, wie eingestellt</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>None of this applies to this channel.</source>
        <translation>Nichts davon trifft auf diesen Kanal zu.</translation>
    </message>
    <message>
        <source>None was wrong.</source>
        <translation>Keine war falsch.</translation>
    </message>
    <message>
        <source>Nonlinearity</source>
        <translation>Linearitätsabweichung</translation>
    </message>
    <message>
        <source>Normal curve of the budget</source>
        <translation>Normalkurve des Budgets</translation>
    </message>
    <message>
        <source>Not compared.</source>
        <translation>Nicht verglichen.</translation>
    </message>
    <message>
        <source>Not deleted: %1</source>
        <translation>Nicht gelöscht: %1</translation>
    </message>
    <message>
        <source>Not everything was removed</source>
        <translation>Nicht alles wurde entfernt</translation>
    </message>
    <message>
        <source>Not exported: %1</source>
        <translation>Nicht exportiert: %1</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Nicht behalten: %1</translation>
    </message>
    <message>
        <source>Not loaded: %1</source>
        <translation>Nicht geladen: %1</translation>
    </message>
    <message>
        <source>Not now.</source>
        <translation>Nicht jetzt.</translation>
    </message>
    <message>
        <source>Not opened: %1</source>
        <translation>Nicht geöffnet: %1</translation>
    </message>
    <message>
        <source>Not possible: arm %1 has such a leak already; two in parallel are entered as one resistance.</source>
        <translation>Nicht möglich: Zweig %1 hat schon einen solchen Nebenschluss; zwei parallele werden als ein Widerstand eingetragen.</translation>
    </message>
    <message>
        <source>Not possible: both ends would be on one point (%1), so the shunt would do nothing.</source>
        <translation>Nicht möglich: Beide Enden lägen auf einem Punkt (%1), der Shunt bewirkte also nichts.</translation>
    </message>
    <message>
        <source>Not possible: no lead is at %1, so there is nothing to exchange this one with.</source>
        <translation>Nicht möglich: An %1 ist keine Leitung, mit der diese zu tauschen wäre.</translation>
    </message>
    <message>
        <source>Not printed: %1</source>
        <translation>Nicht gedruckt: %1</translation>
    </message>
    <message>
        <source>Not printed: the printer did not start.</source>
        <translation>Nicht gedruckt: Der Drucker ist nicht angelaufen.</translation>
    </message>
    <message>
        <source>Not printed: the printer takes no pages. Look whether it is there and ready.</source>
        <translation>Nicht gedruckt: Der Drucker nimmt keine Seiten an. Nachsehen, ob er da und bereit ist.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Nicht abgelesen</translation>
    </message>
    <message>
        <source>Not read (%1)</source>
        <translation>Nicht gelesen (%1)</translation>
    </message>
    <message>
        <source>Not read: %1</source>
        <translation>Nicht gelesen: %1</translation>
    </message>
    <message>
        <source>Not renamed: %1</source>
        <translation>Nicht umbenannt: %1</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>Not saved: %1 is open for writing elsewhere, %2. Choose another name.</source>
        <translation>Nicht gespeichert: %1 ist anderswo zum Schreiben offen, %2. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Not taken: %1.</source>
        <translation>Nicht übernommen: %1.</translation>
    </message>
    <message>
        <source>Not taken: %1. Documents (.%2), recordings, lists of resistors and lists of channels can be dropped here.</source>
        <translation>Nicht genommen: %1. Dokumente (.%2), Aufzeichnungen, Listen von Widerständen und Listen von Kanälen lassen sich hier ablegen.</translation>
    </message>
    <message>
        <source>Not taken: one document can be open at a time.</source>
        <translation>Nicht genommen: Nur ein Dokument kann offen sein.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note at step %1</source>
        <translation>Notiz bei Stufe %1</translation>
    </message>
    <message>
        <source>Nothing found. Try fewer or other words.</source>
        <translation>Nichts gefunden. Weniger oder andere Wörter versuchen.</translation>
    </message>
    <message>
        <source>Nothing found: range, uncertainty, zeros, levels, times, heat, polarity, leads and resistors of %1 look as they should. What nobody entered (a range, a grid&apos;s area, a rating) is not looked at.</source>
        <translation>Nichts gefunden: Bereich, Unsicherheit, Nullstufen, Stufenwerte, Zeiten, Wärme, Polarität, Leitungen und Widerstände von %1 sind, wie sie sein sollen. Was niemand eingetragen hat (ein Bereich, eine Gitterfläche, eine Belastbarkeit), wird nicht geprüft.</translation>
    </message>
    <message>
        <source>Nothing is stated for this input. Assumed: %1.</source>
        <translation>Zu dieser Eingangsgröße ist nichts angegeben. Angenommen: %1.</translation>
    </message>
    <message>
        <source>Nothing is tried out yet. Choose a fault or a change under Try out to see the readings of the plan with and without it. The document does not change.</source>
        <translation>Noch wird nichts ausprobiert. Unter „Ausprobieren“ einen Fehler oder eine Änderung wählen, um die Messwerte des Plans mit und ohne zu sehen. Das Dokument ändert sich nicht.</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>Nichts wird beobachtet.</translation>
    </message>
    <message>
        <source>Nothing is wrong: every shunt lies where the plan says once its jumpers are laid.</source>
        <translation>Alles in Ordnung: Mit gelegten Steckbrücken liegt jeder Shunt dort, wo der Plan es sagt.</translation>
    </message>
    <message>
        <source>Nothing moves or fades by itself: currents shown as dots stand still, hints go at once.</source>
        <translation>Nichts bewegt sich oder verblasst von selbst: Als Punkte gezeigte Ströme stehen still, Hinweise verschwinden sofort.</translation>
    </message>
    <message>
        <source>Nothing that counts: only how the file is written, or its history.</source>
        <translation>Nichts von Belang: nur, wie die Datei geschrieben ist, oder ihr Verlauf.</translation>
    </message>
    <message>
        <source>Nothing to check yet: there are no pins.</source>
        <translation>Noch nichts zu prüfen: Es gibt keine Stifte.</translation>
    </message>
    <message>
        <source>Nothing to edit</source>
        <translation>Nichts zu bearbeiten</translation>
    </message>
    <message>
        <source>Nothing was added</source>
        <translation>Nichts wurde angelegt</translation>
    </message>
    <message>
        <source>Nothing was aligned</source>
        <translation>Nichts wurde angeglichen</translation>
    </message>
    <message>
        <source>Nothing was done yet that could be undone.</source>
        <translation>Noch nichts wurde getan, was sich rückgängig machen ließe.</translation>
    </message>
    <message>
        <source>Nothing was duplicated</source>
        <translation>Nichts wurde verdoppelt</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Nichts wurde gefunden.</translation>
    </message>
    <message>
        <source>Nothing was moved</source>
        <translation>Nichts wurde versetzt</translation>
    </message>
    <message>
        <source>Nothing was removed</source>
        <translation>Nichts wurde entfernt</translation>
    </message>
    <message>
        <source>Nothing was undone that could be done again.</source>
        <translation>Nichts wurde rückgängig gemacht, was sich wiederholen ließe.</translation>
    </message>
    <message>
        <source>Notices on the desktop</source>
        <translation>Hinweise der Arbeitsumgebung</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Number and label</source>
        <translation>Nummer und Bezeichnung</translation>
    </message>
    <message>
        <source>Number of questions</source>
        <translation>Anzahl der Aufgaben</translation>
    </message>
    <message>
        <source>Numbers and days as that language writes them</source>
        <translation>Zahlen und Tage, wie diese Sprache sie schreibt</translation>
    </message>
    <message>
        <source>Numbers from line</source>
        <translation>Zahlen ab Zeile</translation>
    </message>
    <message>
        <source>Numbers of the step</source>
        <translation>Zahlen der Stufe</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Of each channel</source>
        <translation>Von jedem Kanal</translation>
    </message>
    <message>
        <source>Of each wire in use, sense leads among them.</source>
        <translation>Jeder benutzten Ader, Fühlerleitungen eingeschlossen.</translation>
    </message>
    <message>
        <source>Of expected reading</source>
        <translation>Vom erwarteten Messwert</translation>
    </message>
    <message>
        <source>Of gain</source>
        <translation>Der Verstärkung</translation>
    </message>
    <message>
        <source>Of its checks</source>
        <translation>Seiner Prüfungen</translation>
    </message>
    <message>
        <source>Of the expected reading: arms, leads, shunts, amplifier and excitation, not the gauge factor. Decides pass or fail.</source>
        <translation>Vom erwarteten Messwert: Zweige, Leitungen, Shunts, Verstärker und Speisung, nicht der k-Faktor. Entscheidet über bestanden oder nicht.</translation>
    </message>
    <message>
        <source>Of the latest check against the one before it</source>
        <translation>Der letzten Prüfung gegenüber der davor</translation>
    </message>
    <message>
        <source>Of the latest check; sorted by it the worst come first</source>
        <translation>Der letzten Prüfung; danach sortiert kommen die schlechtesten zuerst</translation>
    </message>
    <message>
        <source>Of the simulated load, as read: the chain and the rated output. No verdict depends on it.</source>
        <translation>Von der simulierten Last, wie abgelesen: die Messkette und der Nennkennwert. Kein Urteil hängt davon ab.</translation>
    </message>
    <message>
        <source>Of the simulated strain, as read: the chain, gauge factor and temperature. No verdict depends on it.</source>
        <translation>Von der simulierten Dehnung, wie abgelesen: die Messkette, k-Faktor und Temperatur. Kein Urteil hängt davon ab.</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Offers it again when the program starts the next time</source>
        <translation>Bietet es beim nächsten Start des Programms wieder an</translation>
    </message>
    <message>
        <source>Ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>Ohmmeter ±</source>
        <translation>Ohmmeter ±</translation>
    </message>
    <message>
        <source>One channel is one bridge on one amplifier input. Add makes one.</source>
        <translation>Ein Kanal ist eine Brücke an einem Verstärkereingang. Hinzufügen legt einen an.</translation>
    </message>
    <message>
        <source>One channel is one bridge on one amplifier input. The demo has seven invented ones, to be tried out without harm; it replaces an empty document.</source>
        <translation>Ein Kanal ist eine Brücke an einem Verstärkereingang. Die Demo hat sieben erfundene, die sich ohne Schaden ausprobieren lassen; sie ersetzt ein leeres Dokument.</translation>
    </message>
    <message>
        <source>One fewer</source>
        <translation>Eins weniger</translation>
    </message>
    <message>
        <source>One file that a logger is adding to</source>
        <translation>Eine Datei, in die ein Logger noch schreibt</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Eins mehr</translation>
    </message>
    <message>
        <source>One more step: %1</source>
        <translation>Eine weitere Stufe: %1</translation>
    </message>
    <message>
        <source>One page for a browser (HTML)</source>
        <translation>Eine Seite für den Browser (HTML)</translation>
    </message>
    <message>
        <source>One part of the span would have no number in it.</source>
        <translation>In einem Teil des Abschnitts wäre keine Zahl.</translation>
    </message>
    <message>
        <source>Only &amp;Bridge</source>
        <translation>Nur &amp;Brücke</translation>
    </message>
    <message>
        <source>Only &amp;Outcome</source>
        <translation>Nur &amp;Ergebnis</translation>
    </message>
    <message>
        <source>Only &amp;Recording</source>
        <translation>Nur Auf&amp;zeichnung</translation>
    </message>
    <message>
        <source>Only &amp;Sequence</source>
        <translation>Nur Ablau&amp;f</translation>
    </message>
    <message>
        <source>Only B&amp;udget</source>
        <translation>Nur B&amp;udget</translation>
    </message>
    <message>
        <source>Only channels that are &amp;not ticked</source>
        <translation>Nur n&amp;icht angehakte Kanäle</translation>
    </message>
    <message>
        <source>Only files whose name fits, such as *.csv; several separated by blanks</source>
        <translation>Nur Dateien, deren Name passt, etwa *.csv; mehrere durch Leerzeichen getrennt</translation>
    </message>
    <message>
        <source>Only its place can do this: go there and press the keys.</source>
        <translation>Das kann nur sein Ort: dorthin gehen und die Tasten drücken.</translation>
    </message>
    <message>
        <source>Only one check yet. Repeat the sequence as a second check to see what changed.</source>
        <translation>Erst eine Prüfung. Den Ablauf als zweite Prüfung wiederholen, um zu sehen, was sich geändert hat.</translation>
    </message>
    <message>
        <source>Only the latest check of each channel</source>
        <translation>Nur die letzte Prüfung jedes Kanals</translation>
    </message>
    <message>
        <source>Only those whose latest check is not closed</source>
        <translation>Nur die, deren letzte Prüfung nicht abgeschlossen ist</translation>
    </message>
    <message>
        <source>Only with a resistor or instrument past its due date</source>
        <translation>Nur mit überfälligem Widerstand oder Gerät</translation>
    </message>
    <message>
        <source>Only with remarks that are not settled</source>
        <translation>Nur mit unerledigten Anmerkungen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>Open &amp;read-only</source>
        <translation>Nur zum &amp;Lesen öffnen</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open a channel list</source>
        <translation>Eine Kanalliste öffnen</translation>
    </message>
    <message>
        <source>Open a list as CSV, or copy its cells in the spreadsheet and paste them here.</source>
        <translation>Eine Liste als CSV öffnen oder ihre Zellen in der Tabellenkalkulation kopieren und hier einfügen.</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Open document</source>
        <translation>Dokument öffnen</translation>
    </message>
    <message>
        <source>Open elsewhere</source>
        <translation>Anderswo offen</translation>
    </message>
    <message>
        <source>Open remark again</source>
        <translation>Anmerkung wieder öffnen</translation>
    </message>
    <message>
        <source>Open the chosen recording where every guess can be changed</source>
        <translation>Die gewählte Aufzeichnung öffnen, wo sich alles Erkannte ändern lässt</translation>
    </message>
    <message>
        <source>Open the de&amp;mo</source>
        <translation>&amp;Demo öffnen</translation>
    </message>
    <message>
        <source>Open the document %1</source>
        <translation>Dokument %1 öffnen</translation>
    </message>
    <message>
        <source>Open the document that was open last</source>
        <translation>Das zuletzt offene Dokument öffnen</translation>
    </message>
    <message>
        <source>Open the menu %1</source>
        <translation>Menü %1 öffnen</translation>
    </message>
    <message>
        <source>Open this group</source>
        <translation>Diese Gruppe aufklappen</translation>
    </message>
    <message>
        <source>Opened %1 read-only. %2</source>
        <translation>%1 nur zum Lesen geöffnet. %2</translation>
    </message>
    <message>
        <source>Opened %1.</source>
        <translation>%1 geöffnet.</translation>
    </message>
    <message>
        <source>Opens the work as unsaved changes; Undo goes back to the file</source>
        <translation>Öffnet die Arbeit als ungespeicherte Änderungen; Rückgängig führt zur Datei zurück</translation>
    </message>
    <message>
        <source>Options &lt;&lt;</source>
        <translation>Optionen &lt;&lt;</translation>
    </message>
    <message>
        <source>Options &gt;&gt;</source>
        <translation>Optionen &gt;&gt;</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordnung</translation>
    </message>
    <message>
        <source>Order no.</source>
        <translation>Folge Nr.</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>Order of the filter</source>
        <translation>Ordnung des Filters</translation>
    </message>
    <message>
        <source>Out of limits</source>
        <translation>Außerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Outcome of a shunt check</source>
        <translation>Ergebnis einer Shuntprüfung</translation>
    </message>
    <message>
        <source>Outcome: &amp;charts</source>
        <translation>Ergebnis: &amp;Kurven</translation>
    </message>
    <message>
        <source>Outcome: &amp;table</source>
        <translation>Ergebnis: &amp;Tabelle</translation>
    </message>
    <message>
        <source>Outcome: &amp;working</source>
        <translation>Ergebnis: &amp;Rechenweg</translation>
    </message>
    <message>
        <source>Outcome: all &amp;figures</source>
        <translation>Ergebnis: alle &amp;Werte</translation>
    </message>
    <message>
        <source>Outcome: c&amp;hange between checks</source>
        <translation>Ergebnis: Änderun&amp;g zwischen Prüfungen</translation>
    </message>
    <message>
        <source>Outcome: d&amp;iagnosis</source>
        <translation>Ergebnis: D&amp;iagnose</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>Output
[mV/V]</source>
        <translation>Signal
[mV/V]</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Overview of the channels</source>
        <translation>Übersicht der Kanäle</translation>
    </message>
    <message>
        <source>Own wires</source>
        <translation>Eigene Leitungen</translation>
    </message>
    <message>
        <source>P&amp;resent the view</source>
        <translation>Ansicht &amp;vorführen</translation>
    </message>
    <message>
        <source>PDF page (*.pdf)</source>
        <translation>PDF-Seite (*.pdf)</translation>
    </message>
    <message>
        <source>Packed recordings</source>
        <translation>Gepackte Aufzeichnungen</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>Page of the manual</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <source>Page of the report</source>
        <translation>Seite des Berichts</translation>
    </message>
    <message>
        <source>Page shown</source>
        <translation>Gezeigte Seite</translation>
    </message>
    <message>
        <source>Page up and page down turn the pages, plus and minus zoom</source>
        <translation>Bild auf und Bild ab blättern, Plus und Minus zoomen</translation>
    </message>
    <message>
        <source>Pages of the bridge</source>
        <translation>Seiten der Brücke</translation>
    </message>
    <message>
        <source>Pages of the outcome</source>
        <translation>Seiten des Ergebnisses</translation>
    </message>
    <message>
        <source>Pages to print and sign (PDF)</source>
        <translation>Seiten zum Drucken und Unterschreiben (PDF)</translation>
    </message>
    <message>
        <source>Parent Directory</source>
        <translation>Übergeordneter Ordner</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part of the combined variance, 100 % in all; negative where a correlation takes some away</source>
        <translation>Anteil an der kombinierten Varianz, zusammen 100 %; negativ, wo eine Korrelation etwas wegnimmt</translation>
    </message>
    <message>
        <source>Part of the page</source>
        <translation>Teil der Seite</translation>
    </message>
    <message>
        <source>Parts of one kind are edited together; select such ones alone.</source>
        <translation>Teile einer Art werden gemeinsam bearbeitet; nur solche auswählen.</translation>
    </message>
    <message>
        <source>Parts of this channel:</source>
        <translation>Teile dieses Kanals:</translation>
    </message>
    <message>
        <source>Passes up to limit less guard band, fails beyond limit plus guard band, cannot tell between.</source>
        <translation>Besteht bis Grenzwert minus Schutzabstand, besteht nicht über Grenzwert plus Schutzabstand, dazwischen nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Passes when the true deviation is within the limit with at least this probability, fails when it is beyond with at least this probability, else cannot tell.</source>
        <translation>Besteht, wenn die wahre Abweichung mindestens mit dieser Wahrscheinlichkeit innerhalb des Grenzwerts liegt, besteht nicht, wenn sie mindestens mit dieser außerhalb liegt, sonst nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>Zellen einfügen</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Paused: what arrives now is taken up when watching goes on.</source>
        <translation>Angehalten: Was jetzt eintrifft, wird übernommen, sobald weiter beobachtet wird.</translation>
    </message>
    <message>
        <source>Percent of the misfit of the healthy channel that this cause takes away</source>
        <translation>Prozent der Restabweichung des fehlerfreien Kanals, die diese Ursache beseitigt</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Picture of the polarity map</source>
        <translation>Bild der Polaritätskarte</translation>
    </message>
    <message>
        <source>Pictures as tables</source>
        <translation>Bilder als Tabellen</translation>
    </message>
    <message>
        <source>Pictures made of lines</source>
        <translation>Bilder aus Linien</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>Pins; jumpers go with the plan</source>
        <translation>Stifte; Steckbrücken gehen mit dem Plan</translation>
    </message>
    <message>
        <source>Place along the arm, 0 to 1</source>
        <translation>Ort entlang des Zweigs, 0 bis 1</translation>
    </message>
    <message>
        <source>Place of the leak to structure along arm %1, 0 at its begin, 1 at its end</source>
        <translation>Ort des Nebenschlusses zur Struktur entlang Zweig %1, 0 am Anfang, 1 am Ende</translation>
    </message>
    <message>
        <source>Place of the wiper, 0 to 1</source>
        <translation>Ort des Schleifers, 0 bis 1</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Places found in the manual</source>
        <translation>Im Handbuch gefundene Stellen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan only: choose a check to see its outcome.</source>
        <translation>Nur Plan: eine Prüfung wählen, um ihr Ergebnis zu sehen.</translation>
    </message>
    <message>
        <source>Plan only: choose a check to see what may be wrong with it.</source>
        <translation>Nur Plan: eine Prüfung wählen, um zu sehen, was nicht stimmen könnte.</translation>
    </message>
    <message>
        <source>Plans and checks shunt calibrations of strain-gauge bridges.</source>
        <translation>Plant und prüft Shuntkalibrierungen von DMS-Brücken.</translation>
    </message>
    <message>
        <source>Point at a mark, or walk the steps with ← and →, to read its numbers.</source>
        <translation>Auf eine Marke zeigen oder mit ← und → durch die Stufen gehen, um die Zahlen zu lesen.</translation>
    </message>
    <message>
        <source>Point at a place to see what the shunt would do there; click it or press Enter to put it there.</source>
        <translation>Auf einen Ort zeigen, um zu sehen, was der Shunt dort bewirkte; Klick oder Eingabe setzt ihn dorthin.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio</source>
        <translation>Querdehnzahl</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Polarity map</source>
        <translation>Polaritätskarte</translation>
    </message>
    <message>
        <source>Polarity map, a row and a column for each point</source>
        <translation>Polaritätskarte, je Punkt eine Zeile und eine Spalte</translation>
    </message>
    <message>
        <source>Positions</source>
        <translation>Stellungen</translation>
    </message>
    <message>
        <source>Positions times step of each dial, the greatest step first: 10x10k 10x1k 10x100</source>
        <translation>Stellungen mal Schrittweite jedes Drehschalters, die größte Schrittweite zuerst: 10x10k 10x1k 10x100</translation>
    </message>
    <message>
        <source>Positive first</source>
        <translation>Zuerst positiv</translation>
    </message>
    <message>
        <source>Positive only</source>
        <translation>Nur positiv</translation>
    </message>
    <message>
        <source>Possible causes, the likeliest first</source>
        <translation>Mögliche Ursachen, die wahrscheinlichste zuerst</translation>
    </message>
    <message>
        <source>Potentiometer</source>
        <translation>Potentiometer</translation>
    </message>
    <message>
        <source>Potentiometer of the balance network</source>
        <translation>Potentiometer des Abgleichnetzwerks</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Practice, answers · %1 · seed %2</source>
        <translation>Übung, Lösungen · %1 · Startzahl %2</translation>
    </message>
    <message>
        <source>Practice, questions · %1 · seed %2</source>
        <translation>Übung, Aufgaben · %1 · Startzahl %2</translation>
    </message>
    <message>
        <source>Prediction band</source>
        <translation>Vorhersageband</translation>
    </message>
    <message>
        <source>Preferenc&amp;es</source>
        <translation>Ei&amp;nstellungen</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Preferred values</source>
        <translation>Normwerte</translation>
    </message>
    <message>
        <source>Preferred values to buy</source>
        <translation>Zu kaufende Normwerte</translation>
    </message>
    <message>
        <source>Preferred values to buy (IEC 60063)</source>
        <translation>Zu kaufende Normwerte (IEC 60063)</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>Erstellt von</translation>
    </message>
    <message>
        <source>Presentation</source>
        <translation>Vorführung</translation>
    </message>
    <message>
        <source>Presented view</source>
        <translation>Vorgeführte Ansicht</translation>
    </message>
    <message>
        <source>Preview of the pages</source>
        <translation>Seitenvorschau</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>Vorherige Seite</translation>
    </message>
    <message>
        <source>Pri&amp;nt sheets</source>
        <translation>B&amp;lätter drucken</translation>
    </message>
    <message>
        <source>Pri&amp;nt…</source>
        <translation>Dru&amp;cken…</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation>Blätter drucken</translation>
    </message>
    <message>
        <source>Print sheet…</source>
        <translation>Blatt drucken…</translation>
    </message>
    <message>
        <source>Printed the bridge.</source>
        <translation>Brücke gedruckt.</translation>
    </message>
    <message>
        <source>Printing</source>
        <translation>Wird gedruckt</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Program %1</source>
        <translation>Programm %1</translation>
    </message>
    <message>
        <source>Progress of reading</source>
        <translation>Fortschritt des Lesens</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>Fortschritt der Suche</translation>
    </message>
    <message>
        <source>Progress of the trials</source>
        <translation>Fortschritt der Versuche</translation>
    </message>
    <message>
        <source>Proven best of %1 sets: no other misses less than the first, %2.</source>
        <translation>Erwiesen der beste von %1 Sätzen: Kein anderer verfehlt weniger als der erste, %2.</translation>
    </message>
    <message>
        <source>Put pins for everything that the channel needs in place of the list, to be renamed</source>
        <translation>Statt der Liste Stifte für alles setzen, was der Kanal braucht, zum Umbenennen</translation>
    </message>
    <message>
        <source>Put the cursor on the level first.</source>
        <translation>Den Cursor zuerst auf das Plateau setzen.</translation>
    </message>
    <message>
        <source>Quality</source>
        <translation>Güte</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Aufgabe %1 von %2</translation>
    </message>
    <message>
        <source>Question %1 · %2</source>
        <translation>Aufgabe %1 · %2</translation>
    </message>
    <message>
        <source>Questions answered</source>
        <translation>Beantwortete Aufgaben</translation>
    </message>
    <message>
        <source>Questions, right and wrong</source>
        <translation>Aufgaben, richtig und falsch</translation>
    </message>
    <message>
        <source>R&amp;eport…</source>
        <translation>&amp;Bericht…</translation>
    </message>
    <message>
        <source>Random order (drift)</source>
        <translation>Zufällige Folge (Drift)</translation>
    </message>
    <message>
        <source>Range ±</source>
        <translation>Bereich ±</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Rated output</source>
        <translation>Nennkennwert</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Belastbarkeit</translation>
    </message>
    <message>
        <source>Ratiometric</source>
        <translation>Ratiometrisch</translation>
    </message>
    <message>
        <source>Re&amp;move check</source>
        <translation>Prüfung &amp;entfernen</translation>
    </message>
    <message>
        <source>Re&amp;port…</source>
        <translation>Be&amp;richt…</translation>
    </message>
    <message>
        <source>Re&amp;turn with a remark…</source>
        <translation>Mit Anmerkung &amp;zurückgeben…</translation>
    </message>
    <message>
        <source>Re&amp;view of the plan</source>
        <translation>&amp;Durchsicht des Plans</translation>
    </message>
    <message>
        <source>Reached, %1</source>
        <translation>Erreicht, %1</translation>
    </message>
    <message>
        <source>Read &amp;again</source>
        <translation>Nochmals &amp;lesen</translation>
    </message>
    <message>
        <source>Read &amp;it as</source>
        <translation>Lese&amp;n als</translation>
    </message>
    <message>
        <source>Read a list of resistors from a text file (CSV)</source>
        <translation>Eine Widerstandsliste aus einer Textdatei (CSV) lesen</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Nochmals lesen</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Nochmals lesen</translation>
    </message>
    <message>
        <source>Read it anyway</source>
        <translation>Trotzdem lesen</translation>
    </message>
    <message>
        <source>Read it as</source>
        <translation>Lesen als</translation>
    </message>
    <message>
        <source>Read now</source>
        <translation>Jetzt lesen</translation>
    </message>
    <message>
        <source>Read the &amp;cautions</source>
        <translation>&amp;Sicherheitshinweise lesen</translation>
    </message>
    <message>
        <source>Read the chosen recording once more</source>
        <translation>Die gewählte Aufzeichnung noch einmal lesen</translation>
    </message>
    <message>
        <source>Read the recording %1</source>
        <translation>Aufzeichnung %1 lesen</translation>
    </message>
    <message>
        <source>Read-only</source>
        <translation>Nur lesen</translation>
    </message>
    <message>
        <source>Readin&amp;g</source>
        <translation>&amp;Messwert</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Reading
[%1]</source>
        <translation>Messwert
[%1]</translation>
    </message>
    <message>
        <source>Reading %1 … %2 %</source>
        <translation>Lesen von %1 … %2 %</translation>
    </message>
    <message>
        <source>Reading in %1</source>
        <translation>Messwert in %1</translation>
    </message>
    <message>
        <source>Reading in %1, and how you found it:</source>
        <translation>Messwert in %1 und der Weg dorthin:</translation>
    </message>
    <message>
        <source>Reading of the earlier check, from its own zero</source>
        <translation>Messwert der früheren Prüfung, ab ihrer eigenen Null</translation>
    </message>
    <message>
        <source>Reading of the later check, from its own zero</source>
        <translation>Messwert der späteren Prüfung, ab ihrer eigenen Null</translation>
    </message>
    <message>
        <source>Reading was stopped: nothing is taken from this file. &quot;Read again&quot; starts anew.</source>
        <translation>Das Lesen wurde abgebrochen: Aus dieser Datei wird nichts übernommen. „Nochmals lesen“ beginnt von vorn.</translation>
    </message>
    <message>
        <source>Reading with it, of an instrument zeroed after it came</source>
        <translation>Messwert damit, bei einem Gerät, das erst danach auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Reading with it, of an instrument zeroed before it came</source>
        <translation>Messwert damit, bei einem Gerät, das vorher auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Reading workbooks</source>
        <translation>Arbeitsmappen lesen</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Readings depend on %1 of them.</source>
        <translation>Messwerte hängen von %1 davon ab.</translation>
    </message>
    <message>
        <source>Readings depend on it.</source>
        <translation>Messwerte hängen davon ab.</translation>
    </message>
    <message>
        <source>Readings do not depend on it.</source>
        <translation>Messwerte hängen nicht davon ab.</translation>
    </message>
    <message>
        <source>Readings from a recording</source>
        <translation>Messwerte aus einer Aufzeichnung</translation>
    </message>
    <message>
        <source>Readings of open checks were dropped, since other shunts are closed now. Undo brings them back.</source>
        <translation>Messwerte offener Prüfungen sind entfallen, da jetzt andere Shunts geschlossen sind. „Rückgängig“ bringt sie zurück.</translation>
    </message>
    <message>
        <source>Readings of the ohmmeter</source>
        <translation>Messwerte des Ohmmeters</translation>
    </message>
    <message>
        <source>Readings without and with what is tried out</source>
        <translation>Messwerte ohne und mit dem, was ausprobiert wird</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lesen…</translation>
    </message>
    <message>
        <source>Reads
[%1]</source>
        <translation>Zeigt
[%1]</translation>
    </message>
    <message>
        <source>Reads in</source>
        <translation>Zeigt in</translation>
    </message>
    <message>
        <source>Ready: do the above, then start the wait</source>
        <translation>Bereit: das Obige tun, dann das Warten beginnen</translation>
    </message>
    <message>
        <source>Recor&amp;d</source>
        <translation>Pr&amp;otokoll</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Recordin&amp;g strip under the Sequence</source>
        <translation>Aufzeichnung u&amp;nter dem Ablauf</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Recording over time</source>
        <translation>Aufzeichnung über der Zeit</translation>
    </message>
    <message>
        <source>Recording strip</source>
        <translation>Aufzeichnungsstreifen</translation>
    </message>
    <message>
        <source>Recording to watch</source>
        <translation>Zu beobachtende Aufzeichnung</translation>
    </message>
    <message>
        <source>Recordings (*.csv *.txt *.tsv *.dat *.asc *.wav *.npy *.mat *.h5 *.hdf5 *.uff *.unv);;All files (*)</source>
        <translation>Aufzeichnungen (*.csv *.txt *.tsv *.dat *.asc *.wav *.npy *.mat *.h5 *.hdf5 *.uff *.unv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Recordings as HDF5 files</source>
        <translation>Aufzeichnungen als HDF5-Dateien</translation>
    </message>
    <message>
        <source>Recordings as MATLAB files</source>
        <translation>Aufzeichnungen als MATLAB-Dateien</translation>
    </message>
    <message>
        <source>Recordings that are put there from now on</source>
        <translation>Aufzeichnungen, die von jetzt an dort abgelegt werden</translation>
    </message>
    <message>
        <source>Recordings that arrived</source>
        <translation>Eingetroffene Aufzeichnungen</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Recover unsaved work</source>
        <translation>Ungespeicherte Arbeit wiederherstellen</translation>
    </message>
    <message>
        <source>Rectangles (IEC 60617)</source>
        <translation>Rechtecke (IEC 60617)</translation>
    </message>
    <message>
        <source>Redo step %1</source>
        <translation>Stufe %1 wiederholen</translation>
    </message>
    <message>
        <source>Redo th&amp;is step</source>
        <translation>Stu&amp;fe wiederholen</translation>
    </message>
    <message>
        <source>Redoing this step. Before: %1 %2, kept until another reading is entered.</source>
        <translation>Diese Stufe wird wiederholt. Vorher: %1 %2, bleibt, bis ein anderer Messwert eingetragen ist.</translation>
    </message>
    <message>
        <source>Refused where a shunt or a pin would lose its place.</source>
        <translation>Abgelehnt, wo ein Shunt oder Stift seinen Ort verlöre.</translation>
    </message>
    <message>
        <source>Refused where an open check has readings, or a least limit is set: their numbers would mean something else.</source>
        <translation>Abgelehnt, wo eine offene Prüfung Messwerte hat oder ein Mindestgrenzwert gesetzt ist: Ihre Zahlen bedeuteten etwas anderes.</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Luftfeuchte</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Remarks of reviewers</source>
        <translation>Anmerkungen der Durchsicht</translation>
    </message>
    <message>
        <source>Remarks that are not settled, of all checks</source>
        <translation>Unerledigte Anmerkungen aller Prüfungen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message numerus="yes">
        <source>Remove %n part(s)</source>
        <translation>
            <numerusform>%n Teil entfernen</numerusform>
            <numerusform>%n Teile entfernen</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove balance network</source>
        <translation>Abgleichnetzwerk entfernen</translation>
    </message>
    <message>
        <source>Remove channel</source>
        <translation>Kanal entfernen</translation>
    </message>
    <message>
        <source>Remove channels</source>
        <translation>Kanäle entfernen</translation>
    </message>
    <message>
        <source>Remove check</source>
        <translation>Prüfung entfernen</translation>
    </message>
    <message>
        <source>Remove decade boxes</source>
        <translation>Widerstandsdekaden entfernen</translation>
    </message>
    <message>
        <source>Remove input resistance</source>
        <translation>Eingangswiderstand entfernen</translation>
    </message>
    <message>
        <source>Remove jumper</source>
        <translation>Steckbrücke entfernen</translation>
    </message>
    <message>
        <source>Remove leak</source>
        <translation>Nebenschluss entfernen</translation>
    </message>
    <message>
        <source>Remove my own</source>
        <translation>Eigenes entfernen</translation>
    </message>
    <message>
        <source>Remove pin</source>
        <translation>Stift entfernen</translation>
    </message>
    <message>
        <source>Remove preferred values</source>
        <translation>Normwerte entfernen</translation>
    </message>
    <message>
        <source>Remove resistors</source>
        <translation>Widerstände entfernen</translation>
    </message>
    <message>
        <source>Remove sense leads</source>
        <translation>Fühlerleitungen entfernen</translation>
    </message>
    <message>
        <source>Remove shunt</source>
        <translation>Shunt entfernen</translation>
    </message>
    <message>
        <source>Remove step</source>
        <translation>Stufe entfernen</translation>
    </message>
    <message>
        <source>Remove the channels</source>
        <translation>Die Kanäle entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen decade boxes</source>
        <translation>Die gewählten Widerstandsdekaden entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen jumper</source>
        <translation>Die gewählte Steckbrücke entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen pin and the jumpers to it</source>
        <translation>Den gewählten Stift und die Steckbrücken zu ihm entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen ranges</source>
        <translation>Die gewählten Bereiche entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen resistors; shunts keep their values</source>
        <translation>Die gewählten Widerstände entfernen; Shunts behalten ihre Werte</translation>
    </message>
    <message>
        <source>Remove the chosen shunt, from the steps too</source>
        <translation>Den gewählten Shunt entfernen, auch aus den Stufen</translation>
    </message>
    <message>
        <source>Remove the chosen step</source>
        <translation>Die gewählte Stufe entfernen</translation>
    </message>
    <message>
        <source>Remove the jumper %1</source>
        <translation>Steckbrücke %1 entfernen</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Removed %1.</source>
        <translation>Entfernt: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Removed %1; %n step(s) lost it.</source>
        <translation>
            <numerusform>Entfernt: %1; %n Stufe verlor ihn.</numerusform>
            <numerusform>Entfernt: %1; %n Stufen verloren ihn.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Removed %1; %n step(s) lost theirs.</source>
        <translation>
            <numerusform>Entfernt: %1; %n Stufe verlor ihre.</numerusform>
            <numerusform>Entfernt: %1; %n Stufen verloren ihre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Removes the kept work for good, after asking</source>
        <translation>Entfernt die aufbewahrte Arbeit endgültig, nach Rückfrage</translation>
    </message>
    <message>
        <source>Rename channel</source>
        <translation>Kanal umbenennen</translation>
    </message>
    <message>
        <source>Rename channels</source>
        <translation>Kanäle umbenennen</translation>
    </message>
    <message>
        <source>Rename decade box</source>
        <translation>Widerstandsdekade umbenennen</translation>
    </message>
    <message>
        <source>Rename pin</source>
        <translation>Stift umbenennen</translation>
    </message>
    <message>
        <source>Rename resistor</source>
        <translation>Widerstand umbenennen</translation>
    </message>
    <message>
        <source>Rename shunt</source>
        <translation>Shunt umbenennen</translation>
    </message>
    <message>
        <source>Rename step</source>
        <translation>Stufe umbenennen</translation>
    </message>
    <message>
        <source>Rename template</source>
        <translation>Vorlage umbenennen</translation>
    </message>
    <message>
        <source>Reopen check</source>
        <translation>Prüfung wieder öffnen</translation>
    </message>
    <message>
        <source>Repeat the wron&amp;g ones</source>
        <translation>Falsche &amp;wiederholen</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>Repeated: question %1 of %2</source>
        <translation>Wiederholt: Aufgabe %1 von %2</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Replaces the trials by themselves shortly after each change</source>
        <translation>Erneuert die Versuche kurz nach jeder Änderung von selbst</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Report templates (*.%1)</source>
        <translation>Berichtsvorlagen (*.%1)</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Reset everything</source>
        <translation>Alles zurücksetzen</translation>
    </message>
    <message>
        <source>Reset everything to usual…</source>
        <translation>Alles auf das Übliche zurücksetzen…</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>Residual from the fitted line over its own standard deviation, which the fit has made smaller: by the scatter of the residuals for a line without weights, else by the stated uncertainties. Beyond 2 either way it is seldom chance.</source>
        <translation>Residuum der angepassten Geraden durch seine eigene Standardabweichung, die durch die Anpassung kleiner wurde: nach der Streuung der Residuen bei einer Geraden ohne Gewichte, sonst nach den angegebenen Unsicherheiten. Jenseits von 2 in einer der Richtungen ist es selten Zufall.</translation>
    </message>
    <message>
        <source>Residual from the line</source>
        <translation>Residuum der Geraden</translation>
    </message>
    <message>
        <source>Residual over its standard deviation</source>
        <translation>Residuum durch seine Standardabweichung</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Resistance of each lead</source>
        <translation>Widerstand jeder Leitung</translation>
    </message>
    <message>
        <source>Resistance of the closed switch or relay, in series</source>
        <translation>Widerstand des geschlossenen Schalters oder Relais, in Reihe</translation>
    </message>
    <message>
        <source>Resistance of the map</source>
        <translation>Widerstand der Karte</translation>
    </message>
    <message>
        <source>Resistor from the wiper of the balance network to S+</source>
        <translation>Widerstand vom Schleifer des Abgleichnetzwerks zu S+</translation>
    </message>
    <message>
        <source>Resistor s&amp;tock</source>
        <translation>Widerstands&amp;bestand</translation>
    </message>
    <message>
        <source>Resistor stock</source>
        <translation>Widerstandsbestand</translation>
    </message>
    <message>
        <source>Resistor symbols</source>
        <translation>Schaltzeichen von Widerständen</translation>
    </message>
    <message>
        <source>Resistor values from the stock</source>
        <translation>Widerstandswerte aus dem Bestand</translation>
    </message>
    <message>
        <source>Resistors</source>
        <translation>Widerstände</translation>
    </message>
    <message>
        <source>Resuming at step %1. The zero may have moved since the steps before it: redo them when in doubt.</source>
        <translation>Fortsetzung bei Stufe %1. Der Nullpunkt kann sich seit den Stufen davor verschoben haben: diese im Zweifel wiederholen.</translation>
    </message>
    <message>
        <source>Resuming at step %1: the steps before it have readings.</source>
        <translation>Fortsetzung bei Stufe %1: Die Stufen davor haben Messwerte.</translation>
    </message>
    <message>
        <source>Retry</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>Return or a double click compares the check</source>
        <translation>Eingabe oder Doppelklick vergleicht die Prüfung</translation>
    </message>
    <message>
        <source>Return the record</source>
        <translation>Protokoll zurückgeben</translation>
    </message>
    <message>
        <source>Return with a remark…</source>
        <translation>Mit Anmerkung zurückgeben…</translation>
    </message>
    <message>
        <source>Reverse gauge signs</source>
        <translation>DMS-Vorzeichen umkehren</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Review of the plan</source>
        <translation>Durchsicht des Plans</translation>
    </message>
    <message>
        <source>Reviewed %1 of %2 channels: %3</source>
        <translation>%1 von %2 Kanälen durchgesehen: %3</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <source>Right answers by kind</source>
        <translation>Richtige Antworten nach Art</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Richtig: %1</translation>
    </message>
    <message>
        <source>Rising</source>
        <translation>Steigend</translation>
    </message>
    <message>
        <source>Rows of &quot;%1&quot; with</source>
        <translation>Zeilen von „%1“ mit</translation>
    </message>
    <message>
        <source>Rows that are refused, and what else is to be known</source>
        <translation>Abgelehnte Zeilen, und was sonst zu wissen ist</translation>
    </message>
    <message>
        <source>Rows together by</source>
        <translation>Zeilen zusammen nach</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Run trials</source>
        <translation>Versuche rechnen</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>S&amp;ymbols</source>
        <translation>S&amp;ymbole</translation>
    </message>
    <message>
        <source>SPICE net&amp;list of the step…</source>
        <translation>SPICE-Netz&amp;liste der Stufe…</translation>
    </message>
    <message>
        <source>SPICE netlist</source>
        <translation>SPICE-Netzliste</translation>
    </message>
    <message>
        <source>SPICE netlist (*.cir)</source>
        <translation>SPICE-Netzliste (*.cir)</translation>
    </message>
    <message>
        <source>STOP: the jumpers as planned would short the excitation and can destroy the supply, the leads or the bridge. The wiring must be corrected first (Alt+6). The run cannot begin before that.</source>
        <translation>HALT: Die geplanten Steckbrücken würden die Speisung kurzschließen und können Netzgerät, Leitungen oder Brücke zerstören. Zuerst ist die Verdrahtung zu berichtigen (Alt+6). Vorher kann der Durchgang nicht beginnen.</translation>
    </message>
    <message>
        <source>Same template</source>
        <translation>Gleiche Vorlage</translation>
    </message>
    <message>
        <source>Sample rate</source>
        <translation>Abtastrate</translation>
    </message>
    <message>
        <source>Sample rate, filter, mains</source>
        <translation>Abtastrate, Filter, Netz</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Abtastwerte</translation>
    </message>
    <message>
        <source>Samples: %1 in %2 columns. Lines read: %3, skipped: %4; cells without a number: %5.</source>
        <translation>Abtastwerte: %1 in %2 Spalten. Gelesene Zeilen: %3, übersprungen: %4; Zellen ohne Zahl: %5.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save as my own…</source>
        <translation>Als eigenes speichern…</translation>
    </message>
    <message>
        <source>Save document</source>
        <translation>Dokument speichern</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation>Noch einmal speichern</translation>
    </message>
    <message>
        <source>Save pattern as my own</source>
        <translation>Muster als eigenes speichern</translation>
    </message>
    <message>
        <source>Save report</source>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Say what could be done there</source>
        <translation>Sagen, was dort getan werden könnte</translation>
    </message>
    <message>
        <source>Say what has to be changed or found out before it can be accepted.</source>
        <translation>Angeben, was vor der Freigabe zu ändern oder herauszufinden ist.</translation>
    </message>
    <message>
        <source>Scale to what is on view</source>
        <translation>An Sichtbares anpassen</translation>
    </message>
    <message>
        <source>Scale, channels and keys of the strip</source>
        <translation>Skala, Kanäle und Tasten des Streifens</translation>
    </message>
    <message>
        <source>Scaled unit</source>
        <translation>Skalierte Einheit</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Score on this computer, right of answered</source>
        <translation>Punktestand auf diesem Computer, richtig von beantwortet</translation>
    </message>
    <message>
        <source>Scroll Left</source>
        <translation>Nach links rollen</translation>
    </message>
    <message>
        <source>Scroll Right</source>
        <translation>Nach rechts rollen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Search the manual</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Suche läuft…</translation>
    </message>
    <message>
        <source>Section or AWG</source>
        <translation>Querschnitt oder AWG</translation>
    </message>
    <message>
        <source>See that all shunts are open</source>
        <translation>Sicherstellen, dass alle Shunts offen sind</translation>
    </message>
    <message>
        <source>See that all shunts are open and no jumper is laid</source>
        <translation>Sicherstellen, dass alle Shunts offen sind und keine Steckbrücke gelegt ist</translation>
    </message>
    <message>
        <source>See that the reading is back at zero</source>
        <translation>Nachsehen, dass der Messwert wieder auf null ist</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>Seed of the random order: the same number gives the same order on every machine.</source>
        <translation>Startzahl der zufälligen Folge: Dieselbe Zahl ergibt auf jedem Rechner dieselbe Folge.</translation>
    </message>
    <message>
        <source>Selec&amp;t all</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alles wählen</translation>
    </message>
    <message>
        <source>Select &amp;all cells</source>
        <translation>Alle &amp;Zellen wählen</translation>
    </message>
    <message>
        <source>Select All</source>
        <translation>Alles auswählen</translation>
    </message>
    <message>
        <source>Select a part first.</source>
        <translation>Zuerst ein Teil auswählen.</translation>
    </message>
    <message>
        <source>Select a shunt to duplicate.</source>
        <translation>Einen Shunt zum Verdoppeln auswählen.</translation>
    </message>
    <message>
        <source>Select an arm first, or a leak or a shunt that lies at one.</source>
        <translation>Zuerst einen Zweig auswählen, oder einen Nebenschluss oder Shunt an einem.</translation>
    </message>
    <message>
        <source>Select c&amp;olumn</source>
        <translation>S&amp;palte wählen</translation>
    </message>
    <message>
        <source>Self-heating</source>
        <translation>Eigenerwärmung</translation>
    </message>
    <message>
        <source>Sense leads (six-wire)</source>
        <translation>Fühlerleitungen (Sechsleiter)</translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>Sensitivity times standard uncertainty, with its sign</source>
        <translation>Empfindlichkeit mal Standardunsicherheit, mit Vorzeichen</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker gesendet.</translation>
    </message>
    <message>
        <source>Sequence</source>
        <translation>Ablauf</translation>
    </message>
    <message>
        <source>Serial number of the instrument</source>
        <translation>Seriennummer des Geräts</translation>
    </message>
    <message>
        <source>Serial number, input</source>
        <translation>Seriennr., Eingang</translation>
    </message>
    <message>
        <source>Series</source>
        <translation>Reihe</translation>
    </message>
    <message numerus="yes">
        <source>Set-ups differ in %n things.</source>
        <translation>
            <numerusform>Die Einrichtungen unterscheiden sich in %n Dingen.</numerusform>
            <numerusform>Die Einrichtungen unterscheiden sich in %n Dingen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Set-ups differ in one thing: %1.</source>
        <translation>Die Einrichtungen unterscheiden sich in einem: %1.</translation>
    </message>
    <message>
        <source>Set-ups: nothing differs.</source>
        <translation>Einrichtungen: kein Unterschied.</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Einschwingen</translation>
    </message>
    <message>
        <source>Settle
[s]</source>
        <translation>Einschw.
[s]</translation>
    </message>
    <message>
        <source>Settle remark</source>
        <translation>Anmerkung erledigen</translation>
    </message>
    <message>
        <source>Settled to</source>
        <translation>Eingeschwungen auf</translation>
    </message>
    <message>
        <source>Settling follows from the filter and one sample interval, rounded up to 10 ms. A hold lasts one second at least, a whole number of mains periods, and 20 samples.</source>
        <translation>Das Einschwingen folgt aus dem Filter und einem Abtastintervall, auf 10 ms aufgerundet. Ein Halten dauert mindestens eine Sekunde, eine ganze Zahl Netzperioden und 20 Abtastwerte.</translation>
    </message>
    <message>
        <source>Settling: do not touch anything</source>
        <translation>Einschwingen: nichts berühren</translation>
    </message>
    <message>
        <source>Several &amp;copies…</source>
        <translation>Mehrere &amp;Kopien…</translation>
    </message>
    <message>
        <source>Several copies</source>
        <translation>Mehrere Kopien</translation>
    </message>
    <message>
        <source>Several copies…</source>
        <translation>Mehrere Kopien…</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Share of
variance</source>
        <translation>Anteil an
Varianz</translation>
    </message>
    <message>
        <source>Share of a step that may be missing when a level counts as settled</source>
        <translation>Anteil einer Stufe, der fehlen darf, wenn ein Wert als eingeschwungen gilt</translation>
    </message>
    <message>
        <source>Share of trials in a bar, %</source>
        <translation>Anteil der Versuche in einem Balken, %</translation>
    </message>
    <message>
        <source>Shares, %</source>
        <translation>Anteile, %</translation>
    </message>
    <message>
        <source>Sheet to be printed (*.pdf)</source>
        <translation>Zu druckendes Blatt (*.pdf)</translation>
    </message>
    <message>
        <source>Sheets to be printed (*.pdf)</source>
        <translation>Zu druckende Blätter (*.pdf)</translation>
    </message>
    <message>
        <source>Sheets written to %1.</source>
        <translation>Blätter nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Shift and drag</source>
        <translation>Umschalt und Ziehen</translation>
    </message>
    <message>
        <source>Shift and drag draws one.</source>
        <translation>Umschalt und Ziehen zeichnet einen.</translation>
    </message>
    <message>
        <source>Shift+F3</source>
        <translation>Shift+F3</translation>
    </message>
    <message>
        <source>Shift+F8</source>
        <translation>Shift+F8</translation>
    </message>
    <message>
        <source>Shortest interval of the trials</source>
        <translation>Kürzestes Intervall der Versuche</translation>
    </message>
    <message>
        <source>Shortest, %1</source>
        <translation>Kürzestes, %1</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show &amp;all columns</source>
        <translation>&amp;Alle Spalten zeigen</translation>
    </message>
    <message>
        <source>Show &amp;hidden files</source>
        <translation>&amp;Versteckte Dateien zeigen</translation>
    </message>
    <message>
        <source>Show Details...</source>
        <translation>Details zeigen...</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Show all rows</source>
        <translation>Alle Zeilen zeigen</translation>
    </message>
    <message>
        <source>Show all rows again (Escape)</source>
        <translation>Wieder alle Zeilen zeigen (Escape)</translation>
    </message>
    <message>
        <source>Show all rows first</source>
        <translation>Zuerst alle Zeilen zeigen</translation>
    </message>
    <message>
        <source>Show channels that hold these words</source>
        <translation>Kanäle zeigen, die diese Wörter enthalten</translation>
    </message>
    <message>
        <source>Show channels that hold…</source>
        <translation>Kanäle zeigen, die enthalten…</translation>
    </message>
    <message>
        <source>Show channels whose name holds</source>
        <translation>Kanäle zeigen, deren Name dies enthält</translation>
    </message>
    <message>
        <source>Show channels whose name holds…</source>
        <translation>Kanäle zeigen, deren Name enthält…</translation>
    </message>
    <message>
        <source>Show channels whose name or group holds</source>
        <translation>Kanäle zeigen, deren Name oder Gruppe enthält</translation>
    </message>
    <message>
        <source>Show in the views</source>
        <translation>In den Ansichten zeigen</translation>
    </message>
    <message>
        <source>Show span</source>
        <translation>Abschnitt zeigen</translation>
    </message>
    <message>
        <source>Show the shunt</source>
        <translation>Shunt zeigen</translation>
    </message>
    <message>
        <source>Show the window</source>
        <translation>Fenster zeigen</translation>
    </message>
    <message>
        <source>Show what &amp;differs</source>
        <translation>Unterschiede &amp;zeigen</translation>
    </message>
    <message>
        <source>Show what differs</source>
        <translation>Unterschiede zeigen</translation>
    </message>
    <message>
        <source>Shows a field for each part of what was guessed</source>
        <translation>Zeigt ein Feld für jeden Teil dessen, was erkannt wurde</translation>
    </message>
    <message>
        <source>Shows and hides what differs in the two set-ups</source>
        <translation>Zeigt und verbirgt, was sich in den beiden Einrichtungen unterscheidet</translation>
    </message>
    <message>
        <source>Shows the set-up that the closed check was judged by; the plan is another now.</source>
        <translation>Zeigt die Einrichtung, nach der die abgeschlossene Prüfung beurteilt wurde; der Plan ist jetzt ein anderer.</translation>
    </message>
    <message>
        <source>Shows the step after (right arrow key)</source>
        <translation>Zeigt die Stufe danach (Pfeil rechts)</translation>
    </message>
    <message>
        <source>Shows the step before (left arrow key)</source>
        <translation>Zeigt die Stufe davor (Pfeil links)</translation>
    </message>
    <message>
        <source>Shunt</source>
        <translation>Shunt</translation>
    </message>
    <message>
        <source>Shunt %1, %2, from %3 to %4: closed.</source>
        <translation>Shunt %1, %2, von %3 nach %4: geschlossen.</translation>
    </message>
    <message>
        <source>Shunt %1, %2, from %3 to %4: open.</source>
        <translation>Shunt %1, %2, von %3 nach %4: offen.</translation>
    </message>
    <message>
        <source>Shunt %1, closed</source>
        <translation>Shunt %1, geschlossen</translation>
    </message>
    <message>
        <source>Shunt %1, open</source>
        <translation>Shunt %1, offen</translation>
    </message>
    <message>
        <source>Shunt %1.</source>
        <translation>Shunt %1.</translation>
    </message>
    <message>
        <source>Shunt check of the tailplane</source>
        <translation>Shuntprüfung des Höhenleitwerks</translation>
    </message>
    <message>
        <source>Shunt of the map</source>
        <translation>Shunt der Karte</translation>
    </message>
    <message>
        <source>Shunt over %1</source>
        <translation>Shunt über %1</translation>
    </message>
    <message>
        <source>Shunt whose jumpers are shown</source>
        <translation>Shunt, dessen Steckbrücken gezeigt werden</translation>
    </message>
    <message>
        <source>Shunts</source>
        <translation>Shunts</translation>
    </message>
    <message>
        <source>Shunts closed</source>
        <translation>Geschlossene Shunts</translation>
    </message>
    <message>
        <source>Shunts that the step closes</source>
        <translation>Shunts, die die Stufe schließt</translation>
    </message>
    <message>
        <source>Shunts with their parts, jumpers and uncertainties, and the sequence</source>
        <translation>Shunts mit ihren Widerständen, Steckbrücken und Unsicherheiten, und der Ablauf</translation>
    </message>
    <message>
        <source>Shuntwright %1</source>
        <translation>Shuntwright %1</translation>
    </message>
    <message>
        <source>Shuntwright documents (*.%1)</source>
        <translation>Shuntwright-Dokumente (*.%1)</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Signal wires swapped</source>
        <translation>Signalleitungen vertauscht</translation>
    </message>
    <message>
        <source>Simulated</source>
        <translation>Simuliert</translation>
    </message>
    <message>
        <source>Simulated
[%1]</source>
        <translation>Simuliert
[%1]</translation>
    </message>
    <message>
        <source>Simulated load</source>
        <translation>Simulierte Last</translation>
    </message>
    <message>
        <source>Simulated strain</source>
        <translation>Simulierte Dehnung</translation>
    </message>
    <message>
        <source>Simulates
[%1]</source>
        <translation>Simuliert
[%1]</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Six-wire: sense leads</source>
        <translation>Sechsleiter mit Fühlern</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Textgröße</translation>
    </message>
    <message>
        <source>Sk&amp;ip the tour</source>
        <translation>Rundgang überspr&amp;ingen</translation>
    </message>
    <message>
        <source>Sk&amp;ip wait</source>
        <translation>War&amp;ten überspringen</translation>
    </message>
    <message>
        <source>Slope of the positive half less that of the negative half, as a share of the expected slope.</source>
        <translation>Steigung der positiven minus der negativen Hälfte, als Anteil der erwarteten Steigung.</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Kleinere Buchstaben</translation>
    </message>
    <message>
        <source>Solid copper: %1. Stranded or tinned wire is higher; measure it where it matters.</source>
        <translation>Massives Kupfer: %1. Litze oder verzinnter Draht liegt höher; messen, wo es darauf ankommt.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Span error</source>
        <translation>Spannenfehler</translation>
    </message>
    <message>
        <source>Span of no step:</source>
        <translation>Abschnitt ohne Stufe:</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Split span</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Stands in the history of a record, with remarks and with acts of review. Left empty, it is the name that one logs in with.</source>
        <translation>Steht im Verlauf eines Protokolls, bei Anmerkungen und Freigabeschritten. Leer gelassen ist es der Name der Anmeldung.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Start a check and type or paste its readings</source>
        <translation>Eine Prüfung beginnen und ihre Messwerte eintippen oder einfügen</translation>
    </message>
    <message>
        <source>Start a check here, type or paste its readings, take them from a recording, or be led through it by the guided run. A closed check is not changed by later edits.</source>
        <translation>Hier eine Prüfung beginnen, ihre Messwerte eingeben oder einfügen, aus einer Aufzeichnung übernehmen oder sich vom geführten Durchgang leiten lassen. Spätere Änderungen berühren eine abgeschlossene Prüfung nicht.</translation>
    </message>
    <message>
        <source>Start a check to run through them.</source>
        <translation>Zum Durchgehen eine Prüfung beginnen.</translation>
    </message>
    <message>
        <source>Start by itself at the next steps</source>
        <translation>Bei den nächsten Stufen von selbst beginnen</translation>
    </message>
    <message>
        <source>Start from</source>
        <translation>Beginnen mit</translation>
    </message>
    <message>
        <source>Start the &amp;wait (Space)</source>
        <translation>Warten be&amp;ginnen (Leertaste)</translation>
    </message>
    <message>
        <source>Start the wait</source>
        <translation>Wartezeit beginnen</translation>
    </message>
    <message>
        <source>Start this check</source>
        <translation>Diese Prüfung beginnen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State of the wiring</source>
        <translation>Zustand der Verdrahtung</translation>
    </message>
    <message>
        <source>Stated as</source>
        <translation>Angegeben als</translation>
    </message>
    <message>
        <source>Stated for this channel.</source>
        <translation>Für diesen Kanal angegeben.</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Std. uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>Step %1 has no uncertainty. %2</source>
        <translation>Stufe %1 hat keine Unsicherheit. %2</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Stufe %1 von %2</translation>
    </message>
    <message>
        <source>Step %1%2: %3</source>
        <translation>Stufe %1%2: %3</translation>
    </message>
    <message>
        <source>Step %1. %2</source>
        <translation>Stufe %1. %2</translation>
    </message>
    <message>
        <source>Step %1:</source>
        <translation>Stufe %1:</translation>
    </message>
    <message>
        <source>Step %1: %2</source>
        <translation>Stufe %1: %2</translation>
    </message>
    <message>
        <source>Step %1: %2 %3 %4, U = %5 %4 (k = %6, %7, %8)</source>
        <translation>Stufe %1: %2 %3 %4, U = %5 %4 (k = %6, %7, %8)</translation>
    </message>
    <message>
        <source>Step &amp;down</source>
        <translation>Schritt nach &amp;unten</translation>
    </message>
    <message>
        <source>Step after</source>
        <translation>Stufe danach</translation>
    </message>
    <message>
        <source>Step before</source>
        <translation>Stufe davor</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Steps are off by up to %1 %3, with this cause by up to %2 %3:</source>
        <translation>Stufen weichen um bis zu %1 %3 ab, mit dieser Ursache um bis zu %2 %3:</translation>
    </message>
    <message>
        <source>Steps as they will be</source>
        <translation>Stufen, wie sie sein werden</translation>
    </message>
    <message>
        <source>Steps of the check</source>
        <translation>Stufen der Prüfung</translation>
    </message>
    <message>
        <source>Steps of the earlier check</source>
        <translation>Stufen der früheren Prüfung</translation>
    </message>
    <message>
        <source>Steps of the run</source>
        <translation>Stufen des Durchgangs</translation>
    </message>
    <message>
        <source>Steps stand in the order in which they are made, so this table is not sorted.</source>
        <translation>Stufen stehen in der Folge, in der sie gemacht werden; darum wird diese Tabelle nicht sortiert.</translation>
    </message>
    <message>
        <source>Steps stand in the order in which they are made, which is a part of the plan: drag a number to move its step.</source>
        <translation>Stufen stehen in der Folge, in der sie gemacht werden, und die gehört zum Plan: eine Nummer ziehen, um ihre Stufe zu versetzen.</translation>
    </message>
    <message>
        <source>Steps that close several shunts stay together, with their labels</source>
        <translation>Stufen, die mehrere Shunts schließen, bleiben beisammen, mit ihren Bezeichnungen</translation>
    </message>
    <message>
        <source>Steps with a reading</source>
        <translation>Stufen mit Messwert</translation>
    </message>
    <message>
        <source>Steps without a reading are not judged: go back to them, or leave the check open.</source>
        <translation>Stufen ohne Messwert werden nicht beurteilt: zu ihnen zurückgehen oder die Prüfung offen lassen.</translation>
    </message>
    <message>
        <source>Stop safe&amp;ly</source>
        <translation>S&amp;icher abbrechen</translation>
    </message>
    <message>
        <source>Stop safely</source>
        <translation>Sicher abbrechen</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Stops trying this out</source>
        <translation>Probiert dies nicht mehr aus</translation>
    </message>
    <message>
        <source>Strain data</source>
        <translation>Dehnungsdaten</translation>
    </message>
    <message>
        <source>Structure is connected to</source>
        <translation>Struktur verbunden mit</translation>
    </message>
    <message>
        <source>Structure is on</source>
        <translation>Struktur liegt an</translation>
    </message>
    <message>
        <source>Student&apos;s t, ν = %1</source>
        <translation>Student-t, ν = %1</translation>
    </message>
    <message>
        <source>Su&amp;bmit for review…</source>
        <translation>Zur Durchsicht &amp;vorlegen…</translation>
    </message>
    <message>
        <source>Submit</source>
        <translation>Vorlegen</translation>
    </message>
    <message>
        <source>Submit for review</source>
        <translation>Zur Durchsicht vorlegen</translation>
    </message>
    <message>
        <source>Submit for review…</source>
        <translation>Zur Durchsicht vorlegen…</translation>
    </message>
    <message>
        <source>Such a
fault is</source>
        <translation>Solcher
Fehler ist</translation>
    </message>
    <message>
        <source>Summar&amp;y</source>
        <translation>Z&amp;usammenfassung</translation>
    </message>
    <message>
        <source>Swap excitation</source>
        <translation>Speisung vertauschen</translation>
    </message>
    <message>
        <source>Swap signal wires</source>
        <translation>Signalleitungen vertauschen</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>Switch the excitation off</source>
        <translation>Speisung abschalten</translation>
    </message>
    <message>
        <source>Switch the excitation off before an ohmmeter touches the circuit, and take the channel out of service where something acts on its reading.</source>
        <translation>Die Speisung abschalten, bevor ein Ohmmeter die Schaltung berührt, und den Kanal außer Betrieb nehmen, wo etwas auf seinen Messwert reagiert.</translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring or ohmmeter work.

A switched shunt moves the reading of a live control or safety channel: take such channels out of service first.

A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the article. Where a standard, a contract or the local code asks for a calibrated load or a traceable calibration, this check does not replace it.

Decisions stay with the responsible licensed or authorised person.</source>
        <translation>Vor Arbeiten an der Verdrahtung oder mit dem Ohmmeter die Speisung abschalten.

Ein geschalteter Shunt bewegt den Messwert eines laufenden Regel- oder Sicherheitskanals: Solche Kanäle zuerst außer Betrieb nehmen.

Eine bestandene Shuntprüfung sagt nichts über DMS-Klebung, k-Faktor, Ausrichtung oder die Festigkeit des Prüflings. Wo eine Norm, ein Vertrag oder örtliche Vorschriften eine kalibrierte Last oder eine rückführbare Kalibrierung verlangen, ersetzt diese Prüfung sie nicht.

Entscheidungen bleiben bei der verantwortlichen befugten Person.</translation>
    </message>
    <message>
        <source>Switch the excitation on again and let the bridge warm up again before the reading</source>
        <translation>Speisung wieder einschalten und die Brücke vor dem Messwert wieder warm werden lassen</translation>
    </message>
    <message>
        <source>Switched inside.</source>
        <translation>Innen geschaltet.</translation>
    </message>
    <message>
        <source>Symmetric interval of the trials</source>
        <translation>Symmetrisches Intervall der Versuche</translation>
    </message>
    <message>
        <source>Symmetric, %1</source>
        <translation>Symmetrisch, %1</translation>
    </message>
    <message>
        <source>Symmetry</source>
        <translation>Symmetrie</translation>
    </message>
    <message>
        <source>T&amp;ext as usual</source>
        <translation>&amp;Schrift wie üblich</translation>
    </message>
    <message>
        <source>TP-{nn}</source>
        <translation>TP-{nn}</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Table of all steps (CSV)</source>
        <translation>Tabelle aller Stufen (CSV)</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Take all these choices back</source>
        <translation>Alle diese Wahlen zurücknehmen</translation>
    </message>
    <message>
        <source>Take from its step</source>
        <translation>Der Stufe nehmen</translation>
    </message>
    <message>
        <source>Take over into the plan</source>
        <translation>In den Plan übernehmen</translation>
    </message>
    <message>
        <source>Take over: %1</source>
        <translation>Übernehmen: %1</translation>
    </message>
    <message>
        <source>Take readings from recording</source>
        <translation>Messwerte aus Aufzeichnung übernehmen</translation>
    </message>
    <message>
        <source>Take resistors into the stock from %1</source>
        <translation>Widerstände aus %1 in den Bestand aufnehmen</translation>
    </message>
    <message>
        <source>Take span from step %1</source>
        <translation>Abschnitt der Stufe %1 nehmen</translation>
    </message>
    <message>
        <source>Take stock values in %1</source>
        <translation>Bestandswerte in %1 übernehmen</translation>
    </message>
    <message>
        <source>Take up %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>Take up without asking what leaves no choice</source>
        <translation>Ohne Frage übernehmen, was keine Wahl lässt</translation>
    </message>
    <message>
        <source>Take usual pins</source>
        <translation>Übliche Stifte nehmen</translation>
    </message>
    <message>
        <source>Take value, certificate and due date of the stock&apos;s resistors into the shunts that are made of them</source>
        <translation>Wert, Kalibrierschein und Fälligkeit der Widerstände des Bestands in die Shunts übernehmen, die daraus bestehen</translation>
    </message>
    <message>
        <source>Taken over into the plan: %1. Undo brings the plan back.</source>
        <translation>In den Plan übernommen: %1. „Rückgängig“ bringt den Plan zurück.</translation>
    </message>
    <message>
        <source>Takes everything away that is tried out</source>
        <translation>Nimmt alles weg, was ausprobiert wird</translation>
    </message>
    <message>
        <source>Takes the file&apos;s content into the window; Undo brings back what is here now</source>
        <translation>Nimmt den Inhalt der Datei in das Fenster; Rückgängig bringt zurück, was jetzt hier ist</translation>
    </message>
    <message>
        <source>Te&amp;mplate</source>
        <translation>&amp;Vorlage</translation>
    </message>
    <message>
        <source>Tell those who were told of the run: control and safety channels may come back into service</source>
        <translation>Denen Bescheid geben, die vom Durchgang wussten: Regel- und Sicherheitskanäle dürfen wieder in Betrieb</translation>
    </message>
    <message>
        <source>Tell through the desktop when it is done</source>
        <translation>Durch einen Hinweis melden, wenn sie getan ist</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Temperature coefficient of the gauge factor</source>
        <translation>Temperaturkoeffizient des k-Faktors</translation>
    </message>
    <message>
        <source>Temperature of the gauges during the check</source>
        <translation>Temperatur der DMS während der Prüfung</translation>
    </message>
    <message>
        <source>Temperature that the gauge factor is stated for</source>
        <translation>Temperatur, für die der k-Faktor angegeben ist</translation>
    </message>
    <message>
        <source>Template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>Test range</source>
        <translation>Prüfbereich</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Text &amp;larger</source>
        <translation>S&amp;chrift größer</translation>
    </message>
    <message>
        <source>Text in %1, %2 between cells, decimal %3; %4</source>
        <translation>Text in %1, %2 zwischen Zellen, dezimal %3; %4</translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation>Sc&amp;hrift kleiner</translation>
    </message>
    <message>
        <source>Text, files, languages</source>
        <translation>Text, Dateien, Sprachen</translation>
    </message>
    <message>
        <source>That which the instrument is set to follows where it was the same.</source>
        <translation>Was am Gerät eingestellt ist, folgt, wo es gleich war.</translation>
    </message>
    <message>
        <source>The bridge %1 as a diamond: P+ above, P− below, S+ at the left, S− at the right.</source>
        <translation>Die Brücke %1 als Raute: P+ oben, P− unten, S+ links, S− rechts.</translation>
    </message>
    <message>
        <source>The bridge at the chosen step, with voltages and currents. Drag an end of a shunt to another node and watch the sign of the output. Every edit can be undone.</source>
        <translation>Die Brücke bei der gewählten Stufe, mit Spannungen und Strömen. Ein Ende eines Shunts an einen anderen Knoten ziehen und auf das Vorzeichen des Signals achten. Jede Änderung lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>The bridge with all shunts open, not balanced.</source>
        <translation>Die Brücke mit allen Shunts offen, nicht abgeglichen.</translation>
    </message>
    <message>
        <source>The bridge with what is tried out</source>
        <translation>Die Brücke mit dem, was ausprobiert wird</translation>
    </message>
    <message>
        <source>The bridge, its leads and shunts (Ctrl+6)</source>
        <translation>Die Brücke, ihre Leitungen und Shunts (Strg+6)</translation>
    </message>
    <message>
        <source>The budget has no uncertainty to compare with.</source>
        <translation>Das Budget hat keine Unsicherheit zum Vergleich.</translation>
    </message>
    <message>
        <source>The channel has no shunts yet: add them in the table of shunts.</source>
        <translation>Der Kanal hat noch keine Shunts: in der Tabelle der Shunts anlegen.</translation>
    </message>
    <message>
        <source>The channel has no steps yet. Add steps to its sequence.</source>
        <translation>Der Kanal hat noch keine Stufen. Im Ablauf Stufen anlegen.</translation>
    </message>
    <message>
        <source>The channel has no steps yet; add steps to its sequence.</source>
        <translation>Der Kanal hat noch keine Stufen; im Ablauf Stufen anlegen.</translation>
    </message>
    <message>
        <source>The channel list is read.</source>
        <translation>Die Kanalliste ist gelesen.</translation>
    </message>
    <message>
        <source>The channel was changed since the dialog was opened: search again from there.</source>
        <translation>Der Kanal wurde geändert, seit der Dialog geöffnet ist: von dort neu suchen.</translation>
    </message>
    <message>
        <source>The check %1 is closed and keeps its readings: it cannot be run. Start a new one.</source>
        <translation>Die Prüfung %1 ist abgeschlossen und behält ihre Messwerte: Sie lässt sich nicht durchführen. Eine neue beginnen.</translation>
    </message>
    <message>
        <source>The check %1 is closed and keeps its spans. Reopen it first (menu Check, Close or reopen check).</source>
        <translation>Die Prüfung %1 ist abgeschlossen und behält ihre Abschnitte. Zuerst wieder öffnen (Menü Prüfung, Prüfung abschließen oder öffnen).</translation>
    </message>
    <message>
        <source>The check has %1 remarks, more cannot be kept.</source>
        <translation>Die Prüfung hat %1 Anmerkungen, mehr lassen sich nicht aufheben.</translation>
    </message>
    <message>
        <source>The check has no readings yet.</source>
        <translation>Die Prüfung hat noch keine Messwerte.</translation>
    </message>
    <message>
        <source>The check has no readings yet; the plan is drawn meanwhile.</source>
        <translation>Die Prüfung hat noch keine Messwerte; bis dahin wird der Plan gezeichnet.</translation>
    </message>
    <message>
        <source>The check is closed and keeps its spans. Reopen it first (menu Check, Close or reopen check).</source>
        <translation>Die Prüfung ist abgeschlossen und behält ihre Abschnitte. Zuerst wieder öffnen (Menü Prüfung, Prüfung abschließen oder öffnen).</translation>
    </message>
    <message>
        <source>The check was changed meanwhile.</source>
        <translation>Die Prüfung wurde inzwischen geändert.</translation>
    </message>
    <message>
        <source>The chosen cause</source>
        <translation>Die gewählte Ursache</translation>
    </message>
    <message>
        <source>The chosen channel again with the next names</source>
        <translation>Den gewählten Kanal nochmals mit den nächsten Namen</translation>
    </message>
    <message>
        <source>The chosen span and the next one as one</source>
        <translation>Der gewählte Abschnitt und der nächste als einer</translation>
    </message>
    <message>
        <source>The chosen span and what is around it</source>
        <translation>Der gewählte Abschnitt und seine Umgebung</translation>
    </message>
    <message>
        <source>The chosen span begins at the cursor</source>
        <translation>Der gewählte Abschnitt beginnt am Cursor</translation>
    </message>
    <message>
        <source>The chosen span ends at the cursor</source>
        <translation>Der gewählte Abschnitt endet am Cursor</translation>
    </message>
    <message>
        <source>The chosen span in two at the cursor</source>
        <translation>Der gewählte Abschnitt am Cursor in zwei</translation>
    </message>
    <message>
        <source>The chosen span is no more</source>
        <translation>Der gewählte Abschnitt entfällt</translation>
    </message>
    <message>
        <source>The chosen span is of no step</source>
        <translation>Der gewählte Abschnitt gehört zu keiner Stufe</translation>
    </message>
    <message>
        <source>The clipboard holds no text.</source>
        <translation>Die Zwischenablage enthält keinen Text.</translation>
    </message>
    <message>
        <source>The closed check does not have this step: it keeps the sequence it was judged by. Choose an earlier step, or show the plan alone.</source>
        <translation>Die abgeschlossene Prüfung hat diese Stufe nicht: Sie behält den Ablauf, nach dem sie beurteilt wurde. Eine frühere Stufe wählen oder nur den Plan zeigen.</translation>
    </message>
    <message>
        <source>The command line</source>
        <translation>Die Befehlszeile</translation>
    </message>
    <message>
        <source>The content is no longer what it was then. What was printed then has another fingerprint.</source>
        <translation>Der Inhalt ist nicht mehr der von damals. Was damals gedruckt wurde, hat einen anderen Fingerabdruck.</translation>
    </message>
    <message>
        <source>The cursor is in a span. Put it where none is.</source>
        <translation>Der Cursor liegt in einem Abschnitt. Dorthin setzen, wo keiner ist.</translation>
    </message>
    <message>
        <source>The cursor is not within the chosen span.</source>
        <translation>Der Cursor liegt nicht im gewählten Abschnitt.</translation>
    </message>
    <message>
        <source>The diagnosis of the check is done.</source>
        <translation>Die Diagnose der Prüfung ist fertig.</translation>
    </message>
    <message>
        <source>The document has changes that are not saved. Save them?</source>
        <translation>Das Dokument hat ungespeicherte Änderungen. Speichern?</translation>
    </message>
    <message>
        <source>The exact value beside the textbook&apos;s formulas</source>
        <translation>Der genaue Wert neben den Formeln des Lehrbuchs</translation>
    </message>
    <message>
        <source>The excitation is as planned: %1</source>
        <translation>Die Speisung ist wie geplant: %1</translation>
    </message>
    <message>
        <source>The excitation may stay at %1; switch it off before anybody works on the wiring</source>
        <translation>Die Speisung darf bei %1 bleiben; abschalten, bevor jemand an der Verdrahtung arbeitet</translation>
    </message>
    <message>
        <source>The file as it is now, with the same choices</source>
        <translation>Die Datei, wie sie jetzt ist, mit denselben Vorgaben</translation>
    </message>
    <message>
        <source>The file has %1.</source>
        <translation>Die Datei hat %1.</translation>
    </message>
    <message>
        <source>The file on the disk</source>
        <translation>Die Datei auf der Platte</translation>
    </message>
    <message>
        <source>The file was saved after that: look at it before you save over it.</source>
        <translation>Die Datei wurde danach gespeichert: ansehen, bevor darüber gespeichert wird.</translation>
    </message>
    <message>
        <source>The first %1 cannot be told apart by the readings of this plan</source>
        <translation>Die ersten %1 lassen sich durch die Messwerte dieses Plans nicht unterscheiden</translation>
    </message>
    <message>
        <source>The first leaves more than the uncertainties explain.</source>
        <translation>Die erste lässt mehr übrig, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>The first number is a whole number</source>
        <translation>Die erste Zahl ist eine ganze Zahl</translation>
    </message>
    <message>
        <source>The first page</source>
        <translation>Die erste Seite</translation>
    </message>
    <message>
        <source>The first set still misses by more than the channel&apos;s limit at %1 of %2 levels: %3.</source>
        <translation>Der erste Satz verfehlt noch um mehr als den Grenzwert des Kanals bei %1 von %2 Stufenwerten: %3.</translation>
    </message>
    <message>
        <source>The first step or the shunt that it is about</source>
        <translation>Die erste Stufe oder der Shunt, um den es geht</translation>
    </message>
    <message>
        <source>The gain is %1.</source>
        <translation>Die Steigung ist %1.</translation>
    </message>
    <message>
        <source>The guided run waits where it was left: shunts may still be closed. Alt+9 goes back to it; Stop safely there tells what to open.</source>
        <translation>Der geführte Durchgang wartet, wo er verlassen wurde: Shunts können noch geschlossen sein. Alt+9 führt zurück; „Sicher abbrechen“ sagt dort, was zu öffnen ist.</translation>
    </message>
    <message>
        <source>The input has a resistance already.</source>
        <translation>Der Eingang hat schon einen Widerstand.</translation>
    </message>
    <message>
        <source>The input has no resistance to be removed.</source>
        <translation>Der Eingang hat keinen Widerstand zum Entfernen.</translation>
    </message>
    <message>
        <source>The input takes current through %1.</source>
        <translation>Der Eingang nimmt Strom über %1.</translation>
    </message>
    <message>
        <source>The instrument cannot be removed.</source>
        <translation>Das Gerät lässt sich nicht entfernen.</translation>
    </message>
    <message>
        <source>The instrument measures S− against S+</source>
        <translation>Das Gerät misst S− gegen S+</translation>
    </message>
    <message>
        <source>The instrument measures the excitation too and divides by it, so that an excitation that is a little off cancels. Without it the error of the excitation is in every reading.</source>
        <translation>Das Gerät misst auch die Speisung und teilt durch sie, sodass sich eine leicht abweichende Speisung heraushebt. Ohne dies steckt der Fehler der Speisung in jedem Messwert.</translation>
    </message>
    <message>
        <source>The instrument reckons with %1.</source>
        <translation>Das Gerät rechnet mit %1.</translation>
    </message>
    <message>
        <source>The kept work on %1 is removed for good. It was never saved as a file.</source>
        <translation>Die aufgehobene Arbeit an %1 wird endgültig entfernt. Sie wurde nie als Datei gespeichert.</translation>
    </message>
    <message>
        <source>The kept work on %1 is removed for good. Your own file stays as it is.</source>
        <translation>Die aufbewahrte Arbeit an %1 wird endgültig entfernt. Die eigene Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>The language changes when the program is started the next time.</source>
        <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>The language itself</source>
        <translation>Die Sprache selbst</translation>
    </message>
    <message>
        <source>The levels can be read in %1 ways that are about as likely. Choose above how to read them.</source>
        <translation>Die Plateaus lassen sich auf %1 etwa gleich wahrscheinliche Arten lesen. Oben wählen, wie.</translation>
    </message>
    <message>
        <source>The levels lie %1 %2 off that line.</source>
        <translation>Die Plateaus liegen %1 %2 neben dieser Geraden.</translation>
    </message>
    <message>
        <source>The levels of the present sequence</source>
        <translation>Die Stufenwerte des jetzigen Ablaufs</translation>
    </message>
    <message>
        <source>The levels of the recording are worked out.</source>
        <translation>Die Plateaus der Aufzeichnung sind berechnet.</translation>
    </message>
    <message>
        <source>The likeliest first; a bracket holds those together that cannot be told apart</source>
        <translation>Die wahrscheinlichste zuerst; eine Klammer fasst zusammen, was sich nicht unterscheiden lässt</translation>
    </message>
    <message>
        <source>The line, drawn through the mean readings against the expected ones, that nonlinearity and combined error are measured from.</source>
        <translation>Die Gerade durch die mittleren Messwerte über den erwarteten, von der Linearitätsabweichung und zusammengesetzter Fehler gemessen werden.</translation>
    </message>
    <message>
        <source>The list is on the clipboard, to be pasted into a text or a spreadsheet.</source>
        <translation>Die Liste liegt in der Zwischenablage, zum Einfügen in einen Text oder eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>The list, and what each of its columns is</source>
        <translation>Die Liste, und was jede ihrer Spalten ist</translation>
    </message>
    <message>
        <source>The match before (Shift+F3)</source>
        <translation>Der Treffer davor (Shift+F3)</translation>
    </message>
    <message>
        <source>The menus follow the order of the work. F1 opens the manual at the place that has the keyboard, Ctrl+Shift+K finds any command, and Help, Tour shows this again.</source>
        <translation>Die Menüs folgen der Reihenfolge der Arbeit. F1 öffnet das Handbuch an der Stelle, die die Tastatur hat, Strg+Umschalt+K findet jeden Befehl, und Hilfe, Rundgang zeigt dies noch einmal.</translation>
    </message>
    <message>
        <source>The next match (F3)</source>
        <translation>Der nächste Treffer (F3)</translation>
    </message>
    <message>
        <source>The ohmmeter is disconnected</source>
        <translation>Das Ohmmeter ist abgeklemmt</translation>
    </message>
    <message>
        <source>The page after</source>
        <translation>Die Seite danach</translation>
    </message>
    <message>
        <source>The page before</source>
        <translation>Die Seite davor</translation>
    </message>
    <message>
        <source>The pages Review (Alt+5) and Wiring (Alt+6) tell all of it.</source>
        <translation>Die Seiten Durchsicht (Alt+5) und Verdrahtung (Alt+6) sagen alles dazu.</translation>
    </message>
    <message>
        <source>The place is kept</source>
        <translation>Der Ort bleibt</translation>
    </message>
    <message>
        <source>The power cannot be worked out: %1</source>
        <translation>Die Leistung lässt sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>The practice sheets %1 are written.</source>
        <translation>Die Übungsblätter %1 sind geschrieben.</translation>
    </message>
    <message>
        <source>The program ended with unsaved work that was kept. Your files are as you saved them.</source>
        <translation>Das Programm endete mit ungespeicherter Arbeit, die aufbewahrt wurde. Die Dateien sind, wie sie gespeichert wurden.</translation>
    </message>
    <message>
        <source>The program&apos;s sign: a bridge with a shunt over one arm</source>
        <translation>Das Zeichen des Programms: eine Brücke mit einem Shunt über einem Zweig</translation>
    </message>
    <message>
        <source>The questions of this set on paper, and the answers for the trainer</source>
        <translation>Die Aufgaben dieses Satzes auf Papier, und die Lösungen für die Lehrkraft</translation>
    </message>
    <message>
        <source>The readings of this check were not taken from a recording. Ctrl+R takes readings from one.</source>
        <translation>Die Messwerte dieser Prüfung stammen nicht aus einer Aufzeichnung. Strg+R übernimmt Messwerte aus einer.</translation>
    </message>
    <message>
        <source>The record is a draft again, and can be submitted anew. Checks that were closed stay closed.</source>
        <translation>Das Protokoll ist wieder ein Entwurf und lässt sich neu vorlegen. Abgeschlossene Prüfungen bleiben abgeschlossen.</translation>
    </message>
    <message>
        <source>The recording %1 could not be read.</source>
        <translation>Die Aufzeichnung %1 konnte nicht gelesen werden.</translation>
    </message>
    <message>
        <source>The recording %1 was read.</source>
        <translation>Die Aufzeichnung %1 ist gelesen.</translation>
    </message>
    <message>
        <source>The recording has no column of this channel.</source>
        <translation>Die Aufzeichnung hat keine Spalte dieses Kanals.</translation>
    </message>
    <message>
        <source>The recording is being read.</source>
        <translation>Die Aufzeichnung wird gelesen.</translation>
    </message>
    <message>
        <source>The recording of the check %1 could not be read: choose that check to see why.</source>
        <translation>Die Aufzeichnung der Prüfung %1 war nicht zu lesen: jene Prüfung wählen, um den Grund zu sehen.</translation>
    </message>
    <message>
        <source>The recording of the check is not on show, so its spans cannot be changed.</source>
        <translation>Die Aufzeichnung der Prüfung wird nicht gezeigt, daher lassen sich ihre Abschnitte nicht ändern.</translation>
    </message>
    <message>
        <source>The report %1 could not be written.</source>
        <translation>Der Bericht %1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The report %1 is written.</source>
        <translation>Der Bericht %1 ist geschrieben.</translation>
    </message>
    <message>
        <source>The report is ready.</source>
        <translation>Der Bericht ist fertig.</translation>
    </message>
    <message>
        <source>The row of this cell is filtered out: show all rows, or choose a cell on view.</source>
        <translation>Die Zeile dieser Zelle ist weggefiltert: alle Zeilen zeigen oder eine sichtbare Zelle wählen.</translation>
    </message>
    <message>
        <source>The run resumes at step %1.</source>
        <translation>Der Durchgang wird bei Stufe %1 fortgesetzt.</translation>
    </message>
    <message>
        <source>The same by Akaike&apos;s information criterion (AIC), which charges less for a fitted size</source>
        <translation>Dasselbe nach Akaikes Informationskriterium (AIC), das eine angepasste Größe weniger belastet</translation>
    </message>
    <message>
        <source>The same seed gives the same trials, on every machine</source>
        <translation>Dieselbe Startzahl ergibt dieselben Versuche, auf jedem Rechner</translation>
    </message>
    <message>
        <source>The same seed with the same difficulty, kinds and number of questions gives the same questions on every computer: tell all four to the class.</source>
        <translation>Dieselbe Startzahl mit derselben Schwierigkeit, denselben Arten und derselben Anzahl ergibt auf jedem Rechner dieselben Aufgaben: der Klasse alle vier nennen.</translation>
    </message>
    <message>
        <source>The same set &amp;once more</source>
        <translation>Dieselben Auf&amp;gaben noch einmal</translation>
    </message>
    <message>
        <source>The same steps as a table</source>
        <translation>Dieselben Stufen als Tabelle</translation>
    </message>
    <message>
        <source>The search for resistors is done.</source>
        <translation>Die Suche nach Widerständen ist fertig.</translation>
    </message>
    <message>
        <source>The seed is a whole number from 0 to %1, in digits alone.</source>
        <translation>Die Startzahl ist eine ganze Zahl von 0 bis %1, nur in Ziffern.</translation>
    </message>
    <message>
        <source>The sense leads cannot be removed: an end of %1 is at a sense terminal. Move it first.</source>
        <translation>Die Fühlerleitungen lassen sich nicht entfernen: Ein Ende von %1 liegt an einem Fühleranschluss. Zuerst dieses versetzen.</translation>
    </message>
    <message>
        <source>The set-up was changed: the trials made before are out of date and were cleared.</source>
        <translation>Die Einrichtung wurde geändert: Die früheren Versuche sind überholt und wurden gelöscht.</translation>
    </message>
    <message>
        <source>The sheet %1 is written.</source>
        <translation>Das Blatt %1 ist geschrieben.</translation>
    </message>
    <message>
        <source>The signal with the levels found</source>
        <translation>Das Signal mit den gefundenen Plateaus</translation>
    </message>
    <message>
        <source>The source drives %1.</source>
        <translation>Die Quelle treibt %1.</translation>
    </message>
    <message>
        <source>The source drives %1: %2.</source>
        <translation>Die Quelle treibt %1: %2.</translation>
    </message>
    <message>
        <source>The source&apos;s plus side is on P−</source>
        <translation>Die Plusseite der Quelle liegt an P−</translation>
    </message>
    <message>
        <source>The span would lie over another one. Make one of the two shorter, or delete it.</source>
        <translation>Der Abschnitt läge über einem anderen. Kürzen Sie einen der beiden, oder löschen Sie ihn.</translation>
    </message>
    <message numerus="yes">
        <source>The spans are %n runs of the sequence. Nothing was changed: give the spans of one run to the steps by hand, or take the recording anew and choose the run.</source>
        <translation>
            <numerusform>Die Abschnitte sind %n Durchläufe des Ablaufs. Nichts wurde geändert: die Abschnitte eines Durchlaufs von Hand den Stufen geben, oder die Aufzeichnung neu übernehmen und den Durchlauf wählen.</numerusform>
            <numerusform>Die Abschnitte sind %n Durchläufe des Ablaufs. Nichts wurde geändert: die Abschnitte eines Durchlaufs von Hand den Stufen geben, oder die Aufzeichnung neu übernehmen und den Durchlauf wählen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The spans do not fit the steps of the plan. Nothing was changed.</source>
        <translation>Die Abschnitte passen nicht zu den Stufen des Plans. Nichts wurde geändert.</translation>
    </message>
    <message numerus="yes">
        <source>The spans fit the steps in %n ways about as well. Nothing was changed: give them to the steps by hand.</source>
        <translation>
            <numerusform>Die Abschnitte passen auf %n Arten etwa gleich gut zu den Stufen. Nichts wurde geändert: von Hand den Stufen geben.</numerusform>
            <numerusform>Die Abschnitte passen auf %n Arten etwa gleich gut zu den Stufen. Nichts wurde geändert: von Hand den Stufen geben.</numerusform>
        </translation>
    </message>
    <message>
        <source>The spans were matched with the steps.</source>
        <translation>Die Abschnitte wurden den Stufen zugeordnet.</translation>
    </message>
    <message>
        <source>The stock has %1. Shall the file replace the resistors and decade boxes that are there, or be added to them?</source>
        <translation>Der Bestand hat %1. Soll die Datei die vorhandenen Widerstände und Dekaden ersetzen oder zu ihnen hinzukommen?</translation>
    </message>
    <message>
        <source>The system</source>
        <translation>Das System</translation>
    </message>
    <message>
        <source>The time of the remark stays.</source>
        <translation>Der Zeitpunkt der Anmerkung bleibt.</translation>
    </message>
    <message>
        <source>The trials left this step out.</source>
        <translation>Die Versuche haben diese Stufe ausgelassen.</translation>
    </message>
    <message>
        <source>The trials of the budget are done.</source>
        <translation>Die Versuche des Budgets sind fertig.</translation>
    </message>
    <message>
        <source>The two columns as bars: outline without the cause, filled with it</source>
        <translation>Die beiden Spalten als Balken: Umriss ohne die Ursache, gefüllt mit ihr</translation>
    </message>
    <message>
        <source>The unit that this column is taken to have; type another over it</source>
        <translation>Die Einheit, in der diese Spalte angenommen wird; zum Ändern eine andere eintippen</translation>
    </message>
    <message>
        <source>The unsaved work is back. It is not saved yet.</source>
        <translation>Die ungespeicherte Arbeit ist wieder da. Sie ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>The whole page</source>
        <translation>Die ganze Seite</translation>
    </message>
    <message>
        <source>The whole recording</source>
        <translation>Die ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>The whole score on this computer is cleared. This cannot be undone.</source>
        <translation>Der ganze Punktestand auf diesem Computer wird gelöscht. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>The window</source>
        <translation>Das Fenster</translation>
    </message>
    <message>
        <source>The wiring of this step is wrong; lay no jumper before it is corrected:</source>
        <translation>Die Verdrahtung dieser Stufe ist falsch; keine Steckbrücke legen, bevor sie berichtigt ist:</translation>
    </message>
    <message>
        <source>The words of the window and how it writes numbers. They change when the program is started the next time; files are the same in every language.</source>
        <translation>Die Wörter des Fensters und wie es Zahlen schreibt. Sie ändern sich beim nächsten Start des Programms; Dateien sind in jeder Sprache gleich.</translation>
    </message>
    <message>
        <source>There are no steps yet. Add steps to a sequence.</source>
        <translation>Noch keine Stufen. Im Ablauf Stufen anlegen.</translation>
    </message>
    <message>
        <source>There are sense leads already.</source>
        <translation>Fühlerleitungen sind schon da.</translation>
    </message>
    <message>
        <source>There is a span already where the drawing began. Begin beside it, or drag its edges.</source>
        <translation>Wo die Zeichnung begann, ist schon ein Abschnitt. Daneben beginnen oder seine Kanten ziehen.</translation>
    </message>
    <message>
        <source>There is a template “%1” already.</source>
        <translation>Eine Vorlage „%1“ gibt es schon.</translation>
    </message>
    <message>
        <source>There is no channel to apply to others.</source>
        <translation>Es gibt keinen Kanal, der auf andere anzuwenden wäre.</translation>
    </message>
    <message>
        <source>There is no channel to choose resistors for.</source>
        <translation>Es gibt keinen Kanal, für den Widerstände zu wählen wären.</translation>
    </message>
    <message>
        <source>There is no channel to copy.</source>
        <translation>Es gibt keinen Kanal zum Kopieren.</translation>
    </message>
    <message>
        <source>There is no channel to duplicate.</source>
        <translation>Es gibt keinen Kanal zum Verdoppeln.</translation>
    </message>
    <message>
        <source>There is no channel to edit.</source>
        <translation>Es gibt keinen Kanal zum Ändern.</translation>
    </message>
    <message>
        <source>There is no channel to lay a sequence out for.</source>
        <translation>Es gibt keinen Kanal, für den ein Ablauf anzulegen wäre.</translation>
    </message>
    <message>
        <source>There is no channel to remove.</source>
        <translation>Es gibt keinen Kanal zum Entfernen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add a channel first.</source>
        <translation>Noch kein Kanal: zuerst einen Kanal anlegen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add channels first.</source>
        <translation>Noch kein Kanal: zuerst Kanäle anlegen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add or import some.</source>
        <translation>Noch kein Kanal: welche anlegen oder einlesen.</translation>
    </message>
    <message>
        <source>There is no channel.</source>
        <translation>Es gibt keinen Kanal.</translation>
    </message>
    <message>
        <source>There is no check to enter readings for: start one with &quot;New&quot;.</source>
        <translation>Es gibt keine Prüfung, für die Messwerte einzutragen wären: mit „Neu“ eine beginnen.</translation>
    </message>
    <message>
        <source>There is no check to remove.</source>
        <translation>Es gibt keine Prüfung zum Entfernen.</translation>
    </message>
    <message>
        <source>There is no level to lay out: choose other levels, sides, or shunts that move the output.</source>
        <translation>Es gibt keinen Stufenwert anzulegen: andere Stufenwerte, Seiten oder Shunts wählen, die das Signal bewegen.</translation>
    </message>
    <message>
        <source>There is no number in the joined span.</source>
        <translation>Im verbundenen Abschnitt ist keine Zahl.</translation>
    </message>
    <message>
        <source>There is no number in the span.</source>
        <translation>Im Abschnitt ist keine Zahl.</translation>
    </message>
    <message>
        <source>There is no picture on view.</source>
        <translation>Kein Bild ist zu sehen.</translation>
    </message>
    <message>
        <source>There is no second check of this channel to compare with.</source>
        <translation>Es gibt keine zweite Prüfung dieses Kanals zum Vergleichen.</translation>
    </message>
    <message>
        <source>There is no shunt to close yet. Add resistors and their places on the page Shunts, then lay out the sequence that closes them.</source>
        <translation>Noch kein Shunt zum Schließen. Auf der Seite Shunts Widerstände und ihre Orte anlegen, dann den Ablauf, der sie schließt.</translation>
    </message>
    <message>
        <source>There is no shunt to close: add shunts first.</source>
        <translation>Kein Shunt zum Schließen: zuerst Shunts anlegen.</translation>
    </message>
    <message>
        <source>There is no span after the chosen one to join it with.</source>
        <translation>Nach dem gewählten Abschnitt gibt es keinen zum Verbinden.</translation>
    </message>
    <message>
        <source>There is no step on which all ways agree.</source>
        <translation>Es gibt keine Stufe, bei der alle Arten übereinstimmen.</translation>
    </message>
    <message>
        <source>There is no table on this page whose cells could be copied, pasted or cleared.</source>
        <translation>Auf dieser Seite gibt es keine Tabelle, deren Zellen kopiert, eingefügt oder geleert werden könnten.</translation>
    </message>
    <message>
        <source>There is nothing to be read in this file.</source>
        <translation>In dieser Datei gibt es nichts zu lesen.</translation>
    </message>
    <message>
        <source>There is nothing to copy or export: %1</source>
        <translation>Es gibt nichts zu kopieren oder zu exportieren: %1</translation>
    </message>
    <message>
        <source>There is nothing to copy or export: no two checks are compared.</source>
        <translation>Es gibt nichts zu kopieren oder zu exportieren: Es werden keine zwei Prüfungen verglichen.</translation>
    </message>
    <message>
        <source>There is nothing to export: the stock has no resistors and no decade boxes.</source>
        <translation>Es gibt nichts zu exportieren: Der Bestand hat weder Widerstände noch Dekaden.</translation>
    </message>
    <message>
        <source>There is such a leak already.</source>
        <translation>Ein solcher Nebenschluss ist schon da.</translation>
    </message>
    <message>
        <source>There is this balance network already.</source>
        <translation>Dieses Abgleichnetzwerk ist schon da.</translation>
    </message>
    <message>
        <source>These faults are known and accepted by whoever is responsible</source>
        <translation>Diese Fehler sind bekannt und von der verantwortlichen Person hingenommen</translation>
    </message>
    <message>
        <source>These keys belong to their place and stay as they are.</source>
        <translation>Diese Tasten gehören zu ihrem Ort und bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>These results are for what was asked before: search again to use a set.</source>
        <translation>Diese Ergebnisse gelten für das vorher Gefragte: neu suchen, um einen Satz zu verwenden.</translation>
    </message>
    <message>
        <source>These rows (*.csv)</source>
        <translation>Diese Zeilen (*.csv)</translation>
    </message>
    <message>
        <source>These rows as CSV, as sorted and filtered</source>
        <translation>Diese Zeilen als CSV, wie sortiert und gefiltert</translation>
    </message>
    <message>
        <source>This bridge is not offered with sense leads.</source>
        <translation>Diese Brücke wird nicht mit Fühlerleitungen angeboten.</translation>
    </message>
    <message>
        <source>This cannot be done now. %1</source>
        <translation>Das geht jetzt nicht. %1</translation>
    </message>
    <message>
        <source>This channel</source>
        <translation>Dieser Kanal</translation>
    </message>
    <message>
        <source>This check is closed and shows the set-up it was judged by: reopen it, or choose &quot;plan only&quot; or an open check.</source>
        <translation>Diese Prüfung ist abgeschlossen und zeigt die Einrichtung, nach der sie beurteilt wurde: wieder öffnen, oder „nur Plan“ oder eine offene Prüfung wählen.</translation>
    </message>
    <message>
        <source>This closes other shunts than the present sequence, or in another order: readings of open checks will be dropped. Close those checks first to keep them.</source>
        <translation>Dies schließt andere Shunts als der jetzige Ablauf oder in anderer Folge: Messwerte offener Prüfungen entfallen. Diese Prüfungen vorher abschließen, um sie zu behalten.</translation>
    </message>
    <message>
        <source>This column is worked out and cannot be edited.</source>
        <translation>Diese Spalte wird gerechnet und lässt sich nicht bearbeiten.</translation>
    </message>
    <message>
        <source>This column is worked out from the channel. Type what the ohmmeter shows into Measured.</source>
        <translation>Diese Spalte wird aus dem Kanal gerechnet. Was das Ohmmeter zeigt, bei „Gemessen“ eintippen.</translation>
    </message>
    <message>
        <source>This connection has no such terminal.</source>
        <translation>Diese Anschlussart hat keinen solchen Anschluss.</translation>
    </message>
    <message>
        <source>This entry changes with what is open, and can have no keys.</source>
        <translation>Dieser Eintrag ändert sich mit dem, was offen ist, und kann keine Tasten haben.</translation>
    </message>
    <message>
        <source>This page</source>
        <translation>Diese Seite</translation>
    </message>
    <message>
        <source>This resistor&apos;s calibration is overdue.</source>
        <translation>Die Kalibrierung dieses Widerstands ist überfällig.</translation>
    </message>
    <message>
        <source>Thorough</source>
        <translation>Gründlich</translation>
    </message>
    <message>
        <source>Those that do not pass or have changed</source>
        <translation>Die nicht bestandenen oder geänderten</translation>
    </message>
    <message>
        <source>Those ticked below</source>
        <translation>Die unten angehakten</translation>
    </message>
    <message>
        <source>Tick at least one channel whose levels match its plan.</source>
        <translation>Mindestens einen Kanal anhaken, dessen Plateaus zu seinem Plan passen.</translation>
    </message>
    <message>
        <source>Time from</source>
        <translation>Zeit aus</translation>
    </message>
    <message>
        <source>Time left</source>
        <translation>Restzeit</translation>
    </message>
    <message>
        <source>Times of every step</source>
        <translation>Zeiten jeder Stufe</translation>
    </message>
    <message>
        <source>Times written as</source>
        <translation>Zeiten geschrieben als</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>To %1, check %2, as a whole.</source>
        <translation>Zu %1, Prüfung %2, als Ganzes.</translation>
    </message>
    <message>
        <source>To [s]</source>
        <translation>Bis [s]</translation>
    </message>
    <message>
        <source>To confirm</source>
        <translation>Zur Bestätigung</translation>
    </message>
    <message>
        <source>To node</source>
        <translation>Knoten nach</translation>
    </message>
    <message>
        <source>To pin</source>
        <translation>Stift nach</translation>
    </message>
    <message>
        <source>To step %1 of %2, check %3.</source>
        <translation>Zu Stufe %1 von %2, Prüfung %3.</translation>
    </message>
    <message>
        <source>To tell apart</source>
        <translation>Zur Unterscheidung</translation>
    </message>
    <message>
        <source>To the menus</source>
        <translation>Zu den Menüs</translation>
    </message>
    <message>
        <source>To the next or previous field</source>
        <translation>Zum nächsten oder vorigen Feld</translation>
    </message>
    <message>
        <source>To the next or previous span</source>
        <translation>Zum nächsten oder vorigen Abschnitt</translation>
    </message>
    <message>
        <source>To the next or previous step</source>
        <translation>Zur nächsten oder vorigen Stufe</translation>
    </message>
    <message>
        <source>To which channels</source>
        <translation>Auf welche Kanäle</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>Tolerance ±</source>
        <translation>Toleranz ±</translation>
    </message>
    <message>
        <source>Took readings for %1 of %2 channels.</source>
        <translation>Messwerte für %1 von %2 Kanälen übernommen.</translation>
    </message>
    <message>
        <source>Took up %1: %2.</source>
        <translation>%1 übernommen: %2.</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Try out</source>
        <translation>Ausprobieren</translation>
    </message>
    <message>
        <source>Two-sided</source>
        <translation>Zweiseitig</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Type a number, or paste a column of numbers: their mean is taken</source>
        <translation>Eine Zahl eintippen oder eine Spalte von Zahlen einfügen: ihr Mittelwert gilt</translation>
    </message>
    <message>
        <source>Type the reading first, with its sign.</source>
        <translation>Zuerst den Messwert eintippen, mit Vorzeichen.</translation>
    </message>
    <message>
        <source>Typed resistance, a new shunt</source>
        <translation>Eingetippter Widerstand, ein neuer Shunt</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>U at most, of limit</source>
        <translation>U max., vom Grenzwert</translation>
    </message>
    <message>
        <source>U of deviation</source>
        <translation>U der Abweichung</translation>
    </message>
    <message>
        <source>U of the deviation</source>
        <translation>U der Abweichung</translation>
    </message>
    <message>
        <source>U up to ±%1</source>
        <translation>U bis zu ±%1</translation>
    </message>
    <message>
        <source>U, %1
[%2]</source>
        <translation>U %1
[%2]</translation>
    </message>
    <message>
        <source>UTF-16, high byte first</source>
        <translation>UTF-16, höheres Byte zuerst</translation>
    </message>
    <message>
        <source>UTF-16, low byte first</source>
        <translation>UTF-16, niedrigeres Byte zuerst</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>Uncertainties</source>
        <translation>Unsicherheiten</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Unchanged within ± %1: %2 ± %3 %4 (95 %).</source>
        <translation>Unverändert innerhalb von ± %1: %2 ± %3 %4 (95 %).</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Unit of the bars</source>
        <translation>Einheit der Balken</translation>
    </message>
    <message>
        <source>Unit of the readings</source>
        <translation>Einheit der Messwerte</translation>
    </message>
    <message>
        <source>Unit, factors, excitation, range, input, balance. A bridge of another template keeps its bridge factor, a transducer its scale.</source>
        <translation>Einheit, Faktoren, Speisung, Bereich, Eingang, Abgleich. Eine Brücke anderer Vorlage behält ihren Brückenfaktor, ein Aufnehmer seine Skalierung.</translation>
    </message>
    <message>
        <source>Units in line</source>
        <translation>Einheiten in Zeile</translation>
    </message>
    <message>
        <source>Units of columns</source>
        <translation>Einheiten der Spalten</translation>
    </message>
    <message>
        <source>Units per mV/V</source>
        <translation>Einheiten je mV/V</translation>
    </message>
    <message>
        <source>Universal file, dataset 58</source>
        <translation>Universaldatei, Datensatz 58</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept safe against a crash at the moment: %1 Save often until that is mended.</source>
        <translation>Ungespeicherte Arbeit lässt sich zurzeit nicht gegen einen Absturz sichern: %1 Bis das behoben ist, oft speichern.</translation>
    </message>
    <message>
        <source>Until then the table has only the steps on which all ways agree.</source>
        <translation>Bis dahin enthält die Tabelle nur die Stufen, bei denen alle Arten übereinstimmen.</translation>
    </message>
    <message>
        <source>Untitled document</source>
        <translation>Unbenanntes Dokument</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Up and Down step the digit left of the cursor, Page Up and Page Down by ten. Escape gives back what was.</source>
        <translation>Auf und Ab ändern die Ziffer links der Schreibmarke, Bild auf und Bild ab um zehn. Escape bringt zurück, was war.</translation>
    </message>
    <message>
        <source>Up and down (hysteresis)</source>
        <translation>Hinauf und hinunter (Umkehrspanne)</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Bis zu</translation>
    </message>
    <message>
        <source>Update shunts</source>
        <translation>Shunts erneuern</translation>
    </message>
    <message>
        <source>Update shunts from stock</source>
        <translation>Shunts aus dem Bestand erneuern</translation>
    </message>
    <message>
        <source>Use chosen resistors</source>
        <translation>Gewählte Widerstände verwenden</translation>
    </message>
    <message>
        <source>Use for all leads of this channel</source>
        <translation>Für alle Leitungen dieses Kanals verwenden</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Verwendet von</translation>
    </message>
    <message>
        <source>Usual pins</source>
        <translation>Übliche Stifte</translation>
    </message>
    <message>
        <source>Usual size of letters</source>
        <translation>Übliche Buchstabengröße</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value of the input</source>
        <translation>Wert der Eingangsgröße</translation>
    </message>
    <message>
        <source>Value on the calibration certificate. A new one is entered with its U: 59.906k ± 0.6</source>
        <translation>Wert laut Kalibrierschein. Ein neuer wird mit seiner U eingetragen: 59,906k ± 0,6</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Values are edited in the channel&apos;s set-up and in the table of shunts.</source>
        <translation>Werte werden in der Einrichtung des Kanals und in der Tabelle der Shunts bearbeitet.</translation>
    </message>
    <message>
        <source>Values of %1</source>
        <translation>Werte von %1</translation>
    </message>
    <message>
        <source>Vector picture (*.svg)</source>
        <translation>Vektorbild (*.svg)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>Versions, system, screen and language; nothing of your documents</source>
        <translation>Versionen, System, Bildschirm und Sprache; nichts aus den Dokumenten</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>WAV file</source>
        <translation>WAV-Datei</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Wanted, %1</source>
        <translation>Gewünscht, %1</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>Watch a folder…</source>
        <translation>Ordner beobachten…</translation>
    </message>
    <message>
        <source>Watch a recording…</source>
        <translation>Aufzeichnung beobachten…</translation>
    </message>
    <message>
        <source>Watched recordings</source>
        <translation>Beobachtete Aufzeichnungen</translation>
    </message>
    <message>
        <source>Watching.</source>
        <translation>Es wird beobachtet.</translation>
    </message>
    <message>
        <source>Weight,
%</source>
        <translation>Gewicht,
%</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a fault would do to the readings (Ctrl+8)</source>
        <translation>Was ein Fehler an den Messwerten bewirkte (Strg+8)</translation>
    </message>
    <message>
        <source>What a pin leads to is said in the table of pins above.</source>
        <translation>Wohin ein Stift führt, steht in der Tabelle der Stifte oben.</translation>
    </message>
    <message>
        <source>What a shunt would do at every place (Ctrl+7)</source>
        <translation>Was ein Shunt an jedem Ort bewirkte (Strg+7)</translation>
    </message>
    <message>
        <source>What becomes of each channel</source>
        <translation>Was aus jedem Kanal wird</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Was daraus wird</translation>
    </message>
    <message>
        <source>What both tests together say</source>
        <translation>Was beide Tests zusammen sagen</translation>
    </message>
    <message>
        <source>What can be done here</source>
        <translation>Was hier getan werden kann</translation>
    </message>
    <message>
        <source>What can be done with the drawing (menu key or Shift+F10)</source>
        <translation>Was sich mit der Zeichnung tun lässt (Menütaste oder Umschalt+F10)</translation>
    </message>
    <message>
        <source>What changed between the checks is worked out.</source>
        <translation>Was sich zwischen den Prüfungen geändert hat, ist berechnet.</translation>
    </message>
    <message>
        <source>What changed from one check to another, and why</source>
        <translation>Was sich von einer Prüfung zur anderen geändert hat, und warum</translation>
    </message>
    <message>
        <source>What changed physically</source>
        <translation>Was sich physikalisch geändert hat</translation>
    </message>
    <message>
        <source>What column %1 is</source>
        <translation>Was Spalte %1 ist</translation>
    </message>
    <message>
        <source>What counts</source>
        <translation>Was zählt</translation>
    </message>
    <message>
        <source>What counts as unchanged from one check to another; to be fixed before the test</source>
        <translation>Was von einer Prüfung zur anderen als unverändert gilt; vor dem Versuch festzulegen</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was sich unterscheidet</translation>
    </message>
    <message>
        <source>What differs in the two set-ups</source>
        <translation>Was sich in den beiden Einrichtungen unterscheidet</translation>
    </message>
    <message>
        <source>What each saving changed</source>
        <translation>Was jedes Speichern geändert hat</translation>
    </message>
    <message>
        <source>What every bridge has stays: %1.</source>
        <translation>Was jede Brücke hat, bleibt: %1.</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What happens to the present shunts</source>
        <translation>Was mit den jetzigen Shunts geschieht</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>What is drawn besides points and bars</source>
        <translation>Was außer Punkten und Balken gezeichnet wird</translation>
    </message>
    <message>
        <source>What is given</source>
        <translation>Was gegeben ist</translation>
    </message>
    <message>
        <source>What is left of it when the cause is fitted, its offset free</source>
        <translation>Was davon bleibt, wenn die Ursache angepasst ist, mit freiem Nullpunkt</translation>
    </message>
    <message>
        <source>What is measured with all dials at 0</source>
        <translation>Was gemessen wird, wenn alle Drehschalter auf 0 stehen</translation>
    </message>
    <message>
        <source>What is selected, else the whole page</source>
        <translation>Was gewählt ist, sonst die ganze Seite</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>What is stated about everything but shunts</source>
        <translation>Was über alles außer Shunts angegeben ist</translation>
    </message>
    <message>
        <source>What is tried out</source>
        <translation>Was ausprobiert wird</translation>
    </message>
    <message>
        <source>What is wrong with the wiring</source>
        <translation>Was an der Verdrahtung falsch ist</translation>
    </message>
    <message>
        <source>What may be wrong</source>
        <translation>Was nicht stimmen könnte</translation>
    </message>
    <message>
        <source>What may be wrong, refitted through the network of the bridge, with its standard uncertainty</source>
        <translation>Was nicht stimmen könnte, durch das Netzwerk der Brücke neu angepasst, mit seiner Standardunsicherheit</translation>
    </message>
    <message>
        <source>What mends it</source>
        <translation>Was es behebt</translation>
    </message>
    <message>
        <source>What reading</source>
        <translation>Welcher Messwert</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>Was die Balken zeigen</translation>
    </message>
    <message>
        <source>What the cause leaves of each step&apos;s deviation</source>
        <translation>Was die Ursache von der Abweichung jeder Stufe übrig lässt</translation>
    </message>
    <message>
        <source>What the channels belong with; empty takes them out of their groups.</source>
        <translation>Womit die Kanäle zusammengehören; leer nimmt sie aus ihren Gruppen.</translation>
    </message>
    <message>
        <source>What the check made of the plan: verdict, charts, figures, what may be wrong, and what changed since the check before.</source>
        <translation>Was die Prüfung aus dem Plan gemacht hat: Urteil, Diagramme, Kennwerte, was falsch sein kann und was sich seit der Prüfung davor geändert hat.</translation>
    </message>
    <message>
        <source>What the chosen place would do</source>
        <translation>Was der gewählte Ort bewirkte</translation>
    </message>
    <message>
        <source>What the file on the disk has otherwise than this window</source>
        <translation>Was die Datei auf der Platte anders hat als dieses Fenster</translation>
    </message>
    <message>
        <source>What the keys and the mouse do here</source>
        <translation>Was Tasten und Maus hier tun</translation>
    </message>
    <message>
        <source>What the map shows</source>
        <translation>Was die Karte zeigt</translation>
    </message>
    <message>
        <source>What the prediction depends on</source>
        <translation>Wovon die Vorhersage abhängt</translation>
    </message>
    <message>
        <source>What the program remembers cannot be read or moved aside, and everything in it is as usual: %1. Look at the permissions of file and folder.</source>
        <translation>Was sich das Programm merkt, ist weder lesbar noch beiseitezulegen, und alles darin ist wie üblich: %1. Die Rechte von Datei und Ordner ansehen.</translation>
    </message>
    <message>
        <source>What the program remembers was damaged, settings perhaps among it. What could not be read is as usual again. Kept as it was found: %1.</source>
        <translation>Was sich das Programm merkt, war beschädigt, vielleicht auch Einstellungen. Was nicht lesbar war, ist wieder wie üblich. Aufbewahrt, wie es gefunden wurde: %1.</translation>
    </message>
    <message>
        <source>What there is to make shunts of: add it here, paste it from a spreadsheet, or import a file.</source>
        <translation>Woraus sich Shunts machen lassen: hier anlegen, aus einer Tabellenkalkulation einfügen oder aus einer Datei einlesen.</translation>
    </message>
    <message>
        <source>What to apply</source>
        <translation>Was anzuwenden ist</translation>
    </message>
    <message>
        <source>What to edit</source>
        <translation>Was zu ändern ist</translation>
    </message>
    <message>
        <source>What to read about the program</source>
        <translation>Was über das Programm zu lesen ist</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What was found, with its numbers</source>
        <translation>Was gefunden wurde, mit den Zahlen dazu</translation>
    </message>
    <message>
        <source>What was kept on %1 is damaged and cannot be recovered: %2. It stays at %3.</source>
        <translation>Das an %1 Aufbewahrte ist beschädigt und nicht wiederherstellbar: %2. Es bleibt bei %3.</translation>
    </message>
    <message>
        <source>What was not read</source>
        <translation>Was nicht gelesen wurde</translation>
    </message>
    <message>
        <source>What was typed is dropped</source>
        <translation>Das Eingegebene wird verworfen</translation>
    </message>
    <message>
        <source>What you type in the other columns of a row is stated; empty its uncertainty to assume it again.</source>
        <translation>Was in den anderen Spalten einer Zeile eingetippt wird, gilt als angegeben; die Unsicherheit leeren, um sie wieder anzunehmen.</translation>
    </message>
    <message>
        <source>What, and by which formula</source>
        <translation>Was, und nach welcher Formel</translation>
    </message>
    <message>
        <source>Wheel, + and −</source>
        <translation>Mausrad, + und −</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>When the instrument was zeroed</source>
        <translation>Wann das Gerät auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where a channel is not ticked, its row says why.</source>
        <translation>Wo ein Kanal nicht angehakt ist, sagt seine Zeile, warum.</translation>
    </message>
    <message>
        <source>Whether the program there still runs cannot be seen from here. Take the lock over only when you know that it does not.</source>
        <translation>Ob das Programm dort noch läuft, ist von hier nicht zu sehen. Die Sperre nur übernehmen, wenn feststeht, dass es nicht läuft.</translation>
    </message>
    <message>
        <source>Whether the reading still has its sign, and whether the article&apos;s strain goes another way</source>
        <translation>Ob der Messwert sein Vorzeichen noch hat und ob die Dehnung des Prüflings anders wirkt</translation>
    </message>
    <message>
        <source>Whether the uncertainty is stated for this channel or the usual one of its kind</source>
        <translation>Ob die Unsicherheit für diesen Kanal angegeben ist oder die übliche ihrer Art</translation>
    </message>
    <message>
        <source>Which arm</source>
        <translation>Welcher Zweig</translation>
    </message>
    <message>
        <source>Which channels</source>
        <translation>Welche Kanäle</translation>
    </message>
    <message>
        <source>Which fault</source>
        <translation>Welcher Fehler</translation>
    </message>
    <message>
        <source>Which is larger</source>
        <translation>Was größer ist</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Welche Richtung</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>Whose plan it is</source>
        <translation>Wessen Plan es ist</translation>
    </message>
    <message>
        <source>Whose resistance is put to every place, one after the other</source>
        <translation>Dessen Widerstand an jeden Ort gesetzt wird, einen nach dem anderen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Window of the moving average</source>
        <translation>Fenster des gleitenden Mittelwerts</translation>
    </message>
    <message>
        <source>Wiper to S+</source>
        <translation>Schleifer zu S+</translation>
    </message>
    <message>
        <source>Wiper, 0 to 1</source>
        <translation>Schleifer, 0 bis 1</translation>
    </message>
    <message>
        <source>Wire…</source>
        <translation>Draht…</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>With its usual numbers.</source>
        <translation>Mit den üblichen Zahlen.</translation>
    </message>
    <message>
        <source>With its wires and switch. Type another one to map it; placed, it is a new shunt</source>
        <translation>Mit seinen Leitungen und seinem Schalter. Einen anderen eintippen, um ihn zu kartieren; gesetzt ist er ein neuer Shunt</translation>
    </message>
    <message>
        <source>With minus without</source>
        <translation>Mit minus ohne</translation>
    </message>
    <message>
        <source>With the zero reading of %1 the instrument should show %2 %3.</source>
        <translation>Mit dem Nullwert %1 müsste das Gerät %2 %3 zeigen.</translation>
    </message>
    <message>
        <source>With their plans and checks; undo brings them back.</source>
        <translation>Mit ihren Plänen und Prüfungen; „Rückgängig“ bringt sie zurück.</translation>
    </message>
    <message>
        <source>With this
cause</source>
        <translation>Mit dieser
Ursache</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw the record</source>
        <translation>Protokoll zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Innerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>Within limits, which lie beyond the axis</source>
        <translation>Innerhalb der Grenzwerte, die jenseits der Achse liegen</translation>
    </message>
    <message>
        <source>Within the limit passes, beyond it fails. The uncertainty U is shown, not used.</source>
        <translation>Innerhalb des Grenzwerts bestanden, außerhalb nicht. Die Unsicherheit U wird gezeigt, nicht verwendet.</translation>
    </message>
    <message>
        <source>Within the limit passes, beyond it fails; where U is larger than the share below, it cannot tell.</source>
        <translation>Innerhalb des Grenzwerts bestanden, außerhalb nicht; wo U größer ist als der Anteil unten, nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Ohne</translation>
    </message>
    <message>
        <source>Word by word to the left or right</source>
        <translation>Wort für Wort nach links oder rechts</translation>
    </message>
    <message>
        <source>Words of the command, its menu or its keys</source>
        <translation>Wörter des Befehls, seines Menüs oder seiner Tasten</translation>
    </message>
    <message>
        <source>Words that shown rows hold</source>
        <translation>Wörter, die gezeigte Zeilen enthalten</translation>
    </message>
    <message>
        <source>Words to find</source>
        <translation>Gesuchte Wörter</translation>
    </message>
    <message>
        <source>Work aside from the window</source>
        <translation>Arbeit neben dem Fenster</translation>
    </message>
    <message>
        <source>Work out</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Work out all</source>
        <translation>Alle berechnen</translation>
    </message>
    <message>
        <source>Work out all jumpers</source>
        <translation>Alle Steckbrücken berechnen</translation>
    </message>
    <message>
        <source>Work out jumpers</source>
        <translation>Steckbrücken berechnen</translation>
    </message>
    <message>
        <source>Work out the jumpers of every shunt of the channel</source>
        <translation>Die Steckbrücken jedes Shunts des Kanals berechnen</translation>
    </message>
    <message>
        <source>Work out the jumpers that lay this shunt where the plan says</source>
        <translation>Die Steckbrücken berechnen, die diesen Shunt dorthin legen, wo der Plan es sagt</translation>
    </message>
    <message>
        <source>Work that was left</source>
        <translation>Liegengebliebene Arbeit</translation>
    </message>
    <message>
        <source>Work the resistance out from length and size of a copper wire</source>
        <translation>Den Widerstand aus Länge und Querschnitt eines Kupferdrahts berechnen</translation>
    </message>
    <message>
        <source>Workbook with formulas (XLSX)</source>
        <translation>Arbeitsmappe mit Formeln (XLSX)</translation>
    </message>
    <message>
        <source>Workbooks</source>
        <translation>Arbeitsmappen</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Working of the chosen step</source>
        <translation>Rechenweg der gewählten Stufe</translation>
    </message>
    <message>
        <source>Working out the hash by which the file is known again; then the readings are taken.</source>
        <translation>Die Prüfsumme wird berechnet, an der die Datei wiedererkannt wird; dann werden die Messwerte übernommen.</translation>
    </message>
    <message>
        <source>Working out what must be read…</source>
        <translation>Es wird berechnet, was anzuzeigen ist…</translation>
    </message>
    <message>
        <source>Worst step</source>
        <translation>Schlechteste Stufe</translation>
    </message>
    <message>
        <source>Write pins, jumpers with boxes to tick, drawings and cautions as PDF</source>
        <translation>Stifte, Steckbrücken mit Kästchen zum Abhaken, Zeichnungen und Sicherheitshinweise als PDF schreiben</translation>
    </message>
    <message>
        <source>Write resistors and decade boxes to a text file (CSV); ranges of preferred values are not in it</source>
        <translation>Widerstände und Dekaden in eine Textdatei (CSV) schreiben; Normwertbereiche sind nicht darin</translation>
    </message>
    <message>
        <source>Write what must be read in each state, with room for what is read, as PDF</source>
        <translation>Was in jedem Zustand anzuzeigen ist, mit Platz für das Abgelesene, als PDF schreiben</translation>
    </message>
    <message>
        <source>Writes it into the channel; undo brings the plan back</source>
        <translation>Schreibt es in den Kanal; „Rückgängig“ bringt den Plan zurück</translation>
    </message>
    <message>
        <source>Writes the file anew from this window</source>
        <translation>Schreibt die Datei neu aus diesem Fenster</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the report</source>
        <translation>Bericht wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the sheet</source>
        <translation>Blatt wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the sheets</source>
        <translation>Blätter werden geschrieben</translation>
    </message>
    <message>
        <source>Wrote %1.</source>
        <translation>%1 geschrieben.</translation>
    </message>
    <message numerus="yes">
        <source>Wrote %Ln row(s) to %1.</source>
        <translation>
            <numerusform>%Ln Zeile in %1 geschrieben.</numerusform>
            <numerusform>%Ln Zeilen in %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>You may not write to its folder.</source>
        <translation>In ihrem Ordner darf nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>You may not write to this file.</source>
        <translation>In diese Datei darf nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>You say that the record is complete. Every open check with a reading is closed, so that it keeps the set-up it was judged by. Somebody else reviews it.</source>
        <translation>Hiermit wird das Protokoll als vollständig erklärt. Jede offene Prüfung mit einem Messwert wird abgeschlossen, sodass sie die Einrichtung behält, nach der sie beurteilt wurde. Jemand anderes sieht es durch.</translation>
    </message>
    <message>
        <source>You stand for this record as it is now; any later change ends that. A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the article, and this entry is no signature: decisions stay with the responsible person.</source>
        <translation>Die freigebende Person steht für dieses Protokoll ein, wie es jetzt ist; jede spätere Änderung beendet das. Eine bestandene Shuntprüfung sagt nichts über DMS-Klebung, k-Faktor, Ausrichtung oder die Festigkeit des Prüflings, und dieser Eintrag ist keine Unterschrift: Entscheidungen bleiben bei der verantwortlichen Person.</translation>
    </message>
    <message>
        <source>Your own template.</source>
        <translation>Eigene Vorlage.</translation>
    </message>
    <message>
        <source>Yours is kept. It is on the disk when you save it.</source>
        <translation>Das Eigene ist behalten. Auf der Platte ist es nach dem Speichern.</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>Zero after every level</source>
        <translation>Null nach jedem Stufenwert</translation>
    </message>
    <message>
        <source>Zero change, %1</source>
        <translation>Nullpunktänderung, %1</translation>
    </message>
    <message>
        <source>Zero reading farthest from the first one, less the first, as a share of the greatest expected reading.</source>
        <translation>Nullwert, der vom ersten am weitesten entfernt ist, minus diesem, als Anteil des größten erwarteten Messwerts.</translation>
    </message>
    <message>
        <source>Zero reading, %1</source>
        <translation>Nullwert, %1</translation>
    </message>
    <message>
        <source>Zero return, of greatest</source>
        <translation>Nullrückkehr, vom größten</translation>
    </message>
    <message>
        <source>Zero shift</source>
        <translation>Nullpunktverschiebung</translation>
    </message>
    <message>
        <source>Zero state: all shunts open, no jumper laid, no load on the structure</source>
        <translation>Nullzustand: alle Shunts offen, keine Steckbrücke gelegt, keine Last auf der Struktur</translation>
    </message>
    <message>
        <source>Zero subtracted, then linearised</source>
        <translation>Null abgezogen, dann linearisiert</translation>
    </message>
    <message>
        <source>Zeroed after it came</source>
        <translation>Danach genullt</translation>
    </message>
    <message>
        <source>Zeroed before it came</source>
        <translation>Vorher genullt</translation>
    </message>
    <message>
        <source>Zeroed before it came, the instrument shows the jump of the zero in every reading</source>
        <translation>Vorher genullt zeigt das Gerät den Sprung des Nullpunkts in jedem Messwert</translation>
    </message>
    <message>
        <source>Zigzags (IEEE 315)</source>
        <translation>Zickzack (IEEE 315)</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Verklei&amp;nern</translation>
    </message>
    <message>
        <source>a channel needs a name</source>
        <translation>ein Kanal braucht einen Namen</translation>
    </message>
    <message>
        <source>a constant current of %1 mA</source>
        <translation>ein Konstantstrom von %1 mA</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a new channel</source>
        <translation>ein neuer Kanal</translation>
    </message>
    <message>
        <source>a newer version of the program wrote it</source>
        <translation>eine neuere Fassung des Programms hat es geschrieben</translation>
    </message>
    <message>
        <source>a pin that is not in the list</source>
        <translation>ein Stift, der nicht in der Liste steht</translation>
    </message>
    <message>
        <source>above the usual</source>
        <translation>über dem Üblichen</translation>
    </message>
    <message>
        <source>acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>across arm %1</source>
        <translation>über Zweig %1</translation>
    </message>
    <message>
        <source>add: the level at the cursor</source>
        <translation>hinzufügen: das Plateau am Cursor</translation>
    </message>
    <message>
        <source>added to the present shunts and steps</source>
        <translation>zu den jetzigen Shunts und Stufen hinzu</translation>
    </message>
    <message>
        <source>after the file</source>
        <translation>nach der Datei</translation>
    </message>
    <message>
        <source>after the wait</source>
        <translation>nach dem Warten</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message numerus="yes">
        <source>all %n plans</source>
        <translation>
            <numerusform>alle %n Pläne</numerusform>
            <numerusform>alle %n Pläne</numerusform>
        </translation>
    </message>
    <message>
        <source>all bridges, leads with resistance, shunts at terminals</source>
        <translation>alle Brücken, Leitungen mit Widerstand, Shunts an Anschlüssen</translation>
    </message>
    <message>
        <source>all channels of this recording, or one</source>
        <translation>alle Kanäle dieser Aufzeichnung oder einer</translation>
    </message>
    <message>
        <source>all open checks</source>
        <translation>alle offenen Prüfungen</translation>
    </message>
    <message>
        <source>all points</source>
        <translation>alle Punkte</translation>
    </message>
    <message>
        <source>all shunts open</source>
        <translation>alle Shunts offen</translation>
    </message>
    <message>
        <source>ambiguous, %1 ways to read it: choose below</source>
        <translation>mehrdeutig, %1 Arten, es zu lesen: unten wählen</translation>
    </message>
    <message>
        <source>an arm</source>
        <translation>ein Zweig</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more cell(s)</source>
        <translation>
            <numerusform>und %Ln weitere Zelle</numerusform>
            <numerusform>und %Ln weitere Zellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more line(s)</source>
        <translation>
            <numerusform>und %Ln weitere Zeile</numerusform>
            <numerusform>und %Ln weitere Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more that are not told</source>
        <translation>
            <numerusform>und %n weiterer, der nicht genannt ist</numerusform>
            <numerusform>und %n weitere, die nicht genannt sind</numerusform>
        </translation>
    </message>
    <message>
        <source>any change</source>
        <translation>jede Änderung</translation>
    </message>
    <message>
        <source>any group</source>
        <translation>jede Gruppe</translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation>jedes Urteil</translation>
    </message>
    <message>
        <source>arcsine</source>
        <translation>Arkussinus</translation>
    </message>
    <message>
        <source>arm %1</source>
        <translation>Zweig %1</translation>
    </message>
    <message>
        <source>arm %1 carries %2</source>
        <translation>Zweig %1 führt %2</translation>
    </message>
    <message>
        <source>arms</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>arms %1</source>
        <translation>Zweige %1</translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation>wie erkannt</translation>
    </message>
    <message>
        <source>as on the sheet</source>
        <translation>wie auf dem Blatt</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>as share of the level</source>
        <translation>als Anteil des Stufenwerts</translation>
    </message>
    <message>
        <source>as share of the limit</source>
        <translation>als Anteil des Grenzwerts</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>angenommen: %1</translation>
    </message>
    <message>
        <source>balance network</source>
        <translation>Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>being worked out</source>
        <translation>wird berechnet</translation>
    </message>
    <message>
        <source>being written</source>
        <translation>wird geschrieben</translation>
    </message>
    <message>
        <source>below the usual</source>
        <translation>unter dem Üblichen</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>jenseits</translation>
    </message>
    <message>
        <source>beyond limits</source>
        <translation>jenseits der Grenzen</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>bridge, unshunted</source>
        <translation>Brücke, ohne Shunt</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>by bridge</source>
        <translation>nach Brücke</translation>
    </message>
    <message>
        <source>by group</source>
        <translation>nach Gruppe</translation>
    </message>
    <message>
        <source>by verdict</source>
        <translation>nach Urteil</translation>
    </message>
    <message>
        <source>c: sensitivity, by how much the result changes for one unit of the input. u: standard uncertainty. k: coverage factor. U: expanded uncertainty.</source>
        <translation>c: Empfindlichkeit, um wie viel sich das Ergebnis je Einheit der Eingangsgröße ändert. u: Standardunsicherheit. k: Erweiterungsfaktor. U: erweiterte Unsicherheit.</translation>
    </message>
    <message>
        <source>cannot be predicted</source>
        <translation>nicht vorherzusagen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht zu lesen</translation>
    </message>
    <message>
        <source>cannot settle</source>
        <translation>schwingt nicht ein</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht entscheidbar</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>change %1, negative</source>
        <translation>Änderung %1, negativ</translation>
    </message>
    <message>
        <source>change %1, positive</source>
        <translation>Änderung %1, positiv</translation>
    </message>
    <message>
        <source>change 0 mV/V</source>
        <translation>Änderung 0 mV/V</translation>
    </message>
    <message>
        <source>change −0.0000 mV/V, negative</source>
        <translation>Änderung −0,0000 mV/V, negativ</translation>
    </message>
    <message>
        <source>changed: save it as your own to keep it</source>
        <translation>geändert: als eigenes speichern, um es zu behalten</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>ändert sich</translation>
    </message>
    <message numerus="yes">
        <source>changes; %n reading(s) of open checks are dropped</source>
        <translation>
            <numerusform>ändert sich; ein Messwert einer offenen Prüfung entfällt</numerusform>
            <numerusform>ändert sich; %n Messwerte offener Prüfungen entfallen</numerusform>
        </translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>choose a span, and show it</source>
        <translation>einen Abschnitt wählen und zeigen</translation>
    </message>
    <message>
        <source>choose a step</source>
        <translation>eine Stufe wählen</translation>
    </message>
    <message>
        <source>choose the cells to fill as one block, those to fill from first</source>
        <translation>die zu füllenden Zellen als einen Block wählen, die Vorlage zuerst</translation>
    </message>
    <message>
        <source>choose the span before, after</source>
        <translation>den Abschnitt davor, danach wählen</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>leeren</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>zugeklappt</translation>
    </message>
    <message>
        <source>closed check, not to be changed</source>
        <translation>abgeschlossene Prüfung, nicht zu ändern</translation>
    </message>
    <message>
        <source>collapsed</source>
        <translation>zugeklappt</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>column %1 has nearly the channel&apos;s name</source>
        <translation>Spalte %1 hat fast den Namen des Kanals</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>control limits</source>
        <translation>Eingriffsgrenzen</translation>
    </message>
    <message>
        <source>counted &amp;from</source>
        <translation>gezählt &amp;ab</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>ausschneiden</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>decade box</source>
        <translation>Dekade</translation>
    </message>
    <message>
        <source>decade box %1</source>
        <translation>Widerstandsdekade %1</translation>
    </message>
    <message>
        <source>decade boxes</source>
        <translation>Dekaden</translation>
    </message>
    <message>
        <source>delete the span</source>
        <translation>den Abschnitt löschen</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>do not depend on it</source>
        <translation>hängen nicht davon ab</translation>
    </message>
    <message>
        <source>document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>draw a span</source>
        <translation>einen Abschnitt zeichnen</translation>
    </message>
    <message>
        <source>drop what is being dragged; choose none</source>
        <translation>das Gezogene fallen lassen; keinen wählen</translation>
    </message>
    <message>
        <source>effective degrees of freedom not used: correlated inputs contribute</source>
        <translation>effektive Freiheitsgrade nicht verwendet: korrelierte Eingangsgrößen tragen bei</translation>
    </message>
    <message>
        <source>effective degrees of freedom: %1</source>
        <translation>effektive Freiheitsgrade: %1</translation>
    </message>
    <message>
        <source>effective degrees of freedom: %1, cut down to %2 for k</source>
        <translation>effektive Freiheitsgrade: %1, für k auf %2 abgerundet</translation>
    </message>
    <message>
        <source>effective degrees of freedom: infinite</source>
        <translation>effektive Freiheitsgrade: unendlich</translation>
    </message>
    <message>
        <source>equal spacing</source>
        <translation>gleiche Abstände</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>every step has its level</source>
        <translation>jede Stufe hat ihr Plateau</translation>
    </message>
    <message>
        <source>expanded</source>
        <translation>aufgeklappt</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>expected %1 %2, limit ± %3</source>
        <translation>erwartet %1 %2, Grenzwert ± %3</translation>
    </message>
    <message>
        <source>factor 1, offset 0: as read</source>
        <translation>Faktor 1, Versatz 0: wie abgelesen</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>füllen</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>from the clipboard</source>
        <translation>aus der Zwischenablage</translation>
    </message>
    <message>
        <source>full and quarter bridges, ideal leads, shunts right across an arm or over the whole bridge</source>
        <translation>Voll- und Viertelbrücken, ideale Leitungen, Shunts direkt über einem Zweig oder der ganzen Brücke</translation>
    </message>
    <message>
        <source>gain, after over before less 1</source>
        <translation>Verstärkung, nachher durch vorher minus 1</translation>
    </message>
    <message>
        <source>give the span to a step</source>
        <translation>den Abschnitt einer Stufe geben</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>verschwunden</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>greatest miss %1 %2</source>
        <translation>größter Fehlbetrag %1 %2</translation>
    </message>
    <message>
        <source>grid not known</source>
        <translation>Gitter nicht bekannt</translation>
    </message>
    <message>
        <source>h:min:s</source>
        <translation>h:min:s</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>in another order</source>
        <translation>in anderer Folge</translation>
    </message>
    <message>
        <source>instead of the present shunts and steps</source>
        <translation>statt der jetzigen Shunts und Stufen</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>is</source>
        <translation>ist</translation>
    </message>
    <message>
        <source>is read</source>
        <translation>wird gelesen</translation>
    </message>
    <message>
        <source>its content is not what was written (SHA-256 differs)</source>
        <translation>der Inhalt ist nicht der geschriebene (SHA-256 weicht ab)</translation>
    </message>
    <message>
        <source>its ends differ by %1 and %2</source>
        <translation>seine Enden unterscheiden sich um %1 und %2</translation>
    </message>
    <message>
        <source>its first line is not one that we wrote</source>
        <translation>die erste Zeile ist keine von uns geschriebene</translation>
    </message>
    <message>
        <source>join with the next span</source>
        <translation>mit dem nächsten Abschnitt verbinden</translation>
    </message>
    <message>
        <source>k</source>
        <translation>k</translation>
    </message>
    <message>
        <source>lead %1</source>
        <translation>Leitung %1</translation>
    </message>
    <message>
        <source>leads</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>leak from arm %1 to the structure</source>
        <translation>Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>leak over arm %1</source>
        <translation>Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>left spar</source>
        <translation>Holm links</translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>looking for levels…</source>
        <translation>Plateaus werden gesucht…</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>match all spans with the steps again</source>
        <translation>alle Abschnitte den Stufen neu zuordnen</translation>
    </message>
    <message>
        <source>may be closed together, in parallel</source>
        <translation>dürfen gemeinsam geschlossen sein, parallel</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>measuring input</source>
        <translation>Messeingang</translation>
    </message>
    <message>
        <source>microseconds</source>
        <translation>Mikrosekunden</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>Millisekunden</translation>
    </message>
    <message>
        <source>min:s</source>
        <translation>min:s</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>mehr als %1</translation>
    </message>
    <message>
        <source>more than 18 quintillion</source>
        <translation>mehr als 18 Trillionen</translation>
    </message>
    <message>
        <source>more than the uncertainties explain.</source>
        <translation>mehr, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>move it as a whole</source>
        <translation>ihn als Ganzes verschieben</translation>
    </message>
    <message>
        <source>move the edge by a sample; with Shift by a pixel</source>
        <translation>die Kante um einen Abtastwert verschieben; mit Umschalt um ein Pixel</translation>
    </message>
    <message>
        <source>move the edge of a span</source>
        <translation>die Kante eines Abschnitts verschieben</translation>
    </message>
    <message>
        <source>names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <source>names in line %1</source>
        <translation>Namen in Zeile %1</translation>
    </message>
    <message>
        <source>negative</source>
        <translation>negativ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no cell is chosen</source>
        <translation>keine Zelle ist gewählt</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>keine Änderung</translation>
    </message>
    <message>
        <source>no column</source>
        <translation>keine Spalte</translation>
    </message>
    <message>
        <source>no column belongs to a channel</source>
        <translation>keine Spalte gehört zu einem Kanal</translation>
    </message>
    <message>
        <source>no connector</source>
        <translation>kein Stecker</translation>
    </message>
    <message>
        <source>no document yet</source>
        <translation>noch kein Dokument</translation>
    </message>
    <message>
        <source>no leak</source>
        <translation>kein Nebenschluss</translation>
    </message>
    <message>
        <source>no level</source>
        <translation>kein Plateau</translation>
    </message>
    <message>
        <source>no limits yet</source>
        <translation>noch keine Grenzen</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>keine Gerade</translation>
    </message>
    <message>
        <source>no more than the uncertainties explain.</source>
        <translation>nicht mehr, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>no names</source>
        <translation>keine Namen</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>no recording chosen</source>
        <translation>keine Aufzeichnung gewählt</translation>
    </message>
    <message>
        <source>no series follows from %1 and %2</source>
        <translation>aus %1 und %2 folgt keine Reihe</translation>
    </message>
    <message>
        <source>no shunts yet: add them under Shunts</source>
        <translation>noch keine Shunts: unter „Shunts“ anlegen</translation>
    </message>
    <message>
        <source>no step</source>
        <translation>keine Stufe</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none near</source>
        <translation>keiner in der Nähe</translation>
    </message>
    <message>
        <source>none, or with the names</source>
        <translation>keine, oder bei den Namen</translation>
    </message>
    <message>
        <source>none; press the keys here</source>
        <translation>keine; hier die Tasten drücken</translation>
    </message>
    <message>
        <source>none; such as 59k9; 174.65k</source>
        <translation>keine; etwa 59k9; 174,65k</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>not all alike</source>
        <translation>nicht alle gleich</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not compared</source>
        <translation>nicht verglichen</translation>
    </message>
    <message>
        <source>not grouped</source>
        <translation>nicht gruppiert</translation>
    </message>
    <message>
        <source>not in the list</source>
        <translation>nicht in der Liste</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>not yet worked out</source>
        <translation>noch nicht berechnet</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing comes nearer than zero</source>
        <translation>nichts kommt näher als null</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nichts gefunden</translation>
    </message>
    <message>
        <source>numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>numbers from line %1</source>
        <translation>Zahlen ab Zeile %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>of %1 so far</source>
        <translation>von bisher %1</translation>
    </message>
    <message>
        <source>of the level</source>
        <translation>des Stufenwerts</translation>
    </message>
    <message>
        <source>of the limit</source>
        <translation>des Grenzwerts</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>on arm %1</source>
        <translation>an Zweig %1</translation>
    </message>
    <message>
        <source>one column</source>
        <translation>eine Spalte</translation>
    </message>
    <message>
        <source>one typed in the table</source>
        <translation>ein in die Tabelle eingetippter</translation>
    </message>
    <message>
        <source>only name, group and note are edited here</source>
        <translation>nur Name, Gruppe und Notiz werden hier bearbeitet</translation>
    </message>
    <message>
        <source>only terminals</source>
        <translation>nur Anschlüsse</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>our hall&apos;s usual</source>
        <translation>das Übliche unserer Halle</translation>
    </message>
    <message>
        <source>output %1, negative</source>
        <translation>Signal %1, negativ</translation>
    </message>
    <message>
        <source>output %1, positive</source>
        <translation>Signal %1, positiv</translation>
    </message>
    <message>
        <source>output 0 mV/V, no change</source>
        <translation>Signal 0 mV/V, keine Änderung</translation>
    </message>
    <message>
        <source>output not known</source>
        <translation>Signal nicht bekannt</translation>
    </message>
    <message>
        <source>output with all shunts open %1 mV/V</source>
        <translation>Signal mit allen Shunts offen %1 mV/V</translation>
    </message>
    <message>
        <source>output, mV/V</source>
        <translation>Signal, mV/V</translation>
    </message>
    <message>
        <source>over arm %1</source>
        <translation>über Zweig %1</translation>
    </message>
    <message>
        <source>over its standard deviation</source>
        <translation>durch seine Standardabweichung</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>p
(beyond margin)</source>
        <translation>p
(jenseits Tol.)</translation>
    </message>
    <message>
        <source>p
(different)</source>
        <translation>p
(verschieden)</translation>
    </message>
    <message>
        <source>p (beyond margin)</source>
        <translation>p (jenseits der Toleranz)</translation>
    </message>
    <message>
        <source>p (different)</source>
        <translation>p (verschieden)</translation>
    </message>
    <message>
        <source>pan; also Shift with the wheel</source>
        <translation>verschieben; auch Umschalt mit dem Mausrad</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>übergangen</translation>
    </message>
    <message>
        <source>paste</source>
        <translation>einfügen</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>plan only</source>
        <translation>nur Plan</translation>
    </message>
    <message>
        <source>plan without a check</source>
        <translation>Plan ohne Prüfung</translation>
    </message>
    <message>
        <source>plugged in, excitation off</source>
        <translation>angesteckt, Speisung aus</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>positive</source>
        <translation>positiv</translation>
    </message>
    <message>
        <source>pot. %1</source>
        <translation>Pot. %1</translation>
    </message>
    <message>
        <source>pre-test</source>
        <translation>Vorprüfung</translation>
    </message>
    <message>
        <source>pre-test, post-test and so on</source>
        <translation>Vorprüfung, Nachprüfung und so weiter</translation>
    </message>
    <message>
        <source>put, move the cursor; over the lanes the mouse is it</source>
        <translation>den Cursor setzen, bewegen; über den Spuren ist es die Maus</translation>
    </message>
    <message>
        <source>r: correlation of two inputs.</source>
        <translation>r: Korrelation zweier Eingangsgrößen.</translation>
    </message>
    <message>
        <source>range of preferred values</source>
        <translation>Normwertbereich</translation>
    </message>
    <message>
        <source>ranges of preferred values</source>
        <translation>Normwertbereiche</translation>
    </message>
    <message>
        <source>read %1 %2</source>
        <translation>abgelesen %1 %2</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Messwert %1</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rechteckig</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>resistor</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>resistor %1</source>
        <translation>Widerstand %1</translation>
    </message>
    <message>
        <source>resistors</source>
        <translation>Widerstände</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>umgepolt</translation>
    </message>
    <message>
        <source>row %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>run %1 of %2: %3</source>
        <translation>Durchgang %1 von %2: %3</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>scale to what is on view, or to all</source>
        <translation>an Sichtbares oder an alles anpassen</translation>
    </message>
    <message>
        <source>scaled unit</source>
        <translation>skalierte Einheit</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>seed %1</source>
        <translation>Startzahl %1</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>set by hand: %1</source>
        <translation>von Hand gesetzt: %1</translation>
    </message>
    <message>
        <source>settle %1 s, hold %2 s</source>
        <translation>Einschwingen %1 s, Halten %2 s</translation>
    </message>
    <message>
        <source>settles in %1 s, hold at least %2 s</source>
        <translation>schwingt in %1 s ein, mindestens %2 s halten</translation>
    </message>
    <message>
        <source>shares of a test range</source>
        <translation>Anteile eines Prüfbereichs</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>kürzestes</translation>
    </message>
    <message>
        <source>show all, show the chosen span</source>
        <translation>alles zeigen, den gewählten Abschnitt zeigen</translation>
    </message>
    <message>
        <source>shunt %1</source>
        <translation>Shunt %1</translation>
    </message>
    <message>
        <source>shunt %1 carries %2</source>
        <translation>Shunt %1 führt %2</translation>
    </message>
    <message>
        <source>simulated</source>
        <translation>simuliert</translation>
    </message>
    <message>
        <source>simulated load %1</source>
        <translation>simulierte Last %1</translation>
    </message>
    <message>
        <source>simulated strain %1</source>
        <translation>simulierte Dehnung %1</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>split at the cursor</source>
        <translation>am Cursor teilen</translation>
    </message>
    <message>
        <source>standard uncertainties</source>
        <translation>Standardunsicherheiten</translation>
    </message>
    <message>
        <source>standardised</source>
        <translation>standardisiert</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>bleibt, wie er ist</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>strain, µm/m</source>
        <translation>Dehnung, µm/m</translation>
    </message>
    <message>
        <source>structure floating</source>
        <translation>Struktur potentialfrei</translation>
    </message>
    <message>
        <source>structure floating: no return path</source>
        <translation>Struktur potentialfrei: kein Rückweg</translation>
    </message>
    <message>
        <source>structure on P+</source>
        <translation>Struktur an P+</translation>
    </message>
    <message>
        <source>structure on P−</source>
        <translation>Struktur an P−</translation>
    </message>
    <message>
        <source>such as %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>symmetric</source>
        <translation>symmetrisch</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>take the span from its step</source>
        <translation>den Abschnitt seiner Stufe nehmen</translation>
    </message>
    <message>
        <source>taken up</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>takes no current</source>
        <translation>nimmt keinen Strom</translation>
    </message>
    <message>
        <source>the balance network</source>
        <translation>das Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>the block has %1 rows, but only %2 are shown from the chosen cell on, since others are filtered out</source>
        <translation>der Block hat %1 Zeilen, aber nur %2 sind ab der gewählten Zelle zu sehen, da andere weggefiltert sind</translation>
    </message>
    <message>
        <source>the block has %1 rows, but only %2 are there from the chosen cell on</source>
        <translation>der Block hat %1 Zeilen, ab der gewählten Zelle gibt es aber nur %2</translation>
    </message>
    <message>
        <source>the block is wider than the table from the chosen cell on</source>
        <translation>der Block ist breiter als die Tabelle ab der gewählten Zelle</translation>
    </message>
    <message>
        <source>the clipboard holds no text</source>
        <translation>die Zwischenablage enthält keinen Text</translation>
    </message>
    <message>
        <source>the input resistance</source>
        <translation>der Eingangswiderstand</translation>
    </message>
    <message>
        <source>the instrument</source>
        <translation>das Gerät</translation>
    </message>
    <message>
        <source>the leak from arm %1 to the structure</source>
        <translation>der Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>the leak of arm %1 carries %2 from the structure</source>
        <translation>der Nebenschluss von Zweig %1 führt %2 aus der Struktur</translation>
    </message>
    <message>
        <source>the leak of arm %1 carries %2 to the structure</source>
        <translation>der Nebenschluss von Zweig %1 führt %2 zur Struktur</translation>
    </message>
    <message>
        <source>the leak over arm %1</source>
        <translation>der Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>the leak over arm %1 carries %2</source>
        <translation>der Nebenschluss über Zweig %1 führt %2</translation>
    </message>
    <message>
        <source>the parts are from here</source>
        <translation>die Widerstände stammen von hier</translation>
    </message>
    <message>
        <source>the resistor of arm %1</source>
        <translation>der Widerstand von Zweig %1</translation>
    </message>
    <message>
        <source>the sample rate</source>
        <translation>die Abtastrate</translation>
    </message>
    <message>
        <source>the sense leads</source>
        <translation>die Fühlerleitungen</translation>
    </message>
    <message>
        <source>the span begins, ends at the cursor</source>
        <translation>der Abschnitt beginnt, endet am Cursor</translation>
    </message>
    <message numerus="yes">
        <source>the stock, %n entries</source>
        <translation>
            <numerusform>der Bestand, %n Eintrag</numerusform>
            <numerusform>der Bestand, %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>the stock, which is empty</source>
        <translation>der Bestand, der leer ist</translation>
    </message>
    <message>
        <source>the wiper</source>
        <translation>der Schleifer</translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>dieser Rechner</translation>
    </message>
    <message>
        <source>this list</source>
        <translation>diese Liste</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>dieser Plan</translation>
    </message>
    <message>
        <source>this reading becomes the zero</source>
        <translation>dieser Messwert wird die Null</translation>
    </message>
    <message>
        <source>this table is worked out: it can be copied, but takes no text</source>
        <translation>diese Tabelle ist berechnet: Sie lässt sich kopieren, nimmt aber keinen Text</translation>
    </message>
    <message>
        <source>time from column %1</source>
        <translation>Zeit aus Spalte %1</translation>
    </message>
    <message>
        <source>time from the sample rate, %1</source>
        <translation>Zeit aus der Abtastrate, %1</translation>
    </message>
    <message>
        <source>time not known</source>
        <translation>Zeit nicht bekannt</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>to</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>to S+ %1</source>
        <translation>zu S+ %1</translation>
    </message>
    <message>
        <source>to structure</source>
        <translation>zur Struktur</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>dreieckig</translation>
    </message>
    <message>
        <source>type the rate, such as 50 Hz</source>
        <translation>die Rate eintippen, etwa 50 Hz</translation>
    </message>
    <message>
        <source>u of gain</source>
        <translation>u der Verstärkung</translation>
    </message>
    <message>
        <source>u of the trials</source>
        <translation>u der Versuche</translation>
    </message>
    <message>
        <source>u of zero</source>
        <translation>u des Nullpunkts</translation>
    </message>
    <message>
        <source>uncertainties</source>
        <translation>Unsicherheiten</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>unequal arms, reversed wires, leaks, several shunts at once</source>
        <translation>ungleiche Zweige, vertauschte Leitungen, Nebenschlüsse, mehrere Shunts zugleich</translation>
    </message>
    <message>
        <source>unit taken</source>
        <translation>angenommene Einheit</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>units in line %1</source>
        <translation>Einheiten in Zeile %1</translation>
    </message>
    <message>
        <source>unplugged</source>
        <translation>abgesteckt</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>unbenannt</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>bis zu</translation>
    </message>
    <message>
        <source>voltage, mV</source>
        <translation>Spannung, mV</translation>
    </message>
    <message>
        <source>waits for you</source>
        <translation>wartet auf eine Wahl</translation>
    </message>
    <message>
        <source>waits its turn</source>
        <translation>wartet in der Reihe</translation>
    </message>
    <message>
        <source>what the instrument shows</source>
        <translation>was das Gerät zeigt</translation>
    </message>
    <message>
        <source>what the reading will be, within 5 %</source>
        <translation>was der Messwert sein wird, auf 5 % genau</translation>
    </message>
    <message>
        <source>what was seen while the reading was taken</source>
        <translation>was beim Ablesen zu sehen war</translation>
    </message>
    <message>
        <source>which arm the shunt must lie over</source>
        <translation>über welchem Zweig der Shunt liegen muss</translation>
    </message>
    <message>
        <source>which fault explains the readings</source>
        <translation>welcher Fehler die Messwerte erklärt</translation>
    </message>
    <message>
        <source>which is moved: end, both, begin</source>
        <translation>was bewegt wird: Ende, beide, Anfang</translation>
    </message>
    <message>
        <source>which of two shunts gives the larger reading</source>
        <translation>welcher von zwei Shunts den größeren Messwert ergibt</translation>
    </message>
    <message>
        <source>which way the output goes</source>
        <translation>in welche Richtung das Signal geht</translation>
    </message>
    <message>
        <source>who ran it</source>
        <translation>wer sie durchgeführt hat</translation>
    </message>
    <message>
        <source>who runs the checks</source>
        <translation>wer die Prüfungen durchführt</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>with each resistor at the end of its tolerance</source>
        <translation>mit jedem Widerstand am Ende seiner Toleranz</translation>
    </message>
    <message>
        <source>with its sign</source>
        <translation>mit Vorzeichen</translation>
    </message>
    <message>
        <source>with parts overdue for calibration</source>
        <translation>mit Widerständen, deren Kalibrierung überfällig ist</translation>
    </message>
    <message>
        <source>with question %1 of %2 · %3 · seed %4</source>
        <translation>mit Aufgabe %1 von %2 · %3 · Startzahl %4</translation>
    </message>
    <message>
        <source>with question %1 of %2 · %3 · seed %4 · repeated</source>
        <translation>mit Aufgabe %1 von %2 · %3 · Startzahl %4 · wiederholt</translation>
    </message>
    <message>
        <source>with the same difficulty, kinds and number of questions it gives the same questions, on every computer</source>
        <translation>mit derselben Schwierigkeit, denselben Arten und derselben Anzahl ergibt sie dieselben Aufgaben, auf jedem Rechner</translation>
    </message>
    <message>
        <source>without a group</source>
        <translation>ohne Gruppe</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>in Arbeit…</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>zero</source>
        <translation>null</translation>
    </message>
    <message>
        <source>zoom about the cursor</source>
        <translation>um den Cursor zoomen</translation>
    </message>
    <message>
        <source>{nn} counts with two digits, {name} is the present name, {group} the group, {column} the recording column.</source>
        <translation>{nn} zählt zweistellig, {name} ist der jetzige Name, {group} die Gruppe, {column} die Spalte der Aufzeichnung.</translation>
    </message>
    <message>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <source>± 2 u</source>
        <translation>± 2 u</translation>
    </message>
    <message>
        <source>“%1” is no longer among your own patterns.</source>
        <translation>„%1“ ist nicht mehr unter den eigenen Mustern.</translation>
    </message>
    <message>
        <source>“%1” is saved for all documents.</source>
        <translation>„%1“ ist für alle Dokumente gespeichert.</translation>
    </message>
    <message>
        <source>→ ← step · Home End · 1 bridge  2 polarity  3 sequence  4 outcome · + − letters · D dark, light · C currents · Esc ends</source>
        <translation>→ ← Stufe · Pos1 Ende · 1 Brücke  2 Polarität  3 Ablauf  4 Ergebnis · + − Schrift · D dunkel, hell · C Ströme · Esc beendet</translation>
    </message>
    <message>
        <source>− negative</source>
        <translation>− negativ</translation>
    </message>
    <message>
        <source>□ without
■ with it</source>
        <translation>□ ohne
■ damit</translation>
    </message>
    <message>
        <source>▲ depend on it</source>
        <translation>▲ hängen davon ab</translation>
    </message>
    <message>
        <source>▲ gain and zero beyond</source>
        <translation>▲ Verstärkung und Nullpunkt jenseits</translation>
    </message>
    <message>
        <source>▲ gain beyond</source>
        <translation>▲ Verstärkung jenseits</translation>
    </message>
    <message>
        <source>▲ warning</source>
        <translation>▲ Warnung</translation>
    </message>
    <message>
        <source>▲ zero beyond</source>
        <translation>▲ Nullpunkt jenseits</translation>
    </message>
    <message>
        <source>◆ fault</source>
        <translation>◆ Fehler</translation>
    </message>
    <message>
        <source>○ open</source>
        <translation>○ offen</translation>
    </message>
    <message>
        <source>○ terminal  ● gauge end</source>
        <translation>○ Anschluss  ● DMS-Ende</translation>
    </message>
    <message>
        <source>● note</source>
        <translation>● Hinweis</translation>
    </message>
    <message>
        <source>● within limits</source>
        <translation>● innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>⚠ Before entry %1 of the history, counted from the oldest, the file was altered outside of the program, and nothing tells what was changed.</source>
        <translation>⚠ Vor dem Eintrag %1 des Verlaufs, vom ältesten an gezählt, wurde die Datei außerhalb des Programms geändert, und nichts sagt, was geändert wurde.</translation>
    </message>
    <message>
        <source>⚠ The file was altered outside of the program since its last saving: its content is not what the newest entry of the history says, and nothing tells what was changed.</source>
        <translation>⚠ Die Datei wurde seit dem letzten Speichern außerhalb des Programms geändert: Ihr Inhalt ist nicht der, den der neueste Eintrag des Verlaufs nennt, und nichts sagt, was geändert wurde.</translation>
    </message>
    <message>
        <source>⚠ The history does not hold together: entry %1 from the beginning was altered, or one before it was altered, removed or put in.</source>
        <translation>⚠ Der Verlauf ist nicht schlüssig: Eintrag %1 von Anfang an wurde geändert, oder einer davor wurde geändert, entfernt oder eingefügt.</translation>
    </message>
    <message>
        <source>✓ Right.</source>
        <translation>✓ Richtig.</translation>
    </message>
    <message>
        <source>✓ Right: %1. Your %2 is %3 % off.</source>
        <translation>✓ Richtig: %1. Die Eingabe %2 weicht um %3 % ab.</translation>
    </message>
    <message>
        <source>✓ right</source>
        <translation>✓ richtig</translation>
    </message>
    <message>
        <source>✓ settled</source>
        <translation>✓ erledigt</translation>
    </message>
    <message>
        <source>✗ Wrong. Right is: %1.</source>
        <translation>✗ Falsch. Richtig ist: %1.</translation>
    </message>
    <message>
        <source>✗ Wrong: you said %1. Right is %2.</source>
        <translation>✗ Falsch: Antwort war %1. Richtig ist %2.</translation>
    </message>
    <message>
        <source>✗ wrong</source>
        <translation>✗ falsch</translation>
    </message>
</context>
<context>
    <name>ui::BoxModel</name>
    <message>
        <source>Rating</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Rest</translation>
    </message>
</context>
<context>
    <name>ui::BridgeView</name>
    <message>
        <source>&amp;Edit the value</source>
        <translation>Wert &amp;bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>E&amp;inpassen</translation>
    </message>
    <message>
        <source>&amp;Show the field in the set-up</source>
        <translation>&amp;Feld in der Einrichtung zeigen</translation>
    </message>
    <message>
        <source>A&amp;lign to template</source>
        <translation>An Vorlage an&amp;gleichen</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Vergr&amp;ößern</translation>
    </message>
</context>
<context>
    <name>ui::CauseSection</name>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
</context>
<context>
    <name>ui::CheckBar</name>
    <message>
        <source>Close check</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>From recording…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>Reopen check</source>
        <translation>Wieder öffnen</translation>
    </message>
</context>
<context>
    <name>ui::OutcomeView</name>
    <message>
        <source>Charts</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Werte</translation>
    </message>
</context>
<context>
    <name>ui::OverviewBar</name>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
</context>
<context>
    <name>ui::PolarityPanel</name>
    <message>
        <source>Excitation swapped</source>
        <translation>Speis. gedreht</translation>
    </message>
    <message>
        <source>Gauge signs reversed</source>
        <translation>DMS gedreht</translation>
    </message>
    <message>
        <source>Signal wires swapped</source>
        <translation>Signal gedreht</translation>
    </message>
</context>
<context>
    <name>ui::RecordPage</name>
    <message>
        <source>Settle</source>
        <translation>Erledigen</translation>
    </message>
</context>
<context>
    <name>ui::ResistorModel</name>
    <message>
        <source>Rating</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Benutzt</translation>
    </message>
</context>
<context>
    <name>ui::SequenceModel</name>
    <message>
        <source>Shunts closed</source>
        <translation>Geschlossene
Shunts</translation>
    </message>
</context>
<context>
    <name>ui::SequencePane</name>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Guided run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Uncertainties</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Auf</translation>
    </message>
</context>
<context>
    <name>ui::SeriesModel</name>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
</context>
<context>
    <name>ui::StockPage</name>
    <message>
        <source>Preferred values to buy (IEC 60063)</source>
        <translation>Normwerte (IEC 60063)</translation>
    </message>
</context>
<context>
    <name>ui::WhatIfPanel</name>
    <message>
        <source>Take over into the plan</source>
        <translation>In den Plan</translation>
    </message>
</context>
</TS>
