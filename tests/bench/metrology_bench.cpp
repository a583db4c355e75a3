// SPDX-License-Identifier: GPL-3.0-or-later
// What the measurement is worth, in one table: condition, truth, reading, stated uncertainty, error, bound, ratio.
// Exit code 1 when a row is beyond its bound. Arguments: names of the studies wanted; --soak makes the nonsense last
// ten minutes of each kind.
#include <cstring>
#include <set>
#include <string>

#include "tests/bench/metrology/studies.h"

using namespace trueunit::bench;

int main(int argc, char** argv) {
    double nonsenseSeconds = 20.0;
    std::set<std::string> wanted;
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--soak") == 0)
            nonsenseSeconds = 600.0;
        else
            wanted.insert(argv[i]);
    }
    const auto wants = [&](const char* name) { return wanted.empty() || wanted.contains(name); };
    Table table;
    if (wants("instants")) studyInstants(table);
    if (wants("coupling")) studyCoupling(table);
    if (wants("inputs")) studyInputs(table);
    if (wants("tones")) studyTones(table);
    if (wants("speeds")) studySpeeds(table);
    if (wants("coverage")) studyCoverage(table);
    if (wants("nonsense")) studyNonsense(table, nonsenseSeconds);
    std::printf("\n%d rows, %d beyond their bound\n", table.rows(), table.failed());
    return table.failed() == 0 && table.rows() > 0 ? 0 : 1;
}
