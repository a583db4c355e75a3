// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <memory>
#include <ostream>
#include <vector>

#include "widgets/panel.h"

// So that a failing comparison shows the words, not the bytes.
inline void PrintTo(const QString& text, std::ostream* out) { *out << '"' << text.toStdString() << '"'; }

namespace trueunit::test {

// One kind of widget, to be treated like every other.
struct WidgetMaker {
    QString name;
    std::function<std::unique_ptr<QWidget>()> make;
    std::function<void(QWidget&, const SnapshotPtr&)> show;
};

std::vector<WidgetMaker> allWidgets();

void settle();  // lets pending layouts and replots happen

inline QString u(const char* utf8) { return QString::fromUtf8(utf8); }

}  // namespace trueunit::test
