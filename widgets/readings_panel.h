// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>
#include <vector>

#include "widgets/panel.h"
#include "widgets/words.h"

namespace trueunit {

class ReadingRow;
class ReasonLine;

// The numbers with their uncertainty, and in or out of limits in word and colour. A reading the data cannot carry is a
// dash; the reason is the row's tooltip and stands in small words below the rows.
class ReadingsPanel : public Panel {
    Q_OBJECT

public:
    enum Row { speed, shaft, stop, bias, end, gross, synchronous, cyclic, scatter, sampling, levels, framing, kRows };

    explicit ReadingsPanel(QWidget* parent = nullptr);

    const ReadingRow& row(Row which) const { return *rows_[which]; }
    QString reasonShown() const;                       // below the rows; empty when nothing is missing
    void setBrief(bool brief);                         // speed, bias and what is out
    void leaveOut(const std::set<std::string>& keys);  // of readings that are shown elsewhere; speed always stays

    QSize sizeHint() const override;  // what is left over belongs to the findings

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    std::vector<ReadingRow*> rows_;
    std::vector<StableDecimals> decimals_;
    void chooseRows();
    void keepOut();

    ReasonLine* reason_;
    std::set<std::string> leftOut_;
    std::set<int> kept_;  // rows shown while brief
    bool brief_ = false;
};

}  // namespace trueunit
