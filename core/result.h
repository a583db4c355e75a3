// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace trueunit {

// One sentence for the person at the bench: what the world refused and what to do about it.
struct Error {
    std::string text;
};

// A value, or the sentence that says why there is none. The core throws nothing: a broken program asserts, a
// refusing world (file, device) returns Error, a bad signal is a reading with notes.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : state_(std::move(value)) {}
    Result(Error error) : state_(std::move(error)) {}

    explicit operator bool() const { return std::holds_alternative<T>(state_); }
    T& operator*() { return std::get<T>(state_); }
    const T& operator*() const { return std::get<T>(state_); }
    T* operator->() { return &std::get<T>(state_); }
    const T* operator->() const { return &std::get<T>(state_); }
    const Error& error() const { return std::get<Error>(state_); }

private:
    std::variant<T, Error> state_;
};

using Outcome = Result<std::monostate>;  // success carries nothing
inline Outcome done() { return std::monostate{}; }

}  // namespace trueunit
