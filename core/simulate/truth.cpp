// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/truth.h"

namespace trueunit {

std::string Truth::sentText(const CodeTable& table) const {
    Decoder decoder(table);
    std::string text;
    for (const SentCharacter& c : characters) text += decoder.text(c.sentCode);
    return text;
}

}  // namespace trueunit
