// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace trueunit {

// A sentence in small words, wrapped over two lines at most.
class ReasonLine : public QWidget {
    Q_OBJECT

public:
    explicit ReasonLine(QWidget* parent = nullptr);

    void setText(const QString& text);
    QString text() const { return text_; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {100, sizeHint().height()}; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString text_;
};

}  // namespace trueunit
