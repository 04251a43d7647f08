// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "display/night_display.h"

#include "display/backlight.h"
#include "display/kept_light.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <set>
#include <system_error>
#include <thread>

namespace evenfall {

/// The thread and what it has in hand. What stands above the line is shared and guarded by the mutex.
class NightDisplay::Worker {
  public:
    explicit Worker(Settings settings) : settings_(std::move(settings)) {}
    ~Worker()
    {
        {
            const std::lock_guard lock(mutex_);
            quit_ = true;
        }
        changed_.notify_one();
        if (thread_.joinable())
            thread_.join();
    }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    const Settings& settings() const { return settings_; }

    void follow(Stretch stretch)
    {
        if (!thread_.joinable()) {
            std::error_code error;
            if (stretch == Stretch::rest &&
                !std::filesystem::exists(kept_light_file(settings_.data), error))
                return; // nothing to bring back and nothing held
        }
        {
            const std::lock_guard lock(mutex_);
            wanted_ = stretch;
            evening_ends_ = Clock::now() + settings_.evening_hold;
            said_again_ = true;
        }
        changed_.notify_one();
        if (thread_.joinable())
            return;
        try {
            thread_ = std::thread([this] { run(); });
        } catch (const std::system_error& error) {
            log(std::string("no thread for it: ") + error.what());
        }
    }

  private:
    using Clock = std::chrono::steady_clock; // stops while the system sleeps, as nobody is there then
    using Lock = std::unique_lock<std::mutex>;

    Stretch wanted_now() const
    {
        const bool left_alone = wanted_ == Stretch::evening && Clock::now() >= evening_ends_;
        return quit_ || left_alone ? Stretch::rest : wanted_;
    }

    void run()
    {
        Lock lock(mutex_);
        changed_.wait_for(lock, settings_.settle, [this] { return quit_; });
        Stretch applied = Stretch::rest;
        bool light_owed = true; // a file of the last run may be there
        while (!quit_) {
            const Stretch next = wanted_now();
            if (next != applied || (light_owed && said_again_)) {
                said_again_ = false;
                lock.unlock();
                light_owed = !apply(next);
                lock.lock();
                applied = next;
                continue;
            }
            said_again_ = false;
            const auto reason = [&] { return quit_ || said_again_ || wanted_now() != applied; };
            if (applied == Stretch::evening)
                changed_.wait_until(lock, evening_ends_, reason);
            else
                changed_.wait(lock, reason);
        }
        lock.unlock();
        apply(Stretch::rest);
        bus_.reset(); // in the thread that made it
    }

    bool quitting()
    {
        const Lock lock(mutex_);
        return quit_;
    }

    // ------------------------------------------------------------- the thread's own from here on

    /// False where light is still to be brought back.
    bool apply(Stretch stretch)
    {
        if (stretch == Stretch::night) {
            dim();
            hold();
            return true;
        }
        const bool back = bring_back();
        if (stretch == Stretch::evening)
            hold();
        else if (bus_)
            bus_->release();
        return back;
    }

    void hold()
    {
        if (!settings_.buses.any())
            log("sleep and screen saver are not held off: there is no bus here");
        NightBus* here = quitting() ? nullptr : bus();
        if (!here)
            return;
        if (const Result<std::string> held = here->hold_sleep(); !held)
            log("sleep is not held off: " + held.problems()[0].text);
        else
            log("held off: " + *held);
        if (quitting())
            return;
        if (const Status held = here->hold_screen_saver(); !held)
            log("the screen saver is not held off: " + held.problems()[0].text);
    }

    void dim()
    {
        Result<KeptLight> kept = load_kept_light(settings_.data);
        if (!kept)
            kept = set_aside(kept.problems());
        KeptLight now = *kept;
        std::vector<Backlight> to_dim;
        for (const Backlight& one : backlights(settings_.backlights)) {
            if (one.brightness <= least_light(one.most))
                continue; // as low as it goes, by a night before a restart or by the person's choice
            now.try_emplace(one.name, one.brightness);
            to_dim.push_back(one);
        }
        if (to_dim.empty())
            return;
        // Before it is lowered: a kill in between must find the old value.
        if (now != *kept) {
            if (const Status saved = save_kept_light(settings_.data, now); !saved) {
                log("the backlight stays as it is: " + saved.problems()[0].text);
                return;
            }
        }
        for (const Backlight& one : to_dim)
            if (const Status set = set_light(one.name, least_light(one.most)); !set)
                log("the backlight stays as it is: " + set.problems()[0].text);
    }

