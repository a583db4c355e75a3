// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace trueunit::test {

// The includes of a source file, as written between the quotes or angle brackets.
std::vector<std::string> includesOf(std::string_view text);

// What is wrong with the includes of a file of core/ or widgets/, one sentence each; `path` from the project's top.
// An include may not point downstream: acquire, condition, detect, frame, measure, report, then the pipeline.
std::vector<std::string> layeringFaults(std::string_view path, std::string_view text);

}  // namespace trueunit::test
