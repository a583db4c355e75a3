// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;

namespace trueunit {

// Three short steps over the demonstration, on a card that hides none of the parts they speak of, which are outlined.
// The window stays usable below; "Enough", Escape or the last "Next" ends them, for good. Deletes itself when done.
class FirstSteps : public QWidget {
    Q_OBJECT

public:
    struct Step {
        QWidget* target;
        QString words;
    };

    // spared: not hidden where it can be helped.
    FirstSteps(std::vector<Step> steps, std::vector<QWidget*> spared, QWidget* window);
    void next();
    void end();
    int number() const { return static_cast<int>(at_) + 1; }

signals:
    void ended();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();
    int tallestCard();
    QString wordsOf(std::size_t i) const;
    bool cutsBeginnings(const QRect& card) const;
    enum class Sparing { all, beginnings, targets };  // the spared widgets, too; the beginnings of the panels' lines
    std::optional<QPoint> placeForAll(Sparing sparing) const;
    QPoint placeBeside(const QRect& target) const;
    QRect targetRect(std::size_t i) const { return rectOf(steps_[i].target); }
    QRect rectOf(const QWidget* target) const;

    std::vector<Step> steps_;
    std::size_t at_ = 0;
    std::vector<QWidget*> spared_;
    QWidget* card_;
    QLabel* words_;
    QPushButton *enough_, *next_;
};

}  // namespace trueunit
