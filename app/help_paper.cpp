// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_paper.h"

#include <QDir>
#include <QFile>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

#include "app/help_layout.h"
#include "app/version.h"

namespace trueunit {

namespace {

constexpr double kTextPoints = 9.5;
constexpr double kDrawingScale = 4.0;
constexpr int kWidestDrawing = 630;

QByteArray contentOf(const QString& resource) {
    QFile file(resource);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class PaperPage : public QTextDocument {
public:
    explicit PaperPage(const QUrl& page) : page_(page) {
        QFont font(QStringLiteral("Inter"));
        font.setPointSizeF(kTextPoints);
        setDefaultFont(font);
        setMarkdown(helpFormulasWhole(QString::fromUtf8(contentOf(QLatin1Char(':') + page.path()))));
        layOutHelp(*this, {Qt::darkGray, Qt::lightGray});
        inkLinks();
    }

protected:
    QVariant loadResource(int type, const QUrl& name) override {
        if (type != ImageResource) return QTextDocument::loadResource(type, name);
        QByteArray drawing = contentOf(QLatin1Char(':') + page_.resolved(name).path());
        drawing.replace("#fffdf8", "#ffffff");  // the panel's colour
        return helpDrawing(drawing, kDrawingScale, kWidestDrawing);
    }

private:
    // Nothing on paper can be followed.
    void inkLinks() {
        QTextCharFormat ink;
        ink.setForeground(Qt::black);
        ink.setFontUnderline(false);
        QTextCursor cursor(this);
        for (QTextBlock block = begin(); block.isValid(); block = block.next())
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                if (!at.fragment().charFormat().isAnchor()) continue;
                cursor.setPosition(at.fragment().position());
                cursor.setPosition(at.fragment().position() + at.fragment().length(), QTextCursor::KeepAnchor);
                cursor.mergeCharFormat(ink);
            }
    }

    QUrl page_;
};

}  // namespace

Outcome writeHelpPaper(const QUrl& page, const QString& title, Paper paper, const QString& path) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly)) {
        QPdfWriter pdf(&file);
        pdf.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
        pdf.setTitle(title);
        pdf.setCreator(QStringLiteral("Trueunit ") + QLatin1String(kVersion));
        PaperPage(page).print(&pdf);
    }
    if (file.error() == QFileDevice::NoError && file.commit()) return done();
    return Error{
        QStringLiteral("The page could not be written to \"%1\" (%2); choose another folder or free some space.")
            .arg(QDir::toNativeSeparators(path), file.errorString().trimmed())
            .toStdString()};
}

}  // namespace trueunit
