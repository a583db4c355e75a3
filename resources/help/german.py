#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The German words of the drawings, by the English ones."""

GERMAN = {
    "start": "Anlauf", "stop": "Sperrschr.", "mark": "Zeichen", "space": "Trenn", "early": "zu früh", "late": "zu spät",
    "late by 6 (T − T0)": "zu spät um 6 (T − T0)",
    "dashed: nominal units T0; a slow sender spreads every instant more than the one before":
        "gestrichelt: Nennlängen T0; ein langsamer Sender spreizt von Übergang zu Übergang mehr",
    "marking bias: every mark begins early, so marks are long and spaces short":
        "Zeichenstrom beginnt jedes Mal zu früh, ist also zu lang und der Trennstrom zu kurz",
    "marking end distortion: every mark inside the character ends late":
        "Zeichenstrom innerhalb des Zeichens endet jedes Mal zu spät",
    "the largest": "die größte",
    "of all instants of the window, early or late, the one displaced most counts":
        "von allen Übergängen des Fensters zählt der mit der größten Abweichung, früh oder spät",
    "late each time": "jedes Mal zu spät",
    "mean and spread of each level and direction; one that stands apart is one cam":
        "Mittel und Streuung je Schritt und Richtung; was für sich steht, ist ein einzelner Nocken",
    "quench,": "Funkenlöschung,", "over the contact": "über dem Kontakt",
    "late after a short space": "zu spät nach kurzem Trennstrom",
    "an instant after a short element is displaced otherwise than one after a long element":
        "ein Übergang nach einem kurzen Schritt weicht anders ab als einer nach einem langen",
    "the same letter several times laid over each other: instants fall about their mean at random":
        "derselbe Buchstabe mehrmals übereinander: Übergänge liegen zufällig um ihr Mittel",
    "one turn of the shaft that does it": "eine Umdrehung der Welle, die es tut",
    "characters, one after the other": "Zeichen, eins nach dem andern",
    "character period, start to start": "Zeichendauer, von Anlauf zu Anlauf",
    "blue: the part of each unit in which every element is read rightly, here 0 to 78 %":
        "blau: der Teil jedes Schritts, in dem jeder des Fensters richtig gelesen wird, hier 0 bis 78 %",
    "first closure to steady": "erstes Schließen bis Ruhe", "instant": "Übergang", "re-opens": "öffnet wieder",
    "halts: the line is": "hält inne: die Linie", "too slow to fall": "fällt zu langsam",
    "the instant is the first closure in both; re-openings and halts are counted and timed beside it":
        "der Übergang ist beide Male das erste Schließen; was folgt, wird daneben gezählt und gemessen",
    "loop": "Linie", "supply": "Speisung", "sets the current": "stellt den Strom", "20 or 60 mA": "20 oder 60 mA",
    "115 to 260 V DC": "115 bis 260 V DC", "fuse F1": "Sicherung F1", "sender": "Sender", "magnets": "Magnete",
    "receiver": "Empfänger", "isolating": "Trenn-", "stage": "stufe", "barrier": "Trennung", "sound card": "Soundkarte",
    "line input": "Eingang",
    "Everything left of the barrier is hazardous live, at rest as well. Treat the sound card's ground as earth.":
        "Links der Trennung ist alles gefährlich, auch in Ruhe. Die Masse der Soundkarte wie Erde behandeln.",
    "in the loop (hazardous live)": "im Linienstromkreis (gefährliche Spannung)",
    "towards the sound card (isolated)": "zur Soundkarte (getrennt)",
    "In series: one wire of the loop is opened, its ends come to loop + and loop -. Never across the supply.":
        "In Reihe: Ein Draht der Linie wird aufgetrennt, die Enden an Linie + und Linie -. Nie parallel zur Speisung.",
    "anode": "Anode", "cathode": "Kathode", "collector": "Kollektor", "emitter": "Emitter",
    "loop +": "Linie +", "loop -": "Linie -", "table": "Tabelle", "battery": "Batterie", "4.5 V": "4,5 V",
    "0.9 V": "0,9 V", "ground": "Masse", "sender's contacts": "Senderkontakte",
    "A sender off its loop: supply unplugged and kept so; each loop wire marked, alone in a closed insulating terminal.":
        "Sender von der Linie genommen: Speisung abgezogen, bleibt so; jeder Draht bezeichnet, einzeln in Isolierklemme.",
    "Resistors for 20 mA, below them those for 60 mA. Fresh cells make 13 V, and nothing here is above that.":
        "Widerstände für 20 mA, darunter die für 60 mA. Frische Zellen haben 13 V, und nichts hier liegt darüber.",
    "headphone out": "Kopfhörer",
    "one sound card at both ends, so there is one ground and no loop of grounds":
        "eine Soundkarte an beiden Enden, also eine Masse und keine Masseschleife",
    "Speed: the actual unit against the nominal one": "Geschwindigkeit: die wirkliche Schrittlänge gegen die Nennlänge",
    "Bias: the fronts of all marks are displaced alike":
        "Einseitige Verzerrung: alle Anfänge des Zeichenstroms weichen gleich ab",
    "End distortion: the ends of marks are displaced alike": "Endverzerrung: alle Enden des Zeichenstroms weichen gleich ab",
    "Start-stop distortion: the largest displacement": "Start-Stopp-Verzerrung: die größte Abweichung",
    "Displacement by instant: each cam for itself": "Abweichung je Übergang: jeder Nocken für sich",
    "Characteristic distortion: what depends on what went before":
        "Charakteristische Verzerrung: was davon abhängt, was vorherging",
    "Scatter: each time a little different": "Streuung: jedes Mal ein wenig anders",
    "Cyclic distortion: a displacement that comes and goes with a shaft":
        "Periodische Verzerrung: eine Abweichung, die mit einer Welle kommt und geht",
    "Character period and stop": "Zeichendauer und Sperrschritt",
    "Receiving margin: where a receiver may look": "Empfangsspielraum: wo ein Empfänger abtasten darf",
    "Contact bounce": "Kontaktprellen",
    "The loop, the isolating stage in it, and the sound card beyond the barrier":
        "Der Linienstromkreis, die Trennstufe darin und die Soundkarte jenseits der Trennung",
    "Optocoupler stage": "Optokopplerstufe",
    "Bare contacts on a battery: a series resistor reads the current":
        "Bloße Kontakte an einer Batterie: Ein Vorwiderstand misst den Strom",
    "Transformer stage": "Übertragerstufe",
    "Interrupted tone for bare contacts": "Unterbrochener Ton für bloße Kontakte",
    "non-polar, 25 V": "ungepolt, 25 V", "ground: sleeve": "Masse: Hülse", "line in: tip": "Eingang: Spitze",
    "eight AA": "acht AA", "rated in DC,": "für Gleichspannung,", "1.5 x the supply": "1,5 x Speisung",
    "barrier, 8 mm or more": "Trennung, 8 mm oder mehr", "fuse": "Sicherung", "switch": "Schalter",
}
