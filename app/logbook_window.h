// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/logbook/frame_search.h"
#include "app/logbook/machines.h"
#include "app/logbook/visits.h"
#include "widgets/told.h"

class QAction;
class QComboBox;
class QLineEdit;
class QListWidget;
class QTimer;
class QTreeWidget;
class QTreeWidgetItem;

namespace trueunit {

class MachineHistory;
class MessageLine;
class VisitForm;

// The logbook as a window of its own: machines at the left, their visits with the frames in the middle, at the right
// how the readings went over the visits and the words of the chosen visit, which save themselves. Has a store of its
// own, so it may lie beside the bench while that keeps frames. Window thread.
class LogbookWindow : public QWidget {
    Q_OBJECT

public:
    explicit LogbookWindow(const QString& path, QWidget* parent = nullptr);
    ~LogbookWindow() override;

    const QString& path() const { return path_; }
    void reload();                            // what is shown, keeping what is chosen
    void chooseMachine(const QString& name);  // if the logbook has it
    QString said() const;                     // the sentence at the foot
    QTreeWidget& visits() { return *visits_; }
    QListWidget& machines() { return *machines_; }

    Result<QStringList> writeReportTo(const QString& path, bool letter);  // of the chosen visit; the files
    void openFrame();                                                     // the chosen one, in a window of its own

    QSize sizeHint() const override { return {1280, 800}; }
    QSize minimumSizeHint() const override { return {900, 480}; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void build();
    void makeActions();
    QAction* act(const QString& name, const QString& what, const QKeySequence& key, void (LogbookWindow::*slot)());
    QWidget* searchRow();

    void fillMachines();
    void fillVisits();
    void showChosen();
    void save();
    void mark(FrameRole role);
    void say(const QString& sentence);
    void warn(const QString& sentence);
    template <class T>
    bool failed(const Result<T>& result) {  // said at the foot
        if (!result) warn(told(result.error().text));
        return !result;
    }
    static QString titleOf(const Visit& visit);
    static QString exampleDay();  // how a day is written here
    void sayFound(qint64 frames);

    std::optional<qint64> chosenMachine() const;
    std::optional<qint64> chosenVisit() const;
    std::optional<qint64> chosenFrame() const;
    FrameFilter filter() const;

    void focusSearch();
    void markBefore();
    void markAfter();
    QString suggestedPath(const QString& suffix) const;
    void askReport();
    void askExport();
    void askImport();
    void showHelp();
    void showKeys();

    QString path_;
    std::unique_ptr<Store> store_;
    QLineEdit *search_, *since_, *until_;
    QComboBox* finding_;
    QListWidget* machines_;
    QTreeWidget* visits_;
    MachineHistory* history_;
    VisitForm* form_;
    MessageLine* foot_;
    QTimer* searchPause_;
    qint64 shownVisit_ = 0;
    qint64 framesListed_ = 0;  // of all the machines in the list
};

}  // namespace trueunit
