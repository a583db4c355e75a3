// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/visit_archive.h"

#include <nlohmann/json.hpp>

#include "app/logbook/frame_search.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_record.h"
#include "app/logbook/zip_file.h"
#include "app/version.h"
#include "core/report/frame_json.h"
#include "core/report/reading_json.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;
constexpr int kForm = 1;
constexpr const char* kKind = "trueunit visit";

std::string manifest(const std::vector<FrameRow>& frames) {
    Json all = Json::array();
    for (const FrameRow& f : frames)
        all.push_back({{"uid", f.uid.toStdString()},
                       {"taken", timeText(f.taken).toStdString()},
                       {"role", roleName(f.role).toStdString()}});
    return Json{{"archive", kKind},
                {"form", kForm},
                {"written_by", std::string("Trueunit ") + kVersion},
                {"frames", all}}
               .dump(2) +
           "\n";
}

QString folder(const QString& uid) { return QStringLiteral("frames/%1/").arg(uid); }

Outcome addFrame(ZipWriter& zip, const Store& store, const FrameRow& row) {
    const Result<KeptFrame> kept = readFrame(store, row.id);
    if (!kept) return kept.error();
    const auto add = [&](const char* name, const std::string& text) {
        return zip.add(folder(row.uid) + QLatin1String(name), QByteArray::fromStdString(text));
    };
    if (Outcome o = add("frame.json", frameJson(kept->frame)); !o) return o;
    if (Outcome o = add("reading.json", readingJson(kept->frame.snapshot->reading) + "\n"); !o) return o;
    if (kept->excerptFlac.isEmpty()) return done();
    return zip.add(folder(row.uid) + QStringLiteral("excerpt.flac"), kept->excerptFlac, false);
}

}  // namespace

Outcome writeVisitArchive(const Store& store, qint64 id, const QString& path) {
    const auto visit = findVisit(store, id);
    if (!visit) return visit.error();
    if (!*visit) return Error{"There is no visit " + std::to_string(id) + " in the logbook."};
    const auto machine = findMachine(store, (*visit)->machine);
    if (!machine) return machine.error();
    const auto frames = framesOf(store, id);
    if (!frames) return frames.error();
    ZipWriter zip(path);
    if (Outcome o = zip.add("manifest.json", QByteArray::fromStdString(manifest(*frames))); !o) return o;
    if (Outcome o = zip.add("machine.json", QByteArray::fromStdString(machineJson(**machine))); !o) return o;
    if (Outcome o = zip.add("visit.json", QByteArray::fromStdString(visitJson(**visit))); !o) return o;
    for (const FrameRow& row : *frames)
        if (Outcome o = addFrame(zip, store, row); !o) return o;
    return zip.finish();
}

}  // namespace trueunit
