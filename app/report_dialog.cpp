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
#include <QRadioButton>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "app/ask_file.h"
#include "app/help_window.h"

namespace trueunit {

ReportDialog::ReportDialog(const QString& machine, const QString& remarks, const QString& path, Visit visit,
                           QWidget* parent)
    : QDialog(parent),
      machine_(new QLineEdit(machine)),
      remarks_(new QPlainTextEdit(remarks)),
      path_(new QLineEdit(path)),
      file_(new QWidget) {
    setWindowTitle(tr("Report"));
    machine_->setAccessibleName(tr("Machine"));
    remarks_->setTabChangesFocus(true);
    remarks_->setAccessibleName(tr("Remarks"));
    remarks_->setPlaceholderText(tr("what was found and done"));
    path_->setAccessibleName(tr("File"));
    auto* choose = new QPushButton(tr("&Choose\u2026"));
    connect(choose, &QPushButton::clicked, this, &ReportDialog::browse);
    auto* file = new QHBoxLayout(file_);
    file->setContentsMargins(0, 0, 0, 0);
    file->addWidget(path_, 1);
    file->addWidget(choose);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    write_ = buttons->addButton(tr("&Write the report"), QDialogButtonBox::AcceptRole);
    write_->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("logbook.md")), QDialogButtonBox::HelpRole);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] { done(visitWanted_ ? kVisitWanted : Accepted); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(path_, &QLineEdit::textChanged, this, &ReportDialog::weigh);
    auto* form = new QFormLayout(this);
    if (visit != Visit::none) form->addRow(choice(visit == Visit::kept));
    form->addRow(tr("&Machine"), machine_);
    form->addRow(tr("&Remarks"), remarks_);
    auto* fileLabel = new QLabel(tr("&File"));
    fileLabel->setBuddy(path_);
    form->addRow(fileLabel, file_);
    form->addRow(buttons);
    resize(560, visit != Visit::none ? 340 : 300);
    remarks_->setFocus();
}

QWidget* ReportDialog::choice(bool kept) {
    auto* moment = new QRadioButton(tr("A report on &this moment, against the one marked before"));
    auto* visit = new QRadioButton(tr("The papers of the &visit: also complaint, work done, a line to sign"));
    moment->setChecked(true);
    connect(visit, &QRadioButton::toggled, this, [this, kept](bool wanted) {
        visitWanted_ = wanted;
        file_->setEnabled(!wanted);
        write_->setText(!wanted ? tr("&Write the report")
                        : kept  ? tr("Open the &logbook")
                                : tr("Keep and open the &logbook"));
        weigh();
    });
    auto* group = new QWidget;
    auto* layout = new QVBoxLayout(group);
    layout->setContentsMargins(0, 0, 0, 6);
    layout->addWidget(moment);
    layout->addWidget(visit);
    return group;
}

// Without a file there is nothing to write to; the papers of the visit get theirs in the logbook.
void ReportDialog::weigh() { write_->setEnabled(visitWanted_ || !path_->text().trimmed().isEmpty()); }

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
