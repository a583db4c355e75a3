// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <nlohmann/json.hpp>
#include <optional>

#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "app/logbook/visit_record.h"
#include "app/logbook/zip_file.h"
#include "core/report/frame_json.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

struct FrameEntry {
    std::string uid;
    FrameRole role = FrameRole::none;
    std::optional<FrozenFrame> frame;
    QByteArray excerpt;
};

// What the archive holds, checked as a whole before anything is written.
struct Contents {
    bool known = false;
    std::vector<FrameEntry> frames;
    std::optional<Machine> machine;
    std::optional<Visit> visit;

    FrameEntry* entry(const QString& uid) {
        for (FrameEntry& f : frames)
            if (f.uid == uid.toStdString()) return &f;
        return nullptr;
    }
};

Outcome takeManifest(Contents& all, const QByteArray& bytes) {
    const Json json = Json::parse(bytes.begin(), bytes.end(), nullptr, false);
    const auto text = [](const Json& o, const char* key) {
        return o.is_object() && o.contains(key) && o[key].is_string() ? o[key].get<std::string>() : std::string();
    };
    if (text(json, "archive") != "trueunit visit") return done();  // refused at the end
    if (!json.contains("form") || json["form"] != 1)
        return Error{"The archive was written by a later version of Trueunit; import it with that one."};
    all.known = true;
    if (json.contains("frames") && json["frames"].is_array())
        for (const Json& f : json["frames"])
            if (const std::string uid = text(f, "uid"); !uid.empty())
                all.frames.push_back({uid, roleNamed(QString::fromStdString(text(f, "role"))), {}, {}});
    return done();
}

Outcome takeEntry(Contents& all, const QString& name, const QByteArray& bytes) {
    if (name == QLatin1String("manifest.json")) return takeManifest(all, bytes);
    if (name == QLatin1String("machine.json")) {
        const Result<Machine> machine = machineFromJson(bytes);
        if (!machine) return machine.error();
        all.machine = *machine;
    } else if (name == QLatin1String("visit.json")) {
        const Result<Visit> visit = visitFromJson(bytes);
        if (!visit) return visit.error();
        all.visit = *visit;
    }
    const QStringList parts = name.split(QLatin1Char('/'));
    FrameEntry* entry = parts.size() == 3 && parts[0] == QLatin1String("frames") ? all.entry(parts[1]) : nullptr;
    if (!entry) return done();  // of a later program, or a remark somebody added
    if (parts[2] == QLatin1String("excerpt.flac")) entry->excerpt = bytes;
    if (parts[2] != QLatin1String("frame.json")) return done();
    Result<FrozenFrame> frame = frameFromJson(bytes.toStdString());
    if (!frame) return frame.error();
    entry->frame = std::move(*frame);
    return done();
}

Result<Contents> contentsOf(const QString& path) {
    Contents all;
    Outcome read =
        readZip(path, [&](const QString& name, const QByteArray& bytes) { return takeEntry(all, name, bytes); });
    if (!read) return read.error();
    bool whole = all.known && all.machine && all.visit;
    for (const FrameEntry& f : all.frames) whole = whole && f.frame;
    if (!whole)
        return Error{QStringLiteral("\"%1\" is no whole archive of a visit; nothing was taken from it.")
                         .arg(QDir::toNativeSeparators(path))
                         .toStdString()};
    return all;
}

Result<Machine> placeMachine(const Store& store, const Machine& from) {
    auto here = findMachineByUid(store, from.uid);
    if (!here) return here.error();
    if (!*here) {
        here = findMachineByName(store, from.name);
        if (!here) return here.error();
        if (*here && (*here)->mark != from.mark) here = std::optional<Machine>();
    }
    Machine machine = from;
    machine.id = 0;
    if (*here) {
        if ((*here)->uid != from.uid || (*here)->changed >= from.changed) return **here;
        machine.id = (*here)->id;
    }
    const Result<qint64> id = saveMachine(store, machine);
    if (!id) return id.error();
    machine.id = *id;
    return machine;
}

Outcome placeVisit(const Store& store, const Visit& from, qint64 machine, Imported& imported) {
    const auto here = findVisitByUid(store, from.uid);
    if (!here) return here.error();
    Visit visit = from;
    visit.machine = machine;
    imported.visitNew = !*here;
    imported.textsNewer = *here && (*here)->changed < from.changed;
    if (*here) {
        visit.id = imported.visit = (*here)->id;
        visit.machine = (*here)->machine;
        if (!imported.textsNewer) return done();
    }
    const Result<qint64> id = saveVisit(store, visit);
    if (!id) return id.error();
    imported.visit = *id;
    return done();
}

}  // namespace

Result<Imported> importVisitArchive(const Store& store, const QString& path) {
    Result<Contents> all = contentsOf(path);
    if (!all) return all.error();
    WriteTransaction transaction(store);
    if (!transaction.begun()) return transaction.begun().error();
    Imported imported;
    const Result<Machine> machine = placeMachine(store, *all->machine);
    if (!machine) return machine.error();
    imported.machine = machine->name;
    if (Outcome placed = placeVisit(store, *all->visit, machine->id, imported); !placed) return placed.error();
    for (FrameEntry& entry : all->frames) {
        const QString uid = QString::fromStdString(entry.uid);
        const auto here = findFrameByUid(store, uid);
        if (!here) return here.error();
        if (*here) {
            ++imported.framesThere;
            continue;
        }
        const Result<qint64> id =
            insertFrame(store, imported.visit, uid, entry.role, {std::move(*entry.frame), std::move(entry.excerpt)});
        if (!id) return id.error();
        ++imported.framesNew;
    }
    if (Outcome committed = transaction.commit(); !committed) return committed.error();
    return imported;
}

}  // namespace trueunit
