// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_dialog.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QStandardPaths>

#include "app/ask_file.h"
#include "app/help_window.h"

namespace trueunit {

ReportDialog::ReportDialog(const QString& machine, const QString& remarks, const QString& path, Visit visit,
                           QWidget* parent)
    : QDialog(parent),
      machine_(new QLineEdit(machine)),
      remarks_(new QPlainTextEdit(remarks)),
      path_(new QLineEdit(path)) {
    setWindowTitle(tr("Report"));
    machine_->setAccessibleName(tr("Machine"));
    remarks_->setTabChangesFocus(true);
    remarks_->setAccessibleName(tr("Remarks"));
    remarks_->setPlaceholderText(tr("what was found and done"));
    path_->setAccessibleName(tr("File"));
    auto* choose = new QPushButton(tr("&Choose\u2026"));
    connect(choose, &QPushButton::clicked, this, &ReportDialog::browse);
    auto* file = new QHBoxLayout;
    file->addWidget(path_, 1);
    file->addWidget(choose);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    QPushButton* write = buttons->addButton(tr("&Write the report"), QDialogButtonBox::AcceptRole);
    write->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("logbook.md")), QDialogButtonBox::HelpRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(path_, &QLineEdit::textChanged, this,
            [this, write] { write->setEnabled(!path_->text().trimmed().isEmpty()); });
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Machine"), machine_);
    form->addRow(tr("&Remarks"), remarks_);
    auto* fileLabel = new QLabel(tr("&File"));
    fileLabel->setBuddy(path_);
    form->addRow(fileLabel, file);
    if (visit != Visit::none) form->addRow(visitRow(visit == Visit::kept));
    form->addRow(buttons);
    resize(560, visit != Visit::none ? 340 : 300);
    remarks_->setFocus();
}

QWidget* ReportDialog::visitRow(bool kept) {
    auto* words = new QLabel(
        tr("This page is of one moment, held against the one marked before. The report of the visit has complaint, "
           "work done and a line to sign as well; it is made from the logbook."));
    words->setWordWrap(true);
    auto* open = new QPushButton(kept ? tr("Open the &logbook") : tr("Keep and open the &logbook"));
    open->setAutoDefault(false);
    connect(open, &QPushButton::clicked, this, [this] { done(kVisitWanted); });
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(words, 1);
    layout->addWidget(open);
    return row;
}

QString ReportDialog::machine() const { return machine_->text().simplified(); }
QString ReportDialog::remarks() const { return remarks_->toPlainText().trimmed(); }

QString ReportDialog::path() const {
    const QString path = QDir::fromNativeSeparators(path_->text().trimmed());
    return path.endsWith(QStringLiteral(".png"), Qt::CaseInsensitive) ? path : path + QStringLiteral(".png");
}

void ReportDialog::browse() {
    const QString chosen = askToSave(this, tr("Write the report to"), path(), tr("PNG pictures (*.png)"));
    if (!chosen.isEmpty()) path_->setText(QDir::toNativeSeparators(chosen));
}

QString ReportDialog::freshPath(const QString& machine, qint64 takenSecondsUtc) {
    const QDateTime taken = QDateTime::fromSecsSinceEpoch(takenSecondsUtc);
    return freshPath(machine, taken.toString(QStringLiteral(" yyyy-MM-dd HHmm")), QStringLiteral(".png"));
}

QString ReportDialog::freshPath(const QString& machine, const QString& when, const QString& suffix) {
    QString name = machine.simplified();
    name.replace(QRegularExpression(QStringLiteral("[/\\\\:*?\"<>|\\x00-\\x1f]")), QStringLiteral("-"));
    while (name.startsWith(QLatin1Char('.'))) name.remove(0, 1);
    name = name.left(80).trimmed();
    if (name.isEmpty()) name = QStringLiteral("machine");
    const QString stem = name + when;
    QString folder;
    for (const auto place :
         {QStandardPaths::PicturesLocation, QStandardPaths::DocumentsLocation, QStandardPaths::HomeLocation}) {
        folder = QStandardPaths::writableLocation(place);
        if (QFileInfo(folder).isDir() && QFileInfo(folder).isWritable()) break;
    }
    QString path = QDir(folder).filePath(stem + suffix);
    for (int i = 2; QFileInfo::exists(path); ++i)
        path = QDir(folder).filePath(QStringLiteral("%1 (%2)").arg(stem).arg(i) + suffix);
    return path;
}

}  // namespace trueunit
