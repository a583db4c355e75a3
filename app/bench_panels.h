// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "widgets/panel.h"

class QBoxLayout;
class QScrollArea;
class QVBoxLayout;

namespace trueunit {

class BiasGauge;
class TrailView;
class CharacterGrid;
class ComparisonPanel;
class DisplacementPlot;
class EccentricPanel;
class FindingsPanel;
class MarginView;
class ReadingsPanel;
class TapeView;

// Lays out the instruments: at the left the character on its grid, displacement, trail and tape, at the right gauge,
// readings and findings. Where room is short the columns scroll, the gauge never does. All show one snapshot.
class BenchPanels : public QWidget {
    Q_OBJECT

public:
    explicit BenchPanels(QWidget* parent = nullptr);

    void show(const SnapshotPtr& snapshot);
    using QWidget::show;
    const SnapshotPtr& shown() const { return shown_; }

    void setSimulated(bool simulated);  // an eccentric to turn, and findings that say so
    void setGaugeAlone(bool alone);
    bool gaugeAlone() const { return gaugeAlone_; }
    void setFrozen(bool frozen);      // what is shown is not of now
    void setMarginShown(bool shown);  // in the place of the displacement
    bool marginShown() const;
    void setBefore(const SnapshotPtr& before);  // what the panels hold the present against; empty: nothing

    CharacterGrid& grid() { return *grid_; }
    BiasGauge& gauge() { return *gauge_; }
    EccentricPanel& eccentric() { return *eccentric_; }
    TrailView& trail() { return *trail_; }
    DisplacementPlot& displacement() { return *displacement_; }
    TapeView& tape() { return *tape_; }
    FindingsPanel& findings() { return *findings_; }
    MarginView& margin() { return *margin_; }
    ComparisonPanel& comparison() { return *comparison_; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeLeft();
    QWidget* makeRight();
    void placeFindings();
    void leaveOutCompared();
    void spaceColumn();
    void setFindingsTall(bool tall);             // in the place of most of the readings
    void pickOut(const EvidencePlaces& places);  // what the chosen finding rests on, on every panel that shows it

    CharacterGrid* grid_;
    BiasGauge* gauge_;
    EccentricPanel* eccentric_;
    TapeView* tape_;
    TrailView* trail_ = nullptr;
    MarginView* margin_ = nullptr;
    DisplacementPlot* displacement_ = nullptr;
    ReadingsPanel* readings_ = nullptr;
    ComparisonPanel* comparison_ = nullptr;
    FindingsPanel* findings_ = nullptr;
    std::vector<Panel*> panels_;
    QBoxLayout* plots_ = nullptr;
    QBoxLayout* feet_ = nullptr;
    QVBoxLayout *rightList_ = nullptr, *rightAll_ = nullptr;
    bool findingsApart_ = false;  // below what scrolls
    bool findingsTall_ = false;
    QScrollArea* left_ = nullptr;
    QScrollArea* right_ = nullptr;
    QWidget* rightColumn_ = nullptr;
    SnapshotPtr shown_;
    bool gaugeAlone_ = false;
};

}  // namespace trueunit
