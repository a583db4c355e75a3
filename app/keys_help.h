// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QList>
#include <QString>
#include <utility>

class QAction;

namespace trueunit {

// Lists every action of the window with its keys, made from the actions themselves, so that it cannot be wrong; and
// the keys that panels take while they have the focus.
class KeysHelp : public QDialog {
    Q_OBJECT

public:
    static constexpr const char* kGroup = "group";  // property of an action: the heading it stands under

    KeysHelp(const QList<QAction*>& actions, const QList<std::pair<QString, QString>>& panelKeys,
             QWidget* parent = nullptr);
};

}  // namespace trueunit
