// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>
#include <functional>
#include <optional>

#include "app/logbook/store.h"

namespace trueunit {

// One SQL statement: bound in order, run, its rows walked. Every failure, also one in the middle of the rows, comes
// back as the sentence of the store.
class Statement {
public:
    Statement(const Store& store, const QString& sql);

    Statement& bind(const QVariant& value);
    Statement& bindReal(const std::optional<double>& value);

    Outcome run();                                      // a statement without rows
    Outcome forEach(const std::function<void()>& row);  // run, then row() for each row
    Result<qint64> insert();                            // run; the new row's id
    Result<qint64> number(qint64 whenNone);             // first column of the first row

    QString text(int column) const { return query_.value(column).toString(); }
    qint64 integer(int column) const { return query_.value(column).toLongLong(); }
    QByteArray bytes(int column) const { return query_.value(column).toByteArray(); }
    std::optional<double> real(int column) const;
    std::optional<bool> flag(int column) const;

private:
    Error refusal() const { return store_.refusal(query_.lastError()); }

    const Store& store_;
    QSqlQuery query_;
    bool prepared_;
};

// All or nothing: what was not committed when this goes is taken back. Takes the right to write at once, so that two
// programs queue instead of failing half-way.
class WriteTransaction {
public:
    explicit WriteTransaction(const Store& store);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction&) = delete;
    WriteTransaction& operator=(const WriteTransaction&) = delete;

    const Outcome& begun() const { return begun_; }
    Outcome commit();  // on the disk when it succeeds

private:
    const Store& store_;
    Outcome begun_;
    bool open_ = false;
};

}  // namespace trueunit
