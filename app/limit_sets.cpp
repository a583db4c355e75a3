// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/limit_sets.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>
#include <algorithm>

#include "core/report/limits_json.h"

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepLimits() { Q_INIT_RESOURCE(limits); }

namespace trueunit {

namespace {

constexpr qint64 kLargestSet = 65536;  // bytes; a set has some hundred

void readFolder(const QString& path, bool own, std::vector<Limits>& into) {
    const QDir folder(path);
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestSet) continue;
        const QByteArray json = file.readAll();
        Result<Limits> limits = parseLimits({json.constData(), static_cast<std::size_t>(json.size())});
        if (!limits || (own && isBuiltIn(limits->name))) continue;
        if (own) limits->kind = LimitsOrigin::own;
        into.push_back(std::move(*limits));
    }
}

std::vector<Limits> builtIn() {
    keepLimits();
    std::vector<Limits> all;
    readFolder(QStringLiteral(":/limits"), false, all);
    return all;
}

QString fileOf(const std::string& name) {
    return QDir(ownLimitsFolder()).filePath(QString::fromStdString(name) + QStringLiteral(".json"));
}

Error refusal(const QSaveFile& file) {
    return Error{QStringLiteral("The limits could not be kept in \"%1\" (%2).")
                     .arg(QDir::toNativeSeparators(file.fileName()), file.errorString())
                     .toStdString()};
}

}  // namespace

QString ownLimitsFolder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation)).filePath(QStringLiteral("limits"));
}

bool isBuiltIn(const std::string& name) {
    const std::vector<Limits> all = builtIn();
    return std::any_of(all.begin(), all.end(), [&](const Limits& l) { return l.name == name; });
}

std::vector<Limits> limitSets() {
    std::vector<Limits> all = builtIn();
    readFolder(ownLimitsFolder(), true, all);
    return all;
}

Result<Limits> limitSetNamed(const std::string& name) {
    std::string names;
    for (Limits& l : limitSets()) {
        if (l.name == name) return std::move(l);
        names += (names.empty() ? "" : ", ") + l.name;
    }
    return Error{"There are no limits named \"" + name + "\"; there are " + names + "."};
}

Outcome keepOwnLimits(Limits limits) {
    limits.kind = LimitsOrigin::own;
    if (const auto problem = problemOf(limits)) return *problem;
    if (isBuiltIn(limits.name)) return Error{"\"" + limits.name + "\" is built in; give your own limits another name."};
    QDir().mkpath(ownLimitsFolder());
    QSaveFile file(fileOf(limits.name));
    const QByteArray json = QByteArray::fromStdString(limitsJson(limits));
    if (!file.open(QIODevice::WriteOnly) || file.write(json) != json.size() || !file.commit()) return refusal(file);
    return done();
}

Outcome removeOwnLimits(const std::string& name) {
    if (QFile::remove(fileOf(name))) return done();
    return Error{"The limits \"" + name + "\" could not be removed from the folder of your own."};
}

}  // namespace trueunit
