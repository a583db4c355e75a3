// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <array>

#include "widgets/core_sentences.h"

namespace trueunit {

namespace {

// What the findings say, a sentence each; a longer form stands before a shorter one that would fit as well.
constexpr std::array kFindings = {
    QT_TRANSLATE_NOOP(
        "Core", "Unplug the machine and let it come to rest before hands or tools go in, and turn it by hand only."),
    QT_TRANSLATE_NOOP("Core",
                      "Switch the loop supply off and make sure it is dead before touching a contact or a terminal: "
                      "the loop is hazardous live, and its current limit does not make it safe."),
    QT_TRANSLATE_NOOP("Core", "Local codes and licensed practice come first."),
    QT_TRANSLATE_NOOP("Core", "Contacts are cleaned dry with a burnisher and never oiled."),
    QT_TRANSLATE_NOOP("Core", "early"),
    QT_TRANSLATE_NOOP("Core", "late"),
    QT_TRANSLATE_NOOP("Core", "rises"),
    QT_TRANSLATE_NOOP("Core", "falls"),
    QT_TRANSLATE_NOOP("Core", "the expected text"),
    QT_TRANSLATE_NOOP("Core", "the fox sentence"),
    QT_TRANSLATE_NOOP("Core", "the rounds of the tape before"),
    QT_TRANSLATE_NOOP("Core", "%1 over the last %2 characters"),
    QT_TRANSLATE_NOOP("Core", "the beginning of stop"),
    QT_TRANSLATE_NOOP("Core", "instant %1"),
    QT_TRANSLATE_NOOP("Core", "in both directions"),
    QT_TRANSLATE_NOOP("Core", "where its marks begin and end, and nowhere else"),
    QT_TRANSLATE_NOOP("Core", "to mark only"),
    QT_TRANSLATE_NOOP("Core", "to space only"),
    QT_TRANSLATE_NOOP("Core", "an unknown ratio"),
    QT_TRANSLATE_NOOP("Core", "%1 % (95 % interval %2 to %3 %)"),
    QT_TRANSLATE_NOOP("Core", "Marks too long by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Marks too short by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Marks too long by %1"),
    QT_TRANSLATE_NOOP("Core", "Marks too short by %1"),
    QT_TRANSLATE_NOOP("Core",
                      "All instants to mark come %1 of a unit (%2 ms) %3, whatever the level; those to space do not."),
    QT_TRANSLATE_NOOP("Core", "A lever is out of place as well; its part is left out of this figure."),
    QT_TRANSLATE_NOOP("Core", "Mend the lever first, then turn the eccentric."),
    QT_TRANSLATE_NOOP("Core", "What short elements do is left out of this figure."),
    QT_TRANSLATE_NOOP("Core",
                      "The instants to space are off by as much the same way: the start instant itself may be %1, "
                      "which cannot be told apart."),
    QT_TRANSLATE_NOOP("Core", "Contact: the gap is too small or the contact closes too early."),
    QT_TRANSLATE_NOOP("Core", "Contact box eccentric, contact spring tension, wear of the contact or of its lever."),
    QT_TRANSLATE_NOOP("Core", "Contact: the gap is too large or the contact closes too late."),
    QT_TRANSLATE_NOOP("Core", "Contact box eccentric, contact spring tension, dirt or burning on the contact."),
    QT_TRANSLATE_NOOP("Core",
                      "Turn the contact eccentric a little and watch the bias: it must move for all levels alike."),
    QT_TRANSLATE_NOOP("Core", "Marks end late by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Marks end early by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Marks end late by %1"),
    QT_TRANSLATE_NOOP("Core", "Marks end early by %1"),
    QT_TRANSLATE_NOOP(
        "Core",
        "Counted from the start of the character, all its other instants to space come %1 of a unit (%2 ms) "
        "%3."),
    QT_TRANSLATE_NOOP("Core",
                      "What lets the contact open after a level but not at the start: trailing flanks of the level "
                      "cams, transfer levers or their bail that fall back slowly (gum, friction, a weak spring), a "
                      "contact lever that sticks where the start has a contact of its own."),
    QT_TRANSLATE_NOOP(
        "Core",
        "What lets the contact open after a level but not at the start: worn trailing flanks of the level "
        "cams, worn transfer levers or bail, too stiff a contact spring where the start has a contact of "
        "its own."),
    QT_TRANSLATE_NOOP("Core", "Or the start instant, from which all others are counted: start cam, clutch."),
    QT_TRANSLATE_NOOP("Core", "One contact for both would be off at the start as well, which shows as bias."),
    QT_TRANSLATE_NOOP(
        "Core",
        "With an ohmmeter across the contact turn the machine by hand and see where on the cams it opens, "
        "at the start and after each level."),
    QT_TRANSLATE_NOOP("Core",
                      "Off its place after all levels alike, look first at what they share, the bail and the contact "
                      "lever, then at cams and levers."),
    QT_TRANSLATE_NOOP("Core",
                      "In its place everywhere, it is off at speed alone: clean the pivots and look at the springs."),
    QT_TRANSLATE_NOOP("Core", "The contact bounces for up to %1 ms"),
    QT_TRANSLATE_NOOP("Core",
                      "%1 of %2 closures bounced, with %3 re-openings or halts in all; the longest took %4 ms (%5 of a "
                      "unit) from the first closure to steady."),
    QT_TRANSLATE_NOOP("Core",
                      "Contact, what is easiest to try first: a loose screw or bracket, burnt or dirty faces, spring "
                      "tension."),
    QT_TRANSLATE_NOOP("Core",
                      "Look at the front of the marks on the grid: the line falls back after it has closed, or where "
                      "that is too short for it halts half way up."),
    QT_TRANSLATE_NOOP("Core", "Tighten, clean, set the spring, in this order, and measure again after each."),
    QT_TRANSLATE_NOOP("Core", "Now and then an instant stands far out, by up to %1"),
    QT_TRANSLATE_NOOP("Core", "The instants scatter by %1 at random"),
    QT_TRANSLATE_NOOP("Core",
                      "With speed, bias, levels and periodic lines taken out, %1 rms of a unit is left, up to %2."),
    QT_TRANSLATE_NOOP("Core", "With speed, bias and levels taken out, %1 rms of a unit is left, up to %2."),
    QT_TRANSLATE_NOOP("Core", "The noise of the input alone would make %1."),
    QT_TRANSLATE_NOOP("Core", "It is too short yet to tell whether it comes and goes with the drive."),
    QT_TRANSLATE_NOOP("Core",
                      "It grows through the character, as what the drive does: watch it over more characters first."),
    QT_TRANSLATE_NOOP("Core", "The contact bounces as well, which may be the whole cause."),
    QT_TRANSLATE_NOOP("Core",
                      "Contact: dirt, burnt faces, a loose contact or bracket; play in the contact lever and in the "
                      "bearings of the shaft."),
    QT_TRANSLATE_NOOP("Core",
                      "Freeze and step from character to character with the arrow keys, best through one that is sent "
                      "over and over: flags that change one by one are the contact's, where all of a character change "
                      "together it is its start."),
    QT_TRANSLATE_NOOP("Core", "All instants of a character share %1, %2 is each one's own: it is not the start."),
    QT_TRANSLATE_NOOP("Core", "The start scatters by %1"),
    QT_TRANSLATE_NOOP("Core", "Level by level they lie at %1 to %2 %."),
    QT_TRANSLATE_NOOP("Core",
                      "All instants of a character share %1, %2 is each one's own: it is the start they are counted "
                      "from that comes early or late."),
    QT_TRANSLATE_NOOP("Core",
                      "All instants of a character share %1, %2 is each one's own: the start scatters more than the "
                      "others; begin with its contact."),
    QT_TRANSLATE_NOOP("Core",
                      "What makes the start: its own contact where it has one (dirt, burnt faces, a loose screw), then "
                      "its lever, cam and spring, and their play."),
    QT_TRANSLATE_NOOP("Core", "That makes the stop before it long or short as well."),
    QT_TRANSLATE_NOOP("Core",
                      "The starts keep their time: so it works on what makes the levels (their cams, levers, contacts) "
                      "and not on what makes the start."),
    QT_TRANSLATE_NOOP("Core", "Not a contact that sends the levels too: that would scatter each instant by itself."),
    QT_TRANSLATE_NOOP("Core", "Common practice bears %1 rms."),
    QT_TRANSLATE_NOOP("Core", "That is of the last %1 characters."),
    QT_TRANSLATE_NOOP("Core",
                      "Freeze and step from character to character with the arrow keys: within each, all flags are off "
                      "by about as much."),
    QT_TRANSLATE_NOOP("Core", "Clean the start contact and measure again."),
    QT_TRANSLATE_NOOP("Core", "Clean the contact and measure again."),
    QT_TRANSLATE_NOOP("Core", "That is a machine for 60 Hz on 50 Hz mains: wrong motor or gears for this mains."),
    QT_TRANSLATE_NOOP("Core", "That is a machine for 50 Hz on 60 Hz mains: wrong motor or gears for this mains."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Start to start it takes %1 ms, a stop of %2 of its own units: the whole shaft turns at the wrong speed."),
    QT_TRANSLATE_NOOP("Core",
                      "Start to start it takes %1 ms, as it should: the shaft turns at the right speed and the "
                      "elements alone are of the wrong length (cam sleeve, wrong cams)."),
    QT_TRANSLATE_NOOP("Core", "Start to start it takes %1 ms."),
    QT_TRANSLATE_NOOP("Core", "A level out of place pulls the speed as read to %1 %; here it is set aside."),
    QT_TRANSLATE_NOOP("Core", "What short elements do pulls the speed as read to %1 %; here it is set aside."),
    QT_TRANSLATE_NOOP("Core", "As a swing of the speed that is %1 either way."),
    QT_TRANSLATE_NOOP("Core",
                      "Held against the start of their character the first instants swing as far as the last: that is "
                      "not the speed of the drive, nor the bias, though the trails of both may wave with it."),
    QT_TRANSLATE_NOOP("Core", "By the machine card that is %1."),
    QT_TRANSLATE_NOOP("Core",
                      "No shaft of the machine card turns so; the card knows the motor's and the transmitting one."),
    QT_TRANSLATE_NOOP("Core", "It runs at %1 baud, which is no standard speed"),
    QT_TRANSLATE_NOOP("Core", "The unit is %1 ms."),
    QT_TRANSLATE_NOOP("Core", "It is %1 % off %2 baud."),
    QT_TRANSLATE_NOOP("Core", "Motor speed, governor, gears for another speed or another mains frequency."),
    QT_TRANSLATE_NOOP(
        "Core", "Read the speed on the machine's plate and set it here; count the shaft with a strobe or a timer."),
    QT_TRANSLATE_NOOP("Core", "Runs fast by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Runs slow by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Runs fast by %1, if it is meant for %2 baud"),
    QT_TRANSLATE_NOOP("Core", "Runs slow by %1, if it is meant for %2 baud"),
    QT_TRANSLATE_NOOP("Core", "Nobody has said what speed is meant: the nearest usual one was taken."),
    QT_TRANSLATE_NOOP("Core", "First read the speed on the machine's plate and set it in the window."),
    QT_TRANSLATE_NOOP("Core", "Runs fast by %1"),
    QT_TRANSLATE_NOOP("Core", "Runs slow by %1"),
    QT_TRANSLATE_NOOP("Core",
                      "The elements are %1 ms long where %2 ms belong to %3 baud; the instants are off in proportion "
                      "to their number, %4 at the beginning of stop."),
    QT_TRANSLATE_NOOP(
        "Core", "Governor, where the motor has one: its setting and contacts; then motor, mains frequency, gears."),
    QT_TRANSLATE_NOOP("Core",
                      "Governor, where the motor has one: its setting and contacts; then motor, mains frequency, "
                      "gears; a slipping belt or clutch."),
    QT_TRANSLATE_NOOP("Core",
                      "Set the speed with a strobe or tuning fork, or by this reading, and watch both the unit and the "
                      "operations per minute."),
    QT_TRANSLATE_NOOP("Core", "The speed wanders by about %1 either way"),
    QT_TRANSLATE_NOOP("Core", "A speed that was set in that time shows so too."),
    QT_TRANSLATE_NOOP("Core",
                      "A swing so regular speaks for a governor that hunts (contacts, weights, spring), or for a part "
                      "that turns once in that time, such as the joint of a belt; then motor brushes, mains supply, "
                      "dry bearings."),
    QT_TRANSLATE_NOOP("Core",
                      "Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of "
                      "it, with a swing once in %3 seconds."),
    QT_TRANSLATE_NOOP(
        "Core", "Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of it."),
    QT_TRANSLATE_NOOP("Core",
                      "Governor (hunting, dirty governor contacts, sticking weights), motor brushes, mains supply, a "
                      "slipping belt or clutch, dry bearings."),
    QT_TRANSLATE_NOOP("Core",
                      "Watch the trail of the speed for some minutes with the machine warm; hold the load even (no "
                      "tape) and see whether it still wanders."),
    QT_TRANSLATE_NOOP("Core", "The displacement swings by %1 at %2 Hz"),
    QT_TRANSLATE_NOOP(
        "Core", "once in %1 characters: a shaft or wheel that turns once in so many turns of the transmitting shaft"),
    QT_TRANSLATE_NOOP("Core", "%1 times in each character: a shaft before the transmitting shaft"),
    QT_TRANSLATE_NOOP("Core",
                      "A periodic line of %1 of a unit either way stands out at %2 Hz, %3; %4 rms is left without it."),
    QT_TRANSLATE_NOOP("Core",
                      "A periodic line of %1 of a unit either way stands out at %2 Hz; %3 rms is left without it."),
    QT_TRANSLATE_NOOP("Core",
                      "The gear or shaft that turns at %1 turns a minute: eccentric or bent gear, a damaged tooth, a "
                      "bent shaft, a bearing with play."),
    QT_TRANSLATE_NOOP("Core", "More characters make this surer: what is rare shows only then."),
    QT_TRANSLATE_NOOP("Core", "A joint in a belt that comes round so often and a governor that hunts do the same."),
    QT_TRANSLATE_NOOP("Core",
                      "The gear or shaft that turns at %1 turns a minute, above all where it can shift contacts and "
                      "cams against each other: a bent shaft, a bearing with play, an eccentric or bent gear, a "
                      "damaged tooth."),
    QT_TRANSLATE_NOOP("Core",
                      "Count teeth from the transmitting shaft on to find which turns so. With the power off turn the "
                      "machine by hand through one revolution of that shaft and feel for a stiff place or play."),
    QT_TRANSLATE_NOOP("Core", "The stop is irregular: %1 of a unit rms"),
    QT_TRANSLATE_NOOP("Core", "The stop is too long by %1 units"),
    QT_TRANSLATE_NOOP("Core",
                      "From start to start the interval varies by %1 ms rms, while the instants within the characters "
                      "keep their places within %2 rms; the stop is %3 units on average, nominal %4."),
    QT_TRANSLATE_NOOP("Core",
                      "From start to start the interval varies by %1 ms rms, while the instants within the characters "
                      "keep their places within %2 rms; the stop is %3 units on average."),
    QT_TRANSLATE_NOOP("Core", "The clutch lets go late each time, or the machine waits for its tape."),
    QT_TRANSLATE_NOOP("Core",
                      "Clutch and its trip: trip lever, latch and pawl, clutch teeth and spring, dry or gummed clutch, "
                      "friction set too low; the tape-out and feed interlocks."),
    QT_TRANSLATE_NOOP("Core",
                      "Watch the start of each character against the one before on the grid; with the power off trip "
                      "the clutch by hand and feel whether it engages at once."),
    QT_TRANSLATE_NOOP("Core", "The displacement depends on the element before, by %1"),
    QT_TRANSLATE_NOOP("Core", "The loop current %1 slowly: %2 ms"),
    QT_TRANSLATE_NOOP(
        "Core",
        "From 10 to 90 % of the swing the line takes %1 ms to mark and %2 ms to space, a time constant of %3 ms."),
    QT_TRANSLATE_NOOP("Core", "From 10 to 90 % of the swing the line takes %1 ms to mark and %2 ms to space."),
    QT_TRANSLATE_NOOP("Core",
                      "That alone shifts the instants to mark by %1 % against those to space; the bias read is %2 %."),
    QT_TRANSLATE_NOOP("Core", "What is left by length of the element before: %1."),
    QT_TRANSLATE_NOOP("Core",
                      "Instants that end a single unit come %1 %2 against the others, to mark and to space alike; that "
                      "pulls at bias, end distortion and speed as they are read."),
    QT_TRANSLATE_NOOP("Core",
                      "Measure the contacts alone on a battery: if the dependence stays, it is the contact lever's; if "
                      "it goes, that of a relay or of what else lies in the loop."),
    QT_TRANSLATE_NOOP("Core", "Set aside, bias is %1 % and end distortion %2 %."),
    QT_TRANSLATE_NOOP("Core", "Set aside, bias is %1 %, end distortion %2 % and the speed error %3 %."),
    QT_TRANSLATE_NOOP("Core", "What has not come to rest after one unit."),
    QT_TRANSLATE_NOOP("Core", "What swings past its place and has not come back after one unit."),
    QT_TRANSLATE_NOOP("Core", "What has not arrived at its place after one unit."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Edges so steep speak for a contact lever (spring, pivot, stop) or a relay in the loop rather than "
        "for magnets or a capacitor."),
    QT_TRANSLATE_NOOP("Core", "Which of them, a recording alone cannot tell."),
    QT_TRANSLATE_NOOP("Core",
                      "The loop, not the machine: inductance of magnets in series, too low a supply voltage, a "
                      "capacitor or filter across the contact; a slice level off the middle."),
    QT_TRANSLATE_NOOP(
        "Core", "Measure with a resistor in place of the magnets, at the same current: the slope must become steep."),
    QT_TRANSLATE_NOOP("Core", "The stop is %1 units, nominal %2, and steady."),
    QT_TRANSLATE_NOOP("Core",
                      "Cam sleeve and cams; or several levels out of place at once, which together pass for a speed."),
    QT_TRANSLATE_NOOP("Core",
                      "On a battery of 12 V in place of the loop dirt alone can do it, which the loop's higher voltage "
                      "breaks through."),
    QT_TRANSLATE_NOOP("Core", "%1 where it stands, in %2 of %3 characters"),
};

}  // namespace

std::span<const char* const> findingSentences() { return kFindings; }

}  // namespace trueunit
