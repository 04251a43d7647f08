// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/edf.h"

#include "record/diary.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>

namespace evenfall {
namespace {

using std::chrono::seconds;

constexpr char text_end = '\x14';
constexpr char duration_mark = '\x15';
constexpr char tal_end = '\0';

constexpr std::size_t fixed_header = 256;
constexpr std::size_t signal_header = 256;
constexpr std::size_t id_bytes = 80;
/// EDF (Kemp et al. 1992) asks for data records of at most 61,440 bytes.
constexpr std::size_t record_limit = 61440;
/// More than any recorder has; keeps a faulty header from asking for the memory of the machine.
constexpr long signal_limit = 4096;

constexpr std::array<std::string_view, 12> months{"JAN", "FEB", "MAR", "APR", "MAY", "JUN",
                                                  "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"};

std::string two(long value) { return (value < 10 ? "0" : "") + std::to_string(value); }

struct Calendar {
    int year;
    unsigned month, day;
    long hour, minute, second;
};

Calendar calendar(LocalTime local)
{
    const auto day = std::chrono::floor<std::chrono::days>(local);
    const std::chrono::year_month_day date(day);
    const std::chrono::hh_mm_ss clock(std::chrono::floor<seconds>(local - day));
    return {static_cast<int>(date.year()),     static_cast<unsigned>(date.month()),
            static_cast<unsigned>(date.day()), clock.hours().count(),
            clock.minutes().count(),           clock.seconds().count()};
}

/// dd-MMM-yyyy: English month in capitals, leading zero, four digits (2.1.3.3, 2.1.3.4).
std::string long_date(const Calendar& at)
{
    return two(at.day) + "-" + std::string(months[at.month - 1]) + "-" + std::to_string(at.year);
}

/// A subfield of an identification: no spaces inside; unknown is X (2.1.3.3).
std::string subfield(std::string text)
{
    if (text.empty())
        return "X";
    std::replace(text.begin(), text.end(), ' ', '_');
    return text;
}

/// Seconds without trailing zeros: a dot only with a fraction, never exponent notation (2.2.2).
std::string decimal_seconds(Span span)
{
    const auto ticks = span.count() < 0 ? -span.count() : span.count();
    std::string text = std::to_string(ticks / 1000000);
    if (ticks % 1000000 != 0) {
        char fraction[16];
        std::snprintf(fraction, sizeof fraction, ".%06ld", static_cast<long>(ticks % 1000000));
        text += fraction;
        while (text.back() == '0')
            text.pop_back();
    }
    return text;
}

/// One time-stamped annotations list: signed onset, duration where there is one, text (2.2.2).
std::string tal(const Annotation& annotation)
{
    std::string out = (annotation.onset < Span(0) ? "-" : "+") + decimal_seconds(annotation.onset);
    if (annotation.duration)
        out += duration_mark + decimal_seconds(*annotation.duration);
    out += text_end;
    out += annotation.text;
    out += text_end;
    out += tal_end;
    return out;
}

/// The first list of a data record keeps its time. Where there are no ordinary signals, the same
/// list says in a text what that time is (2.2.4).
std::string time_keeping(const std::string& text)
{
    return std::string("+0") + text_end + text_end + text + text_end + tal_end;
}

/// The bytes of each data record, not yet padded.
std::vector<std::string> data_records(const EdfDiary& diary)
{
    std::vector<std::string> records{time_keeping(diary.start_text)};
    for (const Annotation& annotation : diary.annotations) {
        const std::string list = tal(annotation);
        if (records.back().size() + list.size() > record_limit)
            records.push_back(time_keeping("Diary continues"));
        records.back() += list;
    }
    return records;
}

std::string field(const std::string& text, std::size_t width)
{
    return text + std::string(width - text.size(), ' ');
}

bool printable(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= 32 && c <= 126; });
}

Problem refuse(std::string code, std::string text)
{
    return {Fault::refused, std::move(code), "", std::move(text)};
}

Problems write_problems(const EdfDiary& diary, const std::string& patient,
                        const std::string& recording)
{
    Problems problems;
    const Calendar start = calendar(diary.start);
    if (start.year < 1985 || start.year > 2084)
        problems.push_back(
            refuse("year_outside_edf", "the year " + std::to_string(start.year) +
                                           " cannot stand in EDF+; right would be 1985 to 2084"));
    for (const std::string& id : {patient, recording})
        if (id.size() > id_bytes || !printable(id))
            problems.push_back(
                refuse("bad_identification",
                       "\"" + id +
                           "\" does not fit EDF+; right would be at most 80 bytes of "
                           "printable US-ASCII"));
    if (diary.start_text.empty() || !plain_text(diary.start_text))
        problems.push_back(refuse("bad_text", "no text for the start of the file"));
    for (const Annotation& annotation : diary.annotations) {
        if (annotation.text.empty() || !plain_text(annotation.text))
            problems.push_back(refuse(
                "bad_text", "an annotation that is empty, not UTF-8, or has control characters"));
        if (annotation.duration && *annotation.duration < Span(0))
            problems.push_back(
                refuse("negative_duration", "\"" + annotation.text + "\" has a negative duration"));
    }
    return problems;
}

} // namespace

