// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "sheet/sheet.h"

#include "answers/questions.h"
#include "plan/depict.h"

#include <algorithm>
#include <set>

namespace evenfall {
namespace {

using Kind = SheetBlock::Kind;
using std::chrono::minutes;

// Our own judgement: from half an hour before the planned bed time, half a day.
constexpr minutes diary_before_bed{30};
constexpr int diary_hours = 12;

Text plain(std::string id) {
    return {std::move(id), {}, {}};
}
Text with(std::string id, std::vector<TextArg> args) {
    return {std::move(id), std::move(args), {}};
}
TextArg number(long value) {
    return {TextArg::Count{value}};
}
TextArg code(const std::string& value) {
    return {TextArg::Code{value}};
}
TextArg time_of_day(minutes time) {
    return {TextArg::TimeOfDay{time, false}};
}

SheetBlock block(Kind kind, Text title, Text body = {}) {
    SheetBlock out;
    out.kind = kind;
    out.title = std::move(title);
    out.body = std::move(body);
    return out;
}

SheetBlock with_figure(SheetBlock out, Depiction figure) {
    out.figure = std::move(figure);
    return out;
}
SheetBlock with_figure(SheetBlock out, std::string figure) {
    return with_figure(std::move(out), Depiction{std::move(figure), {}, {}, {}});
}

// Cautions that say the same at several steps, and what a brief sheet says for them, once.
constexpr const char* brief_tape = "sheet.brief.tape";
constexpr const char* brief_tube = "sheet.brief.tube";
constexpr const char* brief_cable = "sheet.brief.cable";
constexpr std::pair<const char*, const char*> said_together[]{
    {"step.ready.tape.caution", brief_tape},
    {"step.nasal_cannula.tape.caution", brief_tape},
    {"step.finger_probe.tape_hand.left.caution", brief_tape},
    {"step.finger_probe.tape_hand.right.caution", brief_tape},
    {"step.ecg_electrodes.place.caution", brief_tape},
    {"step.leg_electrodes.left_leg.place.caution", brief_tape},
    {"step.leg_electrodes.right_leg.place.caution", brief_tape},
    {"step.snore_microphone.place.caution", brief_tape},
    {"step.snore_microphone.place.caution", brief_cable},
    {"step.nasal_cannula.ears.caution", brief_tube},
    {"step.nasal_cannula.chin.caution", brief_tube},
    {"step.finger_probe.plug.left.caution", brief_cable},
    {"step.finger_probe.plug.right.caution", brief_cable},
    {"step.check.caution", brief_cable},
    {"off.tape.caution", "sheet.brief.tape_off"},
    {"skin.again", "sheet.brief.look"},
    {"skin.hurt.advice", "sheet.brief.look"},
    {"call.title", "sheet.brief.first.title"},
    {"call.body", "sheet.brief.first"},
    {"night.watch", "bed.caution"},
};

class SheetMaker {
  public:
    SheetMaker(const Visit& visit, const Kit& kit, const Plan& plan, SheetLength length)
        : visit_(visit), kit_(kit), plan_(plan), length_(length) {}

    Sheet make() {
        Sheet out;
        out.length = length_;
        out.code = visit_.code;
        out.kit_label = visit_.kit_label;
        out.clinic = visit_.clinic;
        out.hand = visit_.hand;
        out.title = plain("sheet.title");
        out.call = plain("sheet.call");
        out.hours = plain("call.hours");
        out.outside_hours = plain("call.outside_hours");
        out.code_title = plain("sheet.code");
        out.qr = with("sheet.qr", {code(visit_.code)});
        out.emergency = with("bed.caution", {code(visit_.clinic.emergency)});
        if (length_ == SheetLength::brief)
            out.sections = {ask_first(), bag(),   before_bed(), brief_steps(),
                            lights(),    night(), morning(),    brief_pack()};
        else
            out.sections = {must_know(),  bag(),   before_bed(), put_on(), lights(),
                            lights_out(), night(), morning(),    pack()};
        for (long n = 1; n <= std::max(1L, visit_.nights); ++n)
            out.diaries.push_back(diary(n));
        return out;
    }

  private:
    const Visit& visit_;
    const Kit& kit_;
    const Plan& plan_;
    SheetLength length_;
    int steps_ = 0;
    std::map<std::string, int>
        number_of_; ///< id of a step's words -> number of the step that has them in full

    bool brief() const { return length_ == SheetLength::brief; }
    TextArg phone() const { return code(visit_.clinic.phone); }

