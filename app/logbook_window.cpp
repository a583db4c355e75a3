// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook_window.h"

#include <QAction>
#include <QCloseEvent>
#include <QComboBox>
#include <QDateTime>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPainter>
#include <QScreen>
#include <QScrollArea>
#include <QSplitter>
#include <QStyle>
#include <QStyledItemDelegate>
#include <QTimer>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/finding_names.h"
#include "app/logbook/statement.h"
#include "app/machine_history.h"
#include "app/message_line.h"
#include "app/visit_form.h"
#include "core/finding_ids.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr int kSearchPauseMs = 150;
constexpr int kId = Qt::UserRole;
constexpr int kFindingsColumn = 6;
constexpr int kOpenWidth = 1180, kOpenHeight = 820;  // less high on the smallest screen that is common
constexpr int kFieldFrame = 24;                      // pixels beside the words of a field
constexpr int kClearButton = 20;
constexpr int kFrameWidth = 8, kFrameHeight = 40;        // what the desktop puts about a window
constexpr int kLeastMachines = 130, kLeastVisits = 340;  // of the visits the rest is scrolled to

// As many lines as the words want in their column: a tree of Qt asks for the height without telling the width.
class WrappedWords : public QStyledItemDelegate {
public:
    explicit WrappedWords(QTreeWidget* tree) : QStyledItemDelegate(tree), tree_(tree) {}
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem wrapped = option;
        wrapped.rect.setSize({tree_->columnWidth(index.column()), tree_->height()});
        return QStyledItemDelegate::sizeHint(wrapped, index);
    }

private:
    QTreeWidget* tree_;
};

// What was typed at the bench, for its report; as a rule it is what was done.
QString lastRemarks(const Store& store, qint64 visit) {
    QString last;
    if (const auto rows = framesOf(store, visit))
        for (const FrameRow& row : *rows)
            if (!row.remarks.trimmed().isEmpty()) last = row.remarks;
    return last;
}

}  // namespace

LogbookWindow::LogbookWindow(const QString& path, QWidget* parent)
    : QWidget(parent, Qt::Window),
      path_(path),
      search_(new QLineEdit),
      since_(new QLineEdit),
      until_(new QLineEdit),
      finding_(new QComboBox),
      machines_(new QListWidget),
      visits_(new QTreeWidget),
      history_(new MachineHistory),
      form_(new VisitForm),
      foot_(new MessageLine(this, 0)),
      searchPause_(new QTimer(this)) {
    setWindowTitle(tr("Logbook"));
    build();
    makeActions();
    resize(QSize(kOpenWidth, kOpenHeight).boundedTo(screen()->availableSize() - QSize(kFrameWidth, kFrameHeight)));
    auto store = Store::open(path_);
    if (failed(store)) return;
    store_ = std::move(*store);
    reload();
}

LogbookWindow::~LogbookWindow() = default;

QString LogbookWindow::exampleDay() { return QLocale().toString(QDate(2026, 1, 31), dayFormat()); }

QWidget* LogbookWindow::searchRow() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    search_->setPlaceholderText(tr("Search machines, visits and notes (Ctrl+F)"));
    search_->setAccessibleName(tr("Search"));
    search_->setClearButtonEnabled(true);
    since_->setPlaceholderText(tr("since any day"));
    until_->setPlaceholderText(tr("until any day"));
    for (QLineEdit* field : {since_, until_}) {
        field->setToolTip(tr("A day as %1, or empty for any").arg(exampleDay()));
        field->setClearButtonEnabled(true);
    }
    since_->setAccessibleName(tr("Since this day"));
    until_->setAccessibleName(tr("Until this day"));
    finding_->setAccessibleName(tr("Finding"));
    finding_->addItem(tr("any finding"));
    for (const std::string_view view : kFindingIds) {
        const QString id = QString::fromLatin1(view.data(), static_cast<int>(view.size()));
        finding_->addItem(findingName(id), id);
    }
    line->addWidget(search_, 3);
    for (QWidget* w : {static_cast<QWidget*>(since_), static_cast<QWidget*>(until_), static_cast<QWidget*>(finding_)})
        line->addWidget(w, 1);
    for (QLineEdit* field : {since_, until_})
        field->setMinimumWidth(field->fontMetrics().horizontalAdvance(field->placeholderText()) + kFieldFrame +
                               kClearButton);
    searchPause_->setSingleShot(true);
    for (QLineEdit* field : {search_, since_, until_})
        connect(field, &QLineEdit::textChanged, this, [this] { searchPause_->start(kSearchPauseMs); });
    connect(finding_, &QComboBox::currentIndexChanged, this, &LogbookWindow::reload);
    connect(searchPause_, &QTimer::timeout, this, &LogbookWindow::reload);
    return row;
}

