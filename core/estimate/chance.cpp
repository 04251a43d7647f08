// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/chance.h"

#include "estimate/worlds.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <tuple>
#include <unordered_map>

namespace evenfall {
namespace {

// Instants as microseconds in a double: exact up to 2^53, which is the year 2255.
double number(Instant when) { return static_cast<double>(when.time_since_epoch().count()); }

/// Uniform numbers in [0, 1) with 53 bits. std::uniform_real_distribution is not the same
/// everywhere.
class Uniform {
  public:
    explicit Uniform(std::uint64_t seed) : engine_(seed) {}
    double next() { return static_cast<double>(engine_() >> 11) * 0x1p-53; }

  private:
    std::mt19937_64 engine_;
};

/// One time, uniform over its range. An exact one takes no draw.
///
/// Products are floored before anything is added to them: a compiler may otherwise fuse the two
/// steps into one with another rounding, and the share would not be the same everywhere. What is
/// lost is less than a microsecond.
class SingleTime {
  public:
    explicit SingleTime(const TimeRange& range)
        : from_(number(range.earliest)), width_(number(range.latest) - from_)
    {
    }
    double draw(Uniform& uniform) const
    {
        return width_ > 0 ? from_ + std::floor(uniform.next() * width_) : from_;
    }

  private:
    double from_;
    double width_;
};

/// Two times, uniform over those pairs of the two ranges that come in order: by the inverse of the
/// distribution, so that every pair of draws is used.
///
/// With from in [a1, a2] and to in [b1, b2], the density of `from` is proportional to what is left
/// for `to`: b2 - b1 while from <= b1 (the flat part), b2 - from beyond (the falling part).
class OrderedPair {
  public:
    OrderedPair(const TimeRange& from, const TimeRange& to)
        : a1_(number(from.earliest)), b1_(number(to.earliest)), b2_(number(to.latest))
    {
        const double a2 = std::min(number(from.latest), b2_);
        exact_from_ = from.exact();
        flat_ = std::floor((b2_ - b1_) * std::max(0.0, std::min(a2, b1_) - a1_));
        fall_from_ = std::max(a1_, b1_);
        const double fall_to = std::max(a2, fall_from_);
        const double all = b2_ - fall_from_;
        square_ = std::floor(all * all);
        fall_ = std::floor((fall_to - fall_from_) * (all + (b2_ - fall_to)) / 2);
        // An exact `to` leaves no area: `from` is then uniform up to it.
        line_ = b2_ > b1_ ? 0.0 : std::max(0.0, a2 - a1_);
    }

    void draw(Uniform& uniform, double& from, double& to) const
    {
        from = a1_;
        if (line_ > 0) {
            from = a1_ + std::floor(uniform.next() * line_);
        } else if (!exact_from_ && flat_ + fall_ > 0) {
            const double area = std::floor(uniform.next() * (flat_ + fall_));
            if (area < flat_)
                from = a1_ + std::floor(area / (b2_ - b1_));
            else
                from = b2_ - std::floor(std::sqrt(std::max(0.0, square_ - 2 * (area - flat_))));
        }
        const double first = std::max(b1_, from);
        to = b2_ > first ? first + std::floor(uniform.next() * (b2_ - first)) : first;
    }

  private:
    double a1_, b1_, b2_;
    bool exact_from_ = false;
    double flat_ = 0, fall_ = 0, fall_from_ = 0, square_ = 0, line_ = 0;
};

/// How long every group is on, for one drawn world after the other. The order of the moments of one
/// world is nearly that of the next, so that keeping it makes sorting cheap.
class Sweep {
  public:
    Sweep(const Night& night, const std::vector<std::size_t>& sensor_of_removal,
          std::vector<std::vector<std::size_t>> groups_of_sensor, std::size_t sensors)
        : groups_of_sensor_(std::move(groups_of_sensor)), sensor_(sensor_of_removal),
          off_(sensors, 0), on_(night.need.groups.size(), 0)
    {
        for (const auto& groups : groups_of_sensor_)
            for (const std::size_t group : groups)
                ++on_[group];
        all_on_ = on_;
        times.resize(2 * sensor_.size());
        order_.resize(times.size());
        for (std::size_t i = 0; i < order_.size(); ++i)
            order_[i] = static_cast<std::uint32_t>(i);
    }

    /// times[2 i] and times[2 i + 1] are the ends of removal i.
    std::vector<double> times;

    /// The first draw may come in any order; the later ones in nearly that of the one before.
    void sort_first()
    {
        std::stable_sort(order_.begin(), order_.end(),
                         [&](std::uint32_t a, std::uint32_t b) { return times[a] < times[b]; });
    }

