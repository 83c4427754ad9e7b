#include <fmt/format.h>

#include "report/page_parts.hpp"

namespace waxtab {

namespace {

/// A sample drawn at the left of a place of the key, and what it means.
struct Sample {
    double x, y;
    std::string_view drawn;     ///< in a field of 24 by 18
    std::string_view words;
};

constexpr Sample samples[] = {
    {0, 0, "<rect class=\"line\" x=\"1\" y=\"2\" width=\"22\" height=\"13\" style=\"fill:url(#honey)\"/>", "honey"},
    {0, 22, "<rect width=\"22\" height=\"13\" x=\"1\" y=\"2\" fill=\"url(#honey)\"/>"
            "<rect class=\"line\" x=\"1\" y=\"2\" width=\"22\" height=\"13\" style=\"fill:url(#capped)\"/>", "honey, capped"},
    {0, 44, "<path class=\"line\" d=\"M15 2h5m-2.5 0V16m-2.5 0h5\"/>", "how full, range"},
    {0, 66, "<path class=\"line\" d=\"M4 2h5m-2.5 0V16m-2.5 0h5\"/>", "how capped, range"},
    {0, 88, "<path class=\"bold\" d=\"M9 6l6 6m0 -6l-6 6\"/>", "as written"},
    {170, 0, "<path class=\"bold\" d=\"M1 14V4H23\"/>", "room in all its supers"},
    {170, 22, "<rect x=\"1\" y=\"2\" width=\"22\" height=\"14\" fill=\"url(#band)\"/><path class=\"line\" d=\"M1 11L23 7\"/>",
     "estimated, with range"},
    {170, 44, "<rect x=\"1\" y=\"2\" width=\"22\" height=\"14\" fill=\"url(#ahead)\"/><path class=\"dash\" d=\"M1 11L23 7\"/>",
     "foreseen, with range"},
    {170, 66, "<path class=\"dash\" d=\"M12 1V17\"/>", "next visits"},
    {170, 88, "<path class=\"line\" d=\"M12 1V17\"/>", "today"},
};

}  // namespace

std::string drawing_key() {
    std::string out;
    for (const Sample& s : samples)
        out += fmt::format("<g transform=\"translate({} {})\">{}<text x=\"31\" y=\"13\">{}</text></g>\n", xy(s.x + 4), xy(s.y + 4),
                           s.drawn, s.words);
    return "<figure><svg class=\"chart key\" viewBox=\"0 0 340 116\" role=\"img\" aria-label=\"what the drawings are made of: "
           "hatched, honey; cross-hatched, capped; brackets, ranges; crosses, as written; thick line, room in the supers; "
           "thin line in hatching, estimated; dashes in dots, foreseen; dashed upright, next visits; upright, today\">" + out +
           "</svg>\n<figcaption>Boxes are drawn to scale of their depth, frames by their number. Ranges hold in 8 cases of 10. "
           "Crosses add up the supers that were read, estimates all that are on. "
           "Past days are drawn in the light of all that was noted since, in yards of more than 25 hives of what was known by then. "
           "Letters below a chart: + super on, \u2212 super off, s swarm or split, c queen cells, f fed, t treated.</figcaption></figure>\n";
}

}  // namespace waxtab
