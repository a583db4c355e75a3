// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QStringList>
#include <QWidget>
#include <memory>

#include "core/report/snapshot.h"

class QHBoxLayout;
class QVBoxLayout;

namespace trueunit {

using SnapshotPtr = std::shared_ptr<const Snapshot>;

// The titled frame every instrument of the window stands in: title at the left, tools and a remark at the right, the
// body below. A panel is a function of the snapshot: show() redraws only when it is another one. Window thread.
class Panel : public QWidget {
    Q_OBJECT

public:
    enum class Tone { quiet, inOrder, out };

    explicit Panel(const QString& title, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SnapshotPtr& snapshot);  // empty pointer: no input
    const Snapshot& shown() const { return *snapshot_; }

    void setTitle(const QString& title);
    QString title() const { return title_; }
    // Shorter ones are for less room, the longest first; where none fits, nothing. Without them a long one is cut.
    void setRemark(const QString& remark, Tone tone = Tone::quiet, const QStringList& shorter = {});
    QString remark() const { return remark_; }
    void setFramed(bool framed);  // false: no border, for a view with nothing else

protected:
    virtual void refresh(const Snapshot& snapshot) = 0;  // called for every new snapshot
    virtual void paintBody(QPainter& painter, const QRectF& body);
    QRectF body() const;                        // inside the margins, below the title
    QVBoxLayout* bodyLayout();                  // for panels made of other widgets; made on first use
    void addTool(QWidget* tool);                // in the title row, left of the remark
    void describe(const QString& description);  // to assistive tools; only when it changes, and without haste
    const SnapshotPtr& snapshotPtr() const { return snapshot_; }
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;  // the whole remark as a tooltip, where the row has no room for it

private:
    void paintHeader(QPainter& painter) const;
    QRectF remarkRoom() const;
    QString fittingRemark() const;
    double toolsLeft() const;
    void sayDescription();

    QString title_;
    QString remark_;
    QStringList shorter_;
    Tone tone_ = Tone::quiet;
    bool framed_ = true;
    QString description_;
    QElapsedTimer lastSaid_;
    bool pending_ = false;  // a description waits to be said
    SnapshotPtr snapshot_;
    QHBoxLayout* tools_;
    QVBoxLayout* outer_;
    QVBoxLayout* body_ = nullptr;
};

}  // namespace trueunit
