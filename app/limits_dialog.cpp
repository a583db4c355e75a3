// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/limits_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

#include "app/help_window.h"
#include "app/limit_sets.h"
#include "core/report/judge.h"
#include "core/report/limits_json.h"
#include "widgets/theme.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

struct Field {
    const char* label;
    double Limits::*value;
    bool Limits::*stated;
};
constexpr std::array kFields = {
    Field{QT_TRANSLATE_NOOP("trueunit::LimitsDialog", "&Bias"), &Limits::biasPercent, &Limits::statesBias},
    Field{QT_TRANSLATE_NOOP("trueunit::LimitsDialog", "&End distortion"), &Limits::endPercent, &Limits::statesEnd},
    Field{QT_TRANSLATE_NOOP("trueunit::LimitsDialog", "Start-stop, &gross"), &Limits::grossPercent,
          &Limits::statesGross},
    Field{QT_TRANSLATE_NOOP("trueunit::LimitsDialog", "Start-stop, &synchronous"), &Limits::synchronousPercent,
          &Limits::statesSynchronous},
    Field{QT_TRANSLATE_NOOP("trueunit::LimitsDialog", "S&peed error"), &Limits::speedPercent, &Limits::statesSpeed},
};

QDoubleSpinBox* percentField(const QString& name) {
    auto* field = new QDoubleSpinBox;
    field->setRange(0.0, 50.0);
    field->setSingleStep(0.25);
    field->setSuffix(QStringLiteral(" %"));
    field->setSpecialValueText(LimitsDialog::tr("not judged"));
    field->setAccessibleName(name);
    return field;
}

std::string nameFrom(const QString& title) {
    QString name = title.toLower();
    name.replace(QRegularExpression(QStringLiteral("[^a-z0-9]+")), QStringLiteral("-"));
    return name.left(40).remove(QRegularExpression(QStringLiteral("^-+|-+$"))).toStdString();
}

}  // namespace

LimitsDialog::LimitsDialog(const Limits& now, QWidget* parent)
    : QDialog(parent),
      choice_(new QComboBox),
      origin_(new QLabel),
      title_(new QLineEdit),
      keep_(new QPushButton(tr("&Keep as my own"))),
      remove_(new QPushButton(tr("&Remove"))),
      message_(new QLabel) {
    setWindowTitle(tr("Limits"));
    choice_->setAccessibleName(tr("Set of limits"));
    title_->setAccessibleName(tr("Title"));
    for (QLabel* label : {origin_, message_}) {
        label->setWordWrap(true);
        label->setMinimumHeight(2 * label->fontMetrics().lineSpacing());
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    }
    auto* form = new QFormLayout(this);
    form->addRow(tr("Se&t"), choice_);
    form->addRow(tr("Origin"), origin_);
    for (std::size_t i = 0; i < kFields.size(); ++i) {
        fields_[i] = percentField(tr(kFields[i].label).remove('&'));
        form->addRow(tr(kFields[i].label), fields_[i]);
        connect(fields_[i], &QDoubleSpinBox::valueChanged, this, &LimitsDialog::edited);
    }
    auto* own = new QHBoxLayout;
    own->addWidget(title_, 1);
    own->addWidget(keep_);
    own->addWidget(remove_);
    auto* titleLabel = new QLabel(tr("T&itle"));
    titleLabel->setBuddy(title_);
    form->addRow(titleLabel, own);
    form->addRow(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole)->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("cards.md")), QDialogButtonBox::HelpRole);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &LimitsDialog::use);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(choice_, &QComboBox::activated, this, [this](int index) { show(sets_[static_cast<std::size_t>(index)]); });
    connect(title_, &QLineEdit::textEdited, this, &LimitsDialog::edited);
    connect(keep_, &QPushButton::clicked, this, &LimitsDialog::keepOwn);
    connect(remove_, &QPushButton::clicked, this, &LimitsDialog::removeOwn);
    resize(600, sizeHint().height());
    fill(now.name);
}

void LimitsDialog::fill(const std::string& name) {
    sets_ = limitSets();
    choice_->clear();
    int at = 0;
    for (const Limits& l : sets_) {
        if (l.name == name) at = choice_->count();
        choice_->addItem(tr("%1 (%2)").arg(told(l.title), told(originWords(l.kind))));
    }
    choice_->setCurrentIndex(at);
    show(sets_[static_cast<std::size_t>(at)]);
}

void LimitsDialog::show(const Limits& limits) {
    filling_ = true;
    shown_ = limits;
    for (std::size_t i = 0; i < kFields.size(); ++i)
        fields_[i]->setValue(limits.*kFields[i].stated ? limits.*kFields[i].value : 0.0);
    title_->setText(QString::fromStdString(limits.title));
    title_->setCursorPosition(0);
    QString origin = told(originWords(limits.kind));
    origin[0] = origin[0].toUpper();
    origin_->setText(origin + QStringLiteral(". ") + told(limits.origin));
    keep_->setEnabled(false);
    remove_->setEnabled(limits.kind == LimitsOrigin::own);
    say({});
    filling_ = false;
}

Limits LimitsDialog::typed() const {
    Limits l = shown_;
    for (std::size_t i = 0; i < kFields.size(); ++i) {
        l.*kFields[i].stated = fields_[i]->value() > 0.0;
        if (l.*kFields[i].stated) l.*kFields[i].value = fields_[i]->value();
    }
    l.title = title_->text().trimmed().toStdString();
    if (shown_.kind != LimitsOrigin::own) l.origin = "Own limits, begun from: " + shown_.title + ".";
    l.kind = LimitsOrigin::own;
    l.name = nameFrom(title_->text());
    return withoutGaps(l);
}

void LimitsDialog::edited() {
    if (filling_) return;
    keep_->setEnabled(true);
    say(tr("Changed: a title of its own keeps it as a set of yours."));
}

void LimitsDialog::keepOwn() {
    const Limits own = typed();
    if (const Outcome kept = keepOwnLimits(own); !kept) return say(told(kept.error().text));
    fill(own.name);
    say(tr("Kept as your own."));
}

void LimitsDialog::removeOwn() {
    const Outcome removed = removeOwnLimits(shown_.name);
    if (!removed) return say(told(removed.error().text));
    fill({});
}

// What has been changed is kept first, so that what judges is always a set with a name and an origin.
void LimitsDialog::use() {
    if (keep_->isEnabled()) {
        keepOwn();
        if (keep_->isEnabled()) return;  // refused; the sentence says why
    }
    accept();
}

void LimitsDialog::say(const QString& sentence) { message_->setText(sentence); }

}  // namespace trueunit
