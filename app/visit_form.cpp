// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/visit_form.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTimer>
#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr int kPauseMs = 700;
constexpr int kTextMargin = 2;  // pixels; with more, half a line would show below whole ones

// At least so many lines, more where there is room, and whole ones only: what is left over stays blank below.
class TextLines : public QPlainTextEdit {
public:
    explicit TextLines(int fewest) : fewest_(fewest) {
        setTabChangesFocus(true);
        document()->setDocumentMargin(kTextMargin);
        QPalette paper = palette();
        paper.setColor(QPalette::Window, paper.color(QPalette::Base));
        setPalette(paper);
        setAutoFillBackground(true);
    }
    QSize sizeHint() const override { return {QPlainTextEdit::sizeHint().width(), heightOf(fewest_)}; }
    QSize minimumSizeHint() const override { return {QPlainTextEdit::minimumSizeHint().width(), heightOf(fewest_)}; }

protected:
    void resizeEvent(QResizeEvent* event) override {
        const int lines = (height() - heightOf(0)) / lineHeight();
        setViewportMargins(0, 0, 0, height() - heightOf(std::max(lines, 1)));
        QPlainTextEdit::resizeEvent(event);
    }

private:
    int lineHeight() const { return static_cast<int>(std::ceil(QFontMetricsF(font()).lineSpacing())); }
    int heightOf(int lines) const { return lines * lineHeight() + 2 * (frameWidth() + kTextMargin); }

    const int fewest_;
};

QPlainTextEdit* textField(const QString& name, const QString& hint, int lines) {
    auto* field = new TextLines(lines);
    field->setAccessibleName(name);
    field->setPlaceholderText(hint);
    QSizePolicy share(QSizePolicy::Expanding, QSizePolicy::Expanding);
    share.setVerticalStretch(lines);
    field->setSizePolicy(share);
    return field;
}

QLineEdit* lineField(const QString& name, const QString& hint) {
    auto* field = new QLineEdit;
    field->setAccessibleName(name);
    field->setPlaceholderText(hint);
    return field;
}

}  // namespace

VisitForm::VisitForm(QWidget* parent)
    : QWidget(parent),
      complaint_(textField(tr("Complaint"), tr("what it came for"), 2)),
      work_(textField(tr("Work done"), tr("what was found and done"), 3)),
      remarks_(textField(tr("About the machine"), tr("what holds for every visit"), 2)),
      parts_(lineField(tr("Parts"), tr("renewed or made"))),
      oil_(lineField(tr("Oil and grease"), tr("where and what; contacts are not oiled"))),
      result_(lineField(tr("Result"), tr("how it left; ends the visit"))),
      mark_(lineField(tr("Owner's mark"), tr("inventory number"))),
      card_(lineField(tr("Card"), tr("code, speed, stop, motor, gears"))),
      repaired_(new QCheckBox(tr("Re&paired on this visit"))),
      offer_(new QPushButton(tr("Take it from the re&marks"))),
      pause_(new QTimer(this)) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(4);
    const auto row = [&](const QString& label, QWidget* field) { form->addRow(label, field); };
    row(tr("&Complaint"), complaint_);
    row(tr("&Work done"), work_);
    form->addRow(QString(), offer_);
    offer_->setEnabled(false);
    connect(offer_, &QPushButton::clicked, this, [this] { work_->setPlainText(offered_); });
    connect(work_, &QPlainTextEdit::textChanged, this, &VisitForm::showOffer);
    row(tr("Par&ts"), parts_);
    row(tr("&Oil, grease"), oil_);
    row(tr("R&esult"), result_);
    form->addRow(QString(), repaired_);
    row(tr("Owner's mar&k"), mark_);
    row(tr("Car&d"), card_);
    row(tr("M&achine"), remarks_);
    pause_->setSingleShot(true);
    connect(pause_, &QTimer::timeout, this, &VisitForm::edited);
    for (QPlainTextEdit* field : {complaint_, work_, remarks_})
        connect(field, &QPlainTextEdit::textChanged, this, &VisitForm::touch);
    for (QLineEdit* field : {parts_, oil_, result_, mark_, card_}) {
        connect(field, &QLineEdit::textChanged, this, &VisitForm::touch);
        connect(field, &QLineEdit::editingFinished, this, &VisitForm::saveNow);
    }
    connect(repaired_, &QCheckBox::toggled, this, &VisitForm::touch);
    setEnabled(false);
}

void VisitForm::touch() {
    if (!filling_) pause_->start(kPauseMs);
}

void VisitForm::offerWork(const QString& remarks) {
    offered_ = remarks.trimmed();
    offer_->setToolTip(offered_);
    offer_->setAccessibleDescription(offered_);
    showOffer();
}

// The button keeps its place: no row may move under a hand that types.
void VisitForm::showOffer() { offer_->setEnabled(!offered_.isEmpty() && work_->toPlainText().trimmed().isEmpty()); }

void VisitForm::saveNow() {
    if (!pause_->isActive()) return;
    pause_->stop();
    emit edited();
}

void VisitForm::show(const Machine& machine, const Visit& visit) {
    saveNow();
    filling_ = true;
    machine_ = machine;
    visit_ = visit;
    complaint_->setPlainText(visit.complaint);
    work_->setPlainText(visit.workDone);
    remarks_->setPlainText(machine.remarks);
    parts_->setText(visit.parts);
    oil_->setText(visit.oil);
    result_->setText(visit.result);
    mark_->setText(machine.mark);
    card_->setText(machine.card);
    repaired_->setChecked(visit.repaired);
    setEnabled(true);
    filling_ = false;
}

void VisitForm::clear() {
    show({}, {});
    offerWork({});
    setEnabled(false);
}

Visit VisitForm::visit() const {
    Visit v = visit_;
    v.complaint = complaint_->toPlainText();
    v.workDone = work_->toPlainText();
    v.parts = parts_->text();
    v.oil = oil_->text();
    v.result = result_->text();
    v.repaired = repaired_->isChecked();
    return v;
}

Machine VisitForm::machine() const {
    Machine m = machine_;
    m.mark = mark_->text();
    m.card = card_->text();
    m.remarks = remarks_->toPlainText();
    return m;
}

void VisitForm::focusComplaint() { complaint_->setFocus(); }

}  // namespace trueunit