void LogbookWindow::build() {
    machines_->setAccessibleName(tr("Machines"));
    visits_->setAccessibleName(tr("Visits and their frames"));
    visits_->setHeaderLabels({tr("visit, frame"), tr("bias %"), tr("end %"), tr("gross %"), tr("speed %"), tr("limits"),
                              tr("findings, \u201cnotes\u201d")});
    visits_->setWordWrap(true);
    visits_->setItemDelegateForColumn(kFindingsColumn, new WrappedWords(visits_));
    visits_->header()->setMinimumSectionSize(40);
    visits_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    visits_->header()->setSectionResizeMode(kFindingsColumn, QHeaderView::Stretch);
    visits_->setIndentation(12);
    connect(visits_->header(), &QHeaderView::sectionResized, visits_, [this](int column) {
        if (column == kFindingsColumn) QTimer::singleShot(0, visits_, [this] { visits_->doItemsLayout(); });
    });
    auto* scroll = new QScrollArea;
    scroll->setWidget(form_);
    scroll->setWidgetResizable(true);
    scroll->setAccessibleName(tr("Words of the visit"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumWidth(form_->minimumSizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    auto* page = new QSplitter(Qt::Vertical);
    page->addWidget(history_);
    page->addWidget(scroll);
    page->setStretchFactor(0, 1);
    page->setStretchFactor(1, 3);
    machines_->setMinimumWidth(kLeastMachines);
    machines_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    visits_->setMinimumWidth(kLeastVisits);
    auto* sides = new QSplitter;
    sides->addWidget(machines_);
    sides->addWidget(visits_);
    sides->addWidget(page);
    sides->setSizes({150, 610, 370});
    sides->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->addWidget(searchRow());
    column->addWidget(sides, 1);
    column->addWidget(foot_);
    connect(machines_, &QListWidget::currentRowChanged, this, &LogbookWindow::fillVisits);
    connect(visits_, &QTreeWidget::currentItemChanged, this, &LogbookWindow::showChosen);
    connect(visits_, &QTreeWidget::itemActivated, this, &LogbookWindow::openFrame);
    connect(form_, &VisitForm::edited, this, &LogbookWindow::save);
}

void LogbookWindow::say(const QString& sentence) { foot_->say(sentence); }
void LogbookWindow::warn(const QString& sentence) { foot_->warn(sentence); }
QString LogbookWindow::said() const { return foot_->sentence().isEmpty() ? foot_->state() : foot_->sentence(); }

void LogbookWindow::reload() {
    if (!store_) return;
    form_->saveNow();
    fillMachines();
}

void LogbookWindow::showChosen() {
    const auto id = chosenVisit();
    if (!store_ || !id) {
        shownVisit_ = 0;
        return form_->clear();
    }
    if (*id == shownVisit_) return form_->offerWork(lastRemarks(*store_, *id));
    form_->saveNow();
    const auto visit = findVisit(*store_, *id);
    if (failed(visit) || !*visit) return;
    const auto machine = findMachine(*store_, (*visit)->machine);
    if (failed(machine) || !*machine) return;
    shownVisit_ = *id;
    form_->show(**machine, **visit);
    form_->offerWork(lastRemarks(*store_, *id));
}

void LogbookWindow::save() {
    if (!store_ || shownVisit_ == 0) return;
    WriteTransaction transaction(*store_);
    if (failed(transaction.begun())) return;
    Visit visit = form_->visit();
    Machine machine = form_->machine();
    visit.changed = machine.changed = QDateTime::currentSecsSinceEpoch();
    if (failed(saveMachine(*store_, machine)) || failed(saveVisit(*store_, visit))) return;
    if (failed(transaction.commit())) return;
    for (int i = 0; i < visits_->topLevelItemCount(); ++i)
        if (visits_->topLevelItem(i)->data(0, kId).toLongLong() == visit.id)
            visits_->topLevelItem(i)->setText(0, titleOf(visit));
    history_->change(visit);
    say(tr("Saved."));
}

void LogbookWindow::chooseMachine(const QString& name) {
    if (!store_) return;
    const auto machine = findMachineByName(*store_, name);
    if (!machine || !*machine) return;
    for (int i = 0; i < machines_->count(); ++i)
        if (machines_->item(i)->data(kId).toLongLong() == (*machine)->id) machines_->setCurrentRow(i);
}

std::optional<qint64> LogbookWindow::chosenMachine() const {
    const QListWidgetItem* item = machines_->currentItem();
    return item ? std::optional<qint64>(item->data(kId).toLongLong()) : std::nullopt;
}

std::optional<qint64> LogbookWindow::chosenVisit() const {
    const QTreeWidgetItem* item = visits_->currentItem();
    if (!item) return std::nullopt;
    return (item->parent() ? item->parent() : item)->data(0, kId).toLongLong();
}

std::optional<qint64> LogbookWindow::chosenFrame() const {
    const QTreeWidgetItem* item = visits_->currentItem();
    if (!item || !item->parent()) return std::nullopt;
    return item->data(0, kId).toLongLong();
}

void LogbookWindow::closeEvent(QCloseEvent* event) {
    form_->saveNow();
    event->accept();
}

void LogbookWindow::paintEvent(QPaintEvent*) { QPainter(this).fillRect(rect(), theme::kPaper); }

}  // namespace trueunit
