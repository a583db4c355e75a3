<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>CheckWords</name>
    <message>
        <source>  %1 set %2   no reading
</source>
        <translation>  %1 gesetzt %2   kein Messwert
</translation>
    </message>
    <message>
        <source>  %1 set %2   read %3 +- %4   off %5  %6
</source>
        <translation>  %1 gesetzt %2   gelesen %3 +- %4   daneben %5  %6
</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>TOO FAR</source>
        <translation>ZU WEIT</translation>
    </message>
    <message>
        <source>residual bias %1 +- %2 % (95 %), worst %3 %; %4 of %5 good
</source>
        <translation>restliche einseitige Verzerrung %1 +- %2 % (95 %), größte %3 %; %4 von %5 gut
</translation>
    </message>
    <message>
        <source>  clock         not measured</source>
        <translation>  Takt          nicht gemessen</translation>
    </message>
    <message>
        <source>  clock         slow by %1 +- %2 parts in a million
</source>
        <translation>  Takt          zu langsam um %1 +- %2 Millionstel
</translation>
    </message>
    <message>
        <source>  clock         fast by %1 +- %2 parts in a million
</source>
        <translation>  Takt          zu schnell um %1 +- %2 Millionstel
</translation>
    </message>
    <message>
        <source>card: %1 from %2, %3 Hz
</source>
        <translation>Karte: %1 von %2, %3 Hz
</translation>
    </message>
    <message>
        <source>  coupling      none found
</source>
        <translation>  Kopplung      keine gefunden
</translation>
    </message>
    <message>
        <source>  coupling      high-pass at %1
</source>
        <translation>  Kopplung      Hochpass bei %1
</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>  noise         %1 dB below half the swing
</source>
        <translation>  Rauschen      %1 dB unter dem halben Hub
</translation>
    </message>
    <message>
        <source>  edges         %1 ms, of 0.30 ms sent
</source>
        <translation>  Flanken       %1 ms, gesendet 0,30 ms
</translation>
    </message>
    <message>
        <source>  delay         about %1 ms from output to input
</source>
        <translation>  Verzögerung   etwa %1 ms vom Ausgang zum Eingang
</translation>
    </message>
    <message>
        <source>  gaps          %1
</source>
        <translation>  Lücken        %1
</translation>
    </message>
    <message>
        <source>self-check of %1, version %2: PASSED
</source>
        <translation>Selbstprüfung vom %1, Version %2: BESTANDEN
</translation>
    </message>
    <message>
        <source>self-check of %1, version %2: NOT PASSED
</source>
        <translation>Selbstprüfung vom %1, Version %2: NICHT BESTANDEN
</translation>
    </message>
    <message>
        <source>
in memory: known signals, bias in percent of a unit
</source>
        <translation>
im Speicher: bekannte Signale, einseitige Verzerrung in Prozent der Schrittlänge
</translation>
    </message>
    <message>
        <source>
through the loop-back cable
</source>
        <translation>
über das Prüfkabel
</translation>
    </message>
    <message>
        <source>
Every known bias was read within 0.1 % and its uncertainty.
</source>
        <translation>
Jede bekannte einseitige Verzerrung wurde auf 0,1 % und ihre Unsicherheit genau gelesen.
</translation>
    </message>
    <message>
        <source>
See above; do not trust readings until it passes.
</source>
        <translation>
