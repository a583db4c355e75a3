// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QTimer;

namespace trueunit {

class ElidedLabel;

// The line under the controls: at the left one sentence about what happened and what to do, at the right what goes
// on while the display is frozen. Always there, so nothing moves when it speaks.
class MessageLine : public QWidget {
    Q_OBJECT

public:
    static constexpr int kSide = 16;  // pixels at its sides, as panels below it have
    explicit MessageLine(QWidget* parent = nullptr, int side = kSide);

    void say(const QString& sentence);                            // plain news, gone after a while
    void warn(const QString& sentence);                           // something was refused or lost; stays until cleared
    void sayWritten(const QStringList& files);                    // a report was written
    void sayFiled(const QString& sentence, const QString& file);  // its folder opens on a click
    void dropNews();                                              // what was said, not a warning
    void clear();                                                 // back to the state of the signal
    void showState(const QString& sentence);  // what the signal is doing; seen while there is no news
    void showFrozen(const QString& words);    // empty: not frozen

    void addTool(QWidget* tool);  // at the right of what is said, left of what is frozen

    bool warns() const { return !lead_.isEmpty(); }
    QString sentence() const { return sentence_; }  // the news, without what leads it
    QString state() const { return state_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    static QString writtenWords(const QStringList& files);  // the sentence that names them all
    void speak(const QString& lead, const QString& sentence);
    void refresh();

    const int side_;
    QHBoxLayout* row_;
    ElidedLabel* words_;
    QLabel* folder_;
    ElidedLabel* frozen_;
    QTimer* forget_;
    QString sentence_, lead_, state_;
};

}  // namespace trueunit
