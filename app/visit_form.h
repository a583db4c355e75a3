// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/logbook/machines.h"
#include "app/logbook/visits.h"

class QCheckBox;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTimer;

namespace trueunit {

// The words of a visit and of its machine. What is typed is saved by itself, a moment after the last key and when the
// form is left; the owner of the form writes it. Window thread.
class VisitForm : public QWidget {
    Q_OBJECT

public:
    explicit VisitForm(QWidget* parent = nullptr);

    void show(const Machine& machine, const Visit& visit);
    void clear();
    void offerWork(const QString& remarks);  // to be taken as the work done while there is none
    using QWidget::show;
    Visit visit() const;      // as typed
    Machine machine() const;  // as typed
    void saveNow();           // what is not saved yet
    void focusComplaint();

signals:
    void edited();  // to be saved

private:
    void touch();
    void showOffer();

    Machine machine_;
    Visit visit_;
    QPlainTextEdit *complaint_, *work_, *remarks_;
    QLineEdit *parts_, *oil_, *result_, *mark_, *card_;
    QCheckBox* repaired_;
    QPushButton* offer_;
    QString offered_;
    QTimer* pause_;
    bool filling_ = false;
};

}  // namespace trueunit
