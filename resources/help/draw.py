#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the pictures of the help: ink for what is, one colour for what is meant. Run it in its own folder.

The drawings with German words come into the folder de; what stands in no table of words (R1, 10 kΩ) is the same in both.
"""

import re

from german import GERMAN

INK, GREY, OUT, BLUE, PAPER = "#1e2a32", "#5f6b74", "#b8431a", "#0b5e8a", "#fffdf8"
UNIT = 70  # pixels of a unit interval
folder = ""  # and the words of its language
words_of = {}
untold = set()  # English words for which the table has none


def told(words):
    if words_of and words not in words_of and re.search("[a-z]{3}", words):
        untold.add(words)
    return words_of.get(words, words)


class Drawing:
    def __init__(self, width, height, title):
        self.size, self.parts = (width, height), []
        self.title = title

    def line(self, *points, color=INK, width=2, dash=None, fill="none"):
        steps = " ".join(f"{'M' if i == 0 else 'L'}{x:g} {y:g}" for i, (x, y) in enumerate(points))
        dashes = f' stroke-dasharray="{dash}"' if dash else ""
        self.parts.append(f'<path d="{steps}" fill="{fill}" stroke="{color}" stroke-width="{width}"{dashes}/>')

    def text(self, x, y, words, color=INK, size=14, anchor="start", weight="normal"):
        words = told(words).replace("&", "&amp;").replace("<", "&lt;")
        self.parts.append(f'<text x="{x:g}" y="{y:g}" fill="{color}" font-size="{size}" text-anchor="{anchor}" '
                          f'font-weight="{weight}">{words}</text>')

    def box(self, x, y, w, h, color=INK, fill=PAPER, dash=None, width=2):
        dashes = f' stroke-dasharray="{dash}"' if dash else ""
        self.parts.append(f'<rect x="{x:g}" y="{y:g}" width="{w:g}" height="{h:g}" fill="{fill}" stroke="{color}" '
                          f'stroke-width="{width}"{dashes}/>')

    def dot(self, x, y, color=INK, r=3.5):
        self.parts.append(f'<circle cx="{x:g}" cy="{y:g}" r="{r:g}" fill="{color}"/>')

    def ring(self, x, y, r=18):
        self.parts.append(f'<circle cx="{x:g}" cy="{y:g}" r="{r:g}" fill="{PAPER}" stroke="{INK}" stroke-width="2"/>')

    # Parts of circuits.
    def resistor(self, x, y, name, below="", upright=False, side=1):
        w, h = (20, 46) if upright else (46, 20)
        self.box(x - w / 2, y - h / 2, w, h)
        if upright:
            self.text(x + side * 18, y - 2 if below else y + 5, name, anchor="start" if side > 0 else "end")
            self.text(x + side * 18, y + 15, below, INK, 12, "start" if side > 0 else "end")
        else:
            self.text(x, y - 16, name, anchor="middle")
            self.text(x, y + 27, below, INK, 12, "middle")

    def fuse(self, x, y, name, below):
        self.box(x - 25, y - 10, 50, 20)
        self.line((x - 25, y), (x + 25, y))
        self.text(x, y - 16, name, anchor="middle")
        self.text(x, y + 27, below, GREY, 12, "middle")

    def diode(self, x, y, down=True, color=INK):
        s = 1 if down else -1
        self.line((x - 11, y - 9 * s), (x + 11, y - 9 * s), (x, y + 9 * s), (x - 11, y - 9 * s), fill=PAPER, color=color)
        self.line((x - 11, y + 9 * s), (x + 11, y + 9 * s), color=color)

    def opening(self, x, y):
        """A contact or switch, open, 40 wide from x on, in a line that lies there."""
        self.line((x, y), (x + 40, y), color=PAPER, width=6)
        self.line((x, y), (x + 39, y - 16))
        self.dot(x, y)
        self.dot(x + 40, y)

    def light(self, x, y):
        for shift in (0, 10):
            self.line((x, y + shift), (x + 20, y + shift), color=BLUE, width=1.5)
            self.line((x + 14, y - 4 + shift), (x + 20, y + shift), (x + 14, y + 4 + shift), color=BLUE, width=1.5)

    def arrow(self, x1, y, x2, color=OUT, both=False):
        head = 7 if x2 > x1 else -7
        self.line((x1, y), (x2, y), color=color)
        self.line((x2 - head, y - 4), (x2, y), (x2 - head, y + 4), color=color)
        if both:
            self.line((x1 + head, y - 4), (x1, y), (x1 + head, y + 4), color=color)

    def save(self, name):
        w, h = self.size
        body = "\n".join(self.parts)
        with open(folder + name + ".svg", "w", encoding="utf-8") as out:
            out.write(f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {w} {h}" width="{w}" height="{h}" '
                      f'font-family="Inter, DejaVu Sans, sans-serif">\n<title>{told(self.title)}</title>\n'
                      f'<rect width="{w}" height="{h}" fill="{PAPER}"/>\n{body}\n</svg>\n')


LETTER_Y = [0, 1, 0, 1, 0, 1, 1]  # start, levels 1 to 5 of Y (10101), stop; 1 is mark


def instants(levels):
    """(k, to mark) of each transition, the one into start first."""
    return [(k, now) for k, (was, now) in enumerate(zip([1] + levels, levels)) if was != now]


class Character(Drawing):
    """A character on its grid; shift(k, to_mark) displaces an instant, in units."""

    left, top, high = 80, 62, 84

    def __init__(self, title, shift=lambda k, mark: 0.0, height=214, levels=LETTER_Y, names=True, unit=1.0):
        super().__init__(640, height, title)
        self.levels = levels
        for k in range(8):
            x = self.x(k)
            self.line((x, self.top - 14), (x, self.top + self.high + 14), color=GREY, width=1, dash="4 4")
        if names:
            for k, name in enumerate(["start", "1", "2", "3", "4", "5", "stop"]):
                self.text(self.x(k + 0.5), self.top + self.high + 30, name, GREY, 12, "middle")
        self.text(50, self.top + 5, "mark", GREY, 12, "end")
        self.text(50, self.top + self.high + 4, "space", GREY, 12, "end")
        self.trace(shift, unit, INK, 3)

    def x(self, units):
        return self.left + UNIT * units

    def y(self, mark):
        return self.top + (0 if mark else self.high)

    def trace(self, shift, unit=1.0, color=INK, width=3, dash=None):
        points, level = [(self.left - 26, self.y(1))], 1
        for k, mark in instants(self.levels):
            at = self.x(unit * k + (shift(k, mark) if k else 0.0))
            points += [(at, self.y(level)), (at, self.y(mark))]
            level = mark
        points.append((self.x(7.3), self.y(level)))
        self.line(*points, color=color, width=width, dash=dash)

    def flag(self, k, shift, words):
        self.arrow(self.x(k), self.top - 26, self.x(k + shift))
        self.text(self.x(k + shift / 2), self.top - 34, words, OUT, 12, "middle")


def quantities():
    d = Character("Speed: the actual unit against the nominal one", unit=1.06)
    d.arrow(d.x(0), 30, d.x(1.06), INK, both=True)
    d.text(d.x(0.53), 22, "T", INK, 14, "middle")
    d.arrow(d.x(6), 36, d.x(6.36))
    d.text(d.x(6) - 8, 40, "late by 6 (T − T0)", OUT, 12, "end")
    d.text(d.left, 206, "dashed: nominal units T0; a slow sender spreads every instant more than the one before", GREY, 12)
    d.save("speed")

    early = lambda k, mark: -0.22 if mark else 0.0
    d = Character("Bias: the fronts of all marks are displaced alike", early)
    for k in (1, 3, 5):
        d.flag(k, -0.22, "early")
    d.text(d.left, 206, "marking bias: every mark begins early, so marks are long and spaces short", GREY, 12)
    d.save("bias")

    late = lambda k, mark: 0.0 if mark else 0.22
    d = Character("End distortion: the ends of marks are displaced alike", late)
    for k in (2, 4):
        d.flag(k, 0.22, "late")
    d.text(d.left, 206, "marking end distortion: every mark inside the character ends late", GREY, 12)
    d.save("end")

    some = {1: -0.08, 2: 0.05, 3: -0.25, 4: 0.1, 5: 0.06}
    d = Character("Start-stop distortion: the largest displacement", lambda k, mark: some[k])
    d.flag(3, -0.25, "the largest")
    d.text(d.left, 206, "of all instants of the window, early or late, the one displaced most counts", GREY, 12)
    d.save("start-stop")

    d = Character("Displacement by instant: each cam for itself", lambda k, mark: 0.2 if k == 4 else 0.0)
    d.flag(4, 0.2, "late each time")
    d.text(d.left, 206, "mean and spread of each level and direction; one that stands apart is one cam", GREY, 12)
    d.save("instants")

    d = Character("Characteristic distortion: what depends on what went before",
                  lambda k, mark: {1: 0.0, 4: 0.0, 5: 0.16}.get(k, 0.0), levels=[0, 1, 1, 1, 0, 1, 1])
    d.flag(5, 0.16, "late after a short space")
    d.text(d.left, 206, "an instant after a short element is displaced otherwise than one after a long element", GREY, 12)
    d.save("characteristic")

    d = Character("Scatter: each time a little different")
    for i, s in enumerate((-0.12, -0.07, 0.05, 0.1)):
        d.trace(lambda k, mark, s=s, i=i: s * (1 if (k + i) % 2 else -0.7), color=OUT, width=1)
    d.text(d.left, 206, "the same letter several times laid over each other: instants fall about their mean at random", GREY, 12)
    d.save("scatter")

    import math
    d = Drawing(640, 214, "Cyclic distortion: a displacement that comes and goes with a shaft")
    d.line((60, 110), (610, 110), color=GREY, dash="4 4", width=1)
    points = [(60 + 5 * i, 110 - 42 * math.sin(2 * math.pi * i / 44)) for i in range(110)]
    d.line(*points, color=OUT, width=1.5)
    for x, y in points[::5]:
        d.dot(x, y)
    d.arrow(60, 180, 280, INK, both=True)
    d.text(170, 196, "one turn of the shaft that does it", INK, 12, "middle")
    d.text(60, 34, "late", GREY, 12)
    d.text(60, 168, "early", GREY, 12)
    d.text(610, 208, "characters, one after the other", GREY, 12, "end")
    d.save("cyclic")

    d = Character("Character period and stop", height=214)
    d.arrow(d.x(6), 36, d.x(7.3), INK, both=True)
    d.text(d.x(6.65), 28, "stop", INK, 12, "middle")
    d.line((d.x(7.3), d.y(1)), (d.x(7.3), d.y(0)), (d.x(7.3) + 26, d.y(0)), width=3)
    d.arrow(d.x(0), 196, d.x(7.3), INK, both=True)
    d.text(d.x(3.65), 210, "character period, start to start", INK, 12, "middle")
    d.save("stop")

    d = Character("Receiving margin: where a receiver may look", early)
    for k in range(1, 6):
        d.box(d.x(k), d.top + 30, UNIT * 0.78, 24, BLUE, "#d7e6ee", width=1)
    d.text(d.left, 206, "blue: the part of each unit in which every element is read rightly, here 0 to 78 %", GREY, 12)
    d.save("margin")

    d = Drawing(640, 214, "Contact bounce")
    y0, y1, first, second = 150, 62, 150, 380
    for x in (first, second):
        d.line((x, 40), (x, 166), color=GREY, width=1, dash="3 3")
        d.text(x, 182, "instant", GREY, 13, "middle")
    d.line((60, y0), (first, y0), (first, y1), (166, y1), (166, y0), (176, y0), (176, y1), (186, y1), (186, y0), (193, y0),
           (193, y1), (310, y1), (310, y0), (second, y0), (384, 108), (388, 103), (394, 110), (400, 102), (406, 109),
           (410, 104), (414, y1), (590, y1), (590, y0), (620, y0), width=3)
    for x, steady in ((first, 193), (second, 414)):
        d.arrow(x, 40, steady, both=True)
        d.text((x + steady) / 2, 28, "first closure to steady", OUT, 13, "middle")
    d.text(52, y1 + 5, "mark", GREY, 13, "end")
    d.text(52, y0 + 4, "space", GREY, 13, "end")
    d.text(204, 102, "re-opens", GREY, 13)
    d.text(426, 98, "halts: the line is", GREY, 13)
    d.text(426, 116, "too slow to fall", GREY, 13)
    d.text(52, 206, "the instant is the first closure in both; re-openings and halts are counted and timed beside it", GREY, 12)
    d.save("bounce")


def terminal(d, x, y, words, anchor="end"):
    d.dot(x, y, PAPER, 5)
    d.parts[-1] = d.parts[-1].replace("/>", f' stroke="{INK}" stroke-width="2"/>')
    d.text(x - 12 if anchor == "end" else x + 12, y + 5, words, anchor=anchor)


LOOSE_ENDS = "A sender off its loop: supply unplugged and kept so; each loop wire marked, alone in a closed insulating terminal."


def circuits():
    d = Drawing(760, 316, "The loop, the isolating stage in it, and the sound card beyond the barrier")
    d.line((70, 110), (70, 60), (570, 60), (570, 120))
    d.line((70, 190), (70, 260), (570, 260), (570, 190))
    d.ring(70, 150, 40)
    d.text(70, 146, "loop", INK, 13, "middle")
    d.text(70, 162, "supply", INK, 13, "middle")
    d.text(120, 156, "115 to 260 V DC", OUT, 12)
    d.fuse(140, 60, "fuse F1", "rated in DC,")
    d.text(140, 102, "1.5 x the supply", GREY, 12, "middle")
    d.resistor(265, 60, "sets the current", "20 or 60 mA")
    d.opening(375, 60)
    d.text(395, 34, "sender", INK, 14, "middle")
    d.line((362, 60), (362, 104), (372, 104))
    d.box(372, 99, 20, 10)
    d.line((392, 104), (402, 104))
    d.line((402, 94), (402, 114), width=3)
    d.line((409, 94), (409, 114), width=3)
    d.line((409, 104), (428, 104), (428, 60))
    d.dot(362, 60)
    d.dot(428, 60)
    d.text(395, 132, "quench,", INK, 13, "middle")
    d.text(395, 148, "over the contact", GREY, 12, "middle")
    d.box(455, 48, 80, 24)
    d.text(495, 40, "magnets", INK, 14, "middle")
    d.text(495, 65, "receiver", GREY, 12, "middle")
    d.box(520, 120, 100, 70)
    d.text(570, 150, "isolating", INK, 13, "middle")
    d.text(570, 166, "stage", INK, 13, "middle")
    d.line((620, 145), (670, 145), color=BLUE)
    d.line((620, 165), (670, 165), color=BLUE)
    d.line((632, 90), (632, 230), color=OUT, dash="8 5")
    d.text(640, 222, "barrier", OUT, 12)
    d.box(670, 130, 78, 50, BLUE)
    d.text(709, 152, "sound card", BLUE, 12, "middle")
    d.text(709, 168, "line input", BLUE, 12, "middle")
    d.text(70, 300, "Everything left of the barrier is hazardous live, at rest as well. Treat the sound card's ground as earth.", OUT, 13)
    d.save("loop")

    d = Drawing(820, 430, "Optocoupler stage")
    d.text(20, 28, "in the loop (hazardous live)", OUT, 13)
    d.text(800, 28, "towards the sound card (isolated)", BLUE, 13, "end")
    terminal(d, 110, 80, "loop +")
    terminal(d, 110, 320, "loop -")
    d.line((115, 80), (400, 80))
    d.line((115, 320), (400, 320))
    d.line((170, 80), (170, 320))
    d.diode(170, 188, down=False)
    d.diode(170, 212, down=True)
    d.text(152, 195, "TVS", anchor="end")
    d.text(152, 211, "12 V", GREY, 12, "end")
    d.line((240, 80), (240, 320))
    d.resistor(240, 160, "R1", "table", upright=True)
    d.line((340, 80), (340, 320))
    d.resistor(340, 130, "R2", "820 Ω", upright=True)
    d.diode(340, 236)
    d.text(348, 218, "anode", GREY, 12)
    d.text(348, 262, "cathode", GREY, 12)
    d.text(348, 280, "LED")
    d.text(488, 196, "collector", GREY, 12)
    d.text(488, 276, "emitter", GREY, 12)
    d.text(20, 416, "In series: one wire of the loop is opened, its ends come to loop + and loop -. Never across the supply.", OUT, 13,
           weight="bold")
    d.line((400, 80), (340, 80), color=PAPER, width=4)
    d.line((400, 320), (340, 320), color=PAPER, width=4)
    d.line((340, 190), (296, 190), (296, 290), (340, 290))
    d.diode(296, 240, down=False)
    d.text(284, 276, "D1", anchor="end")
    for x, y in ((170, 80), (240, 80), (170, 320), (240, 320), (340, 190), (340, 290)):
        d.dot(x, y)
    d.line((330, 80), (341, 80))
    d.line((330, 320), (341, 320))
    d.light(362, 230)
    d.line((412, 50), (412, 360), color=OUT, dash="8 5")
    d.text(412, 380, "barrier, 8 mm or more", OUT, 12, "middle")
    d.line((440, 210), (440, 262), width=4)
    d.line((440, 225), (480, 200), (480, 80), (640, 80))
    d.line((440, 247), (480, 272), (480, 290), (560, 290))
    d.line((470, 258), (480, 272), (464, 270))
    d.line((640, 80), (780, 80), (780, 190))
    d.opening(640, 80)
    d.text(660, 107, "switch", INK, 12, "middle")
    d.line((764, 190), (796, 190))
    d.line((772, 200), (788, 200), width=4)
    d.text(756, 194, "battery", INK, 14, "end")
    d.text(756, 210, "4.5 V", GREY, 12, "end")
    d.line((780, 200), (780, 345), (480, 345), (480, 290))
    d.resistor(480, 318, "R3", "100 Ω", upright=True, side=-1)
    d.line((560, 290), (560, 345))
    d.resistor(560, 316, "P", "10 kΩ", upright=True, side=-1)
    d.line((570, 316), (650, 316), color=BLUE)
    d.line((577, 312), (571, 316), (577, 320), color=BLUE)
    d.line((630, 345), (630, 372), (650, 372), color=BLUE)
    for x, y in ((480, 290), (480, 345), (560, 345), (630, 345)):
        d.dot(x, y)
    terminal(d, 654, 316, "line in: tip", "start")
    terminal(d, 654, 372, "ground: sleeve", "start")
    d.save("optocoupler")

    d = Drawing(890, 300, "Bare contacts on a battery: a series resistor reads the current")
    d.text(20, 28, LOOSE_ENDS, OUT, 13)
    d.line((100, 130), (100, 80), (520, 80), (520, 240), (100, 240), (100, 146))
    d.line((84, 130), (116, 130))
    d.line((91, 140), (109, 140), width=4)
    d.text(112, 122, "+")
    d.text(78, 132, "12 V", anchor="end")
    d.text(78, 148, "eight AA", INK, 12, "end")
    d.opening(132, 80)
    d.text(152, 107, "switch", INK, 12, "middle")
    d.fuse(225, 80, "fuse", "100 mA")
    d.resistor(325, 80, "560 Ω, 1 W", "60 mA: 180 Ω, 2 W")
    d.opening(425, 80)
    d.text(445, 54, "sender's contacts", anchor="middle")
    d.resistor(520, 160, "", "", upright=True)
    d.text(502, 157, "47 Ω", anchor="end")
    d.text(502, 173, "60 mA: 15 Ω", INK, 12, "end")
    d.text(502, 189, "0.9 V", GREY, 12, "end")
    d.line((520, 110), (715, 110), (715, 210), (520, 210))
    for x, down in ((580, True), (620, False)):
        d.line((x, 110), (x, 210))
        d.diode(x, 142, down)
        d.diode(x, 178, down)
    d.text(638, 150, "D")
    d.text(638, 167, "4 x 1 A", INK, 12)
    d.resistor(715, 160, "", "", upright=True)
    d.text(701, 203, "P 10 kΩ", INK, 12, "end")
    for x in (520, 580, 620):
        d.dot(x, 110)
        d.dot(x, 210)
    d.line((725, 160), (759, 160), color=BLUE)
    d.line((731, 156), (725, 160), (731, 164), color=BLUE)
    d.line((715, 210), (759, 210), color=BLUE)
    d.dot(715, 210)
    terminal(d, 763, 160, "line in: tip", "start")
    terminal(d, 763, 210, "ground: sleeve", "start")
    d.text(100, 280, "Resistors for 20 mA, below them those for 60 mA. Fresh cells make 13 V, and nothing here is above that.", GREY, 12)
    d.save("battery")

    d = Drawing(880, 300, "Transformer stage")
    d.text(20, 28, "in the loop (hazardous live)", OUT, 13)
    d.text(860, 28, "towards the sound card (isolated)", BLUE, 13, "end")
    terminal(d, 100, 90, "loop")
    terminal(d, 100, 230, "loop")
    d.line((105, 90), (480, 90), (480, 120))
    d.line((105, 230), (480, 230), (480, 200))
    for x in (150, 225):
        d.line((x, 90), (x, 230))
        d.resistor(x, 160, "22 Ω", "1 W", upright=True)
    for x, down in ((300, True), (340, False)):
        d.line((x, 90), (x, 230))
        d.diode(x, 142, down)
        d.diode(x, 178, down)
    d.text(358, 158, "D", anchor="start")
    d.text(358, 175, "4 x 1 A", INK, 12)
    for x in (150, 225, 300, 340):
        d.dot(x, 90)
        d.dot(x, 230)
    d.line((412, 90), (428, 90), color=PAPER, width=6)
    d.line((412, 74), (412, 106), width=3)
    d.line((428, 74), (428, 106), width=3)
    d.text(420, 52, "47 µF", anchor="middle")
    d.text(420, 67, "non-polar, 25 V", GREY, 12, "middle")
    for i in range(5):
        y = 120 + 16 * i
        d.parts.append(f'<path d="M480 {y} a 8 8 0 0 1 0 16" fill="none" stroke="{INK}" stroke-width="2"/>')
        d.parts.append(f'<path d="M570 {y} a 8 8 0 0 0 0 16" fill="none" stroke="{INK}" stroke-width="2"/>')
    d.line((519, 112), (519, 208), width=1.5)
    d.line((531, 112), (531, 208), width=1.5)
    d.line((525, 50), (525, 102), color=OUT, dash="8 5")
    d.line((525, 218), (525, 262), color=OUT, dash="8 5")
    d.text(525, 280, "barrier", OUT, 12, "middle")
    d.line((570, 120), (570, 90), (740, 90), color=BLUE)
    d.line((570, 200), (570, 230), (740, 230), color=BLUE)
    d.line((650, 90), (650, 230), color=BLUE)
    d.resistor(650, 160, "600 Ω", "", upright=True)
    terminal(d, 744, 90, "line in: tip", "start")
    terminal(d, 744, 230, "ground: sleeve", "start")
    d.save("transformer")

    d = Drawing(800, 280, "Interrupted tone for bare contacts")
    d.text(20, 28, LOOSE_ENDS, OUT, 13)
    terminal(d, 150, 90, "headphone out")
    terminal(d, 150, 210, "ground")
    d.line((155, 90), (500, 90))
    d.line((155, 210), (640, 210))
    d.opening(290, 90)
    d.text(310, 62, "sender's contacts", anchor="middle")
    d.line((420, 90), (420, 210))
    d.resistor(420, 150, "100 Ω", "", upright=True)
    d.dot(420, 90)
    d.dot(420, 210)
    d.resistor(480, 90, "10 kΩ", "")
    d.line((503, 90), (640, 90))
    d.line((560, 90), (560, 210))
    d.resistor(560, 150, "10 kΩ", "", upright=True)
    d.dot(560, 90)
    d.dot(560, 210)
    terminal(d, 644, 90, "line in: tip", "start")
    terminal(d, 644, 210, "ground: sleeve", "start")
    d.text(150, 258, "one sound card at both ends, so there is one ground and no loop of grounds", GREY, 12)
    d.save("tone")


for folder, words_of in (("", {}), ("de/", GERMAN)):
    quantities()
    circuits()
assert not untold, untold