    void add_cautions(std::vector<Text>& to, const std::string& at) const {
        for (const Caution& caution : kit_.cautions)
            if (caution.at == at)
                to.push_back(Text{"", {}, caution.text});
    }
    void add_cautions(SheetSection& to, const std::string& at) const {
        std::vector<Text> texts;
        add_cautions(texts, at);
        for (Text& text : texts)
            to.blocks.push_back(block(Kind::caution, std::move(text)));
    }

    SheetSection must_know() const {
        SheetSection out{plain("first.title"), {block(Kind::paragraph, plain("first.intro"))}};
        for (const char* one : {"tape_allergy", "broken_skin", "oxygen", "implant", "under_18",
                                "pregnant", "latex", "cords"})
            out.blocks.push_back(block(Kind::bullet, plain(std::string("first.condition.") + one)));
        out.blocks.push_back(block(Kind::caution, plain("call.title"), plain("call.body")));
        return out;
    }

    SheetSection ask_first() const {
        return {{}, {block(Kind::caution, plain("sheet.brief.first.title"), plain("sheet.brief.first"))}};
    }

    SheetBlock thing(const PackedItem& item) const {
        SheetBlock out = block(Kind::tick, {});
        out.count = item.count;
        if (const Part* part = kit_.part(item.part)) {
            const TextArg name = part_name(*part);
            const auto& value = std::get<TextArg::Part>(name.value);
            out.title = Text{value.id, {}, value.own};
            out.figure = marked(kit_, item_figure(part->kind), *part);
        } else if (!item.item.empty()) {
            out.title = plain("item." + item.item);
            out.figure.id = item_figure(item.item);
        } else {
            out.title = Text{"", {}, item.name};
        }
        return out;
    }

    SheetSection bag() const {
        SheetSection out{plain("sheet.bag.title"), {}};
        SheetBlock missing = block(Kind::paragraph, with("sheet.bag.missing", {phone()}));
        if (brief())
            out.blocks.push_back(missing);
        for (const PackedItem& item : kit_.packing) {
            out.blocks.push_back(thing(item));
            if (brief())
                out.blocks.back().figure = {}; // the steps show it
        }
        if (!brief())
            out.blocks.push_back(std::move(missing));
        return out;
    }

    Depiction figure_of(const Step& step) const { return depict(kit_, plan_, step); }

    SheetSection before_bed() const {
        SheetSection out{plain("sheet.before.title"), {}};
        std::vector<SheetBlock> warnings;
        out.blocks.push_back(
            block(Kind::paragraph,
                  with("sheet.before.start", {time_of_day(start_of_step(plan_, 0, visit_.bed_time)),
                                              time_of_day(visit_.bed_time)})));
        for (const Step& step : plan_.steps) {
            if (step.phase != Phase::get_ready || step.stage == "charger") // the tablet's
                continue;
            SheetBlock chore = block(Kind::chore, step.title, step.body);
            chore.figure = figure_of(step);
            if (!step.caution.empty())
                chore.cautions.push_back(step.caution);
            if (step.stage == "tape")
                add_cautions(chore.cautions, "tape");
            if (step.stage == "bare")
                add_cautions(chore.cautions, "hand");
            if (brief()) {
                chore.body = {};
                chore.figure = {};
                for (Text& caution : chore.cautions)
                    if (brief_cautions(caution.id).empty())
                        warnings.push_back(block(Kind::caution, std::move(caution)));
                chore.cautions.clear();
            }
            out.blocks.push_back(std::move(chore));
        }
        out.blocks.insert(out.blocks.end(), warnings.begin(), warnings.end());
        return out;
    }

    SheetBlock numbered(SheetBlock out) {
        out.kind = Kind::step;
        out.number = ++steps_;
        return out;
    }

    std::vector<Text> cautions_of(const Step& step, std::set<std::string>& begun) const {
        std::vector<Text> out;
        if (!step.caution.empty())
            out.push_back(step.caution);
        if (!step.part.empty() && begun.insert(step.part).second)
            add_cautions(out, step.part);
        if (step.stage == "check")
            add_cautions(out, "neck");
        return out;
    }

    /// A plug says whose it is: on the screen its part stands over the title.
    Text title_of(const Step& step) const {
        const Part* part = kit_.part(step.part);
        const bool by_mark = step.title.id.starts_with("step.plug.") && !step.title.args.empty();
        if (!part || !by_mark || !step.title.own.empty())
            return step.title;
        return with("sheet.plug", {part_name(*part), mark_phrase(part->mark)});
    }