Result<std::string> write_edf(const EdfDiary& diary)
{
    const Calendar start = calendar(diary.start);
    // 2.1.3.3: code, sex, birth date, name. We have a study code and nothing else.
    const std::string patient = diary.patient_field.value_or(subfield(diary.patient_code) + " X X X");
    // 2.1.3.4: Startdate, date, administration code, technician, equipment.
    const std::string recording = "Startdate " + long_date(start) + " " +
                                  subfield(diary.admin_code) + " X " + subfield(diary.equipment);
    const Problems problems = write_problems(diary, patient, recording);
    if (!problems.empty())
        return problems;

    std::vector<std::string> records = data_records(diary);
    std::size_t size = 0;
    for (const std::string& record : records)
        size = std::max(size, record.size());
    size += size % 2; // samples have two bytes

    std::string out = field("0", 8) + field(patient, id_bytes) + field(recording, id_bytes);
    out += two(start.day) + "." + two(static_cast<long>(start.month)) + "." +
           two(start.year % 100); // 2.1.3.2
    out += two(start.hour) + "." + two(start.minute) + "." + two(start.second);
    out += field(std::to_string(fixed_header + signal_header), 8);
    out += field("EDF+C", 44); // 2.1.1
    out += field(std::to_string(records.size()), 8);
    out += field("0", 8); // 2.1.2: duration 0 when there are annotations only
    out += field("1", 4);
    out += field("EDF Annotations", 16); // 2.2.1
    out += field("", 80);
    out += field("", 8);
    out += field("-1", 8); // 2.2.1: physical minimum and maximum differ, digital -32768 and 32767
    out += field("1", 8);
    out += field("-32768", 8);
    out += field("32767", 8);
    out += field("", 80);
    out += field(std::to_string(size / 2), 8);
    out += field("", 32);
    for (std::string& record : records) {
        record.resize(size, '\0'); // 2.2.4: unused bytes are zero
        out += record;
    }
    return out;
}

namespace {

/// Reads what stands at a byte, and names the byte of everything that is wrong.
class EdfReader {
  public:
    EdfReader(std::string_view bytes, Identifications identifications)
        : bytes_(bytes), identifications_(identifications)
    {
    }

    Result<EdfHeader> header()
    {
        if (bytes_.size() < fixed_header) {
            fault(0, "too_short",
                  std::to_string(bytes_.size()) +
                      " bytes are less than a header; right would be at least 256");
            return problems_;
        }
        if (text(8) != "0")
            fault(0, "bad_version", "right would be \"0\" and seven spaces");
        header_.patient = text(id_bytes);
        header_.recording = text(id_bytes);
        start();
        header_.header_bytes = integer(8, "header bytes");
        kind();
        const std::size_t records_at = at_;
        header_.records = integer(8, "number of data records");
        if (header_.records < -1 || (header_.records < 1 && header_.kind != "EDF"))
            fault(records_at, "bad_number", "right would be a number of data records from 1");
        duration();
        const std::size_t count_at = at_;
        const long count = integer(4, "number of signals");
        if (count < 1 || count > signal_limit) {
            fault(count_at, "bad_number", "right would be 1 to 4096 signals");
            return problems_;
        }
        const auto needed = fixed_header + static_cast<std::size_t>(count) * signal_header;
        if (header_.header_bytes != static_cast<long>(needed))
            fault(184, "bad_number",
                  "right would be " + std::to_string(needed) +
                      ", 256 for the header and for each signal");
        if (bytes_.size() < needed) {
            fault(bytes_.size(), "too_short", "the file ends within its header");
            return problems_;
        }
        signals(static_cast<std::size_t>(count));
        if (header_.kind != "EDF" && identifications_ == Identifications::by_form)
            identifications();
        if (!problems_.empty())
            return problems_;
        return header_;
    }

