// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/machine_cards.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSaveFile>
#include <QStandardPaths>
#include <algorithm>

#include "core/report/machine_card_json.h"

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepMachines() { Q_INIT_RESOURCE(machines); }

namespace trueunit {

namespace {

constexpr qint64 kLargestCard = 65536;  // bytes; a card has some hundred

Result<MachineCard> readCard(const QString& path) {
    QFile file(path);
    const auto inFile = [&path](const std::string& sentence) {
        return Error{"\"" + QDir::toNativeSeparators(path).toStdString() + "\": " + sentence};
    };
    if (!file.open(QIODevice::ReadOnly)) return inFile("cannot be opened.");
    if (file.size() > kLargestCard) return inFile("is too large for a machine card.");
    const QByteArray json = file.readAll();
    Result<MachineCard> card = parseMachineCard({json.constData(), static_cast<std::size_t>(json.size())});
    if (!card) return inFile(card.error().text);
    return card;
}

void readFolder(const QString& path, std::vector<MachineCard>& into, std::vector<Error>* refused) {
    const QDir folder(path);
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        Result<MachineCard> card = readCard(folder.filePath(name));
        if (!card) {
            if (refused) refused->push_back(card.error());
            continue;
        }
        const auto same =
            std::find_if(into.begin(), into.end(), [&](const MachineCard& c) { return c.name == card->name; });
        if (same == into.end())
            into.push_back(std::move(*card));
        else
            *same = std::move(*card);
    }
}

}  // namespace

QString ownMachinesFolder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation))
        .filePath(QStringLiteral("machines"));
}

std::vector<MachineCard> machineCards(std::vector<Error>* refused) {
    keepMachines();
    std::vector<MachineCard> all;
    readFolder(QStringLiteral(":/machines"), all, refused);
    readFolder(ownMachinesFolder(), all, refused);
    return all;
}

Result<MachineCard> machineCardNamed(const std::string& nameOrFile) {
    if (nameOrFile.ends_with(".json")) return readCard(QString::fromStdString(nameOrFile));
    std::string names;
    for (MachineCard& card : machineCards()) {
        if (card.name == nameOrFile) return std::move(card);
        names += (names.empty() ? "" : ", ") + card.name;
    }
    return Error{"There is no machine card named \"" + nameOrFile + "\"; there are " + names + "."};
}

Outcome keepMachineCard(const MachineCard& card) {
    if (const auto problem = problemOf(card)) return *problem;
    QDir().mkpath(ownMachinesFolder());
    QSaveFile file(QDir(ownMachinesFolder()).filePath(QString::fromStdString(card.name) + QStringLiteral(".json")));
    const QByteArray json = QByteArray::fromStdString(machineCardJson(card));
    if (file.open(QIODevice::WriteOnly) && file.write(json) == json.size() && file.commit()) return done();
    return Error{QStringLiteral("The machine card could not be kept in \"%1\" (%2).")
                     .arg(QDir::toNativeSeparators(file.fileName()), file.errorString())
                     .toStdString()};
}

std::string cardNameFor(const QString& title) {
    static const QRegularExpression kOther(QStringLiteral("[^a-z0-9]+"));
    QString name = title.toLower().replace(kOther, QStringLiteral("-")).left(40);
    while (name.startsWith(QLatin1Char('-'))) name.remove(0, 1);
    while (name.endsWith(QLatin1Char('-'))) name.chop(1);
    return name.isEmpty() ? "machine" : name.toStdString();
}

}  // namespace trueunit
