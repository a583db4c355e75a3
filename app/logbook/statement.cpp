// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/statement.h"

namespace trueunit {

Statement::Statement(const Store& store, const QString& sql) : store_(store), query_(store.database()) {
    query_.setForwardOnly(true);
    prepared_ = query_.prepare(sql);
}

Statement& Statement::bind(const QVariant& value) {
    // An empty text is a text, not an unknown.
    query_.addBindValue(
        value.userType() == QMetaType::QString && value.toString().isNull() ? QVariant(QStringLiteral("")) : value);
    return *this;
}

Statement& Statement::bindReal(const std::optional<double>& value) {
    query_.addBindValue(value ? QVariant(*value) : QVariant());
    return *this;
}

Outcome Statement::run() {
    if (!prepared_ || !query_.exec()) return refusal();
    query_.finish();
    return done();
}

Outcome Statement::forEach(const std::function<void()>& row) {
    if (!prepared_ || !query_.exec()) return refusal();
    while (query_.next()) row();
    const bool failed = query_.lastError().isValid();
    const Error why = failed ? refusal() : Error{};
    query_.finish();
    if (failed) return why;
    return done();
}

Result<qint64> Statement::insert() {
    if (!prepared_ || !query_.exec()) return refusal();
    const qint64 id = query_.lastInsertId().toLongLong();
    query_.finish();
    return id;
}

Result<qint64> Statement::number(qint64 whenNone) {
    qint64 found = whenNone;
    bool first = true;
    if (Outcome ran = forEach([&] {
            if (first) found = integer(0);
            first = false;
        });
        !ran)
        return ran.error();
    return found;
}

std::optional<double> Statement::real(int column) const {
    const QVariant value = query_.value(column);
    if (value.isNull()) return std::nullopt;
    return value.toDouble();
}

std::optional<bool> Statement::flag(int column) const {
    const QVariant value = query_.value(column);
    if (value.isNull()) return std::nullopt;
    return value.toInt() != 0;
}

WriteTransaction::WriteTransaction(const Store& store) : store_(store), begun_(done()) {
    if (store.readOnly()) {
        begun_ = troubleSentence(Trouble::readOnly, store.path());
        return;
    }
    begun_ = Statement(store, QStringLiteral("BEGIN IMMEDIATE")).run();
    open_ = static_cast<bool>(begun_);
}

WriteTransaction::~WriteTransaction() {
    if (open_) (void)static_cast<bool>(Statement(store_, QStringLiteral("ROLLBACK")).run());
}

Outcome WriteTransaction::commit() {
    Outcome committed = Statement(store_, QStringLiteral("COMMIT")).run();
    if (committed) open_ = false;
    return committed;
}

}  // namespace trueunit
