// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/keys_help.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "widgets/theme.h"

namespace trueunit {

namespace {

QString rowOf(const QString& keys, const QString& what) {
    return QStringLiteral(
               "<tr><td style=\"padding:2px 18px 2px 0\"><b>%1</b></td><td style=\"padding:2px 0\">%2</td></tr>")
        .arg(keys.toHtmlEscaped(), what.toHtmlEscaped());
}

// Small marks are named, because on their own they are easily overlooked.
QString keyName(const QKeySequence& key) {
    QString name = key.toString(QKeySequence::NativeText);
    if (name.endsWith(QLatin1Char('.'))) name.replace(QLatin1Char('.'), KeysHelp::tr("full stop"));
    if (name.endsWith(QLatin1Char(','))) name.replace(QLatin1Char(','), KeysHelp::tr("comma"));
    return name;
}

QString tableOf(const QList<QAction*>& actions, const QList<std::pair<QString, QString>>& panelKeys) {
    QString rows;
    for (const QAction* action : actions) {
        QStringList keys;
        for (const QKeySequence& key : action->shortcuts()) keys += keyName(key);
        if (!keys.isEmpty()) rows += rowOf(keys.join(QStringLiteral(", ")), action->statusTip());
    }
    for (const auto& [keys, what] : panelKeys) rows += rowOf(keys, what);
    return QStringLiteral("<table>") + rows + QStringLiteral("</table>");
}

}  // namespace

KeysHelp::KeysHelp(const QList<QAction*>& actions, const QList<std::pair<QString, QString>>& panelKeys, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Keys"));
    auto* table = new QLabel(tableOf(actions, panelKeys));
    table->setFont(theme::text(theme::kTextPx));
    table->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    table->setMargin(12);
    table->setWordWrap(true);
    table->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* scroll = new QScrollArea;
    scroll->setWidget(table);
    scroll->setWidgetResizable(true);
    scroll->setAccessibleName(tr("List of keys"));
    auto* cautions = new QLabel(
        tr("Caution: the signal loop is hazardous live, and its current limit does not make it safe. Isolate between "
           "loop and sound card, and unplug the machine before hands or tools go in. Local codes and licensed "
           "practice come first."));
    cautions->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::Close)->setIcon({});
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(scroll, 1);
    column->addWidget(cautions);
    column->addWidget(buttons);
    resize(640, 760);
}

}  // namespace trueunit
