// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>
#include <functional>
#include <utility>
#include <vector>

#include "app/page_flow.h"
#include "core/result.h"

namespace trueunit {

// What a report says of itself in its file.
struct ReportFacts {
    QString title;
    QString description;
    qint64 secondsUtc = 0;  // of what it reports
    QString foot;           // on every page
};

using Composition = std::function<void(PageFlow&)>;

std::vector<QImage> composedPages(const Composition& compose, const ReportFacts& facts, Paper paper);

// Writes the report as its name ends: ".pdf" is one file, anything else PNG, the first page to path and further ones
// beside it ("name, page 2.png"); gives the files. Each is complete or not there at all. Needs a QGuiApplication.
Result<QStringList> writeReportFile(const Composition& compose, const ReportFacts& facts, Paper paper,
                                    const QString& path);

}  // namespace trueunit
