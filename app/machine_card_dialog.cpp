// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/machine_card_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <cmath>

#include "app/help_window.h"
#include "app/machine_cards.h"
#include "app/window_memory.h"
#include "core/frame/code_table.h"
#include "core/report/drive.h"
#include "core/report/machine_card_json.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

QDoubleSpinBox* numberField(double least, double most, int places, const QString& name, const QString& unit = {}) {
    auto* field = new QDoubleSpinBox;
    field->setRange(least, most);
    field->setDecimals(places);
    field->setAccessibleName(name);
    if (!unit.isEmpty()) field->setSuffix(QLatin1Char(' ') + unit);
    return field;
}

QSpinBox* teethField(const QString& name) {
    auto* field = new QSpinBox;
    field->setRange(1, 999);
    field->setAccessibleName(name);
    return field;
}

constexpr double kNearBaud = 0.1;  // of the measured speed

constexpr int kWide = 560, kHigh = 460;

// As high as the longest words so far, so that none is cut and nothing jumps.
void makeRoomFor(QLabel& label) {
    constexpr int kMargins = 24;  // of the dialog
    label.setMinimumHeight(std::max(label.minimumHeight(), label.heightForWidth(kWide - kMargins)));
}

int levelsOf(const MachineCard& card) {
    const CodeTable* code = findCode(card.code);
    return code ? code->levels : 5;
}

}  // namespace

MachineCardDialog::MachineCardDialog(const std::optional<MachineCard>& card, std::optional<double> measuredBaud,
                                     std::optional<double> measuredStop, QWidget* parent)
    : QDialog(parent),
      measured_(measuredBaud),
      measuredStop_(measuredStop),
      list_(new QComboBox),
      title_(new QLineEdit),
      code_(new QComboBox),
      baud_(numberField(20, 200, 2, tr("Speed"), tr("baud"))),
      stop_(numberField(1, 2.5, 2, tr("Stop"), tr("units"))),
      motor_(new QComboBox),
      mains_(numberField(10, 500, 1, tr("Mains"), tr("Hz"))),
      turns_(numberField(100, 20000, 0, tr("Motor"), tr("turns a minute"))),
      driving_(teethField(tr("Teeth of the gear on the motor"))),
      driven_(teethField(tr("Teeth of the gear on the transmitting shaft"))),
      shaft_(numberField(0.05, 20, 3, tr("Turns of the transmitting shaft"), tr("turns a character"))),
      standing_(new QLabel),
      words_(new QLabel) {
    setWindowTitle(tr("Machine card"));
    title_->setMaxLength(200);
    list_->setAccessibleName(tr("Card"));
    title_->setAccessibleName(tr("Title"));
    code_->setAccessibleName(tr("Code"));
    motor_->setAccessibleName(tr("Kind of motor"));
    for (const QString& name : QString::fromStdString(codeNames()).split(QStringLiteral(", ")))
        code_->addItem(name.toUpper(), name);
    motor_->addItems({tr("synchronous"), tr("governed")});
    for (QLabel* label : {standing_, words_}) label->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* gears = new QHBoxLayout;
    gears->addWidget(driving_);
    gears->addWidget(new QLabel(tr("teeth on the motor, on the transmitting shaft")));
    gears->addWidget(driven_);
    gears->addStretch(1);
    auto* form = new QFormLayout(this);
    form->addRow(standing_);
    form->addRow(tr("&Card"), list_);
    form->addRow(tr("&Title"), title_);
    form->addRow(tr("C&ode"), code_);
    form->addRow(tr("&Speed"), baud_);
    form->addRow(tr("Sto&p"), stop_);
    form->addRow(tr("&Motor"), motor_);
    form->addRow(tr("M&ains"), mains_);
    form->addRow(tr("Motor t&urns"), turns_);
    auto* gearsName = new QLabel(tr("&Gears"));
    gearsName->setBuddy(driving_);
    form->addRow(gearsName, gears);
    form->addRow(tr("S&haft"), shaft_);
    form->addRow(words_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* useIt = buttons->addButton(tr("&Use this card"), QDialogButtonBox::AcceptRole);
    auto* keepIt = buttons->addButton(tr("&Keep as my own"), QDialogButtonBox::ActionRole);
    auto* none = buttons->addButton(tr("&No card"), QDialogButtonBox::DestructiveRole);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    buttons->addButton(makeHelpButton(this, QStringLiteral("cards.md")), QDialogButtonBox::HelpRole);
    useIt->setDefault(true);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &MachineCardDialog::use);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(keepIt, &QPushButton::clicked, this, &MachineCardDialog::keep);
    connect(none, &QPushButton::clicked, this, [this] {
        chosen_.reset();
        accept();
    });
    resizeOnScreen(*this, {kWide, kHigh});
    inUse_ = card.has_value();
    fillCards(card ? card->name : nearestCard());
    if (card) showCard(*card);
    standing_->setText(inUse_
                           ? tr("This card is in use.")
                           : tr("No card is in use; this is an example: count teeth and turns of your own machine."));
    makeRoomFor(*standing_);
    followFields();
}

