// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>

class QMenu;

namespace trueunit {

class Session;

// What is listened to, and the choice of everything else that could be: the demonstration, a recording, a scenario
// file, every sound input. A choice that fails is said in one sentence and leaves the running input alone.
class SourcePicker : public QPushButton {
    Q_OBJECT

public:
    explicit SourcePicker(Session& session, QWidget* parent = nullptr);
    QSize sizeHint() const override { return {240, 28}; }  // whatever the input is called
    QSize minimumSizeHint() const override { return {162, 28}; }

    void playDemonstration();
    void openRecording();  // asks which
    void openScenario();
    void rescan();

signals:
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void fileChosen(const QString& path);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill();
    void fillRecent();
    void fillInputs();
    void fillChannels();
    void fillKinds();  // of signal
    void showSource();
    QString ask(const QString& title, const QString& kinds);

    Session& session_;
    QMenu* menu_;
};

}  // namespace trueunit
