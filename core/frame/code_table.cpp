// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/code_table.h"

#include <array>
#include <bit>
#include <cstdint>

namespace trueunit {

namespace {

constexpr int kShiftedPositions = 32;

// One position of a five-level code: what it adds to a text, and what it is called.
struct Position {
    const char* letters;
    const char* figures;
    const char* lettersName;
    const char* figuresName;
};
using Alphabet = std::array<Position, kShiftedPositions>;

constexpr unsigned combination(const char* levels) {  // "11000": level 1 first
    unsigned code = 0;
    for (unsigned i = 0; levels[i] != '\0'; ++i)
        if (levels[i] == '1') code |= 1U << i;
    return code;
}

struct Row {
    const char* levels;
    const char* letter;
    const char* international;
    const char* us;
};

// International Telegraph Alphabet No. 2, ITU-T Recommendation S.1, and the figures case used in the United States.
// A name of more than one character stands for a position that prints nothing by itself.
constexpr std::array kIta2Rows = {
    Row{"11000", "A", "-", "-"},           Row{"10011", "B", "?", "?"},          Row{"01110", "C", ":", ":"},
    Row{"10010", "D", "who are you", "$"}, Row{"10000", "E", "3", "3"},          Row{"10110", "F", "reserved F", "!"},
    Row{"01011", "G", "reserved G", "&"},  Row{"00101", "H", "reserved H", "#"}, Row{"01100", "I", "8", "8"},
    Row{"11010", "J", "bell", "'"},        Row{"11110", "K", "(", "("},          Row{"01001", "L", ")", ")"},
    Row{"00111", "M", ".", "."},           Row{"00110", "N", ",", ","},          Row{"00011", "O", "9", "9"},
    Row{"01101", "P", "0", "0"},           Row{"11101", "Q", "1", "1"},          Row{"01010", "R", "4", "4"},
    Row{"10100", "S", "'", "bell"},        Row{"00001", "T", "5", "5"},          Row{"11100", "U", "7", "7"},
    Row{"01111", "V", "=", ";"},           Row{"11001", "W", "2", "2"},          Row{"10111", "X", "/", "/"},
    Row{"10101", "Y", "6", "6"},           Row{"10001", "Z", "+", "\""},
};

constexpr unsigned kCarriageReturn = combination("00010");
constexpr unsigned kLineFeed = combination("01000");
constexpr unsigned kLetters = combination("11111");
constexpr unsigned kFigures = combination("11011");
constexpr unsigned kSpace = combination("00100");
constexpr unsigned kBlank = combination("00000");

constexpr bool printsItself(const char* name) { return name[0] != '\0' && name[1] == '\0'; }

constexpr Alphabet makeAlphabet(bool us) {
    Alphabet a{};
    a[kCarriageReturn] = {"", "", "carriage return", "carriage return"};
    a[kLineFeed] = {"\n", "\n", "line feed", "line feed"};
    a[kLetters] = {"", "", "letters", "letters"};
    a[kFigures] = {"", "", "figures", "figures"};
    a[kSpace] = {" ", " ", "space", "space"};
    a[kBlank] = {"", "", "blank", "blank"};
    for (const Row& r : kIta2Rows) {
        const char* figure = us ? r.us : r.international;
        a[combination(r.levels)] = {r.letter, printsItself(figure) ? figure : "", r.letter, figure};
    }
    return a;
}

constexpr Alphabet kInternational = makeAlphabet(false);
constexpr Alphabet kUs = makeAlphabet(true);

struct Code {
    CodeTable table;
    const Alphabet* alphabet;  // nullptr: eight levels, seven of them International Alphabet No. 5 (ITU-T T.50)
};

constexpr std::array kCodes = {
    Code{{"ita2", "ITA2, international figures", 5, false, false}, &kInternational},
    Code{{"ita2-us", "ITA2, US figures", 5, false, false}, &kUs},
    Code{{"ita2-unshift", "ITA2, international, unshift on space", 5, true, false}, &kInternational},
    Code{{"ita2-us-unshift", "ITA2, US figures, unshift on space", 5, true, false}, &kUs},
    Code{{"ita5", "eight levels, IA5 with even parity", 8, false, true}, nullptr},
};

const Alphabet* alphabetOf(const CodeTable& table) {
    for (const Code& c : kCodes)
        if (c.table.name == table.name) return c.alphabet;
    return &kInternational;
}

constexpr unsigned kSevenBits = 0x7F;
constexpr unsigned kParityBit = 0x80;

std::string eightLevelText(unsigned code) {
    const unsigned c = code & kSevenBits;
    if (c == '\n') return "\n";
    return c >= 0x20 && c < 0x7F ? std::string(1, static_cast<char>(c)) : std::string();
}

std::string eightLevelName(unsigned code) {
    switch (const unsigned c = code & kSevenBits; c) {
        case 0x00:
            return "null";
        case 0x07:
            return "bell";
        case 0x0A:
            return "line feed";
        case 0x0D:
            return "carriage return";
        case 0x20:
            return "space";
        case 0x7F:
            return "delete";
        default:
            return c < 0x20 ? "control " + std::string(1, static_cast<char>(c + 0x40)) : eightLevelText(code);
    }
}

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

}  // namespace

const CodeTable* findCode(std::string_view name) {
    for (const Code& c : kCodes)
        if (c.table.name == name) return &c.table;
    return nullptr;
}

std::string codeNames() {
    std::string names;
    for (const Code& c : kCodes) names += (names.empty() ? "" : ", ") + std::string(c.table.name);
    return names;
}

bool parityRight(const CodeTable& table, unsigned code) { return !table.evenParity || std::popcount(code) % 2 == 0; }

std::string Decoder::text(unsigned code) {
    const Alphabet* alphabet = alphabetOf(*table_);
    if (!alphabet) return eightLevelText(code);
    if (code == kLetters || (code == kSpace && table_->unshiftsOnSpace)) shift_ = Shift::letters;
    if (code == kFigures) shift_ = Shift::figures;
    const Position& p = (*alphabet)[code % kShiftedPositions];
    return shift_ == Shift::letters ? p.letters : p.figures;
}

std::string Decoder::name(unsigned code) {
    const Alphabet* alphabet = alphabetOf(*table_);
    if (!alphabet) return eightLevelName(code);
    text(code);
    const Position& p = (*alphabet)[code % kShiftedPositions];
    return shift_ == Shift::letters ? p.lettersName : p.figuresName;
}

std::basic_string<unsigned char> encodeEightLevels(std::string_view text) {
    std::basic_string<unsigned char> out;
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (code > kSevenBits) continue;
        out += static_cast<unsigned char>(std::popcount(code) % 2 == 0 ? code : code | kParityBit);
    }
    return out;
}

