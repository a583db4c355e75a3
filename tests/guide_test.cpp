// SPDX-License-Identifier: GPL-3.0-or-later
// The guide to connecting a loop: each number in it, by the laws of its circuits.
#include <gtest/gtest.h>

#include <QFile>
#include <QString>
#include <cmath>
#include <utility>

#include "app/help_window.h"

namespace trueunit {
namespace {

QString guideText() {
    const HelpWindow keepsThePages;  // without it the linker leaves them out
    QString text;
    for (const char* page : {"connect", "battery", "tone", "quench", "optocoupler", "transformer"}) {
        QFile file(QString(":/help/%1.md").arg(page));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        text += QString::fromUtf8(file.readAll());
    }
    return text.simplified();  // wherever its lines break
}

// The test on a battery, by Kirchhoff: 12 V less what the LED takes from R1 beside R2, over that and the resistor.
TEST(Guide, TheDryRunGivesTheCurrentsThatItSays) {
    const QString guide = guideText();
    constexpr double kLamp = 1.2, kSeries = 820.0, kVolts = 12.0;
    for (const auto& [shunt, resistor] : {std::pair{680.0, 220.0}, std::pair{150.0, 68.0}}) {
        const double beside = 1.0 / (1.0 / shunt + 1.0 / kSeries), left = kVolts - kLamp / kSeries * beside;
        EXPECT_TRUE(guide.contains(QString("%1 V / (%2 + %3) \u03a9 = %4 mA")
                                       .arg(left, 0, 'f', 2)
                                       .arg(resistor, 0, 'f', 0)
                                       .arg(beside, 0, 'f', 0)
                                       .arg(1e3 * left / (resistor + beside), 0, 'f', 0)))
            << shunt;
    }
}

// The values of the optocoupler stage, by Kirchhoff: V = (I + U/R2) / (1/R1 + 1/R2), U across the lamp.
TEST(Guide, TheValuesOfTheStageAreWhatTheCircuitGives) {
    const QString guide = guideText();
    constexpr double kLamp = 1.2, kSeries = 820.0;
    const auto volts = [&](double amps, double shunt) {
        return (amps + kLamp / kSeries) / (1.0 / shunt + 1.0 / kSeries);
    };
    const double v20 = volts(0.020, 680.0), v60 = volts(0.060, 150.0);
    EXPECT_TRUE(guide.contains(QString("| %1 V | %2 V |").arg(v20, 0, 'f', 2).arg(v60, 0, 'f', 2)));
    EXPECT_TRUE(guide.contains(QString("| %1 mA | %2 mA |")
                                   .arg(1e3 * (v20 - kLamp) / kSeries, 0, 'f', 1)
                                   .arg(1e3 * (v60 - kLamp) / kSeries, 0, 'f', 1)));
    EXPECT_TRUE(guide.contains(
        QString("| %1 mW | %2 mW |").arg(1e3 * v20 * v20 / 680.0, 0, 'f', 0).arg(1e3 * v60 * v60 / 150.0, 0, 'f', 0)));
}

// What the barrier must stand: supply and kick, I sqrt(L/C) (energy of the magnets into the quench), and half as much
// again.
TEST(Guide, TheBarrierStandsTheSupplyAndTheKick) {
    const QString guide = guideText();
    constexpr double kHenry = 4.0, kFarad = 0.47e-6;
    for (const double supply : {120.0, 260.0})
        for (const double amps : {0.020, 0.060}) {
            const double kick = std::round(amps * std::sqrt(kHenry / kFarad)),
                         stands = std::ceil(1.5 * (supply + kick));
            EXPECT_TRUE(guide.contains(
                QString("1.5 x (%1 + %2) = %3 V |").arg(supply, 0, 'f', 0).arg(kick, 0, 'f', 0).arg(stands, 0, 'f', 0)))
                << supply << " " << amps;
            EXPECT_LT(stands, 850.0);
        }
    EXPECT_LT(1.5 * (260.0 + 0.060 * std::sqrt(12.0 / kFarad)), 850.0) << "magnets up to 12 H";
    EXPECT_GT(1.5 * (260.0 + 0.060 * std::sqrt(kHenry / 0.1e-6)), 850.0)
        << "a small quench needs more, and the guide says so";
}

// The quench by energy, C = L (I / kick)^2, for the 12 H of the barrier; and by Ohm: what its resistor carries.
TEST(Guide, TheQuenchIsWhatMagnetsAndBarrierAskFor) {
    const QString guide = guideText();
    constexpr double kMost = 12.0, kFarad = 0.47e-6, kAmps = 0.060;
    const double room = std::round(850.0 / 1.5 - 260.0), leastFarad = kMost * std::pow(kAmps / room, 2.0),
                 kick = std::round(kAmps * std::sqrt(kMost / kFarad));
    const auto heat = [](double volts) { return (kFarad * volts * volts + 0.5 * kMost * kAmps * kAmps) * 23.0; };
    for (const QString& said : {QString("= %1 V for the kick").arg(room, 0, 'f', 0),
                                QString("12 x (0.06/307)² = %1 µF").arg(1e6 * leastFarad, 0, 'f', 2),
                                QString("kick by %1 V, %2 and %3 V")
                                    .arg(kick, 0, 'f', 0)
                                    .arg(std::ceil(1.5 * (120.0 + kick)), 0, 'f', 0)
                                    .arg(std::ceil(1.5 * (260.0 + kick)), 0, 'f', 0),
                                QString("| %1 W | %2 W |").arg(heat(120.0), 0, 'f', 2).arg(heat(260.0), 0, 'f', 2),
                                QString("(2 kΩ + 470 Ω) = %1 mA").arg(1e3 * 120.0 / 2470.0, 0, 'f', 0),
                                QString("(4.3 kΩ + 1 kΩ) = %1 mA").arg(1e3 * 260.0 / 5300.0, 0, 'f', 0)})
        EXPECT_TRUE(guide.contains(said)) << said.toStdString();
    EXPECT_LT(guide.indexOf("[battery and series resistor](battery.md)"),
              guide.indexOf("[optocoupler stage](optocoupler.md)"))
        << "the safest first";
}

struct Loop {
    double amps, volts, quenchOhms, henry = 4.0, farad = 0.47e-6;
    double ohms() const { return volts / amps; }
};

// Seconds from the closing of the contact until half the current flows through the magnets.
double frontLate(const Loop& loop) { return std::log(2.0) * loop.henry / loop.ohms(); }

// Seconds from its opening until half is left: supply, loop, magnets, quench in series, step by step.
double endLate(const Loop& loop) {
    constexpr double kStep = 1e-7;
    double amps = loop.amps, charged = 0.0, seconds = 0.0;
    for (; amps > loop.amps / 2.0; seconds += kStep) {
        amps += kStep * (loop.volts - (loop.ohms() + loop.quenchOhms) * amps - charged) / loop.henry;
        charged += kStep * amps / loop.farad;
    }
    return seconds;
}

double biasOf(const Loop& loop) { return 100.0 * (endLate(loop) - frontLate(loop)) / 0.022; }

TEST(Guide, TheQuenchDelaysTheEdgesAsItsCircuitDoes) {
    const QString guide = guideText();
    for (const Loop& loop : {Loop{0.060, 120.0, 470.0}, Loop{0.060, 260.0, 1000.0}, Loop{0.020, 120.0, 470.0},
                             Loop{0.020, 260.0, 1000.0}}) {
        const QString row = QString("| %1 mA from %2 V | %3 ms | %4 ms | +%5 % |")
                                .arg(1e3 * loop.amps, 0, 'f', 0)
                                .arg(loop.volts, 0, 'f', 0)
                                .arg(1e3 * frontLate(loop), 0, 'f', 2)
                                .arg(1e3 * endLate(loop), 0, 'f', 2)
                                .arg(biasOf(loop), 0, 'f', 1);
        EXPECT_TRUE(guide.contains(row)) << row.toStdString();
    }
    EXPECT_NEAR(biasOf({0.060, 120.0, 470.0, 4.0, 1e-6}), 4.0, 0.05);
    const Loop large{0.060, 120.0, 470.0, 12.0};
    EXPECT_NEAR(1e3 * frontLate(large), 4.16, 0.005);
    EXPECT_NEAR(1e3 * endLate(large), 2.52, 0.005);
    EXPECT_NEAR(biasOf(large), -7.4, 0.05);
}

// A battery, the series and the reading resistor (none: open), and over it the clamp: two rectifiers of the softest
// kind of the published diode law, I = Is exp(U / (2 kT/q)), 20 mA at 0.70 V.
struct Battery {
    double volts, series, reading;
};

double clampAmps(double across) { return 0.020 * std::exp((across / 2.0 - 0.70) / (2.0 * 0.02585)); }

double acrossReading(const Battery& battery) {
    double low = 0.0, high = battery.volts;
    for (int halvings = 0; halvings < 60; ++halvings) {
        const double across = (low + high) / 2.0;
        const bool moreComes = (battery.volts - across) / battery.series > across / battery.reading + clampAmps(across);
        (moreComes ? low : high) = across;
    }
    return low;
}

// The dry run's key closes a fresh or a tired battery over the reading resistor of either column; resistors 5 % off
// either way, a fuse of 8 ohms (from memory) or none to speak of.
TEST(Guide, TheBatteryShowsWhatItsDryRunSays) {
    double least = 9.0, most = 0.0;
    for (const double volts : {12.0, 13.0})
        for (const auto& [series, reading] : {std::pair{560.0, 47.0}, std::pair{180.0, 15.0}}) {
            const double low = acrossReading({volts, 1.05 * series + 8.0, 0.95 * reading});
            const double high = acrossReading({volts, 0.95 * series, 1.05 * reading});
            EXPECT_LT(clampAmps(acrossReading({volts, series, reading})), 0.025 * volts / (series + reading))
                << "what the clamp takes of the mark";
            least = std::min(least, low);
            most = std::max(most, high);
        }
    EXPECT_TRUE(guideText().contains(QString("%1 to %2 V across the reading resistor")
                                         .arg(std::floor(10.0 * least) / 10.0, 0, 'f', 1)
                                         .arg(std::ceil(10.0 * most) / 10.0, 0, 'f', 1)))
        << least << " " << most;
}

TEST(Guide, AMeterEmptiesTheQuenchInTheTimeThatItSays) {
    constexpr double kMeterOhms = 10e6, kFarads = 1e-6;
    const double seconds = 5.0 * kMeterOhms * kFarads;
    EXPECT_LT(260.0 * std::exp(-seconds / (kMeterOhms * kFarads)), 2.0);  // volts left
    EXPECT_TRUE(guideText().contains(QString("1 µF = %1 s").arg(seconds)));
}

TEST(Guide, TheClampHoldsWhatAnOpenReadingResistorLetsThrough) {
    const QString guide = guideText();
    constexpr double kOpen = 1e12;
    for (const double volts : {12.0, 13.0})
        for (const double series : {560.0, 180.0}) {
            const double held = acrossReading({volts, series, kOpen});
            EXPECT_GT(held, 1.3) << volts << " " << series;
            EXPECT_LT(held, 1.6) << volts << " " << series;
        }
    const double held20 = acrossReading({12.0, 560.0, kOpen}), held60 = acrossReading({12.0, 180.0, kOpen});
    for (const QString& said :
         {QString("(12 - %1)/560 = %2 mA").arg(held20, 0, 'f', 1).arg(1e3 * clampAmps(held20), 0, 'f', 0),
          QString("(12 - %1)/180 = %2 mA").arg(held60, 0, 'f', 1).arg(1e3 * clampAmps(held60), 0, 'f', 0),
          QString("10^(-(0.70 - 0.47)/0.12) = %1 mA").arg(20.0 * std::pow(10.0, -0.23 / 0.12), 0, 'f', 2),
          QString("(12 - 2)/(8 x 0.15) = %1 A").arg(10.0 / 1.2, 0, 'f', 0),
          QString("260 V / 0.5 \u03a9 = %1 A").arg(260.0 / 0.5, 0, 'f', 0)})
        EXPECT_TRUE(guide.contains(said)) << said.toStdString();
    EXPECT_LT(clampAmps(0.94), 0.24e-3) << "0.12 V for a tenth is more than the law's softest, 2 kT/q ln 10";
}

// The transformer stage on a battery: the resistor and two of 22 Ohm side by side, then the clamp alone.
TEST(Guide, TheTransformerShowsWhatItsDryRunSays) {
    const QString guide = guideText();
    constexpr double kStage = 11.0, kOpen = 1e12;
    QStringList across;
    for (const double resistor : {560.0, 180.0}) {
        const double amps = 12.0 / (resistor + kStage);
        across += QString::number(amps * kStage, 'f', 2);
        EXPECT_TRUE(
            guide.contains(QString("12 V / (%1 + 11) \u03a9 = %2 mA").arg(resistor).arg(1e3 * amps, 0, 'f', 0)));
        EXPECT_LT(amps * amps * resistor, resistor == 560.0 ? 0.5 : 1.0) << "half of what it is rated for";
        EXPECT_NEAR(acrossReading({12.0, resistor, kStage}), amps * kStage, 0.005) << "the clamp takes nothing of it";
        EXPECT_GT(acrossReading({12.0, resistor, kOpen}), 1.3);
        EXPECT_LT(acrossReading({12.0, resistor, kOpen}), 1.6);
    }
    EXPECT_TRUE(guide.contains(QString("shows %1 V").arg(across.join(" or ")))) << across.join(' ').toStdString();
}

// What is drawn is what the table says.
TEST(Guide, TheDrawingOfTheBatteryHasTheResistorsOfBothCurrents) {
    QFile file(":/help/battery.svg");
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString drawing = QString::fromUtf8(file.readAll()), guide = guideText();
    for (const char* value : {"560 \u03a9, 1 W", "180 \u03a9, 2 W", "47 \u03a9", "15 \u03a9"}) {
        EXPECT_TRUE(drawing.contains(QString::fromUtf8(value))) << value;
        EXPECT_TRUE(guide.contains(QString::fromUtf8(value))) << value;
    }
}

// With R1 open the suppressor holds 16 V; what it and R2 then turn into heat, and R1 under a fuse that bears half as
// much again.
TEST(Guide, EveryPartOfTheStageStandsWhatAFailureOfAnotherMakes) {
    const QString guide = guideText();
    constexpr double kHeld = 16.0, kSeries = 820.0;
    const double lamp = (kHeld - 1.2) / kSeries;
    for (const QString& said : {QString("%1 W (why it is of 0.5 W)").arg(lamp * lamp * kSeries, 0, 'f', 2),
                                QString("%1 W in the suppressor |").arg((0.060 - lamp) * kHeld, 0, 'f', 2),
                                QString("16²/680 = %1 W").arg(kHeld * kHeld / 680.0, 0, 'f', 2),
                                QString("16²/150 = %1 W").arg(kHeld * kHeld / 150.0, 0, 'f', 1),
                                QString("%1 or %2 W in the suppressor")
                                    .arg((1.5 * 0.050 - kHeld / 680.0 - lamp) * kHeld, 0, 'f', 2)
                                    .arg((1.5 * 0.100 - kHeld / 150.0 - lamp) * kHeld, 0, 'f', 2)})
        EXPECT_TRUE(guide.contains(said)) << said.toStdString();
}

}  // namespace
}  // namespace trueunit
