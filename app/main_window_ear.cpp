// SPDX-License-Identifier: GPL-3.0-or-later
// The window and its tones: for work by ear, and for contacts to interrupt.
#include <QAction>
#include <QMenu>

#include "app/contact_tone.h"
#include "app/ear.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "widgets/told.h"

namespace trueunit {

namespace {
constexpr int kVolumeStep = 5;  // percent of full scale
}

void MainWindow::makeEarActions() {
    group_ = tr("By ear");
    hear_ = act(tr("By ear"), tr("Hear the bias as beats, or be silent"), {Qt::Key_T}, [this] { ear_->toggle(); });
    hear_->setCheckable(true);
    QAction* output = act(tr("Tone output"), tr("Choose where the tone plays"), {Qt::SHIFT | Qt::Key_T},
                          [this] { chooseEarOutput(); });
    act(tr("Tone louder"), tr("The tone louder"), {Qt::CTRL | Qt::Key_Up}, [this] { ear_->changeVolume(kVolumeStep); });
    act(tr("Tone softer"), tr("The tone softer"), {Qt::CTRL | Qt::Key_Down},
        [this] { ear_->changeVolume(-kVolumeStep); });
    act(tr("Mute"), tr("Mute the tone, or no longer"), {Qt::Key_U}, [this] { ear_->toggleMute(); });
    more_->menu()->addSeparator();
    more_->menu()->addActions({hear_, output, makeContactTone()});
    connect(ear_, &Ear::changed, this, [this] { hear_->setChecked(ear_->on()); });
    connect(ear_, &Ear::said, messages_, &MessageLine::say);
    connect(ear_, &Ear::warned, messages_, &MessageLine::warn);
}

QAction* MainWindow::makeContactTone() {
    group_ = tr("Input and machine");
    QAction* action = act(tr("Tone for contacts"), tr("Play the tone for bare contacts, or stop it"),
                          {Qt::CTRL | Qt::SHIFT | Qt::Key_C}, [this] { contactTone_->toggle(); });
    action->setCheckable(true);
    connect(contactTone_, &ContactTone::changed, action, [=, this] { action->setChecked(contactTone_->on()); });
    connect(contactTone_, &ContactTone::said, messages_, &MessageLine::say);
    connect(contactTone_, &ContactTone::warned, messages_, &MessageLine::warn);
    return action;
}

void MainWindow::chooseEarOutput() {
    const Result<DeviceList> outputs = TonePlayer::outputs();
    if (!outputs) return messages_->warn(told(outputs.error().text));
    if (outputs->empty()) return messages_->warn(tr("No sound output was found."));
    QMenu menu(this);
    menu.addSection(tr("The tone plays on"));
    for (const SoundDevice& device : *outputs) {
        QString title = QString::fromStdString(device.title());
        if (device.defaultOutput) title += tr(", the system's choice");
        QAction* action = menu.addAction(title.replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setCheckable(true);
        action->setChecked(ear_->plays(device));
        connect(action, &QAction::triggered, this, [this, device] { ear_->choose(device); });
    }
    menu.exec(mapToGlobal(QPoint(width() / 3, height() / 4)));
}

}  // namespace trueunit
