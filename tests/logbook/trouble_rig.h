// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QByteArray>
#include <QFile>
#include <string>

#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

namespace trueunit::test {

class LogbookTrouble : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }
    QString book() const { return file("book.sqlite"); }
    void fill(int frames) {
        const auto store = opened(book());
        for (int i = 0; i < frames; ++i) ASSERT_TRUE(keepFrame(*store, keepingOf("Skerry 2", kMorning + i)));
    }
    QByteArray bytes() const {
        QFile f(book());
        return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
    }
    void write(const QByteArray& to) const {
        QFile f(book());
        ASSERT_TRUE(f.open(QIODevice::WriteOnly));
        f.write(to);
    }
    static void expectSentence(const Error& error, const char* words) {
        EXPECT_NE(error.text.find(words), std::string::npos) << error.text;
        EXPECT_EQ(error.text.back(), '.') << error.text;
        EXPECT_EQ(error.text.find('\n'), std::string::npos) << error.text;
    }

    const test::TemporaryFolder folder_;
};

}  // namespace trueunit::test
