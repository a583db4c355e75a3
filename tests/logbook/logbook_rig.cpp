// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/logbook/logbook_rig.h"

#include <QRandomGenerator>
#include <QSqlDatabase>
#include <QSqlQuery>

#include "app/logbook/schema.h"
#include "app/logbook/squeezed.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"
#include "core/report/frame_json.h"
#include "tests/support/frame_builder.h"

namespace trueunit::test {

namespace {

// Few traces, so that tests which keep hundreds of frames stay quick.
FrozenFrame drawnFrame() {
    FrozenFrame frame = test::frameOfLongMarks();
    auto s = std::make_shared<Snapshot>(*frame.snapshot);
    s->traces.resize(5);
    frame.snapshot = s;
    return frame;
}

}  // namespace

Keeping keepingOf(const QString& machine, qint64 taken, const QString& uid, qsizetype soundBytes) {
    static const FrozenFrame drawn = drawnFrame();
    Keeping keeping;
    keeping.kept.frame = drawn;
    keeping.kept.frame.machine = machine.toStdString();
    keeping.kept.frame.takenSecondsUtc = taken;
    keeping.uid = uid.isEmpty() ? freshUid() : uid;
    QRandomGenerator random(static_cast<quint32>(taken));
    keeping.kept.excerptFlac.resize(soundBytes);
    for (char& c : keeping.kept.excerptFlac) c = static_cast<char>(random.bounded(256));
    return keeping;
}

std::unique_ptr<Store> opened(const QString& path) {
    auto store = Store::open(path);
    if (store) return std::move(*store);
    qWarning("%s", store.error().text.c_str());
    return nullptr;
}

void makeOldLogbook(const QString& path, int frames) {
    const auto store = Store::openAsItIs(path);
    if (!store || !migrate(**store, nullptr, 1)) qFatal("no old logbook");
    FrozenFrame kept = test::frameOfLongMarks();
    auto snapshot = std::make_shared<Snapshot>(*kept.snapshot);
    snapshot->reading.findings = std::vector<Finding>(1);
    snapshot->reading.findings->front().id = "level-late";
    snapshot->reading.findings->front().seenAt.level = 4;
    kept.snapshot = snapshot;
    const QByteArray frame = squeezed(frameJson(kept));
    WriteTransaction transaction(**store);
    const auto run = [&](const QString& sql, const QVariantList& values) {
        Statement statement(**store, sql);
        for (const QVariant& v : values) statement.bind(v);
        if (!statement.run()) qFatal("no old logbook");
    };
    run("INSERT INTO machines (id, uid, name, changed) VALUES (1, 'm-1', 'SKERRY 2', 5)", {});
    run("INSERT INTO visits (id, uid, machine_id, opened, complaint, changed) VALUES (1, 'v-1', 1, 5, 'GARBLES', 5)",
        {});
    for (int i = 1; i <= frames; ++i) {
        run("INSERT INTO frames (id, uid, visit_id, taken, remarks, findings) VALUES (?, ?, 1, ?, 'Hebel STRASSE', ?)",
            {i, QStringLiteral("f-%1").arg(i), 1000 + i, QStringLiteral(" level-late ")});
        run("INSERT INTO contents (frame_id, frame) VALUES (?, ?)", {i, frame});
    }
    if (!transaction.commit()) qFatal("no old logbook");
}

}  // namespace trueunit::test
