// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QFont>
#include <QLocale>
#include <QPalette>
#include <QStandardPaths>
#include <QTranslator>

#include "widgets/theme.h"

namespace {

// A desktop with dark colours and large words, to be looked at: TRUEUNIT_DESKTOP=dark, TRUEUNIT_FONT=14 (points).
void beLikeDesktop() {
    if (qEnvironmentVariable("TRUEUNIT_DESKTOP") == QLatin1String("dark")) {
        QPalette dark(QColor(0x2A, 0x2A, 0x2A));
        dark.setColor(QPalette::Base, QColor(0x1E, 0x1E, 0x1E));
        for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
            dark.setColor(role, Qt::white);
        QApplication::setPalette(dark);
        trueunit::theme::useDark();
    }
    bool given = false;
    const int points = qEnvironmentVariableIntValue("TRUEUNIT_FONT", &given);
    if (given) QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), points));
}

}  // namespace

// The window's tests run without a display unless one is asked for, and never touch the person's own settings.
int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    ::testing::InitGoogleTest(&argc, argv);
    const QApplication application(argc, argv);
    beLikeDesktop();
    QTranslator translator;  // TRUEUNIT_LANGUAGE=de: what is kept in pictures speaks so
    if (const QString language = qEnvironmentVariable("TRUEUNIT_LANGUAGE"); !language.isEmpty()) {
        QLocale::setDefault(QLocale(language));
        if (translator.load(":/translations/trueunit_" + language)) QCoreApplication::installTranslator(&translator);
    }
    return RUN_ALL_TESTS();
}
