// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_received.h"

#include <algorithm>

#include "app/report_ink.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

constexpr double kAround = 13.0;      // mm, of the heading and the count
constexpr double kAroundSlips = 5.0;  // mm, of their signs

// Of what prints nothing only the space and the end of a line are seen, but where the feed slipped.
QString plainPrint(const std::string& print) {
    if (print.size() == 1) return QString::fromStdString(print);
    if (print == "space") return QStringLiteral(" ");
    return print == "line feed" ? QStringLiteral(" \u21b5 ") : QString();
}

QString namedPrint(const std::string& print) { return print.empty() ? QStringLiteral("?") : shortPrint(print); }

}  // namespace

QString textWithSlips(const std::vector<TapeCharacter>& tape) {
    if (std::none_of(tape.begin(), tape.end(), [](const TapeCharacter& c) { return c.slipped(); })) return {};
    QString text;
    for (const TapeCharacter& c : tape) {
        for (std::size_t i = 0; i < c.passed.size(); ++i)
            text += QStringLiteral("(%1)").arg(namedPrint(i < c.passedPrint.size() ? c.passedPrint[i] : std::string()));
        text += c.again ? QStringLiteral("[%1]").arg(namedPrint(c.print)) : plainPrint(c.print);
    }
    return text;
}

double ReceivedText::height(const PageFlow& page, double width) const {
    const double marked = slips.isEmpty() ? 0.0 : page.paragraphHeight(slips, font, width) + kAroundSlips;
    return page.paragraphHeight(words, font, width) + kAround + marked;
}

void ReceivedText::draw(PageFlow& page, double left, double width) const {
    page.heading(Words::tr("Text received"), left);
    page.paragraph(words, font, kInk, left, width);
    page.paragraph(count, PageFlow::font(7.0), kFaint, left, width);
    if (slips.isEmpty()) return;
    page.space(1.2);
    page.paragraph(slips, font, kInk, left, width);
    page.paragraph(slipSigns, PageFlow::font(7.0), kFaint, left, width);
}

ReceivedText receivedText(const PageFlow& page, const Snapshot& snapshot) {
    const qsizetype longest = page.tight() ? 170 : 340;  // two lines of the page or four; the recording holds the rest
    const TextReading& reading = snapshot.reading.text;
    ReceivedText text;
    text.words = QString::fromStdString(reading.decoded);
    text.words.replace(QLatin1Char('\r'), QString()).replace(QLatin1Char('\n'), QStringLiteral(" \u21b5 "));
    if (text.words.size() > longest) text.words = QStringLiteral("\u2026 ") + text.words.right(longest);
    text.font.setFamilies({QStringLiteral("DejaVu Sans Mono"), QStringLiteral("DejaVu Sans")});
    text.count = Words::tr("%1 characters, %2 framing errors.").arg(reading.characters).arg(reading.framingErrors);
    text.slips = textWithSlips(snapshot.tape);
    text.slipSigns = Words::tr("The last %1 characters with the slips of the feed: [ ] sent twice, ( ) passed over.")
                         .arg(snapshot.tape.size());
    return text;
}

}  // namespace trueunit