    /// Figures and titles. A caution stands before the first step that it is about and names them
    /// all, so that whoever follows the numbers meets it in time.
    SheetSection brief_steps() {
        SheetSection out{plain("sheet.on.title"), {}};
        const auto any = [this](const char* stage) {
            return std::any_of(plan_.steps.begin(), plan_.steps.end(),
                               [&](const Step& step) { return step.stage == stage; });
        };
        // What the titles do not say, and what spoils a night.
        if (any("wrap"))
            out.blocks.push_back(block(Kind::paragraph, plain("sheet.brief.belts")));
        if (std::any_of(kit_.parts.begin(), kit_.parts.end(),
                        [](const Part& part) { return part.plug && !part.mark.smooth(); }))
            out.blocks.push_back(block(Kind::paragraph, plain("sheet.brief.plugs")));
        std::map<std::string, std::size_t> at; // a caution's place
        std::set<std::string> begun;
        for (const Step& step : plan_.steps) {
            if (step.phase == Phase::get_ready || step.stage == "light")
                continue;
            SheetBlock one = numbered(block(Kind::step, title_of(step)));
            one.figure = figure_of(step);
            const auto warn = [&](const Text& text) {
                const auto [place, first] =
                    at.try_emplace(text.id.empty() ? "own " + std::to_string(out.blocks.size())
                                                   : text.id,
                                   out.blocks.size());
                if (first)
                    out.blocks.push_back(block(Kind::caution, text));
                std::vector<int>& numbers = out.blocks[place->second].numbers;
                if (numbers.empty() || numbers.back() != one.number)
                    numbers.push_back(one.number);
            };
            for (const Text& caution : cautions_of(step, begun)) {
                const std::vector<std::string> together = brief_cautions(caution.id);
                for (const std::string& id : together)
                    warn(plain(id));
                if (together.empty())
                    warn(caution);
            }
            if (step.tape_strips > 0)
                warn(plain(brief_tape));
            out.blocks.push_back(std::move(one));
        }
        return out;
    }

    SheetSection put_on() {
        SheetSection out{plain("sheet.on.title"), {}};
        std::set<std::string> begun;
        for (const Step& step : plan_.steps) {
            if (step.phase == Phase::get_ready || step.stage == "light")
                continue;
            SheetBlock one = numbered(block(Kind::step, title_of(step)));
            one.figure = figure_of(step);
            one.cautions = cautions_of(step, begun);
            // The same words for another part: said once, with their number from then on.
            const auto [said, first] = number_of_.try_emplace(step.body.id, one.number);
            if (first || !step.body.own.empty()) {
                one.body = step.body;
                one.right = step.right;
            } else {
                one.body = with("sheet.like", {number(said->second)});
            }
            out.blocks.push_back(std::move(one));
        }
        return out;
    }

    Text then(const Light& light) const {
        if (brief() && light.then == Light::Then::check_plugs)
            return plain("sheet.brief.check_plugs");
        if (brief() && light.then == Light::Then::start_again)
            return plain("sheet.brief.start_again");
        if (light.then == Light::Then::start_again)
            return plain("sheet.light.start_again");
        if (light.then == Light::Then::call_clinic)
            return with("sheet.light.call_clinic", {phone()});
        return plain("light.then." + std::string(name_of(light.then)));
    }

    SheetSection lights() const {
        SheetSection out{plain("sheet.light.title"), {}};
        out.blocks.push_back(block(Kind::paragraph,
                                   with(brief() ? "sheet.brief.watch" : "sheet.light.body",
                                        {number(kit_.start.to_light.count())})));
        std::vector<const Light*> ordered;
        for (const bool recording : {true, false})
            for (const Light& light : kit_.lights)
                if ((light.meaning == Light::Meaning::recording) == recording)
                    ordered.push_back(&light);
        for (const Light* light : ordered) {
            SheetBlock row = block(Kind::light, light_text(*light), then(*light));
            row.light = *light;
            out.blocks.push_back(std::move(row));
        }
        out.blocks.push_back(block(Kind::paragraph, with("sheet.light.other", {phone()})));
        return out;
    }

    SheetSection lights_out() const {
        SheetSection out{plain("bed.title"), {}};
        out.blocks.push_back(
            with_figure(block(Kind::chore, plain("bed.line.bathroom")), depict_getting_up(plan_)));
        out.blocks.push_back(
            with_figure(block(Kind::chore, plain("bed.line.phone")), "phone_away"));
        out.blocks.push_back(
            with_figure(block(Kind::chore, plain("bed.line.pets")), "children_pets"));
        add_cautions(out, "bed");
        return out;
    }

