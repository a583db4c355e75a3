// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/program_lock.h"

#include <QLockFile>
#include <QString>

namespace trueunit {

namespace {

constexpr int kSigningMs = 500;

bool isSigned(const QLockFile& lock) {
    qint64 pid = 0;
    QString host, program;
    return lock.getLockInfo(&pid, &host, &program);
}

}  // namespace

bool takeLock(QLockFile& lock) {
    lock.setStaleLockTime(0);
    if (lock.tryLock(0)) return true;
    if (lock.error() != QLockFile::LockFailedError || isSigned(lock)) return false;
    if (lock.tryLock(kSigningMs)) return true;
    return !isSigned(lock) && lock.removeStaleLockFile() && lock.tryLock(0);
}

}  // namespace trueunit
