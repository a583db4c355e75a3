// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QListWidget;
class QPushButton;

namespace trueunit {

class FindOnPage;
class HelpPages;
class MessageLine;

// The help: contents at the left, the page at the right. Stands beside the bench window, which stays usable.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    explicit HelpWindow(QWidget* parent = nullptr);
    HelpPages& pages() { return *pages_; }
    FindOnPage& find() { return *find_; }
    void writePage(const QString& path, bool letter);  // what is shown, as PDF

    static QStringList pageNames();                    // in the order of the contents
    static QString pageUnder(const QWidget* widget);   // that explains it; the contents where none does
    static QString pageWanted(const QWidget& window);  // of what the pointer is on, or else has the keys

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QListWidget* contents_;
    HelpPages* pages_;
    FindOnPage* find_;
    MessageLine* foot_;

    QString pageTitle() const;
    void askForPaper();
};

// Beside the window that asks, a dialog or the logbook, and usable even while that keeps all others waiting.
void openHelpBeside(QWidget* window, const QString& page);

// "Help", with the key F1, for the buttons of a dialog that this page explains.
QPushButton* makeHelpButton(QWidget* window, const QString& page);

}  // namespace trueunit
