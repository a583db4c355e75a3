// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/source_picker.h"

#include <QActionGroup>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>

#include "app/ask_file.h"
#include "app/session.h"
#include "app/window_memory.h"
#include "widgets/theme.h"
#include "widgets/told.h"

namespace trueunit {

SourcePicker::SourcePicker(Session& session, QWidget* parent)
    : QPushButton(parent), session_(session), menu_(new QMenu(this)) {
    // A button that stands among fields.
    setStyleSheet(QStringLiteral("QPushButton { text-align: left; border-color: %1; }"
                                 "QPushButton:hover { border-color: %2; } QPushButton:focus { border-color: %3; }")
                      .arg(theme::kFieldEdge.name(), theme::kSecondary.name(), theme::kBlue.name()));
    setMenu(menu_);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setMaximumWidth(300);
    connect(menu_, &QMenu::aboutToShow, this, &SourcePicker::fill);
    connect(&session_, &Session::sourceChanged, this, &SourcePicker::showSource);
    showSource();
}

void SourcePicker::fill() {
    menu_->clear();
    const SourceKind kind = session_.sourceKind();
    menu_->addAction(tr("Demonstration"), this, &SourcePicker::playDemonstration);
    menu_->addAction(tr("Open a recording\u2026"), this, &SourcePicker::openRecording);
    menu_->addAction(tr("Open a scenario file\u2026"), this, &SourcePicker::openScenario);
    fillRecent();
    menu_->addSection(tr("Sound inputs"));
    fillInputs();
    menu_->addAction(tr("Look for inputs again"), this, &SourcePicker::rescan);
    if (kind == SourceKind::soundInput && session_.channels() > 1) fillChannels();
    fillKinds();
}

void SourcePicker::fillRecent() {
    const QStringList files = recentFiles();
    if (files.isEmpty()) return;
    menu_->addSection(tr("Opened lately"));
    for (const QString& path : files) {
        QAction* action = menu_->addAction(QFileInfo(path).fileName().replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setToolTip(path);
        connect(action, &QAction::triggered, this, [this, path] { emit fileChosen(path); });
    }
}

void SourcePicker::fillInputs() {
    const Result<DeviceList> inputs = session_.soundInputs();
    if (!inputs || inputs->empty()) {
        const QString why = inputs ? tr("no sound input found") : told(inputs.error().text);
        menu_->addAction(why)->setEnabled(false);
        return;
    }
    const auto running = session_.soundInput();
    for (const SoundDevice& device : *inputs) {
        QString title = QString::fromStdString(device.title());
        if (device.defaultInput) title += tr(", the system's choice");
        QAction* action = menu_->addAction(title.replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setCheckable(true);
        action->setChecked(running && running->sameAs(device));
        connect(action, &QAction::triggered, this, [this, device] {
            if (const Outcome outcome = session_.listen(device); !outcome) emit refused(told(outcome.error().text));
        });
    }
}

void SourcePicker::fillChannels() {
    menu_->addSection(tr("Listen to the side"));
    for (int channel = 0; channel < 2; ++channel) {
        QAction* action = menu_->addAction(channel == 0 ? tr("left") : tr("right"));
        action->setCheckable(true);
        action->setChecked(session_.channel() == channel);
        connect(action, &QAction::triggered, this, [this, channel] { session_.setChannel(channel); });
    }
}

void SourcePicker::fillKinds() {
    menu_->addSeparator();
    QMenu* kinds = menu_->addMenu(tr("Take the signal as"));
    auto* one = new QActionGroup(kinds);
    const std::pair<InputKind, QString> kKinds[] = {{InputKind::automatic, tr("what it is found to be")},
                                                    {InputKind::loop, tr("loop current")},
                                                    {InputKind::tone, tr("a tone that contacts interrupt")},
                                                    {InputKind::twoTone, tr("two tones")}};
    for (const auto& [kind, words] : kKinds) {
        QAction* action = one->addAction(kinds->addAction(words));
        action->setCheckable(true);
        action->setChecked(session_.options().input == kind);
        connect(action, &QAction::triggered, this, [this, kind = kind] {
            Options options = session_.options();
            options.input = kind;
            if (const Outcome outcome = session_.setOptions(options); !outcome)
                emit refused(told(outcome.error().text));
        });
    }
}

void SourcePicker::showSource() {
    const QString words =
        session_.sourceKind() == SourceKind::none ? tr("choose an input") : told(session_.sourceDescription());
    const int room = std::max(60, width() - 40);
    QString shown = words;  // the rate behind it goes first where there is no room
    if (fontMetrics().horizontalAdvance(shown) > room) shown = shown.section(QStringLiteral(" ("), 0, 0);
    shown = fontMetrics().elidedText(shown, Qt::ElideRight, room);
    setText(shown.replace(QLatin1Char('&'), QStringLiteral("&&")));
    setToolTip(words + tr("\nWhat to listen to (Ctrl+I)"));
    setAccessibleName(tr("Input: ") + words);
}

void SourcePicker::resizeEvent(QResizeEvent* event) {
    QPushButton::resizeEvent(event);
    showSource();
}

QString SourcePicker::ask(const QString& title, const QString& kinds) {
    return askToOpen(window(), title, QStandardPaths::writableLocation(QStandardPaths::HomeLocation), kinds);
}

void SourcePicker::playDemonstration() {
    if (const Outcome outcome = session_.playDemonstration(); !outcome) emit refused(told(outcome.error().text));
}

void SourcePicker::openRecording() {
    const QString path =
        ask(tr("Open a recording"), tr("Recordings (*.wav *.flac *.aiff *.aif *.ogg *.au *.caf);;All files (*)"));
    if (!path.isEmpty()) emit fileChosen(path);
}

void SourcePicker::openScenario() {
    const QString path = ask(tr("Open a scenario file"), tr("Scenarios (*.json);;All files (*)"));
    if (!path.isEmpty()) emit fileChosen(path);
}

void SourcePicker::rescan() {
    bool stillGone = false;  // which has been said, and matters more than how many there are
    const auto hears = connect(&session_, &Session::sourceLost, this, [&stillGone] { stillGone = true; });
    const Result<DeviceList> inputs = session_.rescanSoundInputs();
    disconnect(hears);
    if (!inputs)
        emit refused(told(inputs.error().text));
    else if (!stillGone)
        emit said(inputs->empty() ? tr("No sound input was found; connect one and look again.")
                                  : tr("%n sound inputs were found.", nullptr, int(inputs->size())));
}

}  // namespace trueunit