std::basic_string<unsigned char> encode(const CodeTable& table, std::string_view text) {
    const Alphabet* shifted = alphabetOf(table);
    if (!shifted) return encodeEightLevels(text);
    const Alphabet& alphabet = *shifted;
    std::basic_string<unsigned char> out;
    Shift shift = Shift::letters;
    for (const char raw : text) {
        const char c = upper(raw);
        if (c == ' ' && table.unshiftsOnSpace) shift = Shift::letters;
        if (c == '\r') {
            out += static_cast<unsigned char>(kCarriageReturn);
            continue;
        }
        const auto matches = [c](const char* s) { return printsItself(s) && s[0] == c; };
        const auto find = [&](auto column) {
            for (unsigned code = 0; code < kShiftedPositions; ++code)
                if (matches(alphabet[code].*column)) return static_cast<int>(code);
            return -1;
        };
        const int inLetters = find(&Position::letters);
        const int inFigures = find(&Position::figures);
        const int here = shift == Shift::letters ? inLetters : inFigures;
        if (here >= 0) {
            out += static_cast<unsigned char>(here);
        } else if (inLetters >= 0 || inFigures >= 0) {
            shift = shift == Shift::letters ? Shift::figures : Shift::letters;
            out += static_cast<unsigned char>(shift == Shift::letters ? kLetters : kFigures);
            out += static_cast<unsigned char>(shift == Shift::letters ? inLetters : inFigures);
        }
    }
    return out;
}

std::basic_string<unsigned char> encodeRound(const CodeTable& table, std::string_view text) {
    std::string twice(text);
    twice += text;
    return encode(table, twice).substr(encode(table, text).size());
}

}  // namespace trueunit
