// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/frame_window.h"

#include <QAction>
#include <QCursor>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QScreen>
#include <QScrollBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/help_window.h"
#include "app/log_listing.h"
#include "app/logbook/excerpt_flac.h"
#include "app/report_text.h"
#include "widgets/character_grid.h"
#include "widgets/displacement_plot.h"
#include "widgets/findings_panel.h"
#include "widgets/readings_panel.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {
constexpr int kWideEnough = 1320, kTallEnough = 760;
constexpr int kDesktopWidth = 8, kDesktopHeight = 40;  // what the desktop puts about a window
}  // namespace

FrameWindow::FrameWindow(KeptFrame kept, QWidget* parent)
    : QWidget(parent, Qt::Window), kept_(std::move(kept)), table_(new QTableWidget), again_(new QLabel) {
    const FrozenFrame& frame = kept_.frame;
    setWindowTitle(tr("%1, taken %2").arg(QString::fromStdString(frame.machine), takenText(frame)));
    auto* grid = new CharacterGrid;
    auto* readings = new ReadingsPanel;
    auto* findings = new FindingsPanel;
    auto* plot = new DisplacementPlot;
    for (Panel* panel : std::initializer_list<Panel*>{grid, readings, findings, plot}) panel->show(frame.snapshot);
    grid->showFrame(frame);
    table_->setAccessibleName(tr("Readings as they were and measured again"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(22);
    again_->setWordWrap(true);
    auto* right = new QVBoxLayout;
    right->addWidget(table_, 1);
    right->addWidget(again_);
    auto* layout = new QGridLayout(this);
    layout->addWidget(grid, 0, 0, 1, 2);
    layout->addLayout(right, 0, 2);
    layout->addWidget(readings, 1, 0);
    layout->addWidget(plot, 1, 1);
    layout->addWidget(findings, 1, 2);
    if (QWidget* words = notes()) layout->addWidget(words, 2, 0, 1, 3);
    layout->setColumnStretch(0, 3);
    layout->setColumnStretch(1, 3);
    layout->setColumnStretch(2, 4);
    layout->setRowStretch(0, 5);
    layout->setRowStretch(1, 4);
    auto* leave = new QAction(tr("Close"), this);
    leave->setShortcut(Qt::Key_Escape);
    connect(leave, &QAction::triggered, this, &QWidget::close);
    addAction(leave);
    grid->setProperty(theme::kHelpPage, QStringLiteral("instants.md"));
    plot->setProperty(theme::kHelpPage, QStringLiteral("instants.md"));
    findings->setProperty(theme::kHelpPage, QStringLiteral("findings.md"));
    auto* help = new QAction(tr("Help"), this);
    help->setShortcut(Qt::Key_F1);
    connect(help, &QAction::triggered, this, [this] { openHelpBeside(this, HelpWindow::pageWanted(*this)); });
    addAction(help);
    fill(nullptr);
    resize(QSize(kWideEnough, kTallEnough).boundedTo(screen()->availableSize() - QSize(kDesktopWidth, kDesktopHeight)));
    measureAgain();
}

FrameWindow::~FrameWindow() = default;  // waits for the measuring, some tenths of a second

QWidget* FrameWindow::notes() const {
    QStringList lines;
    if (!kept_.frame.remarks.empty()) lines += QString::fromStdString(kept_.frame.remarks);
    int count = 0;
    for (const Note& note : kept_.frame.notes)
        lines +=
            tr("Note %1, at %2 units: %3").arg(++count).arg(number(note.units, 2), QString::fromStdString(note.text));
    if (lines.isEmpty()) return nullptr;
    auto* label = new QLabel(lines.join(QLatin1Char('\n')));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

void FrameWindow::fill(const Snapshot* now) {
    const Snapshot& then = *kept_.frame.snapshot;
    const auto pairs = readingPairs(then, now ? *now : then);
    table_->setColumnCount(4);
    table_->setHorizontalHeaderLabels({tr("quantity"), tr("as it was"), tr("measured again"), tr("unit")});
    table_->setRowCount(static_cast<int>(pairs.size()));
    for (int r = 0; r < table_->rowCount(); ++r) {
        const ReadingPair& pair = pairs[static_cast<std::size_t>(r)];
        const QString cells[] = {pair.name, pair.then, now ? pair.now : QString(), pair.unit};
        for (int c = 0; c < 4; ++c) table_->setItem(r, c, new QTableWidgetItem(cells[c]));
    }
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setMinimumWidth(table_->horizontalHeader()->length() + table_->verticalScrollBar()->sizeHint().width() + 4);
}

void FrameWindow::measureAgain() {
    again_->setText(tr("Measuring the kept sound with this program\u2026"));
    measuring_ = std::jthread([this, flac = kept_.excerptFlac, then = kept_.frame.snapshot] {
        auto now = std::make_shared<Result<Snapshot>>(measureExcerpt(flac, then->options, then->limits));
        QMetaObject::invokeMethod(this, [this, now] {
            measured_ = true;
            if (!*now) return again_->setText(told(now->error().text));
            fill(&**now);
            const VerdictText verdict = verdictText(**now);
            again_->setText(
                tr("Measured again from %1 s of kept sound, all learned anew from these: the worst instants seen, "
                   "and last figures, may differ. %2. %3")
                    .arg((*now)->seconds, 0, 'f', 0)
                    .arg(verdict.headline, verdict.detail));
        });
    });
}

void FrameWindow::paintEvent(QPaintEvent*) { QPainter(this).fillRect(rect(), theme::kPaper); }

}  // namespace trueunit
