// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace trueunit {

// What a report still needs from the person: the machine's name, remarks, and where to write it.
class ReportDialog : public QDialog {
    Q_OBJECT

public:
    static constexpr int kVisitWanted = 2;  // its result when the report of the visit is asked for instead

    enum class Visit { none, notKept, kept };  // the visit that goes on, with a moment before

    ReportDialog(const QString& machine, const QString& remarks, const QString& path, Visit visit,
                 QWidget* parent = nullptr);

    QString machine() const;
    QString remarks() const;
    QString path() const;  // ends in .png

    // "Skerry 2 2026-11-25 1403.png" in the folder for pictures, else documents, else home; never one that exists.
    static QString freshPath(const QString& machine, qint64 takenSecondsUtc);
    static QString freshPath(const QString& machine, const QString& when, const QString& suffix);

private:
    void browse();
    QWidget* choice(bool kept);  // this moment, or the visit
    void weigh();

    QLineEdit* machine_;
    QPlainTextEdit* remarks_;
    QLineEdit* path_;
    QWidget* file_;  // the row of the path
    QPushButton* write_ = nullptr;
    bool visitWanted_ = false;
};

}  // namespace trueunit
