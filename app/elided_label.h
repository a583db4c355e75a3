// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace trueunit {

// One line of text that never asks for more room: what does not fit is elided and stands in the tool tip, so the
// layout keeps still while the words change.
class ElidedLabel : public QLabel {
    Q_OBJECT

public:
    explicit ElidedLabel(QWidget* parent = nullptr);
    void say(const QString& text);
    QString said() const { return text_; }
    void setElide(Qt::TextElideMode where);  // at the right unless told otherwise
    QSize minimumSizeHint() const override;
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString fitting(int width) const;

    QString text_;
    Qt::TextElideMode elide_ = Qt::ElideRight;
};

}  // namespace trueunit
