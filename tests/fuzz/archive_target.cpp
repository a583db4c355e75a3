// SPDX-License-Identifier: GPL-3.0-or-later
// The archive of a visit, taken into a logbook that must stay whole.
#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>
#include <memory>

#include "app/logbook/machines.h"
#include "app/logbook/store.h"
#include "app/logbook/visit_archive.h"
#include "tests/fuzz/scratch_file.h"
#include "tests/fuzz/targets.h"

namespace trueunit::fuzz {

namespace {

struct Book {
    Book() : store(Store::open(folder.filePath(QStringLiteral("book.sqlite")))) { promise(bool(store)); }

    QTemporaryDir folder;
    Result<std::unique_ptr<Store>> store;
};

}  // namespace

void archive(Bytes bytes) {
    static int argc = 1;
    static char name[] = "fuzz";
    static char* argv[] = {name, nullptr};
    static const auto application =
        QCoreApplication::instance() ? nullptr : std::make_unique<QCoreApplication>(argc, argv);
    static const Book book;
    const ScratchFile file("archive", bytes);
    const Result<Imported> taken = importVisitArchive(**book.store, QString::fromStdString(file.path()));
    promise(taken || !taken.error().text.empty());
    promise(bool(listMachines(**book.store, QString())));
}

}  // namespace trueunit::fuzz