    Result<EdfFile> file()
    {
        const Result<EdfHeader> read = header();
        if (!read)
            return read.problems();
        EdfFile out{*read, {}};
        std::size_t record_bytes = 0;
        for (const EdfSignal& signal : out.header.signals)
            record_bytes += static_cast<std::size_t>(signal.samples) * 2;
        const auto whole = static_cast<std::size_t>(out.header.header_bytes);
        const std::size_t data = bytes_.size() - whole;
        if (out.header.records < 0 ||
            data / record_bytes != static_cast<std::size_t>(out.header.records) ||
            data % record_bytes != 0) {
            fault(whole, "bad_size",
                  std::to_string(data) + " bytes of data; right would be " +
                      std::to_string(out.header.records) + " records of " +
                      std::to_string(record_bytes));
            return problems_;
        }
        at_ = whole;
        for (long record = 0; record < out.header.records; ++record) {
            bool first = true;
            for (const EdfSignal& signal : out.header.signals) {
                const auto size = static_cast<std::size_t>(signal.samples) * 2;
                if (out.header.kind != "EDF" && signal.annotations()) {
                    lists(at_, at_ + size, first, record, out);
                    first = false;
                }
                at_ += size;
            }
        }
        if (!problems_.empty())
            return problems_;
        return out;
    }

  private:
    std::string_view bytes_;
    std::size_t at_ = 0;
    Problems problems_;
    Identifications identifications_;
    EdfHeader header_;
    bool start_read_ = false;
    Span record_start_{0};

    void fault(std::size_t at, std::string code, std::string text)
    {
        problems_.push_back(
            {Fault::refused, std::move(code), "byte " + std::to_string(at), std::move(text)});
    }

    /// A field of the header, left-justified and padded with spaces.
    std::string text(std::size_t width)
    {
        const std::string_view raw = bytes_.substr(at_, width);
        if (!printable(raw))
            fault(at_, "bad_byte", "right would be printable US-ASCII, bytes 32 to 126");
        at_ += width;
        const std::size_t last = raw.find_last_not_of(' ');
        return std::string(raw.substr(0, last == std::string_view::npos ? 0 : last + 1));
    }

    long integer(std::size_t width, const char* name)
    {
        const std::size_t at = at_;
        const std::string digits = text(width);
        long value = 0;
        const char* begin = digits.data() + (digits.starts_with('+') ? 1 : 0);
        const char* end = digits.data() + digits.size();
        const auto [stop, error] = std::from_chars(begin, end, value);
        if (error != std::errc() || stop != end || digits.starts_with("+-")) {
            fault(at, "bad_number",
                  "\"" + digits + "\" for the " + name + "; right would be a whole number");
            return 0;
        }
        return value;
    }

    double decimal(std::size_t width, const char* name)
    {
        const std::size_t at = at_;
        const std::string digits = text(width);
        double value = 0;
        const char* begin = digits.data() + (digits.starts_with('+') ? 1 : 0);
        const char* end = digits.data() + digits.size();
        // No exponents, no "inf", no "nan".
        const bool shaped = digits.find_first_not_of("+-.0123456789") == std::string::npos;
        const auto [stop, error] = std::from_chars(begin, end, value);
        if (!shaped || error != std::errc() || stop != end || digits.starts_with("+-")) {
            fault(at, "bad_number",
                  "\"" + digits + "\" for the " + name + "; right would be a decimal number");
            return 0;
        }
        return value;
    }

    void start()
    {
        const std::size_t at = at_;
        const std::string date = text(8);
        const std::string time = text(8);
        const auto number = [](const std::string& text, std::size_t from) {
            const bool digits = text.size() == 8 && text[from] >= '0' && text[from] <= '9' &&
                                text[from + 1] >= '0' && text[from + 1] <= '9';
            return digits ? (text[from] - '0') * 10 + (text[from + 1] - '0') : -1;
        };
        const bool dots = date.size() == 8 && time.size() == 8 && date[2] == '.' &&
                          date[5] == '.' && time[2] == '.' && time[5] == '.';
        const int yy = number(date, 6);
        // 2.1.3.2: 85 to 99 is 1985 to 1999, 00 to 84 is 2000 to 2084.
        const std::chrono::year_month_day day{
            std::chrono::year(yy >= 85 ? 1900 + yy : 2000 + yy),
            std::chrono::month(static_cast<unsigned>(number(date, 3))),
            std::chrono::day(static_cast<unsigned>(number(date, 0)))};
        const int hour = number(time, 0);
        const int minute = number(time, 3);
        const int second = number(time, 6);
        if (!dots || yy < 0 || !day.ok()) {
            fault(at, "bad_date", "\"" + date + "\"; right would be dd.mm.yy");
            return;
        }
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) {
            fault(at + 8, "bad_time", "\"" + time + "\"; right would be hh.mm.ss");
            return;
        }
        header_.start = LocalTime(std::chrono::local_days(day).time_since_epoch()) +
                        std::chrono::hours(hour) + std::chrono::minutes(minute) + seconds(second);
        start_read_ = true;
    }

