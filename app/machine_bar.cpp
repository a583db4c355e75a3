// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/machine_bar.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QStyleOption>
#include <optional>

#include "app/captioned.h"
#include "core/frame/code_table.h"
#include "widgets/theme.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

constexpr std::array kStops = {1.0, 1.27, 1.42, 1.5, 1.96, 2.0};  // stop lengths met (NAVEDTRA 14189)

QString automatic() { return MachineBar::tr("automatic"); }
QString spoken(double value) { return QLocale().toString(value, 'g', QLocale::FloatingPointShortest); }
QString valueText(const std::optional<double>& value) { return value ? spoken(*value) : automatic(); }

// "automatic", an empty field, or a number with point or comma and perhaps its unit behind it.
bool readValue(const QString& text, std::optional<double>& value) {
    const QString words = text.trimmed().section(QLatin1Char(' '), 0, 0).replace(QLatin1Char(','), QLatin1Char('.'));
    value.reset();
    if (words.isEmpty() || automatic().startsWith(words, Qt::CaseInsensitive)) return true;
    bool isNumber = false;
    const double number = words.toDouble(&isNumber);
    if (isNumber) value = number;
    return isNumber;
}

QString nameTip() { return MachineBar::tr("What the museum or owner calls it; stands on the report (Ctrl+M)"); }

// A name too long for its field ends in a sign that it goes on, while nobody writes in it.
class NameField : public QLineEdit {
protected:
    void paintEvent(QPaintEvent* event) override {
        QStyleOptionFrame option;
        initStyleOption(&option);
        constexpr int kBesideText = 2;  // as Qt keeps free within a field
        const QRect room = style()
                               ->subElementRect(QStyle::SE_LineEditContents, &option, this)
                               .adjusted(kBesideText, 0, -kBesideText, 0);
        const QString fitting = fontMetrics().elidedText(text(), Qt::ElideRight, room.width());
        if (hasFocus() || fitting == text()) return QLineEdit::paintEvent(event);
        QPainter painter(this);
        style()->drawPrimitive(QStyle::PE_PanelLineEdit, &option, &painter, this);
        painter.setPen(palette().color(QPalette::Text));
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, fitting);
    }
};

QComboBox* choice(bool typed, int narrowest, int widest) {
    auto* box = new QComboBox;
    box->setEditable(typed);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    box->setMinimumWidth(narrowest);
    box->setMaximumWidth(widest);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(3);
    return box;
}

}  // namespace

MachineBar::MachineBar(QWidget* parent)
    : QWidget(parent),
      name_(new NameField),
      code_(choice(false, 84, 110)),
      speed_(choice(true, 88, 100)),
      stop_(choice(true, 88, 100)),
      window_(choice(false, 60, 84)) {
    name_->setMinimumWidth(90);
    name_->setMaximumWidth(180);
    name_->setPlaceholderText(tr("name"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(captioned(tr("Machine"), name_, nameTip()), 2);
    row->addWidget(captioned(tr("Code"), code_, tr("What the combinations stand for (Ctrl+E)")), 1);
    row->addWidget(captioned(tr("Speed, baud"), speed_, tr("Nominal speed; type any from 20 to 200 (Ctrl+B)")), 1);
    row->addWidget(
        captioned(tr("Stop, units"), stop_, tr("Nominal length of the stop; type any from 1 to 2.5 (Ctrl+T)")), 1);
    row->addWidget(captioned(tr("Window"), window_, tr("Readings cover the last so many characters (W)")), 1);
    speed_->lineEdit()->setAccessibleName(tr("Speed, baud"));
    stop_->lineEdit()->setAccessibleName(tr("Stop, units"));
    fillChoices();
    const std::pair<QWidget*, const char*> kPages[] = {
        {name_, "cards.md"}, {code_, "tape.md"}, {speed_, "speed.md"}, {stop_, "stop.md"}, {window_, "adjusting.md"}};
    for (const auto& [field, page] : kPages) field->setProperty(theme::kHelpPage, QLatin1String(page));
    show(Options{});
    connect(name_, &QLineEdit::editingFinished, this, [this] { emit renamed(machine()); });
    connect(name_, &QLineEdit::returnPressed, name_, &QWidget::clearFocus);
    for (QComboBox* box : {code_, speed_, stop_, window_}) {
        connect(box, &QComboBox::activated, this, &MachineBar::readFields);
        if (!box->isEditable()) continue;
        connect(box->lineEdit(), &QLineEdit::editingFinished, this, &MachineBar::readFields);
        connect(box->lineEdit(), &QLineEdit::returnPressed, box, &QWidget::clearFocus);  // the space bar freezes again
    }
}

void MachineBar::fillChoices() {
    const QString names = QString::fromStdString(codeNames());
    for (const QString& name : names.split(QStringLiteral(", ")))
        if (const CodeTable* code = findCode(name.toStdString())) {
            code_->addItem(name.toUpper(), name);
            code_->setItemData(code_->count() - 1, told(std::string(code->title)), Qt::ToolTipRole);
        }
    speed_->addItem(automatic());
    for (const StandardSpeed& s : kStandardSpeeds) speed_->addItem(spoken(s.baud));
    stop_->addItem(automatic());
    for (const double s : kStops) stop_->addItem(spoken(s));
    for (const int n : kOfferedWindows) window_->addItem(QString::number(n), n);
    window_->addItem(tr("all"), 0);
}

void MachineBar::show(const Options& options) {
    shown_ = options;
    code_->setCurrentIndex(std::max(0, code_->findData(QString::fromStdString(options.code))));
    speed_->setEditText(valueText(options.baud));
    stop_->setEditText(valueText(options.stopUnits));
    int place = window_->findData(options.windowCharacters);
    if (place < 0) {  // a number given on the command line
        place = window_->count();
        window_->addItem(QString::number(options.windowCharacters), options.windowCharacters);
    }
    window_->setCurrentIndex(place);
}

void MachineBar::readFields() {
    Options options = shown_;
    options.code = code_->currentData().toString().toStdString();
    options.windowCharacters = window_->currentData().toInt();
    if (!readValue(speed_->currentText(), options.baud))
        emit refused(tr("The speed must be a number of baud, or automatic."));
    else if (!readValue(stop_->currentText(), options.stopUnits))
        emit refused(tr("The stop must be a number of units, or automatic."));
    else if (options.code != shown_.code || options.baud != shown_.baud || options.stopUnits != shown_.stopUnits ||
             options.windowCharacters != shown_.windowCharacters) {
        emit wanted(options);
        return;
    }
    show(shown_);
}

void MachineBar::setMachine(const QString& name) {
    name_->setText(name);
    name_->setCursorPosition(0);  // its beginning is seen, and all of it in the tip
    name_->setToolTip(name.isEmpty() ? nameTip() : name + QLatin1Char('\n') + nameTip());
}
QString MachineBar::machine() const { return name_->text().trimmed(); }

void MachineBar::focusMachine() { name_->setFocus(Qt::ShortcutFocusReason), name_->selectAll(); }
void MachineBar::focusSpeed() { speed_->setFocus(Qt::ShortcutFocusReason), speed_->lineEdit()->selectAll(); }
void MachineBar::focusStop() { stop_->setFocus(Qt::ShortcutFocusReason), stop_->lineEdit()->selectAll(); }
void MachineBar::focusCode() { code_->setFocus(Qt::ShortcutFocusReason); }

void MachineBar::stepWindow(int steps) {
    const int count = window_->count();
    window_->setCurrentIndex((window_->currentIndex() + steps + count) % count);
    readFields();
}

}  // namespace trueunit
