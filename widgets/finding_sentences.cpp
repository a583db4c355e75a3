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
                      "What opens the contact: spring of the contact lever, residual magnetism or friction that holds "
                      "it, and a start instant that comes too early (start cam)."),
    QT_TRANSLATE_NOOP("Core",
                      "What opens the contact: worn cam flank, too stiff a contact spring, and a start instant that "
                      "comes too late (start cam, clutch)."),
    QT_TRANSLATE_NOOP("Core",
                      "Compare the fall of the line at the start with the falls inside the character on the grid."),
    QT_TRANSLATE_NOOP("Core", "The contact bounces for up to %1 ms"),
    QT_TRANSLATE_NOOP(
        "Core",
        "%1 re-openings at %2 closures; the longest took %3 ms (%4 of a unit) from the first closure to steady."),
    QT_TRANSLATE_NOOP("Core", "Contact: spring tension, burnt or dirty faces, a loose contact screw or bracket."),
    QT_TRANSLATE_NOOP("Core", "Look at the front of the marks on the grid: the line falls back after it has closed."),
    QT_TRANSLATE_NOOP("Core", "Clean the contact, set the spring tension, and measure again."),
    QT_TRANSLATE_NOOP("Core", "Now and then an instant stands far out, by up to %1"),
    QT_TRANSLATE_NOOP("Core", "The instants scatter by %1 at random"),
    QT_TRANSLATE_NOOP("Core",
                      "With speed, bias, levels and periodic lines taken out, %1 rms of a unit is left, up to %2."),
    QT_TRANSLATE_NOOP("Core", "The noise of the input explains %1 of it."),
    QT_TRANSLATE_NOOP("Core", "The contact bounces as well, which may be the whole cause."),
    QT_TRANSLATE_NOOP("Core",
                      "Contact: dirt, burnt faces, a loose contact or bracket; play in the contact lever and in the "
                      "bearings of the shaft."),
    QT_TRANSLATE_NOOP("Core",
                      "Send one character over and over: what still changes from one to the next is the contact's."),
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
    QT_TRANSLATE_NOOP("Core", "By the machine card that is %1."),
    QT_TRANSLATE_NOOP("Core", "No shaft of the machine card turns so."),
    QT_TRANSLATE_NOOP("Core", "It runs at %1 baud, which is no standard speed"),
    QT_TRANSLATE_NOOP("Core", "The unit is %1 ms."),
    QT_TRANSLATE_NOOP("Core", "It is %1 % off %2 baud."),
    QT_TRANSLATE_NOOP("Core", "Motor speed, governor, gears for another speed or another mains frequency."),
    QT_TRANSLATE_NOOP(
        "Core", "Read the speed on the machine's plate and set it here; count the shaft with a strobe or a timer."),
    QT_TRANSLATE_NOOP("Core", "Runs fast by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Runs slow by %1, within limits"),
    QT_TRANSLATE_NOOP("Core", "Runs fast by %1"),
    QT_TRANSLATE_NOOP("Core", "Runs slow by %1"),
    QT_TRANSLATE_NOOP("Core",
                      "The elements are %1 ms long where %2 ms belong to %3 baud; the instants are off in proportion "
                      "to their number, %4 at the beginning of stop."),
    QT_TRANSLATE_NOOP(
        "Core", "Governor setting and its contacts, motor, mains frequency, gears; belt or clutch slip when slow."),
    QT_TRANSLATE_NOOP("Core",
                      "Set the speed with a strobe or tuning fork, or by this reading, and watch both the unit and the "
                      "operations per minute."),
    QT_TRANSLATE_NOOP("Core", "The speed wanders by about %1"),
    QT_TRANSLATE_NOOP("Core",
                      "Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of "
                      "it, with a swing once in %3 seconds."),
    QT_TRANSLATE_NOOP(
        "Core", "Taken over eight characters at a time, the unit varies by %1 rms, %2 times what chance makes of it."),
    QT_TRANSLATE_NOOP("Core",
                      "Governor (hunting, dirty governor contacts, sticking weights), motor brushes, mains supply, a "
                      "slipping belt or clutch, dry bearings."),
    QT_TRANSLATE_NOOP("Core",
                      "Watch the speed trail for some minutes with the machine warm; hold the load even (no tape) and "
                      "see whether it still wanders."),
    QT_TRANSLATE_NOOP("Core", "The displacement swings by %1 at %2 Hz"),
    QT_TRANSLATE_NOOP("Core", "once in %1 characters: a slower shaft or wheel"),
    QT_TRANSLATE_NOOP("Core", "%1 times in each character: a shaft before the main shaft"),
    QT_TRANSLATE_NOOP("Core",
                      "A periodic line of %1 of a unit either way stands out at %2 Hz, %3; %4 rms is left without it."),
    QT_TRANSLATE_NOOP("Core",
                      "A periodic line of %1 of a unit either way stands out at %2 Hz; %3 rms is left without it."),
    QT_TRANSLATE_NOOP("Core",
                      "The gear or shaft that turns at %1 turns a minute: eccentric or bent gear, a damaged tooth, a "
                      "bent shaft, a bearing with play."),
    QT_TRANSLATE_NOOP("Core",
                      "With the power off turn the machine by hand through one revolution of that shaft and feel for a "
                      "stiff place; compare with the shaft speeds of the machine card."),
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
                      "The loop, not the machine: inductance of magnets in series, too low a supply voltage, a "
                      "capacitor or filter across the contact; a slice level off the middle."),
    QT_TRANSLATE_NOOP(
        "Core", "Measure with a resistor in place of the magnets, at the same current: the slope must become steep."),
    QT_TRANSLATE_NOOP("Core", "The signal is faint: peaks at %1 dB of full scale"),
    QT_TRANSLATE_NOOP("Core", "The signal is noisy: %1 dB above the noise"),
    QT_TRANSLATE_NOOP("Core",
                      "Half the swing is %1 above the noise and the largest sample %2 dB of full scale; the noise "
                      "alone displaces single instants by %3 rms."),
    QT_TRANSLATE_NOOP("Core",
                      "Half the swing is %1 above the noise; the noise alone displaces single instants by %2 rms."),
    QT_TRANSLATE_NOOP("Core",
                      "Input level and gain of the sound card, the series resistor or coupler at the loop, cables and "
                      "their screens, microphone boost."),
    QT_TRANSLATE_NOOP("Core",
                      "Raise the level step by step while watching the level meter; it must stay clear of clipping."),
    QT_TRANSLATE_NOOP("Core", "Mains hum of %1 of the swing"),
    QT_TRANSLATE_NOOP("Core",
                      "A slow disturbance of %1 of the swing, peak to peak, rides on the line signal; it is not the "
                      "contacts' doing."),
    QT_TRANSLATE_NOOP("Core",
                      "A ground loop between computer and machine, an unscreened cable beside mains leads, the loop "
                      "supply's own ripple."),
    QT_TRANSLATE_NOOP("Core",
                      "Run the computer from its battery, or through an isolating transformer at the audio input, and "
                      "see the hum go."),
    QT_TRANSLATE_NOOP("Core", "With the tape stopped it is seen alone on the grid."),
    QT_TRANSLATE_NOOP("Core", "The input is overdriven: %1 of the samples clip"),
    QT_TRANSLATE_NOOP(
        "Core", "%1 of all samples lie at full scale; levels and coupling cannot be told well from flattened samples."),
    QT_TRANSLATE_NOOP("Core", "Flattened samples may be why nothing can be read."),
    QT_TRANSLATE_NOOP("Core", "Input gain of the sound card, microphone boost, the coupler or divider at the loop."),
    QT_TRANSLATE_NOOP("Core", "Turn the gain down until the level meter shows no clipping, then measure again."),
    QT_TRANSLATE_NOOP("Core", "The signal arrives reversed; it is read the right way round"),
    QT_TRANSLATE_NOOP("Core",
                      "Read one way round the line falls into characters with start and stop, the other way it does "
                      "not: mark and space are exchanged between loop and samples."),
    QT_TRANSLATE_NOOP("Core", "Leads of the coupler exchanged, or a sound card that inverts."),
    QT_TRANSLATE_NOOP("Core", "Nothing in the machine."),
    QT_TRANSLATE_NOOP("Core",
                      "Exchange the two leads at the coupler if you want it upright; the readings are the same."),
    QT_TRANSLATE_NOOP("Core", "Level %1 hardly ever sends a mark"),
    QT_TRANSLATE_NOOP("Core", "Level %1 hardly ever sends a space"),
    QT_TRANSLATE_NOOP("Core", "Of %1 characters only %2 had a mark on level %3."),
    QT_TRANSLATE_NOOP("Core", "Of %1 characters only %2 had a space on level %3."),
    QT_TRANSLATE_NOOP(
        "Core",
        "The text is not known; plain text uses every level either way in a quarter of its characters or more."),
    QT_TRANSLATE_NOOP("Core", "Level %1 seems to lose marks: about %2 of %3"),
    QT_TRANSLATE_NOOP("Core", "Level %1 seems to fill spaces: about %2 of %3"),
    QT_TRANSLATE_NOOP("Core", "The text is not known."),
    QT_TRANSLATE_NOOP("Core",
                      "Read as plain text, about %1 of its %2 characters fit in only with a mark on level %3 that did "
                      "not come: %4 of that level's marks."),
    QT_TRANSLATE_NOOP("Core",
                      "Read as plain text, about %1 of its %2 characters fit in only with a space on level %3 that was "
                      "filled: %4 of that level's spaces."),
    QT_TRANSLATE_NOOP("Core", "For example: %1."),
    QT_TRANSLATE_NOOP("Core", "The chance that the text itself is like that is %1."),
    QT_TRANSLATE_NOOP("Core", "Level %1: sensing pin, transfer lever, its spring and its contact."),
    QT_TRANSLATE_NOOP("Core",
                      "Level %1: sensing pin stuck up, transfer lever not returning, contact welded or shorted."),
    QT_TRANSLATE_NOOP(
        "Core", "Run a tape whose text is known (RY uses every level both ways) and give it as the expected text."),
    QT_TRANSLATE_NOOP("Core", "A single mark is lost"),
    QT_TRANSLATE_NOOP("Core", "A single space is filled"),
    QT_TRANSLATE_NOOP("Core", "Held against %1, %2 of the marks are lost; that may be chance."),
    QT_TRANSLATE_NOOP("Core", "Held against %1, %2 of the spaces are filled; that may be chance."),
    QT_TRANSLATE_NOOP("Core", "Marks are lost on several levels: %1 of %2"),
    QT_TRANSLATE_NOOP("Core", "Spaces are filled on several levels: %1 of %2"),
    QT_TRANSLATE_NOOP(
        "Core", "Held against %1, %2 of the marks are lost; level %3 most of all, but not beyond what chance makes."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Held against %1, %2 of the spaces are filled; level %3 most of all, but not beyond what chance makes."),
    QT_TRANSLATE_NOOP("Core",
                      "What all levels share: tape guide and lid, position of the feed holes to the sensing pins, "
                      "contact and transmitting cams, a contact that chatters; and a weak or disturbed input."),
    QT_TRANSLATE_NOOP("Core", "Try a new tape, and compare the faulty characters on the tape view."),
    QT_TRANSLATE_NOOP("Core", "Marks of level %1 are lost: %2 of %3"),
    QT_TRANSLATE_NOOP("Core", "Spaces of level %1 are filled: %2 of %3"),
    QT_TRANSLATE_NOOP("Core", "Held against %1, level %2 lost %3 of %4 marks, %5; the other levels together %6 of %7."),
    QT_TRANSLATE_NOOP("Core",
                      "Held against %1, level %2 filled %3 of %4 spaces, %5; the other levels together %6 of %7."),
    QT_TRANSLATE_NOOP("Core",
                      "A mark that is lost takes the changes of the line at %1 and %2 with it; those that are left "
                      "come in time."),
    QT_TRANSLATE_NOOP("Core",
                      "Look at a faulty character on the grid; with the power off press the sensing pin of level %1 by "
                      "hand and feel its way."),
    QT_TRANSLATE_NOOP("Core",
                      "Level %1: sensing pin worn, bent or gummed, weak pin spring, transfer lever not followed "
                      "through, dirty contact of that level; then the tape itself (holes not clean)."),
    QT_TRANSLATE_NOOP("Core",
                      "Level %1: sensing pin or transfer lever slow to return (gummed, weak return spring), contact "
                      "sticking or shorted; then a tape torn at that row."),
    QT_TRANSLATE_NOOP("Core", "The stop begins %1 late"),
    QT_TRANSLATE_NOOP("Core", "The stop begins %1 early"),
    QT_TRANSLATE_NOOP("Core", "Level %1 comes %2 late"),
    QT_TRANSLATE_NOOP("Core", "Level %1 comes %2 early"),
    QT_TRANSLATE_NOOP(
        "Core",
        "At %1 the line changes %2 of a unit (%3 ms) late %4; with that set aside the other instants agree within %5."),
    QT_TRANSLATE_NOOP("Core",
                      "At %1 the line changes %2 of a unit (%3 ms) early %4; with that set aside the other instants "
                      "agree within %5."),
    QT_TRANSLATE_NOOP("Core", "So does %1, by %2 %."),
    QT_TRANSLATE_NOOP("Core", "Bias and end distortion as read are partly this: without it they are %1 % and %2 %."),
    QT_TRANSLATE_NOOP("Core", "So is the speed error: without it %1 %."),
    QT_TRANSLATE_NOOP("Core", "Stop cam or stop lever; the end of level %1's travel."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Level %1: worn or gummed transfer lever, its cam or cam follower, its contact gap, weak lever spring."),
    QT_TRANSLATE_NOOP("Core",
                      "Compare the dots of %1 with its neighbours in the displacement plot; move that lever by hand "
                      "with the power off and feel for drag."),
    QT_TRANSLATE_NOOP("Core", "The tape feed slips: %1 in %2 characters"),
    QT_TRANSLATE_NOOP("Core",
                      "Held against %1, %2 characters came twice and %3 were passed over, %4 of the characters; the "
                      "levels themselves are right there."),
    QT_TRANSLATE_NOOP("Core", "On RY a character sent twice looks the same as one passed over."),
    QT_TRANSLATE_NOOP(
        "Core", "Feed wheel and its pins, feed pawl and detent, tape guide and lid; then the feed holes of the tape."),
    QT_TRANSLATE_NOOP(
        "Core", "Mark the tape and let it run: the mark must come by after the same number of characters each round."),
    QT_TRANSLATE_NOOP("Core", "Try a new tape before the feed is touched."),
};

}  // namespace

std::span<const char* const> findingSentences() { return kFindings; }

}  // namespace trueunit
