// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextBrowser>

namespace trueunit {

// Shows the pages that are built into the program; links to headings work, drawings are sharp on any screen.
class HelpPages : public QTextBrowser {
    Q_OBJECT

public:
    explicit HelpPages(QWidget* parent = nullptr);
    void open(const QString& page);  // "bias.md", or "connect.md#levels-and-grounds"

signals:
    void opened(const QString& page);

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void doSetSource(const QUrl& url, QTextDocument::ResourceType type) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void scrollToHeading(const QString& slug);
};

}  // namespace trueunit
