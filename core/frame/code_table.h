// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace trueunit {

enum class Shift { letters, figures };

// A start-stop code: number of levels, and what each combination prints.
struct CodeTable {
    std::string_view name;   // as on the command line
    std::string_view title;  // for the window
    int levels;              // 5 or 8
    bool unshiftsOnSpace;    // a space returns to letters
    bool evenParity;         // the last level makes the number of marks even
};

bool parityRight(const CodeTable& table, unsigned code);  // true where there is no parity

const CodeTable* findCode(std::string_view name);  // nullptr: no such code
std::string codeNames();                           // "ita2, ita2-us"

// Follows the shifts of a text. One object per reader of a text.
class Decoder {
public:
    explicit Decoder(const CodeTable& table, Shift begin = Shift::letters) : table_(&table), shift_(begin) {}
    void reset() { shift_ = Shift::letters; }

    // What the combination adds to a plain text: "R", " ", "\n"; nothing for shifts and blank. Level 1 is bit 0.
    std::string text(unsigned code);
    // How the combination is named where it stands alone: "R", "space", "letters", "line feed". Follows the shift.
    std::string name(unsigned code);

private:
    const CodeTable* table_;
    Shift shift_;
};

// Combinations that send the text, shifts included; characters the code lacks are skipped. UTF-8 in.
std::basic_string<unsigned char> encode(const CodeTable& table, std::string_view text);

// The same of one round of a tape loop: where the text ends in figures, the shift back to letters belongs to it.
std::basic_string<unsigned char> encodeRound(const CodeTable& table, std::string_view text);

}  // namespace trueunit
