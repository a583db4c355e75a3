// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_output.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QImageWriter>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>
#include <memory>

#include "app/version.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

QString pagePath(const QString& first, std::size_t number) {
    if (number == 1) return first;
    const QFileInfo info(first);
    const QString suffix = info.suffix().isEmpty() ? QString() : QLatin1Char('.') + info.suffix();
    return info.dir().filePath(info.completeBaseName() + Words::tr(", page %1").arg(number) + suffix);
}

Error refusal(const QString& path, const QString& reason) {
    return Error{
        QStringLiteral("The report could not be written to \"%1\" (%2); choose another folder or free some space.")
            .arg(QDir::toNativeSeparators(path), reason.trimmed())
            .toStdString()};
}

struct Composed {
    std::vector<QImage> pages;
    bool tight = false;
};

// Set closer where that spares a page that would hold a few lines only.
Composed composedAt(const Composition& compose, const ReportFacts& facts, Paper paper) {
    PageFlow page(paper);
    compose(page);
    const bool little = page.endsWithLittle();
    Composed usual{page.finish(facts.foot), false};
    if (!little) return usual;
    PageFlow closer(paper, true);
    compose(closer);
    Composed tight{closer.finish(facts.foot), true};
    return tight.pages.size() < usual.pages.size() ? std::move(tight) : std::move(usual);
}

// All files are written in full before the first takes its name.
Result<QStringList> writePictures(const std::vector<QImage>& pages, const QString& path) {
    std::vector<std::unique_ptr<QSaveFile>> files;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        auto file = std::make_unique<QSaveFile>(pagePath(path, i + 1));
        if (!file->open(QIODevice::WriteOnly)) return refusal(file->fileName(), file->errorString());
        QImageWriter writer(file.get(), "png");
        if (!writer.write(pages[i])) return refusal(file->fileName(), writer.errorString());
        files.push_back(std::move(file));
    }
    QStringList written;
    for (const auto& file : files) {
        if (!file->commit()) return refusal(file->fileName(), file->errorString());
        written += file->fileName();
    }
    return written;
}

Result<QStringList> writePdf(const Composition& compose, const ReportFacts& facts, Paper paper, const QString& path) {
    const Composed rehearsal = composedAt(compose, facts, paper);  // to number the pages
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return refusal(path, file.errorString());
    {
        QPdfWriter pdf(&file);
        pdf.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
        pdf.setPageMargins({});
        pdf.setResolution(qRound(PageFlow::kDotsPerInch));
        pdf.setTitle(facts.title);
        pdf.setCreator(QStringLiteral("Trueunit ") + QLatin1String(kVersion));
        PageFlow page(paper, rehearsal.tight, pdf, facts.foot, rehearsal.pages.size());
        compose(page);
        page.finishPdf();
    }
    if (file.error() != QFileDevice::NoError || !file.commit()) return refusal(path, file.errorString());
    return QStringList{path};
}

}  // namespace

std::vector<QImage> composedPages(const Composition& compose, const ReportFacts& facts, Paper paper) {
    std::vector<QImage> pages = composedAt(compose, facts, paper).pages;
    const QDateTime time = QDateTime::fromSecsSinceEpoch(facts.secondsUtc, Qt::UTC);
    for (QImage& image : pages) {
        image.setText(QStringLiteral("Title"), facts.title);
        image.setText(QStringLiteral("Software"), QStringLiteral("Trueunit ") + QLatin1String(kVersion));
        image.setText(QStringLiteral("Creation Time"), time.toString(Qt::RFC2822Date));
        image.setText(QStringLiteral("Description"), facts.description);
    }
    return pages;
}

Result<QStringList> writeReportFile(const Composition& compose, const ReportFacts& facts, Paper paper,
                                    const QString& path) {
    if (path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) return writePdf(compose, facts, paper, path);
    return writePictures(composedPages(compose, facts, paper), path);
}

}  // namespace trueunit