    void kind()
    {
        const std::string reserved = text(44);
        header_.kind = reserved.starts_with("EDF+C")   ? "EDF+C"
                       : reserved.starts_with("EDF+D") ? "EDF+D"
                                                       : "EDF";
        if (header_.kind == "EDF" && reserved.starts_with("EDF+"))
            fault(192, "bad_kind", "\"" + reserved + "\"; right would be EDF+C or EDF+D");
    }

    void duration()
    {
        const std::size_t at = at_;
        const double length = decimal(8, "duration of a data record");
        if (length < 0) {
            fault(at, "bad_number", "right would be a duration from 0");
            return;
        }
        // Eight digits at most: in microseconds too it is far from the end of what a Span can hold.
        header_.record_duration = Span(static_cast<Span::rep>(length * 1e6 + 0.5));
    }

    void signals(std::size_t count)
    {
        header_.signals.resize(count);
        for (EdfSignal& signal : header_.signals)
            signal.label = text(16);
        for (EdfSignal& signal : header_.signals)
            signal.transducer = text(80);
        for (EdfSignal& signal : header_.signals)
            signal.dimension = text(8);
        for (EdfSignal& signal : header_.signals)
            signal.physical_min = decimal(8, "physical minimum");
        for (EdfSignal& signal : header_.signals)
            signal.physical_max = decimal(8, "physical maximum");
        for (EdfSignal& signal : header_.signals)
            signal.digital_min = integer(8, "digital minimum");
        for (EdfSignal& signal : header_.signals)
            signal.digital_max = integer(8, "digital maximum");
        for (EdfSignal& signal : header_.signals)
            signal.prefilter = text(80);
        bool annotations = false;
        for (EdfSignal& signal : header_.signals) {
            const std::size_t at = at_;
            signal.samples = integer(8, "samples in a data record");
            if (signal.samples < 1)
                fault(at, "bad_number", "right would be at least 1 sample");
            annotations = annotations || signal.annotations();
            // 2.2.1; only where the label means something.
            if (header_.kind != "EDF" && signal.annotations() &&
                (signal.digital_min != -32768 || signal.digital_max != 32767))
                fault(at, "bad_number",
                      "the digital range of EDF Annotations; right would be -32768 to 32767");
            if (signal.physical_min == signal.physical_max)
                fault(at, "bad_number",
                      "physical minimum and maximum are the same; right would be two values");
        }
        for (std::size_t i = 0; i < count; ++i)
            text(32);
        if (header_.kind != "EDF" && !annotations)
            fault(fixed_header, "no_annotations",
                  "right would be a signal called EDF Annotations (2.2.1)");
    }

    /// 2.1.3.3 and 2.1.3.4, where EDF+ gives the identifications a form.
    void identifications()
    {
        const auto words = [](const std::string& text) {
            return text.empty() ? 0 : 1 + std::count(text.begin(), text.end(), ' ');
        };
        if (words(header_.patient) < 4 || header_.patient.find("  ") != std::string::npos)
            fault(8, "bad_identification",
                  "\"" + header_.patient + "\"; right would be: code sex dd-MMM-yyyy name");
        const std::string known = "Startdate " + long_date(calendar(header_.start)) + " ";
        // Where the date itself is faulty there is nothing to compare with.
        if (words(header_.recording) < 5 || header_.recording.find("  ") != std::string::npos ||
            (start_read_ && !header_.recording.starts_with(known) &&
             !header_.recording.starts_with("Startdate X ")))
            fault(88, "bad_identification",
                  "\"" + header_.recording + "\"; right would be: " + known +
                      "code technician equipment");
    }

