// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "core/machine_card.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace trueunit {

// The machine card: motor and gears, as chosen from those there are or typed in. Says at once what speed they make.
// Accepted with a card to use, or with none. Keeping one in the person's folder is done here.
class MachineCardDialog : public QDialog {
    Q_OBJECT

public:
    MachineCardDialog(const std::optional<MachineCard>& card, std::optional<double> measuredBaud,
                      std::optional<double> measuredStop, QWidget* parent = nullptr);

    const std::optional<MachineCard>& card() const { return chosen_; }

private:
    void fillCards(const std::string& name);
    std::string nearestCard() const;
    void showCard(const MachineCard& card);
    MachineCard typed() const;
    void followFields();
    void explain();
    void say(const QString& words);
    void keep();
    void use();

    std::vector<MachineCard> cards_;
    std::optional<MachineCard> chosen_;
    std::optional<double> measured_, measuredStop_;  // baud; units
    bool inUse_ = false;                             // a card was chosen before
    QComboBox* list_;
    QLineEdit* title_;
    QComboBox* code_;
    QDoubleSpinBox* baud_;
    QDoubleSpinBox* stop_;
    QComboBox* motor_;
    QDoubleSpinBox* mains_;
    QDoubleSpinBox* turns_;
    QSpinBox* driving_;
    QSpinBox* driven_;
    QDoubleSpinBox* shaft_;
    QLabel* standing_;  // whose card this is
    QLabel* words_;
};

}  // namespace trueunit
