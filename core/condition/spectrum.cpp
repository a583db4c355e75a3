// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/spectrum.h"

#include <fftw3.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <mutex>
#include <numbers>

namespace trueunit {

namespace {

// One real transform; fftw's planner is the only part of it that is not safe to enter from two threads.
class RealTransform {
public:
    explicit RealTransform(std::size_t n) : n_(n), in_(fftw_alloc_real(n)), out_(fftw_alloc_complex(n / 2 + 1)) {
        const std::scoped_lock lock(planner());
        plan_ = fftw_plan_dft_r2c_1d(static_cast<int>(n), in_, out_, FFTW_ESTIMATE);
    }
    ~RealTransform() {
        const std::scoped_lock lock(planner());
        fftw_destroy_plan(plan_);
        fftw_free(in_);
        fftw_free(out_);
    }
    RealTransform(const RealTransform&) = delete;
    RealTransform& operator=(const RealTransform&) = delete;

    double* input() { return in_; }
    std::size_t bins() const { return n_ / 2 + 1; }
    void run() { fftw_execute(plan_); }
    double squared(std::size_t bin) const { return out_[bin][0] * out_[bin][0] + out_[bin][1] * out_[bin][1]; }

private:
    static std::mutex& planner() {
        static std::mutex m;
        return m;
    }
    std::size_t n_;
    double* in_;
    fftw_complex* out_;
    fftw_plan plan_;
};

}  // namespace

Spectrum averagedSpectrum(std::span<const float> samples, double rateHz, double binHz) {
    const auto n = std::bit_ceil(static_cast<std::size_t>(rateHz / binHz));
    Spectrum s;
    s.binHz = rateHz / static_cast<double>(n);
    s.power.assign(n / 2 + 1, 0.0);
    RealTransform transform(n);
    for (std::size_t from = 0; from + n <= samples.size(); from += n / 2) {
        for (std::size_t i = 0; i < n; ++i) {
            const double w =
                0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(n));
            const double v = static_cast<double>(samples[from + i]);
            transform.input()[i] = std::isfinite(v) ? w * v : 0.0;
        }
        transform.run();
        for (std::size_t i = 0; i < s.power.size(); ++i) s.power[i] += transform.squared(i);
    }
    return s;
}

std::vector<double> squaredTransform(std::span<const double> samples, std::size_t length) {
    RealTransform transform(std::bit_ceil(std::max(length, samples.size())));
    std::fill_n(transform.input(), 2 * (transform.bins() - 1), 0.0);
    std::copy(samples.begin(), samples.end(), transform.input());
    transform.run();
    std::vector<double> out(transform.bins());
    for (std::size_t i = 0; i < out.size(); ++i) out[i] = transform.squared(i);
    return out;
}

}  // namespace trueunit
