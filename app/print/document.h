// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

typedef struct _cairo cairo_t; // so that only those who draw shapes need cairo's headers

namespace evenfall::print {

enum class Paper { a4, letter };

/// In points, 1/72 inch, as every length here.
struct Size {
    double width = 0;
    double height = 0;
};
Size size_of(Paper paper);

/// 0 (none) to 1.
struct Colour {
    double red = 0;
    double green = 0;
    double blue = 0;
};
inline constexpr Colour ink{0.07, 0.09, 0.12};
inline constexpr Colour grey_ink{0.29, 0.32, 0.36}; ///< over 7:1 on white
inline constexpr Colour hairline{0.72, 0.74, 0.77};
inline constexpr Colour white{1, 1, 1};

enum class Weight { regular = 400, medium = 500, semibold = 600, bold = 700 };
enum class Align { left, right, centre }; ///< left is where lines begin

struct Style {
    double size = 8.5;
    Weight weight = Weight::regular;
    Colour colour = ink;
    Align align = Align::left;
    double leading = 0; ///< from line to line, in sizes; 0 as the font has it
};

struct DocumentInfo {
    std::string title;
    std::string language; ///< BCP 47, such as "en"
    std::string key_words;
    bool right_to_left = false; ///< the language is: lines begin at the right
    bool packed = false; ///< smaller; key words are then found with a PDF library only
};

/// Height of a text and where its first line stands.
struct Extent {
    double height = 0;
    double baseline = 0; ///< of the first line, from the top
    double width = 0;    ///< of the widest line
};

/// A tagged PDF that is being drawn, page by page, from the top left corner. Texts are laid out in
/// Inter, and in whatever font of the machine has the letters; every font is embedded. The same
/// calls give the same bytes, on the same versions of the libraries and fonts: no clock, no chance,
/// no settings of the user.
class Document {
  public:
    Document(Paper paper, DocumentInfo info);
    ~Document();
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    Size size() const;
    bool right_to_left() const;
    void next_page();

    /// Lays a text out without drawing it. Long words break where they must.
    Extent measure(std::string_view text, double width, const Style& style);
    /// Draws it, unless this is a rehearsal. In a language from right to left it begins at the
    /// right.
    Extent text(double x, double y, double width, std::string_view text, const Style& style);

    void line(double x1, double y1, double x2, double y2, double width, Colour colour,
              const std::vector<double>& dashes = {});
    void fill(double x, double y, double width, double height, Colour colour);
    void round_box(double x, double y, double width, double height, double radius,
                   double line_width, Colour colour, const std::vector<double>& dashes = {});
    void round_fill(double x, double y, double width, double height, double radius, Colour colour);
    /// For shapes of one's own. Save and restore around them; not during a rehearsal.
    cairo_t* cairo();

    /// The structure that a screen reader hears: "H1", "H2", "P", "Table", "TR", "TH", "TD", "L",
    /// "LI", "Lbl", "LBody" (PDF 32000-1, 14.8.4). What is drawn by `body` belongs to it.
    void tagged(const char* tag, const std::function<void()>& body);
    /// The same in two calls, for what goes over from one column to the next.
    void begin(const char* tag);
    void end(const char* tag);
    /// A picture, with what to say instead of it.
    void figure(const std::string& alternative, const std::function<void()>& body);

    /// Runs `body` with nothing drawn and nothing tagged: to learn how high something gets.
    void rehearse(const std::function<void()>& body);
    bool rehearsing() const;

    /// The bytes. Io: what the libraries say. Call once.
    Result<std::string> finish();

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace evenfall::print
