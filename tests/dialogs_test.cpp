// SPDX-License-Identifier: GPL-3.0-or-later
// Every window and dialog of the program, one after the other: names for those who listen instead of looking, nothing
// cut off. TRUEUNIT_PICTURES=folder keeps a picture of each.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QMenu>
#include <QScrollBar>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QTimer>
#include <functional>

#include "app/keys_help.h"
#include "app/main_window.h"
#include "app/session.h"

namespace trueunit {
namespace {

class EveryWindow : public ::testing::Test {
protected:
    EveryWindow() {
        window.resize(1366, 768);
        window.show();
        window.startLog(folder.filePath("log.trueunit"));
    }

    static void picture(QWidget& widget, const QString& name) {
        const QString kept = qEnvironmentVariable("TRUEUNIT_PICTURES");
        if (!kept.isEmpty()) widget.grab().save(QDir(kept).filePath(name + ".png"));
    }

    void trigger(const QKeySequence& key) {
        for (QAction* action : window.actions())
            if (action->shortcuts().contains(key)) return action->trigger();
        ADD_FAILURE() << "there is no action of " << key.toString().toStdString();
    }

    // Opens what the key opens and hands each dialog over; a modal one is closed again.
    void withDialog(const QKeySequence& key, const std::function<void(QWidget&)>& look) {
        bool seen = false;
        QTimer::singleShot(80, &window, [&] {
            for (QWidget* top : QApplication::topLevelWidgets()) {
                if (top == &window || !top->isVisible() || top->windowType() == Qt::ToolTip) continue;
                seen = true;
                look(*top);
                top->close();
            }
        });
        trigger(key);
        QTest::qWait(120);
        EXPECT_TRUE(seen) << key.toString().toStdString();
    }

    const QTemporaryDir folder;
    Session session;
    MainWindow window{session};
};

const QList<std::pair<QKeySequence, QString>> kDialogs = {
    {Qt::CTRL | Qt::Key_R, "report"},
    {Qt::CTRL | Qt::Key_K, "machine-card"},
    {Qt::CTRL | Qt::Key_L, "logbook"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_L, "limits"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_K, "self-check"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_S, "reference-sender"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_T, "clock"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_G, "appearance"},
    {Qt::SHIFT | Qt::Key_F1, "keys"},
    {Qt::Key_F1, "help"},
    {Qt::CTRL | Qt::SHIFT | Qt::Key_Backspace, "forget"},
    {Qt::Key_F10, "more"},
    {Qt::CTRL | Qt::Key_I, "input"},
};

void expectNames(const QWidget& top, const QString& dialog) {
    for (const QWidget* widget : top.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
        if (qobject_cast<const QAbstractSpinBox*>(widget->parentWidget())) continue;  // the field inside one
        if (const auto* label = qobject_cast<const QLabel*>(widget); label && !label->text().isEmpty()) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_TRUE(!widget->accessibleName().isEmpty() || (button && !button->text().isEmpty()))
            << widget->metaObject()->className() << " in " << dialog.toStdString();
    }
}

// One line of words that is narrower than its words loses its end.
void expectWhole(const QWidget& top, const QString& dialog) {
    const auto holds = [&](const QWidget& widget, const QString& words, int needed) {
        EXPECT_GE(widget.width() + 1, needed) << words.toStdString() << " in " << dialog.toStdString();
    };
    for (const QLabel* label : top.findChildren<QLabel*>())
        if (label->isVisible() && !label->wordWrap() && label->metaObject() == &QLabel::staticMetaObject)
            holds(*label, label->text(), label->sizeHint().width());
    for (const QAbstractButton* button : top.findChildren<QAbstractButton*>())
        if (button->isVisible() && !button->text().isEmpty())
            holds(*button, button->text(), button->minimumSizeHint().width());
}

TEST_F(EveryWindow, NamesItsControlsAndCutsNothingOff) {
    QTest::qWait(3000);
    picture(window, "bench");
    for (const auto& [key, name] : kDialogs)
        withDialog(key, [&name = name](QWidget& top) {
            expectNames(top, name);
            expectWhole(top, name);
            picture(top, name);
        });
    trigger(Qt::Key_M);
    trigger(Qt::Key_B);
    QTest::qWait(1500);
    picture(window, "bench-margin-before");
    trigger(Qt::Key_Space);
    trigger(Qt::Key_N);
    QTest::qWait(100);
    picture(window, "bench-frozen-note");
    trigger(Qt::Key_Escape);
    trigger(Qt::Key_Space);
    trigger(Qt::Key_G);
    QTest::qWait(300);
    picture(window, "bench-gauge-only");
}

TEST_F(EveryWindow, ListsEveryActionAmongTheKeys) {
    withDialog(Qt::SHIFT | Qt::Key_F1, [this](QWidget& top) {
        auto* list = top.findChild<QTextBrowser*>();
        ASSERT_NE(list, nullptr);
        const QString all = list->toPlainText();
        for (const QAction* action : window.actions()) {
            EXPECT_TRUE(all.contains(action->statusTip())) << action->text().toStdString();
            const QString group = action->property(KeysHelp::kGroup).toString();
            EXPECT_EQ(all.count(QLatin1Char('\n') + group + QLatin1Char('\n')), 1) << group.toStdString();
        }
        QTest::keyClick(top.focusWidget(), Qt::Key_End);
        EXPECT_EQ(list->verticalScrollBar()->value(), list->verticalScrollBar()->maximum());
        EXPECT_GT(list->verticalScrollBar()->maximum(), 0);
    });
    for (const QMenu* menu : window.findChildren<QMenu*>())
        for (const QAction* action : menu->actions())
            EXPECT_TRUE(action->isSeparator() || menu->parentWidget() != &window || window.actions().contains(action))
                << action->text().toStdString();
}

TEST_F(EveryWindow, ReachesEveryControlByTab) {
    QTest::qWait(500);
    QSet<QWidget*> wanted, reached;
    for (QWidget* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
            !widget->focusProxy() && !qobject_cast<QComboBox*>(widget->parentWidget()))
            wanted += widget;
    for (int i = 0; i < 80 && !reached.contains(QApplication::focusWidget()); ++i) {
        reached += QApplication::focusWidget();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (QWidget* widget : wanted - reached)
        ADD_FAILURE() << widget->metaObject()->className() << ' ' << widget->accessibleName().toStdString();
}

}  // namespace
}  // namespace trueunit