    bool bring_back()
    {
        Result<KeptLight> kept = load_kept_light(settings_.data);
        if (!kept)
            kept = set_aside(kept.problems());
        if (kept->empty())
            return true;
        KeptLight left;
        for (const auto& [name, was] : *kept) {
            const std::optional<Backlight> one = backlight(settings_.backlights, name);
            if (!one) {
                log("the backlight " + name + " is not there to be brought back");
                left.emplace(name, was);
                continue;
            }
            const long target = std::min(was, one->most);
            if (one->brightness >= target)
                continue;
            if (const Status set = set_light(name, target); !set) {
                log("the backlight is not brought back: " + set.problems()[0].text);
                left.emplace(name, was);
            }
        }
        if (left == *kept)
            return false;
        if (const Status saved = save_kept_light(settings_.data, left); !saved) {
            log("the light is back, but its file stays: " + saved.problems()[0].text);
            return false;
        }
        return left.empty();
    }

    Status set_light(const std::string& name, long value)
    {
        std::string refusal;
        if (!settings_.buses.system.empty()) {
            if (NightBus* here = bus()) {
                const Status set = here->set_brightness(name, value);
                if (set)
                    return set;
                refusal = set.problems()[0].text + "; ";
            }
        }
        const Status written = write_brightness(settings_.backlights, name, value);
        if (written)
            return written;
        Problem problem = written.problems()[0];
        problem.text = refusal + problem.text;
        return problem;
    }

    /// Nothing is lost by a file that cannot be understood, and nothing is guessed from it.
    KeptLight set_aside(const Problems& problems)
    {
        const std::filesystem::path file = kept_light_file(settings_.data);
        std::error_code error;
        std::filesystem::rename(file, file.string() + ".unread", error);
        log(describe(file.string(), problems[0]) + (error ? "" : "; set aside as .unread"));
        return {};
    }

    NightBus* bus()
    {
        if (bus_ || !settings_.buses.any())
            return bus_.get();
        const Result<const NightBusModule*> module = load_night_bus();
        if (module)
            bus_.reset((*module)->make(settings_.buses, settings_.patience));
        else
            log(module.problems()[0].text);
        return bus_.get();
    }

    void log(const std::string& line)
    {
        if (settings_.log && said_.insert(line).second)
            settings_.log("display: " + line);
    }

    const Settings settings_;
    std::mutex mutex_;
    std::condition_variable changed_;
    Stretch wanted_ = Stretch::rest;
    Clock::time_point evening_ends_;
    bool said_again_ = false;
    bool quit_ = false;
    // ---------------------------------------------------------------------------------------------
    std::unique_ptr<NightBus> bus_;
    std::set<std::string> said_;
    std::thread thread_;
};

NightDisplay::NightDisplay(Settings settings)
    : worker_(std::make_unique<Worker>(std::move(settings)))
{
}

NightDisplay::~NightDisplay() = default;

void NightDisplay::follow(Stretch stretch) { worker_->follow(stretch); }

Status NightDisplay::can_dim() const
{
    const Settings& settings = worker_->settings();
    const std::vector<Backlight> found = backlights(settings.backlights);
    if (found.empty())
        return Problem{Fault::io, "no_backlight", "",
                       settings.backlights.string() + ": there is no backlight that can be set"};
    const bool writable = std::all_of(found.begin(), found.end(), [&](const Backlight& one) {
        return may_write(settings.backlights, one.name);
    });
    if (settings.buses.system.empty() && !writable)
        return Problem{Fault::io, "read_only", "",
                       (settings.backlights / found[0].name / "brightness").string() +
                           ": not writable, and there is no system bus to ask"};
    return Done{};
}

} // namespace evenfall
