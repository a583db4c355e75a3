// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/pipeline.h"
#include "tests/bench/metrology/table.h"
#include "tests/support/plain_sender.h"

namespace trueunit::bench {

// Each study holds one demand against signals of known truth and adds its rows to the table.
void studyInstants(Table& table);
void studyCoupling(Table& table);
void studyInputs(Table& table);
void studyTones(Table& table);
void studySpeeds(Table& table);
void studyCoverage(Table& table);
void studyNonsense(Table& table, double seconds);  // of each kind

std::vector<unsigned> foxCodes(std::size_t n);  // a usual test text, repeated to n characters

// The row that tells the bias of a sender, read as a recording is: learned once, then measured.
Row biasRow(const std::string& condition, test::PlainSender sender, double bound);

}  // namespace trueunit::bench
