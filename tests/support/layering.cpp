// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/layering.h"

#include <array>
#include <optional>
#include <regex>

namespace trueunit::test {

namespace {

constexpr int kSimulate = 100;

// Place in the flow; empty: not in core/.
std::optional<int> rankOf(std::string_view path) {
    struct Place {
        std::string_view prefix;
        int rank;
    };
    static constexpr std::array kPlaces = {
        Place{"core/units.h", 0},
        Place{"core/result.h", 0},
        Place{"core/finding_ids.h", 0},
        Place{"core/machine_card.h", 0},
        Place{"core/options.h", 0},
        Place{"core/normal_equations.h", 0},
        Place{"core/straight_sums.h", 0},
        Place{"core/acquire/", 1},
        Place{"core/condition/", 2},
        Place{"core/detect/", 3},
        Place{"core/frame/", 4},
        Place{"core/options.cpp", 4},  // a name in the options is checked against the code tables
        Place{"core/measure/", 5},
        Place{"core/report/", 6},
        Place{"core/pipeline", 7},
        Place{"core/recording_ahead.", 8},
        Place{"core/recording_run.", 8},
        Place{"core/simulate/", kSimulate},
    };
    for (const Place& p : kPlaces)
        if (path.starts_with(p.prefix)) return p.rank;
    return std::nullopt;
}

bool isStandard(std::string_view include) {
    return include.find_first_not_of("abcdefghijklmnopqrstuvwxyz_0123456789") == std::string_view::npos;
}

bool isQt(std::string_view include) {
    return (include.size() > 1 && include[0] == 'Q' && include[1] >= 'A' && include[1] <= 'Z') ||
           include.starts_with("Qt") || include.starts_with("qt");
}

std::optional<std::string> faultInCore(std::string_view path, std::string_view include) {
    if (isQt(include) || include.starts_with("qcustomplot")) return "core knows no window";
    if (include.starts_with("portaudio") || include.starts_with("pa_")) return "core knows no sound device";
    if (include.starts_with("widgets/") || include.starts_with("app/") || include.starts_with("tests/"))
        return "core is below it";
    const std::optional<int> from = rankOf(path);
    if (!from) return "the file has no place in the flow";
    if (!include.starts_with("core/")) return std::nullopt;
    const std::optional<int> to = rankOf(include);
    if (!to) return "the included file has no place in the flow";
    if (*to == kSimulate && *from != kSimulate) return "nothing in the path knows the simulation";
    if (*from == kSimulate && *to > 4 && *to != kSimulate) return "the simulation knows nothing of the measuring";
    if (*to > *from) return "it lies downstream";
    return std::nullopt;
}

std::optional<std::string> faultInWidgets(std::string_view include) {
    if (isQt(include) || include == "qcustomplot.h" || isStandard(include)) return std::nullopt;
    if (include.starts_with("widgets/") || include.starts_with("core/report/")) return std::nullopt;
    if (include == "core/units.h" || include == "core/options.h" || include == "core/machine_card.h")
        return std::nullopt;
    return "widgets show reports and know nothing else";
}

}  // namespace

std::vector<std::string> includesOf(std::string_view text) {
    static const std::regex kInclude(R"((?:^|\n)[ \t]*#[ \t]*include[ \t]*[<"]([^>"\n]+)[>"])");
    const std::string copy(text);
    std::vector<std::string> out;
    for (std::sregex_iterator i(copy.begin(), copy.end(), kInclude), end; i != end; ++i) out.push_back((*i)[1]);
    return out;
}

std::vector<std::string> layeringFaults(std::string_view path, std::string_view text) {
    std::vector<std::string> faults;
    for (const std::string& include : includesOf(text)) {
        const bool ours = include.ends_with(".h") && text.find("\"" + include + "\"") != std::string_view::npos;
        const auto fault = [&]() -> std::optional<std::string> {
            if (ours && include.find('/') == std::string::npos)
                return "an include of ours is written from the top of the project";
            if (path.starts_with("core/")) return faultInCore(path, include);
            if (path.starts_with("widgets/")) return faultInWidgets(include);
            return std::nullopt;
        }();
        if (fault) faults.push_back(std::string(path) + " includes " + include + ": " + *fault);
    }
    return faults;
}

}  // namespace trueunit::test