    SheetSection night() const {
        SheetSection out{plain("sheet.night.title"), {}};
        const TextArg emergency = code(visit_.clinic.emergency);
        const auto add = [&](const char* title, Text full, Text brief_text) {
            out.blocks.push_back(block(Kind::advice, plain(title),
                                       brief() ? std::move(brief_text) : std::move(full)));
        };
        if (brief()) {
            out.blocks.push_back(block(Kind::paragraph, plain("bed.line.phone")));
            out.blocks.push_back(block(Kind::paragraph, plain("bed.line.pets")));
            add_cautions(out, "bed");
        }
        add("sheet.night.up", plain("sheet.night.up.advice"), plain("sheet.brief.up"));
        add("night.help.off", plain("sheet.night.off.advice"), plain("sheet.brief.off"));
        add("night.help.light", with("sheet.night.light.advice", {phone()}),
            with("sheet.brief.light", {phone()}));
        add("night.help.skin", with("night.help.skin.advice", {emergency}),
            with("sheet.brief.skin", {emergency}));
        add("night.help.stop", with("night.help.stop.advice", {emergency}),
            with("sheet.brief.stop", {emergency}));
        if (!brief()) // its first page says so
            out.blocks.push_back(block(Kind::caution, with("night.watch", {emergency})));
        add_cautions(out, "night");
        return out;
    }

    SheetSection morning() {
        SheetSection out{plain("sheet.morning.title"), {}};
        out.blocks.push_back(block(
            Kind::paragraph, plain(brief() ? "sheet.brief.diary" : "sheet.morning.diary")));
        const auto add = [&](SheetBlock step, std::vector<Text> cautions = {},
                             Text brief_caution = {}) {
            step = numbered(std::move(step));
            if (!brief()) {
                step.cautions = std::move(cautions);
                out.blocks.push_back(std::move(step));
                return;
            }
            if (!brief_caution.empty()) {
                out.blocks.push_back(block(Kind::caution, std::move(brief_caution)));
                out.blocks.back().numbers = {step.number};
            }
            step.body = {};
            out.blocks.push_back(std::move(step));
        };
        for (OffStep& off : off_steps(kit_)) {
            if (brief() && off.easy)
                continue;
            SheetBlock one = block(Kind::step, std::move(off.title), std::move(off.body));
            one.figure = depict(kit_, plan_, off);
            const std::vector<std::string> in_brief = brief_cautions(off.caution.id);
            if (off.caution.empty())
                add(std::move(one));
            else
                add(std::move(one), {off.caution},
                    in_brief.empty() ? off.caution : plain(in_brief.front()));
        }
        add(with_figure(block(Kind::step, plain("skin.title"), plain("skin.body")), "skin_look"),
            {plain("skin.again"), with("skin.hurt.advice", {phone()})},
            with("sheet.brief.look", {phone()}));
        return out;
    }

    SheetSection pack_begun() const {
        SheetSection out{plain("pack.title"), {}};
        if (!visit_.return_by.empty())
            out.blocks.push_back(
                block(Kind::paragraph,
                      with("finished.return", {TextArg{TextArg::Date{visit_.return_by}}})));
        return out;
    }

    /// The list of the bag serves for packing too, but for what is used up.
    SheetSection brief_pack() const {
        SheetSection out = pack_begun();
        out.blocks.push_back(block(Kind::paragraph, plain("sheet.brief.pack")));
        for (const PackedItem& item : kit_.packing) {
            if (item.comes_back)
                continue;
            const Text name = thing(item).title;
            const TextArg arg = name.own.empty() ? TextArg{TextArg::Word{name.id}}
                                                 : TextArg{TextArg::Part{name.id, name.own}};
            out.blocks.push_back(block(Kind::paragraph, with("sheet.brief.stays", {arg})));
        }
        return out;
    }

    SheetSection pack() const {
        SheetSection out = pack_begun();
        out.blocks.push_back(block(Kind::paragraph, plain("sheet.pack.body")));
        for (const PackedItem& item : kit_.packing)
            if (item.comes_back) {
                SheetBlock one = thing(item);
                one.figure = {}; // seen above
                out.blocks.push_back(std::move(one));
            }
        out.blocks.push_back(block(Kind::tick, plain("sheet.pack.diary")));
        return out;
    }

