// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/keys_help.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QHash>
#include <QLabel>
#include <QPushButton>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

#include "app/window_memory.h"
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

QString headingOf(const QString& group) {
    return QStringLiteral("<tr><td colspan=\"2\" style=\"padding:12px 0 3px 0\"><big>%1</big></td></tr>")
        .arg(group.toHtmlEscaped());
}

QString keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& key : action.shortcuts()) keys += keyName(key);
    return keys.join(QStringLiteral(", "));
}

QString tableOf(const QList<QAction*>& actions, const QList<std::pair<QString, QString>>& panelKeys) {
    QStringList groups;  // in the order in which they come first
    QHash<QString, QString> rowsOf;
    for (const QAction* action : actions) {
        if (action->shortcuts().isEmpty()) continue;
        const QString group = action->property(KeysHelp::kGroup).toString();
        if (!groups.contains(group)) groups << group;
        rowsOf[group] += rowOf(keysOf(*action), action->statusTip());
    }
    QString rows;
    for (const QString& group : groups) rows += headingOf(group) + rowsOf[group];
    rows += headingOf(KeysHelp::tr("In a panel, while it has the focus"));
    for (const auto& [keys, what] : panelKeys) rows += rowOf(keys, what);
    return QStringLiteral("<table>") + rows + QStringLiteral("</table>");
}

}  // namespace

KeysHelp::KeysHelp(const QList<QAction*>& actions, const QList<std::pair<QString, QString>>& panelKeys, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Keys"));
    auto* table = new QTextBrowser;  // Page Down and End scroll it
    table->setFont(theme::text(theme::kTextPx));
    table->document()->setDocumentMargin(12);
    table->setHtml(tableOf(actions, panelKeys));
    table->setAccessibleName(tr("List of keys"));
    auto* cautions = new QLabel(
        tr("Caution: the signal loop is hazardous live, and its current limit does not make it safe. Isolate between "
           "loop and sound card, and unplug the machine before hands or tools go in. Local codes and licensed "
           "practice come first."));
    cautions->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::Close)->setIcon({});
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(table, 1);
    column->addWidget(cautions);
    column->addWidget(buttons);
    resizeOnScreen(*this, {640, 760});
    table->setFocus();
}

}  // namespace trueunit