    /// Signed or unsigned seconds; nothing when it is none (2.2.2).
    static std::optional<Span> stamp(std::string_view text, bool is_onset)
    {
        const bool sign = !text.empty() && (text[0] == '+' || text[0] == '-');
        if (sign != is_onset)
            return std::nullopt;
        const bool negative = sign && text[0] == '-';
        if (sign)
            text.remove_prefix(1);
        const std::size_t dot = text.find('.');
        const std::string_view whole = text.substr(0, dot);
        const std::string_view fraction = dot == std::string_view::npos ? "" : text.substr(dot + 1);
        const auto digits = [](std::string_view part) {
            return !part.empty() && part.find_first_not_of("0123456789") == std::string_view::npos;
        };
        // Beyond 11 digits of seconds (3,000 years) or beyond microseconds nothing is exact any
        // more.
        if (!digits(whole) || whole.size() > 11 ||
            (dot != std::string_view::npos && !digits(fraction)))
            return std::nullopt;
        std::string micro(fraction.substr(0, 6));
        if (fraction.find_first_not_of('0', std::min<std::size_t>(6, fraction.size())) !=
            std::string_view::npos)
            return std::nullopt;
        micro.resize(6, '0');
        const Span size(std::stoll(std::string(whole)) * 1000000 + std::stoll(micro));
        return negative ? -size : size;
    }

    /// All lists in one annotations signal of one data record.
    void lists(std::size_t from, std::size_t to, bool keeps_time, long record, EdfFile& out)
    {
        std::size_t at = from;
        bool first = true;
        while (at < to && bytes_[at] != tal_end) {
            const std::size_t end = bytes_.find(tal_end, at);
            if (end == std::string_view::npos || end >= to) {
                fault(at, "bad_list", "a list without an end; right would be a zero byte after it");
                return;
            }
            if (!list(bytes_.substr(at, end - at), at, keeps_time && first, record, out))
                return;
            first = false;
            at = end + 1;
        }
        if (first && keeps_time)
            fault(from, "bad_list",
                  "no time-keeping list; right would be one first in each data record (2.2.4)");
        const std::size_t rest = bytes_.substr(0, to).find_first_not_of(tal_end, at);
        if (rest != std::string_view::npos)
            fault(rest, "bad_list",
                  "something after the last list; right would be zero bytes (2.2.4)");
    }

    bool list(std::string_view text, std::size_t at, bool keeps_time, long record, EdfFile& out)
    {
        const std::size_t stamp_end = text.find(text_end);
        if (stamp_end == std::string_view::npos || text.back() != text_end) {
            fault(at, "bad_list",
                  "right would be an onset, then each text, all ended by byte 20 (2.2.2)");
            return false;
        }
        const std::string_view stamps = text.substr(0, stamp_end);
        const std::size_t mark = stamps.find(duration_mark);
        const std::optional<Span> onset = stamp(stamps.substr(0, mark), true);
        std::optional<Span> duration;
        if (mark != std::string_view::npos)
            duration = stamp(stamps.substr(mark + 1), false);
        if (!onset || (mark != std::string_view::npos && !duration)) {
            fault(at, "bad_onset",
                  "right would be +seconds or -seconds, then perhaps byte 21 and seconds (2.2.2)");
            return false;
        }
        std::vector<std::string_view> texts;
        for (std::size_t begin = stamp_end + 1; begin < text.size();) {
            const std::size_t end = text.find(text_end, begin);
            texts.push_back(text.substr(begin, end - begin));
            begin = end + 1;
        }
        std::size_t used = 0;
        if (keeps_time) {
            used = 1;
            if (texts.empty() || !texts[0].empty() || duration)
                fault(at, "bad_list",
                      "the time-keeping list; right would be an onset and an empty text (2.2.4)");
            const bool contiguous = out.header.kind == "EDF+C" && record > 0;
            if (contiguous && *onset != record_start_ + out.header.record_duration)
                fault(at, "bad_onset",
                      "the data record does not follow the one before; right would be EDF+D");
            if (record == 0 && (*onset < Span(0) || *onset >= Span(seconds(1))))
                fault(at, "bad_onset",
                      "the first data record; right would be less than one second after the start");
            record_start_ = *onset;
            const bool only_annotations =
                std::all_of(out.header.signals.begin(), out.header.signals.end(),
                            [](const EdfSignal& signal) { return signal.annotations(); });
            if (only_annotations && texts.size() < 2)
                fault(at, "bad_list",
                      "no text; right would be what this data record starts with (2.2.4)");
        }
        for (; used < texts.size(); ++used) {
            if (texts[used].empty() || !plain_text(texts[used])) {
                fault(at, "bad_text", "a text that is empty, not UTF-8, or has control characters");
                return false;
            }
            out.annotations.push_back({*onset, duration, std::string(texts[used])});
        }
        return true;
    }
};

} // namespace

Result<EdfHeader> read_edf_header(std::string_view bytes, Identifications identifications)
{
    return EdfReader(bytes, identifications).header();
}

Result<EdfFile> read_edf(std::string_view bytes, Identifications identifications)
{
    return EdfReader(bytes, identifications).file();
}

} // namespace evenfall
