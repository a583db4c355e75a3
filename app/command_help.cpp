// SPDX-License-Identifier: GPL-3.0-or-later
// What --help prints.
#include "app/command_line.h"

namespace trueunit {

std::string helpText() {
    return std::string(R"(Trueunit measures the timing of start-stop telegraph senders through a sound card.

  trueunit                                open the bench window; the demonstration plays until an input is chosen
  trueunit [open] FILE                    the same, playing a recording or a scenario
  trueunit measure RECORDING [--json]     readings of a WAV, FLAC or other recording
  trueunit report RECORDING --out X.png   the report page of a recording
  trueunit render SCENARIO --out X.wav    the signal of a scenario, as WAV or FLAC
  trueunit clock RECORDING --tone HZ      how far off the sound card's clock is, by a tone of known frequency
  trueunit send [--out X.wav]             play a reference signal of known distortion, or write it to a file
  trueunit check [--loopback IN,OUT]      is the instrument itself right? in memory, and through the sound card
  trueunit limits                         list the sets of limits, with their origin
  trueunit log ...                        the repair logbook; trueunit log --help says more
  trueunit inputs                         list the sound inputs and outputs
  trueunit picture [FILE] --out X.png     a picture of the window playing a recording, a scenario or the demonstration

measuring (window, measure, report)
  --baud B          nominal speed, 20 to 200 baud; otherwise the nearest usual speed within 3 %
  --stop UNITS      nominal stop length, 1 to 2.5 units
  --code NAME       ita2, ita2-us, either with -unshift (a space returns to letters), or ita5 (eight levels)
  --expect TEXT     text of the tape loop being sent, from any point of it
  --input KIND      auto, loop, tone or two-tone
  --tones HZ[,HZ]   the tone, or both of two tones; otherwise found from the signal
  --window N|all    characters the readings cover, counted from the end
  --slice PERCENT   fraction of the swing at which an instant is taken, 10 to 90
  --clock-ppm P     the card's clock is fast by P parts in a million, as trueunit clock tells it
  --card NAME       the machine card, by name or as a .json file: what motor and gears should make
  --limits NAME     the set of limits to judge by; otherwise bench. trueunit limits lists them

window
  --logbook FILE    another logbook than the usual one

report
  --out FILE        the PNG to write; further pages go beside it
  --machine NAME    what its owner calls the machine

rendering
  --out FILE        ends in .wav or .flac
  --seconds S       length; otherwise the scenario's, or a minute
  --rate HZ         sample rate; otherwise the scenario's
  --bits 16|24|32   sample format; 32 is float, which FLAC does not know

)") + sendingHelp() +
           R"(
check
  --loopback IN,OUT a cable leads from the sound output OUT to the input IN, as trueunit inputs lists them
  --tone HZ         a tone of this frequency plays into the input first, 12 s: tells the clock error
  --json            the result as JSON; it is kept with its date in any case

picture
  --out FILE        the PNG to write
  --seconds S       of playing before it is taken; otherwise 8
  --size WxH        of the window; otherwise 1440x900

  -h, --help        this page
  -v, --version     the version

measure ends with 0 when the sender is in limits, 1 when it is out of limits or cannot be judged for want
of a nominal speed, 2 when there is no valid reading or when the arguments are unusable; a reading whose uncertainty
reaches over its limit counts by its value, and a note says so. check ends with 0 when it passes, 1 when it does not. The other commands end with 0, or with 2 and one
sentence why not.

examples
  trueunit measure skerry.wav --baud 45.45
  trueunit measure skerry.flac --json --expect "RY" --window 128
  trueunit report skerry.wav --baud 50 --out skerry.png
  trueunit render scenarios/demonstration.json --seconds 30 --out demonstration.wav
)";
}

}  // namespace trueunit