// From the first choice of the person on, the card is no example any more.
void MachineCardDialog::followFields() {
    const auto changed = [this] {
        standing_->setText(inUse_ ? tr("Changed: this counts once it is used.")
                                  : tr("No card is in use; this one counts once it is used."));
        explain();
    };
    connect(list_, &QComboBox::activated, this, [this, changed](int i) {
        showCard(cards_[static_cast<std::size_t>(i)]);
        changed();
    });
    for (QDoubleSpinBox* field : {baud_, stop_, mains_, turns_, shaft_})
        connect(field, &QDoubleSpinBox::valueChanged, this, changed);
    for (QSpinBox* field : {driving_, driven_}) connect(field, &QSpinBox::valueChanged, this, changed);
    for (QComboBox* box : {code_, motor_}) connect(box, &QComboBox::currentIndexChanged, this, changed);
}

void MachineCardDialog::say(const QString& words) {
    words_->setText(words);
    makeRoomFor(*words_);
}

// Without a card so far the list opens on one of the speed that is measured.
std::string MachineCardDialog::nearestCard() const {
    std::string name;
    double least = kNearBaud;
    for (const MachineCard& c : machineCards()) {
        const double off = measured_ ? std::abs(c.baud / *measured_ - 1.0) : least;
        if (off >= least) continue;
        least = off;
        name = c.name;
    }
    return name;
}

void MachineCardDialog::fillCards(const std::string& name) {
    std::vector<Error> refused;
    cards_ = machineCards(&refused);
    list_->clear();
    int current = 0;
    for (const MachineCard& c : cards_) {
        if (c.name == name) current = list_->count();
        list_->addItem(told(c.title));
    }
    list_->setCurrentIndex(current);
    if (!cards_.empty()) showCard(cards_[static_cast<std::size_t>(current)]);
    if (!refused.empty()) say(told(refused.front().text));
}

void MachineCardDialog::showCard(const MachineCard& card) {
    title_->setText(QString::fromStdString(card.title));
    code_->setCurrentIndex(code_->findData(QString::fromStdString(card.code)));
    baud_->setValue(card.baud);
    stop_->setValue(card.stopUnits);
    motor_->setCurrentIndex(card.motor == MachineCard::Motor::governed ? 1 : 0);
    mains_->setValue(card.mainsHz);
    turns_->setValue(card.motorTurns);
    driving_->setValue(card.drivingTeeth);
    driven_->setValue(card.drivenTeeth);
    shaft_->setValue(card.shaftTurns);
    explain();
}

MachineCard MachineCardDialog::typed() const {
    MachineCard card;
    card.title = title_->text().simplified().toStdString();
    card.name = cardNameFor(title_->text());
    for (const MachineCard& c : cards_)
        if (c.title == card.title) card.name = c.name;
    card.code = code_->currentData().toString().toStdString();
    card.baud = baud_->value();
    card.stopUnits = stop_->value();
    card.motor = motor_->currentIndex() == 1 ? MachineCard::Motor::governed : MachineCard::Motor::synchronous;
    card.mainsHz = mains_->value();
    card.motorTurns = turns_->value();
    card.drivingTeeth = driving_->value();
    card.drivenTeeth = driven_->value();
    card.shaftTurns = shaft_->value();
    return card;
}

void MachineCardDialog::explain() {
    const MachineCard card = typed();
    mains_->setEnabled(card.motor == MachineCard::Motor::synchronous);
    const int levels = levelsOf(card);
    const DriveExplanation e = explainDrive(card, levels, measured_.value_or(card.baud), measuredStop_);
    QString words = measured_ ? told(e.speedWords) : tr("Motor and gears make %1 baud.").arg(e.expectedBaud, 0, 'f', 2);
    if (measured_)
        for (const std::string& cause : e.causes) words += QLatin1Char(' ') + told(cause);
    for (const GearWanted& g : gearsWanted(card, levels, measured_.value_or(card.baud)))
        words += QLatin1Char('\n') + told(gearWords(g));
    say(words);
}

void MachineCardDialog::keep() {
    const MachineCard card = typed();
    const Outcome kept = keepMachineCard(card);
    if (!kept) return say(told(kept.error().text));
    fillCards(card.name);
    say(tr("Kept in %1.").arg(ownMachinesFolder()));
}

void MachineCardDialog::use() {
    const MachineCard card = typed();
    if (const auto problem = problemOf(card)) return say(told(problem->text));
    chosen_ = card;
    accept();
}

}  // namespace trueunit
