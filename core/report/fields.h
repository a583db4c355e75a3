// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

// Every field of a struct, named once, for writing and reading alike: f is called as f("key", field). A field that is
// added to a struct is named beside the others, else a frame that is kept loses it; keys are never renamed.
template <class T>
struct Fields;

#define TRUEUNIT_FIELDS(Type)          \
    template <>                        \
    struct Fields<Type> {              \
        template <class F, class V>    \
        static void visit(F& f, V& v); \
    };                                 \
    template <class F, class V>        \
    void Fields<Type>::visit(F& f, V& v)

}  // namespace trueunit