    double measure(double from, double to)
    {
        for (std::size_t i = 1; i < order_.size(); ++i) {
            const std::uint32_t moving = order_[i];
            std::size_t place = i;
            for (; place > 0 && times[order_[place - 1]] > times[moving]; --place)
                order_[place] = order_[place - 1];
            order_[place] = moving;
        }
        std::fill(off_.begin(), off_.end(), 0);
        on_ = all_on_;
        long blocked = 0;
        double total = 0;
        double since = from;
        for (const std::uint32_t moment : order_) {
            const double now = std::min(std::max(times[moment], since), to);
            if (blocked == 0)
                total += now - since;
            since = now;
            const std::size_t sensor = sensor_[moment / 2];
            const bool goes_off = moment % 2 == 0;
            // Only the first removal of a sensor that is on, and the last to end, change its
            // groups.
            if (goes_off ? off_[sensor]++ == 0 : --off_[sensor] == 0) {
                for (const std::size_t group : groups_of_sensor_[sensor]) {
                    if (goes_off && --on_[group] == 0)
                        ++blocked;
                    else if (!goes_off && on_[group]++ == 0)
                        --blocked;
                }
            }
        }
        if (blocked == 0)
            total += to - since;
        return total;
    }

  private:
    std::vector<std::vector<std::size_t>> groups_of_sensor_;
    std::vector<std::size_t> sensor_;
    std::vector<std::uint32_t> order_;
    std::vector<long> off_;
    std::vector<long> on_, all_on_;
};

/// Groups in which each sensor stands; a sensor named twice in a group counts once.
std::vector<std::vector<std::size_t>>
groups_of_sensors(const Night& night, const std::unordered_map<std::string, std::size_t>& index)
{
    std::vector<std::vector<std::size_t>> out(night.sensors.size());
    for (std::size_t group = 0; group < night.need.groups.size(); ++group) {
        for (const std::string& id : night.need.groups[group]) {
            const auto found = index.find(id);
            if (found != index.end() &&
                (out[found->second].empty() || out[found->second].back() != group))
                out[found->second].push_back(group);
        }
    }
    return out;
}

std::vector<const Removal*>
relevant_removals(const Night& night, const std::unordered_map<std::string, std::size_t>& index,
                  const std::vector<std::vector<std::size_t>>& groups)
{
    std::vector<const Removal*> out;
    for (const Removal& removal : night.off) {
        const auto found = index.find(removal.sensor);
        if (found != index.end() && !groups[found->second].empty())
            out.push_back(&removal);
    }
    // A canonical order, so that the order in which removals were told cannot change the draws.
    const auto key = [](const Removal* removal) {
        const TimeRange past = TimeRange::exactly(distant_past);
        const TimeRange future = TimeRange::exactly(distant_future);
        const TimeRange from = removal->from.value_or(past);
        const TimeRange to = removal->to.value_or(future);
        return std::make_tuple(std::string_view(removal->sensor), from.earliest, from.latest,
                               to.earliest, to.latest);
    };
    std::sort(out.begin(), out.end(),
              [&](const Removal* a, const Removal* b) { return key(a) < key(b); });
    return out;
}

} // namespace

double chance_enough(const Night& night, int draws, std::uint64_t seed)
{
    std::unordered_map<std::string, std::size_t> index;
    for (std::size_t i = 0; i < night.sensors.size(); ++i)
        index.emplace(night.sensors[i], i);
    auto groups = groups_of_sensors(night, index);
    const std::vector<const Removal*> removals = relevant_removals(night, index, groups);

    const TimeRange past = TimeRange::exactly(distant_past);
    const TimeRange future = TimeRange::exactly(distant_future);
    std::vector<OrderedPair> pairs;
    std::vector<std::size_t> sensor_of_removal;
    for (const Removal* removal : removals) {
        pairs.emplace_back(removal->from.value_or(past), removal->to.value_or(future));
        sensor_of_removal.push_back(index.at(removal->sensor));
    }
    const OrderedPair recording(night.recording_from.value_or(past),
                                night.recording_to.value_or(future));
    const SingleTime lights_out(night.lights_out.value_or(past));
    const SingleTime lights_on(night.lights_on.value_or(future));
    const double need = static_cast<double>(night.need.minutes.count());

    Sweep sweep(night, sensor_of_removal, std::move(groups), night.sensors.size());
    Uniform uniform(seed);
    int enough = 0;
    for (int draw = 0; draw < draws; ++draw) {
        double from = 0;
        double to = 0;
        recording.draw(uniform, from, to);
        from = std::max(from, lights_out.draw(uniform));
        to = std::max(from, std::min(to, lights_on.draw(uniform)));
        for (std::size_t i = 0; i < pairs.size(); ++i)
            pairs[i].draw(uniform, sweep.times[2 * i], sweep.times[2 * i + 1]);
        if (draw == 0)
            sweep.sort_first();
        if (sweep.measure(from, to) >= need)
            ++enough;
    }
    return draws > 0 ? static_cast<double>(enough) / draws : 0.0;
}

} // namespace evenfall
