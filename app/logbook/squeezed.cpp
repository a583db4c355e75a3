// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/squeezed.h"

#include <zlib.h>

#include <QtEndian>

namespace trueunit {

namespace {
constexpr int kLevel = 6;
constexpr quint32 kLongest = 256U << 20U;  // bytes; a damaged length asks for no more than this
}  // namespace

QByteArray squeezed(const std::string& text) { return qCompress(QByteArray::fromStdString(text), kLevel); }

std::optional<std::string> unsqueezed(const QByteArray& bytes) {
    constexpr qsizetype kHead = 4;
    if (bytes.size() <= kHead) return std::nullopt;
    const auto length = qFromBigEndian<quint32>(bytes.constData());
    if (length > kLongest) return std::nullopt;
    std::string text(length, '\0');
    uLongf got = length;
    const auto* from = reinterpret_cast<const Bytef*>(bytes.constData() + kHead);
    if (uncompress(reinterpret_cast<Bytef*>(text.data()), &got, from, static_cast<uLong>(bytes.size() - kHead)) != Z_OK)
        return std::nullopt;
    text.resize(got);
    return text;
}

}  // namespace trueunit
