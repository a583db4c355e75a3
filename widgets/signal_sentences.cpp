// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <array>

#include "widgets/core_sentences.h"

namespace trueunit {

namespace {

// What the findings of the input and of the levels say; a longer form stands before a shorter one that would fit as
// well.
constexpr std::array kOfSignal = {
    QT_TRANSLATE_NOOP("Core", "The signal is faint: peaks at %1 dB of full scale"),
    QT_TRANSLATE_NOOP("Core", "The signal is noisy: %1 dB above the noise"),
    QT_TRANSLATE_NOOP("Core",
                      "Half the swing is %1 above the noise and the largest sample %2 dB of full scale; the noise "
                      "alone displaces single instants by %3 rms."),
    QT_TRANSLATE_NOOP("Core",
                      "Half the swing is %1 above the noise; the noise alone displaces single instants by %2 rms."),
    QT_TRANSLATE_NOOP("Core",
                      "Input level and gain of the sound card, the series resistor or stage at the loop, cables and "
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
    QT_TRANSLATE_NOOP("Core",
                      "%1 of all samples are cut off at %2 dB of full scale; levels and coupling cannot be told well "
                      "from flattened samples."),
    QT_TRANSLATE_NOOP("Core", "Flattened samples may be why nothing can be read."),
    QT_TRANSLATE_NOOP("Core", "Input gain of the sound card, microphone boost, the stage or divider at the loop."),
    QT_TRANSLATE_NOOP("Core", "Turn the gain down until the level meter shows no clipping, then measure again."),
    QT_TRANSLATE_NOOP("Core", "The signal arrives reversed; it is read the right way round"),
    QT_TRANSLATE_NOOP("Core",
                      "Read one way round the line falls into characters with start and stop, the other way it does "
                      "not: mark and space are exchanged on the way from the loop to the samples."),
    QT_TRANSLATE_NOOP("Core", "Leads exchanged between loop, stage and sound card, or a sound card that inverts."),
    QT_TRANSLATE_NOOP("Core", "Nothing in the machine."),
    QT_TRANSLATE_NOOP("Core", "Nothing needs doing: the readings are the same either way."),
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
    QT_TRANSLATE_NOOP("Core", "Held against %1, %2 of the marks are lost; one on each of %3 levels."),
    QT_TRANSLATE_NOOP("Core", "Held against %1, %2 of the spaces are filled; one on each of %3 levels."),
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
    QT_TRANSLATE_NOOP("Core", "Out as well, and set aside too: %1, by %2 %."),
    QT_TRANSLATE_NOOP("Core",
                      "To mark it hides behind the bias, which moves all instants to mark by %1 %: there it stands at "
                      "%2 % and looks right."),
    QT_TRANSLATE_NOOP("Core", "Stop cam or stop lever; the end of level %1's travel."),
    QT_TRANSLATE_NOOP(
        "Core",
        "Level %1: worn or gummed transfer lever, its cam or cam follower, its contact gap, weak lever spring."),
    QT_TRANSLATE_NOOP("Core",
                      "Compare the points of %1 with its neighbours in the displacement plot; move that lever by hand "
                      "with the power off and feel its way: drag speaks for gum or a weak spring, play for wear, "
                      "neither for the cam or the contact gap."),
    QT_TRANSLATE_NOOP("Core", "The feed slips: %1 in %2 characters"),
    QT_TRANSLATE_NOOP("Core", "Held against %1: sent twice %2, passed over %3."),
    QT_TRANSLATE_NOOP("Core", "They come anywhere on the tape."),
    QT_TRANSLATE_NOOP("Core", "%1 of them come at one place of the tape, behind “%2”."),
    QT_TRANSLATE_NOOP("Core", "The tape at that place: a torn or blocked feed hole, a splice, a crease."),
    QT_TRANSLATE_NOOP("Core", "Then feed wheel and its pins, feed pawl and detent."),
    QT_TRANSLATE_NOOP("Core",
                      "The feed holes of the tape; then what moves it: feed pawl and its spring, feed wheel and its "
                      "pins; what holds it back: lid, guide, reel."),
    QT_TRANSLATE_NOOP("Core",
                      "What holds the tape where it is: detent of the feed wheel and its spring, a feed pawl that goes "
                      "too far; then a tape that is pulled."),
    QT_TRANSLATE_NOOP("Core", "On RY a character sent twice looks the same as one passed over."),
    QT_TRANSLATE_NOOP(
        "Core",
        "The tape itself, its feed holes: try a new one. Then what lets the tape go short and far by turns: detent of "
        "the feed wheel and its spring, the wheel's pins and play, feed pawl, tape guide and lid."),
    QT_TRANSLATE_NOOP(
        "Core", "Mark the tape and let it run: the mark must come by after the same number of characters each round."),
    QT_TRANSLATE_NOOP("Core", "Try a new tape before the feed is touched."),
    QT_TRANSLATE_NOOP("Core", "That is %1 of the characters; level by level what came is right."),
};

}  // namespace

std::span<const char* const> signalSentences() { return kOfSignal; }

}  // namespace trueunit
