// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/captioned.h"

#include <QLabel>
#include <QVBoxLayout>

#include "widgets/theme.h"

namespace trueunit {

QWidget* captioned(const QString& caption, QWidget* field, const QString& toolTip) {
    constexpr int kFieldHeight = 28;
    field->setFixedHeight(kFieldHeight);
    auto* both = new QWidget;
    both->setSizePolicy(field->sizePolicy());
    both->setMaximumWidth(field->maximumWidth());
    auto* column = new QVBoxLayout(both);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    auto* label = new QLabel(caption, both);
    label->setFont(theme::text(theme::kSmallPx - 1));
    label->setBuddy(field);
    QPalette colors = label->palette();
    colors.setColor(QPalette::WindowText, theme::kSecondary);
    label->setPalette(colors);
    column->addWidget(label);
    column->addWidget(field);
    if (field->accessibleName().isEmpty()) field->setAccessibleName(caption);
    field->setToolTip(toolTip);
    return both;
}

}  // namespace trueunit
