// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>
#include <optional>

namespace trueunit {

// What one row says. Empty value: no reading.
struct RowText {
    QString value;        // "45.44"
    QString unit;         // "Bd"
    QString uncertainty;  // "±0.01", may be empty
    QString judgement;    // "in, limit 5"; empty: not judged
    QString brief;        // "in", where the row is narrow
    std::optional<bool> within;
    QString reason;     // why there is no value
    QString inWords{};  // the judgement where there is room for it all; empty: as it is

    bool operator==(const RowText&) const = default;
};

// One line of the readings: name, value, uncertainty, judgement, in columns that do not move with the digits.
class ReadingRow : public QWidget {
    Q_OBJECT

public:
    ReadingRow(const QString& name, const QString& meaning, QWidget* parent = nullptr);  // meaning: in the tooltip

    void setText(const RowText& text);
    const RowText& text() const { return text_; }
    QString said() const;  // the whole row in words

    QSize sizeHint() const override { return {340, 24}; }
    QSize minimumSizeHint() const override { return {238, 15}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;  // the tooltip in lines of readable length

private:
    QString name_, meaning_;
    RowText text_;
};

}  // namespace trueunit
