// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/appearance.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <QSettings>
#include <QTranslator>
#include <algorithm>
#include <array>

#include "widgets/theme.h"

namespace trueunit {

namespace {

// Words that the toolkit itself puts on buttons; translated with ours, so that nothing else has to be installed.
[[maybe_unused]] constexpr std::array kOfTheToolkit = {
    QT_TRANSLATE_NOOP("QPlatformTheme", "OK"),    QT_TRANSLATE_NOOP("QPlatformTheme", "Cancel"),
    QT_TRANSLATE_NOOP("QPlatformTheme", "Close"), QT_TRANSLATE_NOOP("QPlatformTheme", "Save"),
    QT_TRANSLATE_NOOP("QPlatformTheme", "&Yes"),  QT_TRANSLATE_NOOP("QPlatformTheme", "&No"),
    QT_TRANSLATE_NOOP("QPlatformTheme", "&Open"), QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),
    QT_TRANSLATE_NOOP("QShortcut", "Shift"),      QT_TRANSLATE_NOOP("QShortcut", "Alt"),
    QT_TRANSLATE_NOOP("QShortcut", "Space"),      QT_TRANSLATE_NOOP("QShortcut", "Esc"),
    QT_TRANSLATE_NOOP("QShortcut", "Backspace"),  QT_TRANSLATE_NOOP("QShortcut", "Up"),
    QT_TRANSLATE_NOOP("QShortcut", "Down"),       QT_TRANSLATE_NOOP("QShortcut", "Left"),
    QT_TRANSLATE_NOOP("QShortcut", "Right"),      QT_TRANSLATE_NOOP("QShortcut", "Home"),
};

// Its own dialog of files, where the desktop has none.
[[maybe_unused]] constexpr std::array kOfItsFileDialog = {
    QT_TRANSLATE_NOOP("QFileDialog", "Look in:"),
    QT_TRANSLATE_NOOP("QFileDialog", "File &name:"),
    QT_TRANSLATE_NOOP("QFileDialog", "Files of type:"),
    QT_TRANSLATE_NOOP("QFileDialog", "&Save"),
    QT_TRANSLATE_NOOP("QFileDialog", "&Open"),
    QT_TRANSLATE_NOOP("QFileDialog", "Back"),
    QT_TRANSLATE_NOOP("QFileDialog", "Forward"),
    QT_TRANSLATE_NOOP("QFileDialog", "Parent Directory"),
    QT_TRANSLATE_NOOP("QFileDialog", "Create New Folder"),
    QT_TRANSLATE_NOOP("QFileDialog", "List View"),
    QT_TRANSLATE_NOOP("QFileDialog", "Detail View"),
    QT_TRANSLATE_NOOP("QFileDialog", "&Rename"),
    QT_TRANSLATE_NOOP("QFileDialog", "&Delete"),
    QT_TRANSLATE_NOOP("QFileDialog", "Show &hidden files"),
    QT_TRANSLATE_NOOP("QFileDialog", "&New Folder"),
    QT_TRANSLATE_NOOP("QFileDialog", "Directory:"),
    QT_TRANSLATE_NOOP("QFileDialog", "Recent Places"),
    QT_TRANSLATE_NOOP("QFileDialog", "%1 already exists.\nDo you want to replace it?"),
    QT_TRANSLATE_NOOP("QFileDialog", "%1\nFile not found.\nPlease verify the correct file name was given."),
    QT_TRANSLATE_NOOP("QFileSystemModel", "Name"),
    QT_TRANSLATE_NOOP("QFileSystemModel", "Size"),
    QT_TRANSLATE_NOOP("QFileSystemModel", "Type"),
    QT_TRANSLATE_NOOP("QFileSystemModel", "Date Modified"),
    QT_TRANSLATE_NOOP("QFileSystemModel", "Computer"),
};

constexpr int kLargest = 200;

}  // namespace

Appearance loadAppearance() {
    const QSettings store;
    Appearance a;
    a.language = store.value("view/language").toString();
    if (!languages().contains(a.language)) a.language.clear();
    a.sizePercent = std::clamp(store.value("view/sizePercent", 100).toInt(), 100, kLargest);
    a.ground = store.value("view/ground").toString();
    return a;
}

void saveAppearance(const Appearance& a) {
    QSettings store;
    store.setValue("view/language", a.language);
    store.setValue("view/sizePercent", a.sizePercent);
    store.setValue("view/ground", a.ground);
}

QStringList languages() { return {QStringLiteral("en"), QStringLiteral("de")}; }

QString languageName(const QString& code) {
    return code == QLatin1String("de") ? QStringLiteral("Deutsch") : QStringLiteral("English");
}

void takeSize(const Appearance& a) {
    if (a.sizePercent != 100 && !qEnvironmentVariableIsSet("QT_SCALE_FACTOR"))
        qputenv("QT_SCALE_FACTOR", QByteArray::number(0.01 * a.sizePercent));
}

void takeGround(const Appearance& a) {
    const bool darkDesktop = QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
    if (a.ground == QLatin1String("dark") || (a.ground.isEmpty() && darkDesktop)) theme::useDark();
}

void takeLanguage(QCoreApplication& application, const QString& language) {
    const QLocale desktop = QLocale::system();
    const QLocale wanted(language);
    const bool chosen = !language.isEmpty() && wanted.language() != desktop.language();
    const QLocale locale = chosen ? wanted : desktop;  // the country of the desktop's own language stays
    QLocale::setDefault(locale);
    auto* translator = new QTranslator(&application);
    if (translator->load(locale, QStringLiteral("trueunit"), QStringLiteral("_"), QStringLiteral(":/translations")))
        QCoreApplication::installTranslator(translator);
    else
        delete translator;
}

void speakPlainly() { QLocale::setDefault(QLocale::c()); }

}  // namespace trueunit
