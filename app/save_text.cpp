// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/save_text.h"

#include <QDir>
#include <QSaveFile>

namespace trueunit {

Outcome saveText(const QString& path, const std::string& text) {
    QSaveFile file(path);
    const auto bytes = QByteArray::fromStdString(text);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) return done();
    return Error{QStringLiteral("\"%1\" could not be written (%2); choose another folder or free some space.")
                     .arg(QDir::toNativeSeparators(path), file.errorString())
                     .toStdString()};
}

}  // namespace trueunit
