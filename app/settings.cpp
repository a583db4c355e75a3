// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings.h"

#include <QSettings>
#include <algorithm>

#include "core/report/machine_card_json.h"

namespace trueunit {

namespace {

constexpr int kFirstWindow = 8;  // characters: short enough to follow the screwdriver

std::optional<double> storedNumber(const QSettings& store, const QString& key) {
    bool isNumber = false;
    const double value = store.value(key).toDouble(&isNumber);
    if (!isNumber) return std::nullopt;
    return value;
}

void storeNumber(QSettings& store, const QString& key, const std::optional<double>& value) {
    if (value)
        store.setValue(key, *value);
    else
        store.remove(key);
}

}  // namespace

Settings loadSettings() {
    const QSettings store;
    Settings s;
    s.options.baud = storedNumber(store, "measure/baud");
    s.options.stopUnits = storedNumber(store, "measure/stopUnits");
    s.options.code = store.value("measure/code", "ita2").toString().toStdString();
    const int kind = store.value("measure/input", 0).toInt();
    s.options.input = kind >= 0 && kind <= 3 ? static_cast<InputKind>(kind) : InputKind::automatic;
    s.options.windowCharacters = store.value("measure/windowCharacters", kFirstWindow).toInt();
    s.options.clockPpm = storedNumber(store, "measure/clockPpm").value_or(0.0);
    s.options.slicePercent = storedNumber(store, "measure/slicePercent").value_or(s.options.slicePercent);
    if (const std::string card = store.value("measure/card").toString().toStdString(); !card.empty())
        if (Result<MachineCard> found = parseMachineCard(card)) s.options.card = std::move(*found);
    if (s.options.problem()) s.options = Options{};
    s.deviceName = store.value("sound/device").toString().toStdString();
    s.deviceHostApi = store.value("sound/hostApi").toString().toStdString();
    s.channel = store.value("sound/channel", 0).toInt() == 1 ? 1 : 0;
    s.limits = store.value("measure/limits", "bench").toString().toStdString();
    return s;
}

void saveSettings(const Settings& s) {
    QSettings store;
    storeNumber(store, "measure/baud", s.options.baud);
    storeNumber(store, "measure/stopUnits", s.options.stopUnits);
    store.setValue("measure/code", QString::fromStdString(s.options.code));
    store.setValue("measure/input", static_cast<int>(s.options.input));
    store.setValue("measure/windowCharacters", s.options.windowCharacters);
    store.setValue("measure/clockPpm", s.options.clockPpm);
    store.setValue("measure/slicePercent", s.options.slicePercent);
    store.setValue("measure/card",
                   s.options.card ? QString::fromStdString(machineCardJson(*s.options.card)) : QString());
    store.setValue("measure/limits", QString::fromStdString(s.limits));
    store.setValue("sound/device", QString::fromStdString(s.deviceName));
    store.setValue("sound/hostApi", QString::fromStdString(s.deviceHostApi));
    store.setValue("sound/channel", s.channel);
}

EarSettings loadEarSettings() {
    const QSettings store;
    EarSettings s;
    s.deviceName = store.value("ear/device").toString().toStdString();
    s.deviceHostApi = store.value("ear/hostApi").toString().toStdString();
    s.volumePercent = std::clamp(store.value("ear/volumePercent", s.volumePercent).toInt(), 0, 100);
    return s;
}

void saveEarSettings(const EarSettings& s) {
    QSettings store;
    store.setValue("ear/device", QString::fromStdString(s.deviceName));
    store.setValue("ear/hostApi", QString::fromStdString(s.deviceHostApi));
    store.setValue("ear/volumePercent", s.volumePercent);
}

}  // namespace trueunit