Siehe oben; Messwerten nicht trauen, bis sie bestanden ist.
</translation>
    </message>
    <message>
        <source>100 baud through the card</source>
        <translation>100 Baud über die Karte</translation>
    </message>
    <message>
        <source>45.45 baud, ita2, straight, 60 dB</source>
        <translation>45,45 Baud, ita2, unmittelbar, 60 dB</translation>
    </message>
    <message>
        <source>50 baud, ita2, coupled at 8 Hz, 40 dB</source>
        <translation>50 Baud, ita2, gekoppelt bei 8 Hz, 40 dB</translation>
    </message>
    <message>
        <source>50 baud, ita2, coupled at 1 and 20 Hz, 44.1 kHz, 40 dB</source>
        <translation>50 Baud, ita2, gekoppelt bei 1 und 20 Hz, 44,1 kHz, 40 dB</translation>
    </message>
    <message>
        <source>75 baud, ita2, coupled at 3 Hz, reversed, 25 dB</source>
        <translation>75 Baud, ita2, gekoppelt bei 3 Hz, umgepolt, 25 dB</translation>
    </message>
    <message>
        <source>110 baud, ita5, coupled at 8 Hz, 40 dB</source>
        <translation>110 Baud, ita5, gekoppelt bei 8 Hz, 40 dB</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>Waiting for the first samples.</source>
        <translation>Warten auf die ersten Abtastwerte.</translation>
    </message>
    <message>
        <source>The line rests; the readings are those of the last characters.</source>
        <translation>Die Leitung ruht; die Messwerte sind die der letzten Zeichen.</translation>
    </message>
    <message>
        <source>The input is silent. Is the loop connected and the right input chosen?</source>
        <translation>Der Eingang ist stumm. Ist der Linienstromkreis angeschlossen und der richtige Eingang gewählt?</translation>
    </message>
    <message>
        <source>There is a signal, but it does not fall into start-stop characters.</source>
        <translation>Ein Signal ist da, aber es ergibt keine Start-Stopp-Zeichen.</translation>
    </message>
    <message>
        <source>Listening for characters. Let the tape run.</source>
        <translation>Es wird auf Zeichen gehört. Den Streifen laufen lassen.</translation>
    </message>
    <message>
        <source>Too few characters yet to tell a cause: let the tape run.</source>
        <translation>Noch zu wenige Zeichen für eine Ursache: den Streifen laufen lassen.</translation>
    </message>
    <message>
        <source>No signal: the input is silent.</source>
        <translation>Kein Signal: Der Eingang ist stumm.</translation>
    </message>
    <message>
        <source>No signal: nothing that switches between two levels.</source>
        <translation>Kein Signal: Nichts wechselt zwischen zwei Pegeln.</translation>
    </message>
    <message>
        <source>Not start-stop: there is a signal, but it does not fall into characters.</source>
        <translation>Nicht Start-Stopp: Ein Signal ist da, aber es ergibt keine Zeichen.</translation>
    </message>
    <message>
        <source>Parity is even in %1 of %2 characters.</source>
        <translation>Die Parität ist bei %1 von %2 Zeichen gerade.</translation>
    </message>
    <message>
        <source>The tape does not carry the expected text: levels and feed cannot be judged.</source>
        <translation>Der Streifen trägt nicht den erwarteten Text: Schritte und Vorschub sind nicht zu beurteilen.</translation>
    </message>
    <message>
        <source>The text of the tape is not known and does not repeat three times: missed marks and filled spaces cannot be counted.</source>
        <translation>Der Text des Streifens ist unbekannt und wiederholt sich nicht dreimal: Fehlende Zeichenschritte und gefüllte Trennschritte sind nicht zu zählen.</translation>
    </message>
    <message>
        <source>No standard speed lies within 3 % of the measured one: speed error and gross distortion need a nominal speed.</source>
        <translation>Keine übliche Schrittgeschwindigkeit liegt innerhalb von 3 % der gemessenen: Geschwindigkeitsfehler und gesamte Verzerrung brauchen eine Nenngeschwindigkeit.</translation>
    </message>
    <message>
        <source>No instant to mark inside these characters: they cannot tell the bias.</source>
        <translation>Kein Übergang zum Zeichenstrom in diesen Zeichen: Die einseitige Verzerrung ist ihnen nicht zu entnehmen.</translation>
    </message>
    <message>
        <source>No instant to space inside these characters: they cannot tell the end distortion.</source>
        <translation>Kein Übergang zum Trennstrom in diesen Zeichen: Die Endverzerrung ist ihnen nicht zu entnehmen.</translation>
    </message>
    <message>
        <source>The tape did not run without pause: the stop cannot be told.</source>
        <translation>Der Streifen lief nicht ohne Pause: Der Sperrschritt ist nicht zu bestimmen.</translation>
    </message>
    <message>
        <source>These characters have too few instants to tell the unit from the bias.</source>
        <translation>Diese Zeichen haben zu wenige Übergänge, um Schrittlänge und einseitige Verzerrung zu trennen.</translation>
    </message>
    <message>
        <source>The input is clipped: turn it down; the distortions are less certain.</source>
        <translation>Der Eingang ist übersteuert: leiser stellen; die Verzerrungen sind weniger sicher.</translation>
    </message>
    <message>
        <source>Clock trimmed by %1 parts in a million.</source>
        <translation>Takt um %1 Millionstel abgeglichen.</translation>
    </message>
    <message>
        <source>Whether %1 is in limits cannot be told yet: about %2 more characters are wanted.</source>
        <translation>Ob %1 in den Grenzen liegt, ist noch nicht zu sagen: Etwa %2 weitere Zeichen fehlen.</translation>
    </message>
    <message>
        <source>Whether %1 is in limits cannot be told: it is nearer to the limit than its uncertainty.</source>
        <translation>Ob %1 in den Grenzen liegt, ist nicht zu sagen: Der Abstand zur Grenze ist kleiner als die Unsicherheit.</translation>
    </message>
    <message>
        <source>the speed error</source>
        <translation>der Geschwindigkeitsfehler</translation>
    </message>
    <message>
        <source>the gross distortion</source>
        <translation>die gesamte Verzerrung</translation>
    </message>
    <message>
        <source>the synchronous distortion</source>
        <translation>die synchrone Verzerrung</translation>
    </message>
    <message>
        <source>the end distortion</source>
        <translation>die Endverzerrung</translation>
    </message>
    <message>
        <source>the bias</source>
        <translation>die einseitige Verzerrung</translation>
    </message>
    <message>
        <source>in</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>out</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>cannot tell: too near the limit</source>
        <translation>nicht zu sagen: zu nah an der Grenze</translation>
    </message>
    <message>
        <source>cannot tell: no nominal speed</source>
        <translation>nicht zu sagen: kein Nennwert der Geschwindigkeit</translation>
    </message>
    <message>
        <source>cannot tell yet: %1 more character</source>
        <translation>noch nicht zu sagen: %1 weiteres Zeichen</translation>
    </message>
    <message>
        <source>cannot tell yet: %1 more characters</source>
        <translation>noch nicht zu sagen: %1 weitere Zeichen</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>bench practice, good</source>
        <translation>Werkbank, gut</translation>
    </message>
    <message>
        <source>bench practice</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>transmitter distributor, act above</source>
        <translation>Lochstreifensender mit Verteiler, Eingriff ab</translation>
    </message>
    <message>
        <source>start-stop regenerator output</source>
        <translation>Ausgang eines Start-Stopp-Entzerrers</translation>
    </message>
    <message>
        <source>ITU-T S.3, newer sender</source>
        <translation>ITU-T S.3, neuerer Sender</translation>
    </message>
    <message>
        <source>ITU-T S.3, mechanical sender</source>
        <translation>ITU-T S.3, mechanischer Sender</translation>
    </message>
    <message>
        <source>A mechanical transmitter adjusted with care stays within 5 % in all; speed after ITU-T S.3.</source>
        <translation>Ein sorgfältig eingestellter mechanischer Sender bleibt in allem innerhalb von 5 %; Geschwindigkeit nach ITU-T S.3.</translation>
    </message>
    <message>
        <source>A mechanical transmitter as adjusted on the bench; speed after ITU-T S.3.</source>
        <translation>Ein mechanischer Sender, wie er auf der Werkbank eingestellt wird; Geschwindigkeit nach ITU-T S.3.</translation>
    </message>
    <message>
        <source>TM 11-5895-1012-10, paragraph 4-42, a worked example: a transmitter distributor is acted on above 4 %.</source>
        <translation>TM 11-5895-1012-10, Absatz 4-42, Rechenbeispiel: An einem Sender mit Verteiler wird über 4 % eingegriffen.</translation>
    </message>
    <message>
        <source>TM 11-5895-1012-10, paragraph 4-42, a worked example: 3 % at most, of which a third at most is bias.</source>
        <translation>TM 11-5895-1012-10, Absatz 4-42, Rechenbeispiel: höchstens 3 %, davon höchstens ein Drittel einseitige Verzerrung.</translation>
    </message>
    <message>
        <source>ITU-T S.3, newer transmitter: gross start-stop distortion and mean modulation rate (from memory).</source>
        <translation>ITU-T S.3, neuerer Sender: gesamte Start-Stopp-Verzerrung und mittlere Schrittgeschwindigkeit (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>ITU-T S.3, transmitter: gross start-stop distortion and mean modulation rate (from memory).</source>
        <translation>ITU-T S.3, Sender: gesamte Start-Stopp-Verzerrung und mittlere Schrittgeschwindigkeit (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>Five levels, %1 baud, synchronous motor for %2 Hz</source>
        <translation>Fünf Schritte, %1 Baud, Synchronmotor für %2 Hz</translation>
    </message>
    <message>
        <source>Five levels, %1 baud, governed motor</source>
        <translation>Fünf Schritte, %1 Baud, Motor mit Fliehkraftregler</translation>
    </message>
    <message>
        <source>Eight levels, %1 baud, synchronous motor for %2 Hz</source>
        <translation>Acht Schritte, %1 Baud, Synchronmotor für %2 Hz</translation>
    </message>
    <message>
        <source>The message room of the lighthouse museum.</source>
        <translation>Die Fernschreibstube des Leuchtturmmuseums.</translation>
    </message>
    <message>
        <source>Skerry 2 reads a tape loop for the visitors; since its contact box was cleaned every mark comes out too long.</source>
        <translation>Skerry 2 liest eine Streifenschleife; seit der Reinigung des Kontaktkastens ist jeder Zeichenschritt zu lang.</translation>
    </message>
    <message>
        <source>Turn the eccentric until the bias stands at zero.</source>
        <translation>Den Exzenter drehen, bis die Anzeige auf null steht.</translation>
    </message>
    <message>
        <source>speed error</source>
        <translation>Geschw.-Fehler</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>bias</source>
        <translation>einseitige V.</translation>
    </message>
    <message>
        <source>end distortion</source>
        <translation>Endverzerrung</translation>
    </message>
    <message>
        <source>gross distortion</source>
        <translation>gesamte V.</translation>
    </message>
    <message>
        <source>synchronous distortion</source>
        <translation>synchrone V.</translation>
    </message>
    <message>
        <source>scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>%1 to mark</source>
        <translation>%1 zum Zeichenstrom</translation>
    </message>
    <message>
        <source>%1 to space</source>
        <translation>%1 zum Trennstrom</translation>
    </message>
    <message>
        <source>last nudge: %1 to %2</source>
        <translation>letzte Verstellung: %1 auf %2</translation>
    </message>
    <message>
        <source>go on the same way, %1</source>
        <translation>so weiter, %1</translation>
    </message>
    <message>
        <source>go back, %1</source>
        <translation>zurück, %1</translation>
    </message>
    <message>
        <source>that went too far; %1</source>
        <translation>das war zu weit; %1</translation>
    </message>
    <message>
        <source>that made it worse; %1</source>
        <translation>das machte es schlechter; %1</translation>
    </message>
    <message>
        <source>it moved, and is still in limits; was that the tightening?</source>
        <translation>bewegt, noch in den Grenzen; vom Festziehen?</translation>
    </message>
    <message>
        <source>it moved out of limits: was that the tightening? set it again</source>
        <translation>aus den Grenzen; vom Festziehen? neu stellen</translation>
    </message>
    <message>
        <source>nearer, in limits; tighten the screws and watch that it stays</source>
        <translation>näher, in den Grenzen; festziehen, weiter beobachten</translation>
    </message>
    <message>
        <source>in limits so far; let some more characters come</source>
        <translation>bisher in den Grenzen; noch einige Zeichen abwarten</translation>
    </message>
    <message>
        <source>in limits; tighten the screws and watch that it stays</source>
        <translation>in den Grenzen; festziehen, weiter beobachten</translation>
    </message>
    <message>
        <source>it crept out of limits to %1; is it tight?</source>
        <translation>es ist aus den Grenzen auf %1 gekrochen; ist es fest?</translation>
    </message>
    <message>
        <source>Drive: %1</source>
        <translation>Antrieb: %1</translation>
    </message>
    <message>
        <source>Motor and gears make %1 baud; measured are %2 baud, %3 %, which is the standard speed of %4 baud.</source>
        <translation>Motor und Räder ergeben %1 Baud; gemessen sind %2 Baud, %3 %, das ist die übliche Schrittgeschwindigkeit von %4 Baud.</translation>
    </message>
    <message>
        <source>Motor and gears make %1 baud; measured are %2 baud, %3 %.</source>
        <translation>Motor und Räder ergeben %1 Baud; gemessen sind %2 Baud, %3 %.</translation>
    </message>
    <message>
        <source>It runs on %1 Hz mains with motor and gears for %2 Hz.</source>
        <translation>Sie läuft an %1-Hz-Netz mit Motor und Rädern für %2 Hz.</translation>
    </message>
    <message>
        <source>A mains of %1 Hz would make it (a generator?); a synchronous motor does not slip.</source>
        <translation>Eine Netzfrequenz von %1 Hz ergäbe es (ein Generator?); ein Synchronmotor hat keinen Schlupf.</translation>
    </message>
    <message>
        <source>The two gears are exchanged.</source>
        <translation>Die beiden Räder sind vertauscht.</translation>
    </message>
    <message>
        <source>Gears of %1 in place of %2 would make it.</source>
        <translation>Räder mit %1 statt %2 ergäben es.</translation>
    </message>
    <message>
        <source>%1 to %2 teeth</source>
        <translation>%1 zu %2 Zähnen</translation>
    </message>
    <message>
        <source>It has the gears for %1 baud.</source>
        <translation>Sie hat die Räder für %1 Baud.</translation>
    </message>
    <message>
        <source>The governor holds the motor at %1 turns a minute instead of %2.</source>
        <translation>Der Regler hält den Motor auf %1 statt %2 Umdrehungen in der Minute.</translation>
    </message>
    <message>
        <source>Neither mains nor a gear near the one on the card explains it: is it the right card?</source>
        <translation>Weder das Netz noch ein Rad nahe dem der Karte erklärt es: Ist es die richtige Karte?</translation>
    </message>
    <message>
        <source>%1 baud wants a ratio of 1 : %2, as by %3 to %4 teeth (%5 %).</source>
        <translation>%1 Baud verlangen ein Verhältnis von 1 : %2, etwa mit %3 zu %4 Zähnen (%5&#xa0;%).</translation>
    </message>
    <message>
        <source>%1 baud wants a ratio of 1 : %2.</source>
        <translation>%1 Baud verlangen ein Verhältnis von 1 : %2.</translation>
    </message>
    <message>
        <source>the transmitting shaft, twice a turn</source>
        <translation>die Sendewelle, zweimal je Umdrehung</translation>
    </message>
    <message>
        <source>the motor shaft, twice a turn</source>
        <translation>die Motorwelle, zweimal je Umdrehung</translation>
    </message>
    <message>
        <source>the transmitting shaft</source>
        <translation>die Sendewelle</translation>
    </message>
    <message>
        <source>the motor shaft</source>
        <translation>die Motorwelle</translation>
    </message>
    <message>
        <source>a wheel that turns once in %1 turns of the transmitting shaft</source>
        <translation>ein Rad, das sich einmal in %1 Umdrehungen der Sendewelle dreht</translation>
    </message>
    <message>
        <source>the motor shaft (%1 Hz), seen once a character</source>
        <translation>die Motorwelle (%1 Hz), einmal je Zeichen gesehen</translation>
    </message>
    <message>
        <source>The speed must lie between %1 and %2 baud.</source>
        <translation>Die Schrittgeschwindigkeit muss zwischen %1 und %2 Baud liegen.</translation>
    </message>
    <message>
        <source>The stop must lie between %1 and %2 units.</source>
        <translation>Der Sperrschritt muss zwischen %1 und %2 Schrittlängen liegen.</translation>
    </message>
    <message>
        <source>The text to send must hold at least one character of the code, and %1 at most.</source>
        <translation>Der Text muss mindestens ein Zeichen des Codes enthalten, höchstens %1.</translation>
    </message>
    <message>
        <source>Bias and end distortion to send must lie between %1 and %2 %.</source>
        <translation>Einseitige und Endverzerrung müssen zwischen %1 und %2 % liegen.</translation>
    </message>
    <message>
        <source>The scatter to send must lie between %1 and %2 %.</source>
        <translation>Die Streuung muss zwischen %1 und %2 % liegen.</translation>
    </message>
    <message>
        <source>The speed error to send must lie between %1 and %2 %.</source>
        <translation>Der Geschwindigkeitsfehler muss zwischen %1 und %2 % liegen.</translation>
    </message>
    <message>
        <source>The tone to send must lie between %1 and %2 Hz.</source>
        <translation>Der Ton muss zwischen %1 und %2 Hz liegen.</translation>
    </message>
    <message>
        <source>The level to send must lie between %1 and %2 dBFS.</source>
        <translation>Der Pegel muss zwischen %1 und %2 dBFS liegen.</translation>
    </message>
    <message>
        <source>The clock trim must lie between %1 and %2 parts in a million.</source>
        <translation>Der Taktabgleich muss zwischen %1 und %2 Millionstel liegen.</translation>
    </message>
    <message>
        <source>At least %1 seconds of the tone are needed.</source>
        <translation>Mindestens %1 Sekunden des Tons werden gebraucht.</translation>
    </message>
    <message>
        <source>There is no tone of %1 Hz in it; check what the source is set to.</source>
        <translation>Darin ist kein Ton von %1 Hz; die Einstellung der Quelle prüfen.</translation>
    </message>
    <message>
        <source>The tone comes and goes: let it stand for the whole recording.</source>
        <translation>Der Ton kommt und geht: ihn die ganze Aufnahme lang stehen lassen.</translation>
    </message>
    <message>
        <source>The scenario is larger than a megabyte.</source>
        <translation>Das Szenario ist größer als ein Megabyte.</translation>
    </message>
    <message>
        <source>The scenario is not readable as JSON in line %1.</source>
        <translation>Das Szenario ist in Zeile %1 nicht als JSON lesbar.</translation>
    </message>
    <message>
        <source>Cannot open the scenario &quot;%1&quot;.</source>
        <translation>Das Szenario „%1“ lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Cannot read the scenario &quot;%1&quot;.</source>
        <translation>Das Szenario „%1“ lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Cannot read &quot;%1&quot;: %2</source>
        <translation>„%1“ lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>Cannot write &quot;%1&quot;: %2</source>
        <translation>„%1“ lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>%1 has come to its end.</source>
        <translation>%1 ist zu Ende.</translation>
    </message>
    <message>
        <source>%1 is measured again with the new options.</source>
        <translation>%1 wird mit den neuen Einstellungen noch einmal gemessen.</translation>
    </message>
    <message>
        <source>%1 has been measured again with the new options.</source>
        <translation>%1 ist mit den neuen Einstellungen noch einmal gemessen worden.</translation>
    </message>
    <message>
        <source>The sound input %1 has stopped sending; F5 listens to it again when it is back.</source>
        <translation>Der Toneingang %1 sendet nicht mehr; F5 hört wieder hin, wenn er zurück ist.</translation>
    </message>
    <message>
        <source>There is nothing to report yet; choose an input first.</source>
        <translation>Es gibt noch nichts zu berichten; zuerst einen Eingang wählen.</translation>
    </message>
    <message>
        <source>There is nothing to keep yet; the space bar freezes a frame.</source>
        <translation>Es gibt noch nichts zu behalten; die Leertaste hält ein Bild fest.</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation>Es gibt noch nichts zu behalten.</translation>
    </message>
    <message>
        <source>Choose a visit first.</source>
        <translation>Zuerst einen Besuch wählen.</translation>
    </message>
    <message>
        <source>A set of limits must state at least one limit.</source>
        <translation>Ein Satz von Grenzen muss mindestens eine Grenze nennen.</translation>
    </message>
    <message>
        <source>Title and source of a set of limits want up to 400 letters each.</source>
        <translation>Titel und Quelle eines Satzes von Grenzen brauchen je bis zu 400 Buchstaben.</translation>
    </message>
    <message>
        <source>The title of a machine card wants up to 200 letters.</source>
        <translation>Der Titel einer Maschinenkarte braucht bis zu 200 Buchstaben.</translation>
    </message>
    <message>
        <source>Unplug the machine and let it come to rest before hands or tools go in, and turn it by hand only.</source>
        <translation>Netzstecker ziehen und die Maschine zur Ruhe kommen lassen, bevor Hände oder Werkzeug hineingehen, und sie nur von Hand drehen.</translation>
    </message>
    <message>
        <source>Switch the loop supply off and make sure it is dead before touching a contact or a terminal: the loop is hazardous live, and its current limit does not make it safe.</source>
        <translation>Die Linienstromversorgung abschalten und sich von der Spannungsfreiheit überzeugen, bevor ein Kontakt oder eine Klemme berührt wird: Der Linienstromkreis führt gefährliche Spannung, und seine Strombegrenzung macht ihn nicht sicher.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first.</source>
        <translation>Örtliche Vorschriften und das Fachhandwerk gehen vor.</translation>
    </message>
    <message>
        <source>Contacts are cleaned dry with a burnisher and never oiled.</source>
        <translation>Kontakte werden trocken mit der Kontaktfeile gereinigt und nie geölt.</translation>
    </message>
    <message>
        <source>early</source>
        <translation>zu früh</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>rises</source>
        <translation>steigt</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>fällt</translation>
    </message>
    <message>
        <source>the expected text</source>
        <translation>den erwarteten Text</translation>
    </message>
    <message>
        <source>the fox sentence</source>
        <translation>den Fuchssatz</translation>
    </message>
    <message>
        <source>the rounds of the tape before</source>
        <translation>die Umläufe des Streifens davor</translation>
    </message>
    <message>
        <source>%1 over the last %2 characters</source>
        <translation>%1 über die letzten %2 Zeichen</translation>
    </message>
    <message>
        <source>the beginning of stop</source>
        <translation>der Beginn des Sperrschritts</translation>
    </message>
    <message>
        <source>instant %1</source>
        <translation>Übergang %1</translation>
    </message>
    <message>
        <source>in both directions</source>
        <translation>in beiden Richtungen</translation>
    </message>
    <message>
        <source>where its marks begin and end, and nowhere else</source>
        <translation>wo seine Zeichenschritte beginnen und enden, und sonst nirgends</translation>
    </message>
    <message>
        <source>to mark only</source>
        <translation>nur zum Zeichenstrom</translation>
    </message>
    <message>
        <source>to space only</source>
        <translation>nur zum Trennstrom</translation>
    </message>
    <message>
        <source>an unknown ratio</source>
        <translation>ein unbekanntes Verhältnis</translation>
    </message>
    <message>
        <source>%1 % (95 % interval %2 to %3 %)</source>
        <translation>%1 % (95-%-Bereich %2 bis %3 %)</translation>
    </message>
    <message>
        <source>Marks too long by %1, within limits</source>
        <translation>Zeichenstrom zu lang um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Marks too short by %1, within limits</source>
        <translation>Zeichenstrom zu kurz um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Marks too long by %1</source>
        <translation>Zeichenstrom zu lang um %1</translation>
    </message>
    <message>
        <source>Marks too short by %1</source>
        <translation>Zeichenstrom zu kurz um %1</translation>
    </message>
    <message>
        <source>All instants to mark come %1 of a unit (%2 ms) %3, whatever the level; those to space do not.</source>
        <translation>Alle Übergänge zum Zeichenstrom kommen um %1 der Schrittlänge (%2 ms) %3, bei jedem Schritt; die zum Trennstrom nicht.</translation>
    </message>
    <message>
        <source>A lever is out of place as well; its part is left out of this figure.</source>
        <translation>Auch ein Hebel steht falsch; sein Anteil ist in diesem Wert nicht enthalten.</translation>
    </message>
    <message>
        <source>The instants to space are off by as much the same way: the start instant itself may be %1, which cannot be told apart.</source>
        <translation>Die Übergänge zum Trennstrom weichen ebenso ab: Der Anlaufübergang selbst kann %1 sein, das ist nicht zu unterscheiden.</translation>
    </message>
    <message>
        <source>Contact: the gap is too small or the contact closes too early.</source>
        <translation>Kontakt: Der Abstand ist zu klein oder der Kontakt schließt zu früh.</translation>
    </message>
    <message>
        <source>Contact box eccentric, contact spring tension, wear of the contact or of its lever.</source>
        <translation>Exzenter des Kontaktkastens, Spannung der Kontaktfeder, Abnutzung des Kontakts oder seines Hebels.</translation>
    </message>
    <message>
        <source>Contact: the gap is too large or the contact closes too late.</source>
        <translation>Kontakt: Der Abstand ist zu groß oder der Kontakt schließt zu spät.</translation>
    </message>
    <message>
        <source>Contact box eccentric, contact spring tension, dirt or burning on the contact.</source>
        <translation>Exzenter des Kontaktkastens, Spannung der Kontaktfeder, Schmutz oder Abbrand am Kontakt.</translation>
    </message>
    <message>
        <source>Turn the contact eccentric a little and watch the bias: it must move for all levels alike.</source>
        <translation>Den Kontaktexzenter ein wenig drehen und die einseitige Verzerrung beobachten: Sie muss sich bei allen Schritten gleich bewegen.</translation>
    </message>
    <message>
        <source>Marks end late by %1, within limits</source>
        <translation>Zeichenstrom endet zu spät um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Marks end early by %1, within limits</source>
        <translation>Zeichenstrom endet zu früh um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Marks end late by %1</source>
        <translation>Zeichenstrom endet zu spät um %1</translation>
    </message>
    <message>
        <source>Marks end early by %1</source>
        <translation>Zeichenstrom endet zu früh um %1</translation>
    </message>
    <message>
        <source>Counted from the start of the character, all its other instants to space come %1 of a unit (%2 ms) %3.</source>
        <translation>Vom Anlauf des Zeichens an gezählt kommen alle anderen Übergänge zum Trennstrom um %1 der Schrittlänge (%2 ms) %3.</translation>
    </message>
    <message>
        <source>What opens the contact: spring of the contact lever, residual magnetism or friction that holds it, and a start instant that comes too early (start cam).</source>
        <translation>Was den Kontakt öffnet: Feder des Kontakthebels, Restmagnetismus oder Reibung, die ihn hält, und ein zu früher Anlaufübergang (Anlaufnocken).</translation>
    </message>
    <message>
        <source>What opens the contact: worn cam flank, too stiff a contact spring, and a start instant that comes too late (start cam, clutch).</source>
        <translation>Was den Kontakt öffnet: abgenutzte Nockenflanke, zu steife Kontaktfeder und ein zu später Anlaufübergang (Anlaufnocken, Kupplung).</translation>
    </message>
    <message>
        <source>With an ohmmeter across the contact turn the machine by hand and see where on the cams it opens: at the levels off its place, it is the contact lever; at the start alone, the start cam.</source>
        <translation>Mit einem Ohmmeter am Kontakt die Maschine von Hand drehen und sehen, wo an den Nocken er öffnet: an den Schritten nicht an seiner Stelle, so ist es der Kontakthebel; nur am Anlauf, die Anlaufnocke.</translation>
    </message>
    <message>
        <source>The contact bounces for up to %1 ms</source>
        <translation>Der Kontakt prellt bis zu %1 ms</translation>
    </message>
    <message>
        <source>%1 re-openings at %2 closures; the longest took %3 ms (%4 of a unit) from the first closure to steady.</source>
        <translation>%1 Wiederöffnungen bei %2 Schließungen; die längste dauerte %3 ms (%4 der Schrittlänge) vom ersten Schließen bis zur Ruhe.</translation>
    </message>
    <message>
        <source>Contact: spring tension, burnt or dirty faces, a loose contact screw or bracket.</source>
        <translation>Kontakt: Federspannung, verbrannte oder schmutzige Flächen, lose Kontaktschraube oder loser Halter.</translation>
    </message>
    <message>
        <source>Look at the front of the marks on the grid: the line falls back after it has closed.</source>
        <translation>Den Anfang der Zeichenschritte auf dem Raster ansehen: Die Leitung fällt nach dem Schließen zurück.</translation>
    </message>
    <message>
        <source>Clean the contact, set the spring tension, and measure again.</source>
        <translation>Kontakt reinigen, Federspannung einstellen und neu messen.</translation>
    </message>
    <message>
        <source>Now and then an instant stands far out, by up to %1</source>
        <translation>Hin und wieder liegt ein Übergang weit daneben, bis zu %1</translation>
    </message>
    <message>
        <source>The instants scatter by %1 at random</source>
        <translation>Die Übergänge streuen regellos um %1</translation>
    </message>
    <message>
        <source>With speed, bias, levels and periodic lines taken out, %1 rms of a unit is left, up to %2.</source>
        <translation>Ohne Geschwindigkeit, einseitige Verzerrung, Schritte und periodische Anteile bleiben %1 der Schrittlänge effektiv, bis zu %2.</translation>
    </message>
    <message>
        <source>With speed, bias and levels taken out, %1 rms of a unit is left, up to %2.</source>
        <translation>Ohne Geschwindigkeit, einseitige Verzerrung und Schritte bleiben %1 der Schrittlänge effektiv, bis zu %2.</translation>
    </message>
    <message>
        <source>It is too short yet to tell whether it comes and goes with the drive.</source>
        <translation>Es ist noch zu kurz, um zu sagen, ob es mit dem Antrieb kommt und geht.</translation>
    </message>
    <message>
        <source>It grows through the character, as what the drive does: watch it over more characters first.</source>
        <translation>Es wächst im Lauf des Zeichens, wie es vom Antrieb kommt: erst über mehr Zeichen beobachten.</translation>
    </message>
    <message>
        <source>A joint in a belt that comes round so often and a governor that hunts do the same.</source>
        <translation>Eine Stoßstelle im Riemen, die so oft umläuft, und ein Regler, der pendelt, wirken ebenso.</translation>
    </message>
    <message>
        <source>The noise of the input alone would make %1.</source>
        <translation>Das Rauschen des Eingangs allein machte %1.</translation>
    </message>
    <message>
        <source>The contact bounces as well, which may be the whole cause.</source>
        <translation>Der Kontakt prellt auch, was die ganze Ursache sein kann.</translation>
    </message>
    <message>
        <source>Contact: dirt, burnt faces, a loose contact or bracket; play in the contact lever and in the bearings of the shaft.</source>
        <translation>Kontakt: Schmutz, verbrannte Flächen, loser Kontakt oder Halter; Spiel im Kontakthebel und in den Lagern der Welle.</translation>
    </message>
    <message>
        <source>Send one character over and over: what still changes from one to the next is the contact&apos;s.</source>
        <translation>Ein Zeichen immer wieder senden: Was sich dann noch von einem zum nächsten ändert, kommt vom Kontakt.</translation>
    </message>
    <message>
        <source>Clean the contact and measure again.</source>
        <translation>Kontakt reinigen und neu messen.</translation>
    </message>
    <message>
        <source>That is a machine for 60 Hz on 50 Hz mains: wrong motor or gears for this mains.</source>
        <translation>Das ist eine Maschine für 60 Hz an 50-Hz-Netz: falscher Motor oder falsche Räder für dieses Netz.</translation>
    </message>
    <message>
        <source>That is a machine for 50 Hz on 60 Hz mains: wrong motor or gears for this mains.</source>
        <translation>Das ist eine Maschine für 50 Hz an 60-Hz-Netz: falscher Motor oder falsche Räder für dieses Netz.</translation>
    </message>
    <message>
        <source>Start to start it takes %1 ms, a stop of %2 of its own units: the whole shaft turns at the wrong speed.</source>
        <translation>Von Anlauf zu Anlauf dauert es %1 ms, ein Sperrschritt von %2 ihrer eigenen Schrittlängen: Die ganze Welle dreht falsch.</translation>
    </message>
    <message>
        <source>Start to start it takes %1 ms, as it should: the shaft turns at the right speed and the elements alone are of the wrong length (cam sleeve, wrong cams).</source>
        <translation>Von Anlauf zu Anlauf dauert es %1 ms, wie es soll: Die Welle dreht richtig, nur die Schritte haben die falsche Länge (Nockenhülse, falsche Nocken).</translation>
    </message>
    <message>
        <source>Start to start it takes %1 ms.</source>
        <translation>Von Anlauf zu Anlauf dauert es %1 ms.</translation>
    </message>
    <message>
        <source>A level out of place pulls the speed as read to %1 %; here it is set aside.</source>
        <translation>Ein verschobener Schritt zieht die abgelesene Geschwindigkeit auf %1 %; hier ist er beiseitegelassen.</translation>
    </message>
    <message>
        <source>As a swing of the speed that is %1 either way.</source>
        <translation>Als Schwanken der Geschwindigkeit sind das %1 nach beiden Seiten.</translation>
    </message>
    <message>
        <source>By the machine card that is %1.</source>
        <translation>Nach der Maschinenkarte ist das %1.</translation>
    </message>
    <message>
        <source>No shaft of the machine card turns so.</source>
        <translation>Keine Welle der Maschinenkarte dreht so.</translation>
    </message>
    <message>
        <source>It runs at %1 baud, which is no standard speed</source>
        <translation>Sie läuft mit %1 Baud, das ist keine übliche Schrittgeschwindigkeit</translation>
    </message>
    <message>
        <source>The unit is %1 ms.</source>
        <translation>Die Schrittlänge ist %1 ms.</translation>
    </message>
    <message>
        <source>It is %1 % off %2 baud.</source>
        <translation>Das sind %1 % neben %2 Baud.</translation>
    </message>
    <message>
        <source>Motor speed, governor, gears for another speed or another mains frequency.</source>
        <translation>Motordrehzahl, Regler, Räder für eine andere Geschwindigkeit oder Netzfrequenz.</translation>
    </message>
    <message>
        <source>Read the speed on the machine&apos;s plate and set it here; count the shaft with a strobe or a timer.</source>
        <translation>Die Geschwindigkeit am Schild der Maschine ablesen und hier einstellen; die Welle mit Stroboskop oder Uhr auszählen.</translation>
    </message>
    <message>
        <source>Runs fast by %1, within limits</source>
        <translation>Läuft zu schnell um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Runs slow by %1, within limits</source>
        <translation>Läuft zu langsam um %1, in den Grenzen</translation>
    </message>
    <message>
        <source>Runs fast by %1</source>
        <translation>Läuft zu schnell um %1</translation>
    </message>
    <message>
        <source>Runs slow by %1</source>
        <translation>Läuft zu langsam um %1</translation>
    </message>
    <message>
        <source>The elements are %1 ms long where %2 ms belong to %3 baud; the instants are off in proportion to their number, %4 at the beginning of stop.</source>
        <translation>Die Schritte sind %1 ms lang, wo zu %3 Baud %2 ms gehören; die Übergänge weichen im Verhältnis ihrer Nummer ab, %4 am Beginn des Sperrschritts.</translation>
    </message>
    <message>
        <source>Governor setting and its contacts, motor, mains frequency, gears.</source>
        <translation>Einstellung und Kontakte des Reglers, Motor, Netzfrequenz, Räder.</translation>
    </message>
    <message>
        <source>Governor setting and its contacts, motor, mains frequency, gears; a slipping belt or clutch.</source>
        <translation>Einstellung und Kontakte des Reglers, Motor, Netzfrequenz, Räder; rutschender Riemen oder rutschende Kupplung.</translation>
    </message>
    <message>
        <source>Governor, where the motor has one: its setting and contacts; then motor, mains frequency, gears; a slipping belt or clutch.</source>
        <translation>Regler, wo der Motor einen hat: Einstellung und Kontakte; dann Motor, Netzfrequenz, Räder; rutschender Riemen oder rutschende Kupplung.</translation>
    </message>
    <message>
        <source>Governor, where the motor has one: its setting and contacts; then motor, mains frequency, gears.</source>
        <translation>Regler, wo der Motor einen hat: Einstellung und Kontakte; dann Motor, Netzfrequenz, Räder.</translation>
    </message>
    <message>
        <source>Runs fast by %1, if it is meant for %2 baud</source>
        <translation>Läuft zu schnell um %1, wenn %2 Baud gemeint sind</translation>
    </message>
    <message>
        <source>Runs slow by %1, if it is meant for %2 baud</source>
        <translation>Läuft zu langsam um %1, wenn %2 Baud gemeint sind</translation>
    </message>
    <message>
        <source>Nobody has said what speed is meant: the nearest usual one was taken.</source>
        <translation>Niemand hat gesagt, welche Geschwindigkeit gemeint ist: die nächste übliche wurde angenommen.</translation>
    </message>
    <message>
        <source>First read the speed on the machine&apos;s plate and set it in the window.</source>
        <translation>Zuerst die Geschwindigkeit am Schild der Maschine ablesen und im Fenster einstellen.</translation>
    </message>
    <message>
        <source>Governor setting and its contacts, motor, mains frequency, gears; belt or clutch slip when slow.</source>
        <translation>Einstellung des Reglers und seiner Kontakte, Motor, Netzfrequenz, Räder; Schlupf von Riemen oder Kupplung, wenn sie zu langsam ist.</translation>
    </message>
    <message>
        <source>Set the speed with a strobe or tuning fork, or by this reading, and watch both the unit and the operations per minute.</source>
        <translation>Die Drehzahl mit Stroboskop oder Stimmgabel einstellen, oder nach diesem Messwert, und dabei Schrittlänge und Zeichen je Minute beobachten.</translation>
    </message>
    <message>
        <source>The speed wanders by about %1</source>
        <translation>Die Geschwindigkeit wandert um etwa %1</translation>
    </message>
    <message>
        <source>Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of it, with a swing once in %3 seconds.</source>
        <translation>Über je acht Zeichen genommen schwankt die Schrittlänge um %1 effektiv, %2-mal so viel wie durch Zufall, mit einer Schwingung in %3 Sekunden.</translation>
    </message>
    <message>
        <source>Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of it.</source>
        <translation>Über je acht Zeichen genommen schwankt die Schrittlänge um %1 effektiv, %2-mal so viel wie durch Zufall.</translation>
    </message>
    <message>
        <source>Governor (hunting, dirty governor contacts, sticking weights), motor brushes, mains supply, a slipping belt or clutch, dry bearings.</source>
        <translation>Regler (Pendeln, schmutzige Reglerkontakte, klemmende Gewichte), Motorbürsten, Netzversorgung, rutschender Riemen oder rutschende Kupplung, trockene Lager.</translation>
    </message>
    <message>
        <source>Watch the speed trail for some minutes with the machine warm; hold the load even (no tape) and see whether it still wanders.</source>
        <translation>Die Geschwindigkeit einige Minuten bei warmer Maschine beobachten; die Last gleich halten (kein Streifen) und sehen, ob sie noch wandert.</translation>
    </message>
    <message>
        <source>Watch the speed for some minutes with the machine warm; hold the load even (no tape) and see whether it still wanders.</source>
        <translation>Die Geschwindigkeit einige Minuten bei warmer Maschine beobachten; die Last gleich halten (kein Streifen) und sehen, ob sie noch wandert.</translation>
    </message>
    <message>
        <source>The displacement swings by %1 at %2 Hz</source>
        <translation>Die Abweichung schwingt um %1 mit %2 Hz</translation>
    </message>
    <message>
        <source>once in %1 characters: a slower shaft or wheel</source>
        <translation>einmal in %1 Zeichen: eine langsamere Welle oder ein langsameres Rad</translation>
    </message>
    <message>
        <source>%1 times in each character: a shaft before the main shaft</source>
        <translation>%1-mal in jedem Zeichen: eine Welle vor der Hauptwelle</translation>
    </message>
    <message>
        <source>A periodic line of %1 of a unit either way stands out at %2 Hz, %3; %4 rms is left without it.</source>
        <translation>Ein periodischer Anteil von %1 der Schrittlänge nach beiden Seiten fällt bei %2 Hz auf, %3; ohne ihn bleiben %4 effektiv.</translation>
    </message>
    <message>
        <source>A periodic line of %1 of a unit either way stands out at %2 Hz; %3 rms is left without it.</source>
        <translation>Ein periodischer Anteil von %1 der Schrittlänge nach beiden Seiten fällt bei %2 Hz auf; ohne ihn bleiben %3 effektiv.</translation>
    </message>
    <message>
        <source>The gear or shaft that turns at %1 turns a minute: eccentric or bent gear, a damaged tooth, a bent shaft, a bearing with play.</source>
        <translation>Das Rad oder die Welle mit %1 Umdrehungen in der Minute: unrundes oder verbogenes Rad, beschädigter Zahn, verbogene Welle, Lager mit Spiel.</translation>
    </message>
    <message>
        <source>With the power off turn the machine by hand through one revolution of that shaft and feel for a stiff place; compare with the shaft speeds of the machine card.</source>
        <translation>Bei gezogenem Netzstecker die Maschine von Hand um eine Umdrehung dieser Welle drehen und eine schwergängige Stelle suchen; mit den Drehzahlen der Maschinenkarte vergleichen.</translation>
    </message>
    <message>
        <source>The stop is irregular: %1 of a unit rms</source>
        <translation>Der Sperrschritt ist unregelmäßig: %1 der Schrittlänge effektiv</translation>
    </message>
    <message>
        <source>The stop is too long by %1 units</source>
        <translation>Der Sperrschritt ist um %1 Schrittlängen zu lang</translation>
    </message>
    <message>
        <source>From start to start the interval varies by %1 ms rms, while the instants within the characters keep their places within %2 rms; the stop is %3 units on average, nominal %4.</source>
        <translation>Von Anlauf zu Anlauf schwankt der Abstand um %1 ms effektiv, während die Übergänge in den Zeichen ihren Platz auf %2 effektiv halten; der Sperrschritt ist im Mittel %3 Schrittlängen, Nennwert %4.</translation>
    </message>
    <message>
        <source>From start to start the interval varies by %1 ms rms, while the instants within the characters keep their places within %2 rms; the stop is %3 units on average.</source>
        <translation>Von Anlauf zu Anlauf schwankt der Abstand um %1 ms effektiv, während die Übergänge in den Zeichen ihren Platz auf %2 effektiv halten; der Sperrschritt ist im Mittel %3 Schrittlängen.</translation>
    </message>
    <message>
        <source>The clutch lets go late each time, or the machine waits for its tape.</source>
        <translation>Die Kupplung löst jedes Mal zu spät aus, oder die Maschine wartet auf ihren Streifen.</translation>
    </message>
    <message>
        <source>Clutch and its trip: trip lever, latch and pawl, clutch teeth and spring, dry or gummed clutch, friction set too low; the tape-out and feed interlocks.</source>
        <translation>Kupplung und ihre Auslösung: Auslösehebel, Klinke und Sperre, Kupplungszähne und -feder, trockene oder verharzte Kupplung, zu geringe Reibung; die Verriegelungen für Streifenende und Vorschub.</translation>
    </message>
    <message>
        <source>Watch the start of each character against the one before on the grid; with the power off trip the clutch by hand and feel whether it engages at once.</source>
        <translation>Den Anlauf jedes Zeichens gegen das vorige auf dem Raster beobachten; bei gezogenem Netzstecker die Kupplung von Hand auslösen und fühlen, ob sie sofort greift.</translation>
    </message>
    <message>
        <source>The displacement depends on the element before, by %1</source>
        <translation>Die Abweichung hängt vom Schritt davor ab, um %1</translation>
    </message>
    <message>
        <source>The loop current %1 slowly: %2 ms</source>
        <translation>Der Linienstrom %1 langsam: %2 ms</translation>
    </message>
    <message>
        <source>From 10 to 90 % of the swing the line takes %1 ms to mark and %2 ms to space, a time constant of %3 ms.</source>
        <translation>Von 10 bis 90 % des Hubs braucht die Leitung %1 ms zum Zeichenstrom und %2 ms zum Trennstrom, eine Zeitkonstante von %3 ms.</translation>
    </message>
    <message>
        <source>From 10 to 90 % of the swing the line takes %1 ms to mark and %2 ms to space.</source>
        <translation>Von 10 bis 90 % des Hubs braucht die Leitung %1 ms zum Zeichenstrom und %2 ms zum Trennstrom.</translation>
    </message>
    <message>
        <source>That alone shifts the instants to mark by %1 % against those to space; the bias read is %2 %.</source>
        <translation>Das allein verschiebt die Übergänge zum Zeichenstrom um %1 % gegen die zum Trennstrom; die gemessene einseitige Verzerrung ist %2 %.</translation>
    </message>
    <message>
        <source>What is left by length of the element before: %1.</source>
        <translation>Rest nach der Länge des Schritts davor: %1.</translation>
    </message>
    <message>
        <source>The loop, not the machine: inductance of magnets in series, too low a supply voltage, a capacitor or filter across the contact; a slice level off the middle.</source>
        <translation>Der Linienstromkreis, nicht die Maschine: Induktivität von Magneten in Reihe, zu niedrige Versorgungsspannung, Kondensator oder Filter am Kontakt; Schwelle außerhalb der Mitte.</translation>
    </message>
    <message>
        <source>Measure with a resistor in place of the magnets, at the same current: the slope must become steep.</source>
        <translation>Mit einem Widerstand statt der Magnete bei gleichem Strom messen: Die Flanke muss steil werden.</translation>
    </message>
    <message>
        <source>The signal is faint: peaks at %1 dB of full scale</source>
        <translation>Das Signal ist schwach: Spitzen bei %1 dB der Vollaussteuerung</translation>
    </message>
    <message>
        <source>The signal is noisy: %1 dB above the noise</source>
        <translation>Das Signal ist verrauscht: %1 dB über dem Rauschen</translation>
    </message>
    <message>
        <source>Half the swing is %1 above the noise and the largest sample %2 dB of full scale; the noise alone displaces single instants by %3 rms.</source>
        <translation>Der halbe Hub liegt %1 über dem Rauschen und der größte Abtastwert bei %2 dB der Vollaussteuerung; das Rauschen allein verschiebt einzelne Übergänge um %3 effektiv.</translation>
    </message>
    <message>
        <source>Half the swing is %1 above the noise; the noise alone displaces single instants by %2 rms.</source>
        <translation>Der halbe Hub liegt %1 über dem Rauschen; das Rauschen allein verschiebt einzelne Übergänge um %2 effektiv.</translation>
    </message>
    <message>
        <source>Input level and gain of the sound card, the series resistor or coupler at the loop, cables and their screens, microphone boost.</source>
        <translation>Eingangspegel und Verstärkung der Soundkarte, Vorwiderstand oder Koppler am Linienstromkreis, Kabel und ihre Schirme, Mikrofonverstärkung.</translation>
    </message>
    <message>
        <source>Raise the level step by step while watching the level meter; it must stay clear of clipping.</source>
        <translation>Den Pegel schrittweise erhöhen und dabei die Pegelanzeige beobachten; sie darf nicht übersteuern.</translation>
    </message>
    <message>
        <source>Mains hum of %1 of the swing</source>
        <translation>Netzbrumm von %1 des Hubs</translation>
    </message>
    <message>
        <source>A slow disturbance of %1 of the swing, peak to peak, rides on the line signal; it is not the contacts&apos; doing.</source>
        <translation>Eine langsame Störung von %1 des Hubs, Spitze zu Spitze, liegt auf dem Leitungssignal; sie kommt nicht von den Kontakten.</translation>
    </message>
    <message>
        <source>A ground loop between computer and machine, an unscreened cable beside mains leads, the loop supply&apos;s own ripple.</source>
        <translation>Eine Erdschleife zwischen Rechner und Maschine, ein ungeschirmtes Kabel neben Netzleitungen, die Welligkeit der Linienstromversorgung.</translation>
    </message>
    <message>
        <source>Run the computer from its battery, or through an isolating transformer at the audio input, and see the hum go.</source>
        <translation>Den Rechner aus dem Akku betreiben oder einen Trennübertrager vor den Toneingang setzen und sehen, wie der Brumm verschwindet.</translation>
    </message>
    <message>
        <source>With the tape stopped it is seen alone on the grid.</source>
        <translation>Bei stehendem Streifen ist er auf dem Raster allein zu sehen.</translation>
    </message>
    <message>
        <source>The input is overdriven: %1 of the samples clip</source>
        <translation>Der Eingang ist übersteuert: %1 der Abtastwerte sind begrenzt</translation>
    </message>
    <message>
        <source>%1 of all samples lie at full scale; levels and coupling cannot be told well from flattened samples.</source>
        <translation>%1 aller Abtastwerte liegen an der Vollaussteuerung; Pegel und Kopplung sind aus begrenzten Werten schlecht zu bestimmen.</translation>
    </message>
    <message>
        <source>Flattened samples may be why nothing can be read.</source>
        <translation>Begrenzte Abtastwerte können der Grund sein, dass nichts zu lesen ist.</translation>
    </message>
    <message>
        <source>Input gain of the sound card, microphone boost, the coupler or divider at the loop.</source>
        <translation>Eingangsverstärkung der Soundkarte, Mikrofonverstärkung, Koppler oder Teiler am Linienstromkreis.</translation>
    </message>
    <message>
        <source>Turn the gain down until the level meter shows no clipping, then measure again.</source>
        <translation>Die Verstärkung zurücknehmen, bis die Pegelanzeige keine Übersteuerung zeigt, dann neu messen.</translation>
    </message>
    <message>
        <source>The signal arrives reversed; it is read the right way round</source>
        <translation>Das Signal kommt verkehrt an; es wird richtig herum gelesen</translation>
    </message>
    <message>
        <source>Read one way round the line falls into characters with start and stop, the other way it does not: mark and space are exchanged between loop and samples.</source>
        <translation>Nur in einer Richtung gelesen ergibt die Leitung Zeichen mit Anlauf und Sperrschritt: Zeichenstrom und Trennstrom sind zwischen Linienstromkreis und Abtastwerten vertauscht.</translation>
    </message>
    <message>
        <source>Leads of the coupler exchanged, or a sound card that inverts.</source>
        <translation>Leitungen des Kopplers vertauscht, oder eine Soundkarte, die umpolt.</translation>
    </message>
    <message>
        <source>Nothing in the machine.</source>
        <translation>Nichts an der Maschine.</translation>
    </message>
    <message>
        <source>Exchange the two leads at the coupler if you want it upright; the readings are the same.</source>
        <translation>Die beiden Leitungen am Koppler vertauschen, wenn es aufrecht sein soll; die Messwerte sind dieselben.</translation>
    </message>
    <message>
        <source>Level %1 hardly ever sends a mark</source>
        <translation>Schritt %1 sendet kaum je Zeichenstrom</translation>
    </message>
    <message>
        <source>Level %1 seems to lose marks: about %2 of %3</source>
        <translation>Schritt %1 scheint Zeichenschritte zu verlieren: etwa %2 von %3</translation>
    </message>
    <message>
        <source>Level %1 seems to fill spaces: about %2 of %3</source>
        <translation>Schritt %1 scheint Trennschritte zu füllen: etwa %2 von %3</translation>
    </message>
    <message>
        <source>The text is not known.</source>
        <translation>Der Text ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Read as plain text, about %1 of its %2 characters fit in only with a mark on level %3 that did not come: %4 of that level&apos;s marks.</source>
        <translation>Als Klartext gelesen passen etwa %1 seiner %2 Zeichen nur, wenn im Schritt %3 ein Zeichenschritt ausblieb: %4 der Zeichenschritte dieses Schritts.</translation>
    </message>
    <message>
        <source>Read as plain text, about %1 of its %2 characters fit in only with a space on level %3 that was filled: %4 of that level&apos;s spaces.</source>
        <translation>Als Klartext gelesen passen etwa %1 seiner %2 Zeichen nur, wenn im Schritt %3 ein Trennschritt gefüllt wurde: %4 der Trennschritte dieses Schritts.</translation>
    </message>
    <message>
        <source>For example: %1.</source>
        <translation>Zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>The chance that the text itself is like that is %1.</source>
        <translation>Dass der Text selbst so lautet, hat eine Wahrscheinlichkeit von %1.</translation>
    </message>
    <message>
        <source>Level %1 hardly ever sends a space</source>
        <translation>Schritt %1 sendet kaum je Trennstrom</translation>
    </message>
    <message>
        <source>Of %1 characters only %2 had a mark on level %3.</source>
        <translation>Von %1 Zeichen hatten nur %2 Zeichenstrom im Schritt %3.</translation>
    </message>
    <message>
        <source>Of %1 characters only %2 had a space on level %3.</source>
        <translation>Von %1 Zeichen hatten nur %2 Trennstrom im Schritt %3.</translation>
    </message>
    <message>
        <source>The text is not known; plain text uses every level either way in a quarter of its characters or more.</source>
        <translation>Der Text ist unbekannt; Klartext nutzt jeden Schritt in beiden Richtungen in mindestens einem Viertel der Zeichen.</translation>
    </message>
    <message>
        <source>Level %1: sensing pin, transfer lever, its spring and its contact.</source>
        <translation>Schritt %1: Fühlstift, Übertragungshebel, seine Feder und sein Kontakt.</translation>
    </message>
    <message>
        <source>Level %1: sensing pin stuck up, transfer lever not returning, contact welded or shorted.</source>
        <translation>Schritt %1: Fühlstift klemmt oben, Übertragungshebel kehrt nicht zurück, Kontakt verschweißt oder kurzgeschlossen.</translation>
    </message>
    <message>
        <source>Run a tape whose text is known (RY uses every level both ways) and give it as the expected text.</source>
        <translation>Einen Streifen mit bekanntem Text laufen lassen (RY nutzt jeden Schritt in beiden Richtungen) und ihn als erwarteten Text angeben.</translation>
    </message>
    <message>
        <source>A single mark is missed</source>
        <translation>Ein einziger Zeichenschritt fehlt</translation>
    </message>
    <message>
        <source>A single space is filled</source>
        <translation>Ein einziger Trennschritt ist gefüllt</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the marks are missed; that may be chance.</source>
        <translation>Gegen %1 gehalten fehlen %2 der Zeichenschritte; das kann Zufall sein.</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the spaces are filled; that may be chance.</source>
        <translation>Gegen %1 gehalten sind %2 der Trennschritte gefüllt; das kann Zufall sein.</translation>
    </message>
    <message>
        <source>Marks are missed on several levels: %1 of %2</source>
        <translation>Zeichenschritte fehlen in mehreren Schritten: %1 von %2</translation>
    </message>
    <message>
        <source>Spaces are filled on several levels: %1 of %2</source>
        <translation>Trennschritte sind in mehreren Schritten gefüllt: %1 von %2</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the marks are missed; level %3 most of all, but not beyond what chance makes.</source>
        <translation>Gegen %1 gehalten fehlen %2 der Zeichenschritte; Schritt %3 am meisten, aber nicht mehr als durch Zufall.</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the spaces are filled; level %3 most of all, but not beyond what chance makes.</source>
        <translation>Gegen %1 gehalten sind %2 der Trennschritte gefüllt; Schritt %3 am meisten, aber nicht mehr als durch Zufall.</translation>
    </message>
    <message>
        <source>What all levels share: tape guide and lid, position of the feed holes to the sensing pins, contact and transmitting cams, a contact that chatters; and a weak or disturbed input.</source>
        <translation>Was allen Schritten gemeinsam ist: Streifenführung und Deckel, Lage der Vorschublöcher zu den Fühlstiften, Kontakt und Sendenocken, ein flatternder Kontakt; und ein schwacher oder gestörter Eingang.</translation>
    </message>
    <message>
        <source>Try a new tape, and compare the faulty characters on the tape view.</source>
        <translation>Einen neuen Streifen versuchen und die fehlerhaften Zeichen in der Streifenansicht vergleichen.</translation>
    </message>
    <message>
        <source>Marks of level %1 are missed: %2 of %3</source>
        <translation>Zeichenschritte von Schritt %1 fehlen: %2 von %3</translation>
    </message>
    <message>
        <source>Spaces of level %1 are filled: %2 of %3</source>
        <translation>Trennschritte von Schritt %1 sind gefüllt: %2 von %3</translation>
    </message>
    <message>
        <source>Held against %1, level %2 lost %3 of %4 marks, %5; the other levels together %6 of %7.</source>
        <translation>Gegen %1 gehalten verlor Schritt %2 %3 von %4 Zeichenschritten, %5; die anderen Schritte zusammen %6 von %7.</translation>
    </message>
    <message>
        <source>Held against %1, level %2 filled %3 of %4 spaces, %5; the other levels together %6 of %7.</source>
        <translation>Gegen %1 gehalten füllte Schritt %2 %3 von %4 Trennschritten, %5; die anderen Schritte zusammen %6 von %7.</translation>
    </message>
    <message>
        <source>A mark that is lost takes the changes of the line at %1 and %2 with it; those that are left come in time.</source>
        <translation>Ein verlorener Zeichenschritt nimmt die Übergänge bei %1 und %2 mit; die übrigen kommen rechtzeitig.</translation>
    </message>
    <message>
        <source>Look at a faulty character on the grid; with the power off press the sensing pin of level %1 by hand and feel its way.</source>
        <translation>Ein fehlerhaftes Zeichen auf dem Raster ansehen; bei gezogenem Netzstecker den Fühlstift von Schritt %1 von Hand drücken und seinen Weg fühlen.</translation>
    </message>
    <message>
        <source>Click a faulty character on the tape view to see it on the grid; with the power off press the sensing pin of level %1 by hand and feel its way.</source>
        <translation>Ein fehlerhaftes Zeichen in der Streifenansicht anklicken, um es auf dem Raster zu sehen; bei gezogenem Netzstecker den Fühlstift von Schritt %1 von Hand drücken und seinen Weg fühlen.</translation>
    </message>
    <message>
        <source>Level %1: sensing pin worn, bent or gummed, weak pin spring, transfer lever not followed through, dirty contact of that level; then the tape itself (holes not clean).</source>
        <translation>Schritt %1: Fühlstift abgenutzt, verbogen oder verharzt, schwache Stiftfeder, Übertragungshebel nicht durchgelaufen, schmutziger Kontakt dieses Schritts; dann der Streifen selbst (unsaubere Löcher).</translation>
    </message>
    <message>
        <source>Level %1: sensing pin or transfer lever slow to return (gummed, weak return spring), contact sticking or shorted; then a tape torn at that row.</source>
        <translation>Schritt %1: Fühlstift oder Übertragungshebel kehrt träge zurück (verharzt, schwache Rückholfeder), Kontakt klebt oder ist kurzgeschlossen; dann ein in dieser Reihe gerissener Streifen.</translation>
    </message>
    <message>
        <source>The stop begins %1 late</source>
        <translation>Der Sperrschritt beginnt %1 zu spät</translation>
    </message>
    <message>
        <source>The stop begins %1 early</source>
        <translation>Der Sperrschritt beginnt %1 zu früh</translation>
    </message>
    <message>
        <source>Level %1 comes %2 late</source>
        <translation>Schritt %1 kommt %2 zu spät</translation>
    </message>
    <message>
        <source>Level %1 comes %2 early</source>
        <translation>Schritt %1 kommt %2 zu früh</translation>
    </message>
    <message>
        <source>At %1 the line changes %2 of a unit (%3 ms) late %4; with that set aside the other instants agree within %5.</source>
        <translation>Bei „%1“ wechselt die Leitung %2 der Schrittlänge (%3 ms) zu spät, %4; davon abgesehen stimmen die anderen Übergänge auf %5 überein.</translation>
    </message>
    <message>
        <source>At %1 the line changes %2 of a unit (%3 ms) early %4; with that set aside the other instants agree within %5.</source>
        <translation>Bei „%1“ wechselt die Leitung %2 der Schrittlänge (%3 ms) zu früh, %4; davon abgesehen stimmen die anderen Übergänge auf %5 überein.</translation>
    </message>
    <message>
        <source>Out as well, and set aside too: %1, by %2 %.</source>
        <translation>Ebenfalls daneben und beiseite gelassen: %1, um %2 %.</translation>
    </message>
    <message>
        <source>So does %1, by %2 %.</source>
        <translation>Ebenso „%1“, um %2 %.</translation>
    </message>
    <message>
        <source>Bias and end distortion as read are partly this: without it they are %1 % and %2 %.</source>
        <translation>Die gemessene einseitige und die Endverzerrung kommen zum Teil daher: ohne dies sind sie %1 % und %2 %.</translation>
    </message>
    <message>
        <source>So is the speed error: without it %1 %.</source>
        <translation>Auch der Geschwindigkeitsfehler: ohne ihn %1 %.</translation>
    </message>
    <message>
        <source>Stop cam or stop lever; the end of level %1&apos;s travel.</source>
        <translation>Sperrnocken oder Sperrhebel; das Ende des Wegs von Schritt %1.</translation>
    </message>
    <message>
        <source>Level %1: worn or gummed transfer lever, its cam or cam follower, its contact gap, weak lever spring.</source>
        <translation>Schritt %1: abgenutzter oder verharzter Übertragungshebel, sein Nocken oder Nockenfolger, sein Kontaktabstand, schwache Hebelfeder.</translation>
    </message>
    <message>
        <source>Compare the dots of %1 with its neighbours in the displacement plot; move that lever by hand with the power off and feel for drag.</source>
        <translation>Die Punkte von „%1“ mit den Nachbarn in der Abweichungsdarstellung vergleichen; diesen Hebel bei gezogenem Netzstecker von Hand bewegen und auf Schleppen achten.</translation>
    </message>
    <message>
        <source>The tape feed slips: %1 in %2 characters</source>
        <translation>Der Streifenvorschub rutscht: %1 in %2 Zeichen</translation>
    </message>
    <message>
        <source>Held against %1, %2 characters came twice and %3 were passed over, %4 of the characters; the levels themselves are right there.</source>
        <translation>Gegen %1 gehalten kamen %2 Zeichen doppelt und %3 wurden übergangen, %4 der Zeichen; die Schritte selbst stimmen dort.</translation>
    </message>
    <message>
        <source>On RY a character sent twice looks the same as one passed over.</source>
        <translation>Bei RY sieht ein doppelt gesendetes Zeichen aus wie ein übergangenes.</translation>
    </message>
    <message>
        <source>Feed wheel and its pins, feed pawl and detent, tape guide and lid; then the feed holes of the tape.</source>
        <translation>Vorschubrad und seine Stifte, Vorschubklinke und Raste, Streifenführung und Deckel; dann die Vorschublöcher des Streifens.</translation>
    </message>
    <message>
        <source>Mark the tape and let it run: the mark must come by after the same number of characters each round.</source>
        <translation>Den Streifen markieren und laufen lassen: Die Marke muss bei jedem Umlauf nach gleich vielen Zeichen kommen.</translation>
    </message>
    <message>
        <source>Try a new tape before the feed is touched.</source>
        <translation>Erst einen neuen Streifen versuchen, bevor der Vorschub angefasst wird.</translation>
    </message>
    <message>
        <source>In order: nothing stands out</source>
        <translation>In Ordnung: Nichts fällt auf</translation>
    </message>
    <message>
        <source>The timing is in order; lost marks cannot be counted</source>
        <translation>Die Zeiten sind in Ordnung; verlorene Zeichenschritte lassen sich nicht zählen</translation>
    </message>
    <message>
        <source>Over %1 characters bias is %2 %, end distortion %3 %, speed error %4 %, and no instant is further off than %5 of a unit.</source>
        <translation>Über %1 Zeichen ist die einseitige Verzerrung %2 %, die Endverzerrung %3 %, der Geschwindigkeitsfehler %4 %, und kein Übergang weicht weiter ab als %5 der Schrittlänge.</translation>
    </message>
    <message>
        <source>Over %1 characters bias is %2 %, end distortion %3 %, and no instant is further off than %4 of a unit.</source>
        <translation>Über %1 Zeichen ist die einseitige Verzerrung %2 %, die Endverzerrung %3 %, und kein Übergang weicht weiter ab als %4 der Schrittlänge.</translation>
    </message>
    <message>
        <source>No level lost a mark or filled a space more than chance would have it.</source>
        <translation>Kein Schritt verlor mehr Zeichenstrom oder füllte mehr Trennstrom als durch Zufall.</translation>
    </message>
    <message>
        <source>The text is not known, so lost marks and filled spaces were not counted.</source>
        <translation>Der Text ist unbekannt, daher wurden verlorene Zeichenschritte und gefüllte Trennschritte nicht gezählt.</translation>
    </message>
    <message>
        <source>It reads much like plain text; a level that now and then loses a mark or fills a space may hide in it.</source>
        <translation>Er liest sich fast wie Klartext; ein Schritt, der ab und zu einen Zeichenschritt verliert oder einen Trennschritt füllt, kann sich darin verbergen.</translation>
    </message>
    <message>
        <source>Nothing in the timing; leave the adjustments as they are.</source>
        <translation>Nichts an den Zeiten; die Einstellungen lassen, wie sie sind.</translation>
    </message>
    <message>
        <source>Nothing; leave the adjustments as they are.</source>
        <translation>Nichts; die Einstellungen lassen, wie sie sind.</translation>
    </message>
    <message>
        <source>Keep this reading in the logbook to compare with at the next visit.</source>
        <translation>Diesen Messwert im Logbuch behalten, zum Vergleich beim nächsten Besuch.</translation>
    </message>
    <message>
        <source>Run a tape of known text (RY or the fox sentence) to have the levels counted as well.</source>
        <translation>Einen Streifen mit bekanntem Text (RY oder Fuchssatz) laufen lassen, damit auch die Schritte gezählt werden.</translation>
    </message>
    <message>
        <source>Open and close the contact by hand, slowly, and watch the line on the grid.</source>
        <translation>Den Kontakt von Hand langsam öffnen und schließen und die Leitung auf dem Raster beobachten.</translation>
    </message>
    <message>
        <source>There is a signal, but it cannot be read as start-stop</source>
        <translation>Ein Signal ist da, aber nicht als Start-Stopp zu lesen</translation>
    </message>
    <message>
        <source>The line switches between two levels, but neither way round do its changes fall into characters of start, levels and stop.</source>
        <translation>Die Leitung wechselt zwischen zwei Pegeln, aber in keiner Richtung ergeben die Wechsel Zeichen aus Anlauf, Schritten und Sperrschritt.</translation>
    </message>
    <message>
        <source>A sender heard through a very narrow coupling, or with very slow edges, may look the same.</source>
        <translation>Ein Sender über eine sehr enge Kopplung oder mit sehr langsamen Flanken kann ebenso aussehen.</translation>
    </message>
    <message>
        <source>Is this the right input, and the right pair of the loop?</source>
        <translation>Ist das der richtige Eingang und das richtige Adernpaar?</translation>
    </message>
    <message>
        <source>Synchronous signals, speech and music, and a receiver tuned beside the tones look like this.</source>
        <translation>Synchrone Signale, Sprache und Musik und ein neben den Tönen abgestimmter Empfänger sehen so aus.</translation>
    </message>
    <message>
        <source>The input is silent</source>
        <translation>Der Eingang ist stumm</translation>
    </message>
    <message>
        <source>Nothing on the input switches between two levels</source>
        <translation>Nichts am Eingang wechselt zwischen zwei Pegeln</translation>
    </message>
    <message>
        <source>The largest sample lies %1 dB of full scale.</source>
        <translation>Der größte Abtastwert liegt bei %1 dB der Vollaussteuerung.</translation>
    </message>
    <message>
        <source>Every sample is zero.</source>
        <translation>Jeder Abtastwert ist null.</translation>
    </message>
    <message>
        <source>Right input chosen, right recording?</source>
        <translation>Richtiger Eingang, richtige Aufnahme gewählt?</translation>
    </message>
    <message>
        <source>Cable, coupler, gain; is the loop closed and fed, does the tape run?</source>
        <translation>Kabel, Koppler, Verstärkung; ist der Linienstromkreis geschlossen und gespeist, läuft der Streifen?</translation>
    </message>
    <message>
        <source>space</source>
        <translation>Zwischenraum</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>Buchstaben</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>Ziffern</translation>
    </message>
    <message>
        <source>line feed</source>
        <translation>Zeilenvorschub</translation>
    </message>
    <message>
        <source>carriage return</source>
        <translation>Wagenrücklauf</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>bell</source>
        <translation>Klingel</translation>
    </message>
    <message>
        <source>who are you</source>
        <translation>wer da</translation>
    </message>
    <message>
        <source>The sound output is for the line input of a receiver or of another instrument.</source>
        <translation>Der Tonausgang ist für den Leitungseingang eines Empfängers oder eines anderen Messgeräts.</translation>
    </message>
    <message>
        <source>It never drives a loop directly: a loop is hazardous live, well above 60 V DC, and would reach the computer and the person at it.</source>
        <translation>Er treibt nie unmittelbar einen Linienstromkreis: Dieser führt gefährliche Spannung, weit über 60 V Gleichspannung, und würde den Rechner und den Menschen daran erreichen.</translation>
    </message>
    <message>
        <source>Key a loop only through an isolating part rated for it.</source>
        <translation>Einen Linienstromkreis nur über ein dafür bemessenes trennendes Bauteil tasten.</translation>
    </message>
    <message>
        <source>still learning the scatter: %1 more character</source>
        <translation>lernt noch die Streuung: %1 weiteres Zeichen</translation>
    </message>
    <message>
        <source>still learning the scatter: %1 more characters</source>
        <translation>lernt noch die Streuung: %1 weitere Zeichen</translation>
    </message>
    <message>
        <source>The report could not be written to &quot;%1&quot; (%2); choose another folder or free some space.</source>
        <translation>Der Bericht ließ sich nicht nach „%1“ schreiben (%2); einen anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>The machine card could not be kept in &quot;%1&quot; (%2).</source>
        <translation>Die Maschinenkarte ließ sich nicht in „%1“ aufbewahren (%2).</translation>
    </message>
    <message>
        <source>The limits could not be kept in &quot;%1&quot; (%2).</source>
        <translation>Die Grenzen ließen sich nicht in „%1“ aufbewahren (%2).</translation>
    </message>
    <message>
        <source>The self-check was made, but could not be kept in &quot;%1&quot; (%2).</source>
        <translation>Die Selbstprüfung wurde gemacht, ließ sich aber nicht in „%1“ aufbewahren (%2).</translation>
    </message>
    <message>
        <source>about a quarter of that nudge</source>
        <translation>etwa ein Viertel dieser Verstellung</translation>
    </message>
    <message>
        <source>about half of that nudge</source>
        <translation>etwa die Hälfte dieser Verstellung</translation>
    </message>
    <message>
        <source>about as much</source>
        <translation>etwa ebenso viel</translation>
    </message>
    <message>
        <source>about %1 times that nudge</source>
        <translation>etwa das %1-fache dieser Verstellung</translation>
    </message>
    <message>
        <source>much farther: take larger turns</source>
        <translation>viel weiter: größere Schritte nehmen</translation>
    </message>
    <message>
        <source>about at the limit; a little nearer to zero</source>
        <translation>etwa an der Grenze; noch ein wenig näher an null</translation>
    </message>
    <message>
        <source>in limits since; a shorter window (W) leaves out what was before</source>
        <translation>seitdem in den Grenzen; ein kürzeres Fenster (W) zeigt es</translation>
    </message>
    <message>
        <source>in limits since; the reading follows in %1 character</source>
        <translation>seitdem in den Grenzen; der Messwert folgt in %1 Zeichen</translation>
    </message>
    <message>
        <source>in limits since; the reading follows in %1 characters</source>
        <translation>seitdem in den Grenzen; der Messwert folgt in %1 Zeichen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a sample rate of %2 Hz; the instrument reads 8 to 768 kHz.</source>
        <translation>„%1“ hat eine Abtastrate von %2 Hz; das Gerät liest 8 bis 768 kHz.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has %2 channels; at most 64 can be read.</source>
        <translation>„%1“ hat %2 Kanäle; höchstens 64 lassen sich lesen.</translation>
    </message>
    <message>
        <source>the name must end in .wav or .flac.</source>
        <translation>der Name muss auf .wav oder .flac enden.</translation>
    </message>
    <message>
        <source>The tone lies %1 parts in a million beside %2 Hz: no sound card is that far off, so the source must be.</source>
        <translation>Der Ton liegt %1 Millionstel neben %2 Hz: So weit daneben ist keine Soundkarte, also ist es die Quelle.</translation>
    </message>
    <message>
        <source>The tone is not steady enough: its phase strays by up to %1 radians, which leaves the clock unsure by %2 parts in a million.</source>
        <translation>Der Ton ist nicht stetig genug: Seine Phase weicht um bis zu %1 rad ab, und der Takt bleibt um %2 Millionstel unsicher.</translation>
    </message>
    <message>
        <source>There is no code named &quot;%1&quot;; known are: %2.</source>
        <translation>Es gibt keinen Code namens „%1“; bekannt sind: %2.</translation>
    </message>
    <message>
        <source>There is no code &quot;%1&quot;; there are %2.</source>
        <translation>Es gibt keinen Code „%1“; es gibt %2.</translation>
    </message>
    <message>
        <source>At most two tones can be given.</source>
        <translation>Höchstens zwei Töne lassen sich angeben.</translation>
    </message>
    <message>
        <source>A tone must lie between %1 and %2 Hz.</source>
        <translation>Ein Ton muss zwischen %1 und %2 Hz liegen.</translation>
    </message>
    <message>
        <source>The two tones must lie at least %1 Hz apart.</source>
        <translation>Die beiden Töne müssen mindestens %1 Hz auseinander liegen.</translation>
    </message>
    <message>
        <source>The window must be a number of characters, or all.</source>
        <translation>Das Fenster muss eine Zahl von Zeichen sein, oder alle.</translation>
    </message>
    <message>
        <source>The slice level must lie between %1 and %2 percent.</source>
        <translation>Die Entscheidungsschwelle muss zwischen %1 und %2 Prozent liegen.</translation>
    </message>
    <message>
        <source>The time to send must lie between %1 and %2 seconds.</source>
        <translation>Die Sendezeit muss zwischen %1 und %2 Sekunden liegen.</translation>
    </message>
    <message>
        <source>%1 baud, bias %2 %, end %3 %, scatter %4 %, speed error %5 %, as an interrupted tone</source>
        <translation>%1 Baud, einseitige Verzerrung %2 %, Endverzerrung %3 %, Streuung %4 %, Geschwindigkeitsfehler %5 %, als unterbrochener Ton</translation>
    </message>
    <message>
        <source>%1 baud, bias %2 %, end %3 %, scatter %4 %, speed error %5 %, as it is keyed</source>
        <translation>%1 Baud, einseitige Verzerrung %2 %, Endverzerrung %3 %, Streuung %4 %, Geschwindigkeitsfehler %5 %, wie getastet</translation>
    </message>
    <message>
        <source>This is no frame that Trueunit has written, or only a part of one.</source>
        <translation>Das ist kein Bild, das Trueunit geschrieben hat, oder nur ein Teil davon.</translation>
    </message>
    <message>
        <source>The frame is incomplete: its picture is missing.</source>
        <translation>Das Bild ist unvollständig: Seine Zeichnung fehlt.</translation>
    </message>
    <message>
        <source>A set of limits wants &quot;%1&quot; with some words.</source>
        <translation>Ein Satz von Grenzen braucht „%1“ mit einigen Worten.</translation>
    </message>
    <message>
        <source>The origin of a set of limits is published, practice or own, not &quot;%1&quot;.</source>
        <translation>Die Herkunft („origin“) eines Satzes von Grenzen ist published, practice oder own, nicht „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; of a set of limits is no number.</source>
        <translation>„%1“ eines Satzes von Grenzen ist keine Zahl.</translation>
    </message>
    <message>
        <source>The name of a set of limits is up to 40 small letters, digits and hyphens.</source>
        <translation>Der Name eines Satzes von Grenzen besteht aus bis zu 40 Kleinbuchstaben, Ziffern und Bindestrichen.</translation>
    </message>
    <message>
        <source>A limit must lie between %1 and %2 %.</source>
        <translation>Eine Grenze muss zwischen %1 und %2 % liegen.</translation>
    </message>
    <message>
        <source>This is no set of limits: not a JSON object.</source>
        <translation>Das ist kein Satz von Grenzen: kein JSON-Objekt.</translation>
    </message>
    <message>
        <source>A machine card wants &quot;%1&quot; with some words.</source>
        <translation>Eine Maschinenkarte braucht „%1“ mit einigen Worten.</translation>
    </message>
    <message>
        <source>A machine card wants &quot;%1&quot; with a number.</source>
        <translation>Eine Maschinenkarte braucht „%1“ mit einer Zahl.</translation>
    </message>
    <message>
        <source>A machine card wants &quot;%1&quot; with a whole number.</source>
        <translation>Eine Maschinenkarte braucht „%1“ mit einer ganzen Zahl.</translation>
    </message>
    <message>
        <source>A machine card wants &quot;%1&quot; with its values.</source>
        <translation>Eine Maschinenkarte braucht „%1“ mit den zugehörigen Werten.</translation>
    </message>
    <message>
        <source>The name of a machine card is up to 40 small letters, digits and hyphens.</source>
        <translation>Der Name einer Maschinenkarte besteht aus bis zu 40 Kleinbuchstaben, Ziffern und Bindestrichen.</translation>
    </message>
    <message>
        <source>The code of a machine card must be one of %1.</source>
        <translation>Der Code einer Maschinenkarte muss einer von diesen sein: %1.</translation>
    </message>
    <message>
        <source>The speed of a machine card lies between %1 and %2 baud.</source>
        <translation>Die Schrittgeschwindigkeit einer Maschinenkarte liegt zwischen %1 und %2 Baud.</translation>
    </message>
    <message>
        <source>The stop of a machine card lies between %1 and %2 units.</source>
        <translation>Der Sperrschritt einer Maschinenkarte liegt zwischen %1 und %2 Schrittlängen.</translation>
    </message>
    <message>
        <source>The mains of a machine card lies between %1 and %2 Hz.</source>
        <translation>Das Netz einer Maschinenkarte liegt zwischen %1 und %2 Hz.</translation>
    </message>
    <message>
        <source>The motor of a machine card makes between %1 and %2 turns a minute.</source>
        <translation>Der Motor einer Maschinenkarte macht zwischen %1 und %2 Umdrehungen je Minute.</translation>
    </message>
    <message>
        <source>The gears of a machine card have between %1 and %2 teeth.</source>
        <translation>Die Zahnräder einer Maschinenkarte haben zwischen %1 und %2 Zähne.</translation>
    </message>
    <message>
        <source>The transmitting shaft of a machine card turns between %1 and %2 times in each character.</source>
        <translation>Die Sendewelle einer Maschinenkarte dreht sich zwischen %1 und %2 Mal in jedem Zeichen.</translation>
    </message>
    <message>
        <source>This is no machine card: not a JSON object.</source>
        <translation>Das ist keine Maschinenkarte: kein JSON-Objekt.</translation>
    </message>
    <message>
        <source>The motor of a machine card is synchronous or governed, not &quot;%1&quot;.</source>
        <translation>Der Motor einer Maschinenkarte ist synchronous oder governed, nicht „%1“.</translation>
    </message>
    <message>
        <source>&quot;machine.code&quot; must be one of %1.</source>
        <translation>„machine.code“ muss eines von diesen sein: %1.</translation>
    </message>
    <message>
        <source>&quot;text.send&quot; holds nothing that the code %1 can send.</source>
        <translation>„text.send“ enthält nichts, was der Code %1 senden kann.</translation>
    </message>
    <message>
        <source>&quot;faults.instants&quot; names k = %1; this code ends at %2.</source>
        <translation>„faults.instants“ nennt k = %1; dieser Code endet bei %2.</translation>
    </message>
    <message>
        <source>&quot;faults&quot; names level %1; this code has %2.</source>
        <translation>„faults“ nennt Schritt %1; dieser Code hat %2.</translation>
    </message>
    <message>
        <source>&quot;faults.bounce.ms&quot; must be at most half a unit.</source>
        <translation>„faults.bounce.ms“ darf höchstens eine halbe Schrittlänge sein.</translation>
    </message>
    <message>
        <source>The scenario holds a number that is too large.</source>
        <translation>Das Szenario enthält eine zu große Zahl.</translation>
    </message>
    <message>
        <source>The scenario must be an object in braces.</source>
        <translation>Das Szenario muss ein Objekt in geschweiften Klammern sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be an object in braces.</source>
        <translation>„%1“ muss ein Objekt in geschweiften Klammern sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be an object of at most %2 keys.</source>
        <translation>„%1“ muss ein Objekt mit höchstens %2 Schlüsseln sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a list of at most %2 entries.</source>
        <translation>„%1“ muss eine Liste mit höchstens %2 Einträgen sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a list of texts in quotes.</source>
        <translation>„%1“ muss eine Liste von Texten in Anführungszeichen sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number.</source>
        <translation>„%1“ muss eine Zahl sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a whole number, not %2.</source>
        <translation>„%1“ muss eine ganze Zahl sein, nicht %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must lie between %2 and %3, not at %4.</source>
        <translation>„%1“ muss zwischen %2 und %3 liegen, nicht bei %4.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a text in quotes.</source>
        <translation>„%1“ muss ein Text in Anführungszeichen sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a text of at most %2 bytes.</source>
        <translation>„%1“ muss ein Text von höchstens %2 Bytes sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be true or false.</source>
        <translation>„%1“ muss true oder false sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be one of %2.</source>
        <translation>„%1“ muss eines von diesen sein: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing.</source>
        <translation>„%1“ fehlt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a known key here.</source>
        <translation>„%1“ ist hier kein bekannter Schlüssel.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; or &quot;turns_per_character&quot; must be given, one of the two.</source>
        <translation>„%1“ oder „turns_per_character“ muss angegeben sein, eines von beiden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; or &quot;every_characters&quot; must be given, one of the two.</source>
        <translation>„%1“ oder „every_characters“ muss angegeben sein, eines von beiden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; or &quot;text.random&quot; must be given, one of the two.</source>
        <translation>„%1“ oder „text.random“ muss angegeben sein, eines von beiden.</translation>
    </message>
    <message>
        <source>The check has not been made.</source>
        <translation>Die Prüfung ist nicht gemacht worden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be later than that of the gap before.</source>
        <translation>„%1“ muss später liegen als das der Lücke davor.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must not be earlier than that of the move before.</source>
        <translation>„%1“ darf nicht früher liegen als das der Bewegung davor.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names &quot;%2&quot;, which is no finding.</source>
        <translation>„%1“ nennt „%2“, was kein Befund ist.</translation>
    </message>
    <message>
        <source>The built-in demonstration is missing from this build.</source>
        <translation>Die eingebaute Vorführung fehlt in diesem Programm.</translation>
    </message>
    <message>
        <source>%1; what was heard is still at hand, choose another place or free some space.</source>
        <translation>%1; das Gehörte ist noch da, einen anderen Ort wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could not be written in full</source>
        <translation>„%1“ ließ sich nicht ganz schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could not be written: %2</source>
        <translation>„%1“ ließ sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could not be written</source>
        <translation>„%1“ ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>There is nothing to keep yet; choose an input first.</source>
        <translation>Es gibt noch nichts zu behalten; zuerst einen Eingang wählen.</translation>
    </message>
    <message>
        <source>There are no limits named &quot;%1&quot;; there are %2.</source>
        <translation>Es gibt keine Grenzen namens „%1“; es gibt %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is built in; give your own limits another name.</source>
        <translation>„%1“ ist eingebaut; den eigenen Grenzen einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The limits &quot;%1&quot; could not be removed from the folder of your own.</source>
        <translation>Die Grenzen „%1“ ließen sich nicht aus dem eigenen Ordner entfernen.</translation>
    </message>
    <message>
        <source>The frozen frame cannot be saved against a crash (%1); keep it soon.</source>
        <translation>Das festgehaltene Bild lässt sich nicht gegen einen Absturz sichern (%1); bald behalten.</translation>
    </message>
    <message>
        <source>The sound of the frame cannot be packed: the folder for temporary files is full or missing.</source>
        <translation>Der Ton des Bildes lässt sich nicht packen: Der Ordner für vorläufige Dateien ist voll oder fehlt.</translation>
    </message>
    <message>
        <source>No sound was kept with this frame, so it cannot be measured again.</source>
        <translation>Zu diesem Bild wurde kein Ton behalten, es lässt sich daher nicht neu messen.</translation>
    </message>
    <message>
        <source>The sound kept with this frame cannot be read; its readings stand as they were.</source>
        <translation>Der Ton zu diesem Bild lässt sich nicht lesen; seine Messwerte stehen, wie sie waren.</translation>
    </message>
    <message>
        <source>There is no frame %1 in the logbook.</source>
        <translation>Im Logbuch gibt es kein Bild %1.</translation>
    </message>
    <message>
        <source>There is no visit %1 in the logbook.</source>
        <translation>Im Logbuch gibt es keinen Besuch %1.</translation>
    </message>
    <message>
        <source>The frame is no longer in the logbook.</source>
        <translation>Das Bild ist nicht mehr im Logbuch.</translation>
    </message>
    <message>
        <source>The damaged logbook &quot;%1&quot; could not be set aside; get leave to write to its folder.</source>
        <translation>Das beschädigte Logbuch „%1“ ließ sich nicht beiseitelegen; Schreibrecht für seinen Ordner besorgen.</translation>
    </message>
    <message>
        <source>The logbook was damaged: it was set aside as &quot;%1&quot;, and %2 machines, %3 visits and %4 frames of it were saved into a new one; %5 frames could not be read.</source>
        <translation>Das Logbuch war beschädigt: Es liegt als „%1“ beiseite, und %2 Maschinen, %3 Besuche und %4 Bilder daraus sind in ein neues gerettet; %5 Bilder ließen sich nicht lesen.</translation>
    </message>
    <message>
        <source>The logbook was damaged: it was set aside as &quot;%1&quot;, and %2 machines, %3 visits and %4 frames of it were saved into a new one.</source>
        <translation>Das Logbuch war beschädigt: Es liegt als „%1“ beiseite, und %2 Maschinen, %3 Besuche und %4 Bilder daraus sind in ein neues gerettet.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; is in order; there is nothing to mend.</source>
        <translation>Das Logbuch „%1“ ist in Ordnung; es gibt nichts zu richten.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; is being written by another program; try again in a moment.</source>
        <translation>Das Logbuch „%1“ wird gerade von einem anderen Programm geschrieben; gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The disk of the logbook &quot;%1&quot; is full and nothing was changed; free some space and try again.</source>
        <translation>Der Datenträger des Logbuchs „%1“ ist voll, nichts wurde geändert; Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; may only be read here; choose another file or get leave to write to its folder.</source>
        <translation>Das Logbuch „%1“ darf hier nur gelesen werden; eine andere Datei wählen oder Schreibrecht für seinen Ordner besorgen.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; is damaged; &quot;trueunit log mend&quot; sets it aside and saves what can be read.</source>
        <translation>Das Logbuch „%1“ ist beschädigt; „trueunit log mend“ legt es beiseite und rettet, was sich lesen lässt.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; was written by a later version of Trueunit; use that one, or another file.</source>
        <translation>Das Logbuch „%1“ hat eine spätere Version von Trueunit geschrieben; diese benutzen, oder eine andere Datei.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no logbook of Trueunit; choose another file.</source>
        <translation>„%1“ ist kein Logbuch von Trueunit; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; cannot be opened or made; choose another file or look at its folder.</source>
        <translation>Das Logbuch „%1“ lässt sich weder öffnen noch anlegen; eine andere Datei wählen oder nach seinem Ordner sehen.</translation>
    </message>
    <message>
        <source>The logbook &quot;%1&quot; failed (%2); nothing was changed, look at its disk and try again.</source>
        <translation>Das Logbuch „%1“ versagt (%2); nichts wurde geändert, nach seinem Datenträger sehen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The archive was written by a later version of Trueunit; import it with that one.</source>
        <translation>Das Archiv hat eine spätere Version von Trueunit geschrieben; mit dieser einlesen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole archive of a visit; nothing was taken from it.</source>
        <translation>„%1“ ist kein vollständiges Archiv eines Besuchs; nichts wurde daraus übernommen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no archive of a visit, or it is damaged; nothing was taken from it.</source>
        <translation>„%1“ ist kein Archiv eines Besuchs oder beschädigt; nichts wurde daraus übernommen.</translation>
    </message>
    <message>
        <source>The archive is incomplete: it does not say which machine it is about.</source>
        <translation>Das Archiv ist unvollständig: Es sagt nicht, um welche Maschine es geht.</translation>
    </message>
    <message>
        <source>The archive is incomplete: it does not say which visit it is about.</source>
        <translation>Das Archiv ist unvollständig: Es sagt nicht, um welchen Besuch es geht.</translation>
    </message>
    <message>
        <source>There is no file &quot;%1&quot;.</source>
        <translation>Es gibt keine Datei „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could not be written (%2); choose another folder or free some space.</source>
        <translation>„%1“ ließ sich nicht schreiben (%2); einen anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>The reference tone did not end, so that nothing could be sent: take it off the input.</source>
        <translation>Der Bezugston hörte nicht auf, sodass nichts gesendet werden konnte: ihn vom Eingang nehmen.</translation>
    </message>
    <message>
        <source>Nothing comes back from the output: is the cable in, and are both levels up?</source>
        <translation>Vom Ausgang kommt nichts zurück: Steckt das Kabel, und sind beide Pegel aufgedreht?</translation>
    </message>
    <message>
        <source>What comes back could not be read: check the cable, the levels and the devices chosen.</source>
        <translation>Was zurückkommt, ließ sich nicht lesen: Kabel, Pegel und gewählte Geräte prüfen.</translation>
    </message>
    <message>
        <source>The sound input has stopped sending.</source>
        <translation>Der Toneingang sendet nicht mehr.</translation>
    </message>
    <message>
        <source>The sound output has stopped taking the signal.</source>
        <translation>Der Tonausgang nimmt das Signal nicht mehr an.</translation>
    </message>
    <message>
        <source>cannot be opened.</source>
        <translation>lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>is too large for a machine card.</source>
        <translation>ist zu groß für eine Maschinenkarte.</translation>
    </message>
    <message>
        <source>There is no machine card named &quot;%1&quot;; there are %2.</source>
        <translation>Es gibt keine Maschinenkarte namens „%1“; es gibt %2.</translation>
    </message>
    <message>
        <source>The sound system does not answer; restart the program to try again.</source>
        <translation>Das Tonsystem antwortet nicht; das Programm neu starten, um es wieder zu versuchen.</translation>
    </message>
    <message>
        <source>The sound system does not answer.</source>
        <translation>Das Tonsystem antwortet nicht.</translation>
    </message>
    <message>
        <source>The sound system cannot be used: %1.</source>
        <translation>Das Tonsystem lässt sich nicht benutzen: %1.</translation>
    </message>
    <message>
        <source>The inputs cannot be listed afresh while one of them is in use.</source>
        <translation>Die Eingänge lassen sich nicht neu auflisten, solange einer von ihnen in Gebrauch ist.</translation>
    </message>
    <message>
        <source>The sound input &quot;%1&quot; is not there any more.</source>
        <translation>Der Toneingang „%1“ ist nicht mehr da.</translation>
    </message>
    <message>
        <source>The sound output &quot;%1&quot; is not there any more.</source>
        <translation>Der Tonausgang „%1“ ist nicht mehr da.</translation>
    </message>
    <message>
        <source>There is no sound output &quot;%1&quot;; trueunit inputs lists them.</source>
        <translation>Es gibt keinen Tonausgang „%1“; trueunit inputs listet sie auf.</translation>
    </message>
    <message>
        <source>There is no sound output.</source>
        <translation>Es gibt keinen Tonausgang.</translation>
    </message>
    <message>
        <source>The sound input &quot;%1&quot; does not answer.</source>
        <translation>Der Toneingang „%1“ antwortet nicht.</translation>
    </message>
    <message>
        <source>The sound output &quot;%1&quot; does not answer.</source>
        <translation>Der Tonausgang „%1“ antwortet nicht.</translation>
    </message>
    <message>
        <source>The sound input &quot;%1&quot; cannot be opened: %2.</source>
        <translation>Der Toneingang „%1“ lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>The sound output &quot;%1&quot; cannot be opened: %2.</source>
        <translation>Der Tonausgang „%1“ lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>There is no sound output to play the tone on.</source>
        <translation>Es gibt keinen Tonausgang, auf dem der Ton zu spielen wäre.</translation>
    </message>
    <message>
        <source>%1 of %2 spaces of level %3 filled</source>
        <translation>%1 von %2 Trennschritten des Schritts %3 gefüllt</translation>
    </message>
    <message>
        <source>%1 character is wrong</source>
        <translation>%1 Zeichen ist falsch</translation>
    </message>
    <message>
        <source>%1 characters are wrong</source>
        <translation>%1 Zeichen sind falsch</translation>
    </message>
    <message>
        <source>%1 slip of the feed</source>
        <translation>%1 Schlupf des Vorschubs</translation>
    </message>
    <message>
        <source>%1 slips of the feed</source>
        <translation>%1 Mal Schlupf des Vorschubs</translation>
    </message>
    <message>
        <source>%1 character without its stop</source>
        <translation>%1 Zeichen ohne seinen Sperrschritt</translation>
    </message>
    <message>
        <source>%1 characters without their stop</source>
        <translation>%1 Zeichen ohne ihren Sperrschritt</translation>
    </message>
    <message>
        <source>ITA2, international figures</source>
        <translation>ITA2, internationale Ziffernreihe</translation>
    </message>
    <message>
        <source>ITA2, US figures</source>
        <translation>ITA2, US-Ziffernreihe</translation>
    </message>
    <message>
        <source>ITA2, international, unshift on space</source>
        <translation>ITA2, international, Zwischenraum schaltet auf Buchstaben</translation>
    </message>
    <message>
        <source>ITA2, US figures, unshift on space</source>
        <translation>ITA2, US-Ziffernreihe, Zwischenraum schaltet auf Buchstaben</translation>
    </message>
    <message>
        <source>eight levels, IA5 with even parity</source>
        <translation>acht Schritte, IA5 mit gerader Parität</translation>
    </message>
    <message>
        <source>%1, in memory %2, through %3 residual bias %4, clock %5 parts in a million</source>
        <translation>%1, im Speicher %2, über %3 restliche einseitige Verzerrung %4, Takt %5 Millionstel</translation>
    </message>
    <message>
        <source>%1, in memory %2, through %3 residual bias %4</source>
        <translation>%1, im Speicher %2, über %3 restliche einseitige Verzerrung %4</translation>
    </message>
    <message>
        <source>%1, in memory %2</source>
        <translation>%1, im Speicher %2</translation>
    </message>
    <message>
        <source>%1, through %2 residual bias %3, clock %4 parts in a million</source>
        <translation>%1, über %2 restliche einseitige Verzerrung %3, Takt %4 Millionstel</translation>
    </message>
    <message>
        <source>%1, through %2 residual bias %3</source>
        <translation>%1, über %2 restliche einseitige Verzerrung %3</translation>
    </message>
    <message>
        <source>residual bias %1 ± %2 %, passed</source>
        <translation>restliche einseitige Verzerrung %1 ± %2 %, bestanden</translation>
    </message>
    <message>
        <source>residual bias %1 ± %2 %, NOT PASSED</source>
        <translation>restliche einseitige Verzerrung %1 ± %2 %, NICHT BESTANDEN</translation>
    </message>
    <message>
        <source>%1 ± %2 %, passed</source>
        <translation>%1 ± %2 %, bestanden</translation>
    </message>
    <message>
        <source>%1 ± %2 %, NOT PASSED</source>
        <translation>%1 ± %2 %, NICHT BESTANDEN</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation>„%1“: %2</translation>
    </message>
    <message>
        <source>%1, simulated (%2 kHz)</source>
        <translation>%1, simuliert (%2 kHz)</translation>
    </message>
    <message>
        <source>%1, left (%2 kHz)</source>
        <translation>%1, links (%2 kHz)</translation>
    </message>
    <message>
        <source>%1, right (%2 kHz)</source>
        <translation>%1, rechts (%2 kHz)</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, links</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, rechts</translation>
    </message>
    <message>
        <source>%1, channel %2</source>
        <translation>%1, Kanal %2</translation>
    </message>
    <message>
        <source>The text of the tape is not known and does not repeat three times: lost marks and filled spaces cannot be counted.</source>
        <translation>Der Text des Streifens ist unbekannt und wiederholt sich nicht dreimal: Verlorene Zeichenschritte und gefüllte Trennschritte sind nicht zu zählen.</translation>
    </message>
    <message>
        <source>The text was learned from the rounds of the tape themselves: what goes wrong in most of them may not be counted.</source>
        <translation>Der Text wurde aus den Runden des Streifens selbst gelernt: Was in den meisten von ihnen falsch ist, wird womöglich nicht gezählt.</translation>
    </message>
    <message>
        <source>A single mark is lost</source>
        <translation>Ein einziger Zeichenschritt ist verloren</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the marks are lost; that may be chance.</source>
        <translation>Gegen %1 gehalten sind %2 der Zeichenschritte verloren; das kann Zufall sein.</translation>
    </message>
    <message>
        <source>Marks are lost on several levels: %1 of %2</source>
        <translation>Zeichenschritte in mehreren Schritten verloren: %1 von %2</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the marks are lost; level %3 most of all, but not beyond what chance makes.</source>
        <translation>Gegen %1 gehalten sind %2 der Zeichenschritte verloren; Schritt %3 am meisten, aber nicht mehr als durch Zufall.</translation>
    </message>
    <message>
        <source>Marks of level %1 are lost: %2 of %3</source>
        <translation>Zeichenschritte von Schritt %1 verloren: %2 von %3</translation>
    </message>
    <message>
        <source>%1 of %2 marks of level %3 lost</source>
        <translation>%1 von %2 Zeichenschritten des Schritts %3 verloren</translation>
    </message>
    <message>
        <source>reserved %1</source>
        <translation>reserviert %1</translation>
    </message>
    <message>
        <source>null</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>control %1</source>
        <translation>Steuerzeichen %1</translation>
    </message>
    <message>
        <source>Against the start of their character the early instants swing as far as the late ones: that is not the speed of the drive.</source>
        <translation>Gegen den Beginn ihres Zeichens schwingen die frühen Übergänge so weit wie die späten: Das ist nicht die Geschwindigkeit des Antriebs.</translation>
    </message>
    <message>
        <source>once in %1 characters: a shaft or wheel that turns once in so many turns of the main shaft</source>
        <translation>einmal in %1 Zeichen: eine Welle oder ein Rad, das sich in so vielen Umdrehungen der Hauptwelle einmal dreht</translation>
    </message>
    <message>
        <source>The gear or shaft that turns at %1 turns a minute, above all where it can shift contacts and cams against each other: a bent shaft, a bearing with play, an eccentric or bent gear, a damaged tooth.</source>
        <translation>Zahnrad oder Welle mit %1 Umdrehungen in der Minute, vor allem wo sie Kontakte und Nocken gegeneinander verschieben kann: eine verbogene Welle, ein Lager mit Spiel, ein unrundes oder verbogenes Zahnrad, ein beschädigter Zahn.</translation>
    </message>
    <message>
        <source>Count teeth from the main shaft on to find which turns so. With the power off turn the machine by hand through one revolution of it and feel for a stiff place or play.</source>
        <translation>Von der Hauptwelle an Zähne zählen, um zu finden, was sich so dreht. Bei ausgeschaltetem Strom die Maschine von Hand durch eine Umdrehung davon drehen und nach einer schweren Stelle oder Spiel fühlen.</translation>
    </message>
    <message>
        <source>More characters make this surer: what is rare shows only then.</source>
        <translation>Mehr Zeichen machen dies sicherer: Was selten ist, zeigt sich erst dann.</translation>
    </message>
    <message>
        <source>What lets the contact open after a level but not at the start: trailing flanks of the level cams, transfer levers or their bail that fall back slowly (gum, friction, a weak spring), a contact lever that sticks where the start has a contact of its own.</source>
        <translation>Was den Kontakt nach einem Schritt öffnen lässt, doch nicht am Anlauf: ablaufende Flanken der Schrittnocken, Übertragungshebel oder ihre Schiene, die träge zurückfallen (Harz, Reibung, schwache Feder), ein Kontakthebel, der klebt, wo der Anlauf einen eigenen Kontakt hat.</translation>
    </message>
    <message>
        <source>What lets the contact open after a level but not at the start: worn trailing flanks of the level cams, worn transfer levers or bail, too stiff a contact spring where the start has a contact of its own.</source>
        <translation>Was den Kontakt nach einem Schritt öffnen lässt, doch nicht am Anlauf: abgenutzte ablaufende Flanken der Schrittnocken, abgenutzte Übertragungshebel oder Schiene, eine zu steife Kontaktfeder, wo der Anlauf einen eigenen Kontakt hat.</translation>
    </message>
    <message>
        <source>Or the start instant, from which all others are counted: start cam, clutch.</source>
        <translation>Oder der Anlauf selbst, von dem aus alle anderen gezählt werden: Anlaufnocken, Kupplung.</translation>
    </message>
    <message>
        <source>One contact for both would be off at the start as well, which shows as bias.</source>
        <translation>Ein Kontakt für beides wäre auch am Anlauf verschoben, was sich als einseitige Verzerrung zeigt.</translation>
    </message>
    <message>
        <source>With an ohmmeter across the contact turn the machine by hand and see where on the cams it opens, at the start and after each level.</source>
        <translation>Mit einem Ohmmeter über dem Kontakt die Maschine von Hand drehen und sehen, wo auf den Nocken er öffnet, am Anlauf und nach jedem Schritt.</translation>
    </message>
    <message>
        <source>In its place everywhere, it is off at speed alone: clean the pivots and look at the springs.</source>
        <translation>Überall an seiner Stelle, weicht er nur im Lauf ab: die Lager reinigen und nach den Federn sehen.</translation>
    </message>
    <message>
        <source>Leads exchanged between coupler and sound card, or a sound card that inverts.</source>
        <translation>Leitungen zwischen Koppler und Soundkarte vertauscht, oder eine Soundkarte, die umkehrt.</translation>
    </message>
    <message>
        <source>Nothing needs doing: the readings are the same either way.</source>
        <translation>Es ist nichts zu tun: Die Messwerte sind so oder so dieselben.</translation>
    </message>
    <message>
        <source>What short elements do is left out of this figure.</source>
        <translation>Was kurze Schritte bewirken, ist in dieser Zahl nicht enthalten.</translation>
    </message>
    <message>
        <source>What short elements do pulls the speed as read to %1 %; here it is set aside.</source>
        <translation>Was kurze Schritte bewirken, zieht die gelesene Geschwindigkeit auf %1 %; hier ist es abgezogen.</translation>
    </message>
    <message>
        <source>Instants that end a single unit come %1 %2 against the others, to mark and to space alike; that pulls at bias, end distortion and speed as they are read.</source>
        <translation>Übergänge, die einen einzelnen Schritt beenden, kommen gegen die anderen um %1 %2, zum Zeichen- wie zum Trennstrom; das zieht an einseitiger Verzerrung, Endverzerrung und Geschwindigkeit, wie sie gelesen werden.</translation>
    </message>
    <message>
        <source>Set aside, bias is %1 % and end distortion %2 %.</source>
        <translation>Ohne dies ist die einseitige Verzerrung %1 % und die Endverzerrung %2 %.</translation>
    </message>
    <message>
        <source>in limits, %1 from zero; go on, or tighten the screws</source>
        <translation>in den Grenzen, %1 neben null; weiter, oder festziehen</translation>
    </message>
    <message>
        <source>in limits, %1 past zero; go back, or tighten the screws</source>
        <translation>in den Grenzen, %1 über null hinaus; zurück, oder festziehen</translation>
    </message>
    <message>
        <source>Measure with a resistor in place of the magnets, at the same current, or the contacts alone on a battery: if the dependence goes, it is the loop&apos;s; if it stays, the contact lever&apos;s.</source>
        <translation>Mit einem Widerstand statt der Magnete bei gleichem Strom messen, oder die Kontakte allein an einer Batterie: Vergeht die Abhängigkeit, liegt es an der Linie; bleibt sie, am Kontakthebel.</translation>
    </message>
    <message>
        <source>Off its place after all levels alike, look first at what they share, the bail and the contact lever, then at cams and levers.</source>
        <translation>Nach allen Schritten gleich verschoben, erst nach dem sehen, was sie gemeinsam haben, Schiene und Kontakthebel, dann nach Nocken und Hebeln.</translation>
    </message>
    <message>
        <source>What has not come to rest after one unit.</source>
        <translation>Was nach einem Schritt noch nicht zur Ruhe gekommen ist.</translation>
    </message>
    <message>
        <source>Edges so steep speak for a contact lever (spring, pivot, stop) or a relay in the loop rather than for magnets or a capacitor.</source>
        <translation>So steile Flanken sprechen eher für einen Kontakthebel (Feder, Lager, Anschlag) oder ein Relais in der Linie als für Magnete oder einen Kondensator.</translation>
    </message>
    <message>
        <source>Which of them, a recording alone cannot tell.</source>
        <translation>Welches von ihnen, ist einer Aufnahme allein nicht zu entnehmen.</translation>
    </message>
    <message>
        <source>Set aside, bias is %1 %, end distortion %2 % and the speed error %3 %.</source>
        <translation>Ohne dies ist die einseitige Verzerrung %1 %, die Endverzerrung %2 % und der Geschwindigkeitsfehler %3 %.</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the marks are lost; one on each of %3 levels.</source>
        <translation>Gegen %1 gehalten sind %2 der Zeichenschritte verloren; je einer auf %3 Schritten.</translation>
    </message>
    <message>
        <source>Held against %1, %2 of the spaces are filled; one on each of %3 levels.</source>
        <translation>Gegen %1 gehalten sind %2 der Trennschritte gefüllt; je einer auf %3 Schritten.</translation>
    </message>
    <message>
        <source>They come anywhere on the tape.</source>
        <translation>Sie kommen überall auf dem Streifen vor.</translation>
    </message>
    <message>
        <source>%1 of them come at one place of the tape, behind “%2”.</source>
        <translation>%1 davon kommen an einer Stelle des Streifens, hinter „%2“.</translation>
    </message>
    <message>
        <source>The tape at that place: a torn or blocked feed hole, a splice, a crease.</source>
        <translation>Der Streifen an dieser Stelle: ein ausgerissenes oder verstopftes Vorschubloch, eine Klebestelle, ein Knick.</translation>
    </message>
    <message>
        <source>Then feed wheel and its pins, feed pawl and detent.</source>
        <translation>Dann Vorschubrad und seine Stifte, Vorschubklinke und Raste.</translation>
    </message>
    <message>
        <source>What moves the tape: feed pawl and its spring, feed wheel and its pins; what holds it back: lid, guide, reel; then the feed holes of the tape.</source>
        <translation>Was den Streifen bewegt: Vorschubklinke und ihre Feder, Vorschubrad und seine Stifte; was ihn bremst: Deckel, Führung, Rolle; dann die Vorschublöcher des Streifens.</translation>
    </message>
    <message>
        <source>What holds the tape where it is: detent of the feed wheel and its spring, a feed pawl that goes too far; then a tape that is pulled.</source>
        <translation>Was den Streifen an seiner Stelle hält: Raste des Vorschubrads und ihre Feder, eine Vorschubklinke, die zu weit geht; dann ein Streifen, an dem etwas zieht.</translation>
    </message>
    <message>
        <source>Whether %1 is in limits cannot be told before the fault that pulls at it is mended.</source>
        <translation>Ob %1 in den Grenzen liegt, ist nicht zu sagen, bevor der Fehler behoben ist, der daran zieht.</translation>
    </message>
    <message>
        <source>cannot tell: a fault pulls at it, see findings</source>
        <translation>nicht zu sagen: ein Fehler zieht daran, siehe Befunde</translation>
    </message>
    <message>
        <source>Mend the lever first, then turn the eccentric.</source>
        <translation>Erst den Hebel richten, dann am Exzenter drehen.</translation>
    </message>
    <message>
        <source>To mark it hides behind the bias, which moves all instants to mark by %1 %: there it stands at %2 % and looks right.</source>
        <translation>Zum Zeichenstrom verbirgt er sich hinter der einseitigen Verzerrung, die alle Übergänge zum Zeichenstrom um %1 % verschiebt: Dort steht er bei %2 % und sieht richtig aus.</translation>
    </message>
    <message>
        <source>Compare the points of %1 with its neighbours in the displacement plot; move that lever by hand with the power off and feel its way: drag speaks for gum or a weak spring, play for wear, neither for the cam or the contact gap.</source>
        <translation>Die Punkte von „%1“ mit den Nachbarn in der Abweichungsdarstellung vergleichen; diesen Hebel bei gezogenem Netzstecker von Hand bewegen und seinen Gang fühlen: Schwergang spricht für Harz oder eine schwache Feder, Spiel für Verschleiß, keines von beiden für Nocken oder Kontaktabstand.</translation>
    </message>
    <message>
        <source>The speed wanders by about %1 either way</source>
        <translation>Die Geschwindigkeit wandert um etwa %1 nach beiden Seiten</translation>
    </message>
    <message>
        <source>A speed that was set in that time shows so too.</source>
        <translation>Auch eine Geschwindigkeit, die in dieser Zeit verstellt wurde, zeigt sich so.</translation>
    </message>
    <message>
        <source>A swing so regular speaks for a governor that hunts (contacts, weights, spring), or for a part that turns once in that time, such as the joint of a belt; then motor brushes, mains supply, dry bearings.</source>
        <translation>Ein so regelmäßiges Schwanken spricht für einen Regler, der pendelt (Kontakte, Gewichte, Feder), oder für ein Teil, das in dieser Zeit einmal umläuft, etwa den Stoß eines Riemens; dann Motorbürsten, Netz, trockene Lager.</translation>
    </message>
    <message>
        <source>The start scatters by %1 at random</source>
        <translation>Der Anlauf streut regellos um %1</translation>
    </message>
    <message>
        <source>All instants of a character share %1, %2 is each one&apos;s own: it is the start they are counted from that comes early or late.</source>
        <translation>Alle Übergänge eines Zeichens haben %1 gemeinsam, %2 hat jeder für sich: Der Anlauf, von dem sie gezählt werden, kommt früh oder spät.</translation>
    </message>
    <message>
        <source>All instants of a character share %1, %2 is each one&apos;s own: the start scatters more than the others; begin with its contact.</source>
        <translation>Alle Übergänge eines Zeichens haben %1 gemeinsam, %2 hat jeder für sich: Der Anlauf streut mehr als die anderen; mit seinem Kontakt beginnen.</translation>
    </message>
    <message>
        <source>Not the contacts of the levels, unless one contact sends them all.</source>
        <translation>Nicht die Kontakte der Schritte, es sei denn, ein Kontakt sendet sie alle.</translation>
    </message>
    <message>
        <source>Freeze some characters one after the other: within each, all flags are off by about as much.</source>
        <translation>Einige Zeichen nacheinander festhalten: In jedem liegen alle Fähnchen etwa gleich weit daneben.</translation>
    </message>
    <message>
        <source>Clean the start contact and measure again.</source>
        <translation>Anlaufkontakt reinigen und neu messen.</translation>
    </message>
    <message>
        <source>Watch the trail of the speed for some minutes with the machine warm; hold the load even (no tape) and see whether it still wanders.</source>
        <translation>Den Verlauf der Geschwindigkeit einige Minuten bei warmer Maschine beobachten; die Last gleich halten (kein Streifen) und sehen, ob sie noch wandert.</translation>
    </message>
    <message>
        <source>Measure the contacts alone on a battery: if the dependence stays, it is the contact lever&apos;s; if it goes, that of a relay or of what else lies in the loop.</source>
        <translation>Die Kontakte allein an einer Batterie messen: Bleibt die Abhängigkeit, kommt sie vom Kontakthebel; geht sie, von einem Relais oder was sonst im Linienstromkreis liegt.</translation>
    </message>
    <message>
        <source>The tape has %1 characters a round, its text %2: the difference is taken for the tape&apos;s own, such as a carriage return.</source>
        <translation>Der Streifen hat %1 Zeichen je Runde, sein Text %2: Der Unterschied gilt als dem Streifen eigen, etwa ein Wagenrücklauf.</translation>
    </message>
    <message>
        <source>Before the text of the tape begins anew come characters that it does not hold, such as a line end: they are not judged.</source>
        <translation>Bevor der Text des Streifens neu beginnt, kommen Zeichen, die er nicht enthält, etwa ein Zeilenende: Sie werden nicht beurteilt.</translation>
    </message>
    <message>
        <source>%1 re-openings or halts at %2 closures; the longest took %3 ms (%4 of a unit) from the first closure to steady.</source>
        <translation>%1 Wiederöffnungen oder Halte bei %2 Schließungen; am längsten dauerte es %3 ms (%4 der Schrittlänge) vom ersten Schließen bis zur Ruhe.</translation>
    </message>
    <message>
        <source>Look at the front of the marks on the grid: the line falls back after it has closed, or where that is too short for it halts half way up.</source>
        <translation>Auf dem Raster die Vorderkanten des Zeichenstroms ansehen: Die Linie fällt nach dem Schließen zurück, oder wo das zu kurz dafür ist, hält sie auf halber Höhe.</translation>
    </message>
    <message>
        <source>Freeze some characters one after the other, best of one that is sent over and over: flags that change one by one are the contact&apos;s, where all of a character change together it is its start.</source>
        <translation>Einige Zeichen nacheinander festhalten, am besten von einem, das immer wieder gesendet wird: Fähnchen, die sich einzeln ändern, kommen vom Kontakt, und wo sich alle eines Zeichens zusammen ändern, ist es sein Anlauf.</translation>
    </message>
    <message>
        <source>All instants of a character share %1, %2 is each one&apos;s own: it is not the start.</source>
        <translation>Alle Übergänge eines Zeichens haben %1 gemeinsam, %2 hat jeder für sich: Es ist nicht der Anlauf.</translation>
    </message>
    <message>
        <source>Whether %1 is in limits cannot be told over so few characters: take the window %2.</source>
        <translation>Ob %1 in den Grenzen liegt, ist über so wenige Zeichen nicht zu sagen: das Fenster %2 nehmen.</translation>
    </message>
    <message>
        <source>cannot tell over so few: take the window %1</source>
        <translation>über so wenige nicht zu sagen: das Fenster %1 nehmen</translation>
    </message>
    <message>
        <source>What makes the start: its contact (dirt, burnt faces, a loose screw) and its lever, cam and spring; then the start lever and its play.</source>
        <translation>Was den Anlauf macht: sein Kontakt (Schmutz, verbrannte Flächen, eine lockere Schraube) und sein Hebel, Nocken und seine Feder; dann der Anlaufhebel und sein Spiel.</translation>
    </message>
    <message>
        <source>That makes the stop before it long or short as well.</source>
        <translation>Das macht auch den Sperrschritt davor lang oder kurz.</translation>
    </message>
    <message>
        <source>The starts keep their time: so where it works the contact of the levels and not that of the start.</source>
        <translation>Die Anläufe halten ihre Zeit: also dort, wo es am Kontakt der Schritte wirkt und nicht an dem des Anlaufs.</translation>
    </message>
    <message>
        <source>Count teeth from the main shaft on to find which turns so. With the power off turn the machine by hand through one revolution of that shaft and feel for a stiff place or play.</source>
        <translation>Von der Hauptwelle an Zähne zählen, um zu finden, was sich so dreht. Bei ausgeschaltetem Strom die Maschine von Hand durch eine Umdrehung dieser Welle drehen und nach einer schweren Stelle oder Spiel fühlen.</translation>
    </message>
    <message>
        <source>Level by level they lie at %1 to %2 %.</source>
        <translation>Schritt für Schritt liegen sie bei %1 bis %2 %.</translation>
    </message>
    <message>
        <source>Its stop is %1 units instead of %2: the shaft turns as motor and gears make it, and the units are shorter or longer.</source>
        <translation>Der Sperrschritt ist %1 statt %2 Schritte lang: Die Welle dreht, wie Motor und Räder es machen, und die Schritte sind kürzer oder länger.</translation>
    </message>
    <message>
        <source>Contact, what is easiest to try first: a loose screw or bracket, burnt or dirty faces, spring tension.</source>
        <translation>Kontakt, das Einfachste zuerst: lose Schraube oder loser Halter, verbrannte oder schmutzige Flächen, Federspannung.</translation>
    </message>
    <message>
        <source>Freeze and step from character to character with the arrow keys, best through one that is sent over and over: flags that change one by one are the contact&apos;s, where all of a character change together it is its start.</source>
        <translation>Festhalten und mit den Pfeiltasten von Zeichen zu Zeichen gehen, am besten bei einem, das immer wieder gesendet wird: Fähnchen, die sich einzeln ändern, gehören zum Kontakt; wo sich alle eines Zeichens gemeinsam ändern, ist es sein Anlauf.</translation>
    </message>
    <message>
        <source>What makes the start: its own contact where it has one (dirt, burnt faces, a loose screw), then its lever, cam and spring, and their play.</source>
        <translation>Was den Anlauf macht: sein eigener Kontakt, wo er einen hat (Schmutz, verbrannte Flächen, eine lose Schraube), dann sein Hebel, sein Nocken und seine Feder und deren Spiel.</translation>
    </message>
    <message>
        <source>Not a contact that sends the levels too: that would scatter each instant by itself.</source>
        <translation>Nicht ein Kontakt, der auch die Schritte sendet: Der würde jeden Übergang für sich streuen.</translation>
    </message>
    <message>
        <source>Common practice bears %1 rms.</source>
        <translation>Die übliche Praxis lässt %1 effektiv zu.</translation>
    </message>
    <message>
        <source>Freeze and step from character to character with the arrow keys: within each, all flags are off by about as much.</source>
        <translation>Festhalten und mit den Pfeiltasten von Zeichen zu Zeichen gehen: Innerhalb eines jeden liegen alle Fähnchen etwa gleich weit daneben.</translation>
    </message>
    <message>
        <source>The start scatters by %1</source>
        <translation>Der Anlauf streut um %1</translation>
    </message>
    <message>
        <source>That is of the last %1 characters.</source>
        <translation>Das gilt für die letzten %1 Zeichen.</translation>
    </message>
    <message>
        <source>What swings past its place and has not come back after one unit.</source>
        <translation>Was über seine Stelle hinausschwingt und nach einem Schritt nicht zurück ist.</translation>
    </message>
    <message>
        <source>What has not arrived at its place after one unit.</source>
        <translation>Was nach einem Schritt nicht an seiner Stelle angekommen ist.</translation>
    </message>
    <message>
        <source>Turn the eccentric until the bias stands near zero.</source>
        <translation>Den Exzenter drehen, bis die Anzeige nahe null steht.</translation>
    </message>
    <message>
        <source>Cable, stage, gain; is the loop closed and fed, does the tape run?</source>
        <translation>Kabel, Stufe, Verstärkung; ist der Linienstromkreis geschlossen und gespeist, läuft der Streifen?</translation>
    </message>
    <message>
        <source>The starts keep their time: so it works on what makes the levels (their cams, levers, contacts) and not on what makes the start.</source>
        <translation>Die Anläufe halten ihre Zeit: Also wirkt es auf das, was die Schritte macht (ihre Nocken, Hebel, Kontakte), und nicht auf das, was den Anlauf macht.</translation>
    </message>
    <message>
        <source>Held against the start of their character the first instants swing as far as the last: that is not the speed of the drive, nor the bias, though the trails of both may wave with it.</source>
        <translation>Gegen den Beginn ihres Zeichens gehalten schwingen die ersten Übergänge so weit wie die letzten: Das ist nicht die Geschwindigkeit des Antriebs und nicht die einseitige Verzerrung, auch wenn die Verläufe beider davon wellig sein können.</translation>
    </message>
    <message>
        <source>No shaft of the machine card turns so; the card knows the motor&apos;s and the transmitting one.</source>
        <translation>Keine Welle der Maschinenkarte dreht so; die Karte kennt die des Motors und die Sendewelle.</translation>
    </message>
    <message>
        <source>once in %1 characters: a shaft or wheel that turns once in so many turns of the transmitting shaft</source>
        <translation>einmal in %1 Zeichen: eine Welle oder ein Rad, das sich in so vielen Umdrehungen der Sendewelle einmal dreht</translation>
    </message>
    <message>
        <source>%1 times in each character: a shaft before the transmitting shaft</source>
        <translation>%1-mal in jedem Zeichen: eine Welle vor der Sendewelle</translation>
    </message>
    <message>
        <source>Count teeth from the transmitting shaft on to find which turns so. With the power off turn the machine by hand through one revolution of that shaft and feel for a stiff place or play.</source>
        <translation>Von der Sendewelle an Zähne zählen, um zu finden, was sich so dreht. Bei ausgeschaltetem Strom die Maschine von Hand durch eine Umdrehung dieser Welle drehen und nach einer schweren Stelle oder Spiel fühlen.</translation>
    </message>
    <message>
        <source>Input level and gain of the sound card, the series resistor or stage at the loop, cables and their screens, microphone boost.</source>
        <translation>Eingangspegel und Verstärkung der Soundkarte, Vorwiderstand oder Stufe am Linienstromkreis, Kabel und ihre Schirme, Mikrofonverstärkung.</translation>
    </message>
    <message>
        <source>Input gain of the sound card, microphone boost, the stage or divider at the loop.</source>
        <translation>Eingangsverstärkung der Soundkarte, Mikrofonverstärkung, Stufe oder Teiler am Linienstromkreis.</translation>
    </message>
    <message>
        <source>Read one way round the line falls into characters with start and stop, the other way it does not: mark and space are exchanged on the way from the loop to the samples.</source>
        <translation>Nur in einer Richtung gelesen ergibt die Leitung Zeichen mit Anlauf und Sperrschritt: Zeichenstrom und Trennstrom sind auf dem Weg vom Linienstromkreis zu den Abtastwerten vertauscht.</translation>
    </message>
    <message>
        <source>Leads exchanged between loop, stage and sound card, or a sound card that inverts.</source>
        <translation>Leitungen zwischen Linienstromkreis, Stufe und Soundkarte vertauscht, oder eine Soundkarte, die umkehrt.</translation>
    </message>
    <message>
        <source>Held against %1, so many characters came twice: %2; so many were passed over: %3.</source>
        <translation>Gegen %1 gehalten kamen so viele Zeichen doppelt: %2; so viele wurden übergangen: %3.</translation>
    </message>
    <message>
        <source>That is %1 of the characters; the levels themselves are right there.</source>
        <translation>Das sind %1 der Zeichen; die Schritte selbst stimmen dort.</translation>
    </message>
    <message>
        <source>Too few characters for a reading: let the tape run.</source>
        <translation>Zu wenige Zeichen für eine Messung: den Streifen weiterlaufen lassen.</translation>
    </message>
    <message>
        <source>%1 of all samples are cut off at %2 dB of full scale; levels and coupling cannot be told well from flattened samples.</source>
        <translation>%1 aller Abtastwerte sind bei %2 dB der Vollaussteuerung abgeschnitten; aus abgeflachten Abtastwerten lassen sich Pegel und Kopplung nicht gut bestimmen.</translation>
    </message>
    <message>
        <source>No unit can be told: one mark and one space only repeat. Send RY, or any text.</source>
        <translation>Die Schrittlänge ist nicht zu bestimmen: Nur ein Stück Zeichenstrom und ein Stück Trennstrom wiederholen sich. RY oder irgendeinen Text senden.</translation>
    </message>
    <message>
        <source>One mark and one space only repeat: send RY, or any text.</source>
        <translation>Nur ein Stück Zeichenstrom und ein Stück Trennstrom wiederholen sich: RY oder irgendeinen Text senden.</translation>
    </message>
    <message>
        <source>One mark and one space repeat: nothing in them tells the unit</source>
        <translation>Ein Stück Zeichenstrom und ein Stück Trennstrom wiederholen sich: Nichts darin verrät die Schrittlänge</translation>
    </message>
    <message>
        <source>One character held down that has a single stretch of mark or of space (letters, blank, T, O, M, V) makes such a signal, and so does hum. Speed and bias cannot be told apart in it.</source>
        <translation>So klingt ein festgehaltenes Zeichen mit einem einzigen Stück Zeichen- oder Trennstrom (Buchstaben, Leer, T, O, M, V), und so klingt Brumm. Geschwindigkeit und einseitige Verzerrung sind darin nicht zu trennen.</translation>
    </message>
    <message>
        <source>Send RY, or any text. If a text is running: is this the right input, and the right pair of the loop?</source>
        <translation>RY oder irgendeinen Text senden. Läuft ein Text: Ist das der richtige Eingang und das richtige Aderpaar der Schleife?</translation>
    </message>
    <message>
        <source>Held against %1: sent twice %2, passed over %3.</source>
        <translation>Gegen %1 gehalten: doppelt gesendet %2, übergangen %3.</translation>
    </message>
    <message>
        <source>The feed holes of the tape; then what moves it: feed pawl and its spring, feed wheel and its pins; what holds it back: lid, guide, reel.</source>
        <translation>Die Vorschublöcher des Streifens; dann was ihn bewegt: Vorschubklinke und ihre Feder, Vorschubrad und seine Stifte; was ihn bremst: Deckel, Führung, Rolle.</translation>
    </message>
    <message>
        <source>The tape itself, its feed holes; then feed wheel and its pins, feed pawl and detent, tape guide and lid.</source>
        <translation>Der Streifen selbst, seine Vorschublöcher; dann Vorschubrad und seine Stifte, Vorschubklinke und Raste, Streifenführung und Deckel.</translation>
    </message>
    <message>
        <source>The stop is %1 units, shorter than the %2 set: another machine, or another cam than it should have.</source>
        <translation>Der Sperrschritt ist %1 Schritte lang, kürzer als die eingestellten %2: eine andere Maschine oder ein anderer Nocken, als sie haben sollte.</translation>
    </message>
    <message>
        <source>The stop is %1 units, nominal %2, and steady.</source>
        <translation>Der Sperrschritt ist %1 Schritte lang, Soll %2, und gleichmäßig.</translation>
    </message>
    <message>
        <source>Places where every round of the tape has another character than its text: %1.</source>
        <translation>Stellen, an denen jeder Umlauf des Streifens ein anderes Zeichen hat als sein Text: %1.</translation>
    </message>
    <message>
        <source>They are taken for the tape&apos;s own; look at both.</source>
        <translation>Sie gelten als die des Streifens; beide ansehen.</translation>
    </message>
    <message>
        <source>The level of the signal fell suddenly, so often: %1.</source>
        <translation>Der Pegel des Signals fiel plötzlich, so oft: %1.</translation>
    </message>
    <message>
        <source>Samples are missing in the midst, so often: %1.</source>
        <translation>Mittendrin fehlen Abtastwerte, so oft: %1.</translation>
    </message>
    <message>
        <source>The characters about such a place are not read.</source>
        <translation>Die Zeichen um eine solche Stelle werden nicht gelesen.</translation>
    </message>
    <message>
        <source>The characters just after are missing; look at plugs, gain and the stage.</source>
        <translation>Die Zeichen gleich danach fehlen; nach Steckern, Verstärkung und Trennstufe sehen.</translation>
    </message>
    <message>
        <source>The bias changed within these characters, from about %1 to %2 %, the last time %3 characters before their end: a window no longer than that reads what is now.</source>
        <translation>Die einseitige Verzerrung änderte sich innerhalb dieser Zeichen, von etwa %1 auf %2 %, zuletzt %3 Zeichen vor ihrem Ende: Ein Fenster, das nicht länger ist, misst, was jetzt ist.</translation>
    </message>
    <message>
        <source>Cam sleeve and cams; or several levels out of place at once, which together pass for a speed.</source>
        <translation>Nockenhülse und Nocken; oder mehrere Schritte zugleich am falschen Ort, die zusammen wie eine Geschwindigkeit aussehen.</translation>
    </message>
    <message>
        <source>The page could not be written to &quot;%1&quot; (%2); choose another folder or free some space.</source>
        <translation>Die Seite konnte nicht nach „%1“ geschrieben werden (%2); anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>%1 of %2 closures bounced, with %3 re-openings or halts in all; the longest took %4 ms (%5 of a unit) from the first closure to steady.</source>
        <translation>%1 von %2 Schließungen prellten, mit insgesamt %3 Wiederöffnungen oder Halten; das längste Prellen dauerte %4 ms (%5 eines Schritts) vom ersten Schließen bis zur Ruhe.</translation>
    </message>
    <message>
        <source>Tighten, clean, set the spring, in this order, and measure again after each.</source>
        <translation>Festziehen, reinigen, Feder einstellen, in dieser Reihenfolge, und nach jedem neu messen.</translation>
    </message>
    <message>
        <source>On a battery of 12 V in place of the loop dirt alone can do it, which the loop&apos;s higher voltage breaks through.</source>
        <translation>An einer Batterie von 12 V anstelle der Schleife kann schon Schmutz es bewirken, den die höhere Spannung der Schleife durchschlägt.</translation>
    </message>
    <message>
        <source>%1 where it stands, in %2 of %3 characters</source>
        <translation>%1, wo er steht, in %2 von %3 Zeichen</translation>
    </message>
    <message>
        <source>The tape itself, its feed holes: try a new one. Then what lets the tape go short and far by turns: detent of the feed wheel and its spring, the wheel&apos;s pins and play, feed pawl, tape guide and lid.</source>
        <translation>Der Streifen selbst, seine Vorschublöcher: einen neuen versuchen. Dann, was den Streifen mal zu kurz, mal zu weit gehen lässt: Raste des Vorschubrads und ihre Feder, Stifte und Spiel des Rads, Vorschubklinke, Streifenführung und Deckel.</translation>
    </message>
    <message>
        <source>That is %1 of the characters; level by level what came is right.</source>
        <translation>Das sind %1 der Zeichen; Schritt für Schritt ist richtig, was kam.</translation>
    </message>
    <message>
        <source>The feed slips: %1 in %2 characters</source>
        <translation>Der Vorschub rutscht: %1 in %2 Zeichen</translation>
    </message>
</context>
<context>
    <name>QFileDialog</name>
    <message>
        <source>Look in:</source>
        <translation>Ordner:</translation>
    </message>
    <message>
        <source>File &amp;name:</source>
        <translation>Datei&amp;name:</translation>
    </message>
    <message>
        <source>Files of type:</source>
        <translation>Art:</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Sichern</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>Parent Directory</source>
        <translation>Übergeordneter Ordner</translation>
    </message>
    <message>
        <source>Create New Folder</source>
        <translation>Neuer Ordner</translation>
    </message>
    <message>
        <source>List View</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Detail View</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Show &amp;hidden files</source>
        <translation>&amp;Verborgene Dateien zeigen</translation>
    </message>
    <message>
        <source>&amp;New Folder</source>
        <translation>&amp;Neuer Ordner</translation>
    </message>
    <message>
        <source>Directory:</source>
        <translation>Ordner:</translation>
    </message>
    <message>
        <source>Recent Places</source>
        <translation>Zuletzt benutzt</translation>
    </message>
    <message>
        <source>%1 already exists.
Do you want to replace it?</source>
        <translation>%1 gibt es schon.
Ersetzen?</translation>
    </message>
    <message>
        <source>%1
File not found.
Please verify the correct file name was given.</source>
        <translation>%1
Die Datei gibt es nicht.
Bitte den Namen prüfen.</translation>
    </message>
</context>
<context>
    <name>QFileSystemModel</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Date Modified</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Rechner</translation>
    </message>
</context>
<context>
    <name>QPlatformTheme</name>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>&amp;Yes</source>
        <translation>&amp;Ja</translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation>&amp;Nein</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Alt</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Auf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Pos1</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Receiving margin, from</source>
        <translation>Empfangsspielraum, von</translation>
    </message>
    <message>
        <source>Receiving margin, to</source>
        <translation>Empfangsspielraum, bis</translation>
    </message>
    <message>
        <source>Lost marks</source>
        <translation>Verlorene Schritte</translation>
    </message>
    <message>
        <source>Filled spaces</source>
        <translation>Gefüllte Schritte</translation>
    </message>
    <message>
        <source>none given</source>
        <translation>keiner angegeben</translation>
    </message>
    <message>
        <source>given</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>Text of the tape</source>
        <translation>Text des Streifens</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Against the moment marked &quot;before&quot;, </source>
        <translation>Gegen den Augenblick „vorher“, </translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>space</source>
        <translation>Trenn</translation>
    </message>
    <message>
        <source>% late, own speed</source>
        <translation>% spät, eigene Geschw.</translation>
    </message>
    <message>
        <source>% late, own speed (out)</source>
        <translation>% spät, eigene Geschw. (falsch)</translation>
    </message>
    <message>
        <source>% late (up) at the sender&apos;s own speed, which is out</source>
        <translation>% spät (oben) bei eigener Geschwindigkeit, die falsch ist</translation>
    </message>
    <message>
        <source>dashed: before</source>
        <translation>gestrichelt: vorher</translation>
    </message>
    <message>
        <source>No character had been received when this frame was taken.</source>
        <translation>Als dieses Bild entstand, war noch kein Zeichen empfangen.</translation>
    </message>
    <message>
        <source>Machine without a name</source>
        <translation>Maschine ohne Namen</translation>
    </message>
    <message>
        <source>Timing of a start-stop sender</source>
        <translation>Zeiten eines Start-Stopp-Senders</translation>
    </message>
    <message>
        <source>Timing of a simulated sender</source>
        <translation>Zeiten eines simulierten Senders</translation>
    </message>
    <message>
        <source>Taken </source>
        <translation>Aufgenommen </translation>
    </message>
    <message>
        <source>Character on the grid</source>
        <translation>Zeichen auf dem Raster</translation>
    </message>
    <message>
        <source> after the start</source>
        <translation> nach dem Anlauf</translation>
    </message>
    <message>
        <source>A to B</source>
        <translation>A bis B</translation>
    </message>
    <message>
        <source>At %1 units: </source>
        <translation>Bei %1 Schritten: </translation>
    </message>
    <message>
        <source>Note %1</source>
        <translation>Notiz %1</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>judged</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Displacement by instant</source>
        <translation>Abweichung je Übergang</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>to</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anz.</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>rms</source>
        <translation>eff.</translation>
    </message>
    <message>
        <source>earliest</source>
        <translation>frühest</translation>
    </message>
    <message>
        <source>latest</source>
        <translation>spätest</translation>
    </message>
    <message>
        <source>Findings, worst first</source>
        <translation>Befunde, schlimmster zuerst</translation>
    </message>
    <message>
        <source>Text received</source>
        <translation>Empfangener Text</translation>
    </message>
    <message>
        <source>%1 characters, %2 framing errors.</source>
        <translation>%1 Zeichen, %2 ohne Sperrschritt.</translation>
    </message>
    <message>
        <source>Notes on the readings</source>
        <translation>Anmerkungen zu den Messwerten</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Caution: the signal loop is hazardous live (well above 60 V DC) and its current limit does not make it safe. Isolate between loop and sound card, and unplug the machine before hands or tools go in. Local codes and licensed practice come first.</source>
        <translation>Vorsicht: Der Linienstromkreis führt gefährliche Spannung (weit über 60 V Gleichspannung), und seine Strombegrenzung macht ihn nicht sicher. Zwischen Linienstromkreis und Soundkarte galvanisch trennen, und den Netzstecker ziehen, bevor Hände oder Werkzeug hineingehen. Örtliche Vorschriften und das Fachhandwerk gehen vor.</translation>
    </message>
    <message>
        <source>, timing report</source>
        <translation>, Messbericht</translation>
    </message>
    <message>
        <source>OUT</source>
        <translation>AUSSEN</translation>
    </message>
    <message>
        <source>in</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>Characteristic</source>
        <translation>charakteristisch</translation>
    </message>
    <message>
        <source>Scatter (fortuitous), rms</source>
        <translation>Streuung (regellos), eff.</translation>
    </message>
    <message>
        <source>Scatter, peak</source>
        <translation>Streuung, Spitze</translation>
    </message>
    <message>
        <source>Cyclic, at %1 Hz</source>
        <translation>periodisch, bei %1 Hz</translation>
    </message>
    <message>
        <source>Contact bounces</source>
        <translation>Kontaktpreller</translation>
    </message>
    <message>
        <source>not settled</source>
        <translation>unentschieden</translation>
    </message>
    <message>
        <source>loop current</source>
        <translation>Linienstrom</translation>
    </message>
    <message>
        <source>interrupted tone</source>
        <translation>unterbrochener Ton</translation>
    </message>
    <message>
        <source>two tones</source>
        <translation>zwei Töne</translation>
    </message>
    <message>
        <source>%1 characters used</source>
        <translation>%1 Zeichen verwendet</translation>
    </message>
    <message>
        <source>all characters</source>
        <translation>alle Zeichen</translation>
    </message>
    <message>
        <source>last %1 characters</source>
        <translation>letzte %1 Zeichen</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source> Hz</source>
        <translation> Hz</translation>
    </message>
    <message>
        <source>high-pass at </source>
        <translation>Hochpass bei </translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Bias</source>
        <translation>Einseitige Verz.</translation>
    </message>
    <message>
        <source>End distortion</source>
        <translation>Endverzerrung</translation>
    </message>
    <message>
        <source>Start-stop, gross</source>
        <translation>Start-Stopp, gesamt</translation>
    </message>
    <message>
        <source>Start-stop, synchronous</source>
        <translation>Start-Stopp, synchron</translation>
    </message>
    <message>
        <source>Speed error</source>
        <translation>Geschwindigkeitsfehler</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Schrittlänge</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>/min</source>
        <translation>/min</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Schr.</translation>
    </message>
    <message>
        <source>%1 %2&#xa0;% (limit&#xa0;%3&#xa0;%): %4</source>
        <translation>%1 %2&#xa0;% (Grenze&#xa0;%3&#xa0;%): %4</translation>
    </message>
    <message>
        <source>Cannot tell yet</source>
        <translation>Noch nicht zu sagen</translation>
    </message>
    <message>
        <source>Cannot tell: set the nominal speed</source>
        <translation>Nicht zu sagen: Nennwert der Geschwindigkeit einstellen</translation>
    </message>
    <message>
        <source>%1. Limits: %2.</source>
        <translation>%1. Grenzen: %2.</translation>
    </message>
    <message>
        <source>In limits</source>
        <translation>In den Grenzen</translation>
    </message>
    <message>
        <source>Timing in limits</source>
        <translation>Zeiten in den Grenzen</translation>
    </message>
    <message>
        <source>Every reading that was judged lies within its limit (%1). The text of the tape is not known, so lost marks were not counted.</source>
        <translation>Jeder beurteilte Messwert liegt in seiner Grenze (%1). Der Text des Streifens ist unbekannt, daher wurden verlorene Zeichenschritte nicht gezählt.</translation>
    </message>
    <message>
        <source>Not judged</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>No reading could be held against the limits (%1).</source>
        <translation>Kein Messwert ließ sich gegen die Grenzen halten (%1).</translation>
    </message>
    <message>
        <source>%1 %2&#xa0;% (limit&#xa0;%3&#xa0;%)</source>
        <translation>%1 %2&#xa0;% (Grenze&#xa0;%3&#xa0;%)</translation>
    </message>
    <message>
        <source>See the readings</source>
        <translation>Siehe Messwerte</translation>
    </message>
    <message>
        <source>Out of limits</source>
        <translation>Außerhalb der Grenzen</translation>
    </message>
    <message>
        <source> units</source>
        <translation> Schritte</translation>
    </message>
    <message>
        <source>%1 ms, %2 units</source>
        <translation>%1 ms, %2 Schritte</translation>
    </message>
    <message>
        <source>, %1° of the cam</source>
        <translation>, %1° des Nockens</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Signal</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>, reversed</source>
        <translation>, verkehrt</translation>
    </message>
    <message>
        <source>, upright</source>
        <translation>, richtig herum</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Kopplung</translation>
    </message>
    <message>
        <source>Signal to noise</source>
        <translation>Signal zu Rauschen</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>Clipped</source>
        <translation>Begrenzt</translation>
    </message>
    <message>
        <source> % of samples</source>
        <translation> % der Abtastwerte</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>Verluste</translation>
    </message>
    <message>
        <source>%1 gaps, %2 samples</source>
        <translation>%1 Lücken, %2 Abtastwerte</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Speed set</source>
        <translation>Eingestellte Geschwindigkeit</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 Baud</translation>
    </message>
    <message>
        <source>none: %1 baud taken, the nearest usual speed</source>
        <translation>keine: %1 Baud angenommen, die nächste übliche Geschwindigkeit</translation>
    </message>
    <message>
        <source>found from the signal</source>
        <translation>aus dem Signal bestimmt</translation>
    </message>
    <message>
        <source>Stop set</source>
        <translation>Eingestellter Sperrschritt</translation>
    </message>
    <message>
        <source>%1 units</source>
        <translation>%1 Schritte</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Slice level</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>%1 % of the swing</source>
        <translation>%1 % des Hubs</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Self-check</source>
        <translation>Selbstprüfung</translation>
    </message>
    <message>
        <source>none kept</source>
        <translation>keine aufbewahrt</translation>
    </message>
    <message>
        <source>Clock trim</source>
        <translation>Taktabgleich</translation>
    </message>
    <message>
        <source>%1 parts in a million</source>
        <translation>%1 Millionstel</translation>
    </message>
    <message>
        <source> (UTC</source>
        <translation> (UTC</translation>
    </message>
    <message>
        <source>Repair of a start-stop sender</source>
        <translation>Instandsetzung eines Start-Stopp-Senders</translation>
    </message>
    <message>
        <source>Exercise on a simulated sender</source>
        <translation>Übung an einem simulierten Sender</translation>
    </message>
    <message>
        <source>Visit of </source>
        <translation>Besuch vom </translation>
    </message>
    <message>
        <source>  ·  owner&apos;s mark </source>
        <translation>  ·  Inventarzeichen </translation>
    </message>
    <message>
        <source>Nothing was measured on this visit</source>
        <translation>Bei diesem Besuch wurde nichts gemessen</translation>
    </message>
    <message>
        <source> when it left</source>
        <translation> beim Abgang</translation>
    </message>
    <message>
        <source> as it came</source>
        <translation> wie angeliefert</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>What was wrong and what was done</source>
        <translation>Was fehlte und was getan wurde</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Oil and grease</source>
        <translation>Öl und Fett</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Change from before to after</source>
        <translation>Veränderung von vorher zu nachher</translation>
    </message>
    <message>
        <source>Readings before and after</source>
        <translation>Messwerte vorher und nachher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>%1: character %2, number %3, taken %4</source>
        <translation>%1: Zeichen %2, Nummer %3, aufgenommen %4</translation>
    </message>
    <message>
        <source>%1, taken %2</source>
        <translation>%1, aufgenommen %2</translation>
    </message>
    <message>
        <source>, before</source>
        <translation>, vorher</translation>
    </message>
    <message>
        <source>, after</source>
        <translation>, nachher</translation>
    </message>
    <message>
        <source>Frames kept on this visit</source>
        <translation>Bei diesem Besuch aufbewahrte Bilder</translation>
    </message>
    <message>
        <source>Note %1, at %2 units: %3</source>
        <translation>Notiz %1, bei %2 Schritten: %3</translation>
    </message>
    <message>
        <source>Checked:&#xa0;</source>
        <translation>Geprüft:&#xa0;</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Findings before, worst first</source>
        <translation>Befunde vorher, schlimmster zuerst</translation>
    </message>
    <message>
        <source>Findings after, worst first</source>
        <translation>Befunde nachher, schlimmster zuerst</translation>
    </message>
    <message>
        <source>About the machine</source>
        <translation>Zur Maschine</translation>
    </message>
    <message>
        <source>%1, repair report, visit of %2</source>
        <translation>%1, Instandsetzungsbericht, Besuch vom %2</translation>
    </message>
    <message>
        <source>Nothing was measured on this visit.</source>
        <translation>Bei diesem Besuch wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>%1 · visit of %2 · Trueunit %3</source>
        <translation>%1 · Besuch vom %2 · Trueunit %3</translation>
    </message>
    <message>
        <source>Reset peaks</source>
        <translation>Spitzen löschen</translation>
    </message>
    <message>
        <source>Forget the peaks held on the scale (P)</source>
        <translation>Die gehaltenen Spitzen der Skala vergessen (P)</translation>
    </message>
    <message>
        <source>Reset the held peaks of the bias</source>
        <translation>Gehaltene Spitzen der einseitigen Verzerrung löschen</translation>
    </message>
    <message>
        <source>limit ±%1 %</source>
        <translation>Grenze ±%1 %</translation>
    </message>
    <message>
        <source>bias not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>No reading: </source>
        <translation>Kein Messwert: </translation>
    </message>
    <message>
        <source>one character</source>
        <translation>ein Zeichen</translation>
    </message>
    <message>
        <source>%1 characters</source>
        <translation>%1 Zeichen</translation>
    </message>
    <message>
        <source>± %1 % over %2</source>
        <translation>± %1 % über %2</translation>
    </message>
    <message>
        <source>line rests, last </source>
        <translation>Leitung ruht, zuletzt </translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>%1 Prozent</translation>
    </message>
    <message>
        <source>marks short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>marks long</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>held </source>
        <translation>gehalten </translation>
    </message>
    <message>
        <source>held %1 to %2</source>
        <translation>gehalten %1 bis %2</translation>
    </message>
    <message>
        <source>one minute</source>
        <translation>einer Minute</translation>
    </message>
    <message>
        <source>two minutes</source>
        <translation>zwei Minuten</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 Minuten</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 Sekunden</translation>
    </message>
    <message>
        <source>Trail of the bias</source>
        <translation>Verlauf der Verzerrung</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>last %1 s</source>
        <translation>seit %1 s</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>Between %1 and %2 percent in the last %3, now %4</source>
        <translation>Zwischen %1 und %2 Prozent seit %3, jetzt %4</translation>
    </message>
    <message>
        <source>Cursors</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>Show the whole character (Home)</source>
        <translation>Das ganze Zeichen zeigen (Pos1)</translation>
    </message>
    <message>
        <source>frozen, </source>
        <translation>festgehalten, </translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>festgehalten</translation>
    </message>
    <message>
        <source>newest of %1: %2</source>
        <translation>neuestes von %1: %2</translation>
    </message>
    <message>
        <source>%1 before the newest: %2</source>
        <translation>%1 vor dem neuesten: %2</translation>
    </message>
    <message>
        <source> out of limits</source>
        <translation> außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>Character %1. Percent late: </source>
        <translation>Zeichen %1. Prozent zu spät: </translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Vorher und jetzt</translation>
    </message>
    <message>
        <source>%1 %2, now %3, change %4, %5</source>
        <translation>%1 %2, jetzt %3, Änderung %4, %5</translation>
    </message>
    <message>
        <source>%1 ms  %2 units</source>
        <translation>%1 ms  %2 Schritte</translation>
    </message>
    <message>
        <source>B − A  </source>
        <translation>B − A  </translation>
    </message>
    <message>
        <source>out</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>before to now</source>
        <translation>vorher bis jetzt</translation>
    </message>
    <message>
        <source>rms spread</source>
        <translation>Streuung eff.</translation>
    </message>
    <message>
        <source>% late (up) at the sender&apos;s own speed</source>
        <translation>% spät (oben) bei eigener Geschwindigkeit</translation>
    </message>
    <message>
        <source>character</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>%1 %2 mean %3 spread %4%5</source>
        <translation>%1 %2 Mittel %3 Streuung %4%5</translation>
    </message>
    <message>
        <source>, out of limits</source>
        <translation>, außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>Eccentric</source>
        <translation>Exzenter</translation>
    </message>
    <message>
        <source>simulated machine</source>
        <translation>simuliert</translation>
    </message>
    <message>
        <source>longer</source>
        <translation>länger</translation>
    </message>
    <message>
        <source>shorter</source>
        <translation>kürzer</translation>
    </message>
    <message>
        <source>Make marks %1 by %2 percent</source>
        <translation>Zeichenstrom um %2 Prozent %1 machen</translation>
    </message>
    <message>
        <source>Marks %1 by %2 % of a unit (%3)</source>
        <translation>Zeichenstrom um %2 % der Schrittlänge %1 (%3)</translation>
    </message>
    <message>
        <source>Turned %1 percent so far. Clockwise makes marks longer, back makes them shorter.</source>
        <translation>Bisher um %1 Prozent gedreht. Im Uhrzeigersinn wird der Zeichenstrom länger, zurück kürzer.</translation>
    </message>
    <message>
        <source>marks shorter</source>
        <translation>kürzer</translation>
    </message>
    <message>
        <source>marks longer</source>
        <translation>länger</translation>
    </message>
    <message>
        <source>List of findings</source>
        <translation>Liste der Befunde</translation>
    </message>
    <message>
        <source>%1 % sure</source>
        <translation>%1 % sicher</translation>
    </message>
    <message>
        <source>minor, %1 % sure</source>
        <translation>gering, %1 % sicher</translation>
    </message>
    <message>
        <source>Gears: </source>
        <translation>Räder: </translation>
    </message>
    <message>
        <source>Look at: </source>
        <translation>Zu prüfen: </translation>
    </message>
    <message>
        <source>Confirm: </source>
        <translation>Bestätigen: </translation>
    </message>
    <message>
        <source>No cause has been looked for.</source>
        <translation>Nach einer Ursache wurde nicht gesucht.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Hazardous loop voltage. Unplug before tools go in.</source>
        <translation>Gefährliche Spannung. Erst Netzstecker ziehen.</translation>
    </message>
    <message>
        <source>An exercise. On a machine: hazardous voltage, unplug first.</source>
        <translation>Übung. An Maschinen: Lebensgefahr, erst Netzstecker ziehen.</translation>
    </message>
    <message>
        <source>An exercise on a simulated sender: only its eccentric can be turned, which moves the bias. What to look at and how to confirm is what one would do on a machine.</source>
        <translation>Eine Übung an einem simulierten Sender: Nur sein Exzenter lässt sich drehen, und der verschiebt die einseitige Verzerrung. Was anzusehen und zu prüfen ist, täte man an einer Maschine.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>The machine card: motor, gears, and what they make of the speed (Ctrl+K)</source>
        <translation>Die Maschinenkarte: Motor, Räder und was sie aus der Geschwindigkeit machen (Strg+K)</translation>
    </message>
    <message>
        <source>Machine card</source>
        <translation>Maschinenkarte</translation>
    </message>
    <message>
        <source>dashed, ◇: before</source>
        <translation>gestrichelt, ◇: vorher</translation>
    </message>
    <message>
        <source>instant</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>Instants</source>
        <translation>Übergänge</translation>
    </message>
    <message>
        <source>%1 %2 mean %3</source>
        <translation>%1 %2 Mittel %3</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Linienstrom</translation>
    </message>
    <message>
        <source>tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>richtig herum</translation>
    </message>
    <message>
        <source>hum %1 %</source>
        <translation>Brumm %1 %</translation>
    </message>
    <message>
        <source>slice %1 %</source>
        <translation>Schwelle %1 %</translation>
    </message>
    <message>
        <source>Input level</source>
        <translation>Eingangspegel</translation>
    </message>
    <message>
        <source>clipping</source>
        <translation>übersteuert</translation>
    </message>
    <message>
        <source>no level</source>
        <translation>kein Pegel</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Lücke</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>, %1 samples lost</source>
        <translation>, %1 Abtastwerte verloren</translation>
    </message>
    <message>
        <source>level %1</source>
        <translation>Schr. %1</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>nowhere: some level would misread</source>
        <translation>nirgends: ein Schritt würde falsch gelesen</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 bis %2 %</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>the stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>percent of each level, ideal receiver</source>
        <translation>Prozent jedes Schritts</translation>
    </message>
    <message>
        <source>% of level</source>
        <translation>% des Schritts</translation>
    </message>
    <message>
        <source>A receiver may sample from %1 to %2 percent of each level; %3; %4</source>
        <translation>Ein Empfänger darf von %1 bis %2 Prozent jedes Schritts abtasten; %3; %4</translation>
    </message>
    <message>
        <source>: no reading. </source>
        <translation>: kein Messwert. </translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Scatter (fortuitous)</source>
        <translation>Streuung (regellos)</translation>
    </message>
    <message>
        <source>The unit against its nominal length: motor, governor, gears, mains frequency.</source>
        <translation>Die Schrittlänge gegen ihren Nennwert: Motor, Regler, Räder, Netzfrequenz.</translation>
    </message>
    <message>
        <source>Length of the stop in units: rest of the main cam, clutch and its latch.</source>
        <translation>Länge des Sperrschritts in Schrittlängen: Rast des Hauptnockens, Kupplung und ihre Klinke.</translation>
    </message>
    <message>
        <source>Marks too long (+) or too short (-): the contact, its gap and its eccentric.</source>
        <translation>Zeichenstrom zu lang (+) oder zu kurz (-): der Kontakt, sein Abstand und sein Exzenter.</translation>
    </message>
    <message>
        <source>Ends of marks late (+) or early (-): cam flanks, levers, return spring.</source>
        <translation>Zeichenstrom endet zu spät (+) oder zu früh (-): Nockenflanken, Hebel, Rückholfeder.</translation>
    </message>
    <message>
        <source>Largest displacement against the nominal speed: what a receiver has to stand. A wrong speed counts in: as a rule it adds, but where it works against bias or end the figure may be below the synchronous one.</source>
        <translation>Größte Abweichung gegen die Nenngeschwindigkeit: was ein Empfänger aushalten muss. Eine falsche Geschwindigkeit zählt mit: Meist vergrößert sie die Zahl; wo sie der einseitigen oder der Endverzerrung entgegenwirkt, kann die Zahl unter der synchronen liegen.</translation>
    </message>
    <message>
        <source>What is random: worn or dirty contacts, loose pivots, noise.</source>
        <translation>Was regellos ist: abgenutzte oder schmutzige Kontakte, lose Gelenke, Rauschen.</translation>
    </message>
    <message>
        <source>Part of a unit in which a receiver reads every element rightly; 50 is the middle. Below 0 or over 100: even beside the element.</source>
        <translation>Teil der Schrittlänge, in dem ein Empfänger jeden Schritt richtig liest; 50 ist die Mitte. Unter 0 oder über 100: sogar neben dem Schritt.</translation>
    </message>
    <message>
        <source>, limit </source>
        <translation>, Grenze </translation>
    </message>
    <message>
        <source>? %1 more</source>
        <translation>? noch %1</translation>
    </message>
    <message>
        <source>? at the limit</source>
        <translation>? an der Grenze</translation>
    </message>
    <message>
        <source>? set the speed</source>
        <translation>? Nennwert fehlt</translation>
    </message>
    <message>
        <source>Bd</source>
        <translation>Bd</translation>
    </message>
    <message>
        <source>% rms</source>
        <translation>% eff.</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>± covers 95 of 100</source>
        <translation>± gilt für 95 von 100</translation>
    </message>
    <message>
        <source>Why a reading is missing</source>
        <translation>Warum ein Messwert fehlt</translation>
    </message>
    <message>
        <source>level %1 %2</source>
        <translation>Schritt %1 %2</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gefüllt</translation>
    </message>
    <message>
        <source>, no stop</source>
        <translation>, kein Sperrschritt</translation>
    </message>
    <message>
        <source>, wrong: </source>
        <translation>, falsch: </translation>
    </message>
    <message>
        <source>, probably wrong: </source>
        <translation>, wahrscheinlich falsch: </translation>
    </message>
    <message>
        <source> without a stop</source>
        <translation> ohne Sperrschritt</translation>
    </message>
    <message>
        <source>The last characters: </source>
        <translation>Die letzten Zeichen: </translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>%1 without a stop</source>
        <translation>%1 ohne Sperrschritt</translation>
    </message>
    <message>
        <source>%1 wrong</source>
        <translation>%1 falsch</translation>
    </message>
    <message>
        <source>%1 probably wrong</source>
        <translation>%1 wahrscheinlich falsch</translation>
    </message>
    <message>
        <source>%1, %2, boxed ✕</source>
        <translation>%1, %2, im Kasten ✕</translation>
    </message>
    <message>
        <source>, every one with its stop</source>
        <translation>, jedes mit Sperrschritt</translation>
    </message>
    <message>
        <source>no framing errors</source>
        <translation>alle mit Sperrschritt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>in limits</source>
        <translation>in den Grenzen</translation>
    </message>
    <message>
        <source>marks too long</source>
        <translation>Zeichenstrom zu lang</translation>
    </message>
    <message>
        <source>marks too short</source>
        <translation>Zeichenstrom zu kurz</translation>
    </message>
    <message>
        <source>: make them shorter</source>
        <translation>: kürzen</translation>
    </message>
    <message>
        <source>: make them longer</source>
        <translation>: verlängern</translation>
    </message>
    <message>
        <source>, marks a little long</source>
        <translation>, ein wenig lang</translation>
    </message>
    <message>
        <source>, marks a little short</source>
        <translation>, ein wenig kurz</translation>
    </message>
    <message>
        <source>to mark</source>
        <translation>zum Zeichenstrom</translation>
    </message>
    <message>
        <source>to space</source>
        <translation>zum Trennstrom</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Sperr</translation>
    </message>
    <message>
        <source>No input yet.</source>
        <translation>Noch kein Eingang.</translation>
    </message>
    <message>
        <source>The input is silent.</source>
        <translation>Der Eingang ist stumm.</translation>
    </message>
    <message>
        <source>A signal, but no characters in it yet.</source>
        <translation>Ein Signal, aber noch keine Zeichen darin.</translation>
    </message>
    <message>
        <source>The line rests.</source>
        <translation>Die Leitung ruht.</translation>
    </message>
    <message>
        <source>Too few characters so far.</source>
        <translation>Bisher zu wenige Zeichen.</translation>
    </message>
    <message>
        <source>no </source>
        <translation>keine </translation>
    </message>
    <message>
        <source>One that is less likely is in the logbook.</source>
        <translation>Einer, der weniger wahrscheinlich ist, steht im Logbuch.</translation>
    </message>
    <message>
        <source>%1 that are less likely are in the logbook.</source>
        <translation>%1, die weniger wahrscheinlich sind, stehen im Logbuch.</translation>
    </message>
    <message>
        <source>A box stands for a character that no font on this computer has. Install a font for its script and write the report again; the logbook has the text as it was typed.</source>
        <translation>Ein Kasten steht für ein Schriftzeichen, das keine Schriftart dieses Rechners hat. Eine Schriftart dafür einrichten und den Bericht neu schreiben; im Logbuch steht der Text, wie er getippt wurde.</translation>
    </message>
    <message>
        <source>before %1 %: level %2 of %3 reads as %4</source>
        <translation>vor %1 %: Schritt %2 von %3 gälte als %4</translation>
    </message>
    <message>
        <source>after %1 %: level %2 of %3 reads as %4</source>
        <translation>nach %1 %: Schritt %2 von %3 gälte als %4</translation>
    </message>
    <message>
        <source>% late +</source>
        <translation>% spät +</translation>
    </message>
    <message>
        <source>early −</source>
        <translation>früh −</translation>
    </message>
    <message>
        <source>Caution: </source>
        <translation>Vorsicht: </translation>
    </message>
    <message>
        <source>%1 · measured %2 · Trueunit %3</source>
        <translation>%1 · gemessen %2 · Trueunit %3</translation>
    </message>
    <message>
        <source>Every reading that was judged lies within its limit (%1), and no character differs from the text that the tape repeats.</source>
        <translation>Jeder beurteilte Messwert liegt in seiner Grenze (%1), und kein Zeichen weicht von dem Text ab, den der Streifen wiederholt.</translation>
    </message>
    <message>
        <source>Every reading that was judged lies within its limit (%1), and no character differs from the text given for the tape.</source>
        <translation>Jeder beurteilte Messwert liegt in seiner Grenze (%1), und kein Zeichen weicht von dem Text ab, der für den Streifen angegeben wurde.</translation>
    </message>
    <message>
        <source>From a recording, its file of %1; measured %2</source>
        <translation>Aus einer Aufnahme, Datei vom %1; gemessen %2</translation>
    </message>
    <message>
        <source>bias in limits</source>
        <translation>einseitige V. in den Grenzen</translation>
    </message>
    <message>
        <source>, %1 since the nudge</source>
        <translation>, %1 seit der Verstellung</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>synchronous</source>
        <translation>synchron</translation>
    </message>
    <message>
        <source>gross</source>
        <translation>gesamt</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 außerhalb</translation>
    </message>
    <message>
        <source>%1 and %2 more out</source>
        <translation>%1 und %2 weitere außerhalb</translation>
    </message>
    <message>
        <source>%1 ?</source>
        <translation>%1 ?</translation>
    </message>
    <message>
        <source>over %1 characters</source>
        <translation>über %1 Zeichen</translation>
    </message>
    <message>
        <source>over one character</source>
        <translation>über ein Zeichen</translation>
    </message>
    <message>
        <source>worst first, %1</source>
        <translation>schlimmster zuerst, %1</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>mains hum</source>
        <translation>Netzbrumm</translation>
    </message>
    <message>
        <source>apostrophe</source>
        <translation>Apostroph</translation>
    </message>
    <message>
        <source>quotation mark</source>
        <translation>Anführungszeichen</translation>
    </message>
    <message>
        <source>full stop</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>a character without print</source>
        <translation>ein Zeichen ohne Abdruck</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>Character on the grid: %1, number %2; grid for %3</source>
        <translation>Zeichen auf dem Raster: %1, Nummer %2; Raster für %3</translation>
    </message>
    <message>
        <source>marks too long or short</source>
        <translation>Zeichenstrom zu lang oder zu kurz</translation>
    </message>
    <message>
        <source>marks end late or early</source>
        <translation>Zeichenstrom endet zu spät oder zu früh</translation>
    </message>
    <message>
        <source>marks end late</source>
        <translation>Zeichenstrom endet zu spät</translation>
    </message>
    <message>
        <source>marks end early</source>
        <translation>Zeichenstrom endet zu früh</translation>
    </message>
    <message>
        <source>spaces of a level filled</source>
        <translation>Trennschritte eines Schritts gefüllt</translation>
    </message>
    <message>
        <source>level late or early</source>
        <translation>Schritt zu spät oder zu früh</translation>
    </message>
    <message>
        <source>runs fast or slow</source>
        <translation>läuft zu schnell oder zu langsam</translation>
    </message>
    <message>
        <source>speed wanders</source>
        <translation>Geschwindigkeit wandert</translation>
    </message>
    <message>
        <source>displacement swings</source>
        <translation>Abweichung schwingt</translation>
    </message>
    <message>
        <source>contact bounces</source>
        <translation>Kontakt prellt</translation>
    </message>
    <message>
        <source>current slow to rise or fall</source>
        <translation>Linienstrom steigt oder fällt langsam</translation>
    </message>
    <message>
        <source>stop irregular or long</source>
        <translation>Sperrschritt unregelmäßig oder zu lang</translation>
    </message>
    <message>
        <source>tape feed slips</source>
        <translation>Streifenvorschub rutscht</translation>
    </message>
    <message>
        <source>signal faint or noisy</source>
        <translation>Signal schwach oder verrauscht</translation>
    </message>
    <message>
        <source>input overdriven</source>
        <translation>Eingang übersteuert</translation>
    </message>
    <message>
        <source>signal reversed</source>
        <translation>Signal verkehrt herum</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht zu lesen</translation>
    </message>
    <message>
        <source>input silent</source>
        <translation>Eingang stumm</translation>
    </message>
    <message>
        <source>runs fast</source>
        <translation>läuft zu schnell</translation>
    </message>
    <message>
        <source>runs slow</source>
        <translation>läuft zu langsam</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>verändert</translation>
    </message>
    <message>
        <source>changed?</source>
        <translation>verändert?</translation>
    </message>
    <message>
        <source>The same character of the tape: before it came as %1, after as %2.</source>
        <translation>Dasselbe Zeichen des Streifens: Vorher kam es als %1, nachher als %2.</translation>
    </message>
    <message>
        <source>The same marks and spaces in both: in one shift they print %1, in the other %2.</source>
        <translation>In beiden dieselben Zeichen- und Trennschritte: in der einen Lage drucken sie %1, in der anderen %2.</translation>
    </message>
    <message>
        <source>Not the same character: before %1, after %2.</source>
        <translation>Nicht dasselbe Zeichen: vorher %1, nachher %2.</translation>
    </message>
    <message>
        <source>unsure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>before, now, change ± uncertainty</source>
        <translation>vorher, jetzt, Änderung ± Unsicherheit</translation>
    </message>
    <message>
        <source>change ± uncertainty</source>
        <translation>Änderung ± Unsicherheit</translation>
    </message>
    <message>
        <source>before: no %1 came</source>
        <translation>vorher: kein %1 gekommen</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Bias and end: marking positive. Speed error: fast positive. Uncertainty: covers 95 of 100.</source>
        <translation>Einseitige und Endverzerrung: Zeichenstrom länger ist positiv. Geschwindigkeitsfehler: schneller ist positiv. Unsicherheit: gilt für 95 von 100.</translation>
    </message>
    <message>
        <source>Bias and end: marking positive. Speed error: fast positive. Uncertainty: covers 95 of 100. Judged by %1: %2</source>
        <translation>Einseitige und Endverzerrung: Zeichenstrom länger ist positiv. Geschwindigkeitsfehler: schneller ist positiv. Unsicherheit: gilt für 95 von 100. Beurteilt nach %1: %2</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>, out</source>
        <translation>, außen</translation>
    </message>
    <message>
        <source>, page %1</source>
        <translation>, Seite %1</translation>
    </message>
    <message>
        <source>marks of a level lost</source>
        <translation>Zeichenschritte eines Schritts verloren</translation>
    </message>
    <message>
        <source>Receiving margin</source>
        <translation>Empfangsspielraum</translation>
    </message>
    <message>
        <source>%1: too few characters so far.</source>
        <translation>%1: bisher zu wenige Zeichen.</translation>
    </message>
    <message>
        <source>text not known</source>
        <translation>Text unbekannt</translation>
    </message>
    <message>
        <source>another text</source>
        <translation>anderer Text</translation>
    </message>
    <message>
        <source>level %1: %2 of %3</source>
        <translation>Schritt %1: %2 von %3</translation>
    </message>
    <message>
        <source>%1 levels</source>
        <translation>%1 Schritte</translation>
    </message>
    <message>
        <source>, prints as a letter because the shift to figures %1 before was lost</source>
        <translation>, druckt als Buchstabe, weil die Umschaltung auf Ziffern %1 davor verloren ging</translation>
    </message>
    <message>
        <source>, prints as a figure because the shift to letters %1 before was lost</source>
        <translation>, druckt als Ziffer, weil die Umschaltung auf Buchstaben %1 davor verloren ging</translation>
    </message>
    <message>
        <source>, prints as a letter because the one %1 before came as the shift to letters</source>
        <translation>, druckt als Buchstabe, weil das Zeichen %1 davor als Umschaltung auf Buchstaben kam</translation>
    </message>
    <message>
        <source>, prints as a figure because the one %1 before came as the shift to figures</source>
        <translation>, druckt als Ziffer, weil das Zeichen %1 davor als Umschaltung auf Ziffern kam</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>%1 of %2 since the nudge</source>
        <translation>%1 von %2 seit der Verstellung</translation>
    </message>
    <message>
        <source>Left out, met too seldom to tell a change of 5 % of a unit: %1 of them.</source>
        <translation>Weggelassen, weil zu selten vorgekommen, um eine Änderung von 5 % einer Schrittlänge zu erkennen: %1 davon.</translation>
    </message>
    <message>
        <source>At one of the moments fewer than 32 characters were measured: a longer window makes the proof firmer.</source>
        <translation>In einem der Augenblicke wurden weniger als 32 Zeichen gemessen: Ein längeres Fenster macht den Nachweis fester.</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>ohne Befund</translation>
    </message>
    <message>
        <source>%1, yet with a fault</source>
        <translation>%1, doch mit einem Fehler</translation>
    </message>
    <message>
        <source>With a fault; whether in limits cannot be told yet</source>
        <translation>Mit einem Fehler; ob in den Grenzen, ist noch nicht zu sagen</translation>
    </message>
    <message>
        <source>No change seen at %1 other instants.</source>
        <translation>Ohne Befund bei %1 weiteren Übergängen.</translation>
    </message>
    <message>
        <source>Found, %1 % sure: %2.</source>
        <translation>Gefunden, zu %1 % sicher: %2.</translation>
    </message>
    <message>
        <source> at the moment after</source>
        <translation> im Augenblick danach</translation>
    </message>
    <message>
        <source>Bias until this moment, percent of a unit</source>
        <translation>Einseitige Verzerrung bis zu diesem Augenblick, Prozent einer Schrittlänge</translation>
    </message>
    <message>
        <source>%1 min before</source>
        <translation>%1 min davor</translation>
    </message>
    <message>
        <source>this moment</source>
        <translation>dieser Augenblick</translation>
    </message>
    <message>
        <source>Cyclic, largest</source>
        <translation>Zyklisch, größte</translation>
    </message>
    <message>
        <source>Lost marks, filled spaces</source>
        <translation>Verloren, gefüllt</translation>
    </message>
    <message>
        <source>What comes back with a shaft, gear or motor: amplitude, and how often a second.</source>
        <translation>Was mit einer Welle, einem Zahnrad oder dem Motor wiederkehrt: Amplitude, und wie oft in der Sekunde.</translation>
    </message>
    <message>
        <source>Marks of the tape that did not come: sensing pins, transfer levers. Spaces that came as marks: pins or levers slow to return. Both are held against its text.</source>
        <translation>Zeichenschritte des Streifens, die nicht kamen: Fühlstifte, Übertragungshebel. Trennschritte, die als Zeichenstrom kamen: Stifte oder Hebel, die träge zurückgehen. Beides gegen seinen Text gehalten.</translation>
    </message>
    <message>
        <source>cannot be told yet</source>
        <translation>noch nicht zu sagen</translation>
    </message>
    <message>
        <source>at %1 Hz</source>
        <translation>bei %1 Hz</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>of %1, %2</source>
        <translation>von %1, %2</translation>
    </message>
    <message>
        <source>marks lost: %1; spaces filled: %2</source>
        <translation>Zeichenschritte verloren: %1; Trennschritte gefüllt: %2</translation>
    </message>
    <message>
        <source>%1; grid for %2</source>
        <translation>%1; Raster für %2</translation>
    </message>
    <message>
        <source>%1; for %2</source>
        <translation>%1; für %2</translation>
    </message>
    <message>
        <source>nominal %1 baud</source>
        <translation>Nennwert %1 Baud</translation>
    </message>
    <message>
        <source>the sender&apos;s own speed</source>
        <translation>Eigengeschwindigkeit</translation>
    </message>
    <message>
        <source>Measured against the nominal unit: at a wrong speed the later instants are further off. The plot of displacement takes the sender&apos;s own speed instead.</source>
        <translation>Gemessen gegen die Nennschrittlänge: Bei falscher Geschwindigkeit weichen die späteren Übergänge weiter ab. Das Bild der Abweichung nimmt stattdessen die eigene Geschwindigkeit des Senders.</translation>
    </message>
    <message>
        <source>A lozenge is the mean at the moment before (B). From it a stroke leads to the mean of now; where there is none, the two do not differ by more than chance.</source>
        <translation>Eine Raute ist der Mittelwert im Augenblick vorher (B). Von ihr führt ein Strich zum Mittelwert von jetzt; fehlt er, so unterscheiden sich die beiden nicht mehr als durch Zufall.</translation>
    </message>
    <message>
        <source>own speed</source>
        <translation>eigene Geschw.</translation>
    </message>
    <message>
        <source>Taller</source>
        <translation>Höher</translation>
    </message>
    <message>
        <source>Give the findings the height of the readings, or take it back (Shift+F)</source>
        <translation>Den Befunden die Höhe der Messwerte geben oder sie zurücknehmen (Umschalt+F)</translation>
    </message>
    <message>
        <source>Taller findings</source>
        <translation>Befunde höher</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>Nennwert</translation>
    </message>
    <message>
        <source>text learned</source>
        <translation>Text gelernt</translation>
    </message>
    <message>
        <source>, due “%1”</source>
        <translation>, fällig „%1“</translation>
    </message>
    <message>
        <source>learned from its rounds</source>
        <translation>aus seinen Runden gelernt</translation>
    </message>
    <message>
        <source>recognised</source>
        <translation>erkannt</translation>
    </message>
    <message>
        <source>yet a fault, see findings</source>
        <translation>doch ein Fehler, siehe Befunde</translation>
    </message>
    <message>
        <source>see findings</source>
        <translation>siehe Befunde</translation>
    </message>
    <message>
        <source>“Sure”: how often such a finding was right on simulated machines with one known fault each; with several, maybe less often. It holds for all that stands under “Look at” together, not for one of them. “Minor”: within its limit.</source>
        <translation>„Sicher“: wie oft ein solcher Befund an simulierten Maschinen mit je einem bekannten Fehler richtig war; bei mehreren vielleicht seltener. Es gilt für alles unter „Zu prüfen“ zusammen, nicht für eines davon. „Gering“: in seiner Grenze.</translation>
    </message>
    <message>
        <source>Show or hide the two cursors (C); one that is dragged catches on edges, or where none is on boundaries; with Ctrl it does not</source>
        <translation>Die beiden Messmarken zeigen oder verbergen (C); eine gezogene rastet an Flanken ein, wo keine ist an Grenzen; mit Strg nicht</translation>
    </message>
    <message>
        <source>, cannot be told</source>
        <translation>, nicht zu sagen</translation>
    </message>
    <message>
        <source>“%1” is printed beside these holes</source>
        <translation>steht „%1“ neben diesen Löchern</translation>
    </message>
    <message>
        <source>this is printed beside the holes of “%1”</source>
        <translation>dieses neben den Löchern von „%1“</translation>
    </message>
    <message>
        <source>. On a tape that prints six behind, </source>
        <translation>. Auf einem Streifen, der sechs dahinter druckt, </translation>
    </message>
    <message>
        <source>Out is an instant beyond the start-stop limit and, while bias or end is out of limits, one beyond the limit of bias (to mark) or end (to space). A mean is also out beyond that while the worst instant is out, and only when the whole of its uncertainty is beyond; a question mark stands where that cannot be told.</source>
        <translation>Außerhalb ist ein Übergang jenseits der Start-Stopp-Grenze und, solange einseitige Verzerrung oder Endverzerrung außerhalb liegt, einer jenseits der Grenze der einseitigen Verzerrung (zum Zeichenstrom) oder der Endverzerrung (zum Trennstrom). Ein Mittelwert ist jenseits davon auch außerhalb, solange der schlimmste Übergang es ist, und nur, wenn seine ganze Unsicherheit jenseits liegt; ein Fragezeichen steht, wo das nicht zu sagen ist.</translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>Character period</source>
        <translation>Zeichendauer</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>verkehrt</translation>
    </message>
    <message>
        <source>Framing errors, feed slips</source>
        <translation>ohne Sperrschritt, Vorschub</translation>
    </message>
    <message>
        <source>Characters whose stop is not at mark: wrong speed, lost elements, a broken signal. And, held against the text of the tape, characters sent twice or passed over: feed wheel, pawl, tape.</source>
        <translation>Zeichen, deren Sperrschritt kein Zeichenstrom ist: falsche Geschwindigkeit, verlorene Schritte, gestörtes Signal. Und, gegen den Text des Streifens gehalten, Zeichen, die zweimal gesendet oder übergangen wurden: Vorschubrad, Klinke, Streifen.</translation>
    </message>
    <message>
        <source>slip of the feed</source>
        <translation>Vorschubfehler</translation>
    </message>
    <message>
        <source>slips of the feed</source>
        <translation>Vorschubfehler</translation>
    </message>
    <message>
        <source>○ lost mark</source>
        <translation>○ verlorener Zeichenschritt</translation>
    </message>
    <message>
        <source>✕ filled space</source>
        <translation>✕ gefüllter Trennschritt</translation>
    </message>
    <message>
        <source>─ sent twice</source>
        <translation>─ zweimal gesendet</translation>
    </message>
    <message>
        <source>│ passed over</source>
        <translation>│ übergangen</translation>
    </message>
    <message>
        <source>underlined: wrong case</source>
        <translation>unterstrichen: falsche Reihe</translation>
    </message>
    <message>
        <source>%1 on this tape: %2</source>
        <translation>%1 auf diesem Streifen: %2</translation>
    </message>
    <message>
        <source>, prints as a letter because the feed passed over the shift to figures</source>
        <translation>, druckt als Buchstabe, weil der Vorschub die Umschaltung auf Ziffern überging</translation>
    </message>
    <message>
        <source>, prints as a figure because the feed passed over the shift to letters</source>
        <translation>, druckt als Ziffer, weil der Vorschub die Umschaltung auf Buchstaben überging</translation>
    </message>
    <message>
        <source>, sent once before: the tape did not move</source>
        <translation>, schon einmal gesendet: der Streifen blieb stehen</translation>
    </message>
    <message>
        <source>, passed over before it: </source>
        <translation>, davor übergangen: </translation>
    </message>
    <message>
        <source>, %1 passed over before it</source>
        <translation>, davor %1 übergangen</translation>
    </message>
    <message>
        <source>%1 and %2 out</source>
        <translation>%1 und %2 außerhalb</translation>
    </message>
    <message>
        <source>Slips of the feed, of %1</source>
        <translation>Vorschubfehler, von %1</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 Befunde</translation>
    </message>
    <message>
        <source>? see findings</source>
        <translation>? s. Befunde</translation>
    </message>
    <message>
        <source>Swing of speed, %1 Hz</source>
        <translation>Schwanken, %1 Hz</translation>
    </message>
    <message>
        <source>% late (up) at the speed over the last %1</source>
        <translation>% spät (oben) bei der Geschwindigkeit über die letzten %1</translation>
    </message>
    <message>
        <source>% speed</source>
        <translation>% Geschw.</translation>
    </message>
    <message>
        <source>Speed error, mean</source>
        <translation>Geschwindigkeitsfehler, Mittel</translation>
    </message>
    <message>
        <source>Wander, either way</source>
        <translation>Wandern, beidseits</translation>
    </message>
    <message>
        <source>wanders %1 %</source>
        <translation>wandert %1 %</translation>
    </message>
    <message>
        <source>Speed until this moment, percent off its mean, over %1 characters</source>
        <translation>Geschwindigkeit bis zu diesem Augenblick, Prozent neben ihrem Mittel, über %1 Zeichen</translation>
    </message>
    <message>
        <source>Speed until this moment, percent off nominal, over %1 characters</source>
        <translation>Geschwindigkeit bis zu diesem Augenblick, Prozent neben der Nenngeschwindigkeit, über %1 Zeichen</translation>
    </message>
    <message>
        <source>Trail of the speed</source>
        <translation>Verlauf der Geschwindigkeit</translation>
    </message>
    <message>
        <source>Show the speed in place of the bias: its error in percent, each point taken over the last %1 characters</source>
        <translation>Statt der einseitigen Verzerrung die Geschwindigkeit zeigen: ihr Fehler in Prozent, jeder Punkt über die letzten %1 Zeichen</translation>
    </message>
    <message>
        <source>about its mean, % of it, over %1 characters</source>
        <translation>um ihr Mittel, % davon, über %1 Zeichen</translation>
    </message>
    <message>
        <source>% of its mean</source>
        <translation>% ihres Mittels</translation>
    </message>
    <message>
        <source>% of nominal, over %1 characters</source>
        <translation>% der Nenngeschwindigkeit, über %1 Zeichen</translation>
    </message>
    <message>
        <source>marks of level %1 lost</source>
        <translation>Zeichenschritte von Schritt %1 verloren</translation>
    </message>
    <message>
        <source>spaces of level %1 filled</source>
        <translation>Trennschritte von Schritt %1 gefüllt</translation>
    </message>
    <message>
        <source>level %1 late or early</source>
        <translation>Schritt %1 zu spät oder zu früh</translation>
    </message>
    <message>
        <source>Measured at the sender&apos;s own speed, so that a wrong speed moves nothing here; where a fault pulls at the speed as read, at the speed without it. The grid takes the nominal unit instead.</source>
        <translation>Gemessen bei der eigenen Geschwindigkeit des Senders, so dass eine falsche Geschwindigkeit hier nichts verschiebt; wo ein Fehler an der gelesenen Geschwindigkeit zieht, bei der ohne ihn. Das Raster nimmt stattdessen die Nennschrittlänge.</translation>
    </message>
    <message>
        <source>% late (up) at the speed without the fault</source>
        <translation>% spät (oben) bei der Geschwindigkeit ohne den Fehler</translation>
    </message>
    <message>
        <source>% late, fault set aside</source>
        <translation>% spät, ohne den Fehler</translation>
    </message>
    <message>
        <source>fault set aside</source>
        <translation>ohne den Fehler</translation>
    </message>
    <message>
        <source>signal to noise %1 dB</source>
        <translation>Signal zu Rauschen %1 dB</translation>
    </message>
    <message>
        <source>Largest displacement after the mean speed is taken out: contacts, cams, levers. Where a wrong speed works against bias or end, or a fault pulls at the speed as read, the figure may be above the gross one.</source>
        <translation>Größte Abweichung ohne den Anteil der mittleren Geschwindigkeit: Kontakte, Nocken, Hebel. Wo eine falsche Geschwindigkeit der einseitigen oder der Endverzerrung entgegenwirkt oder ein Fehler an der gelesenen Geschwindigkeit zieht, kann sie über der gesamten liegen.</translation>
    </message>
    <message>
        <source>Percent of a unit at the speed without the fault, late positive</source>
        <translation>Prozent der Schrittlänge bei der Geschwindigkeit ohne den Fehler, zu spät ist positiv</translation>
    </message>
    <message>
        <source>Percent of a unit at the sender&apos;s own speed, late positive</source>
        <translation>Prozent der Schrittlänge bei eigener Geschwindigkeit des Senders, zu spät ist positiv</translation>
    </message>
    <message>
        <source>from here each point %1</source>
        <translation>ab hier jeder Punkt %1</translation>
    </message>
    <message>
        <source>Stop, spread rms</source>
        <translation>Sperrschritt, Streuung eff.</translation>
    </message>
    <message>
        <source>spread %1</source>
        <translation>Streuung %1</translation>
    </message>
    <message>
        <source>, the window of %1 being too short for a proof</source>
        <translation>, da das Fenster von %1 für einen Nachweis zu kurz ist</translation>
    </message>
    <message>
        <source>window all: each point over the last %1</source>
        <translation>Fenster alle: jeder Punkt über die letzten %1</translation>
    </message>
    <message>
        <source>Of a long window the dots are its newest characters; short strokes are the earliest and the latest of all.</source>
        <translation>Bei einem langen Fenster sind die Punkte seine neuesten Zeichen; kurze Striche sind der früheste und der späteste von allen.</translation>
    </message>
    <message>
        <source>bounce</source>
        <translation>Prellung</translation>
    </message>
    <message>
        <source>bounces</source>
        <translation>Prellungen</translation>
    </message>
    <message>
        <source>instants or start scatter</source>
        <translation>Übergänge oder Anlauf streuen</translation>
    </message>
    <message>
        <source>? window %1</source>
        <translation>? Fenster %1</translation>
    </message>
    <message>
        <source>by a level</source>
        <translation>durch einen Schritt</translation>
    </message>
    <message>
        <source>partly a level</source>
        <translation>zum Teil ein Schritt</translation>
    </message>
    <message>
        <source>not the eccentric</source>
        <translation>nicht der Exzenter</translation>
    </message>
    <message>
        <source>not by the contact alone</source>
        <translation>nicht nur der Kontakt</translation>
    </message>
    <message>
        <source>%1, see findings</source>
        <translation>%1, siehe Befunde</translation>
    </message>
    <message>
        <source>extremes</source>
        <translation>Äußerste</translation>
    </message>
    <message>
        <source>%1: %2 % (%3; %4)</source>
        <translation>%1: %2 % (%3; %4)</translation>
    </message>
    <message>
        <source>, none marked here</source>
        <translation>, hier nicht markiert</translation>
    </message>
    <message>
        <source>Grey: the other characters of the window.</source>
        <translation>Grau: die anderen Zeichen des Fensters.</translation>
    </message>
    <message>
        <source> Dashed: the same character before.</source>
        <translation> Gestrichelt: dasselbe Zeichen vorher.</translation>
    </message>
    <message>
        <source>Too few characters yet to tell the cause of what is out.</source>
        <translation>Noch zu wenige Zeichen, um die Ursache dessen zu nennen, was außerhalb liegt.</translation>
    </message>
    <message>
        <source> dBFS</source>
        <translation> dBFS</translation>
    </message>
    <message>
        <source>Characters a minute while the tape runs without pause: transmitting shaft and clutch.</source>
        <translation>Zeichen je Minute, während der Streifen ohne Pause läuft: Sendewelle und Kupplung.</translation>
    </message>
    <message>
        <source>%1: nothing periodic stands out of the scatter.</source>
        <translation>%1: Nichts Periodisches hebt sich aus der Streuung.</translation>
    </message>
    <message>
        <source>not final</source>
        <translation>nicht endgültig</translation>
    </message>
    <message>
        <source>not final: it falls if more characters show something periodic in it</source>
        <translation>nicht endgültig: Sie sinkt, wenn mehr Zeichen etwas Periodisches darin zeigen</translation>
    </message>
    <message>
        <source>framing errors: %1 of %2 characters; feed slips: %3 of %4 characters</source>
        <translation>ohne Sperrschritt: %1 von %2 Zeichen; Schlupf des Vorschubs: %3 von %4 Zeichen</translation>
    </message>
    <message>
        <source>No cause is told without a reading.</source>
        <translation>Ohne Messwert wird keine Ursache genannt.</translation>
    </message>
    <message>
        <source>No characters.</source>
        <translation>Keine Zeichen.</translation>
    </message>
    <message>
        <source>Longest bounce</source>
        <translation>Längstes Prellen</translation>
    </message>
    <message>
        <source>Nothing stands out so far.</source>
        <translation>Bisher fällt nichts auf.</translation>
    </message>
    <message>
        <source>, the tape over %1</source>
        <translation>, Streifen %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>grey: cannot tell, too close to a slip</source>
        <translation>grau: nicht zu entscheiden, zu nah an einem Schlupf</translation>
    </message>
    <message>
        <source>, not what the text has here, but too close to a slip to say why</source>
        <translation>, nicht was der Text hier hat, aber zu nah an einem Schlupf, um zu sagen, warum</translation>
    </message>
    <message>
        <source>The last %1 characters with the slips of the feed: [ ] sent twice, ( ) passed over.</source>
        <translation>Die letzten %1 Zeichen mit dem Schlupf des Vorschubs: [ ] zweimal gesendet, ( ) übergangen.</translation>
    </message>
    <message>
        <source>Newest</source>
        <translation>Neueste</translation>
    </message>
    <message>
        <source>Back to the newest characters (End)</source>
        <translation>Zurück zu den neuesten Zeichen (Ende)</translation>
    </message>
    <message>
        <source>%1 back: </source>
        <translation>%1 zurück: </translation>
    </message>
    <message>
        <source>, elsewhere on the tape (turn the wheel)</source>
        <translation>, anderswo auf dem Streifen (am Rad drehen)</translation>
    </message>
    <message>
        <source>findings.md#marks-that-get-lost</source>
        <comment>page of the help</comment>
        <translation>findings.md#zeichenschritte-die-verloren-gehen</translation>
    </message>
    <message>
        <source>findings.md#when-the-feed-slips</source>
        <comment>page of the help</comment>
        <translation>findings.md#wenn-der-vorschub-rutscht</translation>
    </message>
    <message>
        <source>connect.md#levels-and-grounds</source>
        <comment>page of the help</comment>
        <translation>connect.md#pegel-und-masse</translation>
    </message>
    <message>
        <source>Changed: by more than twice its uncertainty; about one report in a hundred has such a row though nothing was changed. None seen: within its uncertainty. Unsure: between the two. Instants: mean displacement in percent of a unit, late positive, each against the sender&apos;s own speed; a fault that makes that read wrong is set aside first.</source>
        <translation>Verändert: um mehr als das Doppelte der Unsicherheit; etwa ein Bericht von hundert hat eine solche Zeile, obwohl nichts verändert wurde. Ohne Befund: innerhalb der Unsicherheit. Unsicher: dazwischen. Übergänge: mittlere Abweichung in Prozent einer Schrittlänge, zu spät ist positiv, jede gegen die eigene Geschwindigkeit des Senders; ein Fehler, der diese falsch lesen lässt, wird vorher beiseitegelassen.</translation>
    </message>
    <message>
        <source>coupling %1 Hz evened out</source>
        <translation>Kopplung %1 Hz ausgeglichen</translation>
    </message>
    <message>
        <source>feed slips</source>
        <translation>Vorschub rutscht</translation>
    </message>
</context>
<context>
    <name>trueunit::AppearanceDialog</name>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>wie die Arbeitsumgebung</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Size of everything</source>
        <translation>&amp;Größe von allem</translation>
    </message>
    <message>
        <source>Language, size and colours</source>
        <translation>Sprache, Größe und Farben</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark, for a dim workshop</source>
        <translation>dunkel, für eine dämmrige Werkstatt</translation>
    </message>
    <message>
        <source>They are taken up when the program starts the next time. Reports are always light.</source>
        <translation>Sie gelten ab dem nächsten Programmstart. Berichte sind immer hell.</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
</context>
<context>
    <name>trueunit::BenchLog</name>
    <message>
        <source>The frame frozen on %1 had not been kept when the program ended; Shift+Space brings it back.</source>
        <translation>Das am %1 festgehaltene Bild war beim Ende des Programms nicht aufbewahrt; Umschalt+Leertaste holt es zurück.</translation>
    </message>
</context>
<context>
    <name>trueunit::CheckDialog</name>
    <message>
        <source>Check in &amp;memory</source>
        <translation>Im &amp;Speicher prüfen</translation>
    </message>
    <message>
        <source>Check through the &amp;cable</source>
        <translation>Über das &amp;Kabel prüfen</translation>
    </message>
    <message>
        <source>Self-check</source>
        <translation>Selbstprüfung</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Sound input</source>
        <translation>Toneingang</translation>
    </message>
    <message>
        <source>Sound output</source>
        <translation>Tonausgang</translation>
    </message>
    <message>
        <source>Reference tone</source>
        <translation>Bezugston</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source> Hz</source>
        <translation> Hz</translation>
    </message>
    <message>
        <source>In memory: known signals, no sound card. Through the cable: a lead from the sound output to the sound input, nothing else connected to either; take the loop&apos;s lead off first. With the frequency of a reference tone, let it play into the input for 12 s, then put the cable in.</source>
        <translation>Im Speicher: bekannte Signale, ohne Soundkarte. Über das Kabel: eine Leitung vom Tonausgang zum Toneingang, sonst nichts angeschlossen; vorher die Leitung des Linienstromkreises abziehen. Mit der Frequenz eines Bezugstons: ihn 12 s in den Eingang spielen, dann das Kabel stecken.</translation>
    </message>
    <message>
        <source>&amp;Output</source>
        <translation>&amp;Ausgang</translation>
    </message>
    <message>
        <source>&amp;Input</source>
        <translation>&amp;Eingang</translation>
    </message>
    <message>
        <source>&amp;Reference tone</source>
        <translation>&amp;Bezugston</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>No self-check has been made yet.</source>
        <translation>Es wurde noch keine Selbstprüfung gemacht.</translation>
    </message>
    <message>
        <source>Known signals are being read in memory…</source>
        <translation>Bekannte Signale werden im Speicher gelesen …</translation>
    </message>
    <message>
        <source> If it is being listened to, choose the demonstration as input first.</source>
        <translation> Wird gerade darauf gehört, zuerst die Vorführung als Eingang wählen.</translation>
    </message>
    <message>
        <source>The sound card is being checked…</source>
        <translation>Die Soundkarte wird geprüft …</translation>
    </message>
    <message>
        <source>There is no sound input.</source>
        <translation>Es gibt keinen Toneingang.</translation>
    </message>
    <message>
        <source>There is no sound output.</source>
        <translation>Es gibt keinen Tonausgang.</translation>
    </message>
</context>
<context>
    <name>trueunit::ClockDialog</name>
    <message>
        <source>Let a tone of exactly known frequency play into the input for at least ten seconds, then measure. The trim holds for this card at this sample rate, and is noted with every reading.</source>
        <translation>Einen Ton genau bekannter Frequenz mindestens zehn Sekunden in den Eingang spielen, dann messen. Der Abgleich gilt für diese Karte bei dieser Abtastrate und wird mit jedem Messwert vermerkt.</translation>
    </message>
    <message>
        <source>Clock trim</source>
        <translation>Taktabgleich</translation>
    </message>
    <message>
        <source> parts in a million</source>
        <translation> Millionstel</translation>
    </message>
    <message>
        <source>The card&apos;s clock is fast by</source>
        <translation>Der Takt der Karte geht vor um</translation>
    </message>
    <message>
        <source> Hz</source>
        <translation> Hz</translation>
    </message>
    <message>
        <source>Reference tone</source>
        <translation>Bezugston</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>The card&apos;s clock is &amp;fast by</source>
        <translation>Der Takt der Karte geht &amp;vor um</translation>
    </message>
    <message>
        <source>Reference &amp;tone</source>
        <translation>Bezugs&amp;ton</translation>
    </message>
    <message>
        <source>There is no input yet; choose one first.</source>
        <translation>Es gibt noch keinen Eingang; zuerst einen wählen.</translation>
    </message>
    <message>
        <source>The clock is %1 by %2 ± %3 parts in a million, by %4 s of the tone.</source>
        <translation>Der Takt geht um %2 ± %3 Millionstel %1, nach %4 s des Tons.</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>fast</source>
        <translation>vor</translation>
    </message>
</context>
<context>
    <name>trueunit::ContactTone</name>
    <message>
        <source>The tone for contacts is off.</source>
        <translation>Der Ton für Kontakte ist aus.</translation>
    </message>
    <message>
        <source>A tone of 3 kHz plays on %1, for contacts off the loop to interrupt.</source>
        <translation>Ein Ton von 3 kHz spielt auf %1, den Kontakte ohne Linie unterbrechen.</translation>
    </message>
    <message>
        <source>The sound output has gone; the tone is off.</source>
        <translation>Der Tonausgang ist verschwunden; der Ton ist aus.</translation>
    </message>
</context>
<context>
    <name>trueunit::Ear</name>
    <message>
        <source>The tone is off.</source>
        <translation>Der Ton ist aus.</translation>
    </message>
    <message>
        <source>By ear on %1: one beat a second for each percent, none at zero; bright is marks too long, deep is marks too short.</source>
        <translation>Nach Gehör auf %1: eine Schwebung je Sekunde für jedes Prozent, keine bei null; hell heißt Zeichenstrom zu lang, tief heißt zu kurz.</translation>
    </message>
    <message>
        <source>The tone is muted.</source>
        <translation>Der Ton ist stumm.</translation>
    </message>
    <message>
        <source>The tone is no longer muted.</source>
        <translation>Der Ton ist nicht mehr stumm.</translation>
    </message>
    <message>
        <source>Volume of the tone %1 %.</source>
        <translation>Lautstärke des Tons %1 %.</translation>
    </message>
    <message>
        <source>The tone will play on %1.</source>
        <translation>Der Ton wird auf %1 spielen.</translation>
    </message>
    <message>
        <source>The sound output has gone; the tone is off.</source>
        <translation>Der Tonausgang ist verschwunden; der Ton ist aus.</translation>
    </message>
    <message>
        <source>The tone is heard in the measured input and spoils the readings: play it on another output, or choose an input that does not record what is played.</source>
        <translation>Der Ton ist im gemessenen Eingang zu hören und verdirbt die Messwerte: auf einem anderen Ausgang spielen, oder einen Eingang wählen, der das Gespielte nicht aufnimmt.</translation>
    </message>
</context>
<context>
    <name>trueunit::FindOnPage</name>
    <message>
        <source>Find on this page (Ctrl+F, Enter for the next)</source>
        <translation>Auf dieser Seite suchen (Strg+F, Eingabe: weiter)</translation>
    </message>
    <message>
        <source>Find on this page</source>
        <translation>Auf dieser Seite suchen</translation>
    </message>
    <message>
        <source>not on this page</source>
        <translation>nicht auf dieser Seite</translation>
    </message>
</context>
<context>
    <name>trueunit::FirstSteps</name>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>To work</source>
        <translation>An die Arbeit</translation>
    </message>
</context>
<context>
    <name>trueunit::FrameWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>%1, taken %2</source>
        <translation>%1, aufgenommen %2</translation>
    </message>
    <message>
        <source>Readings as they were and measured again</source>
        <translation>Messwerte wie sie waren und neu gemessen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Note %1, at %2 units: %3</source>
        <translation>Notiz %1, bei %2 Schritten: %3</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie er war</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>neu gemessen</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Measuring the kept sound with this program…</source>
        <translation>Der aufbewahrte Ton wird mit diesem Programm gemessen …</translation>
    </message>
    <message>
        <source>Measured again from %1 s of kept sound, all learned anew from these: the worst instants seen, and last figures, may differ. %2. %3</source>
        <translation>Aus %1 s aufbewahrtem Ton neu gemessen, alles neu daraus gelernt: Die schlimmsten gesehenen Übergänge und letzte Stellen können abweichen. %2. %3</translation>
    </message>
</context>
<context>
    <name>trueunit::HelpPages</name>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
</context>
<context>
    <name>trueunit::HelpWindow</name>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Connecting a loop</source>
        <translation>Linienstrom anschließen</translation>
    </message>
    <message>
        <source>Off the loop: battery</source>
        <translation>Ohne Linie: Batterie</translation>
    </message>
    <message>
        <source>Off the loop: tone</source>
        <translation>Ohne Linie: Ton</translation>
    </message>
    <message>
        <source>Live loop: quench</source>
        <translation>In der Linie: Löschung</translation>
    </message>
    <message>
        <source>Live loop: optocoupler</source>
        <translation>In der Linie: Optokoppler</translation>
    </message>
    <message>
        <source>Live loop: transformer</source>
        <translation>In der Linie: Übertrager</translation>
    </message>
    <message>
        <source>Speed and unit</source>
        <translation>Geschwindigkeit, Schrittlänge</translation>
    </message>
    <message>
        <source>Bias</source>
        <translation>Einseitige Verzerrung</translation>
    </message>
    <message>
        <source>End distortion</source>
        <translation>Endverzerrung</translation>
    </message>
    <message>
        <source>Start-stop, gross</source>
        <translation>Start-Stopp, gesamt</translation>
    </message>
    <message>
        <source>Start-stop, synchronous</source>
        <translation>Start-Stopp, synchron</translation>
    </message>
    <message>
        <source>Displacement by instant</source>
        <translation>Abweichung je Übergang</translation>
    </message>
    <message>
        <source>Characteristic</source>
        <translation>Charakteristisch</translation>
    </message>
    <message>
        <source>Cyclic</source>
        <translation>Periodisch</translation>
    </message>
    <message>
        <source>Scatter (fortuitous)</source>
        <translation>Streuung (regellos)</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>Receiving margin</source>
        <translation>Empfangsspielraum</translation>
    </message>
    <message>
        <source>Contact bounce</source>
        <translation>Kontaktprellen</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Adjusting</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Tape and text</source>
        <translation>Streifen und Text</translation>
    </message>
    <message>
        <source>Cards and limits</source>
        <translation>Karten und Grenzen</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Self-check</source>
        <translation>Selbstprüfung</translation>
    </message>
    <message>
        <source>Glossary</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Contents of the help</source>
        <translation>Inhalt der Hilfe</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>What this window is for (F1)</source>
        <translation>Wozu dieses Fenster da ist (F1)</translation>
    </message>
    <message>
        <source>en</source>
        <comment>folder of the help&apos;s language</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>As PDF…</source>
        <translation>Als PDF …</translation>
    </message>
    <message>
        <source>This page as a file to print (Ctrl+P)</source>
        <translation>Diese Seite als Datei zum Drucken (Strg+P)</translation>
    </message>
    <message>
        <source>This page is in %1.</source>
        <translation>Diese Seite ist in %1.</translation>
    </message>
    <message>
        <source>PDF, A4 (*.pdf)</source>
        <translation>PDF, A4 (*.pdf)</translation>
    </message>
    <message>
        <source>PDF, Letter (*.pdf)</source>
        <translation>PDF, Letter (*.pdf)</translation>
    </message>
    <message>
        <source>Write this page to</source>
        <translation>Diese Seite schreiben nach</translation>
    </message>
</context>
<context>
    <name>trueunit::KeysHelp</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>List of keys</source>
        <translation>Liste der Tasten</translation>
    </message>
    <message>
        <source>Caution: the signal loop is hazardous live, and its current limit does not make it safe. Isolate between loop and sound card, and unplug the machine before hands or tools go in. Local codes and licensed practice come first.</source>
        <translation>Vorsicht: Der Linienstromkreis führt gefährliche Spannung, und seine Strombegrenzung macht ihn nicht sicher. Zwischen Linienstromkreis und Soundkarte galvanisch trennen, und den Netzstecker ziehen, bevor Hände oder Werkzeug hineingehen. Örtliche Vorschriften und das Fachhandwerk gehen vor.</translation>
    </message>
    <message>
        <source>full stop</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>In a panel, while it has the focus</source>
        <translation>In einem Feld, solange es den Fokus hat</translation>
    </message>
</context>
<context>
    <name>trueunit::LimitsDialog</name>
    <message>
        <source>&amp;Bias</source>
        <translation>&amp;Einseitige Verzerrung</translation>
    </message>
    <message>
        <source>&amp;End distortion</source>
        <translation>E&amp;ndverzerrung</translation>
    </message>
    <message>
        <source>Start-stop, &amp;gross</source>
        <translation>Start-Stopp, &amp;gesamt</translation>
    </message>
    <message>
        <source>Start-stop, &amp;synchronous</source>
        <translation>Start-Stopp, &amp;synchron</translation>
    </message>
    <message>
        <source>S&amp;peed error</source>
        <translation>Ges&amp;chwindigkeitsfehler</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>&amp;Keep as my own</source>
        <translation>Als &amp;eigene behalten</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>Ent&amp;fernen</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Set of limits</source>
        <translation>Satz von Grenzen</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Se&amp;t</source>
        <translation>Sat&amp;z</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>T&amp;itle</source>
        <translation>T&amp;itel</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Changed: a title of its own keeps it as a set of yours.</source>
        <translation>Geändert: Unter einem eigenen Titel wird es als eigener Satz behalten.</translation>
    </message>
    <message>
        <source>Kept as your own.</source>
        <translation>Als eigene behalten.</translation>
    </message>
</context>
<context>
    <name>trueunit::LogbookWindow</name>
    <message>
        <source>findings, “notes”</source>
        <translation>Befunde, „Notizen“</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Search machines, visits and notes (Ctrl+F)</source>
        <translation>Maschinen, Besuche und Notizen suchen (Strg+F)</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suche</translation>
    </message>
    <message>
        <source>Since this day</source>
        <translation>Seit diesem Tag</translation>
    </message>
    <message>
        <source>Until this day</source>
        <translation>Bis zu diesem Tag</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>any finding</source>
        <translation>jeder Befund</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Visits and their frames</source>
        <translation>Besuche und ihre Bilder</translation>
    </message>
    <message>
        <source>visit, frame</source>
        <translation>Besuch, Bild</translation>
    </message>
    <message>
        <source>bias %</source>
        <translation>einseitig %</translation>
    </message>
    <message>
        <source>end %</source>
        <translation>Ende %</translation>
    </message>
    <message>
        <source>gross %</source>
        <translation>gesamt %</translation>
    </message>
    <message>
        <source>speed %</source>
        <translation>Geschw. %</translation>
    </message>
    <message>
        <source>Words of the visit</source>
        <translation>Worte zum Besuch</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gesichert.</translation>
    </message>
    <message>
        <source>To the search</source>
        <translation>Zur Suche</translation>
    </message>
    <message>
        <source>Open frame</source>
        <translation>Bild öffnen</translation>
    </message>
    <message>
        <source>Open the chosen frame as it was, and measure it again</source>
        <translation>Das gewählte Bild öffnen, wie es war, und neu messen</translation>
    </message>
    <message>
        <source>The chosen frame shows the machine before the repair</source>
        <translation>Das gewählte Bild zeigt die Maschine vor der Instandsetzung</translation>
    </message>
    <message>
        <source>The chosen frame shows the machine after the repair</source>
        <translation>Das gewählte Bild zeigt die Maschine nach der Instandsetzung</translation>
    </message>
    <message>
        <source>Report…</source>
        <translation>Bericht …</translation>
    </message>
    <message>
        <source>Write the report of the chosen visit, PNG or PDF</source>
        <translation>Den Bericht des gewählten Besuchs schreiben, PNG oder PDF</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Ausgeben …</translation>
    </message>
    <message>
        <source>Export the chosen visit: archive, CSV or JSON</source>
        <translation>Den gewählten Besuch ausgeben: Archiv, CSV oder JSON</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen …</translation>
    </message>
    <message>
        <source>Take in the archive of a visit</source>
        <translation>Das Archiv eines Besuchs einlesen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>How the logbook is kept</source>
        <translation>Wie das Logbuch geführt wird</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>List the keys of this window</source>
        <translation>Die Tasten dieses Fensters auflisten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the logbook; what was typed is saved</source>
        <translation>Das Logbuch schließen; Getipptes ist gesichert</translation>
    </message>
    <message>
        <source>Choose a frame first.</source>
        <translation>Zuerst ein Bild wählen.</translation>
    </message>
    <message>
        <source>PDF, A4 (*.pdf)</source>
        <translation>PDF, A4 (*.pdf)</translation>
    </message>
    <message>
        <source>PNG, A4 (*.png)</source>
        <translation>PNG, A4 (*.png)</translation>
    </message>
    <message>
        <source>PDF, Letter (*.pdf)</source>
        <translation>PDF, Letter (*.pdf)</translation>
    </message>
    <message>
        <source>PNG, Letter (*.png)</source>
        <translation>PNG, Letter (*.png)</translation>
    </message>
    <message>
        <source>The report of the visit: its place, PDF or PNG</source>
        <translation>Der Bericht des Besuchs: sein Ort, PDF oder PNG</translation>
    </message>
    <message>
        <source>Choose a visit first.</source>
        <translation>Zuerst einen Besuch wählen.</translation>
    </message>
    <message>
        <source>Export the visit to</source>
        <translation>Besuch ausgeben nach</translation>
    </message>
    <message>
        <source>The whole visit (*.zip);;Readings as a table (*.csv);;Readings as JSON (*.json)</source>
        <translation>Der ganze Besuch (*.zip);;Messwerte als Tabelle (*.csv);;Messwerte als JSON (*.json)</translation>
    </message>
    <message>
        <source>The visit is in %1.</source>
        <translation>Der Besuch ist in %1.</translation>
    </message>
    <message>
        <source>Archives of visits (*.zip);;All files (*)</source>
        <translation>Archive von Besuchen (*.zip);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 new frames of %2; %3 were here already.</source>
        <translation>%1 neue Bilder von %2; %3 waren schon hier.</translation>
    </message>
    <message>
        <source>On a frame: open it</source>
        <translation>Auf einem Bild: es öffnen</translation>
    </message>
    <message>
        <source>From the machines to the visits and their words</source>
        <translation>Von den Maschinen zu den Besuchen und ihren Worten</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>in</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>OUT</source>
        <translation>AUSSEN</translation>
    </message>
    <message>
        <source>  repaired</source>
        <translation>  instand gesetzt</translation>
    </message>
    <message>
        <source>  open, no result yet</source>
        <translation>  offen, noch ohne Ergebnis</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>Besuch</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>The logbook is empty; K in the bench window keeps what it shows.</source>
        <translation>Das Logbuch ist leer; K im Messfenster behält, was es zeigt.</translation>
    </message>
    <message>
        <source>Nothing in the logbook fits.</source>
        <translation>Nichts im Logbuch passt.</translation>
    </message>
    <message>
        <source>The newest %1 of %2 frames are shown; narrow the search for others.</source>
        <translation>Die neuesten %1 von %2 Bildern sind gezeigt; für andere die Suche einengen.</translation>
    </message>
    <message>
        <source>%1 of %2 frames</source>
        <translation>%1 von %2 Bildern</translation>
    </message>
    <message>
        <source>%1 in %2. Enter opens a frame, F1 is the help.</source>
        <translation>%1 in %2. Die Eingabetaste öffnet ein Bild, F1 ist die Hilfe.</translation>
    </message>
    <message>
        <source>since any day</source>
        <translation>ab: beliebig</translation>
    </message>
    <message>
        <source>until any day</source>
        <translation>bis: beliebig</translation>
    </message>
    <message>
        <source>A day as %1, or empty for any</source>
        <translation>Ein Tag wie %1; leer: jeder</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>“%1” is not a day; write it as %2, or leave the field empty for any day.</source>
        <translation>„%1“ ist kein Tag; so schreiben: %2, oder das Feld für jeden Tag leer lassen.</translation>
    </message>
    <message>
        <source>The chosen frame now shows the machine before the repair: an open ring.</source>
        <translation>Das gewählte Bild zeigt jetzt die Maschine vor der Instandsetzung: ein offener Ring.</translation>
    </message>
    <message>
        <source>The chosen frame now shows the machine after the repair: a filled ring.</source>
        <translation>Das gewählte Bild zeigt jetzt die Maschine nach der Instandsetzung: ein gefüllter Ring.</translation>
    </message>
    <message>
        <source>The chosen frame carries no mark now.</source>
        <translation>Das gewählte Bild ist jetzt nicht mehr gekennzeichnet.</translation>
    </message>
    <message>
        <source>Mark as before</source>
        <translation>Als „vorher“ merken</translation>
    </message>
    <message>
        <source>Mark as after</source>
        <translation>Als „nachher“ merken</translation>
    </message>
    <message>
        <source>, visit of %1</source>
        <translation>, Besuch vom %1</translation>
    </message>
    <message>
        <source>The report is being written…</source>
        <translation>Der Bericht wird geschrieben…</translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzen</translation>
    </message>
</context>
<context>
    <name>trueunit::MachineBar</name>
    <message>
        <source>automatic</source>
        <translation>auto</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>What the museum or owner calls it; stands on the report (Ctrl+M)</source>
        <translation>Wie Museum oder Besitzer sie nennen; steht auf dem Bericht (Strg+M)</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>What the combinations stand for (Ctrl+E)</source>
        <translation>Wofür die Kombinationen stehen (Strg+E)</translation>
    </message>
    <message>
        <source>Speed, baud</source>
        <translation>Geschw., Bd</translation>
    </message>
    <message>
        <source>Nominal speed; type any from 20 to 200 (Ctrl+B)</source>
        <translation>Nenn-Schrittgeschwindigkeit; jede von 20 bis 200 (Strg+B)</translation>
    </message>
    <message>
        <source>Stop, units</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>Nominal length of the stop; type any from 1 to 2.5 (Ctrl+T)</source>
        <translation>Nennlänge des Sperrschritts; jede von 1 bis 2,5 (Strg+T)</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Readings cover the last so many characters (W)</source>
        <translation>Die Messwerte gelten für die letzten so vielen Zeichen (W)</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>The speed must be a number of baud, or automatic.</source>
        <translation>Die Geschwindigkeit muss eine Zahl in Baud sein, oder auto.</translation>
    </message>
    <message>
        <source>The stop must be a number of units, or automatic.</source>
        <translation>Der Sperrschritt muss eine Zahl von Schrittlängen sein, oder auto.</translation>
    </message>
</context>
<context>
    <name>trueunit::MachineCardDialog</name>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>Hz</source>
        <translation>Hz</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>turns a minute</source>
        <translation>Umdrehungen je Minute</translation>
    </message>
    <message>
        <source>Teeth of the gear on the motor</source>
        <translation>Zähne des Rads am Motor</translation>
    </message>
    <message>
        <source>Teeth of the gear on the transmitting shaft</source>
        <translation>Zähne des Rads an der Sendewelle</translation>
    </message>
    <message>
        <source>Turns of the transmitting shaft</source>
        <translation>Umdrehungen der Sendewelle</translation>
    </message>
    <message>
        <source>turns a character</source>
        <translation>Umdrehungen je Zeichen</translation>
    </message>
    <message>
        <source>Machine card</source>
        <translation>Maschinenkarte</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Kind of motor</source>
        <translation>Art des Motors</translation>
    </message>
    <message>
        <source>synchronous</source>
        <translation>synchron</translation>
    </message>
    <message>
        <source>governed</source>
        <translation>geregelt</translation>
    </message>
    <message>
        <source>teeth on the motor, on the transmitting shaft</source>
        <translation>Zähne am Motor, an der Sendewelle</translation>
    </message>
    <message>
        <source>&amp;Card</source>
        <translation>&amp;Karte</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <source>C&amp;ode</source>
        <translation>C&amp;ode</translation>
    </message>
    <message>
        <source>&amp;Speed</source>
        <translation>&amp;Geschwindigkeit</translation>
    </message>
    <message>
        <source>Sto&amp;p</source>
        <translation>S&amp;perrschritt</translation>
    </message>
    <message>
        <source>&amp;Motor</source>
        <translation>&amp;Motor</translation>
    </message>
    <message>
        <source>M&amp;ains</source>
        <translation>&amp;Netz</translation>
    </message>
    <message>
        <source>Motor t&amp;urns</source>
        <translation>Moto&amp;rdrehzahl</translation>
    </message>
    <message>
        <source>&amp;Gears</source>
        <translation>R&amp;äder</translation>
    </message>
    <message>
        <source>S&amp;haft</source>
        <translation>&amp;Welle</translation>
    </message>
    <message>
        <source>&amp;Use this card</source>
        <translation>Diese Karte &amp;verwenden</translation>
    </message>
    <message>
        <source>&amp;Keep as my own</source>
        <translation>Als &amp;eigene behalten</translation>
    </message>
    <message>
        <source>&amp;No card</source>
        <translation>K&amp;eine Karte</translation>
    </message>
    <message>
        <source>Motor and gears make %1 baud.</source>
        <translation>Motor und Räder ergeben %1 Baud.</translation>
    </message>
    <message>
        <source>Kept in %1.</source>
        <translation>Aufbewahrt in %1.</translation>
    </message>
    <message>
        <source>No card is in use; this one counts once it is used.</source>
        <translation>Es ist keine Karte in Gebrauch; diese gilt erst, wenn sie verwendet wird.</translation>
    </message>
    <message>
        <source>This card is in use.</source>
        <translation>Diese Karte ist in Gebrauch.</translation>
    </message>
    <message>
        <source>No card is in use; this is an example: count teeth and turns of your own machine.</source>
        <translation>Keine Karte ist in Gebrauch; dies ist ein Beispiel: Zähne und Umdrehungen der eigenen Maschine zählen.</translation>
    </message>
    <message>
        <source>Changed: this counts once it is used.</source>
        <translation>Geändert: Dies gilt, sobald es verwendet wird.</translation>
    </message>
</context>
<context>
    <name>trueunit::MachineHistory</name>
    <message>
        <source>Bias, end, gross distortion and speed over the visits</source>
        <translation>Einseitige, End- und Gesamtverzerrung und Geschwindigkeit über die Besuche</translation>
    </message>
    <message>
        <source>repaired</source>
        <translation>instand gesetzt</translation>
    </message>
    <message>
        <source>bias %</source>
        <translation>eins. %</translation>
    </message>
    <message>
        <source>end %</source>
        <translation>Ende %</translation>
    </message>
    <message>
        <source>gross %</source>
        <translation>ges. %</translation>
    </message>
    <message>
        <source>speed %</source>
        <translation>Geschw. %</translation>
    </message>
    <message>
        <source>○ before   ● after the repair   • other frames</source>
        <translation>○&#xa0;vor   ●&#xa0;nach der Instandsetzung   •&#xa0;andere&#xa0;Bilder</translation>
    </message>
</context>
<context>
    <name>trueunit::MainWindow</name>
    <message>
        <source>The signal seems to be on the %1 side; choose that side under Input.</source>
        <translation>Das Signal scheint auf der %1 Seite zu sein; diese Seite unter Eingang wählen.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>linken</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechten</translation>
    </message>
    <message>
        <source>Part of the input was lost and the framing began anew; close other programs that use the sound card.</source>
        <translation>Ein Teil des Eingangs ging verloren, und die Zeichensuche begann neu; andere Programme schließen, die die Soundkarte nutzen.</translation>
    </message>
    <message>
        <source>Frozen %1</source>
        <translation>Festgehalten %1</translation>
    </message>
    <message>
        <source> · live %1</source>
        <translation> · jetzt %1</translation>
    </message>
    <message>
        <source> · space lets go</source>
        <translation> · Leertaste lässt los</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>On the grid: an older or a newer character</source>
        <translation>Auf dem Raster: ein älteres oder neueres Zeichen</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>On the grid: show or hide the two cursors</source>
        <translation>Auf dem Raster: die beiden Messmarken zeigen oder verbergen</translation>
    </message>
    <message>
        <source>Shift+Left, Shift+Right</source>
        <translation>Umschalt+Links, Umschalt+Rechts</translation>
    </message>
    <message>
        <source>On the grid: move cursor A</source>
        <translation>Auf dem Raster: Messmarke A bewegen</translation>
    </message>
    <message>
        <source>Ctrl+Left, Ctrl+Right</source>
        <translation>Strg+Links, Strg+Rechts</translation>
    </message>
    <message>
        <source>On the grid: move cursor B</source>
        <translation>Auf dem Raster: Messmarke B bewegen</translation>
    </message>
    <message>
        <source>+, -, Home</source>
        <translation>+, -, Pos1</translation>
    </message>
    <message>
        <source>On the grid: closer, farther, the whole character</source>
        <translation>Auf dem Raster: näher, weiter, das ganze Zeichen</translation>
    </message>
    <message>
        <source>On the eccentric: turn it a little; with Shift a lot</source>
        <translation>Auf dem Exzenter: ein wenig drehen; mit Umschalt viel</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>On the findings: choose one</source>
        <translation>Auf den Befunden: einen wählen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>On a button: press it</source>
        <translation>Auf einem Knopf: ihn drücken</translation>
    </message>
    <message>
        <source>Freeze</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>Freeze the display, or let it go; measuring goes on</source>
        <translation>Die Anzeige festhalten oder loslassen; die Messung läuft weiter</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Bring back the frame that was let go, with its notes</source>
        <translation>Das losgelassene Bild mit seinen Notizen zurückholen</translation>
    </message>
    <message>
        <source>There is no earlier frame; the space bar freezes one.</source>
        <translation>Es gibt kein früheres Bild; die Leertaste hält eines fest.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Next note</source>
        <translation>Nächste Notiz</translation>
    </message>
    <message>
        <source>Open the next note to change or delete it</source>
        <translation>Die nächste Notiz zum Ändern oder Löschen öffnen</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Write the report page of this moment</source>
        <translation>Die Berichtsseite dieses Augenblicks schreiben</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Choose what to listen to</source>
        <translation>Wählen, worauf gehört wird</translation>
    </message>
    <message>
        <source>Demonstration</source>
        <translation>Vorführung</translation>
    </message>
    <message>
        <source>Play the demonstration from its beginning</source>
        <translation>Die Vorführung von Anfang an spielen</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Open a recording</source>
        <translation>Eine Aufnahme öffnen</translation>
    </message>
    <message>
        <source>Scenario</source>
        <translation>Szenario</translation>
    </message>
    <message>
        <source>Open a scenario file</source>
        <translation>Eine Szenariodatei öffnen</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Neu suchen</translation>
    </message>
    <message>
        <source>Look for sound inputs again</source>
        <translation>Toneingänge neu suchen</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>To the machine&apos;s name</source>
        <translation>Zum Namen der Maschine</translation>
    </message>
    <message>
        <source>Machine card</source>
        <translation>Maschinenkarte</translation>
    </message>
    <message>
        <source>Motor and gears of the machine, and what they make of the speed</source>
        <translation>Motor und Räder der Maschine, und welche Geschwindigkeit sie ergeben</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>To the code</source>
        <translation>Zum Code</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>To the speed</source>
        <translation>Zur Geschwindigkeit</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>To the stop</source>
        <translation>Zum Sperrschritt</translation>
    </message>
    <message>
        <source>Longer window</source>
        <translation>Längeres Fenster</translation>
    </message>
    <message>
        <source>Next longer window of characters, then from the shortest</source>
        <translation>Nächstlängeres Fenster von Zeichen, dann vom kürzesten an</translation>
    </message>
    <message>
        <source>Shorter window</source>
        <translation>Kürzeres Fenster</translation>
    </message>
    <message>
        <source>Next shorter window of characters</source>
        <translation>Nächstkürzeres Fenster von Zeichen</translation>
    </message>
    <message>
        <source>Longer</source>
        <translation>Länger</translation>
    </message>
    <message>
        <source>Turn the simulated eccentric a little: marks longer</source>
        <translation>Den simulierten Exzenter wenig drehen: Zeichenstrom länger</translation>
    </message>
    <message>
        <source>Shorter</source>
        <translation>Kürzer</translation>
    </message>
    <message>
        <source>Turn the simulated eccentric a little: marks shorter</source>
        <translation>Den simulierten Exzenter wenig drehen: Zeichenstrom kürzer</translation>
    </message>
    <message>
        <source>Much longer</source>
        <translation>Viel länger</translation>
    </message>
    <message>
        <source>Turn the simulated eccentric a lot: marks longer</source>
        <translation>Den simulierten Exzenter viel drehen: Zeichenstrom länger</translation>
    </message>
    <message>
        <source>Much shorter</source>
        <translation>Viel kürzer</translation>
    </message>
    <message>
        <source>Turn the simulated eccentric a lot: marks shorter</source>
        <translation>Den simulierten Exzenter viel drehen: Zeichenstrom kürzer</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>To the grid</source>
        <translation>Zum Raster</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Choose the next finding; what it rests on is picked out on grid, plot and tape</source>
        <translation>Den nächsten Befund wählen; worauf er beruht, ist auf Raster, Darstellung und Streifen hervorgehoben</translation>
    </message>
    <message>
        <source>Peaks</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Forget the held peaks of the gauge</source>
        <translation>Die gehaltenen Spitzen der Anzeige vergessen</translation>
    </message>
    <message>
        <source>Gauge only</source>
        <translation>Nur Anzeige</translation>
    </message>
    <message>
        <source>The gauge alone, to be read across the bench</source>
        <translation>Nur die Anzeige, über die Werkbank lesbar</translation>
    </message>
    <message>
        <source>The gauge alone; G or Escape brings the other panels back.</source>
        <translation>Nur die Anzeige; G oder Esc bringt die anderen Felder zurück.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Leave the gauge-only view, or clear the message</source>
        <translation>Die Nur-Anzeige-Ansicht verlassen oder die Meldung löschen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>List all keys</source>
        <translation>Alle Tasten auflisten</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Mark as before</source>
        <translation>Als „vorher“ merken</translation>
    </message>
    <message>
        <source>Mark this moment as &quot;before&quot;, to hold what follows against it</source>
        <translation>Diesen Augenblick als „vorher“ merken, um Folgendes daran zu messen</translation>
    </message>
    <message>
        <source>Forget before</source>
        <translation>„Vorher“ vergessen</translation>
    </message>
    <message>
        <source>Forget the moment marked as &quot;before&quot;</source>
        <translation>Den als „vorher“ gemerkten Augenblick vergessen</translation>
    </message>
    <message>
        <source>Receiving margin</source>
        <translation>Empfangsspielraum</translation>
    </message>
    <message>
        <source>Where a receiver may sample, in the place of the displacement</source>
        <translation>Wo ein Empfänger abtasten darf, anstelle der Abweichung</translation>
    </message>
    <message>
        <source>There is no reading yet that could be marked as &quot;before&quot;.</source>
        <translation>Es gibt noch keinen Messwert, der als „vorher“ zu merken wäre.</translation>
    </message>
    <message>
        <source>No moment is marked as &quot;before&quot;; B marks one.</source>
        <translation>Kein Augenblick ist als „vorher“ gemerkt; B merkt einen.</translation>
    </message>
    <message>
        <source>The moment marked as &quot;before&quot; is forgotten.</source>
        <translation>Der als „vorher“ gemerkte Augenblick ist vergessen.</translation>
    </message>
    <message>
        <source>By ear</source>
        <translation>Nach Gehör</translation>
    </message>
    <message>
        <source>Hear the bias as beats, or be silent</source>
        <translation>Die einseitige Verzerrung als Schwebung hören, oder still sein</translation>
    </message>
    <message>
        <source>Tone for contacts</source>
        <translation>Ton für Kontakte</translation>
    </message>
    <message>
        <source>Play the tone for bare contacts, or stop it</source>
        <translation>Den Ton für bloße Kontakte spielen oder beenden</translation>
    </message>
    <message>
        <source>Tone output</source>
        <translation>Ausgang des Tons</translation>
    </message>
    <message>
        <source>Choose where the tone plays</source>
        <translation>Wählen, wo der Ton spielt</translation>
    </message>
    <message>
        <source>Tone louder</source>
        <translation>Ton lauter</translation>
    </message>
    <message>
        <source>The tone louder</source>
        <translation>Den Ton lauter</translation>
    </message>
    <message>
        <source>Tone softer</source>
        <translation>Ton leiser</translation>
    </message>
    <message>
        <source>The tone softer</source>
        <translation>Den Ton leiser</translation>
    </message>
    <message>
        <source>Mute</source>
        <translation>Stumm</translation>
    </message>
    <message>
        <source>Mute the tone, or no longer</source>
        <translation>Den Ton stumm schalten, oder nicht mehr</translation>
    </message>
    <message>
        <source>No sound output was found.</source>
        <translation>Kein Tonausgang gefunden.</translation>
    </message>
    <message>
        <source>The tone plays on</source>
        <translation>Der Ton spielt auf</translation>
    </message>
    <message>
        <source>, the system&apos;s choice</source>
        <translation>, die Wahl des Systems</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>Anschließen</translation>
    </message>
    <message>
        <source>How to connect a loop safely</source>
        <translation>Wie ein Linienstromkreis sicher angeschlossen wird</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Show the first steps again, on the demonstration</source>
        <translation>Die ersten Schritte noch einmal zeigen, an der Vorführung</translation>
    </message>
    <message>
        <source>Forget settings</source>
        <translation>Einstellungen vergessen</translation>
    </message>
    <message>
        <source>Forget all settings and begin with the usual ones</source>
        <translation>Alle Einstellungen vergessen und mit den üblichen beginnen</translation>
    </message>
    <message>
        <source>&lt;b&gt;What you see:&lt;/b&gt; each character the simulated sender sends, over the grid of ideal units. An edge that comes early or late carries a flag.</source>
        <translation>&lt;b&gt;Was zu sehen ist:&lt;/b&gt; jedes Zeichen des simulierten Senders über dem Raster idealer Schrittlängen. Eine Flanke, die zu früh oder zu spät kommt, trägt eine Fahne.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Watch that:&lt;/b&gt; the bias. At zero the marks are as long as the spaces. F1 explains every reading and how to connect a real loop.</source>
        <translation>&lt;b&gt;Dort hinsehen:&lt;/b&gt; die einseitige Verzerrung. Bei null ist der Zeichenstrom so lang wie der Trennstrom. F1 erklärt jeden Messwert und den Anschluss eines echten Linienstromkreises.</translation>
    </message>
    <message>
        <source>Forget speed, code, window of characters, limits, sound input, recent files and the place of the window? Logbook and reports stay.</source>
        <translation>Geschwindigkeit, Code, Fenster, Grenzen, Toneingang, zuletzt geöffnete Dateien und den Platz des Fensters vergessen? Logbuch und Berichte bleiben.</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>All settings are the usual ones again.</source>
        <translation>Alle Einstellungen sind wieder die üblichen.</translation>
    </message>
    <message>
        <source>There is nothing to freeze yet.</source>
        <translation>Es gibt noch nichts festzuhalten.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>There is no note on a frozen frame; N writes one.</source>
        <translation>Auf keinem festgehaltenen Bild ist eine Notiz; N schreibt eine.</translation>
    </message>
    <message>
        <source>Keep the frozen frame, or this moment, in the logbook</source>
        <translation>Das festgehaltene Bild oder diesen Augenblick im Logbuch behalten</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Open the logbook: machines, visits, frames</source>
        <translation>Das Logbuch öffnen: Maschinen, Besuche, Bilder</translation>
    </message>
    <message>
        <source>The notes of frame %1 in the logbook were brought up to date.</source>
        <translation>Die Notizen von Bild %1 im Logbuch wurden erneuert.</translation>
    </message>
    <message>
        <source>Kept as frame %1, the first of a new visit; Ctrl+L opens the logbook.</source>
        <translation>Als Bild %1 behalten, das erste eines neuen Besuchs; Strg+L öffnet das Logbuch.</translation>
    </message>
    <message>
        <source>Kept as frame %1 of visit %2; Ctrl+L opens the logbook.</source>
        <translation>Als Bild %1 von Besuch %2 behalten; Strg+L öffnet das Logbuch.</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Choose or change the limits</source>
        <translation>Die Grenzen wählen oder ändern</translation>
    </message>
    <message>
        <source>Self-check</source>
        <translation>Selbstprüfung</translation>
    </message>
    <message>
        <source>Check the instrument itself</source>
        <translation>Das Messgerät selbst prüfen</translation>
    </message>
    <message>
        <source>Reference sender</source>
        <translation>Bezugssender</translation>
    </message>
    <message>
        <source>Send a known signal out of the sound output</source>
        <translation>Ein bekanntes Signal über den Tonausgang senden</translation>
    </message>
    <message>
        <source>Keep the recording</source>
        <translation>Aufnahme behalten</translation>
    </message>
    <message>
        <source>Keep the last ten minutes of the input as a sound file</source>
        <translation>Die letzten zehn Minuten des Eingangs als Tondatei behalten</translation>
    </message>
    <message>
        <source>Clock trim</source>
        <translation>Taktabgleich</translation>
    </message>
    <message>
        <source>Trim the clock of the sound card</source>
        <translation>Den Takt der Soundkarte abgleichen</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Judged by %1.</source>
        <translation>Beurteilt nach %1.</translation>
    </message>
    <message>
        <source>There is nothing to keep yet; choose an input first.</source>
        <translation>Es gibt noch nichts zu behalten; zuerst einen Eingang wählen.</translation>
    </message>
    <message>
        <source>Keep the last ten minutes as</source>
        <translation>Die letzten zehn Minuten behalten als</translation>
    </message>
    <message>
        <source>Sound files (*.flac *.wav)</source>
        <translation>Tondateien (*.flac *.wav)</translation>
    </message>
    <message>
        <source>A recording is being kept already.</source>
        <translation>Es wird schon eine Aufnahme geschrieben.</translation>
    </message>
    <message>
        <source>The recording is being kept…</source>
        <translation>Die Aufnahme wird geschrieben …</translation>
    </message>
    <message>
        <source>The clock is trimmed by %1 parts in a million.</source>
        <translation>Der Takt ist um %1 Millionstel abgeglichen.</translation>
    </message>
    <message>
        <source>This recording is silent.</source>
        <translation>Diese Aufnahme ist stumm.</translation>
    </message>
    <message>
        <source>A moment: freeze, notes, report</source>
        <translation>Ein Augenblick: Festhalten, Notizen, Bericht</translation>
    </message>
    <message>
        <source>Input and machine</source>
        <translation>Eingang und Maschine</translation>
    </message>
    <message>
        <source>Window and simulated machine</source>
        <translation>Fenster und simulierte Maschine</translation>
    </message>
    <message>
        <source>While you adjust</source>
        <translation>Beim Einstellen</translation>
    </message>
    <message>
        <source>Help and settings</source>
        <translation>Hilfe und Einstellungen</translation>
    </message>
    <message>
        <source>Help: on the reading under the pointer, else the contents with guide and glossary</source>
        <translation>Hilfe: zum Messwert unter dem Zeiger, sonst das Inhaltsverzeichnis mit Anleitung und Glossar</translation>
    </message>
    <message>
        <source>%1 %2 goes on as before.</source>
        <translation>%1 %2 läuft weiter wie zuvor.</translation>
    </message>
    <message>
        <source>N writes a note, K keeps it, Ctrl+R writes a report.</source>
        <translation>N schreibt eine Notiz, K behält ihn, Strg+R schreibt einen Bericht.</translation>
    </message>
    <message>
        <source>Found on the input: %1</source>
        <translation>Am Eingang gefunden: %1</translation>
    </message>
    <message>
        <source>A recording that plays</source>
        <translation>Eine laufende Aufnahme</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Pause the recording, or let it go on</source>
        <translation>Die Aufnahme anhalten oder weiterlaufen lassen</translation>
    </message>
    <message>
        <source>From the beginning</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Play the recording from its beginning</source>
        <translation>Die Aufnahme von vorn abspielen</translation>
    </message>
    <message>
        <source>Fast</source>
        <translation>Schnell</translation>
    </message>
    <message>
        <source>Play recordings as fast as they can be measured, or in real time</source>
        <translation>Aufnahmen so schnell abspielen, wie sie gemessen werden können, oder in Echtzeit</translation>
    </message>
    <message>
        <source>The recording has ended; from the beginning is Ctrl+Home.</source>
        <translation>Die Aufnahme ist zu Ende; von vorn geht es mit Strg+Pos1.</translation>
    </message>
    <message>
        <source>%1 Ctrl+Home plays it again.</source>
        <translation>%1 Strg+Pos1 spielt sie noch einmal.</translation>
    </message>
    <message>
        <source>Proving it</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <source>%1 It is silent throughout.</source>
        <translation>%1 Sie ist durchweg stumm.</translation>
    </message>
    <message>
        <source>Text of the tape</source>
        <translation>Text des Streifens</translation>
    </message>
    <message>
        <source>Give the text of the tape, so that lost marks can be counted</source>
        <translation>Den Text des Streifens angeben, damit verlorene Zeichenschritte gezählt werden können</translation>
    </message>
    <message>
        <source>The text of the tape is looked for in the signal.</source>
        <translation>Der Text des Streifens wird im Signal gesucht.</translation>
    </message>
    <message>
        <source>The tape is held against its text.</source>
        <translation>Der Streifen wird gegen seinen Text gehalten.</translation>
    </message>
    <message>
        <source>Write a note on the frozen frame: at a cursor, else at the edge furthest out</source>
        <translation>Eine Notiz auf das festgehaltene Bild schreiben: an einer Messmarke, sonst am Übergang, der am weitesten abliegt</translation>
    </message>
    <message>
        <source>Language, size, colours</source>
        <translation>Sprache, Größe, Farben</translation>
    </message>
    <message>
        <source>Language, size and colours of the window</source>
        <translation>Sprache, Größe und Farben des Fensters</translation>
    </message>
    <message>
        <source>Language, size and colours are taken up when the program starts the next time.</source>
        <translation>Sprache, Größe und Farben gelten ab dem nächsten Programmstart.</translation>
    </message>
    <message>
        <source>Marked as &quot;before&quot;, dashed until Shift+B forgets it; K keeps it with the moment after.</source>
        <translation>Als „vorher“ gemerkt, gestrichelt, bis Umschalt+B es vergisst; K behält es mit dem Augenblick danach.</translation>
    </message>
    <message>
        <source>%1 What is frozen stays as it was read.</source>
        <translation>%1 Was festgehalten ist, bleibt, wie es gelesen wurde.</translation>
    </message>
    <message>
        <source>Kept with the moment before: frames %1 (before) and %2 (after) of visit %3; Ctrl+L opens the logbook.</source>
        <translation>Mit dem Augenblick davor behalten: Bilder %1 (vorher) und %2 (nachher) des Besuchs %3; Strg+L öffnet das Logbuch.</translation>
    </message>
    <message>
        <source>Kept as frame %1 of visit %2, which is the moment after from now on; Ctrl+L opens the logbook.</source>
        <translation>Als Bild %1 des Besuchs %2 behalten, von jetzt an der Augenblick danach; Strg+L öffnet das Logbuch.</translation>
    </message>
    <message>
        <source>Note, logbook, limits, self-check, reference sender, recording, clock, slice, before, margin, tone</source>
        <translation>Notiz, Logbuch, Grenzen, Selbstprüfung, Bezugssender, Aufnahme, Takt, Schwelle, vorher, Spielraum, Ton</translation>
    </message>
    <message>
        <source>Slice level</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>Set the part of the swing at which an instant is taken</source>
        <translation>Den Teil des Hubs festlegen, bei dem ein Übergang gilt</translation>
    </message>
    <message>
        <source>Instants are taken at %1 % of the swing.</source>
        <translation>Die Übergänge gelten bei %1 % des Hubs.</translation>
    </message>
    <message>
        <source>Marked as &quot;before&quot; over few characters (%1). Shift+B forgets it, K keeps it.</source>
        <translation>Über wenige Zeichen (%1) als „vorher“ gemerkt. Umschalt+B vergisst es, K behält es.</translation>
    </message>
    <message>
        <source>Taller findings</source>
        <translation>Befunde höher</translation>
    </message>
    <message>
        <source>The findings in the height of the readings, and back, while they do not fit</source>
        <translation>Die Befunde in der Höhe der Messwerte zeigen und zurück, solange sie nicht hineinpassen</translation>
    </message>
    <message>
        <source>Will stand at %1 units. Double click elsewhere on the grid to move it, or set a cursor (C) first.</source>
        <translation>Wird bei %1 Schritten stehen. Ein Doppelklick anderswo auf dem Raster verlegt die Notiz, eine Messmarke (C) vorher auch.</translation>
    </message>
    <message>
        <source>Stands at %1 units.</source>
        <translation>Steht bei %1 Schritten.</translation>
    </message>
    <message>
        <source>The report is being written…</source>
        <translation>Der Bericht wird geschrieben…</translation>
    </message>
    <message>
        <source>The recording was kept: %1.</source>
        <translation>Die Aufnahme wurde behalten: %1.</translation>
    </message>
    <message>
        <source>Frozen for the report; nothing that comes meanwhile is lost.</source>
        <translation>Für den Bericht eingefroren; nichts, was inzwischen kommt, geht verloren.</translation>
    </message>
    <message>
        <source>The frozen frame stays as measured; let go to see the card&apos;s part.</source>
        <translation>Das eingefrorene Bild bleibt wie gemessen; loslassen, um den Teil der Karte zu sehen.</translation>
    </message>
    <message>
        <source>Frozen at %1</source>
        <translation>Eingefroren bei %1</translation>
    </message>
    <message>
        <source>None was found so far.</source>
        <translation>Bisher wurde keiner gefunden.</translation>
    </message>
    <message>
        <source>It was learned from the rounds of the tape.</source>
        <translation>Er wurde aus den Runden des Streifens gelernt.</translation>
    </message>
    <message>
        <source>RY or the fox sentence was recognised.</source>
        <translation>RY oder der Fuchssatz wurde erkannt.</translation>
    </message>
    <message>
        <source>N writes a note, K keeps it. For a firmer proof let go first: K then takes %1 characters.</source>
        <translation>N schreibt eine Notiz, K bewahrt es auf. Für einen festeren Nachweis erst loslassen: K nimmt dann %1 Zeichen.</translation>
    </message>
    <message>
        <source>On the grid: %1</source>
        <translation>Auf dem Raster: %1</translation>
    </message>
    <message>
        <source>&lt;b&gt;Turn this:&lt;/b&gt; the eccentric of the contact, with the buttons, or with the keys: comma for marks shorter, full stop for longer. B first keeps how it was, to compare with.</source>
        <translation>&lt;b&gt;Hier drehen:&lt;/b&gt; den Exzenter des Kontakts, mit den Knöpfen oder mit den Tasten: Komma für kürzere Zeichenschritte, Punkt für längere. B hält zuvor fest, wie es war, zum Vergleich.</translation>
    </message>
    <message>
        <source>Frozen for the report.</source>
        <translation>Für den Bericht festgehalten.</translation>
    </message>
    <message>
        <source>On the tape: back along it and on; Page Up and Down by more</source>
        <translation>Auf dem Streifen: zurück und vor; mit Bild auf und ab um mehr</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>On the tape: the oldest and the newest characters</source>
        <translation>Auf dem Streifen: die ältesten und die neuesten Zeichen</translation>
    </message>
</context>
<context>
    <name>trueunit::MessageLine</name>
    <message>
        <source>Messages</source>
        <translation>Meldungen</translation>
    </message>
    <message>
        <source>Report written: %1.</source>
        <translation>Bericht geschrieben: %1.</translation>
    </message>
    <message>
        <source>open its folder</source>
        <translation>seinen Ordner öffnen</translation>
    </message>
    <message>
        <source>Report written: %1 and 1 page more.</source>
        <translation>Bericht geschrieben: %1 und 1 weitere Seite.</translation>
    </message>
    <message>
        <source>Report written: %1 and %2 pages more.</source>
        <translation>Bericht geschrieben: %1 und %2 weitere Seiten.</translation>
    </message>
</context>
<context>
    <name>trueunit::NoteEditor</name>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>what is seen here</source>
        <translation>was hier zu sehen ist</translation>
    </message>
    <message>
        <source>Words of the note</source>
        <translation>Worte der Notiz</translation>
    </message>
    <message>
        <source>Attach</source>
        <translation>Anheften</translation>
    </message>
</context>
<context>
    <name>trueunit::PlaybackBar</name>
    <message>
        <source>Part of the recording that has been measured</source>
        <translation>Gemessener Teil der Aufnahme</translation>
    </message>
    <message>
        <source>ended after %1</source>
        <translation>zu Ende nach %1</translation>
    </message>
    <message>
        <source>paused at %1 of %2</source>
        <translation>angehalten bei %1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 left</source>
        <translation>%1 von %2, noch %3</translation>
    </message>
</context>
<context>
    <name>trueunit::ReportDialog</name>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>what was found and done</source>
        <translation>was gefunden und getan wurde</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen …</translation>
    </message>
    <message>
        <source>&amp;Write the report</source>
        <translation>&amp;Bericht schreiben</translation>
    </message>
    <message>
        <source>&amp;Machine</source>
        <translation>&amp;Maschine</translation>
    </message>
    <message>
        <source>&amp;Remarks</source>
        <translation>B&amp;emerkungen</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Write the report to</source>
        <translation>Bericht schreiben nach</translation>
    </message>
    <message>
        <source>PNG pictures (*.png)</source>
        <translation>PNG-Bilder (*.png)</translation>
    </message>
    <message>
        <source>A report on &amp;this moment, against the one marked before</source>
        <translation>Ein Bericht über &amp;diesen Augenblick, gegen den vorher gemerkten</translation>
    </message>
    <message>
        <source>The papers of the &amp;visit: also complaint, work done, a line to sign</source>
        <translation>Die Papiere des &amp;Besuchs: auch Beanstandung, Arbeit und Unterschrift</translation>
    </message>
    <message>
        <source>Keep and open the &amp;logbook</source>
        <translation>Behalten und &amp;Logbuch öffnen</translation>
    </message>
    <message>
        <source>Open the &amp;logbook</source>
        <translation>&amp;Logbuch öffnen</translation>
    </message>
</context>
<context>
    <name>trueunit::SenderDialog</name>
    <message>
        <source>baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperrschritt</translation>
    </message>
    <message>
        <source>Bias</source>
        <translation>Einseitige Verzerrung</translation>
    </message>
    <message>
        <source>End distortion</source>
        <translation>Endverzerrung</translation>
    </message>
    <message>
        <source>% rms</source>
        <translation>% eff.</translation>
    </message>
    <message>
        <source>Scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Speed error</source>
        <translation>Geschwindigkeitsfehler</translation>
    </message>
    <message>
        <source>Hz</source>
        <translation>Hz</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>dBFS</source>
        <translation>dBFS</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Pegel</translation>
    </message>
    <message>
        <source>&amp;Send</source>
        <translation>&amp;Senden</translation>
    </message>
    <message>
        <source>Reference sender</source>
        <translation>Bezugssender</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>as it is keyed</source>
        <translation>wie getastet</translation>
    </message>
    <message>
        <source>on a tone</source>
        <translation>auf einem Ton</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Keying</source>
        <translation>Tastung</translation>
    </message>
    <message>
        <source>Sound output</source>
        <translation>Tonausgang</translation>
    </message>
    <message>
        <source>&amp;Text</source>
        <translation>&amp;Text</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Code</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>S&amp;perrschritt</translation>
    </message>
    <message>
        <source>S&amp;peed</source>
        <translation>&amp;Geschwindigkeit</translation>
    </message>
    <message>
        <source>Speed &amp;error</source>
        <translation>Gesch&amp;w.-Fehler</translation>
    </message>
    <message>
        <source>&amp;Bias</source>
        <translation>&amp;Einseitige V.</translation>
    </message>
    <message>
        <source>E&amp;nd distortion</source>
        <translation>E&amp;ndverzerrung</translation>
    </message>
    <message>
        <source>Sc&amp;atter</source>
        <translation>Streu&amp;ung</translation>
    </message>
    <message>
        <source>&amp;Level</source>
        <translation>&amp;Pegel</translation>
    </message>
    <message>
        <source>&amp;Keying</source>
        <translation>T&amp;astung</translation>
    </message>
    <message>
        <source>T&amp;one</source>
        <translation>T&amp;on</translation>
    </message>
    <message>
        <source>O&amp;utput</source>
        <translation>Aus&amp;gang</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>&amp;In eine Datei schreiben …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>There is no sound output.</source>
        <translation>Es gibt keinen Tonausgang.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>The sound output has stopped taking the signal.</source>
        <translation>Der Tonausgang nimmt das Signal nicht mehr an.</translation>
    </message>
    <message>
        <source>Sending for %1 s: %2.</source>
        <translation>Sendet seit %1 s: %2.</translation>
    </message>
    <message>
        <source>The signal has had gaps, since the computer was too busy: it is no reference. Stop and send again.</source>
        <translation>Das Signal hatte Lücken, weil der Rechner überlastet war: Es ist kein Bezug. Anhalten und neu senden.</translation>
    </message>
    <message>
        <source>Write the reference signal to</source>
        <translation>Bezugssignal schreiben nach</translation>
    </message>
    <message>
        <source>Sound files (*.flac *.wav)</source>
        <translation>Tondateien (*.flac *.wav)</translation>
    </message>
    <message>
        <source>A minute of it is in %1.</source>
        <translation>Eine Minute davon ist in %1.</translation>
    </message>
</context>
<context>
    <name>trueunit::SliceDialog</name>
    <message>
        <source>Slice level</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source> % of the swing</source>
        <translation> % des Hubs</translation>
    </message>
    <message>
        <source>An instant is taken at</source>
        <translation>Ein Übergang gilt bei</translation>
    </message>
    <message>
        <source>The middle, 50 %, is right for a signal that reaches the input as it is. An isolating stage that starts late in the loop&apos;s current wants a lower one. The measurement begins anew; the slice is kept from run to run and written into every report.</source>
        <translation>Die Mitte, 50 %, ist richtig für ein Signal, das unverändert am Eingang ankommt. Eine Trennstufe, die erst bei einem Teil des Linienstroms anspricht, verlangt weniger. Die Messung beginnt neu; die Schwelle bleibt von Lauf zu Lauf erhalten und steht in jedem Bericht.</translation>
    </message>
    <message>
        <source>&amp;Middle</source>
        <translation>&amp;Mitte</translation>
    </message>
    <message>
        <source>An instant is &amp;taken at</source>
        <translation>Ein Übergang &amp;gilt bei</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
</context>
<context>
    <name>trueunit::SourcePicker</name>
    <message>
        <source>Take the signal as</source>
        <translation>Das Signal nehmen als</translation>
    </message>
    <message>
        <source>what it is found to be</source>
        <translation>das, was gefunden wird</translation>
    </message>
    <message>
        <source>loop current</source>
        <translation>Linienstrom</translation>
    </message>
    <message>
        <source>a tone that contacts interrupt</source>
        <translation>Ton, den Kontakte unterbrechen</translation>
    </message>
    <message>
        <source>two tones</source>
        <translation>zwei Töne</translation>
    </message>
    <message>
        <source>Demonstration</source>
        <translation>Vorführung</translation>
    </message>
    <message>
        <source>Open a recording…</source>
        <translation>Aufnahme öffnen …</translation>
    </message>
    <message>
        <source>Open a scenario file…</source>
        <translation>Szenariodatei öffnen …</translation>
    </message>
    <message>
        <source>Sound inputs</source>
        <translation>Toneingänge</translation>
    </message>
    <message>
        <source>Look for inputs again</source>
        <translation>Eingänge neu suchen</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>no sound input found</source>
        <translation>kein Toneingang gefunden</translation>
    </message>
    <message>
        <source>, the system&apos;s choice</source>
        <translation>, die Wahl des Systems</translation>
    </message>
    <message>
        <source>Listen to the side</source>
        <translation>Auf diese Seite hören</translation>
    </message>
    <message>
        <source>left</source>
        <translation>linken</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechten</translation>
    </message>
    <message>
        <source>choose an input</source>
        <translation>Eingang wählen</translation>
    </message>
    <message>
        <source>
What to listen to (Ctrl+I)</source>
        <translation>
Worauf gehört wird (Strg+I)</translation>
    </message>
    <message>
        <source>Input: </source>
        <translation>Eingang: </translation>
    </message>
    <message>
        <source>Open a recording</source>
        <translation>Eine Aufnahme öffnen</translation>
    </message>
    <message>
        <source>Recordings (*.wav *.flac *.aiff *.aif *.ogg *.au *.caf);;All files (*)</source>
        <translation>Aufnahmen (*.wav *.flac *.aiff *.aif *.ogg *.au *.caf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a scenario file</source>
        <translation>Eine Szenariodatei öffnen</translation>
    </message>
    <message>
        <source>Scenarios (*.json);;All files (*)</source>
        <translation>Szenarien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No sound input was found; connect one and look again.</source>
        <translation>Kein Toneingang gefunden; einen anschließen und neu suchen.</translation>
    </message>
    <message numerus="yes">
        <source>%n sound inputs were found.</source>
        <translation>
            <numerusform>Ein Toneingang wurde gefunden.</numerusform>
            <numerusform>%n Toneingänge wurden gefunden.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>trueunit::TapeTextDialog</name>
    <message>
        <source>Text of the tape</source>
        <translation>Text des Streifens</translation>
    </message>
    <message>
        <source>What the tape says, once, from any point of it; a new line stands for carriage return and line feed, shifts are added. With it lost marks and filled spaces are counted. RY, the fox sentence, and a tape that comes round three times are recognised without; a text learned from the rounds may hide what goes wrong in most of them.</source>
        <translation>Was auf dem Streifen steht, einmal, von beliebiger Stelle an; eine neue Zeile steht für Wagenrücklauf und Zeilenvorschub, Umschaltungen kommen von selbst dazu. Damit werden verlorene Zeichenschritte und gefüllte Trennschritte gezählt. RY, der Fuchssatz und ein Streifen, der dreimal herumkommt, werden auch so erkannt; ein aus den Runden gelernter Text kann verbergen, was in den meisten von ihnen falsch ist.</translation>
    </message>
    <message>
        <source>&amp;Use</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>From a &amp;file</source>
        <translation>Aus einer &amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Not known</source>
        <translation>&amp;Unbekannt</translation>
    </message>
    <message>
        <source>The code has none of these characters.</source>
        <translation>Der Code hat keines dieser Zeichen.</translation>
    </message>
    <message>
        <source>%1 characters of tape, shifts included.</source>
        <translation>%1 Zeichen auf dem Streifen, Umschaltungen mitgezählt.</translation>
    </message>
    <message>
        <source>Text (*.txt);;All files (*)</source>
        <translation>Text (*.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read: %2.</source>
        <translation>„%1“ kann nicht gelesen werden: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too large for the text of a tape.</source>
        <translation>„%1“ ist zu groß für den Text eines Streifens.</translation>
    </message>
    <message>
        <source>No text is given: it is looked for in the signal. %1</source>
        <translation>Kein Text ist gegeben: Er wird im Signal gesucht. %1</translation>
    </message>
    <message>
        <source>%1 characters of tape, shifts included; a line end that the tape has after them is found without being given.</source>
        <translation>%1 Zeichen auf dem Streifen, Umschaltungen mitgezählt; ein Zeilenende, das der Streifen danach hat, wird gefunden, ohne angegeben zu sein.</translation>
    </message>
    <message>
        <source>As f&amp;ound</source>
        <translation>Wie &amp;gefunden</translation>
    </message>
    <message>
        <source>Puts the text that was found into the field, to be corrected there</source>
        <translation>Setzt den gefundenen Text in das Feld, um ihn dort zu berichtigen</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>trueunit::TopBar</name>
    <message>
        <source>connect.md#the-sound-input</source>
        <comment>page of the help</comment>
        <translation>connect.md#der-toneingang</translation>
    </message>
    <message>
        <source>connect.md#levels-and-grounds</source>
        <comment>page of the help</comment>
        <translation>connect.md#pegel-und-masse</translation>
    </message>
    <message>
        <source>○ waiting</source>
        <translation>○ wartet</translation>
    </message>
    <message>
        <source>○ silent</source>
        <translation>○ stumm</translation>
    </message>
    <message>
        <source>◐ searching</source>
        <translation>◐ sucht</translation>
    </message>
    <message>
        <source>● listening</source>
        <translation>● hört</translation>
    </message>
    <message>
        <source>■ at rest</source>
        <translation>■ ruht</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>■ ended</source>
        <translation>■ zu Ende</translation>
    </message>
    <message>
        <source>□ paused</source>
        <translation>□ Pause</translation>
    </message>
</context>
<context>
    <name>trueunit::VisitForm</name>
    <message>
        <source>Complaint</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>what it came for</source>
        <translation>weshalb sie kam</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>what was found and done</source>
        <translation>was gefunden und getan wurde</translation>
    </message>
    <message>
        <source>About the machine</source>
        <translation>Zur Maschine</translation>
    </message>
    <message>
        <source>what holds for every visit</source>
        <translation>was für jeden Besuch gilt</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>renewed or made</source>
        <translation>erneuert oder angefertigt</translation>
    </message>
    <message>
        <source>Oil and grease</source>
        <translation>Öl und Fett</translation>
    </message>
    <message>
        <source>where and what; contacts are not oiled</source>
        <translation>wo und womit; Kontakte werden nicht geölt</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>how it left; ends the visit</source>
        <translation>wie sie ging; beendet den Besuch</translation>
    </message>
    <message>
        <source>Owner&apos;s mark</source>
        <translation>Inventarzeichen</translation>
    </message>
    <message>
        <source>inventory number</source>
        <translation>Inventarnummer</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>code, speed, stop, motor, gears</source>
        <translation>Code, Geschwindigkeit, Sperrschritt, Motor, Räder</translation>
    </message>
    <message>
        <source>Re&amp;paired on this visit</source>
        <translation>Bei diesem Besuch instand &amp;gesetzt</translation>
    </message>
    <message>
        <source>&amp;Complaint</source>
        <translation>&amp;Beanstandung</translation>
    </message>
    <message>
        <source>&amp;Work done</source>
        <translation>&amp;Arbeit</translation>
    </message>
    <message>
        <source>Par&amp;ts</source>
        <translation>&amp;Teile</translation>
    </message>
    <message>
        <source>&amp;Oil, grease</source>
        <translation>Ö&amp;l, Fett</translation>
    </message>
    <message>
        <source>R&amp;esult</source>
        <translation>E&amp;rgebnis</translation>
    </message>
    <message>
        <source>Owner&apos;s mar&amp;k</source>
        <translation>&amp;Inventarz.</translation>
    </message>
    <message>
        <source>Car&amp;d</source>
        <translation>&amp;Karte</translation>
    </message>
    <message>
        <source>M&amp;achine</source>
        <translation>&amp;Maschine</translation>
    </message>
    <message>
        <source>Take it from the re&amp;marks</source>
        <translation>Aus den Bemerkungen &amp;nehmen</translation>
    </message>
</context>
</TS>
