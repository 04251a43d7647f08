// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

/// The composer of figures: one set of drawings (assets/figures) becomes finished SVG for the
/// screen, the printed sheet and HTML alike. Standard library only; no words for people.
namespace evenfall {

/// How one named layer of the figure "person" is drawn.
enum class PartState {
    hidden,  ///< not drawn at all
    outline, ///< still to come: thin quiet line
    current, ///< the part in question: accent tone with a halo
    done,    ///< on: solid
};

/// The hand the person writes with; the finger probe goes on the other one.
enum class Hand { left, right };

enum class Build { slim, medium, broad };

/// One palette for each place where figures are seen.
enum class Tone {
    dark,  ///< evening: warm and dark
    light, ///< morning: light and calm
    night, ///< very dim red-brown on black
    print, ///< greys only, on white paper
};

struct FigureRequest {
    std::string id; ///< file name in assets/figures without ".svg"
    Tone tone = Tone::dark;
    Hand writing_hand = Hand::right;
    Build build = Build::medium;
    /// Layer name -> state. Figures with layers use it: "person", and those of a plug (what the
    /// cable comes from, which ports the recorder has). A layer that is not named is hidden, a name
    /// the figure does not have is passed over (see FigureStore::layers).
    std::map<std::string, PartState> parts;
    /// Slot -> how many ridges or dots its mark has, 0 to 4 (slot "strips": strips of tape, 0 to
    /// 8). A slot that is not named shows the drawing's own default; a group with "place" stands
    /// where that count belongs. A name the figure does not have is passed over (see
    /// FigureStore::mark_slots).
    std::map<std::string, int> counts;
    /// The slots whose mark is round dots; the others have ridges.
    std::set<std::string> dots;
    double pulse = 1.0;    ///< 0..1, strength of the halo of the current part; 1 is the still form
    double widen = 0.0;    ///< 0..1, breathing guide: 0 breathed out, 1 breathed in
    bool backdrop = false; ///< paint the tone's background behind the figure
};

/// Composes figures from their sources. Every figure is 800 x 800 units. What "person" shows lies
/// within x 130..670, so that it may be cropped to a tall panel; only its layer "mirror" is wider.
///
/// Sources are drawn for somebody who writes with the right hand. The figure is the person's
/// mirror image: its hand on the left of the picture is the person's left hand. For a left-hander
/// the whole figure is mirrored, except figures marked mirror="no" (devices, clockwise turns) and
/// groups marked keep="X" (ECG electrodes: the heart does not change sides).
class FigureStore {
  public:
    /// @param files name without ".svg" -> text; "shapes" holds the shared shapes. A figure with a
    ///        fault is left out and named in problems(); nothing is drawn by halves.
    explicit FigureStore(std::map<std::string, std::string> files);
    FigureStore(FigureStore&&) noexcept;
    FigureStore& operator=(FigureStore&&) noexcept;
    ~FigureStore();

    /// All figures that can be composed, in alphabetical order; "shapes" is not a figure.
    std::vector<std::string> ids() const;
    bool has(const std::string& id) const;

    /// Faults of the sources, each as `name.svg:line: what is wrong and what would be right`.
    const std::vector<std::string>& problems() const;

    /// Names of the layers and of the mark slots of a figure, in alphabetical order; empty for a
    /// figure that has none or is unknown.
    std::vector<std::string> layers(const std::string& id) const;
    std::vector<std::string> mark_slots(const std::string& id) const;

    /// A complete SVG document in the flat subset that Qt SVG and librsvg draw alike.
    /// @throws std::out_of_range for an unknown id, or for a count outside its range
    ///         (the message names the figure, the slot and the range).
    std::string compose(const FigureRequest& request) const;

  private:
    struct Sources;
    std::unique_ptr<Sources> sources_;
};

/// The tone's background as #rrggbb, for a page that puts a figure on its own ground.
std::string background_of(Tone tone);

} // namespace evenfall
