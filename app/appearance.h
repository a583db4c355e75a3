// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QCoreApplication;

namespace trueunit {

// In which language, how large and on what ground the window is; taken up when the program starts. Window's thread.
struct Appearance {
    QString language;       // "de", "en"; empty: as the desktop
    int sizePercent = 100;  // of everything in the window, 100..200
    QString ground{};       // "light", "dark"; empty: as the desktop
};

Appearance loadAppearance();
void saveAppearance(const Appearance& appearance);

QStringList languages();                        // those there are, by their codes
QString languageName(const QString& code);      // in that language itself
void takeSize(const Appearance& appearance);    // before the application is made; an environment that says it counts
void takeGround(const Appearance& appearance);  // after the application is made, before the first widget
void takeLanguage(QCoreApplication& application, const QString& language);
void speakPlainly();  // numbers and words as in files, whatever the desktop's language

}  // namespace trueunit