    SheetDiary diary(long night) const {
        SheetDiary out;
        out.title = plain("sheet.diary.title");
        if (visit_.nights > 1)
            out.night = with("welcome.night", {number(night), number(visit_.nights)});
        out.evening = plain("sheet.diary.evening");
        out.how = plain("sheet.diary.how");
        out.unsure = plain("answer.unsure");
        const minutes day = std::chrono::hours(24);
        const auto first =
            std::chrono::floor<std::chrono::hours>(visit_.bed_time + day - diary_before_bed);
        for (int hour = 0; hour <= diary_hours; hour += out.hours_apart) {
            const minutes shown = (minutes(first) + std::chrono::hours(hour)) % day;
            out.hours.push_back(with("answer.exact", {TextArg{TextArg::TimeOfDay{shown, true}}}));
        }
        out.rows = {plain("sheet.diary.lights_out"), plain("sheet.diary.awake")};
        for (const std::string& sensor : kit_.sensors())
            out.rows.push_back(with("sheet.diary.off", {part_name(*kit_.part(sensor))}));
        for (const std::string_view id : questions::all) {
            if (id == questions::awake || id == questions::off)
                continue; // the grid has them
            SheetQuestion question;
            question.id = id;
            question.title = plain("q." + question.id + ".title");
            if (questions::asks_amount(id)) {
                question.answer = SheetQuestion::Answer::amount;
                question.unit =
                    plain(id == questions::slept ? "sheet.diary.hours" : "unit.minutes");
            } else if (id == questions::compare) {
                question.answer = SheetQuestion::Answer::choice;
                for (const char* choice : {"better", "usual", "worse"})
                    question.choices.push_back(plain(std::string("q.compare.") + choice));
            } else if (!questions::asks_time(id)) {
                question.answer = SheetQuestion::Answer::free;
            }
            out.questions.push_back(std::move(question));
        }
        return out;
    }
};

} // namespace

Result<Sheet> make_sheet(const Visit& visit, const Kit& kit, const Plan& plan,
                         SheetLength length) {
    if (visit.clinic.phone.empty())
        return Problem{Fault::refused, "no_phone", "/clinic/phone",
                       "the clinic's telephone number is missing; right would be such as 555-0142, "
                       "for a sheet without "
                       "a number does not leave the desk"};
    return SheetMaker(visit, kit, plan, length).make();
}

std::vector<std::string> brief_cautions(const std::string& caution) {
    std::vector<std::string> out;
    for (const auto& [one, brief] : said_together)
        if (one == caution)
            out.emplace_back(brief);
    return out;
}

std::vector<std::string> all_sheet_texts() {
    return {"sheet.title",
            "sheet.call",
            "sheet.code",
            "sheet.qr",
            "sheet.bag.title",
            "sheet.bag.missing",
            "sheet.before.title",
            "sheet.before.start",
            "sheet.on.title",
            "sheet.like",
            "sheet.light.title",
            "sheet.light.body",
            "sheet.light.other",
            "sheet.light.start_again",
            "sheet.light.call_clinic",
            "sheet.night.title",
            "sheet.night.up",
            "sheet.night.up.advice",
            "sheet.night.off.advice",
            "sheet.night.light.advice",
            "sheet.morning.title",
            "sheet.morning.diary",
            "sheet.pack.body",
            "sheet.pack.diary",
            "sheet.diary.title",
            "sheet.diary.evening",
            "sheet.diary.how",
            "sheet.diary.lights_out",
            "sheet.diary.awake",
            "sheet.diary.off",
            "sheet.diary.hours",
            "sheet.plug",
            "sheet.brief.first.title",
            "sheet.brief.first",
            "sheet.brief.belts",
            "sheet.brief.plugs",
            "sheet.brief.tape",
            "sheet.brief.tube",
            "sheet.brief.cable",
            "sheet.brief.up",
            "sheet.brief.off",
            "sheet.brief.light",
            "sheet.brief.skin",
            "sheet.brief.stop",
            "sheet.brief.diary",
            "sheet.brief.watch",
            "sheet.brief.check_plugs",
            "sheet.brief.start_again",
            "sheet.brief.tape_off",
            "sheet.brief.look",
            "sheet.brief.pack",
            "sheet.brief.stays"};
}

std::vector<std::string> figures_of(const Sheet& sheet) {
    std::set<std::string> ids;
    for (const SheetSection& section : sheet.sections)
        for (const SheetBlock& one : section.blocks)
            if (!one.figure.empty())
                ids.insert(one.figure.id);
    return {ids.begin(), ids.end()};
}

} // namespace evenfall
