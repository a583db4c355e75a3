// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <array>

#include "widgets/core_sentences.h"

namespace trueunit {

namespace {

// As they stand in frames that were kept before the words were changed.
constexpr std::array kEarlier = {
    QT_TRANSLATE_NOOP("Core", "Turn the eccentric until the bias stands at zero."),
    QT_TRANSLATE_NOOP("Core", "The start scatters by %1 at random"),
    QT_TRANSLATE_NOOP("Core",
                      "What makes the start: its contact (dirt, burnt faces, a loose screw) and its lever, cam and "
                      "spring; then the start lever and its play."),
    QT_TRANSLATE_NOOP("Core", "Not the contacts of the levels, unless one contact sends them all."),
    QT_TRANSLATE_NOOP("Core",
                      "Freeze some characters one after the other: within each, all flags are off by about as much."),
    QT_TRANSLATE_NOOP("Core",
                      "Freeze some characters one after the other, best of one that is sent over and over: flags that "
                      "change one by one are the contact's, where all of a character change together it is its start."),
    QT_TRANSLATE_NOOP("Core", "Contact: spring tension, burnt or dirty faces, a loose contact screw or bracket."),
    QT_TRANSLATE_NOOP("Core",
                      "Count teeth from the main shaft on to find which turns so. With the power off turn the machine "
                      "by hand through one revolution of it and feel for a stiff place or play."),
    QT_TRANSLATE_NOOP(
        "Core",
        "%1 re-openings at %2 closures; the longest took %3 ms (%4 of a unit) from the first closure to steady."),
    QT_TRANSLATE_NOOP("Core", "Look at the front of the marks on the grid: the line falls back after it has closed."),
    QT_TRANSLATE_NOOP("Core",
                      "Send one character over and over: what still changes from one to the next is the contact's."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Measure with a resistor in place of the magnets, at the same current, or the contacts alone on a "
        "battery: if the dependence goes, it is the loop's; if it stays, the contact lever's."),
    QT_TRANSLATE_NOOP("Core",
                      "Watch the speed for some minutes with the machine warm; hold the load even (no tape) and "
                      "see whether it still wanders."),
    QT_TRANSLATE_NOOP("Core",
                      "Click a faulty character on the tape view to see it on the grid; with the power off press the "
                      "sensing pin of level %1 by hand and feel its way."),
    QT_TRANSLATE_NOOP("Core", "A single mark is missed"),
    QT_TRANSLATE_NOOP("Core", "Marks are missed on several levels: %1 of %2"),
    QT_TRANSLATE_NOOP("Core", "Marks of level %1 are missed: %2 of %3"),
    QT_TRANSLATE_NOOP("Core", "Held against %1, %2 of the marks are missed; that may be chance."),
    QT_TRANSLATE_NOOP(
        "Core", "Held against %1, %2 of the marks are missed; level %3 most of all, but not beyond what chance makes."),
    QT_TRANSLATE_NOOP("Core",
                      "The text of the tape is not known and does not repeat three times: missed marks and filled "
                      "spaces cannot be counted."),
    QT_TRANSLATE_NOOP(
        "Core", "Governor setting and its contacts, motor, mains frequency, gears; belt or clutch slip when slow."),
    QT_TRANSLATE_NOOP("Core", "So does %1, by %2 %."),
    QT_TRANSLATE_NOOP("Core", "Governor setting and its contacts, motor, mains frequency, gears."),
    QT_TRANSLATE_NOOP("Core",
                      "Governor setting and its contacts, motor, mains frequency, gears; a slipping belt or clutch."),
    QT_TRANSLATE_NOOP("Core",
                      "Watch the speed trail for some minutes with the machine warm; hold the load even (no tape) and "
                      "see whether it still wanders."),
    QT_TRANSLATE_NOOP("Core", "once in %1 characters: a slower shaft or wheel"),
    QT_TRANSLATE_NOOP("Core",
                      "With the power off turn the machine by hand through one revolution of that shaft and feel for a "
                      "stiff place; compare with the shaft speeds of the machine card."),
    QT_TRANSLATE_NOOP("Core",
                      "What opens the contact: spring of the contact lever, residual magnetism or friction that holds "
                      "it, and a start instant that comes too early (start cam)."),
    QT_TRANSLATE_NOOP("Core",
                      "What opens the contact: worn cam flank, too stiff a contact spring, and a start instant that "
                      "comes too late (start cam, clutch)."),
    QT_TRANSLATE_NOOP(
        "Core",
        "With an ohmmeter across the contact turn the machine by hand and see where on the cams it opens: "
        "at the levels off its place, it is the contact lever; at the start alone, the start cam."),
    QT_TRANSLATE_NOOP("Core", "Leads of the coupler exchanged, or a sound card that inverts."),
    QT_TRANSLATE_NOOP("Core",
                      "Exchange the two leads at the coupler if you want it upright; the readings are the same."),
    QT_TRANSLATE_NOOP("Core", "Bias and end distortion as read are partly this: without it they are %1 % and %2 %."),
    QT_TRANSLATE_NOOP("Core", "So is the speed error: without it %1 %."),
    QT_TRANSLATE_NOOP("Core",
                      "Compare the dots of %1 with its neighbours in the displacement plot; move that lever by hand "
                      "with the power off and feel for drag."),
    QT_TRANSLATE_NOOP("Core", "The speed wanders by about %1"),
    QT_TRANSLATE_NOOP("Core",
                      "Against the start of their character the early instants swing as far as the late ones: that is "
                      "not the speed of the drive."),
    QT_TRANSLATE_NOOP("Core", "No shaft of the machine card turns so."),
    QT_TRANSLATE_NOOP(
        "Core", "The starts keep their time: so where it works the contact of the levels and not that of the start."),
    QT_TRANSLATE_NOOP("Core",
                      "once in %1 characters: a shaft or wheel that turns once in so many turns of the main shaft"),
    QT_TRANSLATE_NOOP("Core", "%1 times in each character: a shaft before the main shaft"),
    QT_TRANSLATE_NOOP("Core",
                      "Count teeth from the main shaft on to find which turns so. With the power off turn the machine "
                      "by hand through one revolution of that shaft and feel for a stiff place or play."),
    QT_TRANSLATE_NOOP("Core", "Leads exchanged between coupler and sound card, or a sound card that inverts."),
    QT_TRANSLATE_NOOP("Core", "Input gain of the sound card, microphone boost, the coupler or divider at the loop."),
    QT_TRANSLATE_NOOP("Core", "Cable, coupler, gain; is the loop closed and fed, does the tape run?"),
    QT_TRANSLATE_NOOP("Core",
                      "Held against %1, %2 characters came twice and %3 were passed over, %4 of the characters; the "
                      "levels themselves are right there."),
    QT_TRANSLATE_NOOP("Core",
                      "Read one way round the line falls into characters with start and stop, the other way it does "
                      "not: mark and space are exchanged between loop and samples."),
    QT_TRANSLATE_NOOP("Core",
                      "Input level and gain of the sound card, the series resistor or coupler at the loop, cables and "
                      "their screens, microphone boost."),
    QT_TRANSLATE_NOOP("Core", "Held against %1, so many characters came twice: %2; so many were passed over: %3."),
    QT_TRANSLATE_NOOP("Core",
                      "What moves the tape: feed pawl and its spring, feed wheel and its pins; what holds it back: "
                      "lid, guide, reel; then the feed holes of the tape."),
    QT_TRANSLATE_NOOP(
        "Core", "Feed wheel and its pins, feed pawl and detent, tape guide and lid; then the feed holes of the tape."),
    QT_TRANSLATE_NOOP("Core",
                      "%1 re-openings or halts at %2 closures; the longest took %3 ms (%4 of a unit) from the first "
                      "closure to steady."),
    QT_TRANSLATE_NOOP("Core", "Clean the contact, set the spring tension, and measure again."),
    QT_TRANSLATE_NOOP("Core", "That is %1 of the characters; the levels themselves are right there."),
    QT_TRANSLATE_NOOP(
        "Core",
        "The tape itself, its feed holes; then feed wheel and its pins, feed pawl and detent, tape guide and lid."),
    QT_TRANSLATE_NOOP("Core", "The tape feed slips: %1 in %2 characters"),
};

}  // namespace

std::span<const char* const> earlierSentences() { return kEarlier; }

}  // namespace trueunit
